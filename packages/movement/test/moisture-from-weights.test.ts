import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moistureFromWeights } from '../src/index.ts';

const mass = fc.double({ min: 0.1, max: 10_000, noNaN: true });
const moisture = fc.double({ min: 0, max: 250, noNaN: true });
const moistureOf = (wetG: number, ovendryG: number) => moistureFromWeights({ wetG, ovendryG }).moisturePct;

test('wood wetted to a moisture content weighs so much more, and back', () => {
  fc.assert(
    fc.property(mass, moisture, (ovendryG, moisturePct) => {
      const wetG = ovendryG * (1 + moisturePct / 100);
      expect(Math.abs(moistureOf(wetG, ovendryG) - moisturePct)).toBeLessThan(1e-11 * (100 + moisturePct));
    }),
  );
});

test('two scales that read in other units agree, and so do two halves of a piece', () => {
  fc.assert(
    fc.property(mass, mass, fc.double({ min: 1, max: 90, noNaN: true }), (a, b, times) => {
      const [wet, dry] = [Math.max(a, b), Math.min(a, b)];
      const whole = moistureOf(wet, dry);
      expect(Math.abs(moistureOf(wet * times, dry * times) - whole)).toBeLessThan(1e-9 * (1 + whole));
    }),
  );
});

test('water is conserved: two pieces weighed together have the mean of both, by dry weight', () => {
  fc.assert(
    fc.property(mass, mass, moisture, moisture, (dryA, dryB, a, b) => {
      const wet = dryA * (1 + a / 100) + dryB * (1 + b / 100);
      const mean = (dryA * a + dryB * b) / (dryA + dryB);
      expect(Math.abs(moistureOf(wet, dryA + dryB) - mean)).toBeLessThan(1e-10 * (100 + mean));
    }),
  );
});
