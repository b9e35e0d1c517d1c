/** Sets of boards kept in mind; above that, neighbours are taken for one that is better than both. */
const MOST_SETS = 1024;

/** Boards that together hold more than any cheaper set of them. */
export interface BoardSet {
  readonly capacity: number;
  readonly price: number;
  /** The last of them in the list of boards, and the others; `null` where there is none. */
  readonly members: { readonly index: number; readonly others: BoardSet['members'] } | null;
}

/** Only those that no cheaper set equals, the smallest first. */
function undominated(sets: readonly BoardSet[]): BoardSet[] {
  const kept: BoardSet[] = [];
  for (const one of [...sets].sort((a, b) => b.capacity - a.capacity || a.price - b.price)) {
    if (one.price < (kept.at(-1)?.price ?? Number.POSITIVE_INFINITY)) kept.push(one);
  }
  kept.reverse();
  if (kept.length <= MOST_SETS) return kept;
  return kept.flatMap((one, i) => {
    if (i % 2) return [];
    return [{ ...(kept[i + 1] ?? one), price: one.price }];
  });
}

/** Least price of boards from `from` on in the list that together hold so much; Infinity where all of them do not. */
export type LeastPrice = (from: number, capacity: number) => number;

/** For each board in the list, the sets of it and those after it that hold most for their price, the smallest first. */
export function boardSets(capacities: readonly number[], prices: readonly number[]): BoardSet[][] {
  const suffixes: BoardSet[][] = [[{ capacity: 0, price: 0, members: null }]];
  for (let i = capacities.length - 1; i >= 0; i -= 1) {
    const later = suffixes[0] as BoardSet[];
    const withThis = later.map(({ capacity, price, members }) => ({
      capacity: capacity + (capacities[i] as number),
      price: price + (prices[i] as number),
      members: { index: i, others: members },
    }));
    suffixes.unshift(undominated([...later, ...withThis]));
  }
  return suffixes;
}

/** Least price of whole boards by what they must hold. */
export function leastPriceOf(suffixes: readonly (readonly BoardSet[])[]): LeastPrice {
  return (from, capacity) => {
    const sets = suffixes[from] as readonly BoardSet[];
    let [low, high] = [0, sets.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((sets[middle] as BoardSet).capacity >= capacity) high = middle;
      else low = middle + 1;
    }
    return sets[low]?.price ?? Number.POSITIVE_INFINITY;
  };
}
