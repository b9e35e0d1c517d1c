import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  fixingTravel,
  pivotingPlateTravel,
  plateSidewaysShift,
  slotLength,
  slotTravel,
  stripRabbet,
  washerOverSlot,
} from '../src/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const slots = fc.record({
  shankDiameterMm: between(1, 20),
  swellMm: between(0, 50),
  shrinkMm: between(0, 50),
  clearanceMm: between(0, 5),
});

test('the slot holds the shank through the whole year, with the clearance at both ends and no more', () => {
  fc.assert(
    fc.property(slots, between(0, 1), (input, share) => {
      const { slotLengthMm, screwFromInnerEndMm } = slotLength(input);
      const radius = input.shankDiameterMm / 2;
      const inner = (travelMm: number) => screwFromInnerEndMm + travelMm - radius;
      const outer = (travelMm: number) => slotLengthMm - (screwFromInnerEndMm + travelMm + radius);
      expect(inner(-input.shrinkMm)).toBeCloseTo(input.clearanceMm, 9);
      expect(outer(input.swellMm)).toBeCloseTo(input.clearanceMm, 9);
      const someDay = share * (input.swellMm + input.shrinkMm) - input.shrinkMm;
      expect(inner(someDay)).toBeGreaterThanOrEqual(input.clearanceMm - 1e-9);
      expect(outer(someDay)).toBeGreaterThanOrEqual(input.clearanceMm - 1e-9);
    }),
  );
});

test('seen from the other end, swelling is shrinking', () => {
  fc.assert(
    fc.property(slots, (input) => {
      const { slotLengthMm, screwFromInnerEndMm } = slotLength(input);
      const turned = slotLength({ ...input, swellMm: input.shrinkMm, shrinkMm: input.swellMm });
      expect(turned.slotLengthMm).toBeCloseTo(slotLengthMm, 9);
      expect(turned.screwFromInnerEndMm).toBeCloseTo(slotLengthMm - screwFromInnerEndMm, 9);
    }),
  );
});

test('two screws on one side keep the distance that the wood between them has', () => {
  const season = fc.record({ swellPct: between(0, 10), shrinkPct: between(0, 10) });
  fc.assert(
    fc.property(season, between(0, 1000), between(0, 1000), (change, nearMm, betweenMm) => {
      const near = fixingTravel({ ...change, distanceMm: nearMm });
      const far = fixingTravel({ ...change, distanceMm: nearMm + betweenMm });
      const wood = fixingTravel({ ...change, distanceMm: betweenMm });
      expect(far.swellMm - near.swellMm).toBeCloseTo(wood.swellMm, 9);
      expect(far.shrinkMm - near.shrinkMm).toBeCloseTo(wood.shrinkMm, 9);
    }),
  );
});

test('the travel that a slot allows is the travel that it was cut for', () => {
  fc.assert(
    fc.property(slots, (input) => {
      const { shankDiameterMm, clearanceMm } = input;
      const { roomToSwellMm, roomToShrinkMm } = slotTravel({
        ...slotLength(input),
        shankDiameterMm,
        clearanceMm,
      });
      expect(roomToSwellMm).toBeCloseTo(input.swellMm, 9);
      expect(roomToShrinkMm).toBeCloseTo(input.shrinkMm, 9);
    }),
  );
});

test('a washer over a slot that is just long enough covers it from either end of the season alike', () => {
  fc.assert(
    fc.property(slots, numberArb({ min: 0, max: 10 }), (input, lapMm) => {
      const { shankDiameterMm: d, swellMm: w, shrinkMm: s, clearanceMm: c } = input;
      const { washerDiameterMm } = washerOverSlot({ ...slotLength(input), swellMm: w, shrinkMm: s, lapMm });
      expect(washerDiameterMm).toBeCloseTo(d + 2 * (w + s + c + lapMm), 9);
    }),
  );
});

test('a plate that lies square uses up its play, or its turn, at the end of the travel that it allows', () => {
  const plate = fc.record({
    reachMm: numberArb({ min: 5, max: 100 }),
    mostAngleDeg: numberArb({ min: 0, max: 90 }),
    playMm: numberArb({ min: 0, max: 4 }),
  });
  fc.assert(
    fc.property(plate, ({ reachMm, mostAngleDeg, playMm }) => {
      const { roomToSwellMm, roomToShrinkMm } = pivotingPlateTravel({
        reachMm,
        mostAngleDeg,
        playMm,
        angleDeg: 0,
      });
      expect(roomToShrinkMm).toBe(roomToSwellMm);
      const { sidewaysMm, turnDeg } = plateSidewaysShift({
        reachMm,
        fromSquareMm: Math.min(roomToSwellMm, reachMm),
      });
      expect(Math.min(playMm - sidewaysMm, mostAngleDeg - turnDeg)).toBeCloseTo(0, 4);
      expect(Math.min(playMm - sidewaysMm, mostAngleDeg - turnDeg)).toBeGreaterThanOrEqual(-1e-4);
    }),
  );
});

test('a plate seen in a mirror allows the mirrored travel', () => {
  const plate = fc.record({
    reachMm: numberArb({ min: 5, max: 100 }),
    angleDeg: numberArb({ min: -80, max: 80 }),
    playMm: numberArb({ min: 0, max: 4 }),
  });
  fc.assert(
    fc.property(plate, (given) => {
      const one = pivotingPlateTravel({ ...given, mostAngleDeg: 85 });
      const other = pivotingPlateTravel({ ...given, angleDeg: -given.angleDeg, mostAngleDeg: 85 });
      if (given.angleDeg === 0) return;
      expect([other.roomToSwellMm, other.roomToShrinkMm]).toEqual([one.roomToShrinkMm, one.roomToSwellMm]);
    }),
  );
});

test('no strip within its tolerance stands proud of its rabbet or does not go in, and none lies lower or looser than said', () => {
  const strip = fc.record({
    stripThicknessMm: numberArb({ min: 0.5, max: 20 }),
    stripWidthMm: numberArb({ min: 1, max: 100 }),
    thicknessToleranceMm: numberArb({ min: 0, max: 0.4 }),
    widthToleranceMm: numberArb({ min: 0, max: 0.9 }),
    belowFaceMm: numberArb({ min: 0, max: 1 }),
    gapMm: numberArb({ min: 0, max: 2 }),
    wallCount: fc.constantFrom(1, 2),
  });
  const off = numberArb({ min: -1, max: 1 });
  fc.assert(
    fc.property(strip, off, off, (given, thicker, wider) => {
      const { depthMm, widthMm, mostBelowFaceMm, mostGapMm } = stripRabbet(given);
      const below = depthMm - (given.stripThicknessMm + thicker * given.thicknessToleranceMm);
      const beside = widthMm - (given.stripWidthMm + wider * given.widthToleranceMm);
      expect(below).toBeGreaterThanOrEqual(given.belowFaceMm - 1e-9);
      expect(below).toBeLessThanOrEqual(mostBelowFaceMm + 1e-9);
      expect(beside).toBeGreaterThanOrEqual(given.wallCount * given.gapMm - 1e-9);
      expect(beside).toBeLessThanOrEqual(mostGapMm + 1e-9);
    }),
  );
});
