import { plusZero, requireFields, requireInputs, requireThat } from '@scantling/rules';
import { inSteps } from './whole-numbers.ts';

const limits = {
  volumeMl: { min: 1, max: 200_000, integer: true },
  eachPrice: { min: 0, max: 1_000_000 },
} as const;

/** A size of container that is sold. */
export interface ContainerSize {
  /** As its label says, whole mL, 1 to 200 000. */
  readonly volumeMl: number;
  /** What one costs, in any one currency, 0 to 1 000 000 with at most two decimals. */
  readonly eachPrice: number;
}

export interface BuyFinishInput {
  /** mL, 0 to 200 000. */
  readonly neededMl: number;
  /** 1 to 20 sizes. */
  readonly sizes: readonly ContainerSize[];
}

/** How many to buy of one size. */
export interface BoughtSize extends ContainerSize {
  readonly count: number;
}

export interface BuyFinish {
  /** How many of each size, in the order given; 0 for those that are left on the shelf. */
  readonly buy: readonly BoughtSize[];
  readonly totalPrice: number;
  /** All that is bought, mL. */
  readonly volumeMl: number;
  /** What is not needed of it, mL. */
  readonly leftMl: number;
}

/**
 * Containers that hold enough at the least price. Among those that cost the same it takes what leaves the least over,
 * and then the fewest. It is the least there is, not a guess: every need in whole millilitres up to the one asked for
 * is solved from the smaller ones.
 *
 * @throws RangeError where an input is outside its limits.
 * Source: the covering problem of dynamic programming.
 * @example
 * ```ts
 * import { buyFinish } from '@scantling/finishing';
 * const sizes = [{ volumeMl: 250, eachPrice: 9 }, { volumeMl: 750, eachPrice: 19.5 }, { volumeMl: 2500, eachPrice: 55 }];
 * const { buy, totalPrice, leftMl } = buyFinish({ neededMl: 1600, sizes });
 * [totalPrice, leftMl] // => [48, 150]
 * buy.map(({ count }) => count) // => [1, 2, 0]
 * ```
 */
export function buyFinish(input: BuyFinishInput): BuyFinish {
  requireInputs('buyFinish', input, { neededMl: { min: 0, max: 200_000 } });
  const { sizes } = input;
  requireThat(
    'buyFinish',
    Array.isArray(sizes) && sizes.length >= 1 && sizes.length <= 20,
    `sizes to be a list of 1 to 20, got ${sizes?.length}`,
  );
  // Whole hundredths, so that prices add up without rounding.
  const hundredths = sizes.map((size, i) => {
    requireFields('buyFinish', `sizes[${i}]`, size, limits);
    const steps = inSteps(size.eachPrice, 2);
    requireThat(
      'buyFinish',
      steps !== null,
      `sizes[${i}].eachPrice of at most two decimals, got ${size.eachPrice}`,
    );
    return steps as number;
  });
  const neededMl = Math.ceil(input.neededMl);
  const price = new Float64Array(neededMl + 1);
  const volume = new Float64Array(neededMl + 1);
  const containers = new Float64Array(neededMl + 1);
  const last = new Uint8Array(neededMl + 1);
  for (let need = 1; need <= neededMl; need++) {
    price[need] = Number.POSITIVE_INFINITY;
    for (const [i, { volumeMl }] of sizes.entries()) {
      const rest = Math.max(0, need - volumeMl);
      const costs = (price[rest] as number) + (hundredths[i] as number);
      const holds = (volume[rest] as number) + volumeMl;
      const count = (containers[rest] as number) + 1;
      const better =
        costs - (price[need] as number) ||
        holds - (volume[need] as number) ||
        count - (containers[need] as number);
      if (!(better < 0)) continue;
      price[need] = costs;
      volume[need] = holds;
      containers[need] = count;
      last[need] = i;
    }
  }
  const counts = sizes.map(() => 0);
  for (let need = neededMl; need > 0; ) {
    const i = last[need] as number;
    counts[i] = (counts[i] as number) + 1;
    need = Math.max(0, need - (sizes[i] as ContainerSize).volumeMl);
  }
  const volumeMl = volume[neededMl] as number;
  return {
    buy: sizes.map(({ volumeMl, eachPrice }, i) => ({
      volumeMl,
      eachPrice: plusZero(eachPrice),
      count: counts[i] as number,
    })),
    totalPrice: (price[neededMl] as number) / 100,
    volumeMl,
    leftMl: volumeMl - input.neededMl,
  };
}
