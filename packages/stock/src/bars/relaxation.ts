import { bestFilling } from './best-filling.ts';
import { type Filling, type Job, type Rest, timesIn, type Work } from './job.ts';
import { type Column, Simplex } from './simplex.ts';

/** A cutting plan in which fillings may be cut a fraction of a time. */
export interface Relaxed {
  /** Whether it cuts every part. */
  readonly whole: boolean;
  /** The fillings it cuts, and how often. */
  readonly cuts: readonly { readonly filling: Filling; readonly times: number }[];
  /** What one more part of each kind would cost. */
  readonly worths: Float64Array;
  /** What a length of each stock is worth: no filling is worth more, but for rounding. */
  readonly expected: readonly number[];
}

/** Cost of leaving out a part, where a bar of the dearest stock costs 1: more than cutting it would. */
const LEFT_OUT = 20;
const LEAST_GAIN = 1e-7;
const NEARLY_ZERO = 1e-7;

/**
 * The cheapest plan in fractions, by column generation (Gilmore and Gomory 1961): a linear programme over the fillings
 * known so far, whose prices ask for the filling that would help most, until none does. New fillings join `known`.
 */
export function relax(job: Job, rest: Rest, known: Filling[], work: Work): Relaxed {
  const { sizes, stocks } = job;
  const kinds = sizes.map((_, kind) => kind).filter((kind) => (rest.demand[kind] as number) > 0);
  const open = stocks.map((_, stock) => stock).filter((stock) => (rest.lengths[stock] as number) > 0);
  const rowOfKind = new Int32Array(sizes.length);
  for (const [row, kind] of kinds.entries()) rowOfKind[kind] = row;
  const rowOfStock = new Int32Array(stocks.length);
  for (const [i, stock] of open.entries()) rowOfStock[stock] = kinds.length + i;
  const rows = kinds.length + open.length;
  const dearest = Math.max(...stocks.map(({ price, lengths }) => price / lengths));
  const costs = stocks.map(({ price, lengths }) => price / lengths / dearest);

  const simplex = new Simplex(
    [
      ...kinds.map((kind) => rest.demand[kind] as number),
      ...open.map((stock) => rest.lengths[stock] as number),
    ],
    [...kinds.map(() => LEFT_OUT), ...open.map(() => 0)],
  );
  // One part more than asked for is no harm: a column takes it off again.
  for (let row = 0; row < kinds.length; row++) simplex.columns.push({ cost: 0, rows: [row], entries: [-1] });
  const firstFilling = simplex.columns.length;
  const fillings: Filling[] = [];
  const columnOf = ({ stock, kinds, counts }: Filling, cost: number): Column => ({
    cost,
    rows: [...kinds.map((kind) => rowOfKind[kind] as number), rowOfStock[stock] as number],
    entries: [...counts, 1],
  });
  const add = (filling: Filling, cost: number) => {
    fillings.push(filling);
    simplex.columns.push(columnOf(filling, cost));
  };
  for (const filling of known) {
    if (timesIn(rest, filling) > 0) add(filling, costs[filling.stock] as number);
  }

  const worths = new Float64Array(sizes.length);
  const readWorths = () => {
    for (const [row, kind] of kinds.entries()) worths[kind] = Math.max(0, simplex.duals[row] as number);
  };
  const generate = (costOf: (stock: number) => number) => {
    for (;;) {
      const pivots = simplex.optimise(50 * rows);
      work.left -= pivots * (5 + (rows * rows) / 40 + simplex.columns.length / 4);
      readWorths();
      let found = false;
      for (const stock of open) {
        if (work.left < 0) return;
        const { room } = stocks[stock] as Job['stocks'][number];
        const above = costOf(stock) - (simplex.duals[rowOfStock[stock] as number] as number);
        const given = { sizes, demand: rest.demand, room, worths, above, least: LEAST_GAIN, hurried: true };
        const best = bestFilling(given, work);
        if (best.kinds.length === 0) continue;
        const filling = { stock, kinds: best.kinds, counts: best.counts };
        known.push(filling);
        add(filling, costOf(stock));
        found = true;
      }
      if (!found) return;
    }
  };
  const leftOut = () => {
    let sum = 0;
    for (let row = 0; row < rows; row++) {
      if ((simplex.basis[row] as number) < kinds.length) sum += simplex.amounts[row] as number;
    }
    return sum;
  };
  let priced = true;
  generate((stock) => costs[stock] as number);
  if (leftOut() > NEARLY_ZERO) {
    priced = false;
    // Perhaps it cannot be helped: whatever the price, cut as many parts as can be.
    simplex.reprice((column) => (column < kinds.length ? 1 : 0));
    generate(() => 0);
  }
  const cuts: { filling: Filling; times: number }[] = [];
  for (let row = 0; row < rows; row++) {
    const filling = fillings[(simplex.basis[row] as number) - firstFilling];
    const times = simplex.amounts[row] as number;
    if (filling && times > NEARLY_ZERO) cuts.push({ filling, times });
  }
  const expected = stocks.map((_, stock) => {
    const cost = priced ? (costs[stock] as number) : 0;
    return rest.lengths[stock] ? cost - (simplex.duals[rowOfStock[stock] as number] as number) : 0;
  });
  return { whole: leftOut() <= NEARLY_ZERO, cuts, worths, expected };
}
