import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dowelBearingStrength, lateralResistanceReference } from '../src/index.ts';

const between = (min: number, max: number) => numberArb({ min, max });

describe('pushed sideways', () => {
  const joint = fc
    .record({
      diameterMm: between(2, 20),
      rootShare: between(0.6, 1),
      mainBearingMm: between(5, 120),
      sideBearingMm: between(1, 60),
      mainStrengthMPa: between(10, 60),
      sideStrengthMPa: between(10, 600),
      bendingYieldMPa: between(250, 900),
      loadToGrainDeg: between(0, 90),
    })
    .map(({ rootShare, ...rest }) => ({
      ...rest,
      fastener: 'bolt' as const,
      grain: 'side' as const,
      yieldDiameterMm: rootShare * rest.diameterMm,
    }));

  test('the reference value is the least of the six ways to yield', () => {
    fc.assert(
      fc.property(joint, (input) => {
        const { referenceN, leastBearingMm, ...modes } = lateralResistanceReference(input);
        expect(Object.keys(modes)).toHaveLength(6);
        expect(leastBearingMm).toBe(0);
        expect(referenceN).toBe(Math.min(...Object.values(modes)));
        expect(referenceN).toBeGreaterThan(0);
      }),
    );
  });

  test('in end grain it bears 0.67 of that, and the ways to yield stay what they are', () => {
    // NDS 2018, § 12.5.2.2: Z times 0.67 in end grain of the piece that holds the point.
    fc.assert(
      fc.property(joint, (input) => {
        const side = lateralResistanceReference(input);
        const end = lateralResistanceReference({ ...input, grain: 'end' });
        expect(end).toEqual({ ...side, referenceN: expect.closeTo(0.67 * side.referenceN, 6) });
      }),
    );
  });

  test('no value is given to what is not deep enough by the code: six diameters with the tip, four without', () => {
    // NDS 2018, § 12.1.5.6 and § 12.1.6.4: 6 D with a tip of 2 D, of which half does not bear; § 12.1.4.6: 4 D.
    const least = { woodScrew: 6 - 1, nail: 6 - 1, lagScrew: 4 } as const;
    const kinds = fc.constantFrom('woodScrew', 'nail', 'lagScrew');
    fc.assert(
      fc.property(joint, kinds, (input, fastener) => {
        const leastMm = least[fastener as keyof typeof least] * input.diameterMm;
        const of = { ...input, fastener: fastener as keyof typeof least };
        expect(lateralResistanceReference({ ...of, mainBearingMm: leastMm }).referenceN).toBeGreaterThan(0);
        expect(() => lateralResistanceReference({ ...of, mainBearingMm: 0.99 * leastMm })).toThrow(
          `lateralResistanceReference requires mainBearingMm of at least ${least[fastener as keyof typeof least]} diameters of a ${fastener}`,
        );
      }),
    );
  });

  test('turned about, with the pieces exchanged, a joint is the same', () => {
    fc.assert(
      fc.property(joint, (input) => {
        const here = lateralResistanceReference(input);
        const turned = lateralResistanceReference({
          ...input,
          mainBearingMm: input.sideBearingMm,
          sideBearingMm: input.mainBearingMm,
          mainStrengthMPa: input.sideStrengthMPa,
          sideStrengthMPa: input.mainStrengthMPa,
        });
        expect(turned.bearingSideN).toBeCloseTo(here.bearingMainN, 6);
        expect(turned.hingeSideN).toBeCloseTo(here.hingeMainN, 6);
        expect(turned.turningN).toBeCloseTo(here.turningN, 6);
        expect(turned.twoHingesN).toBeCloseTo(here.twoHingesN, 6);
      }),
    );
  });

  test('twice as large in every length it bears four times as much, where the reduction stays the same', () => {
    const thick = joint.map((input) => ({ ...input, diameterMm: 12.7, yieldDiameterMm: 9 }));
    fc.assert(
      fc.property(thick, (input) => {
        const small = lateralResistanceReference(input).referenceN;
        const { referenceN } = lateralResistanceReference({
          ...input,
          diameterMm: 2 * input.diameterMm,
          yieldDiameterMm: 2 * input.yieldDiameterMm,
          mainBearingMm: 2 * input.mainBearingMm,
          sideBearingMm: 2 * input.sideBearingMm,
        });
        expect(referenceN / small).toBeCloseTo(4, 9);
      }),
    );
  });

  test('a thicker root bears more, as long as it stays on one side of 6.35 mm', () => {
    fc.assert(
      fc.property(joint, between(0.5, 1), (input, share) => {
        const thinnerMm = share * input.yieldDiameterMm;
        fc.pre(thinnerMm < 6.35 === input.yieldDiameterMm < 6.35);
        const thin = lateralResistanceReference({ ...input, yieldDiameterMm: thinnerMm });
        const whole = lateralResistanceReference(input);
        expect(thin.referenceN).toBeLessThanOrEqual(whole.referenceN * (1 + 1e-12));
      }),
    );
  });

  test('wood of up to 0.73 bears least across the grain, and no direction is beyond its two ends', () => {
    const wood = fc.record({
      diameterMm: between(6.35, 25.4),
      ovendrySpecificGravityRatio: between(0.31, 0.73),
    });
    fc.assert(
      fc.property(wood, between(0, 90), (of, loadToGrainDeg) => {
        const at = (angle: number) => dowelBearingStrength({ ...of, loadToGrainDeg: angle }).strengthMPa;
        expect(at(90)).toBeLessThan(at(0));
        expect(at(loadToGrainDeg)).toBeLessThanOrEqual(at(0) + 1e-9);
        expect(at(loadToGrainDeg)).toBeGreaterThanOrEqual(at(90) - 1e-9);
      }),
    );
  });
});
