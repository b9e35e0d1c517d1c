import type { Encounters } from './encounters.ts';
import { type Range, SAME_MM } from './geometry.ts';
import { halvings } from './ranges.ts';

/** Where a grid may begin, and what its holes may meet there. */
export interface OffsetProblem {
  readonly range: Range;
  readonly holeCount: number;
  readonly encounters: Encounters;
  /** A spare above this counts as this: what is further away was left out of the encounters. */
  readonly capMm: number;
  /** How far the answer may stay below the best. */
  readonly gapMm: number;
  /** Ranges to look at for the spare before a bound is tried that costs more. */
  readonly easyRanges: number;
  /** Ranges to look at before the answer is given as it stands. */
  readonly mostRanges: number;
}

/** The best offset found, and how much better another may be. */
export interface OffsetFound {
  readonly xMm: number;
  readonly yMm: number;
  /** Holes that keep every clearance. */
  readonly kept: number;
  readonly spareMm: number;
  /** No offset that keeps as many leaves them more. */
  readonly boundMm: number;
  /** Whether an offset that keeps more holes was not ruled out. */
  readonly moreOpen: boolean;
}

/** A range that may hold the best offset. */
interface Open {
  readonly range: Range;
  /** Holes that are lost all over it. */
  readonly lost: number;
  /** Encounters that are not yet decided all over it. */
  readonly open: Int32Array;
  /** Spare that was asked about: more of it was left out. */
  readonly boundMm: number;
  /** Rising: the most that each hole which cannot have that much may spare. */
  readonly mosts: Float64Array;
}

/** A range halved one way, and how much is hoped for from both halves. */
interface Tried {
  readonly halves: readonly Open[];
  readonly hope: number;
}

/** Bounds every hole's spare over a range within another; a spare that cannot bind below `boundMm` is left out. */
function survey(
  { encounters, capMm }: OffsetProblem,
  { open, lost }: Open,
  range: Range,
  boundMm: number,
): Open {
  const { holes, spareIn } = encounters;
  const still = new Int32Array(open.length);
  const mosts = new Float64Array(open.length);
  const between = new Float64Array(2);
  let stillCount = 0;
  let tightCount = 0;
  let lostNow = lost;
  for (let i = 0; i < open.length; ) {
    const hole = holes[open[i] as number];
    const before = stillCount;
    let mostMm = capMm;
    for (; i < open.length && holes[open[i] as number] === hole; i++) {
      if (mostMm < -SAME_MM) continue;
      spareIn(open[i] as number, range, between);
      mostMm = Math.min(mostMm, between[1] as number);
      if ((between[0] as number) < boundMm) still[stillCount++] = open[i] as number;
    }
    if (mostMm < -SAME_MM) {
      lostNow += 1;
      stillCount = before;
    } else if (mostMm < boundMm) mosts[tightCount++] = mostMm;
  }
  return {
    range,
    lost: lostNow,
    open: still.slice(0, stillCount),
    boundMm,
    mosts: mosts.slice(0, tightCount).sort(),
  };
}

/** Most spare that an offset of the range can leave to so many holes, mm; −∞ where they are too many. */
function boundFor(wanted: number, { holeCount, capMm }: OffsetProblem, { lost, mosts }: Open): number {
  const toLose = holeCount - lost - wanted;
  return toLose < 0 ? Number.NEGATIVE_INFINITY : (mosts[toLose] ?? capMm);
}

/**
 * Most spare that a range leaves where no hole of it may be lost. Where two holes take room from each other, as between
 * two rails, neither can have more than the mean of both: along such a ridge the mean hardly changes, where what each
 * could have by itself is far apart from end to end.
 */
function sharedBound({ encounters }: OffsetProblem, { range, open }: Open): number {
  const { x1, x2, y1, y2 } = range;
  const atCorners: number[][] = [];
  for (const encounter of open) {
    const spare = encounters.spareToNearest(encounter, (x1 + x2) / 2, (y1 + y2) / 2);
    if (spare) atCorners.push([spare(x1, y1), spare(x1, y2), spare(x2, y1), spare(x2, y2)]);
  }
  const most = (corners: readonly number[]) => Math.max(...corners);
  const [first, ...others] = atCorners;
  if (!first) return Number.POSITIVE_INFINITY;
  const tightest = others.reduce((a, b) => (most(b) < most(a) ? b : a), first);
  return Math.min(
    ...atCorners.map((one) => most(one.map((mm, corner) => (mm + (tightest[corner] as number)) / 2))),
  );
}

/** What an offset in a range gives. */
function at({ encounters, holeCount, capMm }: OffsetProblem, { open, lost }: Open, xMm: number, yMm: number) {
  const { holes, spareAt } = encounters;
  let kept = holeCount - lost;
  let spareMm = capMm;
  for (let i = 0; i < open.length; ) {
    const hole = holes[open[i] as number];
    let ofHoleMm = capMm;
    for (; i < open.length && holes[open[i] as number] === hole; i++) {
      ofHoleMm = Math.min(ofHoleMm, spareAt(open[i] as number, xMm, yMm));
    }
    if (ofHoleMm < -SAME_MM) kept -= 1;
    else spareMm = Math.min(spareMm, ofHoleMm);
  }
  return { xMm, yMm, kept, spareMm };
}

/**
 * The offset that keeps most holes and then leaves them the largest least spare, by branch and bound: first for the
 * number alone, where only encounters that may go either way count, then for the spare where that number is possible.
 * A range that cannot pass the best found by more than the gap is settled; any other is halved, the way that leaves
 * less to hope for.
 */
export function searchOffset(
  problem: OffsetProblem,
  seeds: readonly (readonly [number, number])[],
): OffsetFound {
  const { range, encounters, holeCount, capMm, gapMm, easyRanges, mostRanges } = problem;
  const everything = Int32Array.from({ length: encounters.length }, (_, i) => i);
  const unseen: Open = { range, lost: 0, open: everything, boundMm: capMm, mosts: new Float64Array() };
  const whole = survey(problem, unseen, range, capMm);
  let best = { xMm: range.x1, yMm: range.y1, kept: -1, spareMm: 0 };
  const better = (one: typeof best) =>
    one.kept > best.kept || (one.kept === best.kept && one.spareMm > best.spareMm);
  const consider = (seen: Open, xMm: number, yMm: number) => {
    // What the range has left out can only take away from what is spare.
    if (!better(at(problem, seen, xMm, yMm))) return;
    const found = at(problem, whole, xMm, yMm);
    if (better(found)) best = found;
  };
  let rangesSeen = 0;
  /** Halves ranges until nothing is hoped for from any of them, or so many were seen; `boundOf` is what may bind. */
  const settle = (
    from: readonly Open[],
    hope: (seen: Open) => number,
    boundOf: (seen: Open) => number,
  ): Open[] => {
    const settled: Open[] = [];
    for (let level = from; level.length > 0; ) {
      const next: Open[] = [];
      for (const seen of level) {
        const { x1, x2, y1, y2 } = seen.range;
        consider(seen, (x1 + x2) / 2, (y1 + y2) / 2);
        if (hope(seen) <= 0 || rangesSeen >= mostRanges) {
          settled.push(seen);
          continue;
        }
        const tried = halvings(seen.range).map((parts): Tried => {
          const halves = parts.map((part) => survey(problem, seen, part, boundOf(seen)));
          return { halves, hope: halves.reduce((sum, half) => sum + Math.max(0, hope(half)), 0) };
        });
        rangesSeen += 4;
        next.push(...tried.reduce((a, b) => (b.hope < a.hope ? b : a)).halves);
      }
      level = next;
    }
    return settled;
  };

  for (const [xMm, yMm] of seeds) consider(whole, xMm, yMm);
  const possible = (seen: Open) => holeCount - seen.lost - best.kept;
  const more = (seen: Open) => (boundFor(best.kept + 1, problem, seen) > gapMm ? possible(seen) : 0);
  // Bounds up to what a range needs to matter for the spare, too: few are then left to look at once more.
  const byNumber = settle([whole], more, () => Math.max(0, best.spareMm) + gapMm);
  const moreOpen = byNumber.some((seen) => more(seen) > 0);
  const bound = (seen: Open) => Math.min(seen.boundMm, boundFor(best.kept, problem, seen));
  const hopeful = (seen: Open) => boundFor(best.kept, problem, seen) > best.spareMm + gapMm;
  const easyUntil = rangesSeen + easyRanges;
  const sharedOrNot = (seen: Open) => {
    const alone = bound(seen);
    const settled = alone <= best.spareMm + gapMm;
    if (settled || possible(seen) > 0 || rangesSeen < easyUntil) return alone;
    return Math.min(alone, sharedBound(problem, seen));
  };
  const bounded: Open[] = [];
  let unbounded = byNumber.filter((seen) => possible(seen) >= 0);
  // Little more than the best found is asked about first: that settles most ranges by the few encounters that are tight.
  for (let askedMm = best.spareMm + gapMm; unbounded.length > 0; ) {
    askedMm = Math.min(capMm, 8 * askedMm);
    const passes = (seen: Open) => askedMm < capMm && bound(seen) >= askedMm;
    const settled = settle(
      unbounded.map((seen) => (hopeful(seen) ? survey(problem, whole, seen.range, askedMm) : seen)),
      (seen) => (passes(seen) ? 0 : sharedOrNot(seen) - best.spareMm - gapMm),
      bound,
    );
    bounded.push(...settled.filter((seen) => !passes(seen)));
    unbounded = settled.filter(passes);
  }
  return { ...best, boundMm: Math.max(best.spareMm, ...bounded.map(sharedOrNot)), moreOpen };
}
