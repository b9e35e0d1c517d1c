import { planFixings } from '@scantling/fastening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import job from '../../src/jobs/slots-and-screws.ts';
import { figuresOf, outcomeOf } from './figures.ts';

test('the screws of the bindery bench, by hand', () => {
  const figures = figuresOf(job);
  // 250 × 0.00353 × (11.2 − 8) = 2.824; 250 × 0.00353 × (8 − 6.5) = 1.32375
  expect(figures.swellMm).toBeCloseTo(2.824, 9);
  expect(figures.shrinkMm).toBeCloseTo(1.32375, 9);
  // 6 + 2.824 + 1.32375 + 2 × 0.5; 0.5 + 1.32375 + 3
  expect(figures.slotLengthMm).toBeCloseTo(11.14775, 9);
  expect(figures.screwFromInnerEndMm).toBeCloseTo(4.82375, 9);
  // From the screw to the farther end of the slot at the worst: 4.82375 + 2.824 = 7.64775, and twice that.
  expect(figures.washerDiameterMm).toBeCloseTo(15.2955, 9);
});

const row = fc.record({
  yMm: fc.integer({ min: 0, max: 640 }),
  holeMm: fc.option(fc.integer({ min: 7, max: 30 })),
});

test('slots, holes that stay and the rows that hold are those of the planner of the whole base', () => {
  const rows = fc.uniqueArray(row, { minLength: 1, maxLength: 6, selector: ({ yMm }) => yMm });
  fc.assert(
    fc.property(rows, fc.constantFrom('front', 'middle', 'back'), (given, line) => {
      const { tables, verdict } = outcomeOf(job, {
        rows: given.map(({ yMm, holeMm }) => ({ yMm: `${yMm}`, holeMm: `${holeMm ?? ''}` })),
        line,
        washerMm: '200',
      });
      const plan = planFixings({
        top: { frontYMm: 0, backYMm: 640 },
        base: { frontYMm: 0, backYMm: 640 },
        fixings: given.map(({ yMm, holeMm }, i) => ({
          name: `${i}`,
          xMm: 0,
          yMm,
          by: { kind: 'screw', ...(holeMm !== null && { holeMm }) },
        })),
        fixedLine: line === 'middle' ? line : line === 'front' ? 'front row' : 'back row',
        swellPct: 100 * 0.00353 * (11.2 - 8),
        shrinkPct: 100 * 0.00353 * (8 - 6.5),
        shankDiameterMm: 6,
        clearanceMm: 0.5,
      });
      expect(verdict?.good).toBe(plan.holding.length > 0);
      for (const [i, { fit, distanceMm }] of plan.fixings.entries()) {
        if (fit.kind !== 'opening') throw new Error('The planner was given screws alone.');
        const cells = tables?.[0]?.rows[i] ?? [];
        expect(cells[4]).toBeCloseTo(fit.neededMm, 9);
        const does = `${cells[6]}`;
        if (given[i]?.holeMm === null)
          expect(does).toMatch(distanceMm > 0 ? /^cut a slot/ : /^drill it round/);
        // The planner may have the screw stand off the middle of its hole; the calculator asks for no more than the middle.
        else if (does.startsWith('leave it')) expect(fit.work).toBe('leave it as it is');
        else if (fit.work === 'make it a slot') expect(does).toMatch(/^lengthen/);
      }
    }),
  );
});

test('of the three lines, the middle asks for the shortest slots', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 640 }), { minLength: 2, maxLength: 6 }), (ys) => {
      const { tables } = outcomeOf(job, { rows: ys.map((yMm) => ({ yMm: `${yMm}`, holeMm: '' })) });
      const [front, middle, back] = (tables?.[1]?.rows ?? []).map(([, longest]) => longest as number);
      expect(middle).toBeLessThan(Math.min(front as number, back as number));
    }),
  );
});
