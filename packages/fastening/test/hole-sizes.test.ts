import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ClearanceFit,
  type ClearanceHoleInput,
  clearanceHole,
  type DrillSeries,
  inchClearanceHoles,
  inchWashers,
  largeWashers,
  metricClearanceHoles,
  type NearestDrillsInput,
  nearestDrills,
  normalWashers,
  plainWashers,
} from '../src/index.ts';
import { isRising } from './is-rising.ts';

describe('clearanceHole', () => {
  const fits: readonly ClearanceFit[] = ['close', 'normal', 'loose'];

  test('has room for every screw of its tables, more of it from fit to fit', () => {
    const diameters = [
      ...metricClearanceHoles.rows.map(({ diameterMm }) => diameterMm),
      ...inchClearanceHoles.rows.map(({ diameterIn }) => diameterIn * 25.4),
    ];
    expect(diameters).toHaveLength(42);
    for (const screwDiameterMm of diameters) {
      const holes = fits.map((fit) => clearanceHole({ screwDiameterMm, fit })?.holeDiameterMm.value ?? 0);
      expect(isRising([screwDiameterMm, ...holes])).toBe(true);
    }
  });

  // Source: ISO 273 medium series: M6 6.6, M8 9, M10 11; the normal holes of ASME B18.2.8 are drills No. 9 and 9/32 in.
  test('is the hole of the tables', () => {
    const hole = (screwDiameterMm: number, fit: ClearanceFit) =>
      clearanceHole({ screwDiameterMm, fit })?.holeDiameterMm.value;
    expect([6, 8, 10].map((diameterMm) => hole(diameterMm, 'normal'))).toEqual([6.6, 9, 11]);
    expect(hole(0.164 * 25.4, 'normal')).toBeCloseTo(0.196 * 25.4, 1);
    expect(hole(6.35, 'normal')).toBeCloseTo((9 / 32) * 25.4, 1);
  });

  test('says what to heed at the drill, and that the maker of a screw knows better', () => {
    const { cautions = [] } = clearanceHole({ screwDiameterMm: 6, fit: 'normal' }) ?? {};
    expect(cautions.join(' ')).toMatch(/maker/);
    expect(cautions.join(' ')).toMatch(/eye protection/);
  });

  test('is none for a size between those of the tables', () => {
    expect(clearanceHole({ screwDiameterMm: 0.151 * 25.4, fit: 'normal' })).toBeNull();
    fc.assert(
      fc.property(numberArb({ min: 6.02, max: 6.33 }), fc.constantFrom(...fits), (screwDiameterMm, fit) => {
        expect(clearanceHole({ screwDiameterMm, fit })).toBeNull();
      }),
    );
  });

  test.each([
    [{ screwDiameterMm: Number.NaN, fit: 'close' }, 'screwDiameterMm between 0.5 and 50, got NaN'],
    [{ screwDiameterMm: 6, fit: 'free' }, 'fit to be one of close, normal, loose, got "free"'],
    [undefined, 'screwDiameterMm between 0.5 and 50, got undefined'],
  ])('refuses %o', (input, says) => {
    expect(() => clearanceHole(input as ClearanceHoleInput)).toThrow(`clearanceHole requires ${says}`);
  });
});

describe('plainWashers', () => {
  test('go over the screw, and are wider in the wider series', () => {
    const diameters = new Set([
      ...[normalWashers, largeWashers].flatMap(({ rows }) => rows.map(({ diameterMm }) => diameterMm)),
      ...inchWashers.rows.map(({ diameterIn }) => diameterIn * 25.4),
    ]);
    let washers = 0;
    for (const screwDiameterMm of diameters) {
      const found = plainWashers({ screwDiameterMm });
      washers += found.length;
      for (const { insideDiameterMm, outsideDiameterMm, thicknessMm } of found) {
        expect(insideDiameterMm.value).toBeGreaterThan(screwDiameterMm);
        expect(outsideDiameterMm.value).toBeGreaterThan(1.4 * insideDiameterMm.value);
        expect(thicknessMm.value).toBeGreaterThan(0);
      }
      expect(isRising(found.map(({ outsideDiameterMm }) => outsideDiameterMm.value))).toBe(true);
    }
    expect(washers).toBe(normalWashers.rows.length + largeWashers.rows.length + inchWashers.rows.length);
  });

  test('of one size are told apart by their series', () => {
    for (const { diameterIn } of inchWashers.rows) {
      const found = plainWashers({ screwDiameterMm: diameterIn * 25.4 }).map(({ series }) => series);
      expect(new Set(found).size).toBe(found.length);
      expect(found.includes('undivided')).toBe(diameterIn < 0.25);
    }
  });

  // Source: DIN 125 and DIN 9021, the older numbers, for M6, as an open-hardware page lists them, as text.
  test('are those of the standards for M6', () => {
    const outside = (screwDiameterMm: number) =>
      plainWashers({ screwDiameterMm }).map(({ outsideDiameterMm }) => outsideDiameterMm.value);
    expect(outside(6)).toEqual([12, 18]);
  });

  test.each([[{ screwDiameterMm: -1 }], [{ screwDiameterMm: Number.POSITIVE_INFINITY }], [undefined]])(
    'refuses %o',
    (input) => {
      expect(() => plainWashers(input as { screwDiameterMm: number })).toThrow(
        /^plainWashers requires screwDiameterMm between 0.5 and 50, got /,
      );
    },
  );
});

describe('nearestDrills', () => {
  const steps: Readonly<Record<DrillSeries, { min: number; max: number; stepMm: number }>> = {
    metric: { min: 0.3, max: 25, stepMm: 0.5 },
    fraction: { min: 25.4 / 64, max: 25.4, stepMm: 25.4 / 64 },
    'number-letter': { min: 0.343, max: 10.49, stepMm: 0.36 },
  };
  const asked = fc
    .constantFrom<DrillSeries>('metric', 'fraction', 'number-letter')
    .chain((series) => numberArb(steps[series]).map((holeDiameterMm) => ({ holeDiameterMm, series })));

  test('stand on either side of the hole, with no drill between, and each is its own nearest', () => {
    fc.assert(
      fc.property(asked, ({ holeDiameterMm, series }) => {
        const { notLarger, notSmaller } = nearestDrills({ holeDiameterMm, series });
        const [low = Number.NaN, high = Number.NaN] = [notLarger?.diameterMm, notSmaller?.diameterMm];
        expect(low).toBeLessThanOrEqual(holeDiameterMm + 0.0006);
        expect(high).toBeGreaterThanOrEqual(holeDiameterMm - 0.0006);
        expect(high - low).toBeLessThanOrEqual(steps[series].stepMm + 1e-9);
        if (notLarger) {
          expect(nearestDrills({ holeDiameterMm: low, series })).toEqual({
            notLarger,
            notSmaller: notLarger,
          });
        }
        const between = nearestDrills({ holeDiameterMm: (low + high) / 2, series });
        if (high > low) expect(between).toEqual({ notLarger, notSmaller });
      }),
    );
  });

  // Source: ASME B18.2.8 names these drills for its normal holes, as Machinery's Handbook, 31st ed., p. 1741, reprints
  // it, as text; their decimals, but for the first, and that of Z from memory.
  test.each([
    [0.076, 'No. 48'],
    [0.089, 'No. 43'],
    [0.116, 'No. 32'],
    [0.196, 'No. 9'],
    [0.221, 'No. 2'],
    [0.413, 'Z'],
  ])('%f in is the drill %s', (diameterIn, name) => {
    const { notLarger, notSmaller } = nearestDrills({
      holeDiameterMm: diameterIn * 25.4,
      series: 'number-letter',
    });
    expect([notLarger?.name, notSmaller?.name]).toEqual([name, name]);
  });

  test('names fractions in lowest terms', () => {
    const name = (sixtyFourths: number) =>
      nearestDrills({ holeDiameterMm: (sixtyFourths / 64) * 25.4, series: 'fraction' }).notLarger?.name;
    expect([1, 2, 12, 16, 32, 48, 63, 64].map(name)).toEqual(
      ['1/64', '1/32', '3/16', '1/4', '1/2', '3/4', '63/64', '1'].map((fraction) => `${fraction} in`),
    );
  });

  test('are none beyond the ends of the series', () => {
    expect(nearestDrills({ holeDiameterMm: 0.2, series: 'metric' }).notLarger).toBeNull();
    expect(nearestDrills({ holeDiameterMm: 26, series: 'fraction' }).notSmaller).toBeNull();
    expect(nearestDrills({ holeDiameterMm: 12, series: 'number-letter' }).notLarger?.name).toBe('Z');
  });

  test.each([
    [{ holeDiameterMm: 0, series: 'metric' }, 'holeDiameterMm between 0.1 and 30, got 0'],
    [
      { holeDiameterMm: 4, series: 'inch' },
      'series to be one of metric, fraction, number-letter, got "inch"',
    ],
    [undefined, 'holeDiameterMm between 0.1 and 30, got undefined'],
  ])('refuses %o', (input, says) => {
    expect(() => nearestDrills(input as NearestDrillsInput)).toThrow(`nearestDrills requires ${says}`);
  });
});
