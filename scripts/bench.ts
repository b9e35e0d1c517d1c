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
  }[];
}

const ROUNDS = 7;
const ROUND_NS = 50e6;

const agree = (a: unknown, b: unknown) =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))
    : a === b;

function requireSameAnswers({ name, ours, peers }: Comparison): void {
  const wanted = ours();
  if (wanted.length === 0) throw new Error(`${name}: there is no answer to compare`);
  for (const peer of peers) {
    const given = peer.run();
    const at = wanted.findIndex((answer, i) => !agree(answer, given[i]));
    if (at >= 0 || given.length !== wanted.length) {
      throw new Error(`${name}: ours gives ${wanted[at]}, ${peer.name} gives ${given[at]}`);
    }
  }
}

/** The best median of several short rounds, taken in turns, so that a busy machine slows all of them alike. */
async function timesNs(runs: readonly (() => unknown)[]): Promise<number[]> {
  const best = runs.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < ROUNDS; round++) {
    for (const [i, run] of runs.entries()) {
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
  requireSameAnswers(comparison);
  const { name, ours, peers, atMostNs = Number.POSITIVE_INFINITY } = comparison;
  const jobs = ours().length;
  const [oursNs = 0, ...peersNs] = await timesNs([ours, ...peers.map(({ run }) => run)]);
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

const files = globSync('packages/*/bench/*.bench.ts').sort();
let compared = 0;
let missed = 0;
for (const file of files) {
  const { default: comparisons } = (await import(resolve(file))) as { default: readonly Comparison[] };
  console.log(`${compared > 0 ? '\n' : ''}${file}, Node ${process.version}, each figure for one job`);
  for (const comparison of comparisons) {
    missed += await compare(comparison);
    compared += comparison.peers.length + Number(comparison.atMostNs !== undefined);
  }
}
console.log(`\n${compared} ratios and limits, ${missed} missed`);
if (compared === 0 || missed > 0) process.exitCode = 1;
