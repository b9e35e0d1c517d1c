import { needed } from '../lengths.ts';
import { openEnds, type PlannedStrip, type PlannedStripScrew } from '../parts/strip.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Check, Computed } from '../result.ts';
import { figure, least } from './check.ts';

const ROUNDING = 1e-6;

/** What a screw takes out of the strip lengthwise at its face, mm from the strip's start. */
function taken(
  { atMm, slot }: PlannedStripScrew,
  heldAtMm: number,
  strip: SettledPlan['strip'],
  coneMm: number,
) {
  const halfMm = coneMm / 2;
  if (!slot || !strip) return { fromMm: atMm - halfMm, toMm: atMm + halfMm };
  const inwardMm = slot.screwFromInnerEndMm - strip.shankDiameterMm / 2 + halfMm;
  const outwardMm = slot.lengthMm - slot.screwFromInnerEndMm - strip.shankDiameterMm / 2 + halfMm;
  return atMm < heldAtMm
    ? { fromMm: atMm - outwardMm, toMm: atMm + inwardMm }
    : { fromMm: atMm - inwardMm, toMm: atMm + outwardMm };
}

/** How the ends of the strip lie: each before the wall of its recess, or at the edge of the top, where there is none. */
function endsSay({ top, strip: asked }: SettledPlan, strip: PlannedStrip): string {
  const along = strip.runs === 'along the grain';
  const inlay = top.inlays.find(({ name }) => name === strip.name);
  const fromMm = (along ? inlay?.xMm : inlay?.yMm) ?? 0;
  const open = openEnds({ fromMm, toMm: fromMm + strip.lengthMm }, along ? top.lengthMm : top.widthMm);
  const end = (name: string, isOpen: boolean, { gapMm, mostGapMm }: PlannedStrip['start']) =>
    isOpen
      ? `at the ${name} edge it stands out by up to ${needed(gapMm - (asked?.endClearanceMm ?? 0), 2)}`
      : `at its ${name} end a gap of ${needed(gapMm, 2)}, up to ${needed(mostGapMm, 2)} in the year`;
  const [first, other] = along ? ['left', 'right'] : ['front', 'back'];
  const ends = [end(first, open.start, strip.start), end(other, open.end, strip.end)];
  return `Cut to length on building day, ${ends.join(', ')}.`;
}

/** Whether strip and wood can move beside each other, and what that leaves of the strip. */
export function checkStripMovement({ plan, strip }: Computed): Check | null {
  if (!strip || !plan.strip) return null;
  const heldAtMm = strip.screws.find(({ outMm, inMm }) => outMm === 0 && inMm === 0)?.atMm ?? 0;
  const cuts = strip.screws.map((screw) =>
    taken(screw, heldAtMm, plan.strip, strip.head.countersinkDiameterMm),
  );
  const ends = [...cuts.map(({ toMm }) => toMm)];
  const metal = [
    { where: 'before the first screw', leftMm: cuts[0]?.fromMm ?? 0 },
    ...cuts.slice(1).map(({ fromMm }, i) => ({
      where: `between screws ${i + 1} and ${i + 2}`,
      leftMm: fromMm - (ends[i] as number),
    })),
    { where: 'after the last screw', leftMm: strip.lengthMm - (ends.at(-1) ?? 0) },
  ];
  const broken = metal.filter(({ leftMm }) => !(leftMm >= -ROUNDING));
  const thinnest = least(metal, ({ leftMm }) => leftMm);
  const leastMm = thinnest?.leftMm ?? 0;
  const faults = broken.map(
    ({ where, leftMm }) =>
      `strip: ${where} the countersinks run out of the strip or into each other by ${needed(-leftMm)}; change strip.endDistance, strip.mostPitch or strip.fixedScrew`,
  );
  const slots = strip.screws.filter(({ slot }) => slot !== null).length;
  const [first, other] = strip.runs === 'along the grain' ? ['left', 'right'] : ['front', 'back'];
  return {
    id: 'strip-movement',
    title: 'The strip can move beside the wood',
    status: faults.length ? 'fail' : 'pass',
    says: [
      ...faults,
      `Over its length the metal outgrows the wood by up to ${needed(strip.metalOutgrowsMm, 2)}, the wood the metal by up to ${needed(strip.woodOutgrowsMm, 2)}.`,
      endsSay(plan, strip),
      `${strip.screws.length} screws, ${slots} of them in slots.`,
    ].join('\n'),
    figures: [
      figure('metal outgrows wood', strip.metalOutgrowsMm, 'mm'),
      figure('wood outgrows metal', strip.woodOutgrowsMm, 'mm'),
      figure(`gap at the ${first} end`, strip.start.gapMm, 'mm'),
      figure(`gap at the ${other} end`, strip.end.gapMm, 'mm'),
      figure('screws', strip.screws.length, '1'),
      figure('slots', slots, '1'),
      figure('least metal left', leastMm, 'mm'),
    ],
    margin: { given: leastMm, min: 0, unit: 'mm' },
    rules: ['movement/change-beside-metal', 'fastening/fixing-travel', 'fastening/slot-length'],
  };
}
