import type { Encounters } from './encounters.ts';
import { type Movement, type Range, SAME_MM } from './geometry.ts';
import { halvings } from './ranges.ts';
import { type Axis, type Body, blocked, type Offsets, type Place, type Stretch } from './slide-blocks.ts';

/** A part that slides, and what of it holes may meet. */
export interface Slide {
  readonly axis: Axis;
  /** Which way along the axis it goes to make the base wider. */
  readonly sign: 1 | -1;
  /** How far it may go that way, mm from where it is drawn. */
  readonly leastMm: number;
  readonly mostMm: number;
  /** What it carries. */
  readonly bodies: readonly Body[];
  /** Every hole of the grid at offset 0. */
  readonly holes: readonly Place[];
}

export interface SlideProblem {
  readonly range: Range;
  /** Of holes with what does not slide. */
  readonly encounters: Encounters;
  readonly slides: readonly Slide[];
  readonly movement: Movement | undefined;
  /** Holes that may be dropped. */
  readonly mostDroppedCount: number;
  /** How far the answer may stay below the best, and how much more than asked for the best leaves every hole, mm. */
  readonly gapMm: number;
  /** Ranges to look at before the answer is given as it stands. */
  readonly mostRanges: number;
}

/** Finding a setting at all is worth this much width, mm. */
const FIRST_FIND_MM = 1e6;

/** How wide the base is at most with so many holes dropped. */
export interface Widest {
  /** Slides added up, mm; −∞ where none was found. */
  readonly spreadMm: number;
  /** No setting is wider that leaves every hole the gap more than it asks for; −∞ where there is none. */
  readonly boundMm: number;
  readonly xMm: number;
  readonly yMm: number;
  /** Of each part, mm the way that widens. */
  readonly slidesMm: readonly number[];
}

/** A place of a part, and the holes that it then comes too near to, in rising order. */
interface Option {
  /** How far it is ahead of the grid, the way that widens. */
  readonly aheadMm: number;
  readonly holes: readonly number[];
}

/** What is known of a range of offsets: holes that something that stays takes all over it, in rising order. */
interface Seen {
  readonly range: Range;
  readonly lost: readonly number[];
  /** Encounters with what stays that are not yet decided all over it. */
  readonly open: Int32Array;
  /** The most that the slides can add up to with 0, 1, 2 … holes dropped. */
  readonly boundsMm: readonly number[];
}

/** Both lists without what they share twice, in rising order; `null` where there are more than so many. */
function union(a: readonly number[], b: readonly number[], most: number): readonly number[] | null {
  if (b.length === 0) return a;
  const both = [...new Set([...a, ...b])].sort((p, q) => p - q);
  return both.length <= most ? both : null;
}

const axes: readonly Axis[] = ['x', 'y'];

/** A range of offsets as a slide sees it. */
function offsetsOf(
  axis: Axis,
  { x1, x2, y1, y2 }: Range,
): { readonly along: Offsets; readonly beside: Offsets } {
  const [x, y] = [
    { low: x1, high: x2 },
    { low: y1, high: y2 },
  ];
  return axis === 'x' ? { along: x, beside: y } : { along: y, beside: x };
}

/** A hole that a part comes too near to from one place to another, neither included. */
interface Taken extends Stretch {
  readonly hole: number;
}

/** What a part takes anywhere in a range, by how far it is ahead of the grid the way that widens. */
function takenBy(
  { axis, sign, bodies, holes }: Slide,
  range: Range,
  lost: readonly number[],
  extraMm: number,
  within: Stretch,
  movement: Movement | undefined,
): Taken[] {
  const { along, beside } = offsetsOf(axis, range);
  const gone = new Set(lost);
  const turned = ({ from, to }: Stretch): Stretch => (sign > 0 ? { from, to } : { from: -to, to: -from });
  const wider = bodies.map((body) => ({ ...body, neededMm: body.neededMm + extraMm }));
  return holes.flatMap((at, hole) =>
    gone.has(hole)
      ? []
      : wider
          .flatMap((body) => blocked(body, at, axis, along, beside, movement, turned(within)))
          .map((stretch) => ({ hole, ...turned(stretch) })),
  );
}

/** Where a part is best: the widest place, and each narrower one that spares a hole which every wider one takes. */
function optionsOf(
  slide: Slide,
  range: Range,
  lost: readonly number[],
  extraMm: number,
  { movement, mostDroppedCount }: SlideProblem,
): Option[] {
  const { axis, sign, leastMm, mostMm } = slide;
  const { low, high } = offsetsOf(axis, range).along;
  const [behindMm, beforeMm] = sign > 0 ? [low, high] : [-high, -low];
  const within = { from: leastMm - beforeMm, to: mostMm - behindMm };
  const taken = takenBy(slide, range, lost, extraMm, within, movement);
  const froms = taken.map(({ from }) => from).filter((from) => from >= within.from);
  const places = [...new Set([within.to, ...froms])].sort((a, b) => b - a);
  const toCome = taken.sort((a, b) => b.to - a.to);
  let next = 0;
  let near: Taken[] = [];
  const options: Option[] = [];
  for (const aheadMm of places) {
    // Going narrower, the part comes to what ends beyond this place and leaves what begins there.
    while ((toCome[next]?.to ?? Number.NEGATIVE_INFINITY) > aheadMm + SAME_MM / 2)
      near.push(toCome[next++] as Taken);
    near = near.filter(({ from }) => from < aheadMm - SAME_MM / 2);
    const holes = [...new Set(near.map(({ hole }) => hole))].sort((a, b) => a - b);
    if (holes.length > mostDroppedCount - lost.length) continue;
    if (options.some((wider) => wider.holes.every((hole) => holes.includes(hole)))) continue;
    options.push({ aheadMm, holes });
    if (holes.length === 0) break;
  }
  return options;
}

/** The most that parts which are so far ahead of the grid can have slid together, wherever in a range the grid begins. */
function spreadOf(slides: readonly Slide[], options: readonly Option[], range: Range): number {
  return axes.reduce((sum, axis) => {
    const { low, high } = offsetsOf(axis, range).along;
    const parts = slides.flatMap(({ axis: own, ...slide }, i) =>
      own === axis ? [{ ...slide, aheadMm: options[i]?.aheadMm ?? Number.NEGATIVE_INFINITY }] : [],
    );
    const slidMm = (offset: number) =>
      parts.reduce((mm, { sign, mostMm, aheadMm }) => mm + Math.min(mostMm, aheadMm + sign * offset), 0);
    // What one part gains from a shift of the grid, one that widens the other way loses, until either has slid all it may.
    const bends = parts.map(({ sign, mostMm, aheadMm }) => sign * (mostMm - aheadMm));
    const within = bends.filter((offset) => offset > low && offset < high);
    return sum + Math.max(...[low, high, ...within].map(slidMm));
  }, 0);
}

/** The widest that the parts can stand with at most so many holes dropped, and where they then stand. */
interface Standing {
  readonly spreadMm: number;
  readonly options: readonly Option[];
}

/** What is wider than was found before, with at most 0, 1, 2 … holes dropped. */
function widestWith(
  problem: SlideProblem,
  range: Range,
  lost: readonly number[],
  extraMm: number,
  before: readonly { readonly spreadMm: number }[],
): Standing[] {
  const { slides, mostDroppedCount } = problem;
  const widest: Standing[] = before.map(({ spreadMm }) => ({ spreadMm, options: [] }));
  if (lost.length > mostDroppedCount) return widest;
  const choices = slides.map((slide) => optionsOf(slide, range, lost, extraMm, problem));
  if (choices.some(({ length }) => length === 0)) return widest;
  // Every part's first option is its widest: no more is to come from the parts that are not chosen yet.
  const firsts = choices.map(([first]) => first as Option);
  const choose = (holes: readonly number[], chosen: readonly Option[]) => {
    const spreadMm = spreadOf(slides, [...chosen, ...firsts.slice(chosen.length)], range);
    if (spreadMm <= (widest[holes.length]?.spreadMm as number)) return;
    const options = choices[chosen.length];
    for (const option of options ?? []) {
      const both = union(holes, option.holes, mostDroppedCount);
      if (both) choose(both, [...chosen, option]);
    }
    for (let dropped = holes.length; !options && dropped <= mostDroppedCount; dropped++) {
      if (spreadMm > (widest[dropped]?.spreadMm as number)) widest[dropped] = { spreadMm, options: chosen };
    }
  };
  choose(lost, []);
  return widest;
}

/** Holes that something that stays takes, all over a range within another, and what is still open there. */
function survey(
  problem: SlideProblem,
  seen: Seen,
  range: Range,
  best: readonly { readonly spreadMm: number }[],
): Seen {
  const { encounters, gapMm } = problem;
  const lost = new Set(seen.lost);
  const between = new Float64Array(2);
  const open = seen.open.filter((encounter) => {
    const hole = encounters.holes[encounter] as number;
    if (lost.has(hole)) return false;
    encounters.spareIn(encounter, range, between);
    if ((between[1] as number) < gapMm) lost.add(hole);
    return (between[0] as number) < gapMm;
  });
  const lostHoles = [...lost].sort((a, b) => a - b);
  const boundsMm = widestWith(problem, range, lostHoles, gapMm, best).map(({ spreadMm }) => spreadMm);
  return { range, lost: lostHoles, open, boundsMm };
}

/**
 * How wide a base can stand with 0, 1, 2 … holes dropped, by branch and bound over the offset of the grid: at one
 * offset every part has few places worth considering, and over a range it can stand no wider than where the holes that
 * it comes too near to all over the range let it. The bound is that of holes with the gap more to spare, so it meets
 * what is found before ranges become points.
 */
export function searchSlides(problem: SlideProblem, seeds: readonly (readonly [number, number])[]): Widest[] {
  const { range, encounters, slides, mostDroppedCount, gapMm, mostRanges } = problem;
  const none = { spreadMm: Number.NEGATIVE_INFINITY, xMm: 0, yMm: 0, slidesMm: [] as readonly number[] };
  const best = Array.from({ length: mostDroppedCount + 1 }, () => none);
  const consider = (xMm: number, yMm: number) => {
    const lost = new Set<number>();
    for (let i = 0; i < encounters.length; i++) {
      const hole = encounters.holes[i] as number;
      if (!lost.has(hole) && encounters.spareAt(i, xMm, yMm) < -SAME_MM) lost.add(hole);
      if (lost.size > mostDroppedCount) return;
    }
    const point = { x1: xMm, x2: xMm, y1: yMm, y2: yMm };
    const found = widestWith(
      problem,
      point,
      [...lost].sort((a, b) => a - b),
      0,
      best,
    );
    for (const [dropped, { spreadMm, options }] of found.entries()) {
      if (spreadMm <= (best[dropped]?.spreadMm as number)) continue;
      const slidesMm = options.map(({ aheadMm }, i) => {
        const { axis, sign, mostMm } = slides[i] as Slide;
        return Math.min(mostMm, aheadMm + sign * (axis === 'x' ? xMm : yMm));
      });
      best[dropped] = { spreadMm, xMm, yMm, slidesMm };
    }
  };
  const hope = ({ boundsMm }: Seen) =>
    boundsMm.reduce((sum, boundMm, dropped) => {
      const moreMm = boundMm - (best[dropped]?.spreadMm ?? Number.NEGATIVE_INFINITY);
      // Where nothing was found yet there is more to hope for than a panel is long, but an end to it.
      return moreMm > gapMm ? sum + Math.min(FIRST_FIND_MM, moreMm) : sum;
    }, 0);

  for (const [xMm, yMm] of seeds) consider(xMm, yMm);
  const everything = Int32Array.from({ length: encounters.length }, (_, i) => i);
  const unseen: Seen = { range, lost: [], open: everything, boundsMm: [] };
  const settled: Seen[] = [];
  let rangesSeen = 0;
  for (let level = [survey(problem, unseen, range, best)]; level.length > 0; ) {
    const next: Seen[] = [];
    for (const seen of level) {
      const { x1, x2, y1, y2 } = seen.range;
      if (hope(seen) > 0) consider((x1 + x2) / 2, (y1 + y2) / 2);
      if (hope(seen) <= 0 || rangesSeen >= mostRanges) {
        settled.push(seen);
        continue;
      }
      const tried = halvings(seen.range).map((parts) => {
        const halves = parts.map((part) => survey(problem, seen, part, best));
        return { halves, hope: halves.reduce((sum, half) => sum + hope(half), 0) };
      });
      rangesSeen += 4;
      next.push(...tried.reduce((a, b) => (b.hope < a.hope ? b : a)).halves);
    }
    level = next;
  }
  return best.map((found, dropped) => ({
    ...found,
    boundMm: Math.max(found.spreadMm, ...settled.map(({ boundsMm }) => boundsMm[dropped] as number)),
  }));
}
