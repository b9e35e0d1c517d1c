import { requireChoice, requireThat } from '@scantling/rules';
import { formatFraction } from './format-fraction.ts';
import { type Denominator, INCH_NM, requireLength, toTicks } from './ticks.ts';

interface Notation {
  /** ' and " instead of ft and in. */
  readonly primes?: boolean;
  /** `.` where it is not given. */
  readonly decimalMark?: '.' | ',';
  /** The same length once more, in parentheses: each of the two is rounded from the length itself. */
  readonly beside?: LengthFormat;
}

/** Inches, or feet and inches, with a fraction in lowest terms. */
export interface FractionFormat extends Notation {
  readonly unit: 'in' | 'ft-in';
  /** The finest fraction: 2, 4, 8, 16, 32 or 64. */
  readonly denominator: Denominator;
}

/** A decimal number with its unit. */
export interface DecimalFormat extends Notation {
  readonly unit: 'in' | 'mm' | 'cm' | 'm';
  /** How many, 0 to 5; all of them are written. */
  readonly decimals: number;
}

/** How a length is written. */
export type LengthFormat = FractionFormat | DecimalFormat;

const unitNm = { in: INCH_NM, mm: 1e6, cm: 1e7, m: 1e9 };

function decimalText(lengthMm: number, { unit, decimals, primes, decimalMark = '.' }: DecimalFormat): string {
  requireChoice('formatLength', 'unit', unit, Object.keys(unitNm));
  requireChoice('formatLength', 'decimalMark', decimalMark, ['.', ',']);
  const places = [0, 1, 2, 3, 4, 5].includes(decimals);
  requireThat('formatLength', places, `decimals to be a whole number from 0 to 5, got ${decimals}`);
  const signed = toTicks(lengthMm, unitNm[unit] / 10 ** decimals);
  const digits = String(Math.abs(signed)).padStart(decimals + 1, '0');
  const point = digits.length - decimals;
  const part = decimals ? decimalMark + digits.slice(point) : '';
  return `${signed < 0 ? '-' : ''}${digits.slice(0, point)}${part}${primes && unit === 'in' ? '"' : ` ${unit}`}`;
}

/**
 * Writes a length as it would be read off a tape or entered on a drawing. It is rounded to the smallest step of the
 * format first, a half away from zero, and split into feet, inches and fraction after: never 12 in after feet,
 * never −0. `parseLength` reads every format back to the same step, except three decimals after a comma, which it
 * refuses as ambiguous, and two lengths side by side.
 *
 * @param lengthMm - The length, mm, −1e9 to 1e9, taken to the nearest nanometre.
 * @param format - Unit, and how fine.
 * @returns The text, with a hyphen-minus where the length is negative.
 * @throws RangeError where the length is outside its limits or the format is not one of those described.
 * Source: rounding and notation are common practice, no source.
 * @example
 * ```ts
 * import { formatLength } from '@scantling/units';
 * formatLength(479.425, { unit: 'in', denominator: 16 }) // => '18 7/8 in'
 * formatLength(1612.9, { unit: 'ft-in', denominator: 8, primes: true }) // => `5' 3 1/2"`
 * formatLength(304.7, { unit: 'ft-in', denominator: 16 }) // => '1 ft 0 in'
 * formatLength(808.9265, { unit: 'in', decimals: 4 }) // => '31.8475 in'
 * formatLength(479.425, { unit: 'in', denominator: 16, beside: { unit: 'mm', decimals: 1 } }) // => '18 7/8 in (479.4 mm)'
 * formatLength(-0.01, { unit: 'mm', decimals: 1 }) // => '0.0 mm'
 * ```
 */
export function formatLength(lengthMm: number, format: LengthFormat): string {
  requireLength('formatLength', lengthMm);
  const text = 'denominator' in format ? formatFraction(lengthMm, format) : decimalText(lengthMm, format);
  return format.beside ? `${text} (${formatLength(lengthMm, format.beside)})` : text;
}
