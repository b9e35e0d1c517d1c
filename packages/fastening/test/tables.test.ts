import { fileURLToPath } from 'node:url';
import { describeTables } from '@scantling/tests-shared';
import { describe, expect, test } from 'vitest';
import {
  coarseThreads,
  drillSizes,
  inchClearanceHoles,
  inchLagScrews,
  inchWoodScrews,
  lagScrewTips,
  metricClearanceHoles,
  metricLagScrews,
  roundHeadWoodScrews,
  woodScrewRoots,
} from '../src/index.ts';
import { isRising } from './is-rising.ts';

describeTables(fileURLToPath(new URL('..', import.meta.url)));

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
      expect(isRising(figures)).toBe(true);
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
