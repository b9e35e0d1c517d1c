import { plusZero, requireInputs } from '@scantling/rules';
import { designCodeDecides, liftCare, notStructuralDesign, steelToo } from './cautions.ts';
import { leastCount, onePerScrew, type PulledScrew, requirePullThrough } from './share-out.ts';

const STANDARD_GRAVITY = 9.806_65;

const limits = {
  topMassKg: { min: 0, max: 5000 },
  loadMassKg: { min: 0, max: 5000 },
  offCentrePct: { min: 0, max: 100 },
  liftFactor: { min: 1, max: 5 },
  withdrawalN: onePerScrew,
} as const;

/** A top that hangs on screws along two opposite edges while it is lifted with what lies on it. */
export interface LiftedTop extends PulledScrew {
  /** Mass of the top, kg, 0 to 5000. */
  readonly topMassKg: number;
  /** Mass of what is lifted with it, kg, 0 to 5000. */
  readonly loadMassKg: number;
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
 * How many screws hold a top that is lifted with its load by two opposite edges, when everything hangs on them: each
 * screw is pulled straight out, the screws of one edge share alike, and either edge may be the one that gets more.
 *
 * @param input - Masses in kg, what one screw may be given in N.
 * @returns The least number of screws along each edge, one or more, and how far they are used.
 * @throws RangeError where a field is outside its limits.
 * @example
 * ```ts
 * import { countScrewsToLift } from '@scantling/fastening';
 * // 45 kg and 60 kg, the centre of mass 20 % off, half as much again for a jerk; 540 N out of the wood, steel under the head
 * const { perEdgeCount, edgePullN, screwPullN, governs } = countScrewsToLift({
 *   topMassKg: 45, loadMassKg: 60, offCentrePct: 20, liftFactor: 1.5, withdrawalN: 540, pullThroughN: null,
 * });
 * perEdgeCount // => 2
 * edgePullN // => 926.73
 * screwPullN // => 463.36
 * governs // => 'withdrawal'
 * ```
 */
export function countScrewsToLift(input: LiftedTop): ScrewsToLift {
  const { topMassKg, loadMassKg, offCentrePct, liftFactor, withdrawalN, pullThroughN } = input ?? {};
  requireInputs(
    'countScrewsToLift',
    { topMassKg, loadMassKg, offCentrePct, liftFactor, withdrawalN },
    limits,
  );
  requirePullThrough('countScrewsToLift', pullThroughN);
  const share = (1 + offCentrePct / 100) / 2;
  const edgePullN = plusZero(liftFactor * STANDARD_GRAVITY * (topMassKg + loadMassKg) * share);
  const headFirst = pullThroughN !== null && pullThroughN < withdrawalN;
  const allowedN = headFirst ? pullThroughN : withdrawalN;
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
