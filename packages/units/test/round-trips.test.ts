import { describe, expect, test } from 'vitest';
import { formatLength, type LengthFormat, nearestMark, parseLength } from '../src/index.ts';

const SIXTY_FOURTHS = 100 * 12 * 64;
const TENTHS_OF_MM = 10 * 1000 * 10;

/** Writes and reads every tick of a tape, and returns how many came back as another tick. */
function lost(
  ticks: number,
  mmOf: (tick: number) => number,
  tickOf: (mm: number) => number,
  format: LengthFormat,
) {
  let wrong = 0;
  for (let tick = 0; tick <= ticks; tick++) {
    if (tickOf(parseLength(formatLength(mmOf(tick), format))) !== tick) wrong += 1;
  }
  return wrong;
}

const inch = {
  mmOf: (tick: number) => (tick * 25.4) / 64,
  tickOf: (lengthMm: number) => nearestMark({ lengthMm, denominator: 64 }).ticks,
};
const metric = {
  mmOf: (tick: number) => tick / 10,
  tickOf: (lengthMm: number) => nearestMark({ lengthMm, stepMm: 0.1 }).ticks,
};

describe('every 64th of an inch from 0 to 100 ft', () => {
  test.each<[string, LengthFormat]>([
    ['inches', { unit: 'in', denominator: 64 }],
    ['inches, with primes', { unit: 'in', denominator: 64, primes: true }],
    ['feet and inches', { unit: 'ft-in', denominator: 64 }],
    ['feet and inches, with primes', { unit: 'ft-in', denominator: 64, primes: true }],
    ['decimal inches', { unit: 'in', decimals: 4 }],
    ['mm', { unit: 'mm', decimals: 3 }],
  ])('comes back from %s', (_, format) => {
    expect(lost(SIXTY_FOURTHS, inch.mmOf, inch.tickOf, format)).toBe(0);
  });

  test('reads to the double nearest to the exact length', () => {
    for (let tick = 0; tick <= SIXTY_FOURTHS; tick++) {
      // 25.4 tick / 64 as a quotient of whole numbers, which division rounds to the nearest double.
      expect(parseLength(`${tick}/64 in`)).toBe((tick * 254) / 640);
    }
  });
});

describe('every 0.1 mm from 0 to 10 m', () => {
  test.each<[string, LengthFormat]>([
    ['mm', { unit: 'mm', decimals: 1 }],
    ['mm, with a comma', { unit: 'mm', decimals: 1, decimalMark: ',' }],
    ['cm', { unit: 'cm', decimals: 2 }],
    ['m', { unit: 'm', decimals: 4 }],
    ['decimal inches', { unit: 'in', decimals: 4 }],
  ])('comes back from %s', (_, format) => {
    expect(lost(TENTHS_OF_MM, metric.mmOf, metric.tickOf, format)).toBe(0);
  });
});
