import { Box, Polygon, point, segment } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearanceOverSeasons, clearanceToRectangle } from '../src/index.ts';

// Outside check: distances by @flatten-js/core, a general geometry library.

const mm = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);

const rectangle = fc.record({
  xMm: mm(-200, 1000),
  yMm: mm(-200, 1000),
  lengthMm: mm(1, 800),
  widthMm: mm(1, 800),
});
const hole = fc.record({ holeXMm: mm(0, 1000), holeYMm: mm(0, 1000), holeDiameterMm: mm(1, 60) });
const holeAndRectangle = fc.tuple(hole, rectangle).map(([h, r]) => ({ ...h, ...r }));
const season = fc.record({
  fixedLineYMm: mm(-100, 1100),
  shrinkPct: fc.double({ min: 0, max: 10, noNaN: true }),
  swellPct: fc.double({ min: 0, max: 10, noNaN: true }),
});
const holeOverSeason = fc.tuple(holeAndRectangle, season).map(([h, s]) => ({ ...h, ...s }));

type Rectangle = { xMm: number; yMm: number; lengthMm: number; widthMm: number };

const polygon = ({ xMm, yMm, lengthMm, widthMm }: Rectangle) =>
  new Polygon(new Box(xMm, yMm, xMm + lengthMm, yMm + widthMm));

/** Signed distance of a point, by the library: to the outline, negative inside. */
function byLibrary(xMm: number, yMm: number, outline: Polygon): number {
  const [away] = point(xMm, yMm).distanceTo(outline);
  return outline.contains(point(xMm, yMm)) ? -away : away;
}

describe('clearance of a hole from a rectangle', () => {
  test('agrees with the geometry library, inside and outside', () => {
    let inside = 0;
    fc.assert(
      fc.property(holeAndRectangle, (input) => {
        const centreMm = byLibrary(input.holeXMm, input.holeYMm, polygon(input));
        if (centreMm < 0) inside += 1;
        const { clearanceMm } = clearanceToRectangle(input);
        expect(Math.abs(clearanceMm - (centreMm - input.holeDiameterMm / 2))).toBeLessThan(1e-6);
      }),
      { numRuns: 3000 },
    );
    expect(inside).toBeGreaterThan(100);
  });

  test('an overlap is the shortest way to only touching', () => {
    const ways = Array.from({ length: 360 }, (_, deg) => (deg * Math.PI) / 180);
    fc.assert(
      fc.property(holeAndRectangle, (input) => {
        const { clearanceMm } = clearanceToRectangle(input);
        fc.pre(clearanceMm < -1e-3);
        const afterMoving = (byMm: number) =>
          ways.map((way) => {
            const holeXMm = input.holeXMm + byMm * Math.cos(way);
            const holeYMm = input.holeYMm + byMm * Math.sin(way);
            return clearanceToRectangle({ ...input, holeXMm, holeYMm }).clearanceMm;
          });
        // No move that is shorter frees the hole, and a move of that length does: none of these is skew by more
        // than half a degree, which costs less than 4e-5 of the way.
        expect(Math.max(...afterMoving(-0.999 * clearanceMm))).toBeLessThan(0);
        expect(Math.max(...afterMoving(-clearanceMm))).toBeGreaterThan(4e-5 * clearanceMm);
      }),
    );
  });

  test('stays the same when everything is shifted or mirrored, and scales with everything', () => {
    fc.assert(
      fc.property(holeAndRectangle, mm(-500, 500), mm(-500, 500), (input, dx, dy) => {
        const { clearanceMm } = clearanceToRectangle(input);
        const { holeXMm, holeYMm, holeDiameterMm, xMm, yMm, lengthMm, widthMm } = input;
        const shifted = { holeXMm: holeXMm + dx, xMm: xMm + dx, holeYMm: holeYMm + dy, yMm: yMm + dy };
        expect(clearanceToRectangle({ ...input, ...shifted }).clearanceMm).toBeCloseTo(clearanceMm, 9);
        const mirrored = { holeXMm: -holeXMm, xMm: -xMm - lengthMm };
        expect(clearanceToRectangle({ ...input, ...mirrored }).clearanceMm).toBeCloseTo(clearanceMm, 9);
        const turned = {
          ...{ holeXMm: holeYMm, holeYMm: holeXMm, xMm: yMm, yMm: xMm },
          ...{ lengthMm: widthMm, widthMm: lengthMm, holeDiameterMm },
        };
        expect(clearanceToRectangle(turned).clearanceMm).toBeCloseTo(clearanceMm, 9);
        const tripled = Object.fromEntries(Object.entries(input).map(([name, value]) => [name, 3 * value]));
        expect(clearanceToRectangle(tripled as typeof input).clearanceMm).toBeCloseTo(3 * clearanceMm, 8);
      }),
    );
  });
});

describe('clearance over the seasons', () => {
  const travel = ({ holeYMm, fixedLineYMm, shrinkPct, swellPct }: { holeYMm: number } & Season) => {
    const arm = holeYMm - fixedLineYMm;
    return [holeYMm - (arm * shrinkPct) / 100, holeYMm + (arm * swellPct) / 100] as const;
  };
  type Season = { fixedLineYMm: number; shrinkPct: number; swellPct: number };

  test('is the least of a thousand states in between, to the length of one step', () => {
    fc.assert(
      fc.property(holeOverSeason, (input) => {
        const [from, to] = travel(input);
        const steps = 1000;
        const states = Array.from({ length: steps + 1 }, (_, i) => {
          const holeYMm = from + ((to - from) * i) / steps;
          return clearanceToRectangle({ ...input, holeYMm }).clearanceMm;
        });
        const sampled = Math.min(...states);
        const { clearanceMm } = clearanceOverSeasons(input);
        expect(clearanceMm).toBeLessThanOrEqual(sampled + 1e-9);
        // Between two samples a distance falls by no more than half the way from one to the other.
        expect(clearanceMm).toBeGreaterThanOrEqual(sampled - Math.abs(to - from) / (2 * steps) - 1e-9);
      }),
    );
  });

  test('is the geometry library’s distance from the way of the hole to the rectangle', () => {
    let compared = 0;
    fc.assert(
      fc.property(holeOverSeason, (input) => {
        const [from, to] = travel(input);
        fc.pre(Math.abs(to - from) > 1e-3);
        const outline = polygon(input);
        fc.pre(!outline.contains(point(input.holeXMm, from)));
        const [away] = segment(point(input.holeXMm, from), point(input.holeXMm, to)).distanceTo(outline);
        fc.pre(away > 1e-3);
        compared += 1;
        const { clearanceMm } = clearanceOverSeasons(input);
        expect(Math.abs(clearanceMm - (away - input.holeDiameterMm / 2))).toBeLessThan(1e-6);
      }),
      { numRuns: 500 },
    );
    expect(compared).toBeGreaterThan(100);
  });

  test('is never more than on building day, and the same where nothing moves', () => {
    fc.assert(
      fc.property(holeOverSeason, (input) => {
        const { clearanceMm } = clearanceToRectangle(input);
        expect(clearanceOverSeasons(input).clearanceMm).toBeLessThanOrEqual(clearanceMm);
        const still = { shrinkPct: 0, swellPct: 0 };
        expect(clearanceOverSeasons({ ...input, ...still }).clearanceMm).toBe(clearanceMm);
        const onTheLine = { fixedLineYMm: input.holeYMm };
        expect(clearanceOverSeasons({ ...input, ...onTheLine }).clearanceMm).toBe(clearanceMm);
      }),
    );
  });
});
