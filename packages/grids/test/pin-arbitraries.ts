import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import type { PinFitInput, PinTerms, Point } from '../src/index.ts';

/** A peg frame of the bindery bench and the season of a maple top: a base for worked figures. */
export const press: PinTerms = {
  pin: { lowerLimitMm: 19, upperLimitMm: 19.1 },
  hole: { lowerLimitMm: 20, upperLimitMm: 20.2 },
  pinPositionErrorMm: 0.05,
  holePositionErrorMm: 0.1,
  swellPct: 0.25,
  shrinkPct: 0.5,
};

export const terms: fc.Arbitrary<PinTerms> = fc
  .record({
    pinMm: numberArb({ min: 5, max: 20 }),
    playMm: numberArb({ min: -0.5, max: 2 }),
    pinWidthMm: numberArb({ min: 0, max: 0.3 }),
    holeWidthMm: numberArb({ min: 0, max: 0.5 }),
    pinPositionErrorMm: numberArb({ min: 0, max: 0.3 }),
    holePositionErrorMm: numberArb({ min: 0, max: 0.5 }),
    swellPct: numberArb({ min: 0, max: 2 }),
    shrinkPct: numberArb({ min: 0, max: 2 }),
  })
  .map(({ pinMm, playMm, pinWidthMm, holeWidthMm, ...rest }) => ({
    ...rest,
    pin: { lowerLimitMm: pinMm, upperLimitMm: pinMm + pinWidthMm },
    hole: {
      lowerLimitMm: pinMm + pinWidthMm + playMm,
      upperLimitMm: pinMm + pinWidthMm + playMm + holeWidthMm,
    },
  }));

/** Some places of a grid of 40 mm: far enough apart for every pin above. */
const places = (columns: number, rows: number, most: number): fc.Arbitrary<Point[]> =>
  fc
    .uniqueArray(fc.nat(columns * rows - 1), { minLength: 1, maxLength: most })
    .map((chosen) => chosen.map((at) => ({ xMm: 40 * (at % columns), yMm: 40 * Math.floor(at / columns) })));

/** Pins anywhere on the grid. */
export const scattered: fc.Arbitrary<Point[]> = places(8, 8, 6);

/** Pins in a row across the grain. */
export const inLine: fc.Arbitrary<Point[]> = places(1, 20, 5);

export const fits = (pins: fc.Arbitrary<Point[]>): fc.Arbitrary<PinFitInput> =>
  fc.tuple(terms, pins).map(([given, at]) => ({ ...given, pins: at }));

/** A way off, in any direction, up to a share of 1. */
export const ways = (count: number): fc.Arbitrary<Point[]> =>
  fc.array(
    fc
      .tuple(numberArb({ min: 0, max: 1 }), numberArb({ min: 0, max: 2 * Math.PI }))
      .map(([far, angle]) => ({ xMm: far * Math.cos(angle), yMm: far * Math.sin(angle) })),
    { minLength: count, maxLength: count },
  );

export const seasonsOfYear = ['now', 'swollen', 'shrunken'] as const;

/** Every place moved its own way, times an error. */
export const astray = (at: readonly Point[], by: readonly Point[], errorMm: number): Point[] =>
  at.map(({ xMm, yMm }, i) => ({
    xMm: xMm + errorMm * (by[i]?.xMm ?? 0),
    yMm: yMm + errorMm * (by[i]?.yMm ?? 0),
  }));
