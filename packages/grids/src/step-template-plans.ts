import {
  finishedBy,
  inOrder,
  overlap,
  overlaps,
  pinsFor,
  placementCount,
  placementsAcross,
  placesUnder,
  type Stepping,
} from './step-template-windows.ts';

/** Longer plans are left as they are: trying each placement takes the cube of their number. */
const MOST_TO_THIN_OUT = 150;

/** More than any template has holes: joining one more placement is worth more than boring the most. */
const MOST_UNDER = 10_000;

/**
 * A cover of the whole grid: stacks of placements, each moved on by whole steps and, so that stacks can touch in only
 * a few holes, sheared against the next.
 */
function cover(stepping: Stepping, right: number, back: number, shearX: number, shearY: number): number[] {
  const { columns, rows, width, height } = stepping;
  const across = placementsAcross(stepping);
  const within = (at: number, most: number) => Math.min(Math.max(at, 0), most);
  const placements = new Set<number>();
  const far = columns + rows;
  for (let i = -far; i <= far; i++) {
    for (let j = -far; j <= far; j++) {
      const left = i * right - j * shearX;
      const front = j * back - i * shearY;
      if (left <= -width || front <= -height || left >= columns || front >= rows) continue;
      placements.add(within(front, rows - height) * across + within(left, columns - width));
    }
  }
  return [...placements];
}

/** Covers that overlap nowhere, in one column or row, or in two holes at each corner. */
function covers(stepping: Stepping): number[][] {
  const { width, height } = stepping;
  const steps = [
    [width, height, 0, 0],
    [width - 1, height, 0, 0],
    [width, height - 1, 0, 0],
    [width, height, 1, 2],
    [width, height, 2, 1],
    [width, height, -1, -2],
    [width, height, -2, -1],
  ] as const;
  return steps
    .filter(([right, back]) => right > 0 && back > 0)
    .map(([right, back, shearX, shearY]) => cover(stepping, right, back, shearX, shearY));
}

/** Completes chosen placements to a plan, adding the one that lets most of the others find their pins. */
function connected(stepping: Stepping, chosen: readonly number[], toFinish: number): number[] {
  const finished = new Uint8Array(stepping.wanted.length);
  const pending = new Set(chosen);
  const others = new Set(Array.from({ length: placementCount(stepping) }, (_, i) => i));
  // What each placement that finds its pins is good for; it changes only where it overlaps the last one placed.
  const worth = new Map<number, number>();
  const placed: number[] = [];
  let left = toFinish;
  const newHoles = (placement: number) =>
    placesUnder(stepping, placement).filter((place) => !finished[place]);
  const wouldLocate = (placement: number, other: number) => {
    const [columns, rows] = overlap(stepping, placement, other);
    if (columns < 1 || rows < 1 || columns * rows < 2) return false;
    const spanMm = Math.hypot((columns - 1) * stepping.pitchXMm, (rows - 1) * stepping.pitchYMm);
    return spanMm >= stepping.leastPinSpanMm;
  };
  const worthOf = (placement: number) => {
    const bores = newHoles(placement).length;
    if (bores === 0 || !pinsFor(stepping, placement, finished)) return 0;
    if (pending.has(placement)) return 1e9 + bores;
    let helps = 0;
    for (const other of pending) if (wouldLocate(placement, other)) helps++;
    return helps * MOST_UNDER + bores;
  };
  const place = (placement: number) => {
    const bores = newHoles(placement);
    for (const hole of bores) finished[hole] = 1;
    left -= bores.length;
    placed.push(placement);
    pending.delete(placement);
    others.delete(placement);
    worth.delete(placement);
    for (const other of others) if (overlaps(stepping, placement, other)) worth.set(other, worthOf(other));
  };
  place(stepping.first);
  while (left > 0) {
    let best = -1;
    let most = 0;
    for (const [placement, value] of worth) {
      if (value > most) [best, most] = [placement, value];
    }
    if (best < 0) return placed;
    place(best);
  }
  return placed;
}

/** Leaves out, last first, every placement that the rest can do without. */
function withoutIdle(stepping: Stepping, placements: readonly number[], toFinish: number): number[] {
  if (placements.length > MOST_TO_THIN_OUT) return [...placements];
  const covered = new Uint16Array(stepping.wanted.length);
  for (const placement of placements)
    for (const place of placesUnder(stepping, placement)) covered[place] = (covered[place] ?? 0) + 1;
  let kept = [...placements];
  for (const placement of [...placements].reverse()) {
    const places = placesUnder(stepping, placement);
    if (placement === stepping.first || places.some((place) => covered[place] === 1)) continue;
    const rest = kept.filter((other) => other !== placement);
    if (finishedBy(inOrder(stepping, rest)).length < toFinish) continue;
    kept = rest;
    for (const place of places) covered[place] = (covered[place] ?? 0) - 1;
  }
  return kept;
}

/** Every hole that any plan can finish: always boring the most comes to an end only when nothing more can be. */
export function reachable(stepping: Stepping): number[] {
  const toFinish = stepping.wanted.reduce((sum, one) => sum + one, 0);
  return finishedBy(inOrder(stepping, connected(stepping, [], toFinish))).sort((a, b) => a - b);
}

/** Plans that finish all that can be finished, one for each cover and one that always bores the most. */
export function constructedPlans(stepping: Stepping, toFinish: number): number[][] {
  return [...covers(stepping), []].map((chosen) =>
    withoutIdle(stepping, connected(stepping, chosen, toFinish), toFinish),
  );
}
