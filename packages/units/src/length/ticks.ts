import { requireInputs } from '@scantling/rules';

/** Nanometres in one millimetre. */
export const NM_PER_MM = 1e6;

/** Lengths taken for rounding, mm: up to here a length in whole nanometres is an exact number. */
export const lengthLimits = { min: -1e9, max: 1e9 } as const;

/** Throws unless a length lies within the limits. */
export function requireLength(caller: string, lengthMm: number): void {
  if (typeof lengthMm === 'number' && Math.abs(lengthMm) <= lengthLimits.max) return;
  requireInputs(caller, { lengthMm }, { lengthMm: lengthLimits });
}

/** A length in whole nanometres, a half going away from zero. */
export const nanometres = (lengthMm: number): number =>
  lengthMm < 0 ? -nanometres(-lengthMm) : Math.round(lengthMm * NM_PER_MM);

/** Sum of lengths in mm, added as whole nanometres: exact, and the same in any order. */
export function sumMm(lengthsMm: readonly number[]): number {
  let sumNm = 0;
  for (const lengthMm of lengthsMm) sumNm += nanometres(lengthMm);
  return sumNm / NM_PER_MM;
}

/**
 * A length in whole ticks, a half going away from zero.
 *
 * Every 64th of an inch (396 875 nm), every 0.00001 in and every micrometre is a whole number of nanometres, so the
 * length is first taken to the nanometre. The quotient of two whole numbers of this size lies on a half exactly when
 * the length does.
 */
export const toTicks = (lengthMm: number, tickNm: number): number =>
  lengthMm < 0 ? 0 - toTicks(-lengthMm, tickNm) : Math.round(nanometres(lengthMm) / tickNm) + 0;

/** Nanometres in an inch. */
export const INCH_NM = 25_400_000;

const denominators = [2, 4, 8, 16, 32, 64] as const;

/** Denominators of an inch tape: each halves the one before. */
export type Denominator = (typeof denominators)[number];

/** Throws unless a denominator is one of an inch tape's. */
export function requireDenominator(caller: string, denominator: number): void {
  if (denominators.includes(denominator as Denominator)) return;
  throw new RangeError(
    `${caller} requires denominator to be one of ${denominators.join(', ')}, got ${denominator}`,
  );
}
