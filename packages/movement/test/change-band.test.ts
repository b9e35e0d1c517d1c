import { create, erf, randomDependencies } from 'mathjs';
import { expect, test } from 'vitest';
import { changeBand } from '../src/index.ts';

/** Share of a normal distribution beyond so many standard deviations on one side, by a general library. */
const tail = (deviations: number) => (1 - erf(deviations / Math.SQRT2)) / 2;

const PANELS = 20_000;

/** Deviations of a share or of a standard deviation from what it should be that a fair draw hardly ever reaches. */
const ALLOWED = 4.5;

/** Draws from a general library, the same ones in every run. */
function panels(boardCount: number, board: (random: () => number) => number): number[] {
  const { random } = create({ ...randomDependencies }, { randomSeed: `panels of ${boardCount}` });
  const mean = () => {
    let sum = 0;
    for (let i = 0; i < boardCount; i++) sum += board(random);
    return sum / boardCount;
  };
  return Array.from({ length: PANELS }, mean);
}

/** One board's shrinkage as a multiple of the species' mean, normally distributed (Box and Muller). */
const normal = (variationPct: number) => (random: () => number) =>
  1 + (variationPct / 100) * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** The same with the same standard deviation, yet even between two ends. */
const even = (variationPct: number) => (random: () => number) =>
  1 + (variationPct / 100) * Math.sqrt(12) * (random() - 0.5);

test('the multipliers that the docs name leave the share that they say', () => {
  for (const [deviations, share] of [
    [1.645, 0.05],
    [2.326, 0.01],
    [1.96, 0.025],
  ] as const) {
    // The multiplier is rounded to three decimals: the share lies between those of its neighbours.
    expect(tail(deviations - 0.0005)).toBeGreaterThan(share);
    expect(tail(deviations + 0.0005)).toBeLessThan(share);
  }
});

test.each([1, 4, 9])(
  'of %i boards drawn at random, as many panels as they should lie beyond each end',
  (boardCount) => {
    const given = { changeMm: 6, variationPct: 20, boardCount };
    const changes = panels(boardCount, normal(20)).map((multiple) => 6 * multiple);
    for (const deviationFactor of [1, 1.645, 2.326]) {
      const { lowMm, highMm } = changeBand({ ...given, deviationFactor });
      const share = tail(deviationFactor);
      const room = ALLOWED * Math.sqrt((share * (1 - share)) / PANELS);
      const beyond = (isBeyond: (change: number) => boolean) => changes.filter(isBeyond).length / PANELS;
      expect(Math.abs(beyond((change) => change > highMm) - share)).toBeLessThan(room);
      expect(Math.abs(beyond((change) => change < lowMm) - share)).toBeLessThan(room);
    }
  },
);

test.each([1, 4, 9])(
  'of %i boards the panel’s standard deviation is the band’s, however boards are spread',
  (boardCount) => {
    const multiples = panels(boardCount, even(20));
    const mean = multiples.reduce((sum, one) => sum + one, 0) / PANELS;
    const variance = multiples.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (PANELS - 1);
    const { highMm } = changeBand({ changeMm: 1, variationPct: 20, boardCount, deviationFactor: 1 });
    const deviation = highMm - 1;
    // The deviation of a sample's standard deviation is at most σ / √(2 N) for spreads no longer-tailed than a normal.
    expect(Math.abs(Math.sqrt(variance) - deviation)).toBeLessThan(
      (ALLOWED * deviation) / Math.sqrt(2 * PANELS),
    );
  },
);

test('one board has the widest band, and each board more makes it narrower', () => {
  const width = (boardCount: number) => {
    const { lowMm, highMm } = changeBand({ changeMm: 8, variationPct: 15, boardCount, deviationFactor: 2 });
    return highMm - lowMm;
  };
  const widths = Array.from({ length: 100 }, (_, i) => width(i + 1));
  for (const [i, narrower] of widths.slice(1).entries()) expect(narrower).toBeLessThan(widths[i] ?? 0);
  expect(width(4)).toBeCloseTo(width(1) / 2, 12);
});

test('a band that would reach below no change is refused', () => {
  expect(() => changeBand({ changeMm: 6, variationPct: 50, boardCount: 1, deviationFactor: 3 })).toThrow(
    new RangeError('changeBand requires a band of at most 100 % of the change, got 150 %'),
  );
  expect(changeBand({ changeMm: 6, variationPct: 50, boardCount: 1, deviationFactor: 2 })).toEqual({
    lowMm: 0,
    highMm: 12,
  });
});
