import { Circle, point, vector } from '@flatten-js/core';
import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  bitPointLength,
  bitShares,
  drillingDepth,
  spindleSpeed,
  templateHole,
  turnOverDepth,
} from '../src/index.ts';

// Outside checks: exact fractions by fraction.js; circles and distances by @flatten-js/core.

describe('what each bit removes', () => {
  const bitsUm = fc
    .uniqueArray(fc.integer({ min: 100, max: 500_000 }), { minLength: 1, maxLength: 6 })
    .map((um) => um.sort((a, b) => a - b));
  const shares = (um: readonly number[]) =>
    bitShares({ bitDiametersMm: um.map((one) => one / 1000) }).sharesPct;

  test('is the ratio of areas in exact fractions, and all of it together is the hole', () => {
    fc.assert(
      fc.property(bitsUm, (um) => {
        const squares = um.map((one) => new Fraction(one).pow(2) as Fraction);
        const finished = squares.at(-1) as Fraction;
        for (const [i, sharePct] of shares(um).entries()) {
          const removed = (squares[i] as Fraction).sub(squares[i - 1] ?? 0);
          expect(sharePct).toBeCloseTo(removed.div(finished).mul(100).valueOf(), 9);
          expect(sharePct).toBeGreaterThan(0);
        }
        expect(shares(um).reduce((sum, one) => sum + one)).toBeCloseTo(100, 9);
      }),
    );
  });

  test('a bit left out leaves its share to the next one', () => {
    fc.assert(
      fc.property(
        bitsUm.filter((um) => um.length > 1),
        fc.nat(),
        (um, any) => {
          const out = any % (um.length - 1);
          const all = shares(um);
          const fewer = shares(um.filter((_, i) => i !== out));
          expect(fewer[out]).toBeCloseTo((all[out] as number) + (all[out + 1] as number), 9);
        },
      ),
    );
  });
});

describe('depths', () => {
  const thicknessMm = numberArb({ min: 5, max: 500 });
  const part = numberArb({ min: 0, max: 1 });
  const bit = { diameterMm: numberArb({ min: 1, max: 60 }), pointAngleDeg: numberArb({ min: 60, max: 178 }) };

  test('turned over at that depth, as much of the point shows as was asked for', () => {
    fc.assert(
      fc.property(thicknessMm, fc.record(bit), part, (thickness, one, shown) => {
        const { pointLengthMm } = bitPointLength(one);
        fc.pre(pointLengthMm <= thickness);
        const showingMm = shown * pointLengthMm;
        const { firstDepthMm, secondDepthMm } = turnOverDepth({
          thicknessMm: thickness,
          pointLengthMm,
          showingMm,
        });
        expect(firstDepthMm + secondDepthMm).toBeCloseTo(thickness, 9);
        const { leftMm } = drillingDepth({ thicknessMm: thickness, depthMm: firstDepthMm, pointLengthMm });
        expect(leftMm).toBeCloseTo(-showingMm, 9);
      }),
    );
  });

  test('a point that shows whole has bored the hole through', () => {
    fc.assert(
      fc.property(thicknessMm, numberArb({ min: 0, max: 200 }), (thickness, pointLengthMm) => {
        const depths = turnOverDepth({ thicknessMm: thickness, pointLengthMm, showingMm: pointLengthMm });
        expect(depths).toEqual({ firstDepthMm: thickness, secondDepthMm: 0 });
      }),
    );
  });

  test('drill tips as a machinist’s forum works them out: #37 at 118° is 0.031 in', () => {
    // hobby-machinist.com, thread 28410, page 2: 0.052 / tan 59° = 0.031
    const { pointLengthMm } = bitPointLength({ diameterMm: 0.104 * 25.4, pointAngleDeg: 118 });
    expect(pointLengthMm / 25.4).toBeCloseTo(0.031, 3);
  });
});

describe('a template with a guide bushing', () => {
  const setting = fc.record({
    bitDiameterMm: numberArb({ min: 2, max: 20 }),
    wallMm: numberArb({ min: 0.5, max: 20 }),
    largerMm: numberArb({ min: 0.5, max: 200 }),
  });

  test('a bushing kept against it lets the bit touch the finished circle and no more', () => {
    fc.assert(
      fc.property(setting, fc.integer({ min: 0, max: 359 }), ({ bitDiameterMm, wallMm, largerMm }, deg) => {
        const bushingDiameterMm = bitDiameterMm + 2 * wallMm;
        const finishedDiameterMm = bitDiameterMm + largerMm;
        const { offsetMm, templateDiameterMm } = templateHole({
          finishedDiameterMm,
          bushingDiameterMm,
          bitDiameterMm,
        });
        const middle = point(0, 0);
        const direction = vector(1, 0).rotate((deg * Math.PI) / 180);
        // Where the router stands when its bushing touches the template on that side.
        const router = middle.translate(direction.multiply((templateDiameterMm - bushingDiameterMm) / 2));
        const touchesTemplate = new Circle(router, bushingDiameterMm / 2);
        const template = new Circle(middle, templateDiameterMm / 2);
        const cut = new Circle(middle, finishedDiameterMm / 2);
        expect(router.distanceTo(template)[0]).toBeCloseTo(touchesTemplate.r, 6);
        expect(router.distanceTo(cut)[0]).toBeCloseTo(bitDiameterMm / 2, 6);
        expect(template.r - cut.r).toBeCloseTo(offsetMm, 9);
      }),
    );
  });
});

describe('spindle speed', () => {
  test('the rim of a polygon of many sides travels the surface speed in a minute', () => {
    const sides = 100_000;
    fc.assert(
      fc.property(numberArb({ min: 1, max: 200 }), numberArb({ min: 1, max: 600 }), (diameterMm, speed) => {
        const { speedRpm } = spindleSpeed({ diameterMm, surfaceSpeedMPerMin: speed });
        const roundMm = sides * diameterMm * Math.sin(Math.PI / sides);
        expect((speedRpm * roundMm) / 1000).toBeCloseTo(speed, 4);
      }),
    );
  });
});
