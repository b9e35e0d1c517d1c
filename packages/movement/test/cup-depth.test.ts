import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cupDepth } from '../src/index.ts';

const coefficient = fc.double({ min: 0, max: 0.01, noNaN: true });
const moisture = fc.double({ min: 0, max: 30, noNaN: true });
const board = fc.record({
  widthMm: fc.double({ min: 1, max: 600, noNaN: true }),
  pithDistanceMm: fc.double({ min: 1, max: 600, noNaN: true }),
  radialPerPct: coefficient,
  tangentialPerPct: coefficient,
  fromMoisturePct: moisture,
  toMoisturePct: moisture,
});

test('wood that moves alike both ways, or not at all, stays flat', () => {
  fc.assert(
    fc.property(board, (given) => {
      const alike = cupDepth({ ...given, radialPerPct: given.tangentialPerPct });
      expect(Math.abs(alike.cupMm)).toBeLessThan(1e-10);
      expect(cupDepth({ ...given, toMoisturePct: given.fromMoisturePct }).cupMm).toBe(0);
    }),
  );
});

test('a drying board that moves more along its rings curls away from the pith, a wetted one towards it', () => {
  fc.assert(
    fc.property(board, (given) => {
      const pair = [given.radialPerPct, given.tangentialPerPct];
      const usual = { ...given, radialPerPct: Math.min(...pair), tangentialPerPct: Math.max(...pair) };
      const drying = given.fromMoisturePct - given.toMoisturePct;
      expect(cupDepth(usual).cupMm * Math.sign(drying)).toBeGreaterThanOrEqual(-1e-10);
    }),
  );
});

test('a log twice as large, sawn alike, cups twice as deep', () => {
  fc.assert(
    fc.property(board, (given) => {
      const { cupMm } = cupDepth(given);
      const twice = cupDepth({
        ...given,
        widthMm: 2 * given.widthMm,
        pithDistanceMm: 2 * given.pithDistanceMm,
      });
      expect(Math.abs(twice.cupMm - 2 * cupMm)).toBeLessThan(1e-9);
    }),
  );
});

test('the edge and the middle of the face as points on their rings', () => {
  fc.assert(
    fc.property(board, (given) => {
      const rise = given.toMoisturePct - given.fromMoisturePct;
      const [across, along] = [1 + given.radialPerPct * rise, 1 + given.tangentialPerPct * rise];
      const height = (x: number) => {
        const [radius, angle] = [Math.hypot(x, given.pithDistanceMm), Math.atan2(x, given.pithDistanceMm)];
        // The arc from the middle keeps the tangential change, its ring the radial one.
        const arc = radius * angle * along;
        return radius * across * Math.cos(arc / (radius * across));
      };
      expect(Math.abs(cupDepth(given).cupMm - (height(given.widthMm / 2) - height(0)))).toBeLessThan(1e-9);
    }),
  );
});
