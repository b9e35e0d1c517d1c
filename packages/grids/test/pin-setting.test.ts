import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PinFitInput, type Point, pinFit } from '../src/index.ts';
import { smallestCircle } from '../src/smallest-circle.ts';
import { astray, fits, press, scattered, seasonsOfYear, ways } from './pin-arbitraries.ts';

const coordinate = numberArb({ min: -100, max: 100 });
const points = fc.array(fc.record({ xMm: coordinate, yMm: coordinate }), { minLength: 1, maxLength: 9 });
const apart = (a: Point, b: Point) => Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);

/** A corner so near to a right angle that two points decide to the last digit of the radius, and not of the centre. */
const almostRight = [
  { xMm: 99.99995492398739, yMm: -98.18765074014664 },
  { xMm: -100, yMm: 0 },
  { xMm: -99.60980620235205, yMm: 0.786934420466423 },
];

describe('smallestCircle', () => {
  // A circle that holds all points, and whose centre lies between those on its rim, is the smallest: a textbook fact.
  test('holds all points, and its centre lies between the one to three that decide it', () => {
    let threes = 0;
    fc.assert(
      fc.property(points, (all) => {
        const { by, radiusMm, ...centre } = smallestCircle(all);
        for (const point of all) expect(apart(point, centre)).toBeLessThanOrEqual(radiusMm * (1 + 1e-7));
        const rim = by.map((i) => all[i] as Point);
        for (const point of rim) expect(apart(point, centre)).toBeCloseTo(radiusMm, 7);
        expect(rim.length).toBe(radiusMm === 0 ? 1 : rim.length === 3 ? 3 : 2);
        if (rim.length === 3) threes += 1;
        // Seen from the centre no half plane is free of them: no gap between their directions passes half a turn.
        if (radiusMm < 1e-3) return;
        const angles = rim
          .map((p) => Math.atan2(p.yMm - centre.yMm, p.xMm - centre.xMm))
          .sort((a, b) => a - b);
        const gaps = angles.map((angle, i) => (angles[i + 1] ?? (angles[0] ?? 0) + 2 * Math.PI) - angle);
        expect(Math.max(...gaps)).toBeLessThanOrEqual(Math.PI + 1e-6);
      }),
      { examples: [[almostRight]] },
    );
    expect(threes).toBeGreaterThan(10);
  });

  // Source: Jung's theorem, as an encyclopedia of mathematics states it: radius at most √3 / 3 of the span.
  test('is between half the span and √3 / 3 of it, and just that for an equal-sided triangle', () => {
    fc.assert(
      fc.property(points, (all) => {
        const spanMm = Math.max(...all.flatMap((a) => all.map((b) => apart(a, b))));
        const { radiusMm } = smallestCircle(all);
        expect(radiusMm).toBeGreaterThanOrEqual(spanMm / 2 - 1e-9);
        expect(radiusMm).toBeLessThanOrEqual((Math.sqrt(3) / 3) * spanMm + 1e-9);
      }),
    );
    const equal = [0, 1, 2].map((i) => ({
      xMm: Math.cos((i * 2 * Math.PI) / 3),
      yMm: Math.sin((i * 2 * Math.PI) / 3),
    }));
    expect(smallestCircle(equal).radiusMm).toBeCloseTo(1, 12);
  });
});

type Placing = readonly [x: number, y: number, turn: number];

/** The farthest that a pin is from its hole with the body placed somehow: the definition, and no more. */
function missAt(
  { pins, holes }: Required<Pick<PinFitInput, 'pins' | 'holes'>>,
  [x, y, turn]: Placing,
): number {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return Math.max(
    ...pins.map((pin, i) => {
      const at = { xMm: x + cos * pin.xMm - sin * pin.yMm, yMm: y + sin * pin.xMm + cos * pin.yMm };
      return apart(at, holes[i] as Point);
    }),
  );
}

/** The least miss of a grid of placings that is made finer round its best, the turn included or not. */
function leastOnGrid(body: Required<Pick<PinFitInput, 'pins' | 'holes'>>, turning: boolean): number {
  let best: Placing = [0, 0, 0];
  let least = missAt(body, best);
  const steps = [-3, -2, -1, 0, 1, 2, 3];
  const turns = turning ? steps : [0];
  for (let size = 0.5; size > 1e-5; ) {
    const [x, y, turn] = best;
    let better = false;
    for (const i of steps) {
      for (const j of steps) {
        for (const k of turns) {
          const placing: Placing = [x + i * size, y + j * size, turn + (k * size) / 200];
          const miss = missAt(body, placing);
          if (miss < least - 1e-9) [best, least, better] = [placing, miss, true];
        }
      }
    }
    if (!better) size /= 2;
  }
  return least;
}

/** A body over holes that lie a little off its pins, turned a little with them. */
const bodies = fc
  .tuple(scattered, numberArb({ min: 0, max: 0.6 }), numberArb({ min: -0.003, max: 0.003 }))
  .chain(([pins, offMm, turn]) =>
    ways(pins.length).map((by) => {
      const holes = astray(pins, by, offMm).map(({ xMm, yMm }) => ({
        xMm: xMm - turn * yMm,
        yMm: yMm + turn * xMm,
      }));
      return { pins, holes };
    }),
  );

const exact = {
  pin: { lowerLimitMm: 18, upperLimitMm: 18 },
  hole: { lowerLimitMm: 20, upperLimitMm: 20 },
  ...{ pinPositionErrorMm: 0, holePositionErrorMm: 0, swellPct: 0, shrinkPct: 0 },
};

describe('pinFit beside a search over placings', () => {
  test('misses by no more than the best placing of a grid, turned or not', () => {
    let turned = 0;
    fc.assert(
      fc.property(bodies, (body) => {
        const { now } = pinFit({ ...exact, ...body });
        const missMm = (2 - now.worstCase.marginMm) / 2;
        expect(missMm).toBeLessThanOrEqual(leastOnGrid(body, false) + 1e-6);
        expect(missMm).toBeLessThanOrEqual(leastOnGrid(body, true) + 1e-3);
        if (now.turnDeg !== 0) turned += 1;
      }),
      { numRuns: 60 },
    );
    expect(turned).toBeGreaterThan(10);
  });

  test('no placing of the grid beats the limit that it states', () => {
    fc.assert(
      fc.property(bodies, (body) => {
        const { now } = pinFit({ ...exact, ...body });
        expect(leastOnGrid(body, true)).toBeGreaterThanOrEqual((2 - now.atMostMm) / 2 - 1e-6);
        expect(now.worstCase.marginMm).toBeLessThanOrEqual(now.atMostMm + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  test('is a margin that some placing truly has: turned as it says, and shifted', () => {
    fc.assert(
      fc.property(bodies, (body) => {
        const { now } = pinFit({ ...exact, ...body });
        const turn = (now.turnDeg * Math.PI) / 180;
        const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
        const pins = body.pins.map(({ xMm, yMm }) => ({
          xMm: cos * xMm - sin * yMm,
          yMm: sin * xMm + cos * yMm,
        }));
        const found = leastOnGrid({ pins, holes: body.holes }, false);
        expect(found).toBeCloseTo((2 - now.worstCase.marginMm) / 2, 3);
      }),
      { numRuns: 60 },
    );
  });
});

describe('pinFit, laws', () => {
  const some = fits(scattered);
  const margins = (input: PinFitInput) => {
    const fit = pinFit(input);
    return seasonsOfYear.flatMap((season) => [
      fit[season].worstCase.marginMm,
      fit[season].rootSumSquare.marginMm,
      fit[season].atMostMm,
    ]);
  };
  const expectSame = (one: number[], other: number[]) => {
    for (const [i, margin] of one.entries()) expect(margin).toBeCloseTo(other[i] ?? Number.NaN, 6);
  };
  const expectNoLess = (one: number[], other: number[]) => {
    for (const [i, margin] of one.entries())
      expect(margin).toBeGreaterThanOrEqual((other[i] ?? Number.NaN) - 1e-6);
  };

  test('the worst case is never better than the root-sum-square', () => {
    fc.assert(
      fc.property(some, (input) => {
        for (const { worstCase, rootSumSquare } of [pinFit(input).now, pinFit(input).shrunken]) {
          expect(worstCase.marginMm).toBeLessThanOrEqual(rootSumSquare.marginMm + 1e-9);
        }
      }),
    );
  });

  test('larger holes, thinner pins and truer places never hurt', () => {
    fc.assert(
      fc.property(some, numberArb({ min: 0, max: 1 }), (input, byMm) => {
        const { hole, pin } = input;
        const moved = (size: typeof hole, by: number) => ({
          lowerLimitMm: size.lowerLimitMm + by,
          upperLimitMm: size.upperLimitMm + by,
        });
        const before = margins(input);
        expectNoLess(margins({ ...input, hole: moved(hole, byMm) }), before);
        expectNoLess(margins({ ...input, pin: moved(pin, -byMm) }), before);
        expectNoLess(margins({ ...input, holePositionErrorMm: input.holePositionErrorMm * byMm }), before);
        expectNoLess(margins({ ...input, pinPositionErrorMm: input.pinPositionErrorMm * byMm }), before);
        expectNoLess(margins({ ...input, swellPct: input.swellPct * byMm }), before);
        expectNoLess(margins({ ...input, shrinkPct: input.shrinkPct * byMm }), before);
      }),
    );
  });

  test('one more pin never helps', () => {
    fc.assert(
      fc.property(some, (input) => {
        fc.pre(input.pins.length > 1);
        expectNoLess(margins({ ...input, pins: input.pins.slice(1) }), margins(input));
        expectNoLess(margins({ ...input, pins: input.pins.slice(0, -1) }), margins(input));
      }),
    );
  });

  test('where the body and the panel are counted from makes no difference, nor does the order of the pins', () => {
    fc.assert(
      fc.property(some, coordinate, coordinate, (input, byXMm, byYMm) => {
        const shifted = input.pins.map(({ xMm, yMm }) => ({ xMm: xMm + byXMm, yMm: yMm + byYMm }));
        const before = margins(input);
        expectSame(margins({ ...input, holes: input.pins }), before);
        expectSame(margins({ ...input, pins: shifted }), before);
        expectSame(margins({ ...input, pins: shifted, holes: input.pins }), before);
        expectSame(margins({ ...input, pins: [...input.pins].reverse() }), before);
      }),
    );
  });

  test('the mirror image of everything fits as well', () => {
    fc.assert(
      fc.property(some, (input) => {
        const mirrored = input.pins.map(({ xMm, yMm }) => ({ xMm, yMm: 280 - yMm }));
        expectSame(margins({ ...input, pins: mirrored }), margins(input));
      }),
    );
  });

  // What shrinking adds to what the same swelling does: it also narrows each hole, and swelling widens its error.
  test('swelling and shrinking by the same share differ by the hole itself', () => {
    fc.assert(
      fc.property(some, (input) => {
        const pins = input.pins.map(({ yMm }, i) => ({ xMm: 0, yMm: yMm + 320 * i }));
        const share = input.swellPct / 100;
        const { swollen, shrunken } = pinFit({ ...input, pins, shrinkPct: input.swellPct });
        const error = pins.length > 1 ? 2 * input.holePositionErrorMm * share : 0;
        const hole = input.hole.lowerLimitMm * share;
        expect(swollen.worstCase.marginMm + error - hole).toBeCloseTo(shrunken.worstCase.marginMm, 9);
      }),
    );
  });

  test('with no season all three times are now', () => {
    fc.assert(
      fc.property(some, (input) => {
        const { now, swollen, shrunken } = pinFit({ ...input, swellPct: 0, shrinkPct: 0 });
        expect(swollen).toEqual(now);
        expect(shrunken).toEqual(now);
      }),
    );
  });

  test('inches and millimetres agree', () => {
    const scaled = (value: unknown, times: number): unknown => {
      if (Array.isArray(value)) return value.map((one) => scaled(one, times));
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(
        Object.entries(value).map(([name, part]) => [
          name,
          name.endsWith('Mm') && typeof part === 'number' ? part * times : scaled(part, times),
        ]),
      );
    };
    fc.assert(
      fc.property(some, (input) => {
        const inInches = margins(scaled(input, 1 / 25.4) as PinFitInput).map((margin) => margin * 25.4);
        expectSame(inInches, margins(input));
      }),
    );
  });

  test('what it is given is left alone', () => {
    const given = { ...press, pins: [{ xMm: 0, yMm: 0 }], holes: [{ xMm: 1, yMm: 1 }] };
    const before = structuredClone(given);
    pinFit(given);
    expect(given).toEqual(before);
  });
});
