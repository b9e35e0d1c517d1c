import { describe, expect, test } from 'vitest';
import { leastPrice } from '../src/bars/least-price.ts';
import { type CutBarsInput, cutBars } from '../src/index.ts';
import { shopJob } from './bar-arbitraries.ts';
import u120 from './printed-bars/u120.json' with { type: 'json' };

const part = (lengthMm: number, count: number, name = `${lengthMm}`) => ({ name, lengthMm, count });
const job = (given: Partial<CutBarsInput>): CutBarsInput => ({
  parts: [part(1000, 2)],
  bars: [{ name: 'bar', lengthMm: 2003, eachPrice: 10 }],
  ...{ kerfMm: 3, endTrimMm: 0 },
  ...given,
});

describe('cutBars, worked by hand', () => {
  test('the last piece needs no cut where it ends with the bar', () => {
    // 1000 + 3 + 1000 = 2003.
    const plan = cutBars(job({}));
    expect(plan).toMatchObject({ totalPrice: 10, proven: true, longestOffcutMm: 0 });
    expect(plan.bars).toEqual([
      {
        ...{ name: 'bar', lengthMm: 2003, count: 1, offcutMm: 0 },
        pieces: [
          { name: '1000', lengthMm: 1000, startMm: 0 },
          { name: '1000', lengthMm: 1000, startMm: 1003 },
        ],
      },
    ]);
    // A hundredth of a millimetre shorter, and it takes two bars.
    const shorter = job({ bars: [{ name: 'bar', lengthMm: 2002.99, eachPrice: 10 }] });
    expect(cutBars(shorter)).toMatchObject({ totalPrice: 20, proven: true });
  });

  test('ends are trimmed first, and the first piece begins behind the trim', () => {
    const trimmed = job({ endTrimMm: 10, bars: [{ name: 'bar', lengthMm: 2023, eachPrice: 10 }] });
    expect(cutBars(trimmed).bars[0]?.pieces.map(({ startMm }) => startMm)).toEqual([10, 1013]);
    expect(cutBars(job({ endTrimMm: 10 })).totalPrice).toBe(20);
  });

  test('a remainder narrower than a cut is lost in it', () => {
    // 2005 − 1000 − 3 − 1000 leaves 2, the cut takes 3; of 2050 it leaves 47 − 3.
    const barOf = (lengthMm: number) => job({ bars: [{ name: 'bar', lengthMm, eachPrice: 10 }] });
    expect(cutBars(barOf(2005)).longestOffcutMm).toBe(0);
    expect(cutBars(barOf(2050)).longestOffcutMm).toBe(44);
  });

  test('fractions of an inch and thirds of a metre fit exactly', () => {
    // 64 parts of 23/64 in and 63 cuts of 1/64 in take 64 × 23/64 + 63/64 = 1535/64 in.
    const inches = {
      parts: [part((23 / 64) * 25.4, 64)],
      bars: [{ name: 'bar', lengthMm: (1535 / 64) * 25.4, eachPrice: 1 }],
      ...{ kerfMm: 25.4 / 64, endTrimMm: 0 },
    };
    expect(cutBars(inches)).toMatchObject({ totalPrice: 1, longestOffcutMm: 0 });
    const bars = [{ name: 'bar', lengthMm: 0.1 + 0.2 + 2000, eachPrice: 1 }];
    expect(cutBars({ parts: [part(1000.15, 2)], bars, kerfMm: 0, endTrimMm: 0 }).totalPrice).toBe(1);
  });

  test('a bar that parts fill to the last nanometre', () => {
    const bars = [{ name: 'bar', lengthMm: 2000, eachPrice: 1 }];
    const fill = [part(1299.999_999, 1), part(700.000_001, 1)];
    expect(cutBars({ parts: fill, bars, kerfMm: 0, endTrimMm: 0 }).totalPrice).toBe(1);
    const burst = [part(1299.999_999, 1), part(700.000_002, 1)];
    expect(cutBars({ parts: burst, bars, kerfMm: 0, endTrimMm: 0 }).totalPrice).toBe(2);
  });

  test('a dear bar is left where there are enough cheap ones, and bought where there are not', () => {
    const bars = [
      { name: 'dear', lengthMm: 1000, eachPrice: 9 },
      { name: 'cheap', lengthMm: 1000, eachPrice: 4, count: 3 },
    ];
    const boughtFor = (count: number) =>
      cutBars(job({ parts: [part(1000, count)], bars })).buy.map((one) => [one.name, one.count]);
    expect(boughtFor(3)).toEqual([['cheap', 3]]);
    expect(boughtFor(4)).toEqual([
      ['cheap', 3],
      ['dear', 1],
    ]);
  });

  test('among plans for the same bars the one with the longest offcut', () => {
    // Two bars of 1000 for 4 × 300: two and two leave 400 twice, three and one leave 100 and 700.
    const parts = [part(300, 4)];
    const bars = [{ name: 'bar', lengthMm: 1000, eachPrice: 1 }];
    const plan = cutBars({ parts, bars, kerfMm: 0, endTrimMm: 0 });
    expect(plan).toMatchObject({ totalPrice: 2, longestOffcutMm: 700 });
    // 500 + 400 and 300 + 300 would leave 100 and 400; 400 + 300 + 300 fills one bar and leaves 500 of the other.
    const mixed = cutBars({
      parts: [part(500, 1), part(400, 1), part(300, 2)],
      bars,
      kerfMm: 0,
      endTrimMm: 0,
    });
    expect(mixed.longestOffcutMm).toBe(500);
  });

  test('a bar too long to carry is cut by the yard into equal lengths, and paid for whole', () => {
    const bars = [{ name: 'bar 6 m', lengthMm: 6000, eachPrice: 30 }];
    const given = { parts: [part(1900, 4)], bars, kerfMm: 3, endTrimMm: 0 };
    // Whole, three parts of 1900 and two cuts take 5706 of 6000. In two of (6000 − 3) / 2 = 2998.5 each gives one part.
    expect(cutBars(given)).toMatchObject({ totalPrice: 60, buy: [{ count: 2, carriedCount: 1 }] });
    const carried = cutBars({ ...given, longestCarriedMm: 3100 });
    expect(carried).toMatchObject({ totalPrice: 60, buy: [{ count: 2, carriedCount: 2 }] });
    expect(carried.bars).toMatchObject([{ lengthMm: 2998.5, count: 4, offcutMm: 1095.5 }]);
    // One part leaves the other half of its bar whole.
    const one = cutBars({ ...given, parts: [part(1900, 1)], longestCarriedMm: 3100 });
    expect(one.bars.map(({ pieces, offcutMm }) => [pieces.length, offcutMm])).toEqual([
      [1, 1095.5],
      [0, 2998.5],
    ]);
  });

  test('parts of one length keep their names', () => {
    const parts = [part(700, 3, 'rail'), part(700, 2, 'leg')];
    const plan = cutBars(job({ parts, bars: [{ name: 'bar', lengthMm: 2200, eachPrice: 1 }] }));
    expect(plan.bars.map(({ count, pieces }) => [count, pieces.map(({ name }) => name)])).toEqual([
      [1, ['leg', 'leg', 'rail']],
      [1, ['rail', 'rail']],
    ]);
  });
});

describe('cutBars, what it refuses and where it stops', () => {
  test.each<[string, Partial<CutBarsInput>]>([
    ['cutBars requires kerfMm between 0 and 50, got NaN', { kerfMm: Number.NaN }],
    ['cutBars requires endTrimMm between 0 and 1000, got -1', { endTrimMm: -1 }],
    ['cutBars requires longestCarriedMm between 1 and 100000, got 0', { longestCarriedMm: 0 }],
    ['cutBars requires parts to be a list of 1 to 100000, got 0', { parts: [] }],
    ['cutBars requires bars to be a list of 1 to 20, got 0', { bars: [] }],
    ['cutBars requires parts[0].lengthMm between 0.1 and 100000, got 0', { parts: [part(0, 1)] }],
    [
      'cutBars requires parts[0].count a whole number between 1 and 100000, got 1.5',
      { parts: [part(9, 1.5)] },
    ],
    ['cutBars requires no more than 100000 parts, got 100002', { parts: [part(9, 50_001), part(8, 50_001)] }],
    [
      'cutBars requires bars[0].eachPrice between 0.01 and 1000000, got 0',
      { bars: [{ name: 'bar', lengthMm: 2003, eachPrice: 0 }] },
    ],
    [
      'cutBars requires bars[0].eachPrice between 0.01 and 1000000, got -4',
      { bars: [{ name: 'bar', lengthMm: 2003, eachPrice: -4 }] },
    ],
    [
      'cutBars requires bars[0].eachPrice between 0.01 and 1000000, got 0.009',
      { bars: [{ name: 'bar', lengthMm: 2003, eachPrice: 0.009 }] },
    ],
    [
      'cutBars requires bars[0].name to be a name unlike every other, got ""',
      { bars: [{ name: '', lengthMm: 2003, eachPrice: 1 }] },
    ],
    [
      'cutBars requires bars[1].name to be a name unlike every other, got "bar"',
      {
        bars: [
          { name: 'bar', lengthMm: 2003, eachPrice: 1 },
          { name: 'bar', lengthMm: 3000, eachPrice: 2 },
        ],
      },
    ],
    [
      'cutBars requires kerfMm below bars[0].lengthMm, got 40 and 40',
      { kerfMm: 40, bars: [{ name: 'bar', lengthMm: 40, eachPrice: 1 }] },
    ],
    [
      'cutBars requires parts no longer than the 1983 mm that a bar gives, trimmed and carried, got 2000 mm for "2000"',
      { parts: [part(2000, 1)], endTrimMm: 10 },
    ],
    [
      'cutBars requires parts no longer than the 1000 mm that a bar gives, trimmed and carried, got 1500 mm for "1500"; the yard cuts "bar" into 2 equal lengths to carry it',
      { parts: [part(1500, 1)], longestCarriedMm: 1500 },
    ],
    [
      'cutBars requires bars enough for all parts, got too few: parts and their cuts take 2006.0 mm, 1 × "bar" can give 1503.0 mm',
      { bars: [{ name: 'bar', lengthMm: 1500, eachPrice: 1, count: 1 }] },
    ],
    [
      'cutBars requires bars enough for all parts, got too few: parts and their cuts take 2006.0 mm, no bar can give 0.0 mm',
      { bars: [{ name: 'bar', lengthMm: 1500, eachPrice: 1, count: 0 }] },
    ],
  ])('%s', (message, given) => {
    expect(() => cutBars(job(given))).toThrow(RangeError);
    expect(() => cutBars(job(given))).toThrow(message);
  });

  test.each<[string, (i: number) => number]>([
    ['even', (i) => 200 + i / 50],
    ['irregular', (i) => 200 + ((i * 16807 * 16807) % 2147483647) * 1e-6],
  ])('100 000 parts of as many %s lengths: a plan with its bound', (_, lengthOf) => {
    const parts = Array.from({ length: 100_000 }, (_, i) => part(lengthOf(i), 1));
    const bars = [{ name: 'bar', lengthMm: 6000, eachPrice: 30 }];
    const plan = cutBars({ parts, bars, kerfMm: 3, endTrimMm: 0 });
    // Their length and cuts, over what a bar holds: no plan does with less.
    const material = parts.reduce((sum, { lengthMm }) => sum + lengthMm + 3, 0) / 6003;
    expect(plan.boundPrice).toBeGreaterThanOrEqual(30 * Math.ceil(material));
    expect(plan.totalPrice).toBeLessThan(1.01 * plan.boundPrice);
    expect(plan.proven).toBe(plan.totalPrice === plan.boundPrice);
  });

  test('100 000 parts of one length and as many names: each is cut once', () => {
    const parts = Array.from({ length: 100_000 }, (_, i) => part(700, 1, `part ${i}`));
    const plan = cutBars({
      parts,
      bars: [{ name: 'bar', lengthMm: 2809, eachPrice: 1 }],
      kerfMm: 3,
      endTrimMm: 0,
    });
    // Four of 700 and three cuts of 3 fill a bar.
    expect(plan).toMatchObject({ totalPrice: 25_000, proven: true });
    expect(new Set(plan.bars.flatMap(({ pieces }) => pieces.map(({ name }) => name))).size).toBe(100_000);
  });

  test('thousands of bars of which there are not enough of the cheapest: the bound knows how many there are', () => {
    const lengths = Array.from({ length: 40 }, (_, i) => 300 + (((i + 1) * 16807) % 1700));
    const bars = [
      { name: 'long', lengthMm: 6000, eachPrice: 10, count: 500 },
      { name: 'middle', lengthMm: 5000, eachPrice: 8.1, count: 700 },
      { name: 'short', lengthMm: 3300, eachPrice: 5.7 },
    ];
    const plan = cutBars(job({ parts: lengths.map((lengthMm) => part(lengthMm, 250)), bars }));
    // What the long and middle bars cannot hold comes from short ones: no plan does with less.
    const needMm = lengths.reduce((sum, lengthMm) => sum + 250 * (lengthMm + 3), 0);
    const shortBars = Math.ceil((needMm - 500 * 6003 - 700 * 5003) / 3303);
    expect(shortBars).toBeGreaterThan(0);
    const least = 500 * 10 + 700 * 8.1 + shortBars * 5.7;
    expect(plan.boundPrice).toBeGreaterThanOrEqual(least - 5.7);
    expect(plan.totalPrice).toBeLessThan(1.01 * plan.boundPrice);
  });

  test('12 lengths of a thousand parts each, thousands of bars: a plan with its bound', () => {
    const lengths = [700, 950, 1137, 1371, 1493, 1555, 1821, 1999, 2111, 2236, 2418, 2597];
    const bars = [
      { name: 'long', lengthMm: 6000, eachPrice: 10 },
      { name: 'middle', lengthMm: 5000, eachPrice: 8.1 },
      { name: 'short', lengthMm: 3300, eachPrice: 5.7 },
    ];
    const plan = cutBars(job({ parts: lengths.map((lengthMm) => part(lengthMm, 1000)), bars }));
    expect(plan.totalPrice).toBeLessThan(1.01 * plan.boundPrice);
    const cut = plan.bars.reduce((sum, { count, pieces }) => sum + count * pieces.length, 0);
    expect(cut).toBe(12_000);
  });

  test.each([
    [15, [6000, 5000, 3000]],
    [20, [4000, 3000, 2400]],
    [30, [6000, 4000]],
    [60, [6000, 5000, 3000]],
    [60, [6000, 4000]],
    [60, [4000, 3000, 2400]],
    [60, [2400, 2100]],
  ])('60 parts of up to %s lengths from bars of %j: always proven', (kinds, barsMm) => {
    for (let seed = 1; seed <= 20; seed++) {
      expect(cutBars(shopJob(seed, { kinds, shortestMm: 300, barsMm })).proven, `seed ${seed}`).toBe(true);
    }
  });

  test('where the work allowed runs out, the best found and an honest bound', () => {
    const row = u120.rows.find(({ name }) => name === 'u120_08');
    const { parts = [], bins = 0 } = row ?? {};
    const sizes = [...new Set(parts)].sort((a, b) => b - a);
    const demand = sizes.map((size) => parts.filter((one) => one === size).length);
    const given = { sizes, demand, stocks: [{ room: 150, lengths: 1, price: 1, limit: 120 }] };
    const tight = [0, 100, 3000, 10_000_000].map((left) => leastPrice(given, { left }));
    for (const { cuts, bound } of tight) {
      const bars = cuts?.reduce((sum, { times }) => sum + times, 0) ?? Number.NaN;
      expect(bound).toBeLessThanOrEqual(bins);
      expect(bars).toBeGreaterThanOrEqual(bins);
    }
    expect(tight[0]?.cuts?.reduce((sum, { times }) => sum + times, 0)).toBeGreaterThan(tight[0]?.bound ?? 0);
    expect(tight.at(-1)?.bound).toBe(bins);
  });
});
