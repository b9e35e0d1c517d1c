import fc from 'fast-check';

/** What a check found wrong, one sentence each. */
export type Problems = readonly string[];

/** Runs a property and hands its smallest counterexample back as a problem. */
export function counterexamples<T>(
  arbitrary: fc.Arbitrary<T>,
  predicate: (value: T) => void,
  numRuns = 300,
): Problems {
  const result = fc.check(fc.property(arbitrary, predicate), { numRuns, seed: 20100410 });
  if (!result.failed) return [];
  const because = result.errorInstance instanceof Error ? result.errorInstance.message : 'too few inputs';
  return [`${because} at ${fc.stringify(result.counterexample)}`];
}

/** Room for the rounding of floating-point arithmetic on numbers of this size. */
export const rounding = (...values: number[]) => 1e-9 * Math.max(1e-9, ...values.map(Math.abs));

/** Whether two numbers agree, rounding apart. Written so that NaN does not. */
export const agree = (a: number, b: number, { absolute = 0, relative = 0 } = {}) =>
  Math.abs(a - b) <= Math.max(absolute, relative * Math.max(Math.abs(a), Math.abs(b))) + rounding(a, b);
