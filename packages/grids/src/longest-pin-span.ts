import { requireInputs } from '@scantling/rules';
import { SAME_MM } from './geometry.ts';
import { acrossGrain, checkPinTerms, type Margins, marginsOf, type PinTerms } from './pin-terms.ts';

/** Pins in a row across the grain, in a grid of holes. */
export interface LongestPinSpanInput extends PinTerms {
  /** From hole to hole across the grain, mm: from the diameter of the holes to 10 000. */
  readonly pitchMm: number;
  /** How many pitches the grid has across the grain, 1 to 1000. */
  readonly mostPitchCount: number;
}

/** A span between the first and the last pin. */
export interface PinSpan {
  /** 0 where only a single pin goes in. */
  readonly pitchCount: number;
  readonly spanMm: number;
}

/** The longest spans that go in all year; `null` where not even a single pin does. */
export interface LongestPinSpan {
  readonly worstCase: PinSpan | null;
  readonly rootSumSquare: PinSpan | null;
}

/**
 * How far apart the first and the last pin of a row across the grain may be, in whole pitches, so that they go in all
 * year. How many pins stand between them makes no difference. Along the grain wood is taken to keep its length; there
 * the answer is that of no swelling and no shrinking.
 *
 * @param input - Pitch, limits and errors of pins and holes, and how far the wood moves; lengths in mm.
 * @returns The longest span, worst case and by root-sum-square.
 * @throws RangeError where a field is missing or outside its limits.
 * @example
 * ```ts
 * import { longestPinSpan } from '@scantling/grids';
 * longestPinSpan({
 *   pitchMm: 96,
 *   mostPitchCount: 6,
 *   pin: { lowerLimitMm: 19, upperLimitMm: 19.1 },
 *   hole: { lowerLimitMm: 20, upperLimitMm: 20.2 },
 *   pinPositionErrorMm: 0.05,
 *   holePositionErrorMm: 0.1,
 *   swellPct: 0.25,
 *   shrinkPct: 0.5,
 * }) // => { worstCase: { pitchCount: 1, spanMm: 96 }, rootSumSquare: { pitchCount: 1, spanMm: 96 } }
 * ```
 */
export function longestPinSpan(input: LongestPinSpanInput): LongestPinSpan {
  checkPinTerms('longestPinSpan', input);
  const { pitchMm, mostPitchCount, hole, holePositionErrorMm } = input;
  requireInputs(
    'longestPinSpan',
    { pitchMm, mostPitchCount },
    {
      pitchMm: { min: hole.upperLimitMm + 2 * holePositionErrorMm, max: 10_000 },
      mostPitchCount: { min: 1, max: 1000, integer: true },
    },
  );
  const longest = (kind: keyof Margins): PinSpan | null => {
    for (let pitches = mostPitchCount; pitches >= 0; pitches--) {
      const spanMm = pitches * pitchMm;
      const margins = Object.values(acrossGrain(input)).map(
        (scale) => marginsOf(input, scale, pitches === 0 ? 1 : 2, (Math.abs(scale - 1) * spanMm) / 2)[kind],
      );
      if (Math.min(...margins) >= -SAME_MM) return { pitchCount: pitches, spanMm };
    }
    return null;
  };
  return { worstCase: longest('worstCaseMm'), rootSumSquare: longest('rootSumSquareMm') };
}
