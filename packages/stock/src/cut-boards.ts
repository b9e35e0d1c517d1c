import { plusZero } from '@scantling/rules';
import { checkCutting } from './boards/check-boards.ts';
import { cutUp } from './boards/cut-tree.ts';
import { jobOf } from './boards/job.ts';
import type { Step } from './boards/look.ts';
import { searchPlans } from './boards/search.ts';

/** Across the board, as a crosscut, or along it, as a rip. */
export type FirstCut = 'across' | 'along';

/** Parts that are alike. */
export interface BoardPart {
  /** Its name, unlike every other part's. */
  readonly id: string;
  /** Along its grain, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** Across its grain, mm, 1 to 20 000. */
  readonly widthMm: number;
  /** How many are wanted, 1 to 100. */
  readonly count: number;
  /** Whether its length must lie along the board, or may lie across it too. */
  readonly grain: 'along the board' | 'either way';
  /** What one is worth, where not all can be cut; for all parts or for none. Without, its area counts. */
  readonly valuePrice?: number;
}

/**
 * A rectangle of a board that no part may hold: a knot, a split, wane. Measured from the board's front left corner. Without
 * length or width it is a line or a point: no part lies across it, but parts may lie on either side.
 */
export interface BoardDefect {
  readonly xMm: number;
  readonly yMm: number;
  /** Along the board, mm, from 0. */
  readonly lengthMm: number;
  /** Across the board, mm, from 0. */
  readonly widthMm: number;
}

/** A board, its left end at x 0 and its front edge at y 0. */
export interface Board {
  /** Its name, unlike every other board's. */
  readonly id: string;
  /** Along the grain, mm, 1 to 20 000. */
  readonly lengthMm: number;
  readonly widthMm: number;
  /** What the whole board costs, 0.01 to 1 000 000. */
  readonly boardPrice: number;
  /** At most 30. */
  readonly defects: readonly BoardDefect[];
}

/** Parts to be cut from boards. */
export interface BoardCutting {
  /** At most 100 pieces in all. */
  readonly parts: readonly BoardPart[];
  /** 1 to 40. */
  readonly boards: readonly Board[];
  /** What a saw cut takes, mm, 0 to 50. */
  readonly kerfMm: number;
  /** What is cut off each end first, its kerf in it, mm, 0 to 1000. */
  readonly endTrimMm: number;
  /** What is cut off each edge first, its kerf in it, mm, 0 to 1000. */
  readonly edgeTrimMm: number;
  /** How every board is begun; `either` takes for each board the way that serves better. */
  readonly firstCut: FirstCut | 'either';
}

/** One cut, right through a piece. */
export interface Cut {
  /** Across the board's grain, or along it. */
  readonly direction: FirstCut;
  /** From that side of the piece to the line, mm. */
  readonly distanceMm: number;
  readonly measuredFrom: 'left end' | 'right end' | 'front edge' | 'back edge';
  /** The kerf lies on this side of the line. */
  readonly kerfTowards: 'left end' | 'right end' | 'front edge' | 'back edge';
  /** What it leaves: the piece that was measured, and the other, where the saw does not take all of it. */
  readonly pieces: readonly Piece[];
}

/** A piece of a board, where it lay in the board. One with neither a part nor a cut is an offcut. */
export interface Piece {
  readonly xMm: number;
  readonly yMm: number;
  /** Along the board. */
  readonly lengthMm: number;
  /** Across the board. */
  readonly widthMm: number;
  /** The part that it is. */
  readonly partId: string | null;
  /** How it is cut further. */
  readonly cut: Cut | null;
}

/** A board that is cut. */
export interface CutBoard {
  readonly boardId: string;
  /** The board less its trims, and how it is cut. Any order will do in which a piece is there before it is cut. */
  readonly blank: Piece;
  /** Pieces that are parts. */
  readonly parts: readonly Piece[];
  /** Pieces left over, largest first, defects and all. */
  readonly offcuts: readonly Piece[];
  /** Parts' share of the board's area. */
  readonly usedShare: number;
}

/** Parts that these boards do not give. */
export interface MissingPart {
  readonly partId: string;
  readonly missingCount: number;
}

/** How boards are cut, and how good that is. */
export interface BoardPlan {
  /** In the order in which the boards were given; those not listed are not needed. */
  readonly boards: readonly CutBoard[];
  readonly missing: readonly MissingPart[];
  /** Price of the boards that are cut. */
  readonly totalPrice: number;
  /** Nothing that cuts parts of as much value costs less than this. */
  readonly leastPrice: number;
  /** How far the price may lie above the least possible, % of the price. */
  readonly priceGapPct: number;
  /** Value of the parts that are cut, of all parts': 1 where none is missing. */
  readonly cutShare: number;
  /** No plan cuts a larger share. */
  readonly mostShare: number;
  /** Whether no plan in such stages cuts more, nor as much for less. */
  readonly proven: boolean;
}

const leaves = (piece: Piece): Piece[] => (piece.cut ? piece.cut.pieces.flatMap(leaves) : [piece]);

const areaOf = ({ lengthMm, widthMm }: Piece): number => lengthMm * widthMm;

/** Less than this share is rounding. */
const ROUNDING = 1e-9;

/**
 * How to cut rectangular parts from random-width, random-length boards around their defects: all of them from boards of
 * least price, or, where the boards do not give all, parts of most value. Every cut goes right through a piece. A board
 * is cut in three stages: crosscut into sections, each ripped into strips, each crosscut into lengths (`across`); or
 * ripped, crosscut and ripped (`along`). A fourth cut, the way of the second, brings a length to size. Parts miss every
 * defect; cuts need not. A waste narrower than the kerf is sawn away.
 *
 * Found by growing partial plans part by part, many side by side, then by cutting two or three boards of the plan anew
 * together. Held against three bounds: the area of parts of each size against what rows of such parts can fill of a
 * board, the most that each board can give by itself, and what the search passed over. How much is looked at is counted
 * in steps, so the answer is always the same; where the bound is not met, the gap is stated.
 *
 * @param input - Parts, boards, kerf, trims, and whether boards are first crosscut or ripped.
 * @returns For each board its cuts, parts and offcuts; what is missing; price and share that no plan can pass.
 * @throws RangeError where a field is missing or outside its limits, or a part is larger than every board less its trims.
 * @example
 * ```ts
 * import { cutBoards } from '@scantling/stock';
 * // Two rails of 700 mm and a 4 mm kerf: a knot at 690 to 730 leaves no room for two in the cheap board.
 * const boards = [
 *   { id: 'with a knot', lengthMm: 1500, widthMm: 120, boardPrice: 9, defects: [{ xMm: 690, yMm: 40, lengthMm: 40, widthMm: 50 }] },
 *   { id: 'clear', lengthMm: 1450, widthMm: 120, boardPrice: 14, defects: [] },
 * ];
 * const parts = [{ id: 'rail', lengthMm: 700, widthMm: 90, count: 2, grain: 'along the board' }];
 * const plan = cutBoards({ parts, boards, kerfMm: 4, endTrimMm: 10, edgeTrimMm: 5, firstCut: 'across' });
 * [plan.totalPrice, plan.leastPrice, plan.proven] // => [14, 14, true]
 * plan.boards[0].blank.cut.distanceMm // => 700
 * plan.boards[0].offcuts[0].lengthMm // => 700
 * ```
 */
export function cutBoards(input: BoardCutting): BoardPlan {
  checkCutting(input);
  const job = jobOf(input);
  const found = searchPlans(job);
  const steps = new Map<number, Step[]>();
  for (let step = found.last; step; step = step.before) {
    const { index } = step.blank;
    steps.set(index, [step, ...(steps.get(index) ?? [])]);
  }
  const ids = job.kinds.map((kind) => [...kind.ids]);
  const idOf = ({ kind }: Step): string => ids[kind]?.shift() as string;
  const boards = [...steps]
    .sort(([a], [b]) => a - b)
    .map(([index, onBoard]): CutBoard => {
      const board = input.boards[index] as Board;
      const blank = cutUp(job, (onBoard[0] as Step).sheet, onBoard, idOf);
      const pieces = leaves(blank);
      const parts = pieces.filter(({ partId }) => partId !== null);
      return {
        boardId: board.id,
        blank,
        parts,
        offcuts: pieces.filter(({ partId }) => partId === null).sort((a, b) => areaOf(b) - areaOf(a)),
        usedShare: parts.reduce((sum, one) => sum + areaOf(one), 0) / (board.lengthMm * board.widthMm),
      };
    });
  const total = job.kinds.reduce((sum, kind) => sum + kind.ids.length * kind.value, 0);
  const missing = input.parts
    .map(({ id }) => ({ partId: id, missingCount: ids.flat().filter((one) => one === id).length }))
    .filter(({ missingCount }) => missingCount > 0);
  const totalPrice = found.price;
  const priceGap = totalPrice > 0 ? 1 - found.leastPrice / totalPrice : 0;
  const cutShare = missing.length === 0 ? 1 : found.value / total;
  const mostShare = Math.min(1, Math.max(cutShare, found.mostValue / total));
  return {
    ...{ boards, missing, totalPrice: plusZero(totalPrice), leastPrice: plusZero(found.leastPrice) },
    ...{ priceGapPct: plusZero(Math.max(0, priceGap * 100)), cutShare, mostShare },
    proven: priceGap <= ROUNDING && mostShare - cutShare <= ROUNDING,
  };
}
