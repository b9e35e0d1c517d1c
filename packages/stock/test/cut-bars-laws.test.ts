import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CutBars, type CutBarsInput, cutBars } from '../src/index.ts';
import { jobArb } from './bar-arbitraries.ts';

const jobs = jobArb({ parts: 30, kinds: 6, bars: 4 });

/** How many of each there are, by name. */
function tally(pairs: readonly (readonly [string, number])[]): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const [name, count] of pairs) sums[name] = (sums[name] ?? 0) + count;
  return sums;
}

/** What holds of every plan, whatever was asked. */
function expectWhole(
  { parts, bars, kerfMm, endTrimMm, longestCarriedMm }: CutBarsInput,
  plan: CutBars,
): void {
  const cut = plan.bars.flatMap(({ pieces, count }) =>
    pieces.map(({ name, lengthMm }) => [`${name} ${lengthMm}`, count] as const),
  );
  expect(tally(cut), 'each part cut once').toEqual(
    tally(parts.map(({ name, lengthMm, count }) => [`${name} ${lengthMm}`, count])),
  );
  for (const { lengthMm, pieces, offcutMm } of plan.bars) {
    let freeMm = endTrimMm;
    for (const piece of pieces) {
      expect(piece.startMm).toBeCloseTo(freeMm, 5);
      freeMm = piece.startMm + piece.lengthMm + kerfMm;
    }
    const endMm = lengthMm - endTrimMm;
    // The last piece may end at the trim, and a cut may run out of the bar.
    expect(freeMm - (pieces.length > 0 ? kerfMm : 0)).toBeLessThanOrEqual(endMm + 1e-5);
    expect(offcutMm).toBeCloseTo(Math.max(0, endMm - freeMm), 5);
    if (longestCarriedMm !== undefined) expect(lengthMm).toBeLessThanOrEqual(longestCarriedMm);
  }
  const bought = tally(plan.buy.map(({ name, count }) => [name, count]));
  for (const { name, count } of bars) expect(bought[name] ?? 0).toBeLessThanOrEqual(count ?? 1e5);
  const carried = tally(plan.buy.map(({ name, count, carriedCount }) => [name, count * carriedCount]));
  expect(tally(plan.bars.map(({ name, count }) => [name, count]))).toEqual(carried);
  const price = bars.reduce((sum, { name, eachPrice }) => sum + (bought[name] ?? 0) * eachPrice, 0);
  expect(plan.totalPrice).toBeCloseTo(price, 6);
  expect(plan.totalPrice).toBeGreaterThanOrEqual(plan.boundPrice);
  expect(plan.proven).toBe(plan.totalPrice === plan.boundPrice);
  expect(plan.longestOffcutMm).toBe(Math.max(...plan.bars.map(({ offcutMm }) => offcutMm)));
}

describe('cutBars, laws', () => {
  test('each part is cut once; parts, cuts and trims fit; the price is what is bought and no less than the bound', () => {
    fc.assert(fc.property(jobs, (job) => expectWhole(job, cutBars(job))));
  });

  test('so too where long bars are cut by the yard', () => {
    const carried = fc.tuple(jobs, fc.integer({ min: 2020, max: 3000 }));
    fc.assert(
      fc.property(carried, ([job, longestCarriedMm]) => {
        const given = { ...job, longestCarriedMm };
        expectWhole(given, cutBars(given));
      }),
    );
  });

  test('the order of parts and bars changes nothing', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const turned = { ...job, parts: job.parts.toReversed(), bars: job.bars.toReversed() };
        expect(cutBars(turned)).toEqual(cutBars(job));
      }),
    );
  });

  test('a row of several parts is as many rows of one', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const parts = job.parts.flatMap((part) =>
          Array.from({ length: part.count }, () => ({ ...part, count: 1 })),
        );
        expect(cutBars({ ...job, parts })).toEqual(cutBars(job));
      }),
    );
  });

  test('in another unit of length the same plan comes out', () => {
    fc.assert(
      fc.property(jobs, fc.constantFrom(2, 5, 0.5), (job, times) => {
        const scaled = {
          parts: job.parts.map((part) => ({ ...part, lengthMm: part.lengthMm * times })),
          bars: job.bars.map((bar) => ({ ...bar, lengthMm: bar.lengthMm * times })),
          ...{ kerfMm: job.kerfMm * times, endTrimMm: job.endTrimMm * times },
        };
        const [ours, theirs] = [cutBars(job), cutBars(scaled)];
        expect([theirs.totalPrice, theirs.boundPrice]).toEqual([ours.totalPrice, ours.boundPrice]);
        expect(theirs.buy.map(({ name, count }) => [name, count])).toEqual(
          ours.buy.map(({ name, count }) => [name, count]),
        );
      }),
    );
  });

  test('one part more never costs less', () => {
    fc.assert(
      fc.property(jobs, fc.integer({ min: 100, max: 1990 }), (job, lengthMm) => {
        const parts = [...job.parts, { name: 'one more', lengthMm, count: 1 }];
        expect(cutBars({ ...job, parts }).totalPrice).toBeGreaterThanOrEqual(cutBars(job).totalPrice);
      }),
    );
  });

  test('a cheaper bar, a thinner cut or more bars never cost more', () => {
    fc.assert(
      fc.property(jobs, fc.nat(), fc.constantFrom('price', 'kerf', 'count'), (job, which, what) => {
        const at = which % job.bars.length;
        const bars = job.bars.map((bar, i) => {
          if (i !== at) return bar;
          if (what === 'price')
            return { ...bar, eachPrice: Math.max(0.01, Math.round(bar.eachPrice * 80) / 100) };
          return what === 'count' && bar.count !== undefined ? { ...bar, count: bar.count + 1 } : bar;
        });
        const eased = { ...job, bars, kerfMm: what === 'kerf' ? job.kerfMm / 2 : job.kerfMm };
        expect(cutBars(eased).totalPrice).toBeLessThanOrEqual(cutBars(job).totalPrice);
      }),
    );
  });
});
