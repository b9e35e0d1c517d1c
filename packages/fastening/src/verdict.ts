import { SAME_MM } from './screw-opening.ts';

/** What a check found: it passes where there is nothing against it. */
export interface Verdict {
  readonly status: 'pass' | 'fail';
  /** What is against it, one sentence each. */
  readonly reasons: readonly string[];
}

/** A verdict from what may be said against something: sentences, or `false` where there is nothing to say. */
export function verdictOf(objections: readonly (string | false)[]): Verdict {
  const reasons = objections.filter((one) => one !== false);
  return { status: reasons.length === 0 ? 'pass' : 'fail', reasons };
}

/** Whether a length falls short of another by more than the rounding of arithmetic. */
export const fallsShort = (lengthMm: number, leastMm: number) => lengthMm < leastMm - SAME_MM;

/** A length as people read it, to a hundredth of a millimetre. */
export const mm = (lengthMm: number) => `${Number(lengthMm.toFixed(2)) + 0} mm`;

/** What is against a length that is left over: that there is nothing left, or that there is less than asked for. */
export function objectionTo(
  leftMm: number,
  leastMm: number,
  gone: (by: string) => string,
  left: (it: string) => string,
): string | false {
  if (fallsShort(leftMm, 0)) return `${gone(mm(-leftMm))}.`;
  return fallsShort(leftMm, leastMm) && `${left(mm(leftMm))}, less than ${mm(leastMm)}.`;
}
