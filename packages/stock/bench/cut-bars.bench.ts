import type { Comparison } from '../../../scripts/bench.ts';
import { type CutBarsInput, cutBars } from '../src/index.ts';
import { programmeOf, solveByHighs } from '../test/general-solver.ts';
import u120 from '../test/printed-bars/u120.json' with { type: 'json' };

/** Numbers between 0 and 1, the same every time (xorshift32). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

/** A job of a workshop: 60 parts of up to eight lengths, from bars of three lengths. */
function shopJob(seed: number): CutBarsInput {
  const next = numbers(seed * 2654435761);
  const lengths = new Set(Array.from({ length: 8 }, () => 500 + Math.floor(next() * 1500)));
  const kinds = [...lengths];
  return {
    parts: kinds.map((lengthMm, i) => ({
      name: `part ${i}`,
      lengthMm,
      count: Math.floor(60 / kinds.length) + Number(i < 60 % kinds.length),
    })),
    bars: [4000, 3000, 2400].map((lengthMm) => ({
      name: `${lengthMm} mm`,
      lengthMm,
      eachPrice: Math.round(lengthMm * (0.9 + 0.2 * next())) / 100,
    })),
    ...{ kerfMm: 3, endTrimMm: 0 },
  };
}

/** Our price, which must be a proven one. */
function price(job: CutBarsInput): number {
  const { totalPrice, proven } = cutBars(job);
  if (!proven) throw new Error('the price is not proven');
  return totalPrice;
}

// The fourth job, which takes HiGHS 20 s, is left out: it alone would make the mean.
const shopJobs = [1, 2, 3, 5, 6, 7, 8, 9].map(shopJob);
// The ways to fill a bar are counted out for it beforehand: only its solving is timed.
const programmes = shopJobs.map(programmeOf);
// Nor is it timed while the engine still compiles it.
for (const programme of programmes) solveByHighs(programme);
const classical = u120.rows.slice(0, 4).map(({ parts }) => ({
  parts: parts.map((lengthMm) => ({ name: 'part', lengthMm, count: 1 })),
  bars: [{ name: 'bar', lengthMm: u120.stockLength, eachPrice: 1 }],
  ...{ kerfMm: 0, endTrimMm: 0 },
}));

const comparisons: readonly Comparison[] = [
  {
    name: '60 parts from bars of three lengths, proven: the mean of 8 jobs',
    ours: () => shopJobs.map(price),
    atMostNs: 20e6,
    peers: [
      {
        name: 'HiGHS',
        atLeast: 10,
        run: () => programmes.map((programme) => Math.round((solveByHighs(programme) ?? 0) * 1e4) / 1e4),
      },
    ],
  },
  ...shopJobs.map((job, i) => ({
    name: `60 parts from bars of three lengths, proven: job ${i + 1}`,
    ours: () => [price(job)],
    atMostNs: 20e6,
    peers: [],
  })),
  {
    name: '120 parts, the classical instances u120, proven: the mean of the first 4',
    ours: () => classical.map(price),
    atMostNs: 1e9,
    peers: [],
  },
];

export default comparisons;
