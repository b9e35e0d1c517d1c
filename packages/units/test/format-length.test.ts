import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { type Denominator, formatLength, type LengthFormat, nearestMark, parseLength } from '../src/index.ts';
import { denominator, lengthMm } from './arbitraries.ts';

/** Worked by hand with 1 in = 25.4 mm (NIST SP 811, Appendix B.8); a half goes away from zero. */
const written: readonly (readonly [number, LengthFormat, string])[] = [
  [479.425, { unit: 'in', denominator: 8 }, '18 7/8 in'],
  [479.425, { unit: 'in', denominator: 64 }, '18 7/8 in'],
  [479.425, { unit: 'in', denominator: 2 }, '19 in'], // 18.875 lies nearer to 19 than to 18 1/2
  [479.425, { unit: 'ft-in', denominator: 16 }, '1 ft 6 7/8 in'],
  [479.425, { unit: 'in', decimals: 3 }, '18.875 in'],
  [479.425, { unit: 'in', decimals: 3, decimalMark: ',' }, '18,875 in'],
  [479.425, { unit: 'mm', decimals: 0 }, '479 mm'],
  [479.425, { unit: 'mm', decimals: 2 }, '479.43 mm'], // a half, away from zero
  [479.425, { unit: 'cm', decimals: 1 }, '47.9 cm'],
  [479.425, { unit: 'm', decimals: 4 }, '0.4794 m'],
  [19.05, { unit: 'in', denominator: 16 }, '3/4 in'],
  [19.05, { unit: 'ft-in', denominator: 16 }, '3/4 in'],
  [1536.7, { unit: 'ft-in', denominator: 16 }, '5 ft 0 1/2 in'],
  [1524, { unit: 'ft-in', denominator: 16 }, '5 ft 0 in'],
  [1612.9, { unit: 'ft-in', denominator: 16, primes: true }, `5' 3 1/2"`],
  [1612.9, { unit: 'in', denominator: 16, primes: true }, `63 1/2"`],
  [1612.9, { unit: 'in', decimals: 1, primes: true }, '63.5"'],
  [1612.9, { unit: 'mm', decimals: 1, primes: true }, '1612.9 mm'],
  [-1600.2, { unit: 'ft-in', denominator: 16 }, '-5 ft 3 in'],
  [-3.175, { unit: 'in', denominator: 8 }, '-1/8 in'],
  [0, { unit: 'ft-in', denominator: 16 }, '0 in'],
  [-0, { unit: 'in', decimals: 2 }, '0.00 in'],
  [0.79375, { unit: 'in', denominator: 16 }, '1/16 in'], // 1/32, a half
  [-0.79375, { unit: 'in', denominator: 16 }, '-1/16 in'],
  [0.793749, { unit: 'in', denominator: 16 }, '0 in'],
  [304.7, { unit: 'ft-in', denominator: 16 }, '1 ft 0 in'], // 11 255/256 in
  [304.7, { unit: 'in', denominator: 16 }, '12 in'],
  [1e9, { unit: 'm', decimals: 5 }, '1000000.00000 m'],
  [479.425, { unit: 'in', denominator: 16, beside: { unit: 'mm', decimals: 1 } }, '18 7/8 in (479.4 mm)'],
  [
    // Each is rounded from the length itself: 0.5 in would be 12.7 mm.
    13.1,
    { unit: 'in', denominator: 2, beside: { unit: 'mm', decimals: 1 } },
    '1/2 in (13.1 mm)',
  ],
];

describe('writes a length', () => {
  for (const [mm, format, text] of written) {
    test(`${mm} mm as ${text}`, () => expect(formatLength(mm, format)).toBe(text));
  }

  test('refuses what is no length and no format', () => {
    for (const mm of [Number.NaN, Number.POSITIVE_INFINITY, 1.1e9, '5', undefined]) {
      expect(() => formatLength(mm as number, { unit: 'mm', decimals: 1 })).toThrow(
        /^formatLength requires lengthMm between/,
      );
    }
    const formats = [
      [{ unit: 'in', denominator: 3 }, 'denominator'],
      [{ unit: 'in', denominator: 128 }, 'denominator'],
      [{ unit: 'in', denominator: 16.5 }, 'denominator'],
      [{ unit: 'in', denominator: 0 }, 'denominator'],
      [{ unit: 'mm', denominator: 16 }, 'unit'],
      [{ unit: 'yd', decimals: 1 }, 'unit'],
      [{ unit: 'toString', decimals: 1 }, 'unit'],
      [{ unit: 'mm', decimals: 6 }, 'decimals'],
      [{ unit: 'mm', decimals: -1 }, 'decimals'],
      [{ unit: 'mm', decimals: 0.5 }, 'decimals'],
      [{ unit: 'mm', decimals: 1, decimalMark: ';' }, 'decimalMark'],
      [{ unit: 'mm', decimals: 1, beside: { unit: 'in', denominator: 5 } }, 'denominator'],
    ] as const;
    for (const [format, name] of formats) {
      expect(() => formatLength(5, format as LengthFormat)).toThrow(`formatLength requires ${name} `);
    }
  });
});

const inchFormat = fc.record({
  unit: fc.constantFrom('in', 'ft-in'),
  denominator,
  primes: fc.boolean(),
}) as fc.Arbitrary<LengthFormat>;
const decimalFormat = fc.record({
  unit: fc.constantFrom('in', 'mm', 'cm', 'm'),
  decimals: fc.integer({ min: 0, max: 5 }),
  decimalMark: fc.constantFrom('.', ','),
  primes: fc.boolean(),
}) as fc.Arbitrary<LengthFormat>;
const anyFormat = fc.oneof(inchFormat, decimalFormat);
const ambiguous = (text: string) => /(^|\D)[1-9]\d{0,2},\d{3}(\D|$)/.test(text);

describe('laws', () => {
  test('what is written reads back to the same text', () => {
    fc.assert(
      fc.property(lengthMm, anyFormat, (mm, format) => {
        const text = formatLength(mm, format);
        fc.pre(!ambiguous(text) && Math.abs(mm) < 9e8);
        expect(formatLength(parseLength(text), format)).toBe(text);
      }),
      { numRuns: 5000 },
    );
  });

  test('a length and its negative are written alike, and nothing is −0', () => {
    fc.assert(
      fc.property(lengthMm, anyFormat, (mm, format) => {
        const text = formatLength(Math.abs(mm), format);
        const isZero = /^0([.,]0*)?\D*$/.test(text);
        expect(formatLength(-Math.abs(mm), format)).toBe(isZero ? text : `-${text}`);
      }),
      { numRuns: 5000 },
    );
  });

  test('inches after feet stay below 12, and fractions below 1 and in lowest terms', () => {
    let withFeet = 0;
    let withFraction = 0;
    fc.assert(
      fc.property(lengthMm, denominator, (mm, d) => {
        const text = formatLength(mm, { unit: 'ft-in', denominator: d as Denominator });
        const match = /^-?(?:(\d+) ft )?(?:(\d+)(?: |(?= in)))?(?:(\d+)\/(\d+) ?)? ?in$/.exec(text);
        if (!match) throw new Error(`"${text}" is not feet, inches and a fraction`);
        const [, feet, inches = '0', top, bottom] = match;
        expect(Number(inches)).toBeLessThan(12);
        if (feet) withFeet += 1;
        if (!top) return;
        withFraction += 1;
        expect(Number(top) % 2).toBe(1);
        expect(Number(top)).toBeLessThan(Number(bottom));
        expect(d % Number(bottom)).toBe(0);
      }),
      { numRuns: 5000 },
    );
    expect(Math.min(withFeet, withFraction)).toBeGreaterThan(1000);
  });

  test('agrees with fraction.js, which rounds exactly', () => {
    const reading = fc.tuple(fc.integer({ min: 0, max: 6000 }), denominator);
    fc.assert(
      fc.property(reading, reading, denominator, ([a, da], [b, db], d) => {
        const exact = new Fraction(a, da).add(new Fraction(b, db));
        const text = formatLength(parseLength(`${a}/${da} in`) + parseLength(`${b}/${db} in`), {
          unit: 'in',
          denominator: d as Denominator,
        });
        expect(text).toBe(`${exact.roundTo(new Fraction(1, d)).toFraction(true)} in`);
      }),
      { numRuns: 5000 },
    );
  });
});

describe('the nearest mark', () => {
  test.each([
    // 100 mm is 62.99 sixteenths; the 63rd is at 100.0125 mm.
    [
      { lengthMm: 100, denominator: 16 },
      { ticks: 63, markMm: 100.0125, offsetMm: -0.0125 },
    ],
    [
      { lengthMm: -100, denominator: 16 },
      { ticks: -63, markMm: -100.0125, offsetMm: 0.0125 },
    ],
    [
      { lengthMm: 479.425, denominator: 8 },
      { ticks: 151, markMm: 479.425, offsetMm: 0 },
    ],
    [
      { lengthMm: 479.425, stepMm: 1 },
      { ticks: 479, markMm: 479, offsetMm: 0.425 },
    ],
    [
      { lengthMm: 0.5, stepMm: 1 },
      { ticks: 1, markMm: 1, offsetMm: -0.5 },
    ],
    [
      { lengthMm: -0.5, stepMm: 1 },
      { ticks: -1, markMm: -1, offsetMm: 0.5 },
    ],
    [
      { lengthMm: -0.2, stepMm: 1 },
      { ticks: 0, markMm: 0, offsetMm: -0.2 },
    ],
    [
      { lengthMm: 3 * 25.4 + 1e-12, denominator: 64 },
      { ticks: 192, markMm: 76.2, offsetMm: 0 },
    ],
  ] as const)('%o is %o', (input, mark) => expect(nearestMark(input)).toEqual(mark));

  const tape = fc.oneof(
    denominator.map((d) => ({ input: { denominator: d as Denominator }, stepMm: 25.4 / d })),
    fc.constantFrom(0.1, 0.5, 1, 2, 5, 10).map((stepMm) => ({ input: { stepMm }, stepMm })),
  );

  test('is off by half a step at most, and mark and rest make up the length', () => {
    fc.assert(
      fc.property(lengthMm, tape, (mm, { input, stepMm }) => {
        const { ticks, markMm, offsetMm } = nearestMark({ lengthMm: mm, ...input });
        const rounding = 1e-6 + 1e-15 * Math.abs(mm);
        expect(Math.abs(offsetMm)).toBeLessThanOrEqual(stepMm / 2);
        expect(Math.abs(markMm + offsetMm - mm)).toBeLessThanOrEqual(rounding);
        expect(Math.abs(markMm - ticks * stepMm)).toBeLessThanOrEqual(rounding);
        for (const value of [ticks, markMm, offsetMm]) expect(Object.is(value, -0)).toBe(false);
      }),
      { numRuns: 5000 },
    );
  });

  test('never falls where the length grows', () => {
    fc.assert(
      fc.property(lengthMm, lengthMm, tape, (a, b, { input }) => {
        const low = nearestMark({ lengthMm: Math.min(a, b), ...input });
        const high = nearestMark({ lengthMm: Math.max(a, b), ...input });
        expect(low.ticks).toBeLessThanOrEqual(high.ticks);
      }),
      { numRuns: 5000 },
    );
  });

  test('refuses what is no length and no tape', () => {
    const wrong = [
      [{ lengthMm: Number.NaN, stepMm: 1 }, 'lengthMm'],
      [{ lengthMm: 1, stepMm: 0 }, 'stepMm'],
      [{ lengthMm: 1, stepMm: Number.NaN }, 'stepMm'],
      [{ lengthMm: 1, denominator: 5 }, 'denominator'],
      [{ lengthMm: 1 }, 'stepMm'],
      [undefined, 'lengthMm'],
    ] as const;
    for (const [input, name] of wrong) {
      expect(() => nearestMark(input as never)).toThrow(`nearestMark requires ${name} `);
    }
  });
});
