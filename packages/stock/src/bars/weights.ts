import { bestFilling } from './best-filling.ts';
import type { Job, Rest, Work } from './job.ts';

/** Weights are whole numbers up to about this, the 30th power of two: sums of them are exact. */
const SCALE = 1_073_741_824;

/** Worths that are all less than this weigh next to nothing, not all there is. */
const LEAST_WORTH = 1e-12;

/**
 * A proof of what cannot be cut, in whole numbers: each kind of part weighs something, and no filling of a length of a
 * stock weighs more than the most of that stock. Where all parts together weigh more than all lengths can hold, they
 * cannot be cut from them.
 */
export interface Weights {
  readonly weights: Float64Array;
  /** Most that one length of each stock can hold. */
  readonly mosts: readonly number[];
  /** Largest weight for its length among the kinds from each one on. */
  readonly densest: Float64Array;
}

/** After so many steps a simpler question is asked; after so many the bound that stands is taken. */
const FEW_STEPS = 5000;
const MANY_STEPS = 200_000;

/** Densities for a proof whose mosts are known. */
function withMosts({ sizes }: Job, weights: Float64Array, mosts: readonly number[]): Weights {
  const densest = new Float64Array(sizes.length + 1);
  for (let kind = sizes.length - 1; kind >= 0; kind--) {
    const density = (weights[kind] as number) / (sizes[kind] as number);
    densest[kind] = Math.max(densest[kind + 1] as number, density);
  }
  return { weights, mosts, densest };
}

/**
 * Whole weights in proportion to worths, and what each stock can hold of them. Where that is hard to find, what the
 * stock is expected to hold is proven instead.
 */
export function weightsOf(
  job: Job,
  rest: Rest,
  { worths, expected }: { readonly worths: Float64Array; readonly expected: readonly number[] },
  work: Work,
): Weights {
  const scale = SCALE / Math.max(...worths, LEAST_WORTH);
  const weights = worths.map((worth) => Math.floor(worth * scale));
  const { sizes, stocks } = job;
  const mosts = stocks.map(({ room }, stock) => {
    if ((rest.lengths[stock] as number) === 0) return 0;
    const boundAbove = (above: number, steps: number) => {
      const some = { left: steps };
      const given = { sizes, demand: rest.demand, room, worths: weights, above, least: 0.999 };
      const { bound } = bestFilling(given, some);
      work.left -= steps - some.left;
      return { bound: Math.ceil(bound), ranOut: some.left < 0 };
    };
    const found = boundAbove(0, FEW_STEPS);
    if (!found.ranOut) return found.bound;
    const hope = (expected[stock] as number) * scale;
    return Math.min(found.bound, boundAbove(hope < found.bound ? Math.ceil(hope) : 0, MANY_STEPS).bound);
  });
  return withMosts(job, weights, mosts);
}

/** The parts weighed by their length: what does not fit by length alone. */
export function materialWeights(job: Job): Weights {
  const rooms = job.stocks.map(({ room }) => room);
  return withMosts(job, Float64Array.from(job.sizes), rooms);
}

/** By how much what the lengths can hold outweighs the parts; below 0 the parts cannot be cut from them. */
export function spare({ weights, mosts }: Weights, { demand, lengths }: Rest): number {
  let sum = 0;
  for (let stock = 0; stock < mosts.length; stock++) {
    sum += (mosts[stock] as number) * (lengths[stock] as number);
  }
  for (let kind = 0; kind < weights.length; kind++) {
    sum -= (weights[kind] as number) * (demand[kind] as number);
  }
  return sum;
}
