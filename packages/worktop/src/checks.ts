import { fixingTravelRule, slotLengthRule } from '@scantling/fastening';

import { finishVolumeRule, mixByPartsRule, spreadingRateRule, thinnedSolidsRule } from '@scantling/finishing';
import { clearanceOverSeasonsRule } from '@scantling/grids';
import { equilibriumMoistureRule, widthChangeRule } from '@scantling/movement';
import { checkRange, type Unit } from '@scantling/rules';
import { millimetres } from './lengths.ts';
import type { Plan } from './plan.ts';
import type { Check, Figure, Status, WorktopPlan } from './result.ts';
import { type Swing, swingOf } from './season.ts';

type Computed = Omit<WorktopPlan, 'checks' | 'status' | 'cautions'>;

const figure = (name: string, value: number, unit: Unit): Figure => ({ name, value, unit });

/** The least of a list by some measure; `null` of an empty one. */
const least = <T>(items: readonly T[], measure: (item: T) => number): T | null =>
  items.reduce<T | null>(
    (best, item) => (best === null || measure(item) < measure(best) ? item : best),
    null,
  );

function checkHoles({ plan, holes, blockedHoles }: Computed): Check {
  const tightest = least(holes, ({ clearanceMm }) => clearanceMm);
  const leftOut = plan.holes.blocked === 'leave out' && tightest !== null;
  const listed = blockedHoles.slice(0, 8).map(({ row, column, xMm, yMm, why }) => {
    return `holes: row ${row}, column ${column} at x ${millimetres(xMm)}, y ${millimetres(yMm)}: ${why}`;
  });
  const more = blockedHoles.length > 8 ? [`… and ${blockedHoles.length - 8} more`] : [];
  const says = blockedHoles.length
    ? [
        leftOut ? 'Left out:' : 'Move holes.first, change the pitch or move the base:',
        ...listed,
        ...more,
      ].join('\n')
    : `All ${holes.length} holes stay clear, all year. The tightest is row ${tightest?.row}, column ${tightest?.column}: ${millimetres(tightest?.clearanceMm ?? 0)} beside ${tightest?.nearest}.`;
  return {
    id: 'holes',
    title: 'Holes miss the base, the inlays, the screws and the edges',
    status: blockedHoles.length === 0 ? 'pass' : leftOut ? 'warn' : 'fail',
    says,
    figures: [
      figure('holes', holes.length, '1'),
      figure('blocked', blockedHoles.length, '1'),
      ...(tightest ? [figure('tightest clearance', tightest.clearanceMm, 'mm')] : []),
    ],
    rules: [clearanceOverSeasonsRule.id, widthChangeRule.id],
  };
}

function checkMoisture({ plan, movement }: Computed): Check {
  const today = plan.top.moisturePct;
  const { driestMoisturePct: driest, wettestMoisturePct: wettest, coefficientPerPct } = movement;
  const notes = [driest, wettest].flatMap((toMoisturePct) =>
    checkRange(widthChangeRule, {
      widthMm: plan.top.widthMm,
      coefficientPerPct,
      fromMoisturePct: today,
      toMoisturePct,
    }),
  );
  const inside = today >= driest && today <= wettest;
  const says = inside
    ? `On building day ${today} %, through the year ${driest.toFixed(1)} to ${wettest.toFixed(1)} %.`
    : `top.moisturePct is ${today}; in this air the wood stays between ${driest.toFixed(1)} and ${wettest.toFixed(1)} %. Let it settle in the room first.`;
  return {
    id: 'moisture',
    title: 'Wood is as dry as the room',
    status: inside && notes.length === 0 ? 'pass' : 'warn',
    says: [says, ...new Set(notes.map(({ message }) => message))].join('\n'),
    figures: [
      figure('building day', today, '%'),
      figure('driest', driest, '%'),
      figure('wettest', wettest, '%'),
      figure('change at the driest', movement.driestChangeMm, 'mm'),
      figure('change at the wettest', movement.wettestChangeMm, 'mm'),
    ],
    rules: [equilibriumMoistureRule.id, widthChangeRule.id],
  };
}

function checkSlots({ fixings }: Computed): Check {
  const spare = ({ slotMm, neededSlotMm }: Computed['fixings'][number]) => slotMm - neededSlotMm;
  const short = fixings.filter((fixing) => !(spare(fixing) >= -1e-9));
  const tightest = least(fixings, spare);
  const says = short.length
    ? short
        .map(
          ({ name, slotMm, neededSlotMm }) =>
            `base.fixings, ${name}: slot is ${millimetres(slotMm)}, at least ${millimetres(neededSlotMm)} is needed across the grain`,
        )
        .join('\n')
    : `Every screw can travel with the top. The tightest slot is at ${tightest?.name}.`;
  return {
    id: 'slots',
    title: 'Slots let the top move',
    status: short.length ? 'fail' : 'pass',
    says,
    figures: tightest
      ? [figure('tightest slot', tightest.slotMm, 'mm'), figure('needed there', tightest.neededSlotMm, 'mm')]
      : [],
    rules: [fixingTravelRule.id, slotLengthRule.id, widthChangeRule.id],
  };
}

/** How far the top reaches past a member at its least, over the year; negative where the member shows. */
function overhangMm({ top, base }: Plan, { shrinkPct, swellPct }: Swing) {
  const edge = (yMm: number, changePct: number) =>
    base.fixedLineMm + (yMm - base.fixedLineMm) * (1 + changePct / 100);
  const front = Math.max(edge(0, -shrinkPct), edge(0, swellPct));
  const back = Math.min(edge(top.widthMm, -shrinkPct), edge(top.widthMm, swellPct));
  return ({ xMm, yMm, lengthMm, widthMm }: Plan['base']['members'][number]) =>
    Math.min(xMm, top.lengthMm - (xMm + lengthMm), yMm - front, back - (yMm + widthMm));
}

function checkCover({ plan, movement }: Computed): Check {
  const overhang = overhangMm(plan, swingOf(movement, plan.top.widthMm));
  const nearest = least(plan.base.members, overhang);
  const value = nearest ? overhang(nearest) : 0;
  return {
    id: 'cover',
    title: 'The top covers its base all year',
    status: value >= 0 ? 'pass' : 'warn',
    says: nearest
      ? value >= 0
        ? `The least overhang is ${millimetres(value)}, past ${nearest.name}.`
        : `base.members, ${nearest.name} stands ${millimetres(-value)} proud of the top.`
      : 'The base has no members to cover.',
    figures: nearest ? [figure('least overhang', value, 'mm')] : [],
    rules: [widthChangeRule.id],
  };
}

function checkFinish({ plan, finish }: Computed): Check {
  const short = finish.mix.filter(({ volumeMl, onHandMl }) => !(onHandMl >= volumeMl));
  const job = `${plan.finish.coats} coats on ${finish.areaM2.toFixed(2)} m²`;
  const says = short.length
    ? short.map(
        ({ name, volumeMl, onHandMl }) =>
          `finish, ${name}: onHandMl is ${onHandMl}, at least ${Math.ceil(volumeMl)} mL is needed for ${job}`,
      )
    : [`There is enough of everything for ${job}.`];
  return {
    id: 'finish',
    title: 'There is enough finish',
    status: short.length ? 'fail' : 'pass',
    says: says.join('\n'),
    figures: finish.mix.flatMap(({ name, volumeMl, onHandMl }) => [
      figure(`${name} needed`, volumeMl, 'mL'),
      figure(`${name} on hand`, onHandMl, 'mL'),
    ]),
    rules: [thinnedSolidsRule.id, spreadingRateRule.id, finishVolumeRule.id, mixByPartsRule.id],
  };
}

/** Every question put to a plan, in the order of the work. */
export const checkPlan = (computed: Computed): Check[] =>
  [checkMoisture, checkHoles, checkSlots, checkCover, checkFinish].map((check) => check(computed));

const order: readonly Status[] = ['pass', 'warn', 'fail'];

/** The gravest verdict. */
export const worst = (checks: readonly Check[]): Status =>
  order[Math.max(0, ...checks.map(({ status }) => order.indexOf(status)))] as Status;
