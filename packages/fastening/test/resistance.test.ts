import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  combinedLoad,
  commonNailTable,
  dowelBearingStrength,
  lagScrewWithdrawalReference,
  lagScrewWithdrawalUltimate,
  lateralResistanceReference,
  nailWithdrawalReference,
  nailWithdrawalUltimate,
  pointsidePenetration,
  screwLateralByGroup,
  screwWithdrawalCharacteristic,
  screwWithdrawalReference,
  screwWithdrawalUltimate,
} from '../src/index.ts';
import { bendingYieldPsi, lagScrewLbf, nailLbf } from './printed-joints.ts';
import {
  groupedWoods,
  isMisprinted,
  lagScrewsThroughSteel,
  lagScrewsThroughWood,
  metricNails,
  nailsSideways,
} from './printed-resistance.ts';

const between = (min: number, max: number) => numberArb({ min, max });

describe('printed tables', () => {
  test('every cell of lag screws through steel comes out to the 10 lb that it is rounded to', () => {
    expect(lagScrewsThroughSteel).toHaveLength(200);
    for (const cell of lagScrewsThroughSteel) {
      expect(Math.abs(lagScrewLbf(cell) - cell.referenceLbf), JSON.stringify(cell)).toBeLessThanOrEqual(5);
    }
  });

  test('of lag screws through wood one cell alone does not, which repeats its neighbour', () => {
    const off = lagScrewsThroughWood.filter(
      (cell) => !(Math.abs(lagScrewLbf(cell) - cell.referenceLbf) <= 5),
    );
    expect(lagScrewsThroughWood).toHaveLength(72);
    expect(off).toEqual(lagScrewsThroughWood.filter(isMisprinted));
    expect(off).toHaveLength(1);
  });

  test('common nails come out to a pound, with the bending yield strength of their diameter', () => {
    for (const nail of nailsSideways) {
      expect(Math.abs(nailLbf(nail) - nail.referenceLbf)).toBeLessThanOrEqual(0.5);
      expect(bendingYieldPsi(nail.diameterIn)).toBeCloseTo(nail.bendingYieldPsi, 6);
    }
  });

  test('the nails recalled in inches are those of the metric table', () => {
    const metric = commonNailTable.rows.filter(({ size }) => size in metricNails);
    expect(metric).toHaveLength(10);
    for (const { size, lengthIn, diameterIn } of metric) {
      const [lengthMm, diameterMm] = metricNails[size] as readonly [number, number];
      expect(Math.abs(lengthIn * 25.4 - lengthMm), size).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(Math.abs(diameterIn * 25.4 - diameterMm), size).toBeLessThanOrEqual(0.005 + 1e-9);
    }
  });

  test('the rule of before 1991 and the yield limits of today are within half of each other', () => {
    // A No. 10 screw, 3/4 in of the same wood under its head, ten diameters in all: both rules on their own terms.
    for (const [name, group, ovendrySpecificGravityRatio] of groupedWoods) {
      const wood = { diameterMm: 4.826, ovendrySpecificGravityRatio, loadToGrainDeg: 0 };
      const { strengthMPa } = dowelBearingStrength(wood);
      const { referenceN } = lateralResistanceReference({
        fastener: 'woodScrew',
        grain: 'side',
        diameterMm: 4.826,
        yieldDiameterMm: 3.8608,
        mainBearingMm: 43.434,
        sideBearingMm: 19.05,
        mainStrengthMPa: strengthMPa,
        sideStrengthMPa: strengthMPa,
        bendingYieldMPa: 551.58,
        loadToGrainDeg: 0,
      });
      const older = screwLateralByGroup({ shankDiameterMm: 4.826, group, grain: 'side' }).allowedN;
      expect(older / referenceN, name).toBeGreaterThan(2 / 3);
      expect(older / referenceN, name).toBeLessThan(3 / 2);
    }
  });
});

describe('pulled out', () => {
  const shank = fc.record({ shankDiameterMm: between(3.5, 9), threadInWoodMm: between(10, 80) });
  const airDry = between(0.31, 0.65);

  test('test values rise with the powers of specific gravity and diameter that their sources state', () => {
    fc.assert(
      fc.property(shank, airDry, between(1.1, 2), ({ shankDiameterMm, threadInWoodMm }, g, times) => {
        const at = (k: number) => ({ shankDiameterMm, threadInWoodMm, airDrySpecificGravityRatio: g * k });
        const nail = (k: number) => ({
          diameterMm: shankDiameterMm,
          penetrationMm: threadInWoodMm,
          airDrySpecificGravityRatio: g * k,
        });
        const ratio = (f: (k: number) => { ultimateN: number }) => f(times).ultimateN / f(1).ultimateN;
        expect(ratio((k) => screwWithdrawalUltimate({ ...at(k), grain: 'side' }))).toBeCloseTo(times ** 2, 9);
        expect(ratio((k) => lagScrewWithdrawalUltimate({ ...at(k), grain: 'side' }))).toBeCloseTo(
          times ** 1.5,
          9,
        );
        expect(ratio((k) => nailWithdrawalUltimate(nail(k)))).toBeCloseTo(times ** 2.5, 9);
        const thick = (k: number) => ({
          ...at(1),
          shankDiameterMm: shankDiameterMm * k,
          grain: 'side' as const,
        });
        expect(ratio((k) => lagScrewWithdrawalUltimate(thick(k)))).toBeCloseTo(times ** 0.75, 9);
      }),
    );
  });

  test('in the same wood a design value is a fourth to an eighth of the test value, screw, lag screw and nail', () => {
    // The same wood has more specific gravity by its ovendry volume: it swells by about 0.9 % of G for each 1 %.
    fc.assert(
      fc.property(shank, airDry, ({ shankDiameterMm, threadInWoodMm }, airDrySpecificGravityRatio) => {
        const wood = { airDrySpecificGravityRatio };
        const dry = {
          ovendrySpecificGravityRatio: airDrySpecificGravityRatio / (1 - 0.108 * airDrySpecificGravityRatio),
        };
        const screw = { shankDiameterMm, threadInWoodMm, grain: 'side' as const };
        const nail = { diameterMm: shankDiameterMm, penetrationMm: threadInWoodMm };
        const pairs = [
          [screwWithdrawalUltimate({ ...screw, ...wood }), screwWithdrawalReference({ ...screw, ...dry })],
          [
            lagScrewWithdrawalUltimate({ ...screw, ...wood }),
            lagScrewWithdrawalReference({ ...screw, ...dry }),
          ],
          [nailWithdrawalUltimate({ ...nail, ...wood }), nailWithdrawalReference({ ...nail, ...dry })],
        ] as const;
        for (const [{ ultimateN }, { referenceN }] of pairs) {
          expect(ultimateN / referenceN).toBeGreaterThan(3.8);
          expect(ultimateN / referenceN).toBeLessThan(8);
        }
      }),
    );
  });

  test('end grain holds three quarters of what side grain holds', () => {
    const screw = { shankDiameterMm: 6, threadInWoodMm: 40 };
    for (const of of [screwWithdrawalUltimate, lagScrewWithdrawalUltimate]) {
      const at = (grain: 'side' | 'end') =>
        of({ ...screw, airDrySpecificGravityRatio: 0.6, grain }).ultimateN;
      expect(at('end')).toBeCloseTo(0.75 * at('side'), 9);
    }
  });
});

test('the European code gives no pull to less thread than it wants in the wood', () => {
  // Eurocode 5, 8.7.2(3), by its own rule of least penetration: six diameters of thread.
  fc.assert(
    fc.property(between(2, 12), between(100, 700), (threadDiameterMm, densityKgPerM3) => {
      const { leastThreadMm } = pointsidePenetration({ threadDiameterMm });
      const pull = (threadInWoodMm: number) =>
        screwWithdrawalCharacteristic({
          threadDiameterMm,
          threadInWoodMm,
          densityKgPerM3,
          screwToGrainDeg: 90,
        });
      expect(pull(leastThreadMm).characteristicN).toBeGreaterThan(0);
      expect(() => pull(0.99 * leastThreadMm)).toThrow(
        'screwWithdrawalCharacteristic requires threadInWoodMm',
      );
    }),
  );
});

test('pulled and pushed at once: the two ends are the two resistances, and a nail is never given more than a screw', () => {
  const newtons = between(10, 5000);
  fc.assert(
    fc.property(newtons, newtons, between(0, 90), (allowedWithdrawalN, allowedLateralN, loadToFaceDeg) => {
      const both = { allowedWithdrawalN, allowedLateralN };
      const screw = (angle: number) =>
        combinedLoad({ ...both, loadToFaceDeg: angle, fastener: 'woodScrew' }).allowedN;
      const nail = (angle: number) =>
        combinedLoad({ ...both, loadToFaceDeg: angle, fastener: 'nail' }).allowedN;
      for (const allowed of [screw, nail]) {
        expect(allowed(0)).toBeCloseTo(allowedLateralN, 6);
        expect(allowed(90)).toBeCloseTo(allowedWithdrawalN, 6);
      }
      expect(nail(loadToFaceDeg)).toBeLessThanOrEqual(screw(loadToFaceDeg) * (1 + 1e-12));
      expect(screw(loadToFaceDeg)).toBeGreaterThanOrEqual(
        Math.min(allowedWithdrawalN, allowedLateralN) * (1 - 1e-12),
      );
      expect(screw(loadToFaceDeg)).toBeLessThanOrEqual(
        Math.max(allowedWithdrawalN, allowedLateralN) * (1 + 1e-12),
      );
    }),
  );
});
