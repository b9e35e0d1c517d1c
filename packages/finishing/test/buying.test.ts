import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BuyFinishInput,
  buyFinish,
  type ContainerSize,
  type FinishUse,
  type PlanBatchesInput,
  planBatches,
} from '../src/index.ts';

describe('buyFinish', () => {
  const anySize: fc.Arbitrary<ContainerSize> = fc.record({
    volumeMl: fc.integer({ min: 100, max: 1200 }),
    eachPrice: fc.integer({ min: 0, max: 4000 }).map((hundredths) => hundredths / 100),
  });
  /** Sizes that are multiples of each other at prices that are too: many ways cost the same. */
  const evenSize: fc.Arbitrary<ContainerSize> = fc.record({
    volumeMl: fc.constantFrom(250, 500, 750),
    eachPrice: fc.constantFrom(5, 10, 15),
  });
  const size = fc.oneof(anySize, evenSize);
  const shopping = fc.record({
    neededMl: numberArb({ min: 0, max: 2500 }),
    sizes: fc.array(size, { minLength: 1, maxLength: 3 }),
  });

  /** Every way there is to buy enough, without a container that could stay on the shelf. */
  function everyWay(neededMl: number, sizes: readonly ContainerSize[]): number[][] {
    const [first, ...rest] = sizes;
    if (!first) return neededMl <= 0 ? [[]] : [];
    const most = Math.max(0, Math.ceil(neededMl / first.volumeMl));
    return Array.from({ length: most + 1 }, (_, count) =>
      everyWay(neededMl - count * first.volumeMl, rest).map((counts) => [count, ...counts]),
    ).flat();
  }

  test('no way to buy enough costs less, as trying them all finds', () => {
    fc.assert(
      fc.property(shopping, ({ neededMl, sizes }) => {
        const bill = (counts: readonly number[]) => {
          const of = (price: (one: ContainerSize) => number) =>
            counts.reduce((sum, count, i) => sum + count * price(sizes[i] as ContainerSize), 0);
          const cost = of(({ eachPrice }) => Math.round(eachPrice * 100));
          return [cost, of(({ volumeMl }) => volumeMl), counts.reduce((sum, count) => sum + count, 0)];
        };
        const dearer = (a: number[], b: number[]) =>
          (a[0] ?? 0) - (b[0] ?? 0) || (a[1] ?? 0) - (b[1] ?? 0) || (a[2] ?? 0) - (b[2] ?? 0);
        const best = everyWay(Math.ceil(neededMl), sizes).map(bill).sort(dearer)[0];
        const { buy, totalPrice, volumeMl } = buyFinish({ neededMl, sizes });
        const count = buy.reduce((sum, one) => sum + one.count, 0);
        expect([Math.round(totalPrice * 100), volumeMl, count]).toEqual(best);
      }),
    );
  });

  test('holds enough, and its bill adds up', () => {
    fc.assert(
      fc.property(
        numberArb({ min: 0, max: 20_000 }),
        fc.array(size, { minLength: 1, maxLength: 8 }),
        (neededMl, sizes) => {
          const { buy, totalPrice, volumeMl, leftMl } = buyFinish({ neededMl, sizes });
          expect(volumeMl).toBeGreaterThanOrEqual(neededMl);
          expect(leftMl).toBeCloseTo(volumeMl - neededMl, 9);
          expect(buy.reduce((sum, one) => sum + one.count * one.volumeMl, 0)).toBe(volumeMl);
          expect(buy.reduce((sum, one) => sum + one.count * Math.round(one.eachPrice * 100), 0)).toBe(
            Math.round(totalPrice * 100),
          );
          expect(buy.map(({ volumeMl, eachPrice }) => ({ volumeMl, eachPrice }))).toEqual(sizes);
          // Any container fewer would be too little.
          for (const one of buy) if (one.count > 0) expect(volumeMl - one.volumeMl).toBeLessThan(neededMl);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('of ways that cost the same it takes the one that leaves least, and then the fewest', () => {
    const counts = (neededMl: number, sizes: ContainerSize[]) =>
      buyFinish({ neededMl, sizes }).buy.map(({ count }) => count);
    const [small, half, whole] = [
      { volumeMl: 250, eachPrice: 5 },
      { volumeMl: 500, eachPrice: 10 },
      { volumeMl: 750, eachPrice: 10 },
    ] as const;
    expect(counts(500, [small, half])).toEqual([0, 1]);
    expect(counts(500, [half, small])).toEqual([1, 0]);
    expect(counts(400, [whole, half])).toEqual([0, 1]);
  });

  test('nothing is needed, nothing is bought', () => {
    const nothing = buyFinish({ neededMl: 0, sizes: [{ volumeMl: 500, eachPrice: 20 }] });
    expect(nothing).toMatchObject({ totalPrice: 0, volumeMl: 0, leftMl: 0 });
  });

  test('answers the largest need', () => {
    const sizes = [946, 3785, 250, 750, 1000, 2500].map((volumeMl) => ({
      volumeMl,
      eachPrice: volumeMl / 50,
    }));
    expect(buyFinish({ neededMl: 200_000, sizes }).leftMl).toBe(0);
  });

  const sizes = [{ volumeMl: 500, eachPrice: 20 }];
  test.each<[object, string]>([
    [{ neededMl: -1, sizes }, 'neededMl between 0 and 200000, got -1'],
    [{ neededMl: 1, sizes: [] }, 'sizes to be a list of 1 to 20, got 0'],
    [
      { neededMl: 1, sizes: [{ volumeMl: 0.5, eachPrice: 1 }] },
      'sizes[0].volumeMl a whole number between 1 and 200000, got 0.5',
    ],
    [
      { neededMl: 1, sizes: [{ volumeMl: 5, eachPrice: 0.005 }] },
      'sizes[0].eachPrice of at most two decimals, got 0.005',
    ],
    [{ neededMl: 1, sizes: [null] }, 'sizes[0].volumeMl a whole number between 1 and 200000, got undefined'],
  ])('refuses %o', (input, says) => {
    expect(() => buyFinish(input as BuyFinishInput)).toThrow(`buyFinish requires ${says}`);
  });
});

describe('planBatches', () => {
  const gaps = fc.array(
    fc.record({
      gap: numberArb({ min: 0, max: 30 }),
      lastsHours: fc.oneof(fc.constant(0), numberArb({ min: 0, max: 10 })),
      volumeMl: numberArb({ min: 0, max: 500 }),
    }),
    { minLength: 1, maxLength: 10 },
  );
  const uses = gaps.map((list): FinishUse[] => {
    let end = 0;
    return list.map(({ gap, lastsHours, volumeMl }) => {
      const atHours = end + gap;
      end = atHours + lastsHours;
      return { atHours, lastsHours, volumeMl };
    });
  });
  const potLife = numberArb({ min: 0.1, max: 40 });

  test('what is mixed is what is used, every drop of it', () => {
    fc.assert(
      fc.property(uses, potLife, (given, potLifeHours) => {
        const { batches } = planBatches({ uses: given, potLifeHours });
        const used = given.map(() => 0);
        for (const { volumeMl, shares } of batches) {
          const total = shares.reduce((sum, share) => sum + share.volumeMl, 0);
          expect(Math.abs(volumeMl - total)).toBeLessThanOrEqual(1e-9 * total);
          for (const { index, volumeMl: ml } of shares) used[index] = (used[index] ?? Number.NaN) + ml;
        }
        used.forEach((ml, i) => {
          expect(Math.abs(ml - (given[i]?.volumeMl ?? Number.NaN))).toBeLessThanOrEqual(1e-9 * (ml + 1));
        });
      }),
    );
  });

  test('no batch is used after its pot life, nor mixed before the last one is used up', () => {
    fc.assert(
      fc.property(uses, potLife, (given, potLifeHours) => {
        const { batches } = planBatches({ uses: given, potLifeHours });
        batches.forEach(({ atHours, shares }, i) => {
          const last = given[shares.at(-1)?.index ?? -1] as FinishUse;
          const usedUp = Math.min(last.atHours + last.lastsHours, atHours + potLifeHours);
          expect(last.atHours).toBeLessThanOrEqual(atHours + potLifeHours);
          expect(batches[i + 1]?.atHours ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(usedUp - 1e-9);
        });
      }),
    );
  });

  // A use of no length needs a batch that lives at that moment; moments farther apart than a pot life need one each.
  test('takes no more batches than moments that no two can share, and so as few as there can be', () => {
    const moments = fc.uniqueArray(fc.integer({ min: 0, max: 200 }), { minLength: 1, maxLength: 15 });
    fc.assert(
      fc.property(moments, fc.integer({ min: 1, max: 30 }), (hours, potLifeHours) => {
        const sorted = hours.sort((a, b) => a - b);
        const given = sorted.map((atHours) => ({ atHours, lastsHours: 0, volumeMl: 10 }));
        const { batches } = planBatches({ uses: given, potLifeHours });
        // The longest list of moments each more than a pot life after the one before, by trying all beginnings.
        const chain = sorted.map(() => 1);
        for (let i = sorted.length - 1; i >= 0; i--) {
          for (let j = i + 1; j < sorted.length; j++) {
            if ((sorted[j] ?? 0) - (sorted[i] ?? 0) > potLifeHours)
              chain[i] = Math.max(chain[i] ?? 1, 1 + (chain[j] ?? 1));
          }
        }
        expect(batches).toHaveLength(Math.max(...chain));
      }),
    );
  });

  test('a coat that takes longer than the pot life is mixed in pieces', () => {
    const { batches } = planBatches({
      uses: [{ atHours: 8, lastsHours: 2.5, volumeMl: 500 }],
      potLifeHours: 1,
    });
    expect(batches.map(({ atHours, volumeMl }) => [atHours, volumeMl])).toEqual([
      [8, 200],
      [9, 200],
      [10, 100],
    ]);
  });

  // From a calendar of coats without a pause; once refused, for a rounding.
  test('takes a use that begins as the one before ends, but for a rounding', () => {
    const lastsHours = 0.11236082916148007;
    const { batches } = planBatches({
      uses: [48, 48.112360829161474].map((atHours) => ({ atHours, lastsHours, volumeMl: 10 })),
      potLifeHours: 8,
    });
    expect(batches.map(({ volumeMl }) => volumeMl)).toEqual([20]);
  });

  test('warns of two-part finishes', () => {
    const { cautions } = planBatches({
      uses: [{ atHours: 0, lastsHours: 1, volumeMl: 10 }],
      potLifeHours: 1,
    });
    expect(cautions.join(' ')).toMatch(/grows hot.*isocyanates/s);
  });

  const use = { atHours: 5, lastsHours: 1, volumeMl: 10 };
  test.each<[object, string]>([
    [{ uses: [], potLifeHours: 1 }, 'uses to be a list of 1 to 100, got 0'],
    [{ uses: [use], potLifeHours: 0 }, 'potLifeHours between 0.1 and 10000, got 0'],
    [
      { uses: [use, use], potLifeHours: 1 },
      'uses[1].atHours at or after the end of the one before, 6, got 5',
    ],
    [
      { uses: [{ ...use, volumeMl: Number.NaN }], potLifeHours: 1 },
      'uses[0].volumeMl between 0 and 1000000, got NaN',
    ],
  ])('refuses %o', (input, says) => {
    expect(() => planBatches(input as PlanBatchesInput)).toThrow(`planBatches requires ${says}`);
  });
});
