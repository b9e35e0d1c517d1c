import { requireThat } from '@scantling/rules';
import { checkCutBars } from './bars/check.ts';
import { keepLongestOffcut } from './bars/keep-offcut.ts';
import { leastPrice } from './bars/least-price.ts';
import { countJob, inMoney, tooFew } from './bars/measure.ts';
import { nameParts } from './bars/name-parts.ts';
import { barsFor, priceOf } from './bars/plan-price.ts';

/** Parts of one length to be cut. */
export interface BarPart {
  readonly name: string;
  /** Finished length, mm, 0.1 to 100 000. */
  readonly lengthMm: number;
  /** How many, 1 to 100 000. */
  readonly count: number;
}

/** Bars of one length that can be bought. */
export interface StockBar {
  /** Unlike that of every other bar. */
  readonly name: string;
  /** mm, 1 to 100 000. */
  readonly lengthMm: number;
  /** Price of one, in any one currency, 0.01 to 1 000 000; counted in ten-thousandths. */
  readonly eachPrice: number;
  /** How many there are, 0 to 100 000; left out, as many as are needed. */
  readonly count?: number;
}

export interface CutBarsInput {
  /** 1 to 100 000 rows, no more than 100 000 parts. */
  readonly parts: readonly BarPart[];
  /** 1 to 20 rows, each of a name of its own. */
  readonly bars: readonly StockBar[];
  /** Width of a saw cut, mm, 0 to 50. */
  readonly kerfMm: number;
  /** What comes off each end of a bar before it is used, that saw cut included, mm, 0 to 1000. */
  readonly endTrimMm: number;
  /**
   * Longest piece that can be carried home, mm, 1 to 100 000; left out, any. A longer bar is cut by the yard into equal
   * lengths: a part longer than these is refused, though it may itself fit the bar and the transport.
   */
  readonly longestCarriedMm?: number;
}

/** One part, and where it lies. */
export interface CutPiece {
  readonly name: string;
  /** mm. */
  readonly lengthMm: number;
  /** From the end of the carried length to the near end of the piece, mm. */
  readonly startMm: number;
}

/** Carried lengths that are cut alike. */
export interface CutBar {
  /** Name of the stock. */
  readonly name: string;
  /** Length as carried home, mm: the whole bar, or one of the equal lengths that the yard cuts it into. */
  readonly lengthMm: number;
  /** How many are cut so. */
  readonly count: number;
  /** Longest piece first. */
  readonly pieces: readonly CutPiece[];
  /** What is left after the last saw cut, short of the far trim, mm. */
  readonly offcutMm: number;
}

/** Bars to buy of one stock. */
export interface BoughtBar {
  readonly name: string;
  /** As sold, mm. */
  readonly lengthMm: number;
  readonly count: number;
  /** Equal lengths that the yard cuts each bar into; 1 where it is carried whole. */
  readonly carriedCount: number;
}

export interface CutBars {
  /** What to buy, the longest first. */
  readonly buy: readonly BoughtBar[];
  /** How to cut it; a carried length that stays whole is there with no pieces. */
  readonly bars: readonly CutBar[];
  /** Price of all that is bought. */
  readonly totalPrice: number;
  /** No plan costs less than this. */
  readonly boundPrice: number;
  /** Whether the price is proven to be the least: the bound meets it. */
  readonly proven: boolean;
  /** The longest offcut, mm. */
  readonly longestOffcutMm: number;
}

/** Steps of work for the price, about a second on a common machine of 2025, and for the offcut, about a millisecond. */
const PRICE_STEPS = 10_000_000;
const OFFCUT_STEPS = 3000;

/** More parts than this are not cut anew for a longer offcut. */
const MOST_PARTS_FOR_OFFCUT = 200;

/**
 * How to cut parts from bars at the least price, and the proof. Parts of one length are told apart only by name.
 *
 * Between two pieces goes one saw cut; a last piece that ends where the bar (or its far trim) ends needs none, and a
 * remainder narrower than a cut is lost in it. A bar longer than can be carried is cut by the yard, at its saw's
 * same width, into the fewest equal lengths that can be; each is trimmed at both ends like a bar, and paid for with
 * the whole bar; the proof is for these equal lengths, and unequal ones might do with less. Lengths are counted in
 * nanometres, parts, cuts and trims rounded up, bars down.
 *
 * The price is proven: purchases are taken in order of price, and each that is passed over is refuted by weights of
 * the parts that no bar can hold enough of, or by trying every way. The work allowed, at most about a second, proves
 * nearly every job of 60 parts, of any number of lengths, most of them in milliseconds. Where it runs out, the plan is the best found, and
 * `boundPrice` says how far it may be from the least. Of up to 200 parts it then moves pieces between bars to keep the
 * longest single offcut it finds; that is not proven. The order of parts and bars does not matter.
 *
 * @throws RangeError where a field is missing or outside its limits, where a part is longer than any bar can give, and
 *   where the bars that there are do not suffice.
 * Source: column generation after Gilmore and Gomory (1961), A linear programming approach to the cutting-stock problem.
 * @example
 * ```ts
 * import { cutBars } from '@scantling/stock';
 * const plan = cutBars({
 *   parts: [{ name: 'leg', lengthMm: 860, count: 4 }, { name: 'rail', lengthMm: 1400, count: 2 }],
 *   bars: [{ name: 'tube 6 m', lengthMm: 6000, eachPrice: 42 }, { name: 'tube 3 m', lengthMm: 3000, eachPrice: 25 }],
 *   ...{ kerfMm: 3, endTrimMm: 0 },
 * });
 * // 4 × 860 + 2 × 1400 = 6240 mm: one bar of 6 m is too short, and 42 + 25 is less than 2 × 42 or 3 × 25.
 * [plan.totalPrice, plan.boundPrice, plan.proven] // => [67, 67, true]
 * plan.buy.map(({ name, count }) => `${count} × ${name}`) // => ['1 × tube 6 m', '1 × tube 3 m']
 * ```
 */
export function cutBars(input: CutBarsInput): CutBars {
  checkCutBars(input);
  const counted = countJob(input);
  const { job, carried } = counted;
  const { cuts, bound } = leastPrice(job, { left: PRICE_STEPS });
  requireThat(
    'cutBars',
    cuts !== null,
    bound === Number.POSITIVE_INFINITY
      ? `bars enough for all parts, got too few: ${tooFew(counted)}`
      : 'bars with more to spare, got so few that no way to cut all parts was found, nor a proof that there is none',
  );
  const plan = cuts as NonNullable<typeof cuts>;
  const parts = job.demand.reduce((sum, count) => sum + count, 0);
  const kept = parts > MOST_PARTS_FOR_OFFCUT ? plan : keepLongestOffcut(job, plan, { left: OFFCUT_STEPS });
  const bought = barsFor(job, kept);
  const price = priceOf(job, bought);
  const bars = nameParts(counted, kept);
  return {
    buy: carried
      .map(({ bar, lengths }, stock) => ({
        ...{ name: bar.name, lengthMm: bar.lengthMm },
        ...{ count: bought[stock] as number, carriedCount: lengths },
      }))
      .filter(({ count }) => count > 0),
    bars,
    totalPrice: inMoney(price),
    boundPrice: inMoney(Math.min(bound, price)),
    proven: bound >= price,
    longestOffcutMm: bars.reduce((longest, { offcutMm }) => Math.max(longest, offcutMm), 0),
  };
}
