import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Point, pinFit } from '../src/index.ts';
import { smallestCircle } from '../src/smallest-circle.ts';
import { astray, fits, scattered, ways } from './pin-arbitraries.ts';

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

/** Pins over holes, one of which may be a slot: as long between the centres of its ends as twice `halfMm`. */
interface Body {
  readonly pins: readonly Point[];
  readonly holes: readonly Point[];
  readonly slot?: { readonly index: number; readonly axis: 'x' | 'y'; readonly halfMm: number };
}

/** The farthest that a pin is from its hole with the body placed somehow: the definition, and no more. */
function missAt({ pins, holes, slot }: Body, x: number, y: number, turn: number): number {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [about = { xMm: 0, yMm: 0 }] = pins;
  let farthest = 0;
  for (const [i, pin] of pins.entries()) {
    const [px, py] = [pin.xMm - about.xMm, pin.yMm - about.yMm];
    const hole = holes[i] as Point;
    const byX = Math.abs(about.xMm + x + cos * px - sin * py - hole.xMm);
    const byY = Math.abs(about.yMm + y + sin * px + cos * py - hole.yMm);
    const free = slot?.index === i ? slot : undefined;
    const beyondX = Math.max(0, byX - (free?.axis === 'x' ? free.halfMm : 0));
    const beyondY = Math.max(0, byY - (free?.axis === 'y' ? free.halfMm : 0));
    farthest = Math.max(farthest, Math.hypot(beyondX, beyondY));
  }
  return farthest;
}

/** The least value of a function with one valley between −reach and reach, by golden sections. */
function lowest(reach: number, of: (x: number) => number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [from, to] = [-reach, reach];
  let [a, b] = [to - golden * (to - from), from + golden * (to - from)];
  let [atA, atB] = [of(a), of(b)];
  for (let step = 0; step < 40; step++) {
    if (atA <= atB) {
      [to, b, atB] = [b, a, atA];
      a = to - golden * (to - from);
      atA = of(a);
    } else {
      [from, a, atA] = [a, b, atB];
      b = from + golden * (to - from);
      atB = of(b);
    }
  }
  return Math.min(atA, atB);
}

/** The least miss of all placings up to 10 mm off, by searching along x within y within the turn. */
const leastMiss = (body: Body, turning: boolean): number =>
  lowest(turning ? 0.1 : 0, (turn) => lowest(10, (y) => lowest(10, (x) => missAt(body, x, y, turn))));

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
  test('misses by no more than the best placing, turned or not', () => {
    let turned = 0;
    fc.assert(
      fc.property(bodies, (body) => {
        const { now } = pinFit({ ...exact, ...body });
        const missMm = (2 - now.worstCase.marginMm) / 2;
        expect(missMm).toBeLessThanOrEqual(leastMiss(body, false) + 1e-6);
        expect(missMm).toBeLessThanOrEqual(leastMiss(body, true) + 1e-4);
        if (now.turnDeg !== 0) turned += 1;
      }),
      { numRuns: 40 },
    );
    expect(turned).toBeGreaterThan(10);
  });

  test('no placing beats the limit that it states', () => {
    fc.assert(
      fc.property(bodies, (body) => {
        const { now } = pinFit({ ...exact, ...body });
        expect(leastMiss(body, true)).toBeGreaterThanOrEqual((2 - now.atMostMm) / 2 - 1e-6);
        expect(now.worstCase.marginMm).toBeLessThanOrEqual(now.atMostMm + 1e-9);
      }),
      { numRuns: 40 },
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
        const found = leastMiss({ pins, holes: body.holes }, false);
        expect(found).toBeCloseTo((2 - now.worstCase.marginMm) / 2, 4);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the slot', () => {
  test('lets the body in, whatever the errors are, in every season', () => {
    const slotted = fits(scattered).filter((input) => pinFit(input).slot !== null);
    const cases = slotted.chain((input) =>
      fc.tuple(fc.constant(input), ways(input.pins.length), ways(input.pins.length)),
    );
    fc.assert(
      fc.property(cases, ([input, ofHoles, ofPins]) => {
        const { slot } = pinFit(input);
        if (!slot) throw new Error('a slot was asked for');
        for (const scale of [1, 1 + input.swellPct / 100, 1 - input.shrinkPct / 100]) {
          const holes = astray(input.pins, ofHoles, input.holePositionErrorMm).map(({ xMm, yMm }) => ({
            xMm,
            yMm: yMm * scale,
          }));
          const pins = astray(input.pins, ofPins, input.pinPositionErrorMm);
          const halfMm = (slot.lengthMm / 2) * (slot.axis === 'y' ? scale : 1);
          const missMm = leastMiss({ pins, holes, slot: { ...slot, halfMm } }, true);
          const playMm = input.hole.lowerLimitMm * Math.min(1, scale) - input.pin.upperLimitMm;
          expect(missMm).toBeLessThanOrEqual(playMm / 2 + 1e-4);
        }
      }),
      { numRuns: 20 },
    );
  });
});
