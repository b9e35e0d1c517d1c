import { plusZero, requireThat } from '@scantling/rules';
import type { BarPart, CutBarsInput, StockBar } from '../cut-bars.ts';
import type { Job, Stock } from './job.ts';

const NM_PER_MM = 1e6;
const PER_PRICE = 1e4;

/** Below a thousandth of a nanometre there is only the noise of floating point. */
const NOISE = 1e-3;
const up = (mm: number) => plusZero(Math.ceil(mm * NM_PER_MM - NOISE));
const down = (mm: number) => Math.floor(mm * NM_PER_MM + NOISE);

/** Millimetres of whole nanometres. */
export const inMm = (nm: number): number => nm / NM_PER_MM;

/** A price of whole ten-thousandths. */
export const inMoney = (price: number): number => price / PER_PRICE;

/** A bar, and the lengths that it is carried home in. */
export interface Carried {
  readonly bar: StockBar;
  readonly lengths: number;
  readonly lengthNm: number;
}

/** A job in whole numbers, and what they stand for. */
export interface Counted {
  readonly job: Job;
  /** The parts of each kind, by name. */
  readonly parts: readonly (readonly BarPart[])[];
  /** The bar of each stock. */
  readonly carried: readonly Carried[];
  /** Nanometres in a tick of the job. */
  readonly tickNm: number;
  readonly trimNm: number;
  readonly kerfNm: number;
}

const byName = (a: { readonly name: string }, b: { readonly name: string }) =>
  a.name < b.name ? -1 : Number(a.name > b.name);

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/** Parts of one length under one heading, the longest first, and among them one row for each name. */
function groupParts(parts: readonly BarPart[]): Map<number, BarPart[]> {
  const groups = new Map<number, Map<string, BarPart>>();
  for (const part of parts) {
    const length = up(part.lengthMm);
    const group = groups.get(length) ?? new Map<string, BarPart>();
    const count = part.count + (group.get(part.name)?.count ?? 0);
    group.set(part.name, { ...part, count });
    groups.set(length, group);
  }
  const falling = [...groups].sort(([a], [b]) => b - a);
  return new Map(falling.map(([length, group]) => [length, [...group.values()].sort(byName)]));
}

/** What is carried home of a bar: the whole, or the fewest equal lengths that can be. */
function carry(bar: StockBar, kerfNm: number, longestNm: number): Carried {
  const wholeNm = down(bar.lengthMm);
  const lengths = Math.max(1, Math.ceil((wholeNm + kerfNm) / (longestNm + kerfNm)));
  return { bar, lengths, lengthNm: Math.floor((wholeNm + kerfNm) / lengths) - kerfNm };
}

/** Whether another stock, of which there is enough, does all that this one does and costs no more. */
const isBeaten = (stock: Stock, i: number, stocks: readonly Stock[], parts: number) =>
  stocks.some(
    (other, j) =>
      other.room >= stock.room &&
      other.lengths === stock.lengths &&
      other.price <= stock.price &&
      other.limit * other.lengths >= parts &&
      (j < i || other.room > stock.room || other.price < stock.price),
  );

/** What all parts take, beside what all bars that there are give. */
export function tooFew({ job, carried, tickNm, kerfNm, trimNm }: Counted): string {
  const needNm = job.sizes.reduce((sum, size, kind) => sum + size * tickNm * (job.demand[kind] as number), 0);
  let haveNm = 0;
  const bars = carried.map(({ bar, lengths, lengthNm }, stock) => {
    const limit = job.stocks[stock]?.limit ?? 0;
    haveNm += (lengthNm - 2 * trimNm + kerfNm) * lengths * limit;
    return `${limit} × "${bar.name.slice(0, 40)}"`;
  });
  const [need, have] = [needNm, haveNm].map((nm) => inMm(nm).toFixed(1));
  return `parts and their cuts take ${need} mm, ${bars.join(', ') || 'no bar'} can give ${have} mm, in lengths that parts may not fill`;
}

/** Counts lengths in ticks, the largest that all parts are whole numbers of. */
export function countJob({ parts, bars, kerfMm, endTrimMm, longestCarriedMm }: CutBarsInput): Counted {
  const kerfNm = up(kerfMm);
  const trimNm = up(endTrimMm);
  const longestNm = longestCarriedMm === undefined ? Number.POSITIVE_INFINITY : down(longestCarriedMm);
  const groups = groupParts(parts);
  const total = parts.reduce((sum, { count }) => sum + count, 0);
  const tickNm = [...groups.keys()].map((length) => length + kerfNm).reduce(divisor);
  const all = bars.map((bar) => {
    const carried = carry(bar, kerfNm, longestNm);
    const stock: Stock = {
      room: Math.floor((carried.lengthNm - 2 * trimNm + kerfNm) / tickNm),
      lengths: carried.lengths,
      price: Math.round(bar.eachPrice * PER_PRICE),
      // Each length that is bought to be cut holds a part.
      limit: Math.min(bar.count ?? total, Math.ceil(total / carried.lengths)),
    };
    return { carried, stock };
  });
  const longest = parts.reduce((a, b) => (b.lengthMm > a.lengthMm ? b : a));
  const usable = all.map(({ carried }) => ({ ...carried, mm: inMm(carried.lengthNm - 2 * trimNm) }));
  const best = usable.reduce((a, b) => (b.mm > a.mm ? b : a));
  const usableMm = Math.max(0, best.mm);
  const cutByYard =
    best.lengths > 1
      ? `; the yard cuts "${best.bar.name.slice(0, 40)}" into ${best.lengths} equal lengths to carry it`
      : '';
  requireThat(
    'cutBars',
    inMm(up(longest.lengthMm)) <= usableMm,
    `parts no longer than the ${usableMm} mm that a bar gives, trimmed and carried, got ${longest.lengthMm} mm for "${longest.name.slice(0, 40)}"${cutByYard}`,
  );
  all.sort(
    (a, b) =>
      b.stock.room - a.stock.room || a.stock.price - b.stock.price || byName(a.carried.bar, b.carried.bar),
  );
  const sizes = [...groups.keys()].map((length) => (length + kerfNm) / tickNm);
  const smallest = sizes.at(-1) as number;
  const stocks = all.map(({ stock }) => stock);
  const useful = all.filter(
    ({ stock }, i) => stock.room >= smallest && stock.limit > 0 && !isBeaten(stock, i, stocks, total),
  );
  const demand = [...groups.values()].map((group) => group.reduce((sum, { count }) => sum + count, 0));
  return {
    job: { sizes, demand, stocks: useful.map(({ stock }) => stock) },
    parts: [...groups.values()],
    carried: useful.map(({ carried }) => carried),
    ...{ tickNm, trimNm, kerfNm },
  };
}
