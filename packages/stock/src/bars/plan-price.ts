import type { Cuts, Job } from './job.ts';

/** Bars to buy of each stock for a plan. */
export function barsFor({ stocks }: Job, cuts: Cuts): number[] {
  const lengths = stocks.map(() => 0);
  for (const { filling, times } of cuts) (lengths[filling.stock] as number) += times;
  return lengths.map((count, stock) => Math.ceil(count / (stocks[stock]?.lengths ?? 1)));
}

/** Price of so many bars of each stock. */
export const priceOf = ({ stocks }: Job, bars: ArrayLike<number>): number =>
  stocks.reduce((sum, { price }, stock) => sum + price * (bars[stock] as number), 0);
