import { type Point, point } from '@flatten-js/core';
import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  diagonalSensitivity,
  offSquareShift,
  outOfSquare,
  squareDiagonal,
  threeFourFive,
} from '../src/index.ts';

// Outside checks: points turned and distances taken by @flatten-js/core, a general geometry library; whole-number
// triangles by Euclid's formula; exact fractions by fraction.js.

const side = numberArb({ min: 50, max: 5000 });
const offSquareDeg = numberArb({ min: -40, max: 40 });
const origin = point(0, 0);
const away = (from: Point, to: Point) => from.distanceTo(to)[0];
const radians = (deg: number) => (deg * Math.PI) / 180;

/** A panel whose short sides lean to the right by an angle: its four readings, by the geometry library. */
function leaning(lengthMm: number, widthMm: number, deg: number) {
  const frontRight = point(lengthMm, 0);
  const backLeft = point(0, widthMm).rotate(-radians(deg), origin);
  const backRight = backLeft.translate(lengthMm, 0);
  const readings = {
    lengthMm,
    widthMm,
    diagonalMm: away(origin, backRight),
    otherDiagonalMm: away(frontRight, backLeft),
  };
  return { readings, backLeft };
}

describe('out of square', () => {
  test('the angle, the slide and no misfit come back from a panel that the geometry library leans', () => {
    fc.assert(
      fc.property(side, side, offSquareDeg, (lengthMm, widthMm, deg) => {
        const { readings, backLeft } = leaning(lengthMm, widthMm, deg);
        const found = outOfSquare(readings);
        expect(found.offSquareDeg).toBeCloseTo(deg, 7);
        expect(found.leanMm).toBeCloseTo(backLeft.x, 6);
        expect(found.misfitMm).toBeCloseTo(0, 8);
      }),
    );
  });

  test('diagonals the other way round lean the other way; sides the other way round keep the angle', () => {
    fc.assert(
      fc.property(side, side, offSquareDeg, (lengthMm, widthMm, deg) => {
        const { readings } = leaning(lengthMm, widthMm, deg);
        const { diagonalMm, otherDiagonalMm } = readings;
        const found = outOfSquare(readings);
        const mirrored = outOfSquare({
          ...readings,
          diagonalMm: otherDiagonalMm,
          otherDiagonalMm: diagonalMm,
        });
        expect(mirrored.offSquareDeg).toBeCloseTo(-found.offSquareDeg, 12);
        expect(mirrored.leanMm).toBeCloseTo(-found.leanMm, 9);
        expect(mirrored.misfitMm).toBe(found.misfitMm);
        const turned = outOfSquare({ ...readings, lengthMm: widthMm, widthMm: lengthMm });
        expect(turned.offSquareDeg).toBeCloseTo(found.offSquareDeg, 9);
      }),
    );
  });

  test('everything three times as large: the same angle, three times the slide', () => {
    fc.assert(
      fc.property(side, side, offSquareDeg, (lengthMm, widthMm, deg) => {
        const { readings } = leaning(lengthMm, widthMm, deg);
        const found = outOfSquare(readings);
        const tripled = Object.fromEntries(Object.entries(readings).map(([name, mm]) => [name, 3 * mm]));
        const larger = outOfSquare(tripled as typeof readings);
        expect(larger.offSquareDeg).toBeCloseTo(found.offSquareDeg, 9);
        expect(larger.leanMm).toBeCloseTo(3 * found.leanMm, 7);
      }),
    );
  });

  test('one short side longer than the other shows as a misfit, and equal diagonals do not prove square', () => {
    // By hand: a trapezium with parallel sides of 1000 and 994 mm and 600 mm legs has equal diagonals, each the root
    // of 600² + 1000 × 994, 1163.615 mm (Ptolemy), where 1000 by 600 mm has 1166.190.
    const trapezium = { lengthMm: 1000, widthMm: 600, diagonalMm: 1163.615, otherDiagonalMm: 1163.615 };
    const { offSquareDeg: deg, misfitMm } = outOfSquare(trapezium);
    expect(deg).toBe(0);
    expect(misfitMm).toBeCloseTo(-2.575, 3);
  });

  test('a hole marked along the short side is off as the library turns it', () => {
    fc.assert(
      fc.property(side, side, offSquareDeg, (alongMm, distanceMm, deg) => {
        const right = point(alongMm, distanceMm);
        const marked = point(0, distanceMm).rotate(-radians(deg), origin).translate(alongMm, 0);
        const { leanMm, shiftMm } = offSquareShift({ distanceMm, offSquareDeg: deg });
        expect(shiftMm).toBeCloseTo(away(right, marked), 6);
        expect(leanMm).toBeCloseTo(marked.x - right.x, 6);
      }),
    );
  });

  test('the slide of the back edge is that of a hole at the far corner', () => {
    fc.assert(
      fc.property(side, side, offSquareDeg, (lengthMm, widthMm, deg) => {
        const found = outOfSquare(leaning(lengthMm, widthMm, deg).readings);
        const corner = offSquareShift({ distanceMm: widthMm, offSquareDeg: found.offSquareDeg });
        expect(corner.leanMm).toBeCloseTo(found.leanMm, 8);
      }),
    );
  });
});

describe('how squarely diagonals can be read', () => {
  const readingErrorMm = numberArb({ min: 0.01, max: 5 });

  test('readings that far apart say that angle', () => {
    fc.assert(
      fc.property(side, side, readingErrorMm, (lengthMm, widthMm, errorMm) => {
        const trueMm = squareDiagonal({ lengthMm, widthMm }).diagonalMm;
        const readings = { diagonalMm: trueMm + errorMm, otherDiagonalMm: trueMm - errorMm };
        const seen = outOfSquare({ lengthMm, widthMm, ...readings });
        const most = diagonalSensitivity({ lengthMm, widthMm, readingErrorMm: errorMm });
        expect(seen.offSquareDeg).toBeCloseTo(most.offSquareDeg, 7);
        expect(seen.leanMm).toBeCloseTo(most.leanMm, 7);
      }),
    );
  });

  test('no panel leans more whose diagonals differ by no more than both errors', () => {
    let close = 0;
    fc.assert(
      fc.property(
        side,
        side,
        readingErrorMm,
        numberArb({ min: -1.2, max: 1.2 }),
        (lengthMm, widthMm, errorMm, part) => {
          const most = diagonalSensitivity({ lengthMm, widthMm, readingErrorMm: errorMm });
          const deg = part * most.offSquareDeg;
          const { diagonalMm, otherDiagonalMm } = leaning(lengthMm, widthMm, deg).readings;
          const hidden = Math.abs(diagonalMm - otherDiagonalMm) <= 2 * errorMm;
          if (hidden) expect(Math.abs(deg)).toBeLessThanOrEqual(most.offSquareDeg * (1 + 1e-9) + 1e-9);
          if (hidden && Math.abs(part) > 0.9) close += 1;
          if (Math.abs(part) < 0.98) expect(hidden).toBe(true);
        },
      ),
      { numRuns: 1000 },
    );
    expect(close).toBeGreaterThan(20);
  });
});

describe('right-angled triangles', () => {
  test('every triangle of whole numbers by Euclid’s formula has its diagonal, exactly', () => {
    let seen = 0;
    for (let m = 2; m <= 60; m++) {
      for (let n = 1; n < m; n++) {
        const diagonal = squareDiagonal({ lengthMm: m * m - n * n, widthMm: 2 * m * n });
        expect(diagonal).toEqual({ diagonalMm: m * m + n * n });
        seen += 1;
      }
    }
    expect(seen).toBe(1770);
  });

  const room = fc.record({
    lengthUm: fc.integer({ min: 500_000, max: 20_000_000 }),
    widthUm: fc.integer({ min: 500_000, max: 20_000_000 }),
    stepUm: fc.oneof(fc.constantFrom(1000, 10_000, 25_400, 100_000), fc.integer({ min: 100, max: 120_000 })),
  });

  test('3-4-5 fits, the next larger one does not, and its angle is right: in exact fractions', () => {
    fc.assert(
      fc.property(room, ({ lengthUm, widthUm, stepUm }) => {
        const input = { lengthMm: lengthUm / 1000, widthMm: widthUm / 1000, stepMm: stepUm / 1000 };
        const { times, shortLegMm, longLegMm, diagonalMm } = threeFourFive(input);
        const [shorter, longer] = [Math.min(lengthUm, widthUm), Math.max(lengthUm, widthUm)];
        const fits = (parts: number) => 3 * parts * stepUm <= shorter && 4 * parts * stepUm <= longer;
        expect(fits(times)).toBe(true);
        expect(fits(times + 1)).toBe(false);
        const part = new Fraction(times).mul(stepUm).div(1000);
        expect(shortLegMm).toBeCloseTo(part.mul(3).valueOf(), 9);
        expect(longLegMm).toBeCloseTo(part.mul(4).valueOf(), 9);
        expect(diagonalMm).toBeCloseTo(part.mul(5).valueOf(), 9);
        expect(squareDiagonal({ lengthMm: shortLegMm, widthMm: longLegMm }).diagonalMm).toBeCloseTo(
          diagonalMm,
          8,
        );
      }),
    );
  });

  test('which side is called the length does not matter', () => {
    fc.assert(
      fc.property(side, side, (lengthMm, widthMm) => {
        const turned = threeFourFive({ lengthMm: widthMm, widthMm: lengthMm, stepMm: 10 });
        expect(threeFourFive({ lengthMm, widthMm, stepMm: 10 })).toEqual(turned);
      }),
    );
  });
});
