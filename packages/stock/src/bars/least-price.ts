import { dive } from './dive.ts';
import { firstFit } from './first-fit.ts';
import { type Cuts, type Filling, type Job, restOf, type Work } from './job.ts';
import { pack } from './packing.ts';
import { barsFor, priceOf } from './plan-price.ts';
import { cheapestPurchase } from './purchase.ts';
import { relax } from './relaxation.ts';
import { tighten } from './tighten.ts';
import { materialWeights, spare, type Weights, weightsOf } from './weights.ts';

/** The cheapest plan found, and what no plan can cost less than. */
export interface LeastPrice {
  /** `null` where none was found. */
  readonly cuts: Cuts | null;
  /** Infinity where it is proven that no plan exists. */
  readonly bound: number;
}

/** More kinds of part than this are cut by the rule of thumb alone. */
const MOST_KINDS = 300;

/** Steps to see what the least price may be, before a first plan is made by rounding. */
const FIRST_LOOK = 100_000;

/**
 * The plan of least price. What may be bought is asked in order of price: where the parts cannot be cut from it, the
 * proof in weights, or the refusal itself, rules out more than that one purchase, until the first one that will do.
 */
export function leastPrice(given: Job, work: Work): LeastPrice {
  const exact = given.sizes.length <= MOST_KINDS;
  const job = exact ? tighten(given, work) : given;
  const parts = job.demand.reduce((sum, count) => sum + count, 0);
  const all = restOf(
    job,
    job.stocks.map(({ limit }) => Math.min(limit, parts)),
  );
  const known: Filling[] = [];
  const proofs: Weights[] = [materialWeights(job)];
  let best: Cuts | null = firstFit(job, all);
  let bestPrice = best ? priceOf(job, barsFor(job, best)) : Number.POSITIVE_INFINITY;
  const offer = (cuts: Cuts | null) => {
    const price = cuts ? priceOf(job, barsFor(job, cuts)) : Number.POSITIVE_INFINITY;
    if (price >= bestPrice) return;
    best = cuts;
    bestPrice = price;
  };
  if (exact) {
    proofs.push(weightsOf(job, all, relax(job, all, known, work), work));
    // Thousands of bars of many stocks would take all the work, and leave none to round a plan.
    const look = { left: Math.min(FIRST_LOOK, work.left) };
    const { bound } = cheapestPurchase(job, proofs, [], bestPrice, look);
    if (bound < bestPrice) offer(dive(job, all, known, bound, work));
  }
  const refused: (readonly number[])[] = [];
  for (;;) {
    const { bars, bound } = cheapestPurchase(job, proofs, refused, bestPrice, work);
    if (!bars || !exact || work.left < 0) return { cuts: best, bound };
    const rest = restOf(job, bars);
    const proof = weightsOf(job, all, relax(job, rest, known, work), work);
    if (spare(proof, rest) < 0) {
      proofs.push(proof);
      continue;
    }
    const packed = pack(job, rest, proofs, known, work);
    if (packed === 'undecided') return { cuts: best, bound };
    if (packed) offer(packed);
    else refused.push(bars);
  }
}
