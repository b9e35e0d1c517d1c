import fc from 'fast-check';
import type { CutBarsInput } from '../src/index.ts';
import { numbers } from './numbers.ts';

/**
 * Parts of whole millimetres and bars of several lengths and prices, some of them few; the first bar takes any part.
 * Where the fewest different lengths are given, there are as many.
 */
export const jobArb = (most: {
  parts: number;
  kinds: number;
  bars: number;
  fewestKinds?: number;
  shortestMm?: number;
}): fc.Arbitrary<CutBarsInput> =>
  fc
    .record({
      lengths: fc.uniqueArray(fc.integer({ min: most.shortestMm ?? 100, max: 1990 }), {
        minLength: most.fewestKinds ?? 1,
        maxLength: most.kinds,
      }),
      counts: fc.array(fc.integer({ min: 1, max: Math.ceil((2 * most.parts) / most.kinds) }), {
        minLength: most.kinds,
        maxLength: most.kinds,
      }),
      bars: fc.array(
        fc.record({
          lengthMm: fc.integer({ min: 400, max: 3000 }),
          eachPrice: fc.integer({ min: 100, max: 9999 }).map((cents) => cents / 100),
          count: fc.option(fc.integer({ min: 0, max: 4 }), { nil: undefined, freq: 2 }),
        }),
        { maxLength: most.bars - 1 },
      ),
      longPrice: fc.integer({ min: 1000, max: 9999 }).map((cents) => cents / 100),
      kerfMm: fc.integer({ min: 0, max: 6 }),
      endTrimMm: fc.constantFrom(0, 0, 5),
    })
    .map(({ lengths, counts, bars, longPrice, kerfMm, endTrimMm }) => {
      let left = most.parts;
      const parts = lengths.flatMap((lengthMm, i) => {
        const count = Math.min(left, counts[i] as number);
        left -= count;
        return count > 0 ? [{ name: `part ${i}`, lengthMm, count }] : [];
      });
      const rest = bars.map(({ count, ...bar }, i) => ({
        ...bar,
        name: `bar ${i}`,
        ...(count === undefined ? {} : { count }),
      }));
      return {
        parts,
        bars: [{ name: 'long bar', lengthMm: 2000 + 2 * endTrimMm, eachPrice: longPrice }, ...rest],
        ...{ kerfMm, endTrimMm },
      };
    });

/** A job of a workshop: 60 parts of up to so many lengths, from bars whose prices nearly go by their length. */
export function shopJob(
  seed: number,
  { kinds, shortestMm, barsMm }: { kinds: number; shortestMm: number; barsMm: readonly number[] },
): CutBarsInput {
  const next = numbers(seed * 2654435761);
  const drawn = Array.from({ length: kinds }, () => shortestMm + Math.floor(next() * (2000 - shortestMm)));
  const lengths = [...new Set(drawn)];
  return {
    parts: lengths.map((lengthMm, i) => ({
      name: `part ${i}`,
      lengthMm,
      count: Math.floor(60 / lengths.length) + Number(i < 60 % lengths.length),
    })),
    bars: barsMm.map((lengthMm) => ({
      name: `${lengthMm} mm`,
      lengthMm,
      eachPrice: Math.round(lengthMm * (0.9 + 0.2 * next())) / 100,
    })),
    ...{ kerfMm: 3, endTrimMm: 0 },
  };
}
