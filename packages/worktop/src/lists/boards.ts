import { type Board, type BoardCutting, type BoardPlan, type CutBoard, cutBoards } from '@scantling/stock';
import type { SettledPlan } from '../plan/plan.ts';
import type { Computed } from '../result.ts';
import { answerOf, inMoney } from './answer.ts';

/** Boards of one size, rough. */
export interface NeededBoards {
  readonly name: string;
  readonly count: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
}

/** A board to buy, and how the boards of the top are cut from it. */
export interface BoughtBoard extends CutBoard {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly eachPrice: number;
}

/** The rough boards of the top, and where they come from. */
export interface BoardPurchase {
  readonly needed: NeededBoards;
  /** `null` where the plan names no boards on offer. */
  readonly offer: {
    readonly buy: readonly BoughtBoard[];
    /** Boards of the top that these do not give. */
    readonly missingCount: number;
    /** Names of boards on offer that are too thin. */
    readonly tooThin: readonly string[];
    readonly totalPrice: number;
    /** No way to cut as much costs less. */
    readonly boundPrice: number;
    readonly proven: boolean;
  } | null;
}

/** Most pieces that `cutBoards` cuts in one job. */
const MOST_PIECES = 100;

const nothingCut = (
  count: number,
): Pick<BoardPlan, 'boards' | 'totalPrice' | 'leastPrice' | 'proven'> & {
  missingCount: number;
} => ({ boards: [], totalPrice: 0, leastPrice: 0, proven: true, missingCount: count });

/** As many of the boards as those on offer give, at the least price that is found. */
function cutFrom(boards: readonly Board[], needed: NeededBoards, stock: NonNullable<SettledPlan['stock']>) {
  const { name: id, lengthMm, widthMm } = needed;
  const job = (count: number): BoardCutting => ({
    parts: [{ id, lengthMm, widthMm, count, grain: 'along the board' }],
    boards,
    kerfMm: stock.boardKerfMm,
    endTrimMm: stock.boardEndTrimMm,
    edgeTrimMm: stock.boardEdgeTrimMm,
    firstCut: 'either',
  });
  const count = Math.min(needed.count, MOST_PIECES);
  const plan = boards.length === 0 ? null : answerOf('cutBoards', () => cutBoards(job(count)));
  if (!plan) return nothingCut(needed.count);
  const cut = plan.boards.reduce((sum, { parts }) => sum + parts.length, 0);
  return { ...plan, proven: plan.proven && count === needed.count, missingCount: needed.count - cut };
}

/** The rough boards that the glue-up takes; `null` where the plan does not say how the top is glued up. */
export function boardPurchase({ plan, glueUp }: Pick<Computed, 'plan' | 'glueUp'>): BoardPurchase | null {
  if (!glueUp) return null;
  const needed: NeededBoards = {
    name: 'board of the top',
    count: glueUp.boardCount,
    lengthMm: glueUp.roughLengthMm,
    widthMm: glueUp.roughWidthMm,
    thicknessMm: glueUp.roughThicknessMm,
  };
  const { stock } = plan;
  if (!stock || stock.boards.length === 0) return { needed, offer: null };
  // Lengths in inches are off by their rounding.
  const thickEnough = (thicknessMm: number) => thicknessMm >= needed.thicknessMm - 1e-9;
  const fit = stock.boards.filter(({ thicknessMm }) => thickEnough(thicknessMm));
  const cut = cutFrom(
    fit.map(({ name, lengthMm, widthMm, eachPrice, defects }) => ({
      id: name,
      boardPrice: eachPrice,
      ...{ lengthMm, widthMm, defects },
    })),
    needed,
    stock,
  );
  return {
    needed,
    offer: {
      buy: cut.boards.flatMap((board) =>
        fit
          .filter(({ name }) => name === board.boardId)
          .map(({ lengthMm, widthMm, thicknessMm, eachPrice }) => ({
            ...board,
            ...{ lengthMm, widthMm, thicknessMm, eachPrice },
          })),
      ),
      missingCount: cut.missingCount,
      tooThin: stock.boards.filter(({ thicknessMm }) => !thickEnough(thicknessMm)).map(({ name }) => name),
      totalPrice: inMoney(cut.totalPrice),
      boundPrice: inMoney(cut.leastPrice),
      proven: cut.proven,
    },
  };
}
