import { requireChoice, requireFields, requireInputs, requireThat } from '@scantling/rules';
import type { BoardCutting } from '../cut-boards.ts';
import { ticks } from './job.ts';

const CALLER = 'cutBoards';
const MOST_PIECES = 100;
const MOST_BOARDS = 40;
const MOST_DEFECTS = 30;

const length = { min: 1, max: 20_000 };
const price = { min: 0.01, max: 1_000_000 };
const trim = { min: 0, max: 1000 };

function requireEntries(path: string, given: unknown, least: number, most: number): void {
  requireThat(CALLER, Array.isArray(given), `${path} to be a list, got ${typeof given}`);
  const { length: count } = given as readonly unknown[];
  requireThat(CALLER, count >= least && count <= most, `${least} to ${most} ${path}, got ${count}`);
}

function requireNames(path: string, given: readonly { readonly id: string }[]): void {
  const names = new Set<string>();
  for (const [i, one] of given.entries()) {
    const id = one?.id;
    const named = typeof id === 'string' && id.trim() !== '' && !names.has(id);
    requireThat(CALLER, named, `${path}[${i}].id to be a name unlike every other, got ${JSON.stringify(id)}`);
    names.add(id);
  }
}

function checkBoards({ boards, kerfMm, endTrimMm, edgeTrimMm }: BoardCutting): void {
  requireEntries('boards', boards, 1, MOST_BOARDS);
  requireNames('boards', boards);
  for (const [i, board] of boards.entries()) {
    const path = `boards[${i}]`;
    requireFields(CALLER, path, board, { lengthMm: length, widthMm: length, boardPrice: price });
    const { lengthMm, widthMm, defects } = board;
    for (const [name, left] of [
      ['lengthMm', lengthMm - 2 * endTrimMm],
      ['widthMm', widthMm - 2 * edgeTrimMm],
    ] as const) {
      requireThat(CALLER, left > kerfMm, `${path}.${name} above both trims and the kerf, got ${board[name]}`);
    }
    requireEntries(`${path}.defects`, defects, 0, MOST_DEFECTS);
    for (const [j, defect] of defects.entries()) {
      const at = `${path}.defects[${j}]`;
      const side = { min: 0, max: length.max };
      requireFields(CALLER, at, defect, { xMm: side, yMm: side, lengthMm: side, widthMm: side });
      const reachesMm = { lengthMm: defect.xMm + defect.lengthMm, widthMm: defect.yMm + defect.widthMm };
      for (const name of ['lengthMm', 'widthMm'] as const) {
        requireThat(
          CALLER,
          ticks(reachesMm[name]) <= ticks(board[name]),
          `${at} to lie on the board, ${name} ${board[name]}, got one that reaches to ${reachesMm[name]}`,
        );
      }
    }
  }
}

function checkParts({ parts, boards, endTrimMm, edgeTrimMm }: BoardCutting): void {
  requireEntries('parts', parts, 1, MOST_PIECES);
  requireNames('parts', parts);
  let pieces = 0;
  for (const [i, part] of parts.entries()) {
    const path = `parts[${i}]`;
    const count = { min: 1, max: MOST_PIECES, integer: true } as const;
    requireFields(CALLER, path, part, { lengthMm: length, widthMm: length, count });
    requireChoice(CALLER, `${path}.grain`, part.grain, ['along the board', 'either way']);
    const priced = part.valuePrice !== undefined;
    if (priced) requireFields(CALLER, path, part, { valuePrice: price });
    requireThat(
      CALLER,
      priced === (parts[0]?.valuePrice !== undefined),
      `a valuePrice for every part or for none, got one for ${priced ? path : 'parts[0]'} and none for ${priced ? 'parts[0]' : path}`,
    );
    pieces += part.count;
    const { lengthMm, widthMm, grain } = part;
    const room = (boardMm: number, trimMm: number) => ticks(boardMm) - 2 * ticks(trimMm);
    const lies = (along: number, across: number) =>
      boards.some(
        (board) =>
          ticks(along) <= room(board.lengthMm, endTrimMm) && ticks(across) <= room(board.widthMm, edgeTrimMm),
      );
    const goesIn = lies(lengthMm, widthMm) || (grain === 'either way' && lies(widthMm, lengthMm));
    requireThat(
      CALLER,
      goesIn,
      `${path} ("${part.id}") to go into a board less its trims, got ${lengthMm} by ${widthMm} mm`,
    );
  }
  requireThat(CALLER, pieces <= MOST_PIECES, `at most ${MOST_PIECES} parts in all, got ${pieces}`);
}

/** Throws where a job cannot be what somebody means. */
export function checkCutting(input: BoardCutting): void {
  const { kerfMm, endTrimMm, edgeTrimMm } = input ?? {};
  requireInputs(
    CALLER,
    { kerfMm, endTrimMm, edgeTrimMm },
    { kerfMm: { min: 0, max: 50 }, endTrimMm: trim, edgeTrimMm: trim },
  );
  requireChoice(CALLER, 'firstCut', input.firstCut, ['across', 'along', 'either']);
  checkBoards(input);
  checkParts(input);
}
