import {
  bothUnits,
  byTheFace,
  fittingSize,
  millimetres,
  needed,
  signedMillimetres,
  thereIs,
} from '../lengths.ts';
import type { BoringSetting } from '../parts/screws.ts';
import type { WorktopPlan } from '../result.ts';
import { bare, columns, section } from './text.ts';

/** What is needed beside what there is, with as many decimals as tell them apart, or show that they are the same. */
function besides(neededMm: number, thereMm: number): [string, string] {
  const tells = (decimals: number): [string, string] => [
    needed(neededMm, decimals),
    thereIs(thereMm, decimals),
  ];
  const enough = thereMm >= neededMm - 1e-9;
  const honest = [1, 2, 3]
    .map(tells)
    .find(([need, there]) => Number.parseFloat(there) >= Number.parseFloat(need) === enough);
  const [need, there] = honest ?? tells(3);
  return [bare(need), bare(there)];
}

export function slotsSection({ fixings, plan }: WorktopPlan): string {
  const rows = fixings.map(({ name, swellMm, shrinkMm, neededSlotMm, slotMm, ...fixing }) => {
    const room = fixing.screwFromInnerEndMm;
    return [
      name,
      swellMm + shrinkMm > 0
        ? `${bare(signedMillimetres(swellMm))} / ${bare(signedMillimetres(-shrinkMm))}`
        : 'none',
      ...besides(neededSlotMm, slotMm),
      room ? `${bare(needed(room.leastMm))} to ${bare(thereIs(room.mostMm))}` : '–',
      bare(needed(fixing.coveringWasherMm)),
    ];
  });
  const heading = ['screw', 'travel', 'slot needed', 'slot', 'screw from inner end', 'washer, least ⌀'];
  return section('Slots across the grain, mm', [
    ...columns([heading, ...rows]),
    `The top is held ${bothUnits(plan.base.fixedLineMm)} from the front; the inner end of a slot is the one nearer that line.`,
  ]);
}

const boring = ({ topThicknessMm, fixings, reasons, steps }: BoringSetting, many: boolean) => [
  ...(many ? [`in wood ${thereIs(topThicknessMm)} thick: ${fixings.join(', ')}`] : []),
  ...reasons,
  ...steps.map(({ says }, i) => `${i + 1}. ${says}`),
];

/** `null` where the plan does not plan the screws. */
export function screwsSection({ screws }: WorktopPlan): string | null {
  if (!screws) return null;
  const { lengthMm, threadLengthMm, layersMm, at, settings } = screws;
  const lies = new Map<string, string[]>();
  for (const { name, underStrip, threadInWoodMm, penetrationMm, stockAboveTipMm } of at) {
    const above = stockAboveTipMm < 0 ? 'none' : bare(thereIs(stockAboveTipMm));
    const figures = [bare(thereIs(threadInWoodMm)), bare(thereIs(penetrationMm)), above];
    const key = [underStrip ? 'under the strip' : 'clear of the strip', ...figures].join('\t');
    lies.set(key, [...(lies.get(key) ?? []), name]);
  }
  const rows = [...lies].map(([key, names]) => [...key.split('\t'), names.join(', ')]);
  return section('Screws into the top, mm', [
    `${at.length} screws of ${millimetres(lengthMm)}, ${millimetres(threadLengthMm)} of it threaded; ${millimetres(layersMm)} lies between head and wood`,
    ...columns([['where', 'thread in wood', 'in the wood', 'wood above tip', 'screws'], ...rows]),
    'Bored from below, with the base off the top:',
    ...settings.flatMap((setting) => boring(setting, settings.length > 1)),
  ]);
}

/** `null` where nothing of metal is planned. */
export function stripSection({ strip, plan }: WorktopPlan): string | null {
  if (!strip || !plan.strip) return null;
  const { rabbet, head, start, end, screws } = strip;
  const slotted = screws.some(({ slot }) => slot !== null);
  const rows = screws.map(({ atMm, slot }, i) => [
    String(i + 1),
    bare(millimetres(atMm)),
    slot ? bare(needed(slot.lengthMm)) : 'round',
    slot ? bare(needed(slot.screwFromInnerEndMm)) : '–',
    slot ? bare(needed(slot.countersinkLengthMm)) : '–',
  ]);
  const heading = ['screw', 'from its start', 'slot', 'screw from inner end', 'countersink'];
  const places = screws.map(({ atMm }) => bare(millimetres(atMm))).join(', ');
  const sunk =
    head.inWoodMm > 0
      ? [`The wood beneath is countersunk too, ${needed(head.inWoodMm)} deep, for the heads.`]
      : [];
  return section(`Strip: ${strip.name}, mm`, [
    `${millimetres(strip.lengthMm)} × ${fittingSize(strip.widthMm)} × ${fittingSize(plan.strip.thicknessMm)}, ${strip.massKg.toFixed(2)} kg, ${strip.runs}`,
    `rabbet ${fittingSize(rabbet.acrossMm)} wide, ${fittingSize(rabbet.depthMm)} deep, from x ${millimetres(rabbet.xMm)} to ${millimetres(rabbet.xMm + rabbet.lengthMm)}, y ${millimetres(rabbet.yMm)} to ${millimetres(rabbet.yMm + rabbet.widthMm)}`,
    `against the face of the wood: ${byTheFace(strip.belowFaceMm)} on building day, ${byTheFace(strip.belowFaceDriestMm)} at the driest, ${byTheFace(strip.belowFaceWettestMm)} at the wettest`,
    `over its length the metal outgrows the wood by up to ${needed(strip.metalOutgrowsMm, 2)}, the wood the metal by ${needed(strip.woodOutgrowsMm, 2)}`,
    `gap to leave at its ends: ${needed(start.gapMm, 2)} and ${needed(end.gapMm, 2)}`,
    `countersink ⌀ ${millimetres(head.countersinkDiameterMm)}, ${head.coneAngleDeg.toFixed(0)}°`,
    ...sunk,
    ...(slotted
      ? columns([heading, ...rows])
      : [`${screws.length} screws in round holes, from its start: ${places}`]),
  ]);
}
