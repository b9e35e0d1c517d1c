import { LengthSyntaxError } from './length-syntax-error.ts';

/** Units in which a length is written. */
export type LengthUnit = 'in' | 'ft' | 'mm' | 'cm' | 'm';

/** How {@link parseLength} reads what the text leaves open. */
export interface ParseLengthOptions {
  /** The unit of a number that stands without one. Where it is not given, such a number is refused. */
  readonly bareUnit?: LengthUnit;
}

/** Tenths of a millimetre in the unit that a word or sign stands for: whole, so that a length is a ratio of whole numbers. */
const tenthsOfMm = {
  in: 254,
  inch: 254,
  inches: 254,
  '"': 254,
  '″': 254,
  '”': 254,
  ft: 3048,
  foot: 3048,
  feet: 3048,
  "'": 3048,
  '′': 3048,
  '’': 3048,
  mm: 10,
  cm: 100,
  m: 10_000,
} as Readonly<Record<string, number>>;

const isDigit = (code: number) => code > 47 && code < 58;

/** −1 beyond the end, where asking the string itself is slow. A non-breaking or thin space counts as a space. */
const codeAt = (text: string, at: number) => {
  const code = at < text.length ? text.charCodeAt(at) : -1;
  return code === 160 || code === 0x2009 || code === 0x202f ? 32 : code;
};

function fail(text: string, position: number, expected: string): never {
  throw new LengthSyntaxError(text, position, expected);
}

/** With many decimals top and bottom no longer fit a double, but they make a decimal expansion that is exact. */
function exactMillimetres(feet: number, inches: string, decimals: number, size: number): number {
  const exact = BigInt(feet * 12) * 10n ** BigInt(decimals) + BigInt(inches.replace(/\D/, ''));
  return Number(`${exact * BigInt(size)}e-${decimals + 1}`);
}

/**
 * Reads a length as it is written in a shop: `18 7/8"`, `18-7/8 in`, `5' 3 1/2"`, `5 ft 3.5 in`, `½ in`, `.73"`,
 * `12 mm`, `12,5 mm`, `1.2 m`. Units are in, inch, inches, ft, foot, feet, mm, cm and m, in either case and with a full
 * stop or without, or ' and " with their typographic forms; spaces may be non-breaking or thin. A sign in front (`-`,
 * `−` or `+`) counts for the whole length: −5′ 3″ is −(5′ 3″). Whole feet may be followed by inches below 12, after a
 * space, a hyphen (`5'-3"`) or nothing.
 *
 * @param text - At most 64 characters.
 * @param options - The unit of a number without one; there is no default.
 * @returns Millimetres: the double nearest to the exact value of what is written, up to 1e9 mm.
 * @throws LengthSyntaxError with position and reason, for anything else. Among it: a denominator that is 0 or above
 * 9999, a fraction of 1 or more after a whole number, a second decimal mark, and a comma before exactly three digits
 * (`1,200 mm` may mean 1.2 or 1200; `0,125` and `1200,125` can only be decimals and are read).
 * @throws RangeError where the unit named by the caller is none of the five.
 * Source: 1 in = 25.4 mm exactly (NIST SP 811, Appendix B.8); the notation is common practice, no source.
 * @example
 * ```ts
 * import { parseLength } from '@scantling/units';
 * parseLength('18 7/8', { bareUnit: 'in' }) // => 479.425
 * parseLength(`5' 3 1/2"`) // => 1612.9
 * parseLength('−12,5 mm') // => -12.5
 * parseLength('3 ft 14 in') // throws Expected inches below 12 at position 5
 * parseLength('18') // throws Expected a unit (in, ft, mm, cm, m) at position 2
 * ```
 */
export function parseLength(text: string, { bareUnit }: ParseLengthOptions = {}): number {
  const bare = tenthsOfMm[bareUnit as LengthUnit] as number;
  if (bareUnit !== undefined && !(bare > 0)) {
    throw new RangeError(`parseLength requires bareUnit to be one of in, ft, mm, cm, m, got "${bareUnit}"`);
  }
  const given = `${text}`; // whatever a form hands over is refused by the same rules
  if (given.length > 64) fail(given.slice(0, 64), 64, 'at most 64 characters');

  // One pass: `c` is the code of the character at `at`, looked at once. 32 is a space, 43 +, 44 a comma, 45 -, 46 a
  // point, 47 /, 0x2212 −. It is one function on purpose: in parts that share a place in the text it takes 1.5 to 2
  // times as long and more bytes than a program should pay for it (`npm run bench`, the ceiling in budgets.ts).
  let at = 0;
  let c = codeAt(given, 0);
  while (c === 32) c = codeAt(given, ++at);
  const negative = c === 45 || c === 0x2212;
  if (negative || c === 43) c = codeAt(given, ++at);
  while (c === 32) c = codeAt(given, ++at);

  // Once, and a second time for inches after feet: a number, which is top / bottom and ends at `end`, and its unit.
  for (let feet: number | undefined; ; ) {
    const start = at;
    let top = 0;
    let bottom = 1;
    let decimals = 0;
    for (; isDigit(c); c = codeAt(given, ++at)) top = top * 10 + c - 48;
    let end = at;
    if (c === 46 || c === 44) {
      const ambiguous = c === 44 && top && top < 1000;
      c = codeAt(given, ++at);
      for (; isDigit(c); c = codeAt(given, ++at)) {
        top = top * 10 + c - 48;
        bottom *= 10;
        decimals++;
      }
      if (!decimals) fail(given, at, 'a number');
      if (c === 46 || c === 44) fail(given, at, 'one decimal mark');
      if (ambiguous && decimals === 3) fail(given, end, 'no comma (it may mean thousands)');
      end = at;
    } else {
      // A fraction alone, or after a whole number and a space, a hyphen or nothing.
      let whole = 0;
      let over = top;
      let from = start;
      if (at > start && c !== 47) {
        if (c === 45) c = codeAt(given, ++at);
        else while (c === 32) c = codeAt(given, ++at);
        whole = top;
        from = at;
        for (over = 0; isDigit(c); c = codeAt(given, ++at)) over = over * 10 + c - 48;
      }
      if (at > from && c === 47) {
        const below = ++at;
        c = codeAt(given, at);
        for (bottom = 0; isDigit(c); c = codeAt(given, ++at)) bottom = bottom * 10 + c - 48;
        if (!(bottom > 0 && bottom < 1e4)) fail(given, below, 'a denominator from 1 to 9999');
        if (from > start && over >= bottom) fail(given, from, 'a fraction below 1');
        top = whole * bottom + over;
        end = at;
      } else {
        if (at === from && c > 187) {
          // Unicode's compatibility form of ⅞ is 7⁄8.
          const [above, below] = given.charAt(at).normalize('NFKC').split('⁄');
          if (below) {
            bottom = +below;
            top = whole * bottom + Number(above);
            end = at + 1;
          }
        }
        if (end === start) fail(given, start, 'a number');
        at = end;
        c = codeAt(given, at);
      }
    }

    while (c === 32) c = codeAt(given, ++at);
    const sign = at;
    let named = 0;
    if (c >= 0) {
      while ((c | 32) > 96 && (c | 32) < 123) c = codeAt(given, ++at);
      if (at === sign) at++;
      named = tenthsOfMm[given.slice(sign, at).toLowerCase()] as number;
      if (!(named > 0)) {
        named = 0; // also for "constructor", which every object knows
        at = sign;
      } else if (c === 46) at++;
      c = codeAt(given, at);
    }
    const hyphen = c === 45;
    while (c === 32) c = codeAt(given, ++at);

    const size = named || bare;
    if (feet !== undefined) {
      if (size !== 254 || !(top < 12 * bottom)) fail(given, start, 'inches below 12');
      top += feet * 12 * bottom;
    } else if (named === 3048 && bottom === 1 && c >= 0) {
      feet = top;
      if (hyphen) c = codeAt(given, ++at);
      continue;
    }
    if (!size) fail(given, sign, 'a unit (in, ft, mm, cm, m)');
    if (c >= 0) fail(given, at, 'the end');

    const tenths = top * size;
    const mm =
      decimals && tenths * bottom > 2 ** 53
        ? exactMillimetres(feet ?? 0, given.slice(start, end), decimals, size)
        : tenths / (bottom * 10);
    return negative ? 0 - mm : mm;
  }
}
