import { plusZero, requireInputs } from '@scantling/rules';
import { designCodeDecides, liftCare, notStructuralDesign, steelToo } from './cautions.ts';
import { leastCount, onePerScrew, type PulledScrew, requirePullThrough } from './share-out.ts';

const STANDARD_GRAVITY = 9.806_65;

const limits = {
  hangingMassKg: { min: 0, max: 10_000 },
  offCentrePct: { min: 0, max: 100 },
  liftFactor: { min: 1, max: 5 },
  allowedWithdrawalN: onePerScrew,
} as const;

/** What hangs on the screws between a top and its base, along two opposite edges, while the whole is lifted. */
export interface HangingLoad extends PulledScrew {
  /**
   * Mass of all that hangs on the screws, kg, 0 to 10 000. Lifted by the edges of its top, a bench hangs its base on them,
   * with vices, drawers and shelves, and not the top nor what lies on it. A top hung from above by what it is screwed to
   * hangs itself on them, with what lies on it.
   */
  readonly hangingMassKg: number;
  /**
   * How far the centre of mass may lie from the middle between the two rows of screws, % of the way to a row: 0 shares the
   * weight evenly, 100 puts all of it on one row.
   */
  readonly offCentrePct: number;
  /** How many times its weight a lift may come to: 1 is a lift without any jerk, up to 5. */
  readonly liftFactor: number;
}

/** How many screws a lift asks for. */
export interface ScrewsToLift {
  /** Screws along each of the two edges. */
  readonly perEdgeCount: number;
  /** Screws along both. */
  readonly totalCount: number;
  /** Pull on all the screws of the edge that gets more, N. */
  readonly edgePullN: number;
  /** Pull on one of them, N. */
  readonly screwPullN: number;
  /** What that is of what one screw may be given. */
  readonly utilisationRatio: number;
  /** What gives way first: the thread, or the wood under the head. */
  readonly governs: 'withdrawal' | 'head';
  readonly cautions: readonly string[];
}

/**
 * How many screws hold top and base together while the whole is lifted: each is pulled straight out, the screws of one
 * edge share alike, and either edge may be the one that gets more. What hangs on them depends on where you lift: by the
 * edges of the top, the base hangs; hung from above by what the top is screwed to, the top hangs, and what lies on it;
 * lifted by the base, nothing does. The count is for strength alone: to keep the top flat and down takes screws in rows.
 *
 * @param input - Mass in kg, what one screw may be given in N.
 * @returns The least number of screws along each edge, one or more, and how far they are used.
 * @throws RangeError where a field is outside its limits.
 * @example
 * ```ts
 * import { countScrewsToLift } from '@scantling/fastening';
 * // Lifted by the edges of its top, under which hangs a base of 105 kg: its centre of mass 20 % off, half as much again
 * // for a jerk; 540 N out of the wood, steel under the head
 * const { perEdgeCount, edgePullN, screwPullN, governs } = countScrewsToLift({
 *   hangingMassKg: 105, offCentrePct: 20, liftFactor: 1.5, allowedWithdrawalN: 540, allowedPullThroughN: null,
 * });
 * perEdgeCount // => 2
 * edgePullN // => 926.73
 * screwPullN // => 463.36
 * governs // => 'withdrawal'
 * ```
 */
export function countScrewsToLift(input: HangingLoad): ScrewsToLift {
  const { hangingMassKg, offCentrePct, liftFactor, allowedWithdrawalN, allowedPullThroughN } = input ?? {};
  requireInputs('countScrewsToLift', { hangingMassKg, offCentrePct, liftFactor, allowedWithdrawalN }, limits);
  requirePullThrough('countScrewsToLift', allowedPullThroughN);
  const share = (1 + offCentrePct / 100) / 2;
  const edgePullN = plusZero(liftFactor * STANDARD_GRAVITY * hangingMassKg * share);
  const headFirst = allowedPullThroughN !== null && allowedPullThroughN < allowedWithdrawalN;
  const allowedN = headFirst ? allowedPullThroughN : allowedWithdrawalN;
  const perEdgeCount = leastCount(edgePullN / allowedN);
  const screwPullN = edgePullN / perEdgeCount;
  return {
    perEdgeCount,
    totalCount: 2 * perEdgeCount,
    edgePullN,
    screwPullN,
    utilisationRatio: screwPullN / allowedN,
    governs: headFirst ? 'head' : 'withdrawal',
    cautions: [liftCare, designCodeDecides, steelToo, notStructuralDesign],
  };
}
