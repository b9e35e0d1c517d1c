import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fixingTravel, slotLength } from '../src/index.ts';

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
