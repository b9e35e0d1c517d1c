import { requireThat } from '@scantling/rules';
import { fromSides, type Range } from './geometry.ts';
import { type Lattice, rowStart } from './lattice.ts';
import type { GridTerms } from './layout-holes.ts';
import { distanceMm, type Obstacle, obstaclesOf } from './obstacles.ts';
import { distancesIn, nearestPoint } from './outline-distances.ts';

/** What is spare at an offset, at the most: its most over a range is at a corner. */
export type ConvexSpare = (xMm: number, yMm: number) => number;

/**
 * Every hole with everything that it may come near at some offset, hole by hole. A spare is what a hole has beyond the
 * clearance that is asked for, mm; negative where it lacks some.
 */
export interface Encounters {
  /** How many. */
  readonly length: number;
  /** How many pairs of a hole and a side there are in them. */
  readonly pairs: number;
  /** Which hole each is of; those of one hole follow each other. */
  readonly holes: Int32Array;
  /** What is spare at an offset. */
  readonly spareAt: (encounter: number, xMm: number, yMm: number) => number;
  /**
   * What is spare to the one point that is nearest at an offset, at the time of the year when it is: no less than what
   * is spare, and convex over the offsets. `null` where there is no such point.
   */
  readonly spareToNearest: (encounter: number, xMm: number, yMm: number) => ConvexSpare | null;
  /** Writes the least and the most that can be spare over a range of offsets into `between`. */
  readonly spareIn: (encounter: number, range: Range, between: Float64Array) => void;
}

interface Meeting {
  readonly xMm: number;
  readonly yMm: number;
  readonly obstacle: Obstacle;
}

/** More pairs of a hole and a side that it may come near to take seconds. */
const MOST_PAIRS = 1_000_000;

/** Throws where a grid and what is in its way are more than can be looked at. */
export function checkPairs(caller: string, pairs: number): void {
  const asked = `at most ${MOST_PAIRS} pairs of a hole and a side of something that it may come near to`;
  requireThat(caller, pairs <= MOST_PAIRS, `${asked}, got ${pairs} or more`);
}

/** What each hole may come nearer to than its clearance and the cap, and how many pairs of a hole and a side that is. */
function meetingsOf(caller: string, grid: GridTerms, { columns, rows, range }: Lattice, capMm: number) {
  const { pitchXMm, pitchYMm, holeDiameterMm, panel, movement } = grid;
  const byHole: Meeting[][] = Array.from({ length: columns * rows }, () => []);
  // So far a hole moves over the seasons at most.
  const front = movement?.fixedLineYMm ?? 0;
  const swayMm =
    (Math.max(Math.abs(front), Math.abs(panel.widthMm - front)) *
      Math.max(movement?.shrinkPct ?? 0, movement?.swellPct ?? 0)) /
    100;
  let pairs = 0;
  for (const obstacle of obstaclesOf(grid)) {
    const { box } = obstacle;
    const sides = obstacle.outlines.reduce((sum, one) => sum + ('x1' in one ? 1 : one.length), 0);
    const reachMm = box.radiusMm + holeDiameterMm / 2 + obstacle.neededMm + capMm;
    const firstRow = Math.ceil((box.y1 - reachMm - swayMm - range.y2) / pitchYMm);
    const lastRow = Math.floor((box.y2 + reachMm + swayMm - range.y1) / pitchYMm);
    for (let row = Math.max(0, firstRow); row <= Math.min(rows - 1, lastRow); row++) {
      const start = rowStart(grid, row);
      checkPairs(caller, pairs);
      const first = Math.ceil((box.x1 - reachMm - range.x2 - start) / pitchXMm);
      const last = Math.floor((box.x2 + reachMm - range.x1 - start) / pitchXMm);
      for (let column = Math.max(0, first); column <= Math.min(columns - 1, last); column++) {
        const xMm = start + column * pitchXMm;
        pairs += sides;
        byHole[row * columns + column]?.push({ xMm, yMm: row * pitchYMm, obstacle });
      }
    }
  }
  return { byHole, pairs };
}

/** The encounters of a grid, as columns of numbers: a search asks for them by the million. */
export function encountersOf(caller: string, grid: GridTerms, lattice: Lattice, capMm: number): Encounters {
  const { byHole, pairs } = meetingsOf(caller, grid, lattice, capMm);
  const meetings = byHole.flat();
  const { length } = meetings;
  const column = (value: (meeting: Meeting, i: number) => number) => Float64Array.from(meetings, value);
  const boxes = meetings.map(({ obstacle: { outlines } }) => {
    const [outline] = outlines;
    return outlines.length === 1 && outline && 'x1' in outline ? outline : null;
  });
  // A hole that keeps within a box has to spare what one lacks that keeps away from it.
  const sign = column(({ obstacle }) => (obstacle.within ? -1 : 1));
  // Sides of the box along the grain as seen from the hole at offset 0; across it as seen from the datum.
  const x1 = column(({ xMm }, i) => (boxes[i]?.x1 ?? 0) - xMm);
  const x2 = column(({ xMm }, i) => (boxes[i]?.x2 ?? 0) - xMm);
  const y1 = column((_, i) => boxes[i]?.y1 ?? 0);
  const y2 = column((_, i) => boxes[i]?.y2 ?? 0);
  const startY = column(({ yMm }) => yMm);
  const away = column(
    ({ obstacle }, i) =>
      grid.holeDiameterMm / 2 + obstacle.neededMm + (sign[i] as number) * (boxes[i]?.radiusMm ?? 0),
  );
  const shrink = column(({ obstacle }) => (obstacle.movement?.shrinkPct ?? 0) / 100);
  const swell = column(({ obstacle }) => (obstacle.movement?.swellPct ?? 0) / 100);
  const fixed = grid.movement?.fixedLineYMm ?? 0;
  const of = (numbers: Float64Array, i: number) => numbers[i] as number;

  /** Which stay beside the holes, or beneath a top that does not move. */
  const still = shrink.map((share, i) => (share === 0 && swell[i] === 0 ? 1 : 0));
  const low = (i: number, yMm: number) =>
    still[i] ? yMm : yMm + Math.min((fixed - yMm) * of(shrink, i), (yMm - fixed) * of(swell, i));
  const high = (i: number, yMm: number) =>
    still[i] ? yMm : yMm + Math.max((fixed - yMm) * of(shrink, i), (yMm - fixed) * of(swell, i));
  const slowSpareAt = (i: number, x: number, y: number) => {
    const { xMm, yMm, obstacle } = meetings[i] as Meeting;
    return distanceMm(obstacle, xMm + x, yMm + y) - of(away, i);
  };

  return {
    length,
    pairs,
    holes: Int32Array.from(byHole.flatMap((list, hole) => list.map(() => hole))),
    spareAt: (i, x, y) => {
      if (boxes[i] === null) return slowSpareAt(i, x, y);
      const yMm = of(startY, i) + y;
      const front = of(y1, i);
      const back = of(y2, i);
      const beyondY = Math.max(front - high(i, yMm), low(i, yMm) - back, (front - back) / 2);
      return of(sign, i) * fromSides(Math.max(of(x1, i) - x, x - of(x2, i)), beyondY) - of(away, i);
    },
    spareToNearest: (i, x, y) => {
      const { xMm, yMm, obstacle } = meetings[i] as Meeting;
      const [outline, ...others] = obstacle.outlines;
      // A hole within an area is no deeper in than the way to any point of its sides; of several areas, one may do.
      if (!outline || others.length > 0 || (obstacle.within && 'x1' in outline)) return null;
      const placeAt = (moved: number, atY: number) => yMm + atY + (yMm + atY - fixed) * moved;
      const [first, ...later] = [0, of(swell, i), -of(shrink, i)].map((moved) => {
        const point = nearestPoint(outline, xMm + x, placeAt(moved, y));
        const awayMm: ConvexSpare = (atX, atY) =>
          Math.hypot(xMm + atX - point.xMm, placeAt(moved, atY) - point.yMm) - of(away, i);
        return { awayMm, mm: awayMm(x, y) };
      });
      return later.reduce((a, b) => (b.mm < a.mm ? b : a), first as { awayMm: ConvexSpare; mm: number })
        .awayMm;
    },
    spareIn: (i, r, between) => {
      if (boxes[i] === null) {
        const { xMm, yMm, obstacle } = meetings[i] as Meeting;
        if (obstacle.within) {
          // Deep enough in any area will do.
          const here = { x1: xMm + r.x1, x2: xMm + r.x2, y1: yMm + r.y1, y2: yMm + r.y2 };
          const distances = obstacle.outlines.map((area) => distancesIn(area, here));
          between[0] = Math.max(...distances.map(([, most]) => -most)) - of(away, i);
          between[1] = Math.max(...distances.map(([least]) => -least)) - of(away, i);
          return;
        }
        // From the middle a distance changes by no more than the way there; a swelling hole's by a little more.
        const reachMm = (Math.hypot(r.x2 - r.x1, r.y2 - r.y1) / 2) * (1 + of(swell, i));
        const middle = slowSpareAt(i, (r.x1 + r.x2) / 2, (r.y1 + r.y2) / 2);
        between[0] = middle - reachMm;
        between[1] = middle + reachMm;
        return;
      }
      const left = of(x1, i);
      const right = of(x2, i);
      const front = of(y1, i);
      const back = of(y2, i);
      const nearer = of(startY, i) + r.y1;
      const farther = of(startY, i) + r.y2;
      // Each side is furthest from one end of the range and nearest to the other; ways begin and end in their order.
      const leastX = Math.max(left - r.x2, r.x1 - right, (left - right) / 2);
      const leastY = Math.max(front - high(i, farther), low(i, nearer) - back, (front - back) / 2);
      const mostX = Math.max(left - r.x1, r.x2 - right);
      const mostY = Math.max(front - high(i, nearer), low(i, farther) - back, (front - back) / 2);
      const [least, most] = [fromSides(leastX, leastY), fromSides(mostX, mostY)];
      between[0] = (of(sign, i) > 0 ? least : -most) - of(away, i);
      between[1] = (of(sign, i) > 0 ? most : -least) - of(away, i);
    },
  };
}
