import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  coefficientFromShrinkage,
  longitudinalShrinkage,
  specificGravityAtMoisture,
  thermalChange,
  thermalExpansionProvenance,
  thermalExpansionTable,
  widthChange,
  woodThermalExpansion,
} from '../src/index.ts';

const ovendry = (basicSpecificGravityRatio: number) =>
  specificGravityAtMoisture({ basicSpecificGravityRatio, moisturePct: 0 }).specificGravityRatio;

const printed = (material: string, direction: string) =>
  thermalExpansionTable.filter((row) => row.material === material && row.direction === direction);

test('every row says its range the right way round, and every table its source', () => {
  expect(thermalExpansionTable).toHaveLength(16);
  for (const { lowUmPerMK, highUmPerMK } of thermalExpansionTable) {
    expect(lowUmPerMK).toBeLessThanOrEqual(highUmPerMK);
  }
  expect(thermalExpansionProvenance.map(({ source }) => source.id)).toEqual([
    'thermal-expansion-article',
    'engineering-tables',
    'wood-handbook-2010',
  ]);
});

test('tables agree on the metals that they share, within what they print for steel', () => {
  const metals = ['aluminium', 'brass', 'copper', 'carbon steel'];
  const shared = metals.map((metal) => printed(metal, 'every').map(({ lowUmPerMK }) => lowUmPerMK));
  expect(shared.every((figures) => figures.length === 2)).toBe(true);
  for (const [a = Number.NaN, b] of shared)
    expectWithin(b, a, 0.12 * a, 'encyclopedia beside engineers’ tables');
});

test('the equations for dry wood beside figures measured and printed', () => {
  // Green specific gravities of the Wood Handbook, Table 5-3, from memory.
  const douglasFir = woodThermalExpansion({ ovendrySpecificGravityRatio: ovendry(0.45) });
  const yellowBirch = woodThermalExpansion({ ovendrySpecificGravityRatio: ovendry(0.55) });
  const encyclopedia = (direction: string) => printed('Douglas-fir', direction)[0]?.lowUmPerMK ?? Number.NaN;
  expectWithin(douglasFir.radialUmPerMK, encyclopedia('radial'), 1, 'encyclopedia: Douglas-fir, radial');
  // Kubler, Liang and Chang 1973, abstract: tangential, at 12 % moisture content and room temperature.
  expectWithin(douglasFir.tangentialUmPerMK, 38, 3.1, 'Thermal Expansion of Moist Wood: Douglas-fir');
  expectWithin(yellowBirch.tangentialUmPerMK, 38, 1.5, 'Thermal Expansion of Moist Wood: yellow birch');
  // Two woods for which moist wood swells much more with warmth than dry wood does, as the card says.
  for (const [basic, measured] of [
    [0.38, 53],
    [0.56, 70],
  ] as const) {
    const { tangentialUmPerMK } = woodThermalExpansion({ ovendrySpecificGravityRatio: ovendry(basic) });
    expect(tangentialUmPerMK).toBeGreaterThan(measured / 2);
    expect(tangentialUmPerMK).toBeLessThan(measured / 1.5);
  }
});

test('oak swells with warmth about eleven times as much across its grain as along it', () => {
  // Record 1914: .00000492 along, .0000544 radially, "about eleven times". The encyclopedia prints 54 across.
  const across = printed('oak', 'across')[0]?.lowUmPerMK;
  expectWithin(across, 54.4, 0.5, 'The Mechanical Properties of Wood, thermal properties');
  const along = printed('wood', 'along')[0];
  expect((across ?? Number.NaN) / (along?.highUmPerMK ?? Number.NaN)).toBeGreaterThan(11);
});

test('warmed and cooled again, and warmed in two steps', () => {
  const degrees = numberArb({ min: -40, max: 80 });
  fc.assert(
    fc.property(
      numberArb({ min: 0, max: 5000 }),
      numberArb({ min: 0, max: 60 }),
      degrees,
      degrees,
      degrees,
      (...given) => {
        const [lengthMm, expansionUmPerMK, a, b, c] = given;
        const change = (fromTemperatureC: number, toTemperatureC: number) =>
          thermalChange({ lengthMm, expansionUmPerMK, fromTemperatureC, toTemperatureC }).changeMm;
        expect(Math.abs(change(a, b) + change(b, a))).toBeLessThan(1e-9);
        expect(Math.abs(change(a, b) + change(b, c) - change(a, c))).toBeLessThan(1e-9);
      },
    ),
  );
});

test('along the grain a metre of wood moves less than a tenth of a millimetre for each 1 %', () => {
  const { lowPct, highPct } = longitudinalShrinkage;
  const [low, high] = [lowPct, highPct].map((shrinkagePct) => {
    const { coefficientPerPct } = coefficientFromShrinkage({ shrinkagePct, fibreSaturationPct: 30 });
    return widthChange({ widthMm: 1000, coefficientPerPct, fromMoisturePct: 8, toMoisturePct: 9 }).changeMm;
  });
  // By hand: 0.1 % over 30 % is 0.0333 mm for a metre and 1 %, 0.2 % is 0.0667 mm.
  expectWithin(low, 0.0333, 0.0001, 'by hand');
  expectWithin(high, 0.0667, 0.0002, 'by hand');
});
