import { requireInputs } from '@scantling/rules';
import { drillingCare, makersDataFirst, tryOnAnOffcut } from './cautions.ts';
import { type InsertHole, type InsertHoleInput, insertHole } from './rules/insert-hole.ts';
import { objectionTo, type Verdict, verdictOf } from './verdict.ts';

/** A threaded insert by its maker's data, and what has to stay of the wood around it. */
export interface CheckInsertHoleInput extends InsertHoleInput {
  /** Least wood above the tip of the bit, mm, 0 to 500. */
  readonly leastStockMm: number;
  /** Least wood between the hole and the nearest edge, mm, 0 to 500. */
  readonly leastWallMm: number;
}

/** The hole, and what is against it. */
export interface CheckedInsertHole extends InsertHole, Verdict {
  readonly cautions: readonly string[];
}

/**
 * Checks the hole for a threaded insert: that the bit stays below the face, and that enough wood stays beside the
 * hole. No standard gives the diameter of the hole or the least wall: both are the maker's to say.
 *
 * @returns The hole and what is against it.
 * @throws RangeError where an input is outside its limits.
 * Common practice, no source.
 * @example
 * ```ts
 * import { checkInsertHole } from '@scantling/fastening';
 * const insert = { holeDiameterMm: 9, insertLengthMm: 15, recessMm: 1, roomBelowMm: 3, bitTipLengthMm: 2.5, edgeDistanceMm: 30 };
 * checkInsertHole({ ...insert, topThicknessMm: 45, leastStockMm: 8, leastWallMm: 9 }).status // => 'pass'
 * checkInsertHole({ ...insert, topThicknessMm: 25, leastStockMm: 8, leastWallMm: 9 }).reasons // => ['The bit leaves 3.5 mm above its tip, less than 8 mm.']
 * ```
 */
export function checkInsertHole(input: CheckInsertHoleInput): CheckedInsertHole {
  const least = { min: 0, max: 500 };
  requireInputs<Pick<CheckInsertHoleInput, 'leastStockMm' | 'leastWallMm'>>('checkInsertHole', input, {
    leastStockMm: least,
    leastWallMm: least,
  });
  const hole = insertHole(input);
  return {
    ...hole,
    ...verdictOf([
      objectionTo(
        hole.stockAboveTipMm,
        input.leastStockMm,
        (by) => `The bit comes through the face by ${by}`,
        (left) => `The bit leaves ${left} above its tip`,
      ),
      objectionTo(
        hole.wallMm,
        input.leastWallMm,
        (by) => `The hole breaks out of the edge by ${by}`,
        (left) => `The hole leaves a wall of ${left}`,
      ),
    ]),
    cautions: [makersDataFirst, tryOnAnOffcut, drillingCare],
  };
}
