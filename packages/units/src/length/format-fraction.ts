import { requireChoice } from '@scantling/rules';
import type { FractionFormat } from './format-length.ts';
import { INCH_NM, requireDenominator, requireLength, toTicks } from './ticks.ts';

/** Every fraction of an inch in lowest terms, by 64ths. */
const fractions: readonly string[] = /* @__PURE__ */ Array.from({ length: 64 }, (_, n) => {
  const common = n & -n; // the largest power of two in it
  return n ? `${n / common}/${64 / common}` : '';
});

/**
 * Writes a length as an inch tape shows it: what `formatLength` does for fractions, without its decimals. Rounded to
 * marks before anything is split off: 11 63/64 in can become 1 ft 0 in, never 12 in.
 *
 * @param lengthMm - The length, mm, −1e9 to 1e9, taken to the nearest nanometre.
 * @param format - Inches, or feet and inches, and how fine.
 * @returns The text, with a hyphen-minus where the length is negative.
 * @throws RangeError where the length is outside its limits or the format is not one of those described.
 * Source: rounding and notation are common practice, no source.
 * @example
 * ```ts
 * import { formatFraction } from '@scantling/units';
 * formatFraction(479.425, { unit: 'in', denominator: 16 }) // => '18 7/8 in'
 * formatFraction(304.7, { unit: 'ft-in', denominator: 16 }) // => '1 ft 0 in'
 * ```
 */
export function formatFraction(
  lengthMm: number,
  { unit, denominator, primes }: Omit<FractionFormat, 'beside' | 'decimalMark'>,
): string {
  requireLength('formatLength', lengthMm);
  requireDenominator('formatLength', denominator);
  const signed = toTicks(lengthMm, INCH_NM / denominator);
  const ticks = Math.abs(signed);
  const rest = ticks % denominator;
  let whole = (ticks - rest) / denominator;
  let feet = '';
  if (unit === 'ft-in') {
    if (whole > 11) feet = `${Math.floor(whole / 12)}${primes ? "'" : ' ft'} `;
    whole %= 12;
  } else if (unit !== 'in') requireChoice('formatLength', 'unit', unit, ['in', 'ft-in']);
  const fraction = fractions[(64 / denominator) * rest];
  const inches = !rest ? whole : whole || feet ? `${whole} ${fraction}` : fraction;
  const text = `${inches}${primes ? '"' : ' in'}`;
  return signed < 0 ? `-${feet}${text}` : feet + text;
}
