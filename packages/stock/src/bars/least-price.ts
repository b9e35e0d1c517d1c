import { dive, roundCheapest } from './dive.ts';
import { fillUp } from './fill-up.ts';
import { firstFit } from './first-fit.ts';
import { type Cuts, type Job, restOf, type Work } from './job.ts';
import { type Packed, pack } from './packing.ts';
import { barsFor, priceOf } from './plan-price.ts';
import { cheapestPurchase } from './purchase.ts';
import { Relaxation } from './relaxation.ts';
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

/** Steps for the first look at what to buy: thousands of bars of many stocks would take all the work there is. */
const FIRST_LOOK = 100_000;

const ROUNDING_SHARE = 10;

/**
 * The plan of least price. What may be bought is asked in order of price: where the parts cannot be cut from it, the
 * proof in weights, or the refusal itself, rules out more than that one purchase, until the first one that will do.
 * The weights of a proof are the prices that a relaxed plan puts on the parts (a cut of Benders, 1962).
 */
export function leastPrice(given: Job, work: Work): LeastPrice {
  const exact = given.sizes.length <= MOST_KINDS;
  const job = exact ? tighten(given, work) : given;
  const all = restOf(
    job,
    job.stocks.map(({ limit }) => limit),
  );
  const proofs: Weights[] = [materialWeights(job)];
  const refused: (readonly number[])[] = [];
  let best: Cuts | null = firstFit(job, all);
  let bestPrice = best ? priceOf(job, barsFor(job, best)) : Number.POSITIVE_INFINITY;
  const offer = (cuts: Cuts | null) => {
    const price = cuts ? priceOf(job, barsFor(job, cuts)) : Number.POSITIVE_INFINITY;
    if (price >= bestPrice) return;
    best = cuts;
    bestPrice = price;
  };
  if (!exact) return { cuts: best, bound: cheapestPurchase(job, proofs, refused, bestPrice, work).bound };

  // Kept back, so that where the work runs out there is still a plan by rounding.
  const rounding = { left: work.left / ROUNDING_SHARE };
  work.left -= rounding.left;
  const relaxation = new Relaxation(job);
  // What the cheapest plan for all bars proves tells most, but takes longer than to see that it is not asked for.
  const proveOnce = () => {
    if (proofs.length === 1) proofs.push(weightsOf(job, all, relaxation.cheapest(all, work), work));
  };
  const look = { left: Math.min(FIRST_LOOK, work.left) };
  let { bars, bound } = cheapestPurchase(job, proofs, refused, bestPrice, look);
  if (look.left < 0) {
    proveOnce();
    offer(roundCheapest(job, all, relaxation, rounding));
    ({ bars, bound } = cheapestPurchase(job, proofs, refused, bestPrice, work));
  }
  while (bars && work.left >= 0) {
    const rest = restOf(job, bars);
    const full = fillUp(job, rest, work);
    const relaxed = full ? null : relaxation.fitting(rest, work);
    const proof = relaxed && !relaxed.whole ? weightsOf(job, all, relaxed, work) : null;
    if (proof && spare(proof, rest) < 0) {
      proveOnce();
      proofs.push(proof);
    } else {
      let packed: Packed = full ?? dive(job, rest, relaxation, work);
      if (!packed) {
        proveOnce();
        packed = pack(job, rest, { proofs, relaxation }, work);
      }
      if (packed === 'undecided') break;
      if (packed) offer(packed);
      else refused.push(bars);
      if (bestPrice <= bound) break;
    }
    ({ bars, bound } = cheapestPurchase(job, proofs, refused, bestPrice, work));
  }
  if (bestPrice > bound && rounding.left >= 0) offer(roundCheapest(job, all, relaxation, rounding));
  return { cuts: best, bound };
}
