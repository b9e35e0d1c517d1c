import { describe, expect, test } from 'vitest';
import { LengthSyntaxError, type LengthUnit, parseLength } from '../src/index.ts';

/** What is written, and what it is in mm, worked by hand with 1 in = 25.4 mm (NIST SP 811, Appendix B.8). */
const read: readonly (readonly [string, number, LengthUnit?])[] = [
  ['18 7/8', 479.425, 'in'], // 18.875 × 25.4
  ['18-7/8"', 479.425],
  ['18 7/8 in', 479.425],
  [`5' 3 1/2"`, 1612.9], // 63.5 × 25.4
  ['5 ft 3.5 in', 1612.9],
  [`5'-3 1/2"`, 1612.9],
  [`5'3-1/2"`, 1612.9],
  ['3/4', 19.05, 'in'],
  ['½', 12.7, 'in'],
  ['½', 0.5, 'mm'],
  ['5⅜ in', 136.525], // 5.375 × 25.4
  ['5 ⅜"', 136.525],
  ['.73"', 18.542],
  ['12 mm', 12],
  ['12mm', 12],
  ['12', 12, 'mm'],
  ['1.2 m', 1200],
  ['30 cm', 300],
  ['12,5 mm', 12.5],
  ['−12.5 mm', -12.5],
  ['-12.5 mm', -12.5],
  ['- 12.5 mm', -12.5],
  ['+12.5 mm', 12.5],
  [`-5' 3"`, -1600.2], // −(63 × 25.4)
  ['5′ 3½″', 1612.9],
  ['5’ 3 1/2”', 1612.9],
  ['18\u00a07/8\u00a0in', 479.425],
  ['18\u20097/8\u2009in', 479.425],
  ['18\u202f7/8\u202fin', 479.425],
  ['  7 in  ', 177.8],
  [`5' 1/2"`, 1536.7], // 60.5 × 25.4
  [`5' 0"`, 1524],
  [`5' 11 15/16"`, 1827.2125], // 71.9375 × 25.4
  [`5' 3`, 1600.2, 'in'],
  ['5 1/2 ft', 1676.4], // 66 × 25.4
  ['5.5 FT', 1676.4],
  ['5/4 in', 31.75],
  ['7 IN', 177.8],
  ['7 in.', 177.8],
  ['1 inch', 25.4],
  ['2 Inches', 50.8],
  ['1 foot', 304.8],
  ['2 feet 1 inch', 635],
  ['5 ft. 3 in.', 1600.2],
  ['0,125 in', 3.175],
  ['1200,125 mm', 1200.125],
  ['0', 0, 'mm'],
  ['0.000 in', 0],
  ['007 mm', 7],
];

/** What is refused: where reading stops, and what was expected there. */
const refused: readonly (readonly [string, number, string, LengthUnit?])[] = [
  ['5/0', 2, 'a denominator from 1 to 9999', 'in'],
  ['5/10000 in', 2, 'a denominator from 1 to 9999'],
  ['5/ in', 2, 'a denominator from 1 to 9999'],
  ['3 ft 14 in', 5, 'inches below 12'],
  ['3 ft 12 in', 5, 'inches below 12'],
  [`3' 11 1/2`, 3, 'inches below 12'],
  [`3' 5 mm`, 3, 'inches below 12'],
  [`3' 5' 2"`, 3, 'inches below 12'],
  [`5' -3"`, 3, 'a number'],
  [`5' - 3"`, 3, 'a number'],
  [`5''`, 2, 'a number'],
  ['5.5 ft 3 in', 7, 'the end'],
  ['5 1/2 ft 3 in', 9, 'the end'],
  ['1/2/3', 3, 'a unit (in, ft, mm, cm, m)'],
  ['1/2/3', 3, 'the end', 'in'],
  ['12 "mm', 4, 'the end'],
  ['12 in in', 6, 'the end'],
  ['1.2.3 mm', 3, 'one decimal mark'],
  ['1,2,3 mm', 3, 'one decimal mark'],
  ['1.2,3 mm', 3, 'one decimal mark'],
  ['1..2 mm', 2, 'a number'],
  ['12. mm', 3, 'a number'],
  ['.', 1, 'a number', 'mm'],
  ['', 0, 'a number', 'mm'],
  ['   ', 3, 'a number', 'mm'],
  ['-', 1, 'a number', 'mm'],
  ['--5 mm', 1, 'a number'],
  ['in', 0, 'a number'],
  ['1,200 mm', 1, 'no comma (it may mean thousands)'],
  ['12,125 in', 2, 'no comma (it may mean thousands)'],
  ['1,200.5 mm', 5, 'one decimal mark'],
  ['1 200 mm', 2, 'a unit (in, ft, mm, cm, m)'],
  ['18', 2, 'a unit (in, ft, mm, cm, m)'],
  ['18 9/8 in', 3, 'a fraction below 1'],
  ['18 8/8 in', 3, 'a fraction below 1'],
  ['18 -7/8 in', 3, 'a unit (in, ft, mm, cm, m)'],
  ['18 - 7/8 in', 3, 'a unit (in, ft, mm, cm, m)'],
  ['18- 7/8 in', 2, 'a unit (in, ft, mm, cm, m)'],
  ['18.5 7/8 in', 5, 'a unit (in, ft, mm, cm, m)'],
  ['½½ in', 1, 'a unit (in, ft, mm, cm, m)'],
  ['5² in', 1, 'a unit (in, ft, mm, cm, m)'],
  ['1e3 mm', 1, 'a unit (in, ft, mm, cm, m)'],
  ['5 yd', 2, 'a unit (in, ft, mm, cm, m)'],
  ['5 constructor', 2, 'a unit (in, ft, mm, cm, m)'],
  ['5 __proto__', 2, 'a unit (in, ft, mm, cm, m)'],
  ['12 mm\u0000', 5, 'the end'],
  ['١٢ mm', 0, 'a number'],
  [`${'1'.repeat(62)} mm`, 64, 'at most 64 characters'],
];

const attempt = (text: string, bareUnit?: LengthUnit) => parseLength(text, bareUnit ? { bareUnit } : {});

function errorOf(text: string, bareUnit?: LengthUnit): unknown {
  try {
    return attempt(text, bareUnit);
  } catch (error) {
    expect(error).toBeInstanceOf(LengthSyntaxError);
    return error;
  }
}

describe('reads what is written in a shop', () => {
  for (const [text, mm, bareUnit] of read) {
    test(`${JSON.stringify(text)} is ${mm} mm`, () => expect(attempt(text, bareUnit)).toBe(mm));
  }

  test('every vulgar fraction of Unicode, as its compatibility form says', () => {
    const characters = [
      ...[0xbc, 0xbd, 0xbe],
      ...Array.from({ length: 0x215e - 0x2150 + 1 }, (_, i) => 0x2150 + i),
    ];
    for (const character of characters.map((code) => String.fromCodePoint(code))) {
      const [top, bottom] = character.normalize('NFKC').split('⁄').map(Number);
      expect(attempt(`7${character} mm`)).toBe(7 + (top as number) / (bottom as number));
    }
    expect(characters).toHaveLength(18);
  });

  test('64 characters', () => {
    expect(attempt(`${' '.repeat(60)}7 mm`)).toBe(7);
  });
});

describe('refuses the rest, with position and reason', () => {
  for (const [text, position, expected, bareUnit] of refused) {
    test(`${JSON.stringify(text)} at ${position}: ${expected}`, () => {
      const short = text.slice(0, 64);
      expect(errorOf(text, bareUnit)).toMatchObject({
        name: 'LengthSyntaxError',
        message: `Expected ${expected} at position ${position} of "${short}"`,
        text: short,
        position,
        expected,
      });
    });
  }

  test('what is no text at all', () => {
    for (const given of [undefined, null, 5, {}, [], Number.NaN, true]) {
      expect(() => parseLength(given as unknown as string)).toThrow(LengthSyntaxError);
    }
  });

  test('a unit that the caller cannot name', () => {
    for (const bareUnit of ['yd', '', 'constructor', 'toString', 5, null]) {
      expect(() => parseLength('5 mm', { bareUnit: bareUnit as LengthUnit })).toThrow(RangeError);
    }
  });
});
