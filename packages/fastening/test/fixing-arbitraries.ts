import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import type { FixingKind, FixingPlan, FixingsInput, PlannedFixing } from '../src/index.ts';

const side = fc.constantFrom('front' as const, 'back' as const);
const angles = fc.tuple(numberArb({ min: 0, max: 90 }), numberArb({ min: -1, max: 1 }));

export const kindArbs = {
  screw: fc.record(
    { kind: fc.constant('screw' as const), holeMm: numberArb({ min: 0.5, max: 31.7 }) },
    { requiredKeys: ['kind'], noNullPrototype: true },
  ),
  sliding: fc.record({
    kind: fc.constant('tongue that slides' as const),
    tongueWidthMm: numberArb({ min: 0.5, max: 12.3 }),
    grooveLengthMm: numberArb({ min: 0.5, max: 71.9 }),
  }),
  tongue: fc.record({
    kind: fc.constant('tongue' as const),
    points: side,
    grooveDepthMm: numberArb({ min: 0.5, max: 33 }),
    tongueLengthMm: numberArb({ min: 0.5, max: 33 }),
    leastEngagedMm: numberArb({ min: 0, max: 11 }),
  }),
  tab: fc.record({
    kind: fc.constant('screw beside a tab' as const),
    tabLies: side,
    washerDiameterMm: numberArb({ min: 0.5, max: 47 }),
    leastBearingMm: numberArb({ min: 0, max: 5 }),
  }),
  plate: fc
    .record({
      kind: fc.constant('plate that turns' as const),
      reachMm: numberArb({ min: 1, max: 61 }),
      angles,
      playMm: numberArb({ min: 0, max: 4.9 }),
    })
    .map(({ angles: [mostAngleDeg, share], ...plate }) => ({
      ...plate,
      mostAngleDeg,
      angleDeg: mostAngleDeg * share,
    })),
};

const anyKind: fc.Arbitrary<FixingKind> = fc.oneof(...Object.values(kindArbs));

// Places to a tenth of a millimetre and swings to a thousandth of a percent: a swing is either nought or one that counts,
// so that no verdict turns on the rounding of a travel of some millionths.
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const percent = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 3700 })).map((n) => n / 1000);

/** Tops with fixings of some kind, held anywhere: at a row, between rows, or beyond the top. */
export const inputArb = (kind: fc.Arbitrary<FixingKind> = anyKind): fc.Arbitrary<FixingsInput> =>
  fc
    .record({
      widthMm: numberArb({ min: 100, max: 903 }),
      insets: fc.tuple(numberArb({ min: -31, max: 47 }), numberArb({ min: -31, max: 47 })),
      points: fc.array(fc.record({ yMm: tenths(-50, 950), by: kind }), {
        minLength: 1,
        maxLength: 6,
      }),
      line: fc.oneof(
        fc.constantFrom('front row' as const, 'middle' as const, 'back row' as const),
        tenths(-97, 997).map((yMm) => ({ yMm })),
        fc.constant({ fixing: 'fixing 1' }),
      ),
      swellPct: percent,
      shrinkPct: percent,
      shankDiameterMm: numberArb({ min: 0.5, max: 11.9 }),
      clearanceMm: numberArb({ min: 0, max: 1.3 }),
      washerDiameterMm: numberArb({ min: 0.5, max: 49 }),
    })
    .map(({ widthMm, insets: [front, back], points, line, ...terms }) => ({
      ...terms,
      top: { frontYMm: 0, backYMm: widthMm },
      base: { frontYMm: front, backYMm: widthMm - back },
      fixings: points.map(({ yMm, by }, i) => ({
        name: `fixing ${i + 1}`,
        xMm: 100 * i,
        yMm,
        by,
      })),
      fixedLine: line,
    }));

/** Shares of the width on building day that the top has on some days of the year, its ends among them. */
export const daysOf = ({ swellPct, shrinkPct }: FixingsInput, day: number) =>
  [-shrinkPct, 0, swellPct, -shrinkPct + day * (swellPct + shrinkPct)].map((pct) => 1 + pct / 100);

/** Where a point of the top is over the base on such a day. */
export const placeOn = ({ fixedLineYMm }: FixingPlan, yMm: number, scale: number) =>
  fixedLineYMm + (yMm - fixedLineYMm) * scale;

/** Where the screw stands on building day, set off from its point away from the fixed line. */
export const setOff = ({ yMm, outwards }: PlannedFixing, offsetMm: number) =>
  outwards === 'front' ? yMm - offsetMm : yMm + offsetMm;
