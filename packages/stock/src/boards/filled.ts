import type { FirstCut } from '../cut-boards.ts';
import { type Filled, type Kind, sidesOf } from './job.ts';

/** Sums of lengths are told apart no finer than this share of the longest one. */
const STRETCHES = 1000;

/**
 * How much of a length, up to `most`, whole parts in a row can fill, never too little: of the sums that lie in one short
 * stretch only the least and the largest are known, and all between them count as sums.
 */
export function filledBy(kinds: readonly Kind[], firstCut: FirstCut, kerf: number, most: number): Filled {
  const stretch = Math.ceil(most / STRETCHES);
  const least = new Float64Array(STRETCHES + 1).fill(Number.POSITIVE_INFINITY);
  const largest = new Float64Array(STRETCHES + 1).fill(Number.NEGATIVE_INFINITY);
  const at = (length: number): number => Math.min(STRETCHES, Math.floor(length / stretch));
  const include = (from: number, to: number): void => {
    for (let i = at(from); i <= at(to); i += 1) {
      least[i] = Math.min(least[i] as number, Math.max(from, i * stretch));
      largest[i] = Math.max(largest[i] as number, Math.min(to, (i + 1) * stretch));
    }
  };
  include(0, 0);
  for (const kind of kinds) {
    const sides = sidesOf(kind, firstCut).map(({ u }) => u + kerf);
    for (let piece = 0; piece < kind.ids.length; piece += 1) {
      for (let i = STRETCHES; i >= 0; i -= 1) {
        const [from, to] = [least[i] as number, largest[i] as number];
        for (const side of sides) if (from + side <= most) include(from + side, Math.min(most, to + side));
      }
    }
  }
  const below = new Float64Array(STRETCHES + 1);
  for (let i = 1; i <= STRETCHES; i += 1)
    below[i] = Math.max(below[i - 1] as number, largest[i - 1] as number);
  return (length) => {
    const i = at(length);
    return (least[i] as number) <= length ? Math.min(length, largest[i] as number) : (below[i] as number);
  };
}
