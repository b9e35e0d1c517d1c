import { capacities, type Exchange, enlargedArea, exchangeOf } from './capacity.ts';
import type { Job, Kind } from './job.ts';
import { type BoardSet, boardSets, type LeastPrice, leastPriceOf } from './least-price.ts';

/** So many least lengths and least widths are looked at, no more. */
const MOST_SIZES = 16;

/** What no plan can pass. */
export interface Bounds {
  /** Most value that can be cut. */
  readonly mostValue: number;
  /** Least price of boards from which so much value can be cut. */
  readonly leastPrice: (value: number) => number;
  /** Whether so much value may come from these boards, by their places in the list. */
  readonly mayHold: (boards: readonly number[], value: number) => boolean;
}

const pieces = ({ ids }: Kind): number => ids.length;

const valueOfAll = (kinds: readonly Kind[]): number =>
  kinds.reduce((sum, kind) => sum + pieces(kind) * kind.value, 0);

/** All parts, and for each size those that are no shorter or no narrower: large parts leave more of a board unused. */
function families(kinds: readonly Kind[]): Kind[][] {
  const shortest = ({ along, across, turns }: Kind) => (turns ? Math.min(along, across) : along);
  const narrowest = ({ along, across, turns }: Kind) => (turns ? Math.min(along, across) : across);
  const found = new Map<string, Kind[]>();
  for (const side of [shortest, narrowest]) {
    const sizes = [...new Set(kinds.map(side))].sort((a, b) => a - b);
    const apart = Math.ceil(sizes.length / MOST_SIZES);
    for (const least of sizes.filter((_, i) => i % apart === 0)) {
      const family = kinds.filter((kind) => side(kind) >= least);
      found.set(family.map((kind) => kinds.indexOf(kind)).join(), family);
    }
  }
  return [...found.values()];
}

/** What none of several bounds lets a plan pass. */
export const tightest = (bounds: readonly Bounds[]): Bounds => ({
  mostValue: Math.min(...bounds.map(({ mostValue }) => mostValue)),
  leastPrice: (value) => Math.max(...bounds.map(({ leastPrice }) => leastPrice(value))),
  mayHold: (boards, value) => bounds.every(({ mayHold }) => mayHold(boards, value)),
});

const pricesOf = ({ blanks }: Job): number[] => blanks.map(({ price }) => price);

const sumOf = (boards: readonly number[], each: readonly number[]): number =>
  boards.reduce((sum, board) => sum + (each[board] as number), 0);

/** Bounds from the area of parts of each size, against the area that whole rows of such parts can fill. */
export function areaBounds(job: Job): Bounds {
  const total = valueOfAll(job.kinds);
  const looks = families(job.kinds).map((family) => {
    const capacity = capacities(family, job);
    const exchange = exchangeOf(family, job.kerf);
    const left = (kind: number) => pieces(family[kind] as Kind);
    const others = total - valueOfAll(family);
    const room = capacity.reduce((sum, one) => sum + one, 0);
    const price = leastPriceOf(boardSets(capacity, pricesOf(job)));
    const areaFor = (value: number) => exchange.areaFor(value - others, left);
    return {
      mostValue: others + exchange.valueOf(room, left),
      leastPrice: (value: number) => price(0, areaFor(value)),
      mayHold: (boards: readonly number[], value: number) => sumOf(boards, capacity) >= areaFor(value),
    };
  });
  return tightest(looks);
}

/** Bounds from the most value that each board can give by itself. */
export function valueBounds(job: Job, mostValues: readonly number[]): Bounds {
  const price = leastPriceOf(boardSets(mostValues, pricesOf(job)));
  return {
    mostValue: mostValues.reduce((sum, one) => sum + one, 0),
    leastPrice: (value) => price(0, value),
    mayHold: (boards, value) => sumOf(boards, mostValues) >= value,
  };
}

/** What is left to be cut, in numbers that are quick to ask for while searching. */
export interface Outlook {
  readonly areas: readonly number[];
  readonly capacity: readonly number[];
  /** What all boards from here on in the list hold together. */
  readonly capacityFrom: readonly number[];
  readonly leastPrice: LeastPrice;
  /** Sets of boards that hold most for their price, the smallest first. */
  readonly sets: readonly BoardSet[];
  readonly exchange: Exchange;
  /** Value of all parts, and their enlarged area. */
  readonly total: number;
  readonly totalArea: number;
}

/** The outlook over all parts and boards. */
export function outlookOf(job: Job): Outlook {
  const { kinds, kerf } = job;
  const areas = kinds.map((kind) => enlargedArea(kind, kerf));
  const capacity = capacities(kinds, job);
  const capacityFrom = [0];
  for (const one of [...capacity].reverse()) capacityFrom.unshift((capacityFrom[0] as number) + one);
  const suffixes = boardSets(capacity, pricesOf(job));
  return {
    ...{ areas, capacity, capacityFrom, leastPrice: leastPriceOf(suffixes) },
    sets: suffixes[0] as BoardSet[],
    exchange: exchangeOf(kinds, kerf),
    total: valueOfAll(kinds),
    totalArea: kinds.reduce((sum, kind, i) => sum + pieces(kind) * (areas[i] as number), 0),
  };
}
