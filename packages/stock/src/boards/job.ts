import type { BoardCutting, FirstCut } from '../cut-boards.ts';
import { filledBy } from './filled.ts';

/** Lengths are counted in millionths of a millimetre, whole numbers, so that sums of them are exact. */
export const TICKS_PER_MM = 1_000_000;

/** Sums of the same numbers in another order differ by less than this share. */
export const ROUNDING = 1e-9;

/** A length in whole ticks. */
export const ticks = (lengthMm: number): number => Math.round(lengthMm * TICKS_PER_MM);

/** A rectangle; u runs along what the first cuts divide. */
export interface Rect {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
}

/** The same rectangle with its sides exchanged. */
export const turned = ({ u0, u1, v0, v1 }: Rect): Rect => ({ u0: v0, u1: v1, v0: u0, v1: u1 });

/** A board less its trims, seen so that the first cuts divide u. */
export interface Sheet extends Rect {
  readonly firstCut: FirstCut;
  readonly defects: readonly Rect[];
}

/** A board as the search sees it. */
export interface Blank {
  /** Its place in the list that was given. */
  readonly index: number;
  readonly price: number;
  /** One for each way to begin. */
  readonly sheets: readonly Sheet[];
  /** Two that are alike in all else have the same. */
  readonly key: string;
}

/** Parts of one size, grain and value. */
export interface Kind {
  readonly along: number;
  readonly across: number;
  readonly turns: boolean;
  readonly value: number;
  /** Ids of the parts, one for each piece wanted. */
  readonly ids: readonly string[];
}

/** The most that whole parts in a row, each with its kerf, fill of a length. */
export type Filled = (length: number) => number;

/** What is to be cut from what, in an order that does not depend on the order it was given in. */
export interface Job {
  readonly kerf: number;
  readonly kinds: readonly Kind[];
  readonly blanks: readonly Blank[];
  /** No length in a board, with its kerf, is more. */
  readonly longest: number;
  /** Of a length along the board's grain, as `across` cuts divide it, and of one across it. */
  readonly filled: Readonly<Record<FirstCut, Filled>>;
}

/** The sides of a part along u and v, in each way that it may lie. */
export function sidesOf({ along, across, turns }: Kind, firstCut: FirstCut): { u: number; v: number }[] {
  const lying = [{ u: along, v: across }, ...(turns && along !== across ? [{ u: across, v: along }] : [])];
  return firstCut === 'across' ? lying : lying.map(({ u, v }) => ({ u: v, v: u }));
}

const textOrder = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

function kindsOf({ parts }: BoardCutting): Kind[] {
  const alike = new Map<string, Kind & { ids: string[] }>();
  for (const { id, lengthMm, widthMm, count, grain, valuePrice } of parts) {
    const kind = {
      ...{ along: ticks(lengthMm), across: ticks(widthMm), turns: grain === 'either way' },
      ...{ value: valuePrice ?? lengthMm * widthMm, ids: [] as string[] },
    };
    const key = [kind.along, kind.across, kind.turns, kind.value].join();
    if (!alike.has(key)) alike.set(key, kind);
    alike.get(key)?.ids.push(...Array.from({ length: count }, () => id));
  }
  return [...alike]
    .sort(([a, k], [b, l]) => l.along * l.across - k.along * k.across || textOrder(a, b))
    .map(([, kind]) => kind);
}

function blanksOf({ boards, endTrimMm, edgeTrimMm, firstCut }: BoardCutting): Blank[] {
  const [end, edge] = [ticks(endTrimMm), ticks(edgeTrimMm)];
  const ways = firstCut === 'either' ? (['across', 'along'] as const) : [firstCut];
  const seen = boards.map(({ lengthMm, widthMm, boardPrice, defects }, index) => {
    const area = { u0: end, u1: ticks(lengthMm) - end, v0: edge, v1: ticks(widthMm) - edge };
    const spoilt = defects
      .map((one) => ({
        u0: ticks(one.xMm),
        u1: ticks(one.xMm + one.lengthMm),
        v0: ticks(one.yMm),
        v1: ticks(one.yMm + one.widthMm),
      }))
      // One without length or width, as a split, spoils what lies on both sides of it.
      .filter(({ u0, u1, v0, v1 }) => u0 < area.u1 && area.u0 < u1 && v0 < area.v1 && area.v0 < v1)
      .map(({ u0, u1, v0, v1 }) => ({
        ...{ u0: Math.max(u0, area.u0), u1: Math.min(u1, area.u1) },
        ...{ v0: Math.max(v0, area.v0), v1: Math.min(v1, area.v1) },
      }))
      .sort((a, b) => a.u0 - b.u0 || a.v0 - b.v0 || a.u1 - b.u1 || a.v1 - b.v1);
    const sheets = ways.map(
      (way): Sheet =>
        way === 'across'
          ? { ...area, firstCut: way, defects: spoilt }
          : { ...turned(area), firstCut: way, defects: spoilt.map(turned) },
    );
    const rate = boardPrice / ((area.u1 - area.u0) * (area.v1 - area.v0));
    return { index, price: boardPrice, rate, sheets, key: JSON.stringify([boardPrice, area, spoilt]) };
  });
  seen.sort((a, b) => a.rate - b.rate || textOrder(a.key, b.key));
  return seen.map(({ index, price, sheets, key }) => ({ index, price, sheets, key }));
}

/** The job in whole ticks, like parts together, boards of least price for their area first. */
export function jobOf(input: BoardCutting): Job {
  const [kerf, kinds, blanks] = [ticks(input.kerfMm), kindsOf(input), blanksOf(input)];
  const longest =
    Math.max(...blanks.flatMap(({ sheets }) => sheets.flatMap(({ u1, v1 }) => [u1, v1]))) + kerf;
  const filled = {
    across: filledBy(kinds, 'across', kerf, longest),
    along: filledBy(kinds, 'along', kerf, longest),
  };
  return { kerf, kinds, blanks, longest, filled };
}
