import { describe, expect, test } from 'vitest';
import { equations, workingProblems } from '../src/law-kit/hand-working.ts';

describe('arithmetic written out by hand', () => {
  test.each([
    ['600 × 0.00353 = 2.118 mm for each 1 %; 2.118 × (7 − 12) = −10.590 mm', 2],
    ['600 mm × 0.00353 = 2.118 mm', 1],
    ['31 7/16 in + 0.41 in = 31.8475 in', 1],
    ['10 000 × 2 = 20 000', 1],
    ['to the corner 100 − 70 = 30 mm and 100 − 60 = 40 mm; √(30² + 40²) = 50', 3],
    ['1400 / 96 = 14.58, so 14 pitches; 1400 − 14 × 96 = 1400 − 1344 = 56 mm', 2],
    ['half of 3 × 2 = 3; 3 / 2 = 1.5', 1],
    ['the sine of 30 × 1 = 0.5; 2 / 4 = 0.5', 1],
    ['2 × sin(30°) = 1.000; ln(2.718282) = 1.0000; exp(0) + cos(60°) = 1.5', 3],
  ])('is read and comes out: %s', (working, count) => {
    expect(equations(working)).toHaveLength(count);
    expect(workingProblems(working, [])).toEqual([]);
  });

  test.each([
    '600 × 0.00353 = 2.119',
    '31 7/16 in + 0.41 in = 31.86 in',
    '√(30² + 40²) = 51',
    'swollen, it is 2 × (5 + 3) = 13 mm wide',
    '2 × sin(30°) = 1.1',
    'half of 3 × 2 = 3',
    '10.590 by the formula',
  ])('is a problem where it does not: %s', (working) => {
    expect(workingProblems(working, [])).toHaveLength(1);
  });

  test('holds its figures with their sign and digits', () => {
    const working = '2.118 × (7 − 12) = −10.590 mm';
    expect(workingProblems(working, ['-10.590', '12', '2.118'])).toEqual([]);
    expect(workingProblems(working, ['10.590', '-12', '2.12'])).toHaveLength(2);
  });
});
