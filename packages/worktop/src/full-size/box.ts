import type { Point, Rectangle } from '../plan/place.ts';

/** An upright rectangle on the top, by its sides, mm from the datum. */
export interface Box {
  readonly left: number;
  readonly front: number;
  readonly right: number;
  readonly back: number;
}

export const boxOf = ({ xMm, yMm, lengthMm, widthMm }: Rectangle): Box => ({
  left: xMm,
  front: yMm,
  right: xMm + lengthMm,
  back: yMm + widthMm,
});

/** The box around a point, so far to every side. */
export const around = ({ xMm, yMm }: Point, reachMm: number): Box => ({
  left: xMm - reachMm,
  front: yMm - reachMm,
  right: xMm + reachMm,
  back: yMm + reachMm,
});

export const joined = (a: Box, b: Box): Box => ({
  left: Math.min(a.left, b.left),
  front: Math.min(a.front, b.front),
  right: Math.max(a.right, b.right),
  back: Math.max(a.back, b.back),
});

export const within = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left &&
  inner.front >= outer.front &&
  inner.right <= outer.right &&
  inner.back <= outer.back;

export const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.front < b.back && b.front < a.back;

/** From a point to the nearest place of a box, mm; 0 inside. */
export const distanceTo = ({ left, front, right, back }: Box, { xMm, yMm }: Point): number =>
  Math.hypot(Math.max(left - xMm, 0, xMm - right), Math.max(front - yMm, 0, yMm - back));
