/** Some boards, by their places in the list, and what they cost. */
export interface PricedSet {
  readonly members: readonly number[];
  readonly price: number;
}

/** Every set of boards but the empty one, the cheapest first. */
export function* setsByPrice(prices: readonly number[]): Generator<PricedSet> {
  const order = prices.map((price, index) => ({ price, index })).sort((a, b) => a.price - b.price);
  // Each set comes from the one that lacks its dearest board, or that has the next cheaper one instead.
  const waiting: { price: number; ranks: number[] }[] = [];
  function wait(ranks: number[]): void {
    const price = ranks.reduce((sum, rank) => sum + (order[rank]?.price as number), 0);
    let [low, high] = [0, waiting.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((waiting[middle]?.price as number) > price) low = middle + 1;
      else high = middle;
    }
    waiting.splice(low, 0, { price, ranks });
  }
  wait([0]);
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { price, ranks } = next;
    yield { price, members: ranks.map((rank) => order[rank]?.index as number).sort((a, b) => a - b) };
    const following = (ranks.at(-1) as number) + 1;
    if (following < order.length) {
      wait([...ranks, following]);
      wait([...ranks.slice(0, -1), following]);
    }
  }
}
