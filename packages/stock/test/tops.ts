import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect } from 'vitest';
import type { TopSagInput } from '../src/index.ts';

export const wood = { modulusOfElasticityMPa: 12_000, shearModulusMPa: 750 };
export const plain = {
  ...wood,
  widthMm: 600,
  depthMm: 45,
  spreadLoadNPerMm: 0,
  pointLoads: [],
  holeRows: [],
};
export const close = (ours: number, theirs: number, relative = 1e-9) =>
  near(ours, theirs, 1e-9 + relative * Math.abs(theirs));
export const near = (ours: number, theirs: number, within: number) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(within);

/** Tops on two supports, with loads and holes. */
export const topArb: fc.Arbitrary<TopSagInput> = fc
  .record({
    lengthMm: numberArb({ min: 300, max: 4000 }),
    leftShare: numberArb({ min: 0, max: 0.45 }),
    rightShare: numberArb({ min: 0.55, max: 1 }),
    widthMm: numberArb({ min: 300, max: 1200 }),
    depthMm: numberArb({ min: 15, max: 120 }),
    modulusOfElasticityMPa: numberArb({ min: 5000, max: 20_000 }),
    shearModulusMPa: numberArb({ min: 300, max: 2000 }),
    spreadLoadNPerMm: numberArb({ min: 0, max: 2 }),
    loads: fc.array(fc.tuple(numberArb({ min: 0, max: 1 }), numberArb({ min: 0, max: 2000 })), {
      maxLength: 3,
    }),
    rows: fc.array(fc.tuple(numberArb({ min: 0.02, max: 0.98 }), numberArb({ min: 5, max: 25 })), {
      maxLength: 3,
    }),
  })
  .map(({ leftShare, rightShare, loads, rows, ...top }) => ({
    ...top,
    leftSupportMm: leftShare * top.lengthMm,
    rightSupportMm: rightShare * top.lengthMm,
    pointLoads: loads.map(([share, forceN]) => ({ atMm: share * top.lengthMm, forceN })),
    holeRows: rows.map(([share, diameterMm]) => ({ atMm: share * top.lengthMm, diameterMm, count: 2 })),
  }));

/** Found by many runs: reactions of thousands of newtons beside a load of one come back with its rounding. */
export const farOut: TopSagInput = {
  ...plain,
  lengthMm: 3132.001484837383,
  leftSupportMm: 1409.4006681768224,
  rightSupportMm: 1722.600816660561,
  pointLoads: [{ atMm: 0, forceN: 1359.8911222070456 }],
};

export const turnedRound = (top: TopSagInput): TopSagInput => ({
  ...top,
  leftSupportMm: top.lengthMm - top.rightSupportMm,
  rightSupportMm: top.lengthMm - top.leftSupportMm,
  pointLoads: top.pointLoads.map((load) => ({ ...load, atMm: top.lengthMm - load.atMm })),
  holeRows: top.holeRows.map((row) => ({ ...row, atMm: top.lengthMm - row.atMm })),
});
