import type { Citation } from './citation.ts';

/** A figure as its source prints it, all digits included: `'0.067'`, `'7.0'`, `'1.2e-5'`. */
export type Printed = string;

/**
 * A published figure. In the output's own unit the printed text is enough; printed in another unit it says
 * which, and how many output units one printed unit is.
 */
export type Expected = Printed | { readonly printed: Printed; readonly unit: string; readonly times: number };

/** One worked example of a rule: what goes in, what the source prints, and where. */
export interface RuleExample<I, O> {
  readonly given: I;
  readonly expect: {
    readonly [K in keyof O]?: NonNullable<O[K]> extends readonly number[] ? readonly Expected[] : Expected;
  };
  /**
   * Agreement asked for, in the output's unit, where half of the last printed digit is not it. The sentence
   * says why.
   */
  readonly within?: { readonly value: number; readonly because: string };
  /** A publication with its locator, or the arithmetic written out. Never the code's own answer. */
  readonly from: Citation | { readonly workedByHand: string };
}

/** A printed figure as a number in the output's unit, with the agreement that its last digit allows. */
export interface ExpectedValue {
  readonly value: number;
  readonly tolerance: number;
}

/**
 * Reads a published figure: its value in the output's unit, and half of its last printed digit as tolerance.
 *
 * @param expected - The figure as printed.
 * @returns Value and tolerance, both in the output's unit.
 * @throws RangeError where the text is not a plain decimal number, or the unit is of no size.
 * @example
 * ```ts
 * import { expectedValue } from '@scantling/rules';
 * expectedValue('7.0') // => { value: 7, tolerance: 0.05 }
 * expectedValue({ printed: '2', unit: 'in', times: 25.4 }) // => { value: 50.8, tolerance: 12.7 }
 * ```
 */
export function expectedValue(expected: Expected): ExpectedValue {
  const { printed, times } = typeof expected === 'string' ? { printed: expected, times: 1 } : expected;
  const match = /^-?\d+(?:\.(\d+))?(?:e(-?\d+))?$/.exec(printed);
  if (!match) throw new RangeError(`expectedValue requires a decimal number as printed, got "${printed}"`);
  const value = Number(printed) * times;
  if (times === 0 || !Number.isFinite(value)) {
    throw new RangeError(
      `expectedValue requires a finite figure times a number other than 0, got ${printed} times ${times}`,
    );
  }
  const lastDigit = Number(match[2] ?? 0) - (match[1]?.length ?? 0);
  return { value, tolerance: Number(`0.5e${lastDigit}`) * Math.abs(times) };
}
