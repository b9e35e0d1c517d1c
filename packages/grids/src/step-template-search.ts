import {
  finishedBy,
  inOrder,
  overlaps,
  pinsFor,
  placementCount,
  placesUnder,
  type Stepping,
} from './step-template-windows.ts';

/** How many places the search looks at before it gives up; then its bound stands without being reached. */
const MOST_WORK = 6_000_000;

/** A shortest plan found, as a set of placements, and what is proved about it. */
export interface Shortest {
  readonly placements: readonly number[];
  readonly leastCount: number;
}

/** Holes of which no two lie under one template: each needs a placement of its own. */
function apartCount({ columns, width, height }: Stepping, places: Iterable<number>): number {
  const chosen: number[] = [];
  for (const place of places) {
    const clash = chosen.some(
      (other) =>
        Math.abs((place % columns) - (other % columns)) < width &&
        Math.abs(Math.floor(place / columns) - Math.floor(other / columns)) < height,
    );
    if (!clash) chosen.push(place);
  }
  return chosen.length;
}

/** Between any two neighbouring lines of a grid of `lines` a placement must reach across. */
const acrossLines = (lines: readonly number[], size: number): number =>
  size > 1 ? Math.ceil((Math.max(...lines) - Math.min(...lines)) / (size - 1)) : 1;

/**
 * No plan has fewer placements than this, the largest of three counts: each later placement stands on two finished
 * holes and bores at most the rest; holes too far apart for one template need one each; and every gap between two
 * columns, or two rows, is reached across.
 */
export function lowerBound(stepping: Stepping, toFinish: readonly number[]): number {
  if (toFinish.length === 0) return 0;
  const { columns, first } = stepping;
  const isToFinish = new Set(toFinish);
  const firstBores = new Set(placesUnder(stepping, first));
  const later = Array.from({ length: placementCount(stepping) }, (_, i) => i)
    .filter((placement) => placement !== first)
    .map((placement) => placesUnder(stepping, placement).filter((place) => isToFinish.has(place)).length - 2)
    .sort((a, b) => b - a);
  let left = toFinish.length - firstBores.size;
  let byCount = 1;
  while (left > 0 && byCount <= later.length) left -= later[byCount++ - 1] as number;
  const rest = toFinish.filter((place) => !firstBores.has(place));
  return Math.max(
    byCount,
    apartCount(stepping, toFinish),
    1 + apartCount(stepping, rest),
    acrossLines(
      toFinish.map((place) => place % columns),
      stepping.width,
    ),
    acrossLines(
      toFinish.map((place) => Math.floor(place / columns)),
      stepping.height,
    ),
  );
}

/**
 * Looks for a plan with fewer placements, one count after the other from the lower bound up, so that each count given
 * up is proved too few. A plan is searched for as a set: some placement has to bore the hole that fewest can, and once
 * all holes are covered but pins are missing, some placement has to join what is finished to the rest.
 */
export function shortestPlan(
  stepping: Stepping,
  known: readonly number[],
  toFinish: readonly number[],
): Shortest {
  const total = placementCount(stepping);
  const isToFinish = new Uint8Array(stepping.wanted.length);
  for (const place of toFinish) isToFinish[place] = 1;
  const places = Array.from({ length: total }, (_, i) =>
    placesUnder(stepping, i).filter((place) => isToFinish[place]),
  );
  const largest = Math.max(...places.map(({ length }) => length));
  const over: number[][] = Array.from(stepping.wanted, () => []);
  for (const [placement, list] of places.entries()) for (const place of list) over[place]?.push(placement);

  const covered = new Uint16Array(stepping.wanted.length);
  const barred = new Uint8Array(total);
  const chosen: number[] = [];
  let uncovered = toFinish.length;
  let work = 0;

  const change = (placement: number, by: 1 | -1) => {
    for (const place of places[placement] as number[]) {
      const times = (covered[place] ?? 0) + by;
      covered[place] = times;
      if (by === 1 ? times === 1 : times === 0) uncovered -= by;
    }
  };
  const choose = (placement: number) => {
    chosen.push(placement);
    change(placement, 1);
  };
  const undo = () => {
    change(chosen.pop() as number, -1);
  };
  const newHoles = (placement: number) =>
    (places[placement] as number[]).filter((place) => covered[place] === 0).length;

  /** Placements that touch each other, directly or through others, count as one. */
  function groupCount(): number {
    const left = new Set(chosen);
    let groups = 0;
    for (const start of left) {
      groups++;
      const group = [start];
      left.delete(start);
      for (const one of group) {
        for (const other of left) {
          if (!overlaps(stepping, one, other)) continue;
          left.delete(other);
          group.push(other);
        }
      }
    }
    return groups;
  }

  /** Whether so many more placements cannot be enough. */
  function tooFew(more: number, count: number): boolean {
    const sharedByChosen =
      chosen.reduce((sum, one) => sum + (places[one] as number[]).length, uncovered) - toFinish.length;
    const stillToShare = Math.max(0, 2 * (count - 1) - sharedByChosen);
    if (uncovered > more * largest - stillToShare) return true;
    // A placement touches at most four that do not touch each other: each has one of its corners.
    if (groupCount() > 1 + 3 * more) return true;
    return (
      apartCount(
        stepping,
        toFinish.filter((place) => covered[place] === 0),
      ) > more
    );
  }

  /** What has to be tried next, one of which is in every plan that has the chosen placements. */
  function choices(): number[] {
    let fewest: number[] | undefined;
    for (const place of toFinish) {
      if (covered[place]) continue;
      work += (over[place] as number[]).length;
      const able = (over[place] as number[]).filter((placement) => !barred[placement]);
      if (able.length < (fewest?.length ?? Number.POSITIVE_INFINITY)) fewest = able;
    }
    if (fewest) return fewest.sort((a, b) => newHoles(b) - newHoles(a));
    const finished = new Uint8Array(stepping.wanted.length);
    for (const place of finishedBy(inOrder(stepping, chosen))) finished[place] = 1;
    return places.flatMap((_, placement) =>
      !barred[placement] && !chosen.includes(placement) && pinsFor(stepping, placement, finished)
        ? [placement]
        : [],
    );
  }

  function search(more: number, count: number): boolean {
    work += toFinish.length * (1 + chosen.length) + total;
    if (work > MOST_WORK || tooFew(more, count)) return false;
    if (uncovered === 0 && finishedBy(inOrder(stepping, chosen)).length === toFinish.length) return true;
    if (more === 0) return false;
    const tried: number[] = [];
    let found = false;
    for (const placement of choices()) {
      choose(placement);
      found = search(more - 1, count);
      if (found) break;
      undo();
      // Every plan with this placement has been looked at.
      barred[placement] = 1;
      tried.push(placement);
    }
    for (const placement of tried) barred[placement] = 0;
    return found;
  }

  choose(stepping.first);
  let leastCount = lowerBound(stepping, toFinish);
  for (; leastCount < known.length; leastCount++) {
    if (search(leastCount - 1, leastCount)) return { placements: [...chosen], leastCount };
    if (work > MOST_WORK) break;
  }
  return { placements: known, leastCount };
}
