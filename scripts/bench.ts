// Times each package beside general-purpose libraries that do the same job, and prints how many times faster it is.
// Ends with 1 where a stated ratio is missed, where answers differ, or where there is nothing to run.
// A bench file is `packages/*/bench/*.bench.ts`; its default export is a list of comparisons.

import { globSync } from 'node:fs';
import { resolve } from 'node:path';
import { measure } from 'mitata';

/** A job, and the libraries that do the same one. What each gives back is compared before it is timed. */
export interface Comparison {
  readonly name: string;
  readonly ours: () => readonly unknown[];
  /** Longest that one job of ours may take, ns. */
  readonly atMostNs?: number;
  readonly peers: readonly {
    readonly name: string;
    readonly run: () => readonly unknown[];
    /** How many times faster ours must be. */
    readonly atLeast: number;
    /** A job this short is fast enough, whatever the peer takes, ns. */
    readonly orAtMostNs?: number;
    /** Where the peer only comes near to the answer: whether ours is at least as good. */
    readonly atLeastAsGood?: (ours: readonly unknown[], theirs: readonly unknown[]) => boolean;
  }[];
}

/** A job of several sizes, whose time grows no faster than n log n. */
export interface Growth {
  readonly name: string;
  /** Rising, over three decades or more. */
  readonly sizes: readonly number[];
  readonly job: (size: number) => () => unknown;
}

const ROUNDS = 7;
const ROUND_NS = 50e6;
const SLOW_NS = 1e9;

const agree = (a: unknown, b: unknown) =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))
    : a === b;

/** What a job gives, and how long it took. */
function once<T>(run: () => T): { readonly answer: T; readonly ns: number } {
  const start = performance.now();
  const answer = run();
  return { answer, ns: (performance.now() - start) * 1e6 };
}

/** Throws where answers differ; gives how long each took the first time, ours first. */
function requireSameAnswers({ name, ours, peers }: Comparison): number[] {
  const { answer: wanted, ns } = once(ours);
  if (wanted.length === 0) throw new Error(`${name}: there is no answer to compare`);
  const peersNs = peers.map((peer) => {
    const { answer: given, ns } = once(peer.run);
    if (peer.atLeastAsGood) {
      if (!peer.atLeastAsGood(wanted, given)) {
        throw new Error(`${name}: ours gives ${wanted}, ${peer.name} the better ${given}`);
      }
      return ns;
    }
    const at = wanted.findIndex((answer, i) => !agree(answer, given[i]));
    if (at >= 0 || given.length !== wanted.length) {
      throw new Error(`${name}: ours gives ${wanted[at]}, ${peer.name} gives ${given[at]}`);
    }
    return ns;
  });
  return [ns, ...peersNs];
}

/**
 * The best median of several short rounds, taken in turns, so that a busy machine slows all of them alike. What took
 * more than a second the first time is not run again.
 */
async function timesNs(runs: readonly (() => unknown)[], firstNs: readonly number[] = []): Promise<number[]> {
  const slow = (i: number) => (firstNs[i] ?? 0) > SLOW_NS;
  const best = runs.map((_, i) => (slow(i) ? (firstNs[i] as number) : Number.POSITIVE_INFINITY));
  for (let round = 0; round < ROUNDS; round++) {
    for (const [i, run] of runs.entries()) {
      if (slow(i)) continue;
      const { p50 } = await measure(run, { min_cpu_time: ROUND_NS });
      best[i] = Math.min(best[i] as number, p50);
    }
  }
  return best;
}

const row = (name: string, ns: number, rest = '') =>
  console.log(`  ${name.padEnd(16)}${ns.toFixed(0).padStart(8)} ns${rest}`);

/** Times one comparison; returns how many of its stated ratios and limits are missed. */
async function compare(comparison: Comparison): Promise<number> {
  const firstNs = requireSameAnswers(comparison);
  const { name, ours, peers, atMostNs = Number.POSITIVE_INFINITY } = comparison;
  const jobs = ours().length;
  const [oursNs = 0, ...peersNs] = await timesNs([ours, ...peers.map(({ run }) => run)], firstNs);
  console.log(`\n${name}`);
  const tooSlow = oursNs / jobs > atMostNs;
  const limit = Number.isFinite(atMostNs) ? `   at most ${atMostNs} ns: ${tooSlow ? 'MISSED' : 'met'}` : '';
  row('ours', oursNs / jobs, limit);
  const slower = peers.filter((peer, i) => {
    const peerNs = peersNs[i] as number;
    const ratio = peerNs / oursNs;
    const { atLeast, orAtMostNs = 0 } = peer;
    const met = ratio >= atLeast || oursNs / jobs <= orAtMostNs;
    const asked = `at least ${atLeast} ×${orAtMostNs > 0 ? ` or ours within ${orAtMostNs} ns` : ''}`;
    row(peer.name, peerNs / jobs, `   ${ratio.toFixed(1)} × ours, ${asked}: ${met ? 'met' : 'MISSED'}`);
    return !met;
  });
  return slower.length + Number(tooSlow);
}

/** The exponent p of the power n^p that comes nearest to the times, in the sense of least squares of logarithms. */
function exponent(sizes: readonly number[], times: readonly number[]): number {
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const [xs, ys] = [sizes.map(Math.log), times.map(Math.log)];
  const [x, y] = [mean(xs), mean(ys)];
  const covariance = xs.reduce((sum, one, i) => sum + (one - x) * ((ys[i] as number) - y), 0);
  return covariance / xs.reduce((sum, one) => sum + (one - x) ** 2, 0);
}

/** Times one job at every size; returns 1 where its time grows faster than n log n. */
async function grow({ name, sizes, job }: Growth): Promise<number> {
  const times = await timesNs(sizes.map((size) => job(size)));
  console.log(`\n${name}`);
  for (const [i, size] of sizes.entries()) row(`n = ${size}`, times[i] as number);
  const p = exponent(sizes, times);
  const most = exponent(
    sizes,
    sizes.map((n) => n * Math.log(n)),
  );
  const met = p <= most;
  console.log(`  grows as n^${p.toFixed(2)}, n log n as n^${most.toFixed(2)}: ${met ? 'met' : 'MISSED'}`);
  return met ? 0 : 1;
}

const files = globSync('packages/*/bench/*.bench.ts').sort();
let compared = 0;
let missed = 0;
for (const file of files) {
  const { default: comparisons } = (await import(resolve(file))) as {
    default: readonly (Comparison | Growth)[];
  };
  console.log(`${compared > 0 ? '\n' : ''}${file}, Node ${process.version}, each figure for one job`);
  for (const comparison of comparisons) {
    if ('sizes' in comparison) {
      missed += await grow(comparison);
      compared += 1;
      continue;
    }
    missed += await compare(comparison);
    compared += comparison.peers.length + Number(comparison.atMostNs !== undefined);
  }
}
console.log(`\n${compared} ratios and limits, ${missed} missed`);
if (compared === 0 || missed > 0) process.exitCode = 1;
