import type { Job, Work } from './job.ts';
import type { Weights } from './weights.ts';

/** What to buy at the least price that no proof and no refusal rules out. */
export interface Purchase {
  /** Bars of each stock; `null` where none below the price asked about was found. */
  readonly bars: readonly number[] | null;
  /** Nothing cheaper can do. */
  readonly bound: number;
}

/** The cheapest purchase below a price, by branch and bound over how many bars of each stock. */
export function cheapestPurchase(
  { stocks, demand }: Job,
  proofs: readonly Weights[],
  refused: readonly (readonly number[])[],
  below: number,
  work: Work,
): Purchase {
  const total = stocks.length;
  const gives = proofs.map(({ mosts }) =>
    stocks.map(({ lengths }, stock) => lengths * (mosts[stock] as number)),
  );
  const needs = proofs.map(({ weights }) =>
    weights.reduce((sum, w, kind) => sum + w * (demand[kind] as number), 0),
  );
  // Of each proof, the stocks whose weight comes cheapest first.
  const orders = gives.map((give) =>
    stocks
      .map(({ price }, stock) => ({ stock, rate: price / (give[stock] as number) }))
      .sort((a, b) => a.rate - b.rate || a.stock - b.stock)
      .map(({ stock }) => stock),
  );
  /** The least price of what a proof still needs, with stocks from one on, were bars sold by the fraction. */
  const fractions = (i: number, from: number): number => {
    let left = needs[i] as number;
    let price = 0;
    for (const stock of orders[i] as number[]) {
      if (left <= 0) return price;
      if (stock < from) continue;
      const { price: each, limit } = stocks[stock] as Job['stocks'][number];
      const give = (gives[i] as number[])[stock] as number;
      if (give === 0) break;
      const share = Math.min(limit, left / give);
      price += share * each;
      left = share < limit ? 0 : left - limit * give;
    }
    return left > 0 ? Number.POSITIVE_INFINITY : price;
  };
  const bars = stocks.map(() => 0);
  let best: readonly number[] | null = null;
  let bestPrice = below;
  let open = Number.POSITIVE_INFINITY;

  /** Whether these bars hold no more than bars that were too few: stocks stand in falling order of their room. */
  const isRefused = () =>
    refused.some((few) => {
      let [ours, theirs] = [0, 0];
      return stocks.every(({ lengths }, stock) => {
        ours += lengths * (bars[stock] as number);
        theirs += lengths * (few[stock] as number);
        return ours <= theirs;
      });
    });

  const search = (stock: number, price: number): void => {
    work.left -= 1;
    let hope = price;
    for (let i = 0; i < needs.length; i++) hope = Math.max(hope, price + fractions(i, stock));
    // Prices are whole numbers; the rates are not.
    hope = Math.ceil(hope - 1e-6 * Math.max(1, hope * 1e-6));
    if (!(hope < bestPrice)) return;
    if (work.left < 0) {
      open = Math.min(open, hope);
      return;
    }
    if (stock === total) {
      if (isRefused()) return;
      best = [...bars];
      bestPrice = price;
      return;
    }
    const { price: each, limit } = stocks[stock] as Job['stocks'][number];
    // With so many, nothing more is needed; a refusal may still ask for more.
    let enough = 0;
    for (let i = 0; i < needs.length; i++) {
      const give = (gives[i] as number[])[stock] as number;
      if ((needs[i] as number) > 0)
        enough = Math.max(enough, give > 0 ? Math.ceil((needs[i] as number) / give) : 0);
    }
    for (const few of refused) enough = Math.max(enough, few.reduce((sum, n) => sum + n, 0) + 1);
    const affordable = Math.ceil((bestPrice - price) / each) - 1;
    const most = Math.min(limit, enough, Math.max(0, affordable));
    const take = (count: number) => {
      bars[stock] = count;
      for (let i = 0; i < needs.length; i++)
        (needs[i] as number) -= count * ((gives[i] as number[])[stock] as number);
      search(stock + 1, price + count * each);
      for (let i = 0; i < needs.length; i++)
        (needs[i] as number) += count * ((gives[i] as number[])[stock] as number);
    };
    for (let count = most; count >= 0; count--) take(count);
    bars[stock] = 0;
  };
  search(0, 0);
  return { bars: best, bound: Math.min(open, bestPrice) };
}
