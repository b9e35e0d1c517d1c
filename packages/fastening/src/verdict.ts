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
export const fallsShort = (lengthMm: number, leastMm: number) => lengthMm < leastMm - 1e-9;

/** A length as people read it, to a hundredth of a millimetre. */
export const mm = (lengthMm: number) => `${Number(lengthMm.toFixed(2)) + 0} mm`;
