import { findMovementCoefficients } from '@scantling/species';
import { describe, expect, test } from 'vitest';
import { coefficientFromShrinkage, widthChange, widthChangeByShrinkage } from '../src/index.ts';
import { type Pair, pairs } from './coefficient-pairs.ts';

// Each of the handbook's tables is a check on the other, and together on the two equations.

const coefficientOf = (shrinkagePct: number, fibreSaturationPct: number) =>
  coefficientFromShrinkage({ shrinkagePct, fibreSaturationPct }).coefficientPerPct;

/** Whether a coefficient is what some shrinkage that rounds to the printed one gives, rounded as printed. */
function follows({ coefficientPerPct, shrinkagePct }: Pair, saturationPct: number): boolean {
  const low = coefficientOf(shrinkagePct - 0.05, saturationPct) - 0.000_005;
  const high = coefficientOf(shrinkagePct + 0.05, saturationPct) + 0.000_005;
  return coefficientPerPct >= low && coefficientPerPct <= high;
}

const speciesOf = (some: readonly Pair[]) => [...new Set(some.map(({ species }) => species))].sort();

const grouped = ['Ash, green', 'Birch, sweet', 'Elm, cedar', 'Maple, black', 'Pine, pond'];
const misprinted = ['Oak, black'];
const lowSaturation = [
  'Cedar, northern white',
  'Cedar, western red',
  'Redwood, old-growth',
  'Redwood, second-growth',
];
const imported = [
  'Andiroba, crabwood',
  'Apitong, keruing',
  'Avodire',
  'Greenheart',
  'Iroko',
  'Khaya',
  'Kokrodua',
  'Limba',
  'Mahogany',
  'Obeche',
  'Okoume',
  'Ramin',
  'Spanish-cedar',
  'Teak',
];
const exceptions = [...grouped, ...misprinted, ...lowSaturation, ...imported];

describe('the printed coefficients follow from the printed shrinkage', () => {
  test('to the rounding of both, but for the known exceptions', () => {
    expect(pairs).toHaveLength(214);
    const others = pairs.filter((pair) => !follows(pair, 30));
    expect(others).toHaveLength(44);
    expect(speciesOf(others)).toEqual([...exceptions].sort());
  });

  test('with 22 % fibre saturation for the cedars and redwoods that have it', () => {
    const low = pairs.filter(({ species }) => lowSaturation.includes(species));
    expect(low).toHaveLength(8);
    expect(low.filter((pair) => !follows(pair, 22))).toEqual([]);
  });

  test('within 15 % for species that share the coefficient of another', () => {
    const shared = pairs.filter(({ species }) => grouped.includes(species));
    const off = shared.map((pair) =>
      Math.abs(pair.coefficientPerPct / coefficientOf(pair.shrinkagePct, 30) - 1),
    );
    expect(off).toHaveLength(10);
    expect(Math.max(...off)).toBeLessThan(0.15);
    expect(Math.max(...off)).toBeGreaterThan(0.1);
  });

  test('for black oak not at all: it has the row of California black oak', () => {
    const [black, california] = ['Oak, black', 'Red oak, California'].map(findMovementCoefficients);
    expect(black).toMatchObject({
      radialPerPct: california?.radialPerPct,
      tangentialPerPct: california?.tangentialPerPct,
    });
    expect(coefficientOf(11.1, 30)).toBeGreaterThan(1.6 * (black?.tangentialPerPct ?? Number.NaN));
  });

  test('and every exception tells so in its citation', () => {
    expect(exceptions).toHaveLength(24);
    for (const species of exceptions) {
      expect(findMovementCoefficients(species)?.citation).toHaveProperty('erratum');
    }
  });
});

test('both ways to the change in width agree from 6 to 14 %, for every wood whose tables agree', () => {
  const widthMm = 600;
  let compared = 0;
  for (const { species, coefficientPerPct, shrinkagePct } of pairs) {
    if (exceptions.includes(species)) continue;
    // The coefficient is a share of the width at 10 %, up to 4 C from the width at 6 or 14 %; both are rounded.
    const rounding = 0.05 / shrinkagePct + 0.000_005 / coefficientPerPct;
    const allowed = 4 * coefficientPerPct + 1.1 * rounding;
    for (const fromMoisturePct of [6, 8, 10, 12, 14]) {
      for (const toMoisturePct of [6, 9, 11, 14]) {
        const moisture = { fromMoisturePct, toMoisturePct };
        const a = widthChange({ widthMm, coefficientPerPct, ...moisture }).changeMm;
        const b = widthChangeByShrinkage({
          widthMm,
          shrinkagePct,
          fibreSaturationPct: 30,
          ...moisture,
        }).changeMm;
        if (!(Math.abs(a - b) <= allowed * Math.max(Math.abs(a), Math.abs(b)))) {
          expect.fail(`${species}, ${fromMoisturePct} to ${toMoisturePct} %: ${a} and ${b} mm`);
        }
        compared += 1;
      }
    }
  }
  expect(compared).toBe((214 - 2 * 24) * 20);
});
