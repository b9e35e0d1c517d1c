import { toRectangleMm } from '../geometry.ts';
import { needed, thereIs } from '../lengths.ts';
import { holdsTop, slotRectangle } from '../parts/fixings.ts';
import type { Check, Computed, PlannedFixing, Status } from '../result.ts';
import { figure, insideMm, least } from './check.ts';

const ROUNDING = 1e-9;

const path = (plan: Computed['plan'], { name }: PlannedFixing) =>
  `base.fixings[${plan.base.fixings.findIndex((fixing) => fixing.name === name)}] (${name})`;

export function checkSlots({ plan, fixings }: Computed): Check {
  const spare = ({ slotMm, neededSlotMm }: PlannedFixing) => slotMm - neededSlotMm;
  const short = fixings.filter((fixing) => !(spare(fixing) >= -ROUNDING));
  const tightest = least(fixings, spare);
  const says = short.length
    ? short.map(
        (fixing) =>
          `${path(plan, fixing)}: slot is ${thereIs(fixing.slotMm)}, at least ${needed(fixing.neededSlotMm)} is needed across the grain`,
      )
    : [`Every screw can travel with the top. The tightest slot is at ${tightest?.name}.`];
  return {
    id: 'slots',
    title: 'Slots let the top move',
    status: short.length ? 'fail' : 'pass',
    says: says.join('\n'),
    figures: tightest
      ? [
          figure('tightest slot', tightest.slotMm, 'mm'),
          figure('needed there', tightest.neededSlotMm, 'mm'),
          figure(
            'longest travel',
            Math.max(...fixings.map(({ swellMm, shrinkMm }) => swellMm + shrinkMm)),
            'mm',
          ),
        ]
      : [],
    ...(tightest && { margin: { given: tightest.slotMm, min: tightest.neededSlotMm, unit: 'mm' } }),
    rules: ['fastening/fixing-travel', 'fastening/slot-length', 'movement/width-change'],
  };
}

/** What a screw stands under whose depth nothing says; that of the strip is known where screws are planned. */
const depthUnknown = ({ top, strip, screws }: Computed['plan']) =>
  top.inlays.filter(({ name }) => !(screws && strip && strip.inlay === name));

/** A slot needs metal around it, a screw needs wood above it, and the fixed line needs something that holds it. */
export function checkScrews({ plan, fixings }: Computed): Check {
  const { base, top } = plan;
  const panel = { xMm: 0, yMm: 0, lengthMm: top.lengthMm, widthMm: top.widthMm };
  const slots = fixings.map((fixing) => ({ fixing, slot: slotRectangle(plan, fixing) }));
  const astray = slots.flatMap(({ fixing, slot }) => {
    if (insideMm(slot, panel) < 0) return [`${path(plan, fixing)}: lies beyond the top`];
    const held = base.members.some((member) => insideMm(slot, member) >= 0);
    return held ? [] : [`${path(plan, fixing)}: its slot lies in no member of the base`];
  });
  const under = fixings.flatMap((fixing) =>
    depthUnknown(plan)
      .filter((inlay) => toRectangleMm(fixing, inlay) < base.shankDiameterMm / 2)
      .map((inlay) => `${path(plan, fixing)}: stands under ${inlay.name}; keep its point short of it`),
  );
  const play = base.shankDiameterMm + 2 * base.slotClearanceMm;
  const holding = fixings.filter((fixing) => holdsTop(base, fixing));
  const metal = least(
    fixings.flatMap(({ leftInMemberMm }) => (leftInMemberMm === null ? [] : [leftInMemberMm])),
    (mm) => mm,
  );
  const loose = holding.length
    ? []
    : [
        `base.fixedLine: no screw in a round hole, at most ${needed(play)} wide, holds the top there; add one or move the line`,
      ];
  const status: Status = astray.length ? 'fail' : under.length + loose.length ? 'warn' : 'pass';
  const fine = `All slots lie in the base. Screws that hold the top at the fixed line: ${holding.length} of ${fixings.length}.`;
  return {
    id: 'screws',
    title: 'Screws find base beneath and wood above',
    status,
    says: status === 'pass' ? fine : [...astray, ...under, ...loose].join('\n'),
    figures: [
      figure('screws', fixings.length, '1'),
      figure('screws holding the fixed line', holding.length, '1'),
      ...(metal === null ? [] : [figure('least metal beyond a slot', metal, 'mm')]),
    ],
    rules: ['fastening/slot-length'],
  };
}
