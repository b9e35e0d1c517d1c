import { type Cuts, type Filling, type Job, type Rest, timesIn } from './job.ts';

/** Fills one length, the longest part that fits first; `nextOf` leaps over kinds that are used up. */
function fill(
  { sizes }: Job,
  demand: Int32Array,
  stock: number,
  room: number,
  nextOf: (kind: number) => number,
) {
  const kinds: number[] = [];
  const counts: number[] = [];
  let roomLeft = room;
  for (let kind = nextOf(0); kind < sizes.length; ) {
    const size = sizes[kind] as number;
    if (size > roomLeft) {
      // The first kind that is no longer than what is left.
      let [low, high] = [kind + 1, sizes.length];
      while (low < high) {
        const middle = (low + high) >> 1;
        if ((sizes[middle] as number) > roomLeft) low = middle + 1;
        else high = middle;
      }
      kind = nextOf(low);
      continue;
    }
    const count = Math.min(demand[kind] as number, Math.floor(roomLeft / size));
    kinds.push(kind);
    counts.push(count);
    roomLeft -= count * size;
    kind = nextOf(kind + 1);
  }
  return { filling: { stock, kinds, counts } satisfies Filling, filled: room - roomLeft };
}

/**
 * A plan by the rule of thumb: fill one length after another, the longest part that fits first, each time of the stock
 * whose filling comes cheapest for its length. `null` where the lengths run out.
 */
export function firstFit(job: Job, from: Rest): Cuts | null {
  const { sizes, stocks } = job;
  // After each kind, the next of which some are left.
  const next = Int32Array.from({ length: sizes.length + 1 }, (_, kind) => kind);
  const rest = { demand: from.demand.slice(), lengths: from.lengths.slice() };
  const nextOf = (kind: number): number => {
    let at = kind;
    while (at < sizes.length && rest.demand[at] === 0) at = Math.max(at + 1, next[at] as number);
    for (let i = kind; i < at; ) {
      const leap = Math.max(i + 1, next[i] as number);
      next[i] = at;
      i = leap;
    }
    return at;
  };
  const cuts: { filling: Filling; times: number }[] = [];
  for (let first = nextOf(0); first < sizes.length; first = nextOf(0)) {
    let best: ReturnType<typeof fill> | null = null;
    let bestPrice = Number.POSITIVE_INFINITY;
    for (const [stock, { room, price, lengths }] of stocks.entries()) {
      if (rest.lengths[stock] === 0 || (sizes[first] as number) > room) continue;
      const filled = fill(job, rest.demand, stock, room, nextOf);
      const pricePerLength = price / lengths / filled.filled;
      if (pricePerLength >= bestPrice) continue;
      bestPrice = pricePerLength;
      best = filled;
    }
    if (!best) return null;
    const times = timesIn(rest, best.filling);
    const { stock, kinds, counts } = best.filling;
    (rest.lengths[stock] as number) -= times;
    for (const [i, kind] of kinds.entries()) (rest.demand[kind] as number) -= times * (counts[i] as number);
    cuts.push({ filling: best.filling, times });
  }
  return cuts;
}
