import { type Point, SAME_MM } from './geometry.ts';
import { leastAt } from './set-pins.ts';
import { smallestCircle } from './smallest-circle.ts';

/** One hole made into a slot, so that the pins always go in. */
export interface PinSlot {
  /** Index of the pin whose hole it is. */
  readonly index: number;
  /** Along the grain (x) or across it (y). */
  readonly axis: 'x' | 'y';
  /** Between the centres of its round ends, mm; the hole's place is half-way. As long overall as this and a hole. */
  readonly lengthMm: number;
}

/**
 * How far a pin has to be let off its hole's centre along an axis so that no pin misses by more than `allowedMm`;
 * `null` where that alone does not do it. The miss is convex in the way along the axis: the largest of distances.
 */
export function neededShiftMm(
  offsets: readonly Point[],
  pin: number,
  axis: 'x' | 'y',
  allowedMm: number,
): number | null {
  const own = offsets[pin];
  const others = offsets.filter((_, i) => i !== pin);
  if (!own || smallestCircle(others).radiusMm > allowedMm) return null;
  const along = (way: number): Point =>
    axis === 'x' ? { ...own, xMm: own.xMm + way } : { ...own, yMm: own.yMm + way };
  const miss = (way: number) => smallestCircle([along(way), ...others], true).radiusMm;
  if (miss(0) <= allowedMm) return 0;
  // Beyond the last of the others it gets farther from all of them.
  const ways = others.map((one) => (axis === 'x' ? one.xMm - own.xMm : one.yMm - own.yMm));
  const best = leastAt(Math.min(0, ...ways), Math.max(0, ...ways), miss);
  if (!(miss(best) <= allowedMm + SAME_MM / 100)) return null;
  let [short, enough] = [0, best];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (short + enough) / 2;
    if (miss(middle) <= allowedMm) enough = middle;
    else short = middle;
  }
  return Math.abs(enough);
}
