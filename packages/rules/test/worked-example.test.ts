import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { expectedValue } from '../src/index.ts';

/** A decimal as a source might print it: sign, whole part, digits after the point, power of ten. */
const printedArb = fc
  .record({
    negative: fc.boolean(),
    whole: fc.nat(99_999),
    digits: fc.string({ unit: fc.constantFrom(...'0123456789'), maxLength: 6 }),
    power: fc.option(fc.integer({ min: -12, max: 12 }), { nil: null }),
  })
  .map(({ negative, whole, digits, power }) => ({
    printed: `${negative ? '-' : ''}${whole}${digits && `.${digits}`}${power === null ? '' : `e${power}`}`,
    // Exact, by a general rational-number library.
    exact: new Fraction(`${negative ? '-' : ''}${whole}${digits && `.${digits}`}`).mul(
      new Fraction(10).pow(power ?? 0) as Fraction,
    ),
    halfDigit: new Fraction(1, 2).mul(new Fraction(10).pow((power ?? 0) - digits.length) as Fraction),
  }));

const close = (ours: number, exact: Fraction) =>
  expect(Math.abs(ours - exact.valueOf())).toBeLessThanOrEqual(1e-12 * Math.abs(exact.valueOf()));

test('a printed figure is its number, give or take half of its last digit', () => {
  fc.assert(
    fc.property(printedArb, ({ printed, exact, halfDigit }) => {
      const { value, tolerance } = expectedValue(printed);
      close(value, exact);
      close(tolerance, halfDigit);
    }),
  );
});

test('a figure in another unit has both multiplied, the tolerance without sign', () => {
  fc.assert(
    fc.property(printedArb, fc.constantFrom(25.4, -25.4, 0.001, 3.785411784, 12), ({ printed }, times) => {
      const plain = expectedValue(printed);
      const { value, tolerance } = expectedValue({ printed, unit: 'other', times });
      expect(value).toBe(plain.value * times);
      expect(tolerance).toBe(plain.tolerance * Math.abs(times));
    }),
  );
});

test('digits that are printed count', () => {
  // Worked by hand: half of the last place of 7, 7.0 and 7.00.
  expect(['7', '7.0', '7.00'].map((printed) => expectedValue(printed).tolerance)).toEqual([0.5, 0.05, 0.005]);
});

test.each([
  '',
  ' 7',
  '7 ',
  '+7',
  '7.',
  '.5',
  '7,5',
  '1/2',
  '0x10',
  '7e',
  '7e1.5',
  'NaN',
  'Infinity',
  '−7',
  '1e999',
])('what is not a plain decimal is refused: "%s"', (printed) => {
  expect(() => expectedValue(printed)).toThrow(RangeError);
});

test.each([0, Number.NaN, Number.POSITIVE_INFINITY])('a unit of no size is refused: %s', (times) => {
  expect(() => expectedValue({ printed: '7.0', unit: 'mm', times })).toThrow(RangeError);
});
