import { bestFilling } from './best-filling.ts';
import type { Job, Rest, Work } from './job.ts';

/** Weights are whole numbers up to about this: sums of them are exact. */
const SCALE = 2 ** 30;

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

/** A stock that is hard to fill to the last tick is taken to be filled so, after this many steps. */
const MOST_STEPS = 50_000;

function proofOf({ sizes, stocks }: Job, rest: Rest, weights: Float64Array, work: Work): Weights {
  const mosts = stocks.map(({ room }, stock) => {
    if ((rest.lengths[stock] as number) === 0) return 0;
    const given = { sizes, demand: rest.demand, room, worths: weights, least: 0.999 };
    const some = { left: MOST_STEPS };
    const { bound } = bestFilling(given, some);
    work.left -= MOST_STEPS - some.left;
    return Math.ceil(bound);
  });
  const densest = new Float64Array(sizes.length + 1);
  for (let kind = sizes.length - 1; kind >= 0; kind--) {
    const density = (weights[kind] as number) / (sizes[kind] as number);
    densest[kind] = Math.max(densest[kind + 1] as number, density);
  }
  return { weights, mosts, densest };
}

/** Whole weights in proportion to worths, and what each stock can hold of them. */
export function weightsOf(job: Job, rest: Rest, worths: ArrayLike<number>, work: Work): Weights {
  const largest = Math.max(...Array.from(worths));
  const scale = largest > 0 ? SCALE / largest : 0;
  const weights = Float64Array.from(worths, (worth) => Math.floor(Math.max(0, worth) * scale));
  return proofOf(job, rest, weights, work);
}

/** The parts weighed by their length: what does not fit by length alone. */
export const materialWeights = (job: Job, rest: Rest, work: Work): Weights =>
  proofOf(job, rest, Float64Array.from(job.sizes), work);

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
