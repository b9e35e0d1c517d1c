import type { Piece } from '@scantling/stock';
import type { ShoppingPlan } from './shopping-plan.ts';

/** A part to cut, or several alike, and where it lies in what it is cut from. */
export interface CutRow {
  readonly part: string;
  readonly count: number;
  readonly lengthMm: number;
  readonly widthMm: number | null;
  readonly thicknessMm: number | null;
  /** What it is cut from; empty where that is still to be bought. */
  readonly from: string;
  /** Which of the lengths of bar carried home, as they are cut, counted from 1; `null` for what is no bar. */
  readonly carried: number | null;
  /** From the left end and the front edge of the board, or from the end of the bar as carried home, mm. */
  readonly xMm: number | null;
  readonly yMm: number | null;
}

/** Something to buy. */
export interface ShoppingRow {
  readonly item: string;
  readonly count: number | null;
  readonly size: string;
  readonly eachPrice: number | null;
  readonly price: number | null;
}

/** Every part, in the order in which they are cut: boards, bars, then what is cut from neither. */
export function cutRows({ boards, bars, strip }: ShoppingPlan): CutRow[] {
  const loose = { from: '', carried: null, xMm: null, yMm: null };
  const cutBoards = (boards?.offer?.buy ?? []).flatMap(({ boardId, thicknessMm, parts }) =>
    parts.map(
      ({ xMm, yMm, lengthMm, widthMm, partId }: Piece): CutRow => ({
        ...{ part: partId ?? '', count: 1, lengthMm, widthMm, thicknessMm },
        ...{ from: boardId, carried: null, xMm, yMm },
      }),
    ),
  );
  const missing = boards ? (boards.offer?.missingCount ?? boards.needed.count) : 0;
  const uncut: CutRow[] =
    boards && missing > 0
      ? [{ ...loose, ...sizeOf(boards.needed), part: boards.needed.name, count: missing }]
      : [];
  const cutBars = bars.flatMap(({ section, cuts, tooLong }) => [
    ...cuts.flatMap(({ name, count, pieces }, i) =>
      pieces.map(
        (piece): CutRow => ({
          ...{ part: piece.name, count, lengthMm: piece.lengthMm, widthMm: null, thicknessMm: null },
          ...{ from: `${name}, ${section}`, carried: i + 1, xMm: piece.startMm, yMm: null },
        }),
      ),
    ),
    ...tooLong.map(
      ({ name, count, lengthMm }): CutRow => ({
        ...{ ...loose, part: name, count, lengthMm, widthMm: null, thicknessMm: null },
      }),
    ),
  ]);
  const strips: CutRow[] = strip ? [{ ...loose, ...sizeOf(strip), part: strip.name, count: 1 }] : [];
  return [...cutBoards, ...uncut, ...cutBars, ...strips];
}

type Size = Pick<CutRow, 'lengthMm' | 'widthMm' | 'thicknessMm'>;

const sizeOf = ({ lengthMm, widthMm, thicknessMm }: Size): Size => ({ lengthMm, widthMm, thicknessMm });

const mm = (...sidesMm: readonly number[]) =>
  `${sidesMm.map((side) => Number(side.toFixed(1))).join(' × ')} mm`;

/** A need is never written smaller than it is. */
const atLeastMm = (...sidesMm: readonly number[]) =>
  `at least ${mm(...sidesMm.map((side) => Math.ceil(side * 10 - 1e-6) / 10))}`;

const priced = (count: number, eachPrice: number) => ({
  count,
  eachPrice,
  price: Math.round(count * eachPrice * 1e4) / 1e4,
});

const UNPRICED = { eachPrice: null, price: null };

/** Everything to get, in the order of the work. What has no price on offer comes without one. */
export function shoppingRows(shopping: ShoppingPlan): ShoppingRow[] {
  const { boards, bars, strip, screws, glue, liquids } = shopping;
  const missing = boards ? (boards.offer?.missingCount ?? boards.needed.count) : 0;
  return [
    ...(boards?.offer?.buy ?? []).map(({ boardId, lengthMm, widthMm, thicknessMm, eachPrice }) => ({
      item: `board ${boardId}`,
      size: mm(lengthMm, widthMm, thicknessMm),
      ...priced(1, eachPrice),
    })),
    ...(boards && missing > 0
      ? [
          {
            item: `rough boards${boards.offer ? ', not on offer' : ''}`,
            count: missing,
            size: atLeastMm(boards.needed.lengthMm, boards.needed.widthMm, boards.needed.thicknessMm),
            ...UNPRICED,
          },
        ]
      : []),
    ...(glue
      ? [{ item: `glue: ${glue.name}`, count: null, size: `${Math.ceil(glue.massG)} g`, ...UNPRICED }]
      : []),
    ...bars.flatMap(({ section, buy, tooLong }) => [
      ...buy.map(({ name, lengthMm, count, eachPrice, carriedCount }) => ({
        item: `bar ${name}, ${section}`,
        size: carriedCount > 1 ? `${mm(lengthMm)}, cut into ${carriedCount} equal lengths` : mm(lengthMm),
        ...priced(count, eachPrice),
      })),
      ...tooLong.map(({ name, lengthMm, count }) => ({
        item: `${name}, ${section}, not on offer`,
        ...{ count, size: atLeastMm(lengthMm), ...UNPRICED },
      })),
    ]),
    ...(strip
      ? [
          {
            item: strip.name,
            count: 1,
            size: mm(strip.lengthMm, strip.widthMm, strip.thicknessMm),
            ...UNPRICED,
          },
        ]
      : []),
    ...screws.map(({ name, count, diameterMm, lengthMm }) => ({
      item: name,
      count,
      size: lengthMm === null ? `⌀ ${mm(diameterMm)}` : `⌀ ${mm(diameterMm, lengthMm)}`,
      ...UNPRICED,
    })),
    ...liquids.flatMap(({ name, buy, missingMl }): ShoppingRow[] =>
      buy === null
        ? [{ item: name, count: null, size: `${Math.ceil(missingMl)} mL`, ...UNPRICED }]
        : buy.map(({ volumeMl, count, eachPrice }) => ({
            item: name,
            size: `${volumeMl} mL`,
            ...priced(count, eachPrice),
          })),
    ),
  ];
}
