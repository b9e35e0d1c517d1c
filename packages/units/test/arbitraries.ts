import fc from 'fast-check';
import Fraction from 'fraction.js';

/** A length as text, and exactly how many millimetres it is. */
export interface WrittenLength {
  readonly text: string;
  readonly mm: Fraction;
}

const integer = (max: number) => fc.integer({ min: 0, max });
const digits = (maxLength: number) =>
  fc.string({ unit: fc.constantFrom(...'0123456789'), minLength: 1, maxLength });

const decimal = fc
  .tuple(integer(99_999), fc.constantFrom('.', ','), digits(20))
  .filter(([whole, mark, part]) => mark === '.' || part.length !== 3 || whole === 0 || whole > 999)
  .map(([whole, mark, part]) => ({
    text: `${whole}${mark}${part}`,
    value: new Fraction(`${whole}.${part}`),
  }));

const fraction = fc
  .tuple(integer(9999), fc.integer({ min: 1, max: 9999 }))
  .map(([top, bottom]) => ({ text: `${top}/${bottom}`, value: new Fraction(top, bottom) }));

const mixed = fc
  .tuple(
    integer(99_999),
    fc.constantFrom(' ', '-', '\u00a0', '  '),
    fc.integer({ min: 1, max: 9999 }),
    integer(9998),
  )
  .map(([whole, gap, bottom, any]) => {
    const top = any % bottom;
    return { text: `${whole}${gap}${top}/${bottom}`, value: new Fraction(top, bottom).add(whole) };
  });

const glyph = fc
  .tuple(
    fc.option(integer(99_999), { nil: undefined }),
    fc.constantFrom('', ' ', '-'),
    fc.constantFrom(...'¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'),
  )
  .map(([whole, gap, character]) => {
    const value = new Fraction(character.normalize('NFKC').replace('⁄', '/'));
    if (whole === undefined) return { text: character, value };
    return { text: `${whole}${gap}${character}`, value: value.add(whole) };
  });

const whole = integer(999_999).map((value) => ({ text: `${value}`, value: new Fraction(value) }));
const number = fc.oneof(whole, decimal, fraction, mixed, glyph);

const inchSigns = ['in', 'IN', 'in.', 'inch', 'Inches', '"', '″', '”'];
const footSigns = ['ft', 'Ft', 'ft.', 'foot', 'feet', "'", '′', '’'];
const unit = fc.oneof(
  fc.constantFrom(...inchSigns).map((sign) => ({ sign, size: new Fraction(254, 10) })),
  fc.constantFrom(...footSigns).map((sign) => ({ sign, size: new Fraction(3048, 10) })),
  fc.constantFrom('mm', 'MM').map((sign) => ({ sign, size: new Fraction(1) })),
  fc.constantFrom('cm').map((sign) => ({ sign, size: new Fraction(10) })),
  fc.constantFrom('m').map((sign) => ({ sign, size: new Fraction(1000) })),
);
const gap = fc.constantFrom('', ' ', '\u2009', '\u202f');

const single = fc
  .tuple(number, gap, unit)
  .map(([{ text, value }, space, { sign, size }]) => ({ text: text + space + sign, mm: value.mul(size) }));

const feetAndInches = fc
  .tuple(
    integer(9999),
    gap,
    fc.constantFrom(...footSigns),
    fc.constantFrom('', ' ', '-'),
    number,
    gap,
    fc.constantFrom(...inchSigns),
  )
  .filter(([, , , , inches]) => inches.value.lt(12))
  .map(([feet, space, foot, join, inches, space2, inch]) => ({
    text: `${feet}${space}${foot}${join}${inches.text}${space2}${inch}`,
    mm: inches.value.add(12 * feet).mul(254, 10),
  }));

const sign = fc.constantFrom('', '-', '−', '+', '- ');

/** Anything that may be written as a length, in every unit and notation. */
export const writtenLength: fc.Arbitrary<WrittenLength> = fc
  .tuple(sign, fc.oneof(single, feetAndInches))
  .filter(([before, { text }]) => before.length + text.length <= 64)
  .map(([before, { text, mm }]) => ({
    text: before + text,
    mm: /^[-−]/.test(before) ? mm.neg() : mm,
  }));

/** Lengths in mm anywhere that formatting takes, and more often near the size of furniture. */
export const lengthMm = fc.oneof(
  fc.double({ min: -3000, max: 3000, noNaN: true }),
  fc.double({ min: -1e9, max: 1e9, noNaN: true }),
  fc.integer({ min: -100_000, max: 100_000 }).map((ticks) => (ticks * 25.4) / 64),
  fc.integer({ min: -100_000, max: 100_000 }).map((ticks) => ticks / 10),
);

export const denominator = fc.constantFrom(2, 4, 8, 16, 32, 64);
