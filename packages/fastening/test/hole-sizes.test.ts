import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ClearanceFit,
  type ClearanceHoleInput,
  clearanceHole,
  coarseThreads,
  type DrillSeries,
  drillSizes,
  inchClearanceHoles,
  inchLagScrews,
  inchWashers,
  inchWoodScrews,
  lagScrewTips,
  largeWashers,
  metricClearanceHoles,
  metricLagScrews,
  type NearestDrillsInput,
  nearestDrills,
  normalWashers,
  plainWashers,
  roundHeadWoodScrews,
  woodScrewRoots,
} from '../src/index.ts';

const rising = (figures: readonly number[]) =>
  figures.every((figure, i) => figure > (figures[i - 1] ?? Number.NEGATIVE_INFINITY));
const column = <Row>(table: { rows: readonly Row[] }, of: (row: Row) => number) => table.rows.map(of);

describe('the tables', () => {
  test('rise from row to row', () => {
    for (const figures of [
      column(metricClearanceHoles, ({ diameterMm }) => diameterMm),
      column(metricClearanceHoles, ({ closeMm }) => closeMm),
      column(metricClearanceHoles, ({ normalMm }) => normalMm),
      column(metricClearanceHoles, ({ looseMm }) => looseMm),
      column(inchClearanceHoles, ({ diameterIn }) => diameterIn),
      column(inchClearanceHoles, ({ normalMm }) => normalMm),
      column(coarseThreads, ({ tapDrillDiameterMm }) => tapDrillDiameterMm),
      column(inchLagScrews, ({ rootDiameterIn }) => rootDiameterIn),
      column(inchWoodScrews, ({ headDiameterIn }) => headDiameterIn),
      column(inchWoodScrews, ({ headHeightIn }) => headHeightIn),
      column(woodScrewRoots, ({ rootDiameterIn }) => rootDiameterIn),
      column(metricLagScrews, ({ acrossFlatsMm }) => acrossFlatsMm),
      column(drillSizes, ({ diameterIn }) => diameterIn),
    ]) {
      expect(figures.length).toBeGreaterThan(7);
      expect(rising(figures)).toBe(true);
    }
  });

  // Source: ISO 2306 itself: a tap drill is about the diameter less the pitch. From memory.
  test('tap drills are the diameter less the pitch, within a tenth', () => {
    for (const { size, diameterMm, pitchMm, tapDrillDiameterMm } of coarseThreads.rows) {
      expect(Math.abs(diameterMm - pitchMm - tapDrillDiameterMm), size).toBeLessThanOrEqual(0.0501);
    }
  });

  // Source: the page that reprints ASME B18.2.1: depth of single thread = 0.385 × pitch.
  test('roots of lag screws are a thread’s depth inside on both sides', () => {
    for (const { size, diameterIn, threadsPerIn, rootDiameterIn } of inchLagScrews.rows) {
      expect(rootDiameterIn, size).toBeCloseTo(diameterIn - (2 * 0.385) / threadsPerIn, 2);
    }
  });

  test('roots of lag screws that are recalled from the NDS are those that were seen for ASME B18.2.1', () => {
    expect(lagScrewTips.rows).toHaveLength(11);
    for (const tip of lagScrewTips.rows) {
      const seen = inchLagScrews.rows.find(({ size }) => size === tip.size);
      expect(tip.rootDiameterIn).toBe(seen?.rootDiameterIn);
      expect(tip.diameterIn).toBe(seen?.diameterIn);
    }
  });

  // Source: Wood Handbook, ch. 8, from memory: a root is about two thirds of the shank, in most sizes.
  test('roots are two thirds to five sixths of the diameter', () => {
    const shares = [
      ...woodScrewRoots.rows.map((row) => row.rootDiameterIn / row.diameterIn),
      ...inchLagScrews.rows.map((row) => row.rootDiameterIn / row.diameterIn),
      ...roundHeadWoodScrews.rows.map((row) => row.rootDiameterMm / row.diameterMm),
      ...metricLagScrews.rows.map((row) => row.rootDiameterMm / row.diameterMm),
    ];
    expect(shares.length).toBe(41);
    for (const share of shares) {
      expect(share).toBeGreaterThan(0.63);
      expect(share).toBeLessThan(0.83);
    }
  });

  // Source: DIN 571, edition of 2010, as a data sheet for it prints roots and widths across flats, as text.
  test('metric lag screws lie within the limits of the standard', () => {
    const limits: Readonly<Record<number, readonly [number, number, number]>> = {
      4: [2.7, 2.9, 7],
      5: [3.4, 3.7, 8],
      6: [4.1, 4.4, 10],
      8: [5.5, 5.8, 13],
      10: [6.8, 7.1, 17],
    };
    const same = metricLagScrews.rows.filter(({ diameterMm }) => diameterMm in limits);
    expect(same).toHaveLength(5);
    for (const { diameterMm, rootDiameterMm, acrossFlatsMm } of same) {
      const [least = Number.NaN, most = Number.NaN, flats] = limits[diameterMm] ?? [];
      expect(rootDiameterMm).toBeGreaterThanOrEqual(least);
      expect(rootDiameterMm).toBeLessThanOrEqual(most);
      expect(acrossFlatsMm).toBe(flats);
    }
  });

  test('the diameters that are recalled with the roots are those of the gauges', () => {
    for (const { gauge, diameterIn } of woodScrewRoots.rows) {
      expect(diameterIn).toBe(inchWoodScrews.rows.find((row) => row.gauge === gauge)?.diameterIn);
    }
  });

  // Source: Machinery's Handbook, 31st ed., p. 1743, Table 3a, as text: metric drills for inch screws, close fit.
  test('inch clearance holes are the metric drills that a handbook for machinists lists', () => {
    const close = [1.7, 2.05, 2.4, 2.7, 3.0, 3.6, 3.9, 4.6, 5.2, 6.7, 8.3, 9.9, 11.5, 13.5];
    const printed = inchClearanceHoles.rows.slice(0, close.length).map(({ closeMm }) => closeMm);
    printed.forEach((closeMm, i) => {
      expect(Math.abs(closeMm - (close[i] ?? Number.NaN))).toBeLessThanOrEqual(0.1001);
    });
  });

  // Source: BS 4186:1967 as Machinery's Handbook, 31st ed., p. 2173, reprints it, as text: close, medium, free.
  test('metric clearance holes are those of BS 4186, but for the medium and free ones from 12 to 16 mm', () => {
    const british: Readonly<Record<number, readonly [number, number, number]>> = {
      1.6: [1.7, 1.8, 2.0],
      2: [2.2, 2.4, 2.6],
      2.5: [2.7, 2.9, 3.1],
      3: [3.2, 3.4, 3.6],
      4: [4.3, 4.5, 4.8],
      5: [5.3, 5.5, 5.8],
      6: [6.4, 6.6, 7.0],
      7: [7.4, 7.6, 8.0],
      8: [8.4, 9.0, 10.0],
      10: [10.5, 11.0, 12.0],
      18: [19.0, 20.0, 21.0],
      20: [21.0, 22.0, 24.0],
      22: [23.0, 24.0, 26.0],
      24: [25.0, 26.0, 28.0],
      27: [28.0, 30.0, 32.0],
      30: [31.0, 33.0, 35.0],
      36: [37.0, 39.0, 42.0],
    };
    const same = metricClearanceHoles.rows.filter(({ diameterMm }) => diameterMm in british);
    expect(same).toHaveLength(17);
    for (const { diameterMm, closeMm, normalMm, looseMm } of same) {
      expect([closeMm, normalMm, looseMm]).toEqual(british[diameterMm]);
    }
  });
});

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
      expect(rising([screwDiameterMm, ...holes])).toBe(true);
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
      expect(rising(found.map(({ outsideDiameterMm }) => outsideDiameterMm.value))).toBe(true);
    }
    expect(washers).toBe(normalWashers.rows.length + largeWashers.rows.length + inchWashers.rows.length);
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
