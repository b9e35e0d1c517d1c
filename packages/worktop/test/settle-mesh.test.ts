import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop, type WorktopPlan } from '../src/index.ts';
import { asChosen, plans, stricter } from './settle-plans.ts';

/** The searches end so near to the best. */
const GAP_MM = 0.01;
/** Rounding, and what a slide may give away so that the grid keeps its place. */
const SAME_MM = 0.03;

const meshOf = (fromMm: number, toMm: number, count: number) =>
  Array.from({ length: count }, (_, i) => fromMm + ((toMm - fromMm) * i) / Math.max(1, count - 1));

/** What a plan is worth, the weightiest first: computed from the plan alone. */
function worthOf({ holes, fixings, plan, checks }: WorktopPlan): readonly number[] {
  const { base } = plan;
  const snugMm = base.shankDiameterMm + 2 * base.slotClearanceMm + 1e-9;
  const held = fixings.some(
    ({ yMm, slotMm }) => Math.abs(yMm - base.fixedLineMm) <= base.slotClearanceMm && slotMm <= snugMm,
  );
  const lacks = fixings.map(({ slotMm, neededSlotMm }) => Math.max(0, neededSlotMm - slotMm));
  const travels = fixings.map(({ swellMm, shrinkMm }) => swellMm + shrinkMm);
  const slides = (base.sliding ?? []).map(({ slideMm }) => slideMm);
  const { given = 0, min = 0 } = checks.find(({ id }) => id === 'holes')?.margin ?? {};
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const whole = holes.length === plan.holes.columns * plan.holes.rows;
  return [
    holes.length,
    Number(held),
    -sum(lacks),
    -Math.max(...travels),
    sum(slides),
    whole ? given - min : 0,
  ];
}

/** Whether one is worth more than another in the first thing that tells them apart. */
const beats = (one: readonly number[], other: readonly number[]) =>
  one
    .map((value, i) => value - (other[i] as number))
    .find((difference, i) => Math.abs(difference) > (i < 4 ? 1e-6 : SAME_MM)) ?? 0;

type Choices = {
  readonly lineMm: number;
  readonly slidesMm: readonly number[];
  readonly first: Plan['holes']['first'];
};

const withChoices = (plan: Plan, { lineMm, slidesMm, first }: Choices): Plan => ({
  ...plan,
  base: {
    ...plan.base,
    fixedLineMm: lineMm,
    sliding: (plan.base.sliding ?? []).map((part, i) => ({ ...part, slideMm: slidesMm[i] as number })),
  },
  holes: { ...plan.holes, first },
});

/** Every combination of a few slides, or the one that is given. */
const slidesOf = (plan: Plan, count: number): number[][] =>
  (plan.base.sliding ?? []).reduce<number[][]>(
    (all, { slideMm, leastSlideMm, mostSlideMm }) =>
      all.flatMap((before) =>
        (slideMm === 'choose' ? meshOf(leastSlideMm, mostSlideMm, count) : [slideMm]).map((mm) => [
          ...before,
          mm,
        ]),
      ),
    [[]],
  );

/** A mesh over the top, and one a hundred times finer about what was chosen. */
function firstsOf(plan: Plan, chosen: WorktopPlan, count: number): Plan['holes']['first'][] {
  const { first } = plan.holes;
  if (first !== 'choose') return [first];
  const { lengthMm, widthMm } = plan.top;
  const at = chosen.plan.holes.first;
  const near = (mm: number, mostMm: number) =>
    [-1, -0.3, 0, 0.3, 1].map((by) => Math.min(mostMm, Math.max(0, mm + by)));
  const pairs = (xs: readonly number[], ys: readonly number[]) =>
    xs.flatMap((xMm) => ys.map((yMm) => ({ xMm, yMm })));
  return [
    ...pairs(meshOf(0, lengthMm / 2, count), meshOf(0, widthMm / 2, count)),
    ...pairs(near(at.xMm, lengthMm), near(at.yMm, widthMm)),
  ];
}

/** Where the top may be held with the parts so far: each row of screws, and the middle. */
function linesOf(plan: Plan, slidesMm: readonly number[]): number[] {
  if (plan.base.fixedLineMm !== 'choose') return [plan.base.fixedLineMm];
  const drawn = withChoices(plan, { lineMm: 0, slidesMm, first: { xMm: 0, yMm: 0 } });
  const ys = planWorktop(drawn).fixings.map(({ yMm }) => yMm);
  return [...new Set([...ys, (Math.min(...ys) + Math.max(...ys)) / 2])];
}

describe('no choice out of a mesh, given to planWorktop itself, is better', () => {
  const meshCounts = { firsts: 6, slides: 4 };

  test('over all lines, offsets and slides along the grain', () => {
    let [tried, chosenProven] = [0, 0];
    fc.assert(
      fc.property(plans(['left', 'right'], 1), (plan) => {
        const chosen = planWorktop(plan);
        fc.pre(chosen.chosen.length > 0);
        const ours = worthOf(chosen);
        chosenProven += chosen.chosen.every(({ proven }) => proven) ? 1 : 0;
        for (const slidesMm of slidesOf(plan, meshCounts.slides)) {
          for (const lineMm of linesOf(plan, slidesMm)) {
            for (const first of firstsOf(plan, chosen, meshCounts.firsts)) {
              const choices = { lineMm, slidesMm, first };
              // As many holes, each with a bit to spare: less than that may be missed.
              const kept = planWorktop(withChoices(stricter(plan, GAP_MM), choices)).holes.length;
              tried += 1;
              if (kept < (ours[0] as number)) continue;
              const theirs = [kept, ...worthOf(planWorktop(withChoices(plan, choices))).slice(1)];
              expect(beats(theirs, ours), JSON.stringify({ choices, theirs, ours })).toBeLessThanOrEqual(0);
            }
          }
        }
      }),
      { numRuns: 6 },
    );
    expect(tried).toBeGreaterThan(20);
    expect(chosenProven).toBeGreaterThan(0);
  });

  test('over slides across the grain, where the line goes with its row', () => {
    let tried = 0;
    fc.assert(
      fc.property(plans(['front', 'back'], 1), (plan) => {
        const [part] = plan.base.sliding ?? [];
        fc.pre(part?.slideMm === 'choose' && plan.base.fixedLineMm === 'choose');
        const chosen = planWorktop(plan);
        const ours = worthOf(chosen);
        const { fixings, fixedLineMm } = chosen.plan.base;
        const row = fixings.findIndex(({ yMm }) => Math.abs(yMm - fixedLineMm) < 1e-6);
        fc.pre(row >= 0);
        for (const slidesMm of slidesOf(plan, 6)) {
          // The same row, wherever it then is.
          const drawn = withChoices(plan, { lineMm: 0, slidesMm, first: { xMm: 0, yMm: 0 } });
          const lineMm = planWorktop(drawn).fixings[row]?.yMm as number;
          for (const first of firstsOf(plan, chosen, meshCounts.firsts)) {
            const choices = { lineMm, slidesMm, first };
            const { length } = planWorktop(withChoices(stricter(plan, GAP_MM), choices)).holes;
            tried += 1;
            if (length < (ours[0] as number)) continue;
            expect(length, JSON.stringify(choices)).toBe(ours[0]);
            expect(slidesMm[0]).toBeLessThanOrEqual((ours[4] as number) + SAME_MM);
          }
        }
      }),
      { numRuns: 6 },
    );
    expect(tried).toBeGreaterThan(20);
  });

  test('and the plan with what was chosen given is worth as much', () => {
    fc.assert(
      fc.property(plans(['left', 'back']), (plan) => {
        const chosen = planWorktop(plan);
        expect(worthOf(planWorktop(asChosen(chosen)))).toEqual(worthOf(chosen));
      }),
      { numRuns: 30 },
    );
  });
});
