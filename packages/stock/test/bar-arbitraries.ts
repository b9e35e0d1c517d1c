import fc from 'fast-check';
import type { CutBarsInput } from '../src/index.ts';

/** Parts of whole millimetres and bars of several lengths and prices, some of them few; the first bar takes any part. */
export const jobArb = (most: { parts: number; kinds: number; bars: number }): fc.Arbitrary<CutBarsInput> =>
  fc
    .record({
      lengths: fc.uniqueArray(fc.integer({ min: 100, max: 1990 }), { minLength: 1, maxLength: most.kinds }),
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
