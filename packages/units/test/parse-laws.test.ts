import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test, vi } from 'vitest';
import { LengthSyntaxError, parseLength } from '../src/index.ts';
import { writtenLength } from './arbitraries.ts';
import { isNearest } from './exact.ts';

describe('beside fraction.js, which is exact', () => {
  test('gives the double nearest to what is written, in every notation and unit', () => {
    fc.assert(
      fc.property(writtenLength, ({ text, mm }) => {
        expect(isNearest(parseLength(text), mm)).toBe(true);
      }),
      { numRuns: 5000 },
    );
  });

  test('gives the nearest double where the digits do not fit one', () => {
    const cases: readonly (readonly [string, Fraction])[] = [
      ['33.333333333333336 mm', new Fraction('33.333333333333336')],
      ['0.12345678901234567890123456789 in', new Fraction('0.12345678901234567890123456789').mul(254, 10)],
      ['5 ft 0.1234567890123456789 in', new Fraction('60.1234567890123456789').mul(254, 10)],
      [
        '.00000000000000000000000000000000000073 m',
        new Fraction('.00000000000000000000000000000000000073').mul(1000),
      ],
      ['999999999.99999999999999 mm', new Fraction('999999999.99999999999999')],
    ];
    for (const [text, mm] of cases) expect(isNearest(parseLength(text), mm), text).toBe(true);
  });

  test('the check itself tells a neighbouring double from the nearest', () => {
    expect(isNearest(0.1, new Fraction(1, 10))).toBe(true);
    expect(isNearest(0.10000000000000002, new Fraction(1, 10))).toBe(false);
    expect(isNearest(0.09999999999999999, new Fraction(1, 10))).toBe(false);
    expect(isNearest(-0.1, new Fraction(1, 10))).toBe(false);
  });
});

describe('laws', () => {
  test('a number in millimetres comes back as it was', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (mm) => {
        fc.pre(Math.abs(mm) >= 1e-6);
        expect(parseLength(`${mm} mm`)).toBe(mm);
      }),
      { numRuns: 2000 },
    );
  });

  test('a minus sign turns a length round, and nothing is −0', () => {
    fc.assert(
      fc.property(writtenLength, ({ text }) => {
        fc.pre(!/^[-−+]/.test(text) && text.length < 64);
        expect(parseLength(`-${text}`)).toBe(0 - parseLength(text));
      }),
    );
  });

  test('the longer length is not read as the shorter', () => {
    fc.assert(
      fc.property(writtenLength, writtenLength, (a, b) => {
        const [short, long] = a.mm.lte(b.mm) ? [a, b] : [b, a];
        expect(parseLength(short.text)).toBeLessThanOrEqual(parseLength(long.text));
      }),
      { numRuns: 2000 },
    );
  });

  test('the unit of a bare number is the one that the caller names', () => {
    const bareUnits = ['in', 'ft', 'mm', 'cm', 'm'] as const;
    fc.assert(
      fc.property(fc.nat({ max: 99_999 }), fc.constantFrom(...bareUnits), (number, bareUnit) => {
        expect(parseLength(`${number}`, { bareUnit })).toBe(parseLength(`${number} ${bareUnit}`));
      }),
    );
  });
});

describe('any text at all', () => {
  const alphabet = `0123456789 .,/-'"+−′″’”½⅜⁄infthemc\u00a0\u2009`;
  const anyText = fc.oneof(
    fc.string({ maxLength: 80 }),
    fc.string({ unit: 'binary', maxLength: 80 }),
    fc.string({ unit: fc.constantFrom(...alphabet), maxLength: 70 }),
  );
  let accepted = 0;

  test('is a finite length, or refused within the text', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom(undefined, 'in', 'mm'), (text, bareUnit) => {
        try {
          const mm = parseLength(text, bareUnit ? { bareUnit } : {});
          expect(Number.isFinite(mm) && !Object.is(mm, -0)).toBe(true);
          accepted += 1;
        } catch (error) {
          if (!(error instanceof LengthSyntaxError)) throw error;
          expect(error.position).toBeGreaterThanOrEqual(0);
          expect(error.position).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 20_000 },
    );
    expect(accepted).toBeGreaterThan(100);
  });

  test('takes time in proportion to its length: each character is looked at a few times', () => {
    const looks = vi.spyOn(String.prototype, 'charCodeAt');
    const patterns = ['1', ' ', '1 ', '1/', '1-', '9 9/', "1'", '½', 'in', '1.', '.', '-', '\u2009', '1 1 '];
    for (const pattern of patterns) {
      for (const length of [16, 32, 64]) {
        const text = pattern.repeat(64).slice(0, length);
        looks.mockClear();
        try {
          parseLength(text);
        } catch {
          // Refused or not, the work is what counts here.
        }
        expect(looks.mock.calls.length, text).toBeLessThanOrEqual(3 * length + 3);
        expect(looks.mock.calls.length).toBeGreaterThan(0);
      }
    }
    looks.mockRestore();
    expect(() => parseLength('1'.repeat(1e7))).toThrow('at most 64 characters');
  });
});
