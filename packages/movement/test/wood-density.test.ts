import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moistureFromWeights, woodDensity } from '../src/index.ts';

test('a cube weighed wet and ovendry has the moisture content that its density was made with', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 1.5, noNaN: true }),
      fc.double({ min: 0, max: 300, noNaN: true }),
      (specificGravityRatio, moisturePct) => {
        // A cube of 100 mm: a thousandth of a cubic metre, its kg/m³ are its grams.
        const wetG = woodDensity({ specificGravityRatio, moisturePct }).densityKgPerM3;
        const ovendryG = woodDensity({ specificGravityRatio, moisturePct: 0 }).densityKgPerM3;
        expect(Math.abs(moistureFromWeights({ wetG, ovendryG }).moisturePct - moisturePct)).toBeLessThan(
          1e-10,
        );
      },
    ),
  );
});
