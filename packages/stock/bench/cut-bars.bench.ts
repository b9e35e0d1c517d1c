import type { Comparison, Growth } from '../../../scripts/bench.ts';
import { type CutBarsInput, cutBars } from '../src/index.ts';
import { shopJob } from '../test/bar-arbitraries.ts';
import { programmeOf, solveByHighs } from '../test/general-solver.ts';
import u120 from '../test/printed-bars/u120.json' with { type: 'json' };

/** Our price, which must be a proven one. */
function price(job: CutBarsInput): number {
  const { totalPrice, proven } = cutBars(job);
  if (!proven) throw new Error('the price is not proven');
  return totalPrice;
}

const seeds = (count: number) => Array.from({ length: count }, (_, i) => i + 1);
const fewLengths = { kinds: 8, shortestMm: 500, barsMm: [4000, 3000, 2400] };
// The fourth job, which takes HiGHS 20 s, is left out: it alone would make the mean.
const shopJobs = [1, 2, 3, 5, 6, 7, 8, 9].map((seed) => shopJob(seed, fewLengths));
// From shorter bars: else there are too many ways to fill a bar to tell HiGHS of. The third takes it longest.
const ownLengths = [1, 2, 4, 5, 6, 7, 8, 9].map((seed) =>
  shopJob(seed, { kinds: 60, shortestMm: 500, barsMm: [2400, 2000] }),
);
// The ways to fill a bar are counted out for it beforehand: only its solving is timed.
const programmes = shopJobs.map(programmeOf);
const ownProgrammes = ownLengths.map(programmeOf);
// Nor is it timed while the engine still compiles it.
for (const programme of programmes) solveByHighs(programme);
const byHighs = (all: readonly string[]) =>
  all.map((programme) => Math.round((solveByHighs(programme) ?? 0) * 1e4) / 1e4);
const barSets = [
  [6000, 5000, 3000],
  [6000, 4000],
  [4000, 3000, 2400],
  [2400, 2100],
];
const manyJobs = [20, 30, 60].map((kinds) => ({
  name: `60 parts of up to ${kinds} lengths from bars of several lengths`,
  jobs: barSets.flatMap((barsMm) =>
    seeds(6).map((seed) => shopJob(seed, { kinds, shortestMm: 300, barsMm })),
  ),
}));
const classical = u120.rows.slice(0, 4).map(({ parts }) => ({
  parts: parts.map((lengthMm) => ({ name: 'part', lengthMm, count: 1 })),
  bars: [{ name: 'bar', lengthMm: u120.stockLength, eachPrice: 1 }],
  ...{ kerfMm: 0, endTrimMm: 0 },
}));

const comparisons: readonly (Comparison | Growth)[] = [
  {
    name: '60 parts from bars of three lengths, proven: the mean of 8 jobs',
    ours: () => shopJobs.map(price),
    atMostNs: 20e6,
    peers: [
      {
        name: 'HiGHS',
        atLeast: 10,
        run: () => byHighs(programmes),
      },
    ],
  },
  {
    name: '60 parts of up to 60 lengths from short bars of two lengths, proven: the mean of 8 jobs',
    ours: () => ownLengths.map(price),
    atMostNs: 20e6,
    peers: [{ name: 'HiGHS', atLeast: 10, run: () => byHighs(ownProgrammes) }],
  },
  ...manyJobs.map(({ name, jobs }) => ({
    name: `${name}, proven: the mean of ${jobs.length} jobs`,
    ours: () => jobs.map(price),
    atMostNs: 20e6,
    peers: [],
  })),
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
  {
    name: 'parts of one length, each of a name of its own',
    sizes: [100, 1000, 10_000, 100_000],
    job: (size) => {
      const parts = seeds(size).map((name) => ({ name: `${name}`, lengthMm: 700, count: 1 }));
      const bars = [{ name: 'bar', lengthMm: 3000, eachPrice: 1 }];
      return () => cutBars({ parts, bars, kerfMm: 3, endTrimMm: 0 });
    },
  },
];

export default comparisons;
