import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  lagScrewLeadHole,
  lagScrewSpacing,
  nailLeadHole,
  predrilledHole,
  predrilledHoleRule,
  pulledScrewSpacing,
  screwSpacing,
  woodScrewLeadHole,
  woodScrewSpacing,
} from '../src/index.ts';

const densities = numberArb({ min: 0.2, max: 1.1 });
const screws = fc
  .record({ shankDiameterMm: numberArb({ min: 2, max: 10 }), rootPart: numberArb({ min: 0.5, max: 1 }) })
  .map(({ shankDiameterMm, rootPart }) => ({ shankDiameterMm, rootDiameterMm: rootPart * shankDiameterMm }));

describe('lead holes', () => {
  test('no hole is wider than what goes into it', () => {
    fc.assert(
      fc.property(screws, densities, (screw, ovendrySpecificGravityRatio) => {
        for (const load of ['withdrawal', 'lateral'] as const) {
          const { threadHoleMm, shankHoleMm } = woodScrewLeadHole({
            ...screw,
            ovendrySpecificGravityRatio,
            load,
          });
          if (threadHoleMm !== null) expect(threadHoleMm).toBeLessThanOrEqual(screw.rootDiameterMm);
          if (shankHoleMm !== null) expect(shankHoleMm).toBeLessThanOrEqual(screw.shankDiameterMm);
        }
        const { shankDiameterMm } = screw;
        const lag = lagScrewLeadHole({ shankDiameterMm, ovendrySpecificGravityRatio });
        expect(lag.smallestThreadHoleMm).toBeLessThan(lag.largestThreadHoleMm);
        expect(lag.largestThreadHoleMm).toBeLessThan(lag.shankHoleMm);
        expect(
          nailLeadHole({ diameterMm: shankDiameterMm, ovendrySpecificGravityRatio }).largestHoleMm,
        ).toBeLessThan(shankDiameterMm);
      }),
    );
  });

  test('a sideways load asks for a hole no smaller than a pull does', () => {
    fc.assert(
      fc.property(screws, densities, (screw, ovendrySpecificGravityRatio) => {
        const both = { ...screw, ovendrySpecificGravityRatio };
        const pulled = woodScrewLeadHole({ ...both, load: 'withdrawal' }).threadHoleMm ?? 0;
        expect(woodScrewLeadHole({ ...both, load: 'lateral' }).threadHoleMm).toBeGreaterThanOrEqual(pulled);
      }),
    );
  });

  test('at the limits between the classes: over 0.6 is dense, 0.5 needs no hole', () => {
    const hole = (ovendrySpecificGravityRatio: number) =>
      woodScrewLeadHole({
        rootDiameterMm: 3,
        shankDiameterMm: 4.5,
        ovendrySpecificGravityRatio,
        load: 'withdrawal',
      }).threadHoleMm;
    expect([hole(0.5), hole(0.501), hole(0.6), hole(0.601)].map((one) => one?.toFixed(2) ?? null)).toEqual([
      null,
      '2.10',
      '2.10',
      '2.70',
    ]);
  });

  test('up to 6 mm the European code asks for no hole in softwood, and leaves the hole in dense wood to tests', () => {
    const at = (shankDiameterMm: number) => predrilledHole({ shankDiameterMm, wood: 'softwood' });
    expect(at(6)).toEqual({ threadHoleMm: null, shankHoleMm: null });
    expect(at(6.01).threadHoleMm).toBeCloseTo(4.207, 9);
    expect(predrilledHoleRule.cautions?.join(' ')).toMatch(/more than 500 kg\/m³ .* tests/);
  });

  test('the hole of a guide to decks, 5/16 in for a 1/2 in lag screw, lies in the range for southern pine', () => {
    // Prescriptive Residential Wood Deck Construction Guide (American Wood Council), quoted on pages about it; G = 0.55.
    const { smallestThreadHoleMm, largestThreadHoleMm, shankHoleMm } = lagScrewLeadHole({
      shankDiameterMm: 12.7,
      ovendrySpecificGravityRatio: 0.55,
    });
    const guideMm = (5 / 16) * 25.4;
    expect(guideMm).toBeGreaterThan(smallestThreadHoleMm);
    expect(guideMm).toBeLessThan(largestThreadHoleMm);
    expectWithin(shankHoleMm, 0.5 * 25.4, 1e-9, 'the same guide: 1/2 in through the ledger');
  });

  test('the holes of tests with larch lie in the range for it', () => {
    // J. Korean Wood Sci. Technol. 49 (2): 68.7 to 74.0 % of the shank; Korean larch, taken as 0.5 < G ≤ 0.6.
    const { smallestThreadHoleMm, largestThreadHoleMm } = lagScrewLeadHole({
      shankDiameterMm: 9.46,
      ovendrySpecificGravityRatio: 0.55,
    });
    for (const share of [0.687, 0.708, 0.74]) {
      expect(share * 9.46).toBeGreaterThan(smallestThreadHoleMm);
      expect(share * 9.46).toBeLessThan(largestThreadHoleMm);
    }
  });

  test('a root of two thirds of the shank, as the Wood Handbook has it, makes the codes comparable', () => {
    // 90 % of 2/3 is 0.6 of the shank by the American code, 0.7 by the European one.
    const shankDiameterMm = 5;
    const rootDiameterMm = (2 / 3) * shankDiameterMm;
    const american = woodScrewLeadHole({
      shankDiameterMm,
      rootDiameterMm,
      ovendrySpecificGravityRatio: 0.66,
      load: 'withdrawal',
    });
    expectWithin(american.threadHoleMm, 0.6 * shankDiameterMm, 1e-9, 'Wood Handbook ch. 8, NDS 12.1.5.2');
    const european = predrilledHole({ shankDiameterMm, wood: 'hardwood' });
    expectWithin(european.threadHoleMm, 0.7 * shankDiameterMm, 1e-9, 'Eurocode 5, 10.4.5');
  });
});

describe('spacing', () => {
  const lateral = fc.record({
    threadDiameterMm: numberArb({ min: 1.5, max: 9 }),
    densityKgPerM3: numberArb({ min: 300, max: 500 }),
    loadToGrainDeg: numberArb({ min: 0, max: 90 }),
  });

  test('a drilled hole never asks for more room, and a loaded side never for less', () => {
    fc.assert(
      fc.property(lateral, (input) => {
        const drilled = screwSpacing({ ...input, hole: 'predrilled' });
        const driven = screwSpacing({ ...input, hole: 'none' });
        for (const name of Object.keys(drilled) as (keyof typeof drilled)[]) {
          expect(drilled[name]).toBeLessThanOrEqual(driven[name] + 1e-9);
        }
        for (const one of [drilled, driven]) {
          expect(one.loadedEndMm).toBeGreaterThanOrEqual(one.plainEndMm);
          expect(one.loadedEdgeMm).toBeGreaterThanOrEqual(one.plainEdgeMm);
        }
      }),
    );
  });

  test('in inches and in millimetres the same diameters', () => {
    fc.assert(
      fc.property(fc.integer({ min: 6, max: 24 }), (sixtyFourths) => {
        const inches = sixtyFourths / 64;
        const roundedMm = Math.round(inches * 25.4 * 10) / 10;
        for (const threadDiameterMm of [inches * 25.4, roundedMm]) {
          const { endMm, edgeMm } = pulledScrewSpacing({ threadDiameterMm });
          expectWithin(endMm / 25.4, 10 * inches, 10 * (0.05 / 25.4) + 1e-9, 'Eurocode 5, Table 8.6: 10d');
          expectWithin(edgeMm / 25.4, 4 * inches, 4 * (0.05 / 25.4) + 1e-9, 'Eurocode 5, Table 8.6: 4d');
        }
      }),
    );
  });

  test('steel under the heads and bored holes never ask for more room', () => {
    fc.assert(
      fc.property(numberArb({ min: 2, max: 9 }), (shankDiameterMm) => {
        const of = (side: 'wood' | 'steel', hole: 'predrilled' | 'none') =>
          Object.values(woodScrewSpacing({ shankDiameterMm, side, hole }));
        const pairs = [
          [of('steel', 'none'), of('wood', 'none')],
          [of('steel', 'predrilled'), of('wood', 'predrilled')],
          [of('wood', 'predrilled'), of('wood', 'none')],
          [of('steel', 'predrilled'), of('steel', 'none')],
        ];
        for (const [less = [], more = []] of pairs) {
          expect(less.length).toBe(6);
          for (const [i, one] of less.entries()) expect(one).toBeLessThanOrEqual(more[i] ?? Number.NaN);
        }
      }),
    );
  });

  test('a lag screw that is only pulled needs the least room', () => {
    const pulled = lagScrewSpacing({ shankDiameterMm: 8, load: 'withdrawal' });
    const loads = ['softwoodEnd', 'hardwoodEnd', 'loadedEdge'] as const;
    for (const load of loads) {
      const sideways = lagScrewSpacing({ shankDiameterMm: 8, load });
      expect(sideways.edgeMm).toBeGreaterThanOrEqual(pulled.edgeMm);
      expect(sideways.endMm).toBeGreaterThanOrEqual(pulled.endMm);
    }
  });
});
