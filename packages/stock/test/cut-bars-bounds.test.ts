import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestFilling } from '../src/bars/best-filling.ts';
import { restOf, type Work } from '../src/bars/job.ts';
import { leastPrice } from '../src/bars/least-price.ts';
import { countJob } from '../src/bars/measure.ts';
import { tighten } from '../src/bars/tighten.ts';
import { weightsOf } from '../src/bars/weights.ts';
import { jobArb } from './bar-arbitraries.ts';
import { leastPriceByTrying } from './least-price-by-trying.ts';

/** Kinds of part with a worth each, and a length of stock. */
const filled = fc
  .array(
    fc.record({
      size: fc.integer({ min: 1, max: 40 }),
      count: fc.integer({ min: 0, max: 4 }),
      worth: fc.integer({ min: 0, max: 60 }),
    }),
    { minLength: 1, maxLength: 9 },
  )
  .chain((kinds) =>
    fc.record({
      sizes: fc.constant(kinds.map(({ size }) => size).sort((a, b) => b - a)),
      demand: fc.constant(kinds.map(({ count }) => count)),
      worths: fc.constant(kinds.map(({ worth }) => worth)),
      room: fc.integer({ min: 1, max: 150 }),
    }),
  );

const worthOf = (worths: ArrayLike<number>, kinds: readonly number[], counts: readonly number[]): number =>
  kinds.reduce((sum, kind, i) => sum + (worths[kind] as number) * (counts[i] as number), 0);

/** The most that a length can hold, part by part: of each room, with and without each part. */
function mostByTrying(
  { sizes, demand, room }: { sizes: readonly number[]; demand: ArrayLike<number>; room: number },
  worths: ArrayLike<number>,
): number {
  const most = new Float64Array(room + 1);
  for (const [kind, size] of sizes.entries()) {
    for (let part = 0; part < (demand[kind] as number); part++) {
      for (let left = room; left >= size; left--) {
        const withIt = (most[left - size] as number) + (worths[kind] as number);
        most[left] = Math.max(most[left] as number, withIt);
      }
    }
  }
  return most[room] as number;
}

const littleWork = fc.integer({ min: 0, max: 60 });

describe('what cutBars holds for proven, however little work is allowed', () => {
  test('no filling is worth more than the bound; the one found is worth what is said', () => {
    const hurry = fc.record({
      ...{ left: littleWork, patience: fc.option(fc.nat(20), { nil: undefined }) },
      enough: fc.option(fc.nat(200), { nil: undefined }),
      above: fc.constantFrom(0, 0, 30),
    });
    const tally = { short: 0, met: 0 };
    fc.assert(
      fc.property(filled, hurry, (given, { left, patience, enough, above }) => {
        const most = mostByTrying(given, given.worths);
        const found = bestFilling(
          {
            ...{ ...given, above, least: 0.999 },
            ...{ patience: patience ?? Number.POSITIVE_INFINITY, enough: enough ?? Number.POSITIVE_INFINITY },
          },
          { left },
        );
        expect(found.bound).toBeGreaterThanOrEqual(most - 1e-9);
        if (found.kinds.length === 0) return;
        expect(found.worth).toBe(worthOf(given.worths, found.kinds, found.counts));
        expect(worthOf(given.sizes, found.kinds, found.counts)).toBeLessThanOrEqual(given.room);
        for (const [i, kind] of found.kinds.entries()) {
          expect(found.counts[i]).toBeLessThanOrEqual(given.demand[kind] as number);
        }
        tally.short += Number(found.worth < most);
        tally.met += Number(found.worth === most);
      }),
      { numRuns: 500 },
    );
    expect(tally.short).toBeGreaterThan(10);
    expect(tally.met).toBeGreaterThan(50);
  });

  test('with all the work it asks for, the filling worth most', () => {
    const all = { above: 0, least: 0.999 };
    fc.assert(
      fc.property(filled, (given) => {
        const most = mostByTrying(given, given.worths);
        expect(bestFilling({ ...given, ...all }, { left: 1e9 })).toMatchObject({ bound: most, worth: most });
      }),
    );
  });

  test('no length holds more weight than the most of its stock', () => {
    const worths = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 9, maxLength: 9 });
    const expected = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(filled, worths, expected, ({ sizes, demand, room }, some, hope) => {
        const job = { sizes, demand, stocks: [{ room, lengths: 1, price: 1, limit: 9 }] };
        const given = { worths: Float64Array.from(sizes, (_, i) => some[i] as number), expected: [hope] };
        const { weights, mosts } = weightsOf(job, restOf(job, [1]), given, { left: 1e6 });
        expect(weights.every(Number.isInteger)).toBe(true);
        expect(mosts[0]).toBeGreaterThanOrEqual(mostByTrying({ sizes, demand, room }, weights));
      }),
      // Found: worths of nothing weighed not a number.
      { examples: [[{ sizes: [1], demand: [0], worths: [0], room: 1 }, Array<number>(9).fill(0), 0]] },
    );
  });

  test('a room is tightened to what parts can fill', () => {
    fc.assert(
      fc.property(filled, ({ sizes, demand, room }) => {
        const stocks = [{ room, lengths: 1, price: 1, limit: 9 }];
        const tightened = tighten({ sizes, demand, stocks }, { left: 1e6 }).stocks[0]?.room;
        expect(tightened).toBe(mostByTrying({ sizes, demand, room }, sizes));
        // So large that no table of sums is kept: a search finds it.
        const times = 1e6;
        const large = {
          sizes: sizes.map((size) => size * times),
          demand,
          stocks: [{ ...{ room: room * times + 7, lengths: 1 }, price: 1, limit: 9 }],
        };
        expect(tighten(large, { left: 1e6 }).stocks[0]?.room).toBe((tightened as number) * times);
      }),
    );
  });

  test('the bound is no more than the least price, the plan no less, after any number of steps', () => {
    const small = jobArb({ parts: 7, kinds: 5, bars: 3 });
    const steps = fc.constantFrom(0, 10, 100, 300, 1000, 3000, 1e4, 1e5);
    const tally = { proven: 0, open: 0 };
    fc.assert(
      fc.property(small, steps, (given, left) => {
        const least = Math.round((leastPriceByTrying(given) as number) * 1e4);
        const { job } = countJob(given);
        const work: Work = { left };
        const { cuts, bound } = leastPrice(job, work);
        expect(bound).toBeLessThanOrEqual(least);
        const bars = job.stocks.map(() => 0);
        for (const { filling, times } of cuts ?? []) (bars[filling.stock] as number) += times;
        const price = job.stocks.reduce((sum, stock, i) => sum + stock.price * (bars[i] as number), 0);
        if (cuts) expect(price).toBeGreaterThanOrEqual(least);
        tally.proven += Number(bound === price);
        tally.open += Number(bound < price);
      }),
      { numRuns: 400 },
    );
    expect(tally.proven).toBeGreaterThan(100);
    expect(tally.open).toBeGreaterThan(20);
  });
});
