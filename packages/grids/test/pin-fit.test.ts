import { stackUp } from '@scantling/units';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestPinSpan, type PinFitInput, type Point, pinFit, standardFit } from '../src/index.ts';
import { astray, fits, inLine, press, scattered, seasonsOfYear, terms, ways } from './pin-arbitraries.ts';

const exactly = (diameterMm: number) => ({ lowerLimitMm: diameterMm, upperLimitMm: diameterMm });
const still = { swellPct: 0, shrinkPct: 0 };
const two: Point[] = [
  { xMm: 0, yMm: 0 },
  { xMm: 0, yMm: 288 },
];

describe('pinFit, worked figures', () => {
  // By hand: 20 − 19.1 − 2 × (0.1 + 0.05) = 0.6.
  // Shrunken: 20 × 0.995 − 19.1 − 0.3 − 288 × 0.005 = −0.94.
  // Swollen: 20 − 19.1 − 2 × (0.1 × 1.0025 + 0.05) − 288 × 0.0025 = −0.1205.
  test('two pins across the grain', () => {
    const { now, swollen, shrunken, slot } = pinFit({ ...press, pins: two });
    expect(now.worstCase.marginMm).toBeCloseTo(0.6, 10);
    expect(shrunken.worstCase.marginMm).toBeCloseTo(-0.94, 10);
    expect(swollen.worstCase.marginMm).toBeCloseTo(-0.1205, 10);
    expect([now, swollen, shrunken].map(({ worstCase }) => worstCase.goesIn)).toEqual([true, false, false]);
    // 2 × 0.94 mm in the shrunken wood, cut before it shrinks: 1.88 / 0.995 = 1.8894.
    expect(slot).toEqual({ index: 0, axis: 'y', lengthMm: expect.closeTo(1.88 / 0.995, 8) });
  });

  // By hand: 20.1 − 19.05 − √(0.1² + 0.05² + 0.2² + 0.1²) / √2 = 1.05 − 0.17678 = 0.87322.
  test('the same by root-sum-square', () => {
    expect(pinFit({ ...press, pins: two }).now.rootSumSquare.marginMm).toBeCloseTo(0.87322, 5);
  });

  test('along the grain the season only narrows the holes', () => {
    const along = two.map(({ xMm, yMm }) => ({ xMm: yMm, yMm: xMm }));
    const { now, swollen, shrunken } = pinFit({ ...press, holePositionErrorMm: 0, pins: along });
    expect(swollen.worstCase.marginMm).toBeCloseTo(now.worstCase.marginMm, 10);
    expect(shrunken.worstCase.marginMm).toBeCloseTo(now.worstCase.marginMm - 20 * 0.005, 10);
  });

  // A body with pins 4 in apart over holes 100 mm apart: 101.6 − 100 = 1.6 mm of play is just enough.
  test('a body in inches over holes in millimetres', () => {
    const pins = [
      { xMm: 0, yMm: 0 },
      { xMm: 101.6, yMm: 0 },
    ];
    const holes = [
      { xMm: 50, yMm: 60 },
      { xMm: 150, yMm: 60 },
    ];
    const given = { pins, holes, ...still, pinPositionErrorMm: 0, holePositionErrorMm: 0 };
    const just = pinFit({ ...given, pin: exactly(18), hole: exactly(19.6) });
    expect(just.now.worstCase.marginMm).toBeCloseTo(0, 10);
    expect(just.alwaysGoesIn).toBe(true);
    const tight = pinFit({ ...given, pin: exactly(18.1), hole: exactly(19.6) });
    expect(tight.now.worstCase).toEqual({ marginMm: expect.closeTo(-0.1, 10), goesIn: false });
    expect(tight.slot).toEqual({ index: 0, axis: 'x', lengthMm: expect.closeTo(0.2, 8) });
  });

  test('a body that has to be turned goes in, turned by what its holes are', () => {
    const turned = (degrees: number) => (degrees * Math.PI) / 180;
    const pins = [0, 96, 192].map((xMm) => ({ xMm, yMm: 0 }));
    const holes = pins.map(({ xMm }) => ({ xMm: xMm * Math.cos(turned(1)), yMm: xMm * Math.sin(turned(1)) }));
    const { now } = pinFit({ ...press, ...still, pins, holes });
    expect(now.turnDeg).toBeCloseTo(1, 5);
    expect(now.worstCase.marginMm).toBeCloseTo(0.6, 6);
  });

  test('the limits of a standard fit go straight in', () => {
    const fit = standardFit({ nominalMm: 20, holeClass: 'H13', shaftClass: 'h6' });
    if (!fit) throw new Error('20 H13/h6 stands in the table');
    const given = { ...press, ...still, holePositionErrorMm: 0, pinPositionErrorMm: 0 };
    const { now } = pinFit({ ...given, pins: two, hole: fit.hole, pin: fit.shaft });
    expect(now.worstCase.marginMm).toBeCloseTo(fit.leastClearanceMm, 10);
  });
});

describe('pinFit beside the formulas for fasteners', () => {
  const withTolerances = (hole: number, pin: number, t1: number, t2: number, pins: Point[]) =>
    pinFit({
      ...still,
      pins,
      hole: exactly(hole),
      pin: exactly(pin),
      holePositionErrorMm: t1 / 2,
      pinPositionErrorMm: t2 / 2,
    }).now.worstCase;

  // Source: "Calculating Fastener Hole Size using True Position Tolerances" (a course note): .250 + .014 + .014 = .278.
  test('fixed fastener, a published example', () => {
    const fit = withTolerances(0.278 * 25.4, 0.25 * 25.4, 0.014 * 25.4, 0.014 * 25.4, two);
    expect(fit).toEqual({ marginMm: expect.closeTo(0, 10), goesIn: true });
  });

  // Source: ASME Y14.5M-1994, appendix B, as reprinted: 0.22 diameter for each part. From memory: 6 in 6.44 mm.
  test('fixed fastener, the example of the standard', () => {
    expect(withTolerances(6.44, 6, 0.22, 0.22, two)).toEqual({
      marginMm: expect.closeTo(0, 10),
      goesIn: true,
    });
    expect(withTolerances(6.44, 6, 0.221, 0.22, two).goesIn).toBe(false);
  });

  // Source: T = (H − F) / 2, "GD&T: Application and Interpretation" (2021), p. 308; T1 + T2 = H − F, ASME Y14.5.
  test('fixed fastener: H − F = T1 + T2 for any pattern of two pins or more', () => {
    fc.assert(
      fc.property(terms, scattered, (given, pins) => {
        fc.pre(pins.length > 1);
        const { marginMm } = pinFit({ ...given, pins }).now.worstCase;
        const { hole, pin, holePositionErrorMm, pinPositionErrorMm } = given;
        const formula =
          hole.lowerLimitMm - pin.upperLimitMm - 2 * holePositionErrorMm - 2 * pinPositionErrorMm;
        expect(marginMm).toBeCloseTo(formula, 9);
      }),
    );
  });

  // Source: H = F + T for a loose fastener through holes in both parts, as above. What it leaves free of a hole is
  // as much again as it takes: the other part is met as a fixed pin of 2 F − H.
  test('floating fastener: H − F = T in each part', () => {
    for (const [hole, fastener] of [
      [6.44, 6],
      [20.5, 19],
    ] as const) {
      const t = hole - fastener;
      expect(withTolerances(hole, 2 * fastener - hole, t, t, two).marginMm).toBeCloseTo(0, 10);
    }
  });
});

/** All corners of the box of errors: one of −1 and 1 for each of `count` things. */
const corners = (count: number) =>
  Array.from({ length: 2 ** count }, (_, bits) =>
    Array.from({ length: count }, (_, i) => (bits & (1 << i) ? 1 : -1)),
  );

/** Along a line: how long the stretch is in which the body may be, with every size and place at some limit. */
function stretches(
  input: PinFitInput,
  scale: number,
  slotted?: { index: number; lengthMm: number },
): number[] {
  const { pins, pin, hole, holePositionErrorMm, pinPositionErrorMm } = input;
  const narrower = Math.min(1, scale);
  return corners(2 * pins.length).flatMap((signs) =>
    [-1, 1].map((size) => {
      const halfPlay =
        ((size < 0 ? hole.lowerLimitMm : hole.upperLimitMm) * narrower -
          (size < 0 ? pin.upperLimitMm : pin.lowerLimitMm)) /
        2;
      const ends = pins.map(({ yMm }, i) => {
        const holeAt = (yMm + (signs[2 * i] ?? 0) * holePositionErrorMm * Math.max(1, 1 / scale)) * scale;
        const pinAt = yMm + (signs[2 * i + 1] ?? 0) * pinPositionErrorMm;
        const room = halfPlay + (slotted?.index === i ? (slotted.lengthMm * scale) / 2 : 0);
        return [holeAt - pinAt - room, holeAt - pinAt + room] as const;
      });
      return Math.min(...ends.map(([, high]) => high)) - Math.max(...ends.map(([low]) => low));
    }),
  );
}

describe('pinFit beside every corner of the errors', () => {
  const few = fits(inLine.map((pins) => pins.slice(0, 3)));

  test('the worst case is the shortest stretch of them all, in every season', () => {
    fc.assert(
      fc.property(few, (input) => {
        const scales = { now: 1, swollen: 1 + input.swellPct / 100, shrunken: 1 - input.shrinkPct / 100 };
        const fit = pinFit(input);
        for (const season of seasonsOfYear) {
          const { worstCase, atMostMm, turnDeg } = fit[season];
          expect(worstCase.marginMm).toBeCloseTo(Math.min(...stretches(input, scales[season])), 9);
          expect(atMostMm).toBeCloseTo(worstCase.marginMm, 9);
          expect(turnDeg).toBe(0);
        }
      }),
    );
  });

  test('with the slot it always goes in; with a shorter one it does not', () => {
    const slotted = few.filter((input) => pinFit(input).slot !== null);
    fc.assert(
      fc.property(slotted, (input) => {
        const { slot, alwaysGoesIn } = pinFit(input);
        if (!slot) throw new Error('a slot was asked for');
        expect([alwaysGoesIn, slot.axis]).toEqual([false, 'y']);
        const scales = [1, 1 + input.swellPct / 100, 1 - input.shrinkPct / 100];
        const shortest = (lengthMm: number) =>
          Math.min(...scales.flatMap((scale) => stretches(input, scale, { ...slot, lengthMm })));
        expect(shortest(slot.lengthMm)).toBeGreaterThanOrEqual(-1e-6);
        expect(shortest(slot.lengthMm - 0.001)).toBeLessThan(0);
      }),
    );
  });

  test('one slot does not do where the wood moves between two pairs', () => {
    const pins = [0, 288].flatMap((yMm) => [0, 96].map((xMm) => ({ xMm, yMm })));
    const fit = pinFit({ ...press, pins });
    expect([fit.alwaysGoesIn, fit.slot]).toEqual([false, null]);
    expect(fit.shrunken.limitingPins).toEqual(pins.map((pin, index) => ({ index, ...pin })));
  });
});

describe('pinFit by root-sum-square', () => {
  // Source: JCGM 100:2008, Eq. (10), as the rule of @scantling/units for a stack of tolerances has it, to 1 nm.
  test('two pins add up as a stack of four half diameters and four places', () => {
    fc.assert(
      fc.property(terms, (given) => {
        const { hole, pin, pinPositionErrorMm, holePositionErrorMm } = given;
        const half = (size: typeof hole) => (size.upperLimitMm + size.lowerLimitMm) / 4;
        const ofHalf = (size: typeof hole) => (size.upperLimitMm - size.lowerLimitMm) / 4;
        const { totalMm, worstCaseMm, rootSumSquareMm } = stackUp({
          lengthsMm: [half(hole), half(hole), -half(pin), -half(pin), 0, 0, 0, 0],
          tolerancesMm: [
            ...[ofHalf(hole), ofHalf(hole), ofHalf(pin), ofHalf(pin)],
            ...[holePositionErrorMm, holePositionErrorMm, pinPositionErrorMm, pinPositionErrorMm],
          ],
        });
        const { now } = pinFit({ ...given, pins: two });
        const alone = pinFit({ ...given, pins: two.slice(0, 1) }).now.rootSumSquare.marginMm;
        expect(now.worstCase.marginMm).toBeCloseTo(totalMm - worstCaseMm, 5);
        expect(now.rootSumSquare.marginMm).toBeCloseTo(Math.min(alone, totalMm - rootSumSquareMm), 5);
      }),
    );
  });
});

describe('longestPinSpan', () => {
  test('is the longest that pinFit lets in, and one pitch more is too long', () => {
    let limited = 0;
    fc.assert(
      fc.property(terms, (given) => {
        const found = longestPinSpan({ ...given, pitchMm: 40, mostPitchCount: 12 });
        for (const kind of ['worstCase', 'rootSumSquare'] as const) {
          const goesIn = (pitches: number) => {
            const pins = [0, pitches].slice(0, pitches === 0 ? 1 : 2).map((n) => ({ xMm: 0, yMm: 40 * n }));
            const fit = pinFit({ ...given, pins });
            return seasonsOfYear.every((season) => fit[season][kind].goesIn);
          };
          const pitches = found[kind]?.pitchCount ?? -1;
          expect(found[kind]?.spanMm ?? -40).toBe(40 * pitches);
          if (pitches >= 0) expect(goesIn(pitches)).toBe(true);
          if (pitches < 12) expect(goesIn(pitches + 1)).toBe(false);
          if (pitches > 0 && pitches < 12) limited += 1;
        }
      }),
    );
    expect(limited).toBeGreaterThan(10);
  });

  test('pins between the first and the last make no difference', () => {
    const row = (pins: number) =>
      Array.from({ length: pins }, (_, i) => ({ xMm: 0, yMm: (288 / (pins - 1)) * i }));
    for (const season of seasonsOfYear) {
      const [ends, four] = [2, 4].map((pins) => pinFit({ ...press, pins: row(pins) })[season]);
      expect(four?.worstCase.marginMm).toBeCloseTo(ends?.worstCase.marginMm ?? Number.NaN, 10);
    }
  });
});

describe('pinFit, whatever the errors are', () => {
  test('leaves at least the worst-case margin', () => {
    const cases = fc
      .tuple(fits(scattered), fc.nat(2))
      .chain(([input, at]) =>
        fc.tuple(fc.constant(input), fc.constant(at), ways(input.pins.length), ways(input.pins.length)),
      );
    fc.assert(
      fc.property(cases, ([input, at, ofHoles, ofPins]) => {
        const season = seasonsOfYear[at] ?? 'now';
        const made = pinFit({
          ...input,
          hole: exactly(input.hole.lowerLimitMm),
          pin: exactly(input.pin.upperLimitMm),
          holes: astray(input.pins, ofHoles, input.holePositionErrorMm),
          pins: astray(input.pins, ofPins, input.pinPositionErrorMm),
          holePositionErrorMm: 0,
          pinPositionErrorMm: 0,
        });
        const promised = pinFit(input)[season].worstCase.marginMm;
        expect(made[season].worstCase.marginMm).toBeGreaterThanOrEqual(promised - 1e-6);
      }),
    );
  });
});
