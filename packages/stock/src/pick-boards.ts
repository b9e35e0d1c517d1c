import { requireInputs, requireList } from '@scantling/rules';

/** Widths are told apart to a tenth of a millimetre. */
const TICKS_PER_MM = 10;

export interface PickBoardsInput {
  /** Of the boards in the stack, rough, mm, each 1 to 1000; 1 to 60 boards. */
  readonly widthsMm: readonly number[];
  /** Off the width of each board before it is glued, mm, 0 to 100. */
  readonly jointingMm: number;
  /** What the panel must be wide when it is glued, mm, 1 to 5000. */
  readonly neededWidthMm: number;
}

/** A board that is taken from the stack. */
export interface PickedBoard {
  /** Its place in the list of widths, from 0. */
  readonly index: number;
  /** Rough, mm. */
  readonly widthMm: number;
}

export interface PickedBoards {
  /** In the order of the stack. */
  readonly boards: readonly PickedBoard[];
  /** What they come to when they are jointed, mm. */
  readonly gluedWidthMm: number;
  /** What is ripped off, mm. */
  readonly surplusMm: number;
}

/**
 * Boards of all widths from a stack, for a panel: those that leave the least to rip off, and of these the fewest. It is
 * the least there is, to a tenth of a millimetre of each width, rounded down: every sum of widths is looked at.
 *
 * @returns The boards; `null` where the whole stack is too narrow.
 * @throws RangeError where an input is outside its limits.
 * Source: the subset-sum problem by dynamic programming.
 * @example
 * ```ts
 * import { pickBoards } from '@scantling/stock';
 * const stack = { widthsMm: [142, 155, 168, 120, 187], jointingMm: 6 };
 * const { boards, surplusMm } = pickBoards({ ...stack, neededWidthMm: 440 });
 * boards.map(({ widthMm }) => widthMm) // => [155, 120, 187]
 * surplusMm // => 4
 * pickBoards({ ...stack, neededWidthMm: 800 }) // => null
 * ```
 */
export function pickBoards(input: PickBoardsInput): PickedBoards | null {
  const needed = { min: 1, max: 5000 };
  requireInputs('pickBoards', input, { jointingMm: { min: 0, max: 100 }, neededWidthMm: needed });
  const { widthsMm, jointingMm, neededWidthMm } = input;
  requireList('pickBoards', 'widthsMm', widthsMm, { min: 1, max: 1000, minItems: 1, maxItems: 60 });
  const ticks = (mm: number) => Math.floor(mm * TICKS_PER_MM + 1e-6);
  const widths = widthsMm.map((widthMm) => Math.max(0, ticks(widthMm - jointingMm)));
  const least = Math.ceil(neededWidthMm * TICKS_PER_MM - 1e-6);
  const most = least + Math.max(...widths);
  // How few boards make each sum, and after which board that was first so.
  const fewest = new Uint8Array(most + 1).fill(255);
  fewest[0] = 0;
  const takes = widths.map((width) => {
    const taken = new Uint8Array(most + 1);
    if (width === 0) return taken;
    for (let sum = most; sum >= width; sum--) {
      const count = (fewest[sum - width] as number) + 1;
      if (count >= (fewest[sum] as number)) continue;
      fewest[sum] = count;
      taken[sum] = 1;
    }
    return taken;
  });
  let sum = fewest.findIndex((count, total) => total >= least && count < 255);
  if (sum < 0) return null;
  const boards: PickedBoard[] = [];
  for (let i = widths.length - 1; i >= 0; i--) {
    if (!takes[i]?.[sum]) continue;
    boards.unshift({ index: i, widthMm: widthsMm[i] as number });
    sum -= widths[i] as number;
  }
  const gluedWidthMm =
    boards.reduce((total, { index }) => total + (widths[index] as number), 0) / TICKS_PER_MM;
  return { boards, gluedWidthMm, surplusMm: Math.max(0, gluedWidthMm - neededWidthMm) };
}
