import { describe, expect, test } from 'vitest';
import { transverseDiffusion } from '../src/index.ts';

/** 10⁻¹⁰ m²/s. */
const UNIT = 8.64;

const at = (temperatureC: number, moisturePct: number, specificGravityRatio: number) =>
  transverseDiffusion({ temperatureC, moisturePct, specificGravityRatio });

describe('beside measured wood', () => {
  // What the abstracts leave out is taken as usual: rooms of 20 to 25 °C, indoor moisture contents, and ovendry
  // specific gravities of 0.43 for spruce and 0.68 for beech (from memory).
  test('spruce, radial 0.94 and tangential 1.00 × 10⁻¹⁰ m²/s (doi 10.1038/s41598-026-38932-7, abstract)', () => {
    for (const measured of [0.94 * UNIT, 1 * UNIT]) {
      for (const moisturePct of [5, 8, 12]) {
        const { lowMm2PerDay, highMm2PerDay } = at(25, moisturePct, 0.43);
        expect(measured).toBeGreaterThan(lowMm2PerDay);
        expect(measured).toBeLessThan(highMm2PerDay);
      }
    }
    expect(at(25, 5, 0.43).diffusionMm2PerDay).toBeLessThan(0.94 * UNIT);
    expect(at(25, 12, 0.43).diffusionMm2PerDay).toBeGreaterThan(1 * UNIT);
  });

  test('spruce two to three times as readily as beech (doi 10.1515/HF.2011.091, abstract)', () => {
    for (const moisturePct of [6, 10, 14]) {
      const [spruce, beech] = [0.43, 0.68].map((g) => at(20, moisturePct, g).diffusionMm2PerDay);
      expect((spruce ?? 0) / (beech ?? 0)).toBeGreaterThan(2);
      expect((spruce ?? 0) / (beech ?? 0)).toBeLessThan(3);
    }
  });

  test('aspen at 110 °F eight times as readily at 18 as at 2.5 % (Wood and Fiber, W. T. Simpson, abstract)', () => {
    const celsius = (110 - 32) / 1.8;
    const [dry, wet] = [at(celsius, 2.5, 0.41), at(celsius, 18, 0.41)];
    // The rule has a factor of 5.6: within its own uncertainty, and short of the measured one.
    expect(wet.diffusionMm2PerDay / dry.diffusionMm2PerDay).toBeGreaterThan(8 / 1.5);
    expect(wet.diffusionMm2PerDay / dry.diffusionMm2PerDay).toBeLessThan(8);
    expect(wet.highMm2PerDay / dry.lowMm2PerDay).toBeGreaterThan(8);
  });

  test('a coefficient half as large, as a changing instead of a steady flow gives it, is within the range', () => {
    const { diffusionMm2PerDay, lowMm2PerDay, highMm2PerDay } = at(20, 10, 0.6);
    expect(lowMm2PerDay).toBeLessThan(diffusionMm2PerDay / 2);
    expect(highMm2PerDay).toBeGreaterThan(diffusionMm2PerDay * 2);
  });
});
