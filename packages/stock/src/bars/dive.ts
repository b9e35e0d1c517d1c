import { firstFit } from './first-fit.ts';
import { type Cuts, type Filling, isCut, type Job, type Rest, timesIn, type Work, without } from './job.ts';
import { barsFor, priceOf } from './plan-price.ts';
import { relax } from './relaxation.ts';

/**
 * A plan by rounding: the whole times of the relaxed plan are cut, or its largest fraction once; what is left is relaxed
 * anew. On the way the rule of thumb tries to finish. Stops at the first plan that costs no more than `enough`.
 */
export function dive(job: Job, from: Rest, known: Filling[], enough: number, work: Work): Cuts | null {
  let best: Cuts | null = null;
  let bestPrice = Number.POSITIVE_INFINITY;
  const offer = (cuts: Cuts) => {
    const price = priceOf(job, barsFor(job, cuts));
    if (price >= bestPrice) return;
    best = cuts;
    bestPrice = price;
  };
  const cuts: { filling: Filling; times: number }[] = [];
  for (let rest = from; ; ) {
    const quick = firstFit(job, rest);
    if (quick) offer([...cuts, ...quick]);
    if (bestPrice <= enough || isCut(rest) || work.left < 0) return best;
    const relaxed = relax(job, rest, known, work);
    if (!relaxed.whole) return best;
    const falling = relaxed.cuts.toSorted((a, b) => b.times - a.times);
    let rounded = false;
    for (const { filling, times } of falling) {
      const whole = Math.min(Math.max(Math.floor(times + 1e-6), rounded ? 0 : 1), timesIn(rest, filling));
      if (whole === 0) continue;
      rounded = true;
      cuts.push({ filling, times: whole });
      rest = without(rest, filling, whole);
    }
    if (!rounded) return best;
  }
}
