import { plusZero } from '@scantling/rules';

/** A number of at most so many decimals, in whole steps of the last of them; `null` where it has more. */
export function inSteps(value: number, decimals: number): number | null {
  const stepsInOne = 10 ** decimals;
  const steps = Math.round(value * stepsInOne);
  // The quotient of two whole numbers is the very double that the decimal text is read as.
  return Number.isSafeInteger(steps) && steps / stepsInOne === value ? steps : null;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/** Whole numbers in the same ratio, as small as they can be; all nought stay so. */
export function lowestTerms(wholes: readonly number[]): number[] {
  const divisor = wholes.reduce(commonDivisor, 0) || 1;
  return wholes.map((whole) => plusZero(whole / divisor));
}
