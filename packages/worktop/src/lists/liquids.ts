import { type BoughtSize, buyFinish } from '@scantling/finishing';
import type { Computed } from '../result.ts';

/** A liquid of the finish, and the containers to buy. */
export interface LiquidPurchase {
  readonly name: string;
  readonly neededMl: number;
  readonly onHandMl: number;
  /** What has to be bought, mL; 0 where there is enough. */
  readonly missingMl: number;
  /** Sizes that are bought; `null` where something is missing and the plan names no container of it. */
  readonly buy: readonly BoughtSize[] | null;
  readonly totalPrice: number;
  /** What stays over of all there is then, mL. */
  readonly leftMl: number;
}

/** Most that `buyFinish` buys at once, mL. */
const MOST_ML = 200_000;

/** Containers of each liquid that is short, at the least price; the price is the least there is. */
export const liquidPurchases = ({ plan, finish }: Pick<Computed, 'plan' | 'finish'>): LiquidPurchase[] =>
  finish.mix.map(({ name, volumeMl, onHandMl }) => {
    const missingMl = Math.max(0, volumeMl - onHandMl);
    const known = { name, neededMl: volumeMl, onHandMl, missingMl };
    const sizes = (plan.stock?.containers ?? [])
      .filter(({ liquid }) => liquid === name)
      .map(({ volumeMl, eachPrice }) => ({ volumeMl, eachPrice }));
    if (missingMl === 0) return { ...known, buy: [], totalPrice: 0, leftMl: onHandMl - volumeMl };
    if (sizes.length === 0 || missingMl > MOST_ML) return { ...known, buy: null, totalPrice: 0, leftMl: 0 };
    const bought = buyFinish({ neededMl: missingMl, sizes });
    return {
      ...known,
      buy: bought.buy.filter(({ count }) => count > 0),
      totalPrice: bought.totalPrice,
      leftMl: bought.leftMl,
    };
  });
