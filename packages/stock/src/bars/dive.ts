import { firstFit } from './first-fit.ts';
import { type Cuts, type Filling, isCut, type Job, type Rest, timesIn, type Work, without } from './job.ts';
import { barsFor, priceOf } from './plan-price.ts';
import type { Relaxation, Relaxed } from './relaxation.ts';

/** A relaxed plan rounded: its whole times are cut, or its largest fraction once, but no filling that is not to be. */
function rounded({ cuts }: Relaxed, from: Rest, not: readonly Filling[]) {
  const now: { filling: Filling; times: number }[] = [];
  let rest = from;
  for (const { filling, times } of cuts.toSorted((a, b) => b.times - a.times)) {
    const least = now.length > 0 ? 0 : 1;
    const whole = Math.min(Math.max(Math.floor(times + 1e-6), least), timesIn(rest, filling));
    if (whole === 0 || not.includes(filling)) continue;
    now.push({ filling, times: whole });
    rest = without(rest, filling, whole);
  }
  return { now, rest };
}

/** A plan by rounding the cheapest relaxed one, again and again; on the way the rule of thumb tries to finish cheaper. */
export function roundCheapest(job: Job, from: Rest, relaxation: Relaxation, work: Work): Cuts | null {
  let best: Cuts | null = null;
  let bestPrice = Number.POSITIVE_INFINITY;
  const cuts: Cuts[number][] = [];
  for (let rest = from; ; ) {
    const quick = firstFit(job, rest);
    const price = quick ? priceOf(job, barsFor(job, [...cuts, ...quick])) : Number.POSITIVE_INFINITY;
    if (quick && price < bestPrice) {
      best = [...cuts, ...quick];
      bestPrice = price;
    }
    if (isCut(rest) || work.left < 0) return best;
    const relaxed = relaxation.cheapest(rest, work);
    const next = rounded(relaxed, rest, []);
    if (!relaxed.whole || next.now.length === 0) return best;
    cuts.push(...next.now);
    rest = next.rest;
  }
}

/** How many choices a dive may turn away from, and how deep the last of them may lie. */
const MOST_TURNS = 3;
const DEEPEST_TURN = 4;

/**
 * A way to cut all parts from given lengths, by rounding a relaxed plan and what is left of it. Where that ends in vain
 * it begins again without the first filling it took, and so on: the diving with limited discrepancy of Sadykov,
 * Vanderbeck, Pessoa, Tahiri and Uchoa (2019). `null` where none is found.
 */
export function dive(job: Job, from: Rest, relaxation: Relaxation, work: Work): Cuts | null {
  const search = (rest: Rest, depth: number, turnedFrom: readonly Filling[]): Cuts | null => {
    const quick = firstFit(job, rest);
    if (quick || work.left < 0) return quick;
    const relaxed = relaxation.fitting(rest, work);
    if (!relaxed.whole) return null;
    const not = [...turnedFrom];
    for (;;) {
      const { now, rest: next } = rounded(relaxed, rest, not);
      const first = now[0];
      if (!first) return null;
      const then = search(next, depth + 1, not);
      if (then) return [...now, ...then];
      if (not.length === MOST_TURNS || depth === DEEPEST_TURN || work.left < 0) return null;
      not.push(first.filling);
    }
  };
  return search(from, 0, []);
}
