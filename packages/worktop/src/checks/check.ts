import type { Unit } from '@scantling/rules';
import type { Rectangle } from '../plan/place.ts';
import type { Figure } from '../result.ts';

export const figure = (name: string, value: number, unit: Unit): Figure => ({ name, value, unit });

/** The least of a list by some measure; `null` of an empty one. */
export const least = <T>(items: readonly T[], measure: (item: T) => number): T | null =>
  items.reduce<T | null>(
    (best, item) => (best === null || measure(item) < measure(best) ? item : best),
    null,
  );

/** How far one rectangle lies within another, by the side where it is least; negative where it sticks out. */
export const insideMm = (inner: Rectangle, outer: Rectangle): number =>
  Math.min(
    inner.xMm - outer.xMm,
    inner.yMm - outer.yMm,
    outer.xMm + outer.lengthMm - inner.xMm - inner.lengthMm,
    outer.yMm + outer.widthMm - inner.yMm - inner.widthMm,
  );

export const overlap = (a: Rectangle, b: Rectangle): boolean =>
  a.xMm < b.xMm + b.lengthMm &&
  b.xMm < a.xMm + a.lengthMm &&
  a.yMm < b.yMm + b.widthMm &&
  b.yMm < a.yMm + a.widthMm;
