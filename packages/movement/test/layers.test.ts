import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expm, index, type Matrix, matrix, multiply, zeros } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { cutIntoLayers } from '../src/layers.ts';
import { type Faces, uptakeResisted } from './plane-sheet.ts';

const faces: Faces = {
  thicknessMm: 40,
  diffusionMm2PerDay: 2,
  topResistanceDaysPerMm: 5,
  undersideResistanceDaysPerMm: 5,
};

function follow(sheet: Faces, layerCount: number, stepDays: number, steps: number) {
  const panel = cutIntoLayers(sheet, { layerCount, stepDays }, 0);
  for (let step = 0; step < steps; step++) panel.step(1);
  return panel.profile();
}

/** How often a quantity falls by two as the cut is made twice as fine. */
const order = ([coarse, middle, fine]: readonly [number, number, number]) =>
  Math.log2(Math.abs(coarse - middle) / Math.abs(middle - fine));

describe('the answer as the cut gets finer', () => {
  const exact = uptakeResisted(0.2, 2);

  test('comes nearer with the square of the layers', () => {
    const means = [10, 20, 40].map((layerCount) => follow(faces, layerCount, 1, 40).meanPct);
    expect(order(means as [number, number, number])).toBeGreaterThan(1.9);
  });

  test('comes nearer with the length of the step', () => {
    const means = [1, 0.5, 0.25].map((stepDays) => follow(faces, 40, stepDays, 40 / stepDays).meanPct);
    expect(order(means as [number, number, number])).toBeGreaterThan(0.95);
  });

  test('goes towards the exact one', () => {
    const off = [1, 2, 4].map((finer) =>
      Math.abs(follow(faces, 20 * finer, 1 / 4 ** finer, 40 * 4 ** finer).meanPct - exact),
    );
    expect(off[0]).toBeLessThan(0.004);
    expect(off[1]).toBeLessThan((off[0] as number) / 3);
    expect(off[2]).toBeLessThan(0.0001);
  });
});

/**
 * The same sheet by another cut and another way through time: points at even distances, the faces among them, and the
 * exponential of their matrix.
 */
function byMatrixExponential(sheet: Faces, points: number, days: number): number[] {
  const h = sheet.thicknessMm / (points - 1);
  const inside = sheet.diffusionMm2PerDay / h;
  const rates = zeros(points + 1, points + 1) as Matrix;
  const exchange = (row: number, column: number, perDay: number) => {
    rates.set([row, column], rates.get([row, column]) + perDay);
    rates.set([row, row], rates.get([row, row]) - perDay);
  };
  for (let i = 0; i < points; i++) {
    const held = i === 0 || i === points - 1 ? h / 2 : h;
    if (i > 0) exchange(i, i - 1, inside / held);
    if (i < points - 1) exchange(i, i + 1, inside / held);
    // The last column is the air, which stays at 1.
    if (i === 0) exchange(i, points, 1 / sheet.topResistanceDaysPerMm / held);
    if (i === points - 1) exchange(i, points, 1 / sheet.undersideResistanceDaysPerMm / held);
  }
  const after = expm(multiply(rates, days) as Matrix);
  return matrix(after)
    .subset(index([...Array(points).keys()], points))
    .toArray()
    .flat() as number[];
}

test.each([2, 10, 60])('a matrix exponential gives the same after %i days', (days) => {
  const sheet = { ...faces, topResistanceDaysPerMm: 0.5, undersideResistanceDaysPerMm: 12 };
  const points = byMatrixExponential(sheet, 61, days);
  const inner = points.slice(1, -1).reduce((sum, one) => sum + one, 0);
  const mean = (inner + ((points[0] as number) + (points[60] as number)) / 2) / 60;
  const ours = follow(sheet, 40, 1 / 32, 32 * days);
  expectWithin(ours.meanPct, mean, 0.001, 'mathjs, expm');
  expectWithin(ours.corePct, points[30] as number, 0.001, 'mathjs, expm');
  expectWithin(ours.topPct, points[0] as number, 0.002, 'mathjs, expm');
  expectWithin(ours.undersidePct, points[60] as number, 0.002, 'mathjs, expm');
});

const positive = numberArb({ min: 0.01, max: 1000 });
const sheetArb: fc.Arbitrary<Faces> = fc.record({
  thicknessMm: numberArb({ min: 1, max: 1000 }),
  diffusionMm2PerDay: positive,
  topResistanceDaysPerMm: positive,
  undersideResistanceDaysPerMm: positive,
});

test('what the panel gains is what came through its faces, step by step', () => {
  fc.assert(
    fc.property(
      sheetArb,
      fc.record({
        layerCount: fc.nat(30).map((n) => 2 + 2 * n),
        stepDays: numberArb({ min: 0.001, max: 1000 }),
      }),
      fc.array(numberArb({ min: 0, max: 30 }), { minLength: 1, maxLength: 20 }),
      (sheet, resolution, climate) => {
        const panel = cutIntoLayers(sheet, resolution, 8);
        for (const outside of climate) {
          const before = panel.profile().meanPct;
          panel.step(outside);
          const { meanPct, topPct, undersidePct } = panel.profile();
          const through =
            (outside - topPct) / sheet.topResistanceDaysPerMm +
            (outside - undersidePct) / sheet.undersideResistanceDaysPerMm;
          const gained = (sheet.thicknessMm * (meanPct - before)) / resolution.stepDays;
          // Both are differences of figures up to 30, each known to its rounding.
          const perPct =
            sheet.thicknessMm / resolution.stepDays +
            1 / sheet.topResistanceDaysPerMm +
            1 / sheet.undersideResistanceDaysPerMm;
          expect(Math.abs(gained - through)).toBeLessThan(30 * perPct * 1e-13);
        }
      },
    ),
  );
});

test('a step as long as a lifetime does not overshoot', () => {
  fc.assert(
    fc.property(sheetArb, numberArb({ min: 0, max: 30 }), (sheet, outside) => {
      const panel = cutIntoLayers(sheet, { layerCount: 40, stepDays: 30_000 }, 8);
      for (let step = 0; step < 3; step++) panel.step(outside);
      const [low, high] = [Math.min(8, outside) - 1e-11, Math.max(8, outside) + 1e-11];
      expect(Object.values(panel.profile()).every((pct) => pct >= low && pct <= high)).toBe(true);
    }),
  );
});
