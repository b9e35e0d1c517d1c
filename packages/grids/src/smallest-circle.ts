import type { Point } from './geometry.ts';

/** A circle, and the points that decide it. */
export interface Circle extends Point {
  readonly radiusMm: number;
  /** Indices of the points that it could not be smaller for: one, two or three. */
  readonly by: readonly number[];
}

const between = (a: Point, b: Point) => Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);

const halfway = (a: Point, b: Point) => ({ xMm: (a.xMm + b.xMm) / 2, yMm: (a.yMm + b.yMm) / 2 });

/** Centre of the circle through three points; `null` where two of them alone decide the smallest round all three. */
function centreOfAcute(a: Point, b: Point, c: Point): Point | null {
  const [bx, by, cx, cy] = [b.xMm - a.xMm, b.yMm - a.yMm, c.xMm - a.xMm, c.yMm - a.yMm];
  const [ab, ac, bc] = [bx * bx + by * by, cx * cx + cy * cy, (cx - bx) ** 2 + (cy - by) ** 2];
  if (2 * Math.max(ab, ac, bc) >= ab + ac + bc) return null;
  const twice = 2 * (bx * cy - by * cx);
  return { xMm: a.xMm + (cy * ab - by * ac) / twice, yMm: a.yMm + (bx * ac - cx * ab) / twice };
}

/** Room for the rounding of floating-point numbers, as a share of the radius. */
const ROUNDING = 1e-12;

/**
 * The smallest circle that goes round all points. No three of them need a larger one than it, and some three need it
 * whole (Helly's theorem), so it is the largest among the smallest circles of every two and three points. With
 * `onlyWithFirst` pairs and threes without the first point are left out: the rest is known to need no larger circle.
 * The radius is right to the rounding of numbers; the centre, where two points decide almost alone, to 1e-7 of it.
 */
export function smallestCircle(points: readonly Point[], onlyWithFirst = false): Circle {
  let largest: Circle = { ...(points[0] ?? { xMm: 0, yMm: 0 }), radiusMm: 0, by: [0] };
  const consider = (centre: Point | null, rim: Point, ...by: number[]) => {
    const radiusMm = centre ? between(centre, rim) : 0;
    if (centre && radiusMm > largest.radiusMm) largest = { xMm: centre.xMm, yMm: centre.yMm, radiusMm, by };
  };
  const firsts = points.slice(0, onlyWithFirst ? 1 : points.length);
  for (const [i, a] of firsts.entries()) {
    for (const [past, b] of points.slice(i + 1).entries()) consider(halfway(a, b), a, i, i + 1 + past);
  }
  const room = 1 + ROUNDING;
  if (points.every((point) => between(point, largest) <= largest.radiusMm * room)) return largest;
  for (const [i, a] of firsts.entries()) {
    for (let j = i + 1; j < points.length; j++) {
      const b = points[j] as Point;
      for (let k = j + 1; k < points.length; k++) {
        const c = points[k] as Point;
        consider(centreOfAcute(a, b, c), a, i, j, k);
      }
    }
  }
  return largest;
}
