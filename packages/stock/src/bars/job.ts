/** A cutting job in whole numbers: lengths in ticks, each part with the saw cut that follows it. */
export interface Job {
  /** Length of each kind of part and one saw cut, falling. */
  readonly sizes: readonly number[];
  /** How many of each kind. */
  readonly demand: readonly number[];
  readonly stocks: readonly Stock[];
}

/** A bar that is sold, and what is carried home of it. */
export interface Stock {
  /** What parts and saw cuts may take of each length carried home; one cut longer, as the last part needs none. */
  readonly room: number;
  /** Lengths carried home of one bar. */
  readonly lengths: number;
  /** Price of one bar, a whole number. */
  readonly price: number;
  /** Bars that may be bought. */
  readonly limit: number;
}

/** Parts that are cut from one length of stock. */
export interface Filling {
  /** Which stock. */
  readonly stock: number;
  /** Kinds of part, rising. */
  readonly kinds: readonly number[];
  /** How many of each of them. */
  readonly counts: readonly number[];
}

/** Counts what the work costs, in steps of about the same time, and says when it is enough. */
export interface Work {
  left: number;
}

/** How many of each kind a job has left, and how many lengths of each stock. */
export interface Rest {
  readonly demand: Int32Array;
  readonly lengths: Int32Array;
}

/** What a job has before the first cut, with so many bars of each stock. */
export const restOf = ({ demand, stocks }: Job, bars: ArrayLike<number>): Rest => ({
  demand: Int32Array.from(demand),
  lengths: Int32Array.from(stocks, ({ lengths }, stock) => lengths * (bars[stock] as number)),
});

/** What is left once a filling has been cut so many times. */
export function without({ demand, lengths }: Rest, filling: Filling, times: number): Rest {
  const rest = { demand: demand.slice(), lengths: lengths.slice() };
  (rest.lengths[filling.stock] as number) -= times;
  for (const [i, kind] of filling.kinds.entries()) {
    (rest.demand[kind] as number) -= times * (filling.counts[i] as number);
  }
  return rest;
}

/** How many times a filling can be cut from what is left. */
export function timesIn({ demand, lengths }: Rest, { stock, kinds, counts }: Filling): number {
  let times = lengths[stock] as number;
  for (let i = 0; i < kinds.length; i++) {
    times = Math.min(times, Math.floor((demand[kinds[i] as number] as number) / (counts[i] as number)));
  }
  return times;
}

/** Whether every part has been cut. */
export const isCut = ({ demand }: Rest): boolean => demand.every((count) => count === 0);

/** Fillings, and how often each is cut. */
export type Cuts = readonly { readonly filling: Filling; readonly times: number }[];
