import type { Point, Rectangle } from './plan/place.ts';

export const apartMm = (a: Point, b: Point): number => Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);

/** From a point to the nearest of a rectangle; 0 within it. */
export function toRectangleMm({ xMm, yMm }: Point, area: Rectangle): number {
  const beyond = (at: number, from: number, length: number) => Math.max(from - at, 0, at - from - length);
  return Math.hypot(beyond(xMm, area.xMm, area.lengthMm), beyond(yMm, area.yMm, area.widthMm));
}
