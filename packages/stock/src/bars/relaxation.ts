import { bestFilling } from './best-filling.ts';
import { type Filling, type Job, type Rest, timesIn, type Work } from './job.ts';
import { NEGATIVE, Simplex } from './simplex.ts';

/** A cutting plan in which fillings may be cut a fraction of a time. */
export interface Relaxed {
  /** Whether it cuts every part. */
  readonly whole: boolean;
  /** The fillings it cuts, and how often. */
  readonly cuts: readonly { readonly filling: Filling; readonly times: number }[];
  /** What one more part of each kind would cost. */
  readonly worths: Float64Array;
  /** What a length of each stock is worth: no filling is worth more, but for a little. */
  readonly expected: readonly number[];
}

/** Cost of what no plan may have, where a length of the dearest stock costs 1: more than any part can be worth. */
const FORBIDDEN = 20;
const LEAST_GAIN = 1e-7;
const NEARLY_ZERO = 1e-7;

/** The cheapest plan need not be found nearer than this: purchases in between are looked at one by one. */
const PRICE_GAP = 1e-3;

/** The inverse is begun anew after so many pivots, before rounding adds up. */
const MOST_PIVOTS = 3000;

/** A filling this good is taken after so many steps: the best would bring the end little nearer. */
const PATIENCE = 200;

/** What lengths cost, and what it costs to leave out a part of a kind. */
interface Costs {
  readonly ofLength: (stock: number) => number;
  readonly ofLeavingOut: (kind: number) => number;
}

/**
 * Plans in fractions, by column generation (Gilmore and Gomory 1961): a linear programme over the fillings known so far,
 * whose prices ask for the filling that would help most, until none does. One programme serves a whole job: for each rest
 * of it, it goes on from the basis and with the fillings that the last one left.
 */
export class Relaxation {
  private readonly job: Job;
  private readonly fillings: Filling[] = [];
  private readonly prices: readonly number[];
  private simplex: Simplex;

  constructor(job: Job) {
    this.job = job;
    const each = job.stocks.map(({ price, lengths }) => price / lengths);
    const dearest = Math.max(...each);
    this.prices = each.map((price) => price / dearest);
    this.simplex = this.begin();
  }

  /** The cheapest plan for a rest of the job, within `PRICE_GAP`. */
  cheapest(rest: Rest, work: Work): Relaxed {
    const { sizes, stocks } = this.job;
    const ofLength = (stock: number) => this.prices[stock] as number;
    // As if a kind were cut from the stock that suits it best, and no other: near to what its parts will be worth.
    const alone = (kind: number) =>
      stocks.reduce(
        (least, { room }, stock) =>
          Math.min(least, ofLength(stock) / Math.floor(room / (sizes[kind] as number))),
        FORBIDDEN,
      );
    const relaxed = this.solve(rest, { ofLength, ofLeavingOut: alone }, work);
    return relaxed.whole ? relaxed : this.solve(rest, { ofLength, ofLeavingOut: () => FORBIDDEN }, work);
  }

  /** Some plan for a rest of the job, whatever it costs; where it is not whole, its worths prove that there is none. */
  fitting(rest: Rest, work: Work): Relaxed {
    const { sizes, stocks } = this.job;
    const longest = (stocks[0] as Job['stocks'][number]).room;
    return this.solve(
      rest,
      { ofLength: () => 0, ofLeavingOut: (kind) => (sizes[kind] as number) / longest },
      work,
    );
  }

  /** Columns are: to leave out a part of each kind, to leave a length of each stock, to cut a part too many, fillings. */
  private begin(): Simplex {
    const kinds = this.job.sizes.length;
    const simplex = new Simplex(kinds + this.job.stocks.length);
    for (let kind = 0; kind < kinds; kind++) simplex.add({ rows: [kind], entries: [-1] }, 0);
    for (const filling of this.fillings) simplex.add(this.columnOf(filling), 0);
    return simplex;
  }

  private columnOf({ stock, kinds, counts }: Filling) {
    return { rows: [...kinds, this.job.sizes.length + stock], entries: [...counts, 1] };
  }

  private get firstFilling() {
    return 2 * this.job.sizes.length + this.job.stocks.length;
  }

  private solve(rest: Rest, costs: Costs, work: Work): Relaxed {
    const { sizes, stocks } = this.job;
    if (this.simplex.pivots > MOST_PIVOTS) this.simplex = this.begin();
    const { simplex, firstFilling } = this;
    for (let kind = 0; kind < sizes.length; kind++) simplex.costs[kind] = costs.ofLeavingOut(kind);
    for (const [i, filling] of this.fillings.entries()) {
      simplex.costs[firstFilling + i] =
        timesIn(rest, filling) > 0 ? costs.ofLength(filling.stock) : FORBIDDEN;
    }
    simplex.restart([...rest.demand, ...rest.lengths], FORBIDDEN);
    const worths = new Float64Array(sizes.length);
    this.generate(rest, costs, worths, work);
    const { basis, amounts, duals } = simplex;
    const cuts: { filling: Filling; times: number }[] = [];
    for (let row = 0; row < basis.length; row++) {
      const filling = this.fillings[(basis[row] as number) - firstFilling];
      const times = amounts[row] as number;
      if (filling && times > NEARLY_ZERO) cuts.push({ filling, times });
    }
    const expected = stocks.map((_, stock) =>
      rest.lengths[stock] ? costs.ofLength(stock) - (duals[sizes.length + stock] as number) : 0,
    );
    return { whole: this.isWhole(), cuts, worths, expected };
  }

  /** Whether nothing is left out, nor cut that may not be. */
  private isWhole(): boolean {
    const { simplex, firstFilling } = this;
    const { basis, amounts, costs } = simplex;
    const kinds = this.job.sizes.length;
    let sum = 0;
    for (let row = 0; row < basis.length; row++) {
      const column = basis[row] as number;
      const forbidden = column >= firstFilling && costs[column] === FORBIDDEN;
      if (column === NEGATIVE || column < kinds || forbidden) sum += amounts[row] as number;
    }
    return sum <= NEARLY_ZERO;
  }

  /** Lets new fillings in until none helps, or what is known suffices. */
  private generate(rest: Rest, { ofLength }: Costs, worths: Float64Array, work: Work): void {
    const { job, simplex } = this;
    const { sizes, stocks } = job;
    const rows = sizes.length + stocks.length;
    for (let round = 0; ; round++) {
      const before = simplex.pivots;
      simplex.optimise(50 * rows);
      const pivots = simplex.pivots - before;
      work.left -= (pivots + 1) * (5 + (rows * rows) / 30 + simplex.columns.length / 4);
      let needed = 0;
      for (let kind = 0; kind < sizes.length; kind++) {
        worths[kind] = Math.max(0, simplex.duals[kind] as number);
        needed += (worths[kind] as number) * (rest.demand[kind] as number);
      }
      const whole = this.isWhole();
      const priced = ofLength(0) > 0;
      if (whole && !priced) return;
      // New fillings that do not enter: no more can be had from numbers of this precision.
      if (round > 0 && pivots === 0) return;
      let found = false;
      let given = 0;
      let dearness = 0;
      for (let stock = 0; stock < stocks.length; stock++) {
        if (rest.lengths[stock] === 0) continue;
        const above = ofLength(stock) - (simplex.duals[sizes.length + stock] as number);
        const most = this.addBest(rest, stock, ofLength(stock), { worths, above }, work);
        if (work.left < 0) return;
        found ||= most > above;
        given += (rest.lengths[stock] as number) * most;
        dearness = Math.max(dearness, most / (this.prices[stock] as number));
      }
      if (!found) return;
      // All lengths together hold less than is needed (a proof for any worths), or the bound of Farley (1990) is near.
      if (priced ? whole && dearness < 1 + PRICE_GAP : given < needed * (1 - LEAST_GAIN)) return;
    }
  }

  /**
   * Adds the best filling of a stock, if it is worth enough, then the best of the parts that are not in it, and so on:
   * fillings that go together, after Ghoniem and Sherali (2009). Gives what no filling is worth more than.
   */
  private addBest(
    rest: Rest,
    stock: number,
    cost: number,
    { worths, above }: { readonly worths: Float64Array; readonly above: number },
    work: Work,
  ): number {
    const { sizes, stocks } = this.job;
    const { room } = stocks[stock] as Job['stocks'][number];
    const demand = rest.demand.slice();
    const asked = { sizes, demand, room, worths, above, least: LEAST_GAIN, patience: PATIENCE };
    const first = bestFilling(asked, work);
    for (let best = first; best.kinds.length > 0 && work.left >= 0; best = bestFilling(asked, work)) {
      const filling = { stock, kinds: best.kinds, counts: best.counts };
      this.fillings.push(filling);
      this.simplex.add(this.columnOf(filling), cost);
      for (const [i, kind] of best.kinds.entries()) (demand[kind] as number) -= best.counts[i] as number;
    }
    return first.bound;
  }
}
