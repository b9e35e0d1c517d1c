import {
  type Box,
  distanceToBox,
  fromSides,
  type Movement,
  type Outline,
  type Point,
  type Range,
  type Way,
  wayOf,
} from './geometry.ts';

/** The least box that holds an outline. */
export function boundingBox(outline: Outline): Box {
  if ('x1' in outline) return outline;
  const [xs, ys] = [outline.map(({ xMm }) => xMm), outline.map(({ yMm }) => yMm)];
  return {
    ...{ x1: Math.min(...xs), x2: Math.max(...xs) },
    ...{ y1: Math.min(...ys), y2: Math.max(...ys), radiusMm: 0 },
  };
}

/** Between which distances from an outline that moves with them all places of a range are, mm: least and most. */
export function distancesIn(outline: Outline, { x1, x2, y1, y2 }: Range): readonly [number, number] {
  if (!('x1' in outline)) {
    // From the middle a distance changes by no more than the way there.
    const wayMm = Math.hypot(x2 - x1, y2 - y1) / 2;
    const middle = distanceTo(outline, (x1 + x2) / 2, (y1 + y2) / 2);
    return [middle - wayMm, middle + wayMm];
  }
  const { x1: left, x2: right, y1: front, y2: back, radiusMm } = outline;
  const inMiddle = [(left - right) / 2, (front - back) / 2] as const;
  const least = [
    Math.max(left - x2, x1 - right, inMiddle[0]),
    Math.max(front - y2, y1 - back, inMiddle[1]),
  ] as const;
  const most = [Math.max(left - x1, x2 - right), Math.max(front - y1, y2 - back)] as const;
  return [fromSides(...least) - radiusMm, fromSides(...most) - radiusMm];
}

/** The point of the side between two corners that is nearest to another. */
function nearestOnSide(xMm: number, yMm: number, a: Point, b: Point): Point {
  const [sideX, sideY] = [b.xMm - a.xMm, b.yMm - a.yMm];
  const lengthSquared = sideX * sideX + sideY * sideY;
  const along = (xMm - a.xMm) * sideX + (yMm - a.yMm) * sideY;
  const share = lengthSquared > 0 ? Math.min(1, Math.max(0, along / lengthSquared)) : 0;
  return { xMm: a.xMm + share * sideX, yMm: a.yMm + share * sideY };
}

function distanceToSide(xMm: number, yMm: number, a: Point, b: Point): number {
  const nearest = nearestOnSide(xMm, yMm, a, b);
  return Math.hypot(xMm - nearest.xMm, yMm - nearest.yMm);
}

/** Every side of a polygon, from one corner to the next. */
export const sidesOf = <Corner>(corners: readonly Corner[]): (readonly [Corner, Corner])[] =>
  corners.map((corner, i) => [corners.at(i - 1) as Corner, corner]);

/** Signed distance of a point from the outline of a polygon, negative inside. */
function fromPolygon(xMm: number, yMm: number, corners: readonly Point[]): number {
  let nearestMm = Number.POSITIVE_INFINITY;
  let inside = false;
  for (const [a, b] of sidesOf(corners)) {
    nearestMm = Math.min(nearestMm, distanceToSide(xMm, yMm, a, b));
    // A ray along x crosses this side: each crossing changes between outside and inside.
    if (a.yMm > yMm !== b.yMm > yMm) {
      const crossesAtMm = a.xMm + ((yMm - a.yMm) / (b.yMm - a.yMm)) * (b.xMm - a.xMm);
      if (xMm < crossesAtMm) inside = !inside;
    }
  }
  return inside ? -nearestMm : nearestMm;
}

/** The point of an outline that is nearest to another. */
export function nearestPoint(outline: Outline, xMm: number, yMm: number): Point {
  if ('x1' in outline) {
    const { x1, x2, y1, y2 } = outline;
    return { xMm: Math.min(x2, Math.max(x1, xMm)), yMm: Math.min(y2, Math.max(y1, yMm)) };
  }
  const onSides = sidesOf(outline).map(([a, b]) => nearestOnSide(xMm, yMm, a, b));
  const away = (point: Point) => Math.hypot(point.xMm - xMm, point.yMm - yMm);
  return onSides.reduce((a, b) => (away(b) < away(a) ? b : a));
}

/** Whether a way crosses a side, at its ends or between. */
function crosses(xMm: number, { lowMm, highMm }: Way, [a, b]: readonly [Point, Point]): boolean {
  if (a.xMm > xMm === b.xMm > xMm) return false;
  const yMm = a.yMm + ((xMm - a.xMm) / (b.xMm - a.xMm)) * (b.yMm - a.yMm);
  return yMm >= lowMm && yMm <= highMm;
}

/** Depth in a polygon is found to a thousandth of the way, or to this. */
const DEPTH_MM = 1e-3;

/**
 * The least of a function along a way, none of whose values differ by more than the way between them: so the least
 * between two places is bounded by their values, and parts that cannot hold it are left out (Piyavskii, 1972).
 */
function leastAlong(dayMm: number, { lowMm, highMm }: Way, distanceAt: (yMm: number) => number): number {
  const tolerance = Math.max(DEPTH_MM, (highMm - lowMm) / 1000);
  const placeAt = (yMm: number) => ({ yMm, distance: distanceAt(yMm) });
  const [low, day, high] = [placeAt(lowMm), placeAt(dayMm), placeAt(highMm)];
  let least = Math.min(low.distance, day.distance, high.distance);
  const open = [[low, day] as const, [day, high] as const];
  for (let part = open.pop(); part; part = open.pop()) {
    const [from, to] = part;
    if ((from.distance + to.distance - (to.yMm - from.yMm)) / 2 >= least - tolerance) continue;
    const middle = placeAt((from.yMm + to.yMm) / 2);
    least = Math.min(least, middle.distance);
    open.push([from, middle], [middle, to]);
  }
  return least;
}

/** Least distance from a point on its way to a polygon; negative inside, where a moving point gives the deepest. */
function distanceToPolygon(xMm: number, yMm: number, way: Way, corners: readonly Point[]): number {
  const { lowMm, highMm } = way;
  const lowest = fromPolygon(xMm, lowMm, corners);
  if (lowMm === highMm) return lowest;
  if (lowest <= 0 || sidesOf(corners).some((side) => crosses(xMm, way, side)))
    return leastAlong(yMm, way, (atMm) => fromPolygon(xMm, atMm, corners));
  // Two stretches that do not cross are nearest at an end of one of them.
  const fromCorners = corners.map((corner) =>
    Math.hypot(corner.xMm - xMm, Math.max(0, lowMm - corner.yMm, corner.yMm - highMm)),
  );
  return Math.min(lowest, fromPolygon(xMm, highMm, corners), ...fromCorners);
}

/** Least distance to an outline over the seasons from a point that is there on building day, mm: negative inside. */
export function distanceTo(outline: Outline, xMm: number, yMm: number, movement?: Movement): number {
  const way = movement ? wayOf(yMm, movement) : { lowMm: yMm, highMm: yMm };
  return 'x1' in outline ? distanceToBox(xMm, way, outline) : distanceToPolygon(xMm, yMm, way, outline);
}
