import { unit } from 'mathjs';
import { expect, test } from 'vitest';
import { spreadingRate } from '../src/index.ts';
import { printedSpreadingRates as cells } from './printed-spreading-rates.ts';

/** ft²/gal in one m²/L: a US gallon is 231 in³ of 25.4 mm, a square foot 304.8 mm squared. */
const FT2_PER_GAL = (231 * 25.4 ** 3) / 1e6 / 0.3048 ** 2;

const computed = (mils: number, volumeSolidsPct: number) =>
  spreadingRate({ volumeSolidsPct, dryFilmUm: mils * 25.4 }).spreadingRateM2PerL * FT2_PER_GAL;

test('m²/L turns into ft²/gal as a general unit library turns it', () => {
  expect(FT2_PER_GAL).toBeCloseTo(unit(1, 'm^2/L').toNumber('sqft/gal'), 10);
});

test('every cell of the chart, to half of its last digit', () => {
  expect(cells).toHaveLength(8 * 24);
  const apart = cells.filter(([mils, pct, ft2PerGal]) => !(Math.abs(computed(mils, pct) - ft2PerGal) <= 0.5));
  expect(apart).toEqual([
    // The chart works with 1604, not with 231 000 / 144 = 1604.17: in three cells that decides the rounding.
    [1, 86, 1379],
    [2, 72, 527], // A misprint: 1604 × 0.72 / 2 = 577.44.
    [2, 74, 593],
    [8, 98, 196],
  ]);
});

test('the cells apart are explained by the chart’s 1604, but for the misprint', () => {
  const from1604 = cells.filter(
    ([mils, pct, ft2PerGal]) => Math.round((1604 * pct) / 100 / mils) !== ft2PerGal,
  );
  expect(from1604).toEqual([[2, 72, 527]]);
  const share = 231_000 / 144 / 1604;
  for (const [mils, pct] of cells) {
    expect(computed(mils, pct) / ((1604 * pct) / 100 / mils)).toBeCloseTo(share, 12);
  }
});
