import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Chosen, type Plan, planWorktop, type WorktopPlan } from '../src/index.ts';
import { asChosen, plans, reversed } from './settle-plans.ts';

const everyWay = ['left', 'right', 'front', 'back'] as const;

/** The places of a plan that are left open, as its file would name them. */
const openPaths = ({ base, holes }: Plan) => [
  ...(base.fixedLineMm === 'choose' ? ['base.fixedLine'] : []),
  ...(base.sliding ?? []).flatMap(({ slideMm }, i) =>
    slideMm === 'choose' ? [`base.sliding[${i}].slide`] : [],
  ),
  ...(holes.first === 'choose' ? ['holes.first'] : []),
];

const planOf = ({ asked: _, chosen: __, ...rest }: WorktopPlan) => rest;

describe('laws of what is chosen', () => {
  test('each open place gets its choice, with a sentence and figures, and no other place does', () => {
    let choices = 0;
    fc.assert(
      fc.property(plans(everyWay), (plan) => {
        const { chosen } = planWorktop(plan);
        expect(chosen.map(({ path }) => path)).toEqual(openPaths(plan));
        for (const { says, proven } of chosen) {
          expect(says).toMatch(/\d\.\d mm.*\.$/s);
          expect(typeof proven).toBe('boolean');
          choices += 1;
        }
      }),
    );
    expect(choices).toBeGreaterThan(50);
  });

  test('the plan with the chosen values given is the same plan', () => {
    let given = 0;
    fc.assert(
      fc.property(plans(everyWay), (plan) => {
        const result = planWorktop(plan);
        const again = planWorktop(asChosen(structuredClone(result)));
        expect(again.chosen).toEqual([]);
        expect(planOf(again)).toEqual(planOf(result));
        given += result.chosen.length;
      }),
    );
    expect(given).toBeGreaterThan(50);
  });

  test('the order of lists changes nothing of what is chosen', () => {
    const valuesOf = (chosen: readonly Chosen[]) =>
      new Map(chosen.filter(({ path }) => !path.includes('sliding')).map(({ path, value }) => [path, value]));
    fc.assert(
      fc.property(plans(everyWay), (plan) => {
        const [one, other] = [planWorktop(plan), planWorktop(reversed(plan))];
        expect(valuesOf(other.chosen)).toEqual(valuesOf(one.chosen));
        const slides = ({ plan: { base } }: WorktopPlan) =>
          Object.fromEntries((base.sliding ?? []).map(({ name, slideMm }) => [name, slideMm]));
        expect(slides(other)).toEqual(slides(one));
      }),
    );
  });

  test('parts stand where they have slid to, screws and all, within their limits', () => {
    const steps = { left: [-1, 0], right: [1, 0], front: [0, -1], back: [0, 1] } as const;
    let slid = 0;
    fc.assert(
      fc.property(plans(everyWay), (plan) => {
        const { base } = planWorktop(plan).plan;
        for (const list of ['members', 'fixings'] as const) {
          for (const [i, drawn] of plan.base[list].entries()) {
            const part = base.sliding?.find((one) => one[list].includes(drawn.name));
            const [x, y] = part ? steps[part.widensTowards] : [0, 0];
            const byMm = part?.slideMm ?? 0;
            expect(base[list][i]).toMatchObject({ name: drawn.name });
            expect(base[list][i]?.xMm).toBeCloseTo(drawn.xMm + x * byMm, 9);
            expect(base[list][i]?.yMm).toBeCloseTo(drawn.yMm + y * byMm, 9);
            slid += byMm === 0 ? 0 : 1;
          }
        }
        for (const { slideMm, leastSlideMm, mostSlideMm } of base.sliding ?? []) {
          expect(slideMm).toBeGreaterThanOrEqual(leastSlideMm);
          expect(slideMm).toBeLessThanOrEqual(mostSlideMm);
        }
      }),
    );
    expect(slid).toBeGreaterThan(20);
  });

  test('a top that is held at a line of its own choosing is held on a row of screws, or in the middle', () => {
    fc.assert(
      fc.property(plans(everyWay), (plan) => {
        fc.pre(plan.base.fixedLineMm === 'choose');
        const { base } = planWorktop(plan).plan;
        const ys = base.fixings.map(({ yMm }) => yMm);
        const lines = [...ys, (Math.min(...ys) + Math.max(...ys)) / 2];
        expect(Math.min(...lines.map((yMm) => Math.abs(yMm - base.fixedLineMm)))).toBeLessThan(1e-6);
      }),
    );
  });

  test('more room to slide never keeps fewer holes, and never makes the base narrower', () => {
    fc.assert(
      fc.property(plans(['left', 'right'], 1), fc.integer({ min: 0, max: 40 }), (plan, moreMm) => {
        const [part] = plan.base.sliding ?? [];
        fc.pre(part?.slideMm === 'choose');
        const longer = { ...part, mostSlideMm: part.mostSlideMm + moreMm };
        const [one, other] = [plan, { ...plan, base: { ...plan.base, sliding: [longer] } }].map((asked) =>
          planWorktop({ ...asked, base: { ...asked.base, fixedLineMm: 100 } }),
        ) as [WorktopPlan, WorktopPlan];
        const slide = ({ plan: { base } }: WorktopPlan) => base.sliding?.[0]?.slideMm as number;
        expect(other.holes.length).toBeGreaterThanOrEqual(one.holes.length);
        if (other.holes.length === one.holes.length) {
          expect(slide(other)).toBeGreaterThanOrEqual(slide(one) - 0.02);
        }
      }),
    );
  });
});
