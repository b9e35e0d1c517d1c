import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  findHeatedYear,
  type SeasonalMovementInput,
  seasonalMoisture,
  seasonalMovement,
  widthChange,
} from '../src/index.ts';

const moistureArb = numberArb({ min: 0, max: 30 });
const yearArb = fc.tuple(moistureArb, moistureArb).map(([a, b]) => ({
  driestMoisturePct: Math.min(a, b),
  wettestMoisturePct: Math.max(a, b),
}));
const widthArb = numberArb({ min: 0, max: 10_000 });
const coefficientArb = numberArb({ min: 0, max: 0.02 });
const buildArb = fc.record(
  { year: yearArb, moisturePct: moistureArb, widthMm: widthArb, coefficientPerPct: coefficientArb },
  { noNullPrototype: true },
);

/** Room for the rounding of sums and products of numbers up to 10 000. */
const ROUNDING = 1e-9;

test('red oak flooring, laid at either end of its year', () => {
  // Hardwood Floors, 2016, seen: 5 in wide, coefficient 0.00369, 6 to 9 %: 0.055 in.
  const year = { driestMoisturePct: 6, wettestMoisturePct: 9 };
  const board = { widthMm: 5 * 25.4, coefficientPerPct: 0.00369, year };
  const laidDry = seasonalMovement({ ...board, moisturePct: 6 });
  const laidDamp = seasonalMovement({ ...board, moisturePct: 9 });
  expectWithin(laidDry.swellMm / 25.4, 0.055, 0.0005, 'laid at 6 %: it swells by 0.055 in');
  expect(laidDry.shrinkMm).toBe(0);
  expectWithin(laidDamp.shrinkMm / 25.4, 0.055, 0.0005, 'laid at 9 %: it shrinks by 0.055 in');
  expect(laidDamp.swellMm).toBe(0);
});

test('a sugar maple top in a heated house of most areas, built at the 8 % that the handbook recommends', () => {
  // Table 13-2, seen as quoted: 8 % on average, single pieces 6 to 10 %. 600 × 0.00353 × 2 = 4.236 mm each way.
  const year = findHeatedYear('Most areas of the United States');
  expect(year).not.toBeNull();
  const top = { widthMm: 600, coefficientPerPct: 0.00353, moisturePct: 8 };
  const movement = seasonalMovement({
    ...top,
    year: year ?? { driestMoisturePct: 0, wettestMoisturePct: 0 },
  });
  expectWithin(movement.shrinkMm, 4.236, 1e-9, 'worked by hand');
  expectWithin(movement.swellMm, 4.236, 1e-9, 'worked by hand');
});

test('both ways are 0 or more, and within the year they add up to its range', () => {
  fc.assert(
    fc.property(yearArb, moistureArb, (year, moisturePct) => {
      const { dryingPct, wettingPct, buildingDay } = seasonalMoisture({ year, moisturePct });
      for (const figure of [dryingPct, wettingPct]) {
        expect(figure).toBeGreaterThanOrEqual(0);
        expect(Object.is(figure, -0)).toBe(false);
      }
      const rangePct = year.wettestMoisturePct - year.driestMoisturePct;
      const both = dryingPct + wettingPct;
      if (buildingDay === 'within') expectWithin(both, rangePct, ROUNDING, 'drying and wetting');
      else expect(both).toBeGreaterThanOrEqual(rangePct - ROUNDING);
      if (buildingDay === 'wetter') expect([wettingPct, dryingPct > 0]).toEqual([0, true]);
      if (buildingDay === 'drier') expect([dryingPct, wettingPct > 0]).toEqual([0, true]);
    }),
  );
});

test('the width follows the moisture content, by the rule for it', () => {
  fc.assert(
    fc.property(buildArb, (input) => {
      const { year, moisturePct: fromMoisturePct, widthMm, coefficientPerPct } = input;
      const { dryingPct, wettingPct } = seasonalMoisture(input);
      const movement = seasonalMovement(input);
      const perPct = widthMm * coefficientPerPct;
      expectWithin(movement.shrinkMm, perPct * dryingPct, ROUNDING, 'width × coefficient × drying');
      expectWithin(movement.swellMm, perPct * wettingPct, ROUNDING, 'width × coefficient × wetting');
      const rule = { widthMm, coefficientPerPct, fromMoisturePct };
      expect(movement.driestChangeMm).toBe(
        widthChange({ ...rule, toMoisturePct: year.driestMoisturePct }).changeMm,
      );
      expect(movement.wettestChangeMm).toBe(
        widthChange({ ...rule, toMoisturePct: year.wettestMoisturePct }).changeMm,
      );
      expect(Object.values(movement).some((figure) => Object.is(figure, -0))).toBe(false);
    }),
  );
});

test('wood and air that are both drier by the same amount move as much', () => {
  const half = numberArb({ min: 0, max: 15 });
  fc.assert(
    fc.property(half, half, half, half, (a, b, built, shift) => {
      const at = (add: number) =>
        seasonalMoisture({
          year: { driestMoisturePct: Math.min(a, b) + add, wettestMoisturePct: Math.max(a, b) + add },
          moisturePct: built + add,
        });
      expectWithin(at(shift).dryingPct, at(0).dryingPct, ROUNDING, 'drying');
      expectWithin(at(shift).wettingPct, at(0).wettingPct, ROUNDING, 'wetting');
    }),
  );
});

test('a year that reaches further never moves a top less', () => {
  fc.assert(
    fc.property(buildArb, moistureArb, (input, one) => {
      const reached = {
        driestMoisturePct: Math.min(input.year.driestMoisturePct, one),
        wettestMoisturePct: Math.max(input.year.wettestMoisturePct, one),
      };
      const before = seasonalMovement(input);
      const after = seasonalMovement({ ...input, year: reached });
      expect(after.shrinkMm).toBeGreaterThanOrEqual(before.shrinkMm);
      expect(after.swellMm).toBeGreaterThanOrEqual(before.swellMm);
    }),
  );
});

test('what is given stays as it was', () => {
  const input = Object.freeze({
    year: Object.freeze({ driestMoisturePct: 6, wettestMoisturePct: 10 }),
    moisturePct: 8,
    widthMm: 600,
    coefficientPerPct: 0.00353,
  });
  expect(seasonalMovement(input)).toEqual(seasonalMovement({ ...input }));
});

test('an input that is missing or impossible is named', () => {
  const good = {
    year: { driestMoisturePct: 6, wettestMoisturePct: 10 },
    moisturePct: 8,
    widthMm: 600,
    coefficientPerPct: 0.00353,
  };
  const refused = (wrong: object, message: string) =>
    expect(() => seasonalMovement({ ...good, ...wrong })).toThrow(
      new RangeError(`seasonalMovement requires ${message}`),
    );
  refused({ widthMm: -1 }, 'widthMm between 0 and 10000, got -1');
  refused({ coefficientPerPct: 0.03 }, 'coefficientPerPct between 0 and 0.02, got 0.03');
  refused({ moisturePct: Number.NaN }, 'moisturePct between 0 and 30, got NaN');
  refused({ year: undefined }, 'year.driestMoisturePct between 0 and 30, got undefined');
  refused(
    { year: { driestMoisturePct: 6, wettestMoisturePct: 31 } },
    'year.wettestMoisturePct between 0 and 30, got 31',
  );
  refused(
    { year: { driestMoisturePct: 11, wettestMoisturePct: 10 } },
    'year.driestMoisturePct of at most year.wettestMoisturePct, got 11 and 10',
  );
  expect(() => seasonalMoisture({ ...good, moisturePct: -1 })).toThrow(
    new RangeError('seasonalMoisture requires moisturePct between 0 and 30, got -1'),
  );
  for (const plan of [seasonalMoisture, seasonalMovement]) {
    for (const nothing of [undefined, null]) {
      expect(() => plan(nothing as unknown as SeasonalMovementInput)).toThrow(
        new RangeError(`${plan.name} requires moisturePct between 0 and 30, got undefined`),
      );
    }
  }
});
