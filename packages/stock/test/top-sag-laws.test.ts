import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { topSag } from '../src/index.ts';
import { close, farOut, near, topArb, turnedRound } from './tops.ts';

describe('laws', () => {
  test('the supports carry all there is, and no turning is left', () => {
    fc.assert(
      fc.property(topArb, (top) => {
        const { leftReactionN, rightReactionN } = topSag(top);
        const spreadN = top.spreadLoadNPerMm * top.lengthMm;
        const loads = [...top.pointLoads, { atMm: top.lengthMm / 2, forceN: spreadN }];
        const allN = loads.reduce((sum, { forceN }) => sum + forceN, 0);
        const turning = loads.reduce((sum, { atMm, forceN }) => sum + atMm * forceN, 0);
        const scale = 1e-9 * (1 + Math.abs(leftReactionN) + Math.abs(rightReactionN));
        near(leftReactionN + rightReactionN, allN, scale);
        near(
          leftReactionN * top.leftSupportMm + rightReactionN * top.rightSupportMm,
          turning,
          scale * top.lengthMm,
        );
      }),
      { examples: [[farOut]] },
    );
  });

  test('turned round, it sags the other way round', () => {
    fc.assert(
      fc.property(topArb, (top) => {
        const one = topSag(top);
        const other = topSag(turnedRound(top));
        const scale = 1e-7 * (1 + one.lowestSagMm);
        near(other.leftEndSagMm, one.rightEndSagMm, scale);
        near(other.midspanSagMm, one.midspanSagMm, scale);
        near(other.lowestSagMm, one.lowestSagMm, scale);
      }),
    );
  });

  test('loads add up', () => {
    fc.assert(
      fc.property(topArb, (top) => {
        const { pointLoads, spreadLoadNPerMm } = top;
        const alone = pointLoads.map((load) => topSag({ ...top, spreadLoadNPerMm: 0, pointLoads: [load] }));
        const parts = [...alone, topSag({ ...top, pointLoads: [], spreadLoadNPerMm })];
        const sum = parts.reduce((total, { midspanSagMm }) => total + midspanSagMm, 0);
        near(topSag(top).midspanSagMm, sum, 1e-7 * (1 + Math.abs(sum)));
      }),
    );
  });

  test('half as stiff sags twice as far', () => {
    fc.assert(
      fc.property(topArb, (top) => {
        const { modulusOfElasticityMPa, shearModulusMPa } = top;
        const soft = topSag({
          ...top,
          modulusOfElasticityMPa: modulusOfElasticityMPa / 2,
          shearModulusMPa: shearModulusMPa / 2,
        });
        close(soft.midspanSagMm, 2 * topSag(top).midspanSagMm, 1e-7);
      }),
    );
  });

  test('a load at the middle lowers the end as far as the same load at the end lowers the middle', () => {
    fc.assert(
      fc.property(topArb, (top) => {
        const bare = { ...top, spreadLoadNPerMm: 0 };
        const middleMm = (top.leftSupportMm + top.rightSupportMm) / 2;
        const one = topSag({ ...bare, pointLoads: [{ atMm: middleMm, forceN: 500 }] }).rightEndSagMm;
        const other = topSag({ ...bare, pointLoads: [{ atMm: top.lengthMm, forceN: 500 }] }).midspanSagMm;
        near(one, other, 1e-7 * (1 + Math.abs(one)));
      }),
    );
  });

  // Beside a load that is off the middle a hole can lessen the sag of the middle, by what shear does there.
  test('holes never make a top stiffer under loads in the middle, and never softer than holes all along', () => {
    fc.assert(
      fc.property(topArb, ({ lengthMm, pointLoads, ...holed }) => {
        const inTheMiddle = pointLoads.map(({ forceN }) => ({ atMm: lengthMm / 2, forceN }));
        const supports = { leftSupportMm: 0, rightSupportMm: lengthMm };
        const top = { ...holed, ...supports, lengthMm, pointLoads: inTheMiddle };
        const widest = top.holeRows.reduce((sum, { diameterMm, count }) => sum + diameterMm * count, 0);
        const { midspanSagMm } = topSag(top);
        const whole = topSag({ ...top, holeRows: [] }).midspanSagMm;
        const narrow = topSag({ ...top, widthMm: top.widthMm - widest, holeRows: [] }).midspanSagMm;
        expect(midspanSagMm).toBeGreaterThanOrEqual(whole * (1 - 1e-9) - 1e-9);
        expect(midspanSagMm).toBeLessThanOrEqual(narrow * (1 + 1e-9) + 1e-9);
      }),
    );
  });

  test('nothing looked at lies lower than the lowest place', () => {
    fc.assert(
      fc.property(topArb, (top) => {
        const { lowestSagMm, leftEndSagMm, rightEndSagMm, midspanSagMm, lowestAtMm } = topSag(top);
        expect(Math.max(0, leftEndSagMm, rightEndSagMm, midspanSagMm)).toBeLessThanOrEqual(
          lowestSagMm + 1e-9,
        );
        expect(lowestAtMm).toBeGreaterThanOrEqual(0);
        expect(lowestAtMm).toBeLessThanOrEqual(top.lengthMm);
      }),
    );
  });
});
