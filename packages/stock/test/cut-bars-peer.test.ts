import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutBars } from '../src/index.ts';
import { jobArb } from './bar-arbitraries.ts';
import { leastPriceByHighs } from './general-solver.ts';
import { leastPriceByTrying } from './least-price-by-trying.ts';

describe('cutBars beside other ways to the same price', () => {
  test('a general solver, HiGHS, agrees on jobs of up to 60 parts', () => {
    let compared = 0;
    fc.assert(
      fc.property(jobArb({ parts: 60, kinds: 8, bars: 4 }), (job) => {
        const plan = cutBars(job);
        expect(plan.proven).toBe(true);
        expect(plan.boundPrice).toBe(plan.totalPrice);
        expect(leastPriceByHighs(job)).toBeCloseTo(plan.totalPrice, 5);
        compared += 1;
      }),
      { numRuns: 60, seed: 7 },
    );
    expect(compared).toBe(60);
  }, 120_000);

  test('HiGHS agrees on jobs of 20 to 60 different lengths', () => {
    let most = 0;
    const many = jobArb({ parts: 60, kinds: 60, bars: 4, fewestKinds: 20, shortestMm: 550 });
    fc.assert(
      fc.property(many, (job) => {
        const plan = cutBars(job);
        expect(plan.proven).toBe(true);
        expect(leastPriceByHighs(job)).toBeCloseTo(plan.totalPrice, 5);
        most = Math.max(most, job.parts.length);
      }),
      { numRuns: 10, seed: 2 },
    );
    expect(most).toBeGreaterThanOrEqual(40);
  }, 120_000);

  test.each([720, 760])('HiGHS agrees on 60 parts of as many lengths from %s mm', (shortest) => {
    const parts = Array.from({ length: 60 }, (_, i) => ({
      ...{ name: `part ${i}`, count: 1 },
      // Multiples of a number that has no factor in common with 1270: all differ, in no order.
      lengthMm: shortest + (((i + 1) * 16807) % 1270),
    }));
    expect(new Set(parts.map(({ lengthMm }) => lengthMm)).size).toBe(60);
    const bars = [
      { name: 'long', lengthMm: 2400, eachPrice: 13.1 },
      { name: 'short', lengthMm: 2000, eachPrice: 10.7 },
    ];
    const job = { parts, bars, kerfMm: 3, endTrimMm: 0 };
    const plan = cutBars(job);
    expect(plan.proven).toBe(true);
    expect(leastPriceByHighs(job)).toBeCloseTo(plan.totalPrice, 6);
  });

  // Of these the cheapest purchase that holds the parts in fractions does not hold them whole: it is refused by trying.
  test.each([
    {
      lengths: [648, 1933, 1427, 1723, 482, 1977, 342, 1102],
      bars: [
        { name: 'long', lengthMm: 3000, eachPrice: 27.23 },
        { name: 'short', lengthMm: 2400, eachPrice: 25.97 },
      ],
    },
    {
      lengths: [1306, 1744, 1775, 1434, 1100, 1000, 374, 577],
      bars: [
        { name: 'long', lengthMm: 4000, eachPrice: 39 },
        { name: 'middle', lengthMm: 3000, eachPrice: 25.93 },
        { name: 'short', lengthMm: 2400, eachPrice: 24.74 },
      ],
    },
  ])('HiGHS agrees where whole parts need a dearer purchase than fractions', ({ lengths, bars }) => {
    const parts = lengths.map((lengthMm) => ({ name: `${lengthMm}`, lengthMm, count: 7 }));
    const job = { parts, bars, kerfMm: 2, endTrimMm: 0 };
    const plan = cutBars(job);
    expect(plan.proven).toBe(true);
    expect(leastPriceByHighs(job)).toBeCloseTo(plan.totalPrice, 6);
  });

  test('trying everything agrees on small jobs, as to what cannot be cut as well', () => {
    const small = jobArb({ parts: 6, kinds: 4, bars: 3 }).chain((job) =>
      fc.integer({ min: 0, max: 4 }).map((count) => ({
        ...job,
        bars: job.bars.map((bar, i) => (i === 0 ? { ...bar, count } : bar)),
      })),
    );
    let few = 0;
    fc.assert(
      fc.property(small, (job) => {
        const least = leastPriceByTrying(job);
        if (least === null) {
          few += 1;
          expect(() => cutBars(job)).toThrow('cutBars requires ');
          return;
        }
        const plan = cutBars(job);
        expect(plan.proven).toBe(true);
        expect(plan.totalPrice).toBeCloseTo(least, 6);
      }),
      { numRuns: 300 },
    );
    expect(few).toBeGreaterThan(0);
  });
});
