import { requireInputs, requireList, requireThat } from '@scantling/rules';
import { drillingCare, measureTheTop, notStructuralDesign } from './cautions.ts';
import { type ThreadEngagement, threadEngagement } from './rules/thread-engagement.ts';
import { fallsShort, mm, objectionTo, type Verdict, verdictOf } from './verdict.ts';

const limits = {
  topThicknessMm: { min: 1, max: 500 },
  threadShare: { min: 0.05, max: 1 },
  tipLengthMm: { min: 0, max: 100 },
  leastThreadMm: { min: 0, max: 500 },
  leastStockMm: { min: 0, max: 500 },
} as const;

/** What is to be screwed to what, with which screws. */
export interface ChooseScrewLengthInput {
  /**
   * What lies between the head and the wood, mm each, 0 to 8 layers of 0 to 500 and 500 in all: washer, bracket, strip, rail. A layer counts
   * less by as much as a countersunk head lies below its face.
   */
  readonly layersMm: readonly number[];
  /** Thickness of the top where the screw goes in, mm, 1 to 500. */
  readonly topThicknessMm: number;
  /** Lengths that are to be had, mm, 1 to 60 of them, 1 to 1000 each. */
  readonly stockLengthsMm: readonly number[];
  /** Share of the length that is threaded, tip included, 0.05 to 1: 2/3 of a common wood screw. */
  readonly threadShare: number;
  /** The tapered tip, mm, 0 to 100; it does not count as thread. */
  readonly tipLengthMm: number;
  /** Least thread within the wood, tip not counted, mm, 0 to 500. */
  readonly leastThreadMm: number;
  /** Least wood left above the tip, mm, 0 to 500. */
  readonly leastStockMm: number;
}

/** How one length lies in the top, and what is against it. */
export interface ScrewLength extends ThreadEngagement, Verdict {
  readonly lengthMm: number;
}

/** The length chosen, and every length beside it. */
export interface ChosenScrewLength {
  readonly status: 'pass' | 'fail';
  /** The length that passes with the most thread in the wood; `null` where none passes. */
  readonly chosen: ScrewLength | null;
  readonly why: string;
  /** Washer, bracket and strip together, mm. */
  readonly fixtureThicknessMm: number;
  /** Every stock length once, from short to long. */
  readonly lengths: readonly ScrewLength[];
  readonly cautions: readonly string[];
}

/**
 * Chooses a screw from the lengths that are to be had: the one with the most thread in the top that still leaves the
 * stock asked for above its tip. The least thread is the maker's to say, or comes from `pointsidePenetration` or
 * `leastPenetration`; the least stock is common practice, no source: more where the top will be planed or sanded.
 *
 * @returns The chosen length with its reasons, and all lengths with what is against them.
 * @throws RangeError where an input is outside its limits, or the layers are thicker than 500 mm in all.
 * @example
 * ```ts
 * import { chooseScrewLength } from '@scantling/fastening';
 * // A 3 mm bracket under a 1.5 mm washer, a 45 mm top of maple, 5 mm wood screws
 * const top = { layersMm: [1.5, 3], topThicknessMm: 45, threadShare: 2 / 3, tipLengthMm: 5, leastThreadMm: 20, leastStockMm: 6 };
 * const { chosen, why } = chooseScrewLength({ ...top, stockLengthsMm: [30, 40, 50] });
 * chosen.lengthMm // => 40
 * why // => '40 mm: 21.67 mm of thread in the wood, 9.5 mm above the tip.'
 * chooseScrewLength({ ...top, stockLengthsMm: [50] }).lengths[0].reasons // => ['50 mm comes through the face by 0.5 mm.']
 * ```
 */
export function chooseScrewLength(input: ChooseScrewLengthInput): ChosenScrewLength {
  const caller = 'chooseScrewLength';
  requireInputs<Omit<ChooseScrewLengthInput, 'layersMm' | 'stockLengthsMm'>>(caller, input, limits);
  const { layersMm, stockLengthsMm, tipLengthMm, threadShare, ...rest } = input;
  requireList(caller, 'layersMm', layersMm, { min: 0, max: 500, minItems: 0, maxItems: 8 });
  requireList(caller, 'stockLengthsMm', stockLengthsMm, { min: 1, max: 1000, minItems: 1, maxItems: 60 });
  const byLength = [...new Set(stockLengthsMm)].sort((a, b) => a - b);
  const fixtureThicknessMm = layersMm.reduce((sum, layerMm) => sum + layerMm, 0);
  requireThat(caller, fixtureThicknessMm <= 500, `layersMm of at most 500 in all, got ${fixtureThicknessMm}`);
  const lengths = byLength.map((lengthMm): ScrewLength => {
    const threadLengthMm = threadShare * lengthMm;
    const lies = threadEngagement({
      screwLengthMm: lengthMm,
      threadLengthMm,
      tipLengthMm: Math.min(tipLengthMm, threadLengthMm),
      fixtureThicknessMm,
      topThicknessMm: rest.topThicknessMm,
    });
    return { lengthMm, ...lies, ...judge(lengthMm, lies, tipLengthMm > threadLengthMm, rest) };
  });
  const [chosen = null] = lengths
    .filter(({ status }) => status === 'pass')
    .sort((a, b) => b.threadInWoodMm - a.threadInWoodMm || a.lengthMm - b.lengthMm);
  return {
    status: chosen ? 'pass' : 'fail',
    chosen,
    why: chosen ? describe(chosen) : `None passes. ${nearest(lengths, rest.leastStockMm)}`,
    fixtureThicknessMm,
    lengths,
    cautions: [measureTheTop, drillingCare, notStructuralDesign],
  };
}

function judge(
  lengthMm: number,
  { threadInWoodMm, penetrationMm, stockAboveTipMm }: ThreadEngagement,
  allTip: boolean,
  { leastThreadMm, leastStockMm }: Pick<ChooseScrewLengthInput, 'leastThreadMm' | 'leastStockMm'>,
): Verdict {
  const it = mm(lengthMm);
  return verdictOf([
    allTip && `${it} has no thread but its tip.`,
    penetrationMm <= 0
      ? `${it} does not reach the wood.`
      : fallsShort(threadInWoodMm, leastThreadMm) &&
        `${it} has ${mm(threadInWoodMm)} of thread in the wood, less than ${mm(leastThreadMm)}.`,
    objectionTo(
      stockAboveTipMm,
      leastStockMm,
      (by) => `${it} comes through the face by ${by}`,
      (left) => `${it} leaves ${left} above its tip`,
    ),
  ]);
}

const describe = ({ lengthMm, threadInWoodMm, stockAboveTipMm }: ScrewLength) =>
  `${mm(lengthMm)}: ${mm(threadInWoodMm)} of thread in the wood, ${mm(stockAboveTipMm)} above the tip.`;

/** Of lengths that all fail: what is against the longest that leaves the stock, and against the next, which does not. */
function nearest(lengths: readonly ScrewLength[], leastStockMm: number): string {
  const tooLong = lengths.findIndex(({ stockAboveTipMm }) => fallsShort(stockAboveTipMm, leastStockMm));
  const next = tooLong < 0 ? lengths.length : tooLong;
  return lengths
    .slice(Math.max(0, next - 1), next + 1)
    .flatMap(({ reasons }) => reasons)
    .join(' ');
}
