import fc from 'fast-check';
import { expect, test } from 'vitest';
import { widthChange, widthChangeByShrinkage } from '../src/index.ts';

const width = fc.double({ min: 1, max: 5000, noNaN: true });
const moisture = fc.double({ min: 0, max: 30, noNaN: true });
const coefficient = fc.double({ min: 0, max: 0.02, noNaN: true });
const shrinkage = fc.double({ min: 0, max: 30, noNaN: true });

const byCoefficient = (
  widthMm: number,
  coefficientPerPct: number,
  fromMoisturePct: number,
  toMoisturePct: number,
) => widthChange({ widthMm, coefficientPerPct, fromMoisturePct, toMoisturePct }).changeMm;
const byShrinkage = (widthMm: number, shrinkagePct: number, fromMoisturePct: number, toMoisturePct: number) =>
  widthChangeByShrinkage({ widthMm, shrinkagePct, fibreSaturationPct: 30, fromMoisturePct, toMoisturePct })
    .changeMm;

const near = (ours: number, expected: number, size: number) =>
  expect(Math.abs(ours - expected)).toBeLessThan(1e-12 * size);

test('by coefficient: steps add up, and there and back is no change', () => {
  fc.assert(
    fc.property(width, coefficient, moisture, moisture, moisture, (mm, c, from, by, to) => {
      near(byCoefficient(mm, c, from, by) + byCoefficient(mm, c, by, to), byCoefficient(mm, c, from, to), mm);
      expect(byCoefficient(mm, c, from, to)).toBe(-byCoefficient(mm, c, to, from) + 0);
    }),
  );
});

test('by shrinkage: there and back gives the width again, by any way', () => {
  fc.assert(
    fc.property(width, shrinkage, moisture, moisture, moisture, (mm, s, from, by, to) => {
      const there = mm + byShrinkage(mm, s, from, by);
      near(there + byShrinkage(there, s, by, from), mm, 2 * mm);
      const further = there + byShrinkage(there, s, by, to);
      near(further, mm + byShrinkage(mm, s, from, to), 2 * mm);
    }),
  );
});

test('by shrinkage: green to ovendry is the shrinkage itself, half way to 15 % half of it', () => {
  fc.assert(
    fc.property(width, shrinkage, (mm, s) => {
      near(byShrinkage(mm, s, 30, 0), (-s / 100) * mm, mm);
      near(byShrinkage(mm, s, 30, 15), (-s / 200) * mm, mm);
    }),
  );
});

test('a panel moves as the sum of its boards, by both', () => {
  fc.assert(
    fc.property(
      fc.array(width, { minLength: 1, maxLength: 2 }),
      shrinkage,
      moisture,
      moisture,
      (boards, s, from, to) => {
        const panel = boards.reduce((sum, mm) => sum + mm, 0);
        for (const [change, property] of [
          [byCoefficient, s / 3000],
          [byShrinkage, s],
        ] as const) {
          const sum = boards.reduce((total, mm) => total + change(mm, property, from, to), 0);
          near(sum, change(panel, property, from, to), panel);
        }
      },
    ),
  );
});

test('a wood that shrinks more moves more, by both', () => {
  fc.assert(
    fc.property(width, shrinkage, shrinkage, moisture, moisture, (mm, s, t, from, to) => {
      const [less, more] = [Math.min(s, t), Math.max(s, t)];
      const size = (change: typeof byShrinkage, property: number) => Math.abs(change(mm, property, from, to));
      expect(size(byShrinkage, more)).toBeGreaterThanOrEqual(size(byShrinkage, less));
      expect(size(byCoefficient, more / 3000)).toBeGreaterThanOrEqual(size(byCoefficient, less / 3000));
    }),
  );
});
