import { plusZero, requireInputs } from '@scantling/rules';
import { designCodeDecides, notStructuralDesign, slipsFirst, steelToo } from './cautions.ts';
import { combinedLoad } from './rules/combined-load.ts';
import { leastCount, onePerScrew, type PulledScrew, requirePullThrough } from './share-out.ts';

const limits = {
  pushN: { min: 0, max: 100_000 },
  heightMm: { min: 0, max: 5000 },
  lineSpacingMm: { min: 1, max: 5000 },
  framesCount: { min: 1, max: 100, integer: true },
  allowedWithdrawalN: onePerScrew,
  allowedLateralN: onePerScrew,
} as const;

/**
 * A top on stiff leg frames that stand on the floor as if hinged, so that only the screws keep legs and top square. Each
 * frame is held by two rows of screws, one behind the other in the direction of the push.
 */
export interface RackedTop extends PulledScrew {
  /** Push along the edge of the top, N, 0 to 100 000: planing, a vice, somebody who leans on it. */
  readonly pushN: number;
  /** From the floor to the underside of the top, mm, 0 to 5000. */
  readonly heightMm: number;
  /** From one row of screws to the other in the direction of the push, mm, 1 to 5000. */
  readonly lineSpacingMm: number;
  /** Leg frames that share the push, 1 to 100. */
  readonly framesCount: number;
  /** What one screw may be given across its shank, N, 1 to 1 000 000. */
  readonly allowedLateralN: number;
}

/** What may give way in a screw that is pulled and pushed sideways. */
export type RackingLimit = 'withdrawal' | 'head' | 'lateral' | 'combined';

/** How many screws a push asks for. */
export interface ScrewsAgainstRacking {
  /** Screws in each row: the push may come from either side. */
  readonly perLineCount: number;
  /** Screws in all rows of all frames. */
  readonly totalCount: number;
  /** Pull on a screw of the row that is lifted, N; the other row is pressed together. */
  readonly screwPullN: number;
  /** Sideways force on every screw, N. */
  readonly screwSidewaysN: number;
  /** What each limit is used to. */
  readonly utilisations: Readonly<Record<RackingLimit, { readonly utilisationRatio: number }>>;
  /** The largest of them. */
  readonly utilisationRatio: number;
  /** Which limit that is. */
  readonly governs: RackingLimit;
  readonly cautions: readonly string[];
}

/**
 * How many screws keep a top and its leg frames square against a push along the top. The push at the floor's distance is a
 * moment, push × height; the two rows of each frame resist it as a couple, one pulled and one pressed, and all screws share
 * the push itself. Weight that presses the top down is left out, and so is friction.
 *
 * @param input - Push in N, lengths in mm, what one screw may be given in N.
 * @returns The least number of screws in each row, one or more, the forces on a screw, and what limits it.
 * @throws RangeError where a field is outside its limits.
 * @example
 * ```ts
 * import { countScrewsAgainstRacking } from '@scantling/fastening';
 * // 300 N at 850 mm on two frames, rows 500 mm apart: 300 × 850 / 500 / 2 = 255 N on each row that is pulled
 * const racked = countScrewsAgainstRacking({
 *   pushN: 300, heightMm: 850, lineSpacingMm: 500, framesCount: 2, allowedWithdrawalN: 540, allowedPullThroughN: null, allowedLateralN: 360,
 * });
 * racked.totalCount // => 4
 * racked.screwPullN // => 255
 * racked.screwSidewaysN // => 75
 * racked.governs // => 'combined'
 * racked.utilisationRatio // => 0.512
 * ```
 */
export function countScrewsAgainstRacking(input: RackedTop): ScrewsAgainstRacking {
  const {
    pushN,
    heightMm,
    lineSpacingMm,
    framesCount,
    allowedWithdrawalN,
    allowedPullThroughN,
    allowedLateralN,
  } = input ?? {};
  requireInputs(
    'countScrewsAgainstRacking',
    { pushN, heightMm, lineSpacingMm, framesCount, allowedWithdrawalN, allowedLateralN },
    limits,
  );
  requirePullThrough('countScrewsAgainstRacking', allowedPullThroughN);
  const rowPullN = plusZero((pushN * heightMm) / lineSpacingMm / framesCount);
  const rowSidewaysN = plusZero(pushN / framesCount / 2);
  const loadToFaceDeg = (Math.atan2(heightMm, lineSpacingMm / 2) * 180) / Math.PI;
  const { allowedN } = combinedLoad({
    allowedWithdrawalN,
    allowedLateralN,
    loadToFaceDeg,
    fastener: 'woodScrew',
  });
  const ofOneScrew: Readonly<Record<RackingLimit, number>> = {
    withdrawal: rowPullN / allowedWithdrawalN,
    head: allowedPullThroughN === null ? 0 : rowPullN / allowedPullThroughN,
    lateral: rowSidewaysN / allowedLateralN,
    combined: Math.hypot(rowPullN, rowSidewaysN) / allowedN,
  };
  const byUse = (Object.entries(ofOneScrew) as [RackingLimit, number][]).sort((a, b) => b[1] - a[1]);
  const [governs, timesOne] = byUse[0] as [RackingLimit, number];
  const perLineCount = leastCount(timesOne);
  const used = (limit: RackingLimit) => ({ utilisationRatio: ofOneScrew[limit] / perLineCount });
  return {
    perLineCount,
    totalCount: 2 * framesCount * perLineCount,
    screwPullN: rowPullN / perLineCount,
    screwSidewaysN: rowSidewaysN / perLineCount,
    utilisations: {
      withdrawal: used('withdrawal'),
      head: used('head'),
      lateral: used('lateral'),
      combined: used('combined'),
    },
    utilisationRatio: timesOne / perLineCount,
    governs,
    cautions: [slipsFirst, designCodeDecides, steelToo, notStructuralDesign],
  };
}
