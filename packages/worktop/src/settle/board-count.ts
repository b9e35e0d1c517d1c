import { millimetres } from '../lengths.ts';
import type { PlannedGlueUp } from '../parts/glue-up.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { OfferedBoard, Stock } from '../plan/stock.ts';
import type { Chosen } from '../result.ts';
import type { Basis } from '../season.ts';
import type { Sections } from '../sections.ts';

/** So many boards more than the fewest are tried: boards that are ripped ever narrower serve nobody. */
const MOST_MORE = 20;

const ROUNDING = 1e-9;

/** How many pieces of a length go into a stretch, with a saw cut between two. */
const fitting = (stretchMm: number, pieceMm: number, kerfMm: number): number =>
  Math.max(0, Math.floor((stretchMm + kerfMm) / (pieceMm + kerfMm) + ROUNDING));

/** What is clear of defects between two places. */
function gaps(fromMm: number, toMm: number, taken: readonly (readonly [number, number])[]): number[] {
  const found: number[] = [];
  let atMm = fromMm;
  for (const [start, end] of [...taken].sort(([a], [b]) => a - b)) {
    found.push(Math.min(start, toMm) - atMm);
    atMm = Math.max(atMm, end);
  }
  return [...found, toMm - atMm];
}

/** Rough boards of the panel that a board gives for certain: from what is clear over its whole length, or its whole width. */
function givenBy(board: OfferedBoard, stock: Stock, rough: PlannedGlueUp): number {
  if (!(board.thicknessMm >= rough.roughThicknessMm - ROUNDING)) return 0;
  const { boardEndTrimMm, boardEdgeTrimMm, boardKerfMm: kerfMm } = stock;
  const [left, right] = [boardEndTrimMm, board.lengthMm - boardEndTrimMm];
  const [front, back] = [boardEdgeTrimMm, board.widthMm - boardEdgeTrimMm];
  const along = (mm: number) => fitting(mm, rough.roughLengthMm, kerfMm);
  const across = (mm: number) => fitting(mm, rough.roughWidthMm, kerfMm);
  const inX = board.defects.map(({ xMm, lengthMm }) => [xMm, xMm + lengthMm] as const);
  const inY = board.defects.map(({ yMm, widthMm }) => [yMm, yMm + widthMm] as const);
  const sum = (counts: readonly number[]) => counts.reduce((total, count) => total + count, 0);
  const ripped = along(right - left) * sum(gaps(front, back, inY).map(across));
  const crosscut = across(back - front) * sum(gaps(left, right, inX).map(along));
  return Math.max(ripped, crosscut);
}

const boards = (count: number) => (count === 1 ? 'one board' : `${count} boards`);

/** The fewest boards that are on offer; where the stack is known, the fewest that it can give. */
export function chooseBoardCount(plan: SettledPlan, basis: Basis, { glueUp: section }: Sections): Chosen {
  const glueUp = plan.glueUp as NonNullable<SettledPlan['glueUp']>;
  const withCount = (boardCount: number) =>
    section.planned({ ...plan, glueUp: { ...glueUp, boardCount } }, basis) as PlannedGlueUp;
  const fewest = withCount(1);
  const { stock } = plan;
  const chosen = ({ boardCount, roughWidthMm }: PlannedGlueUp, why: string, proven: boolean): Chosen => ({
    path: 'glueUp.boardCount',
    value: boardCount,
    says: `${boards(boardCount)}, each ${millimetres(roughWidthMm)} wide in the rough: ${why}`,
    proven,
  });
  const widest = `fewer would be wider than the widest on offer, ${millimetres(glueUp.mostWidthMm)}.`;
  const alone = fewest.boardCount === 1 ? 'it need not be glued up.' : widest;
  if (!stock || stock.boards.length === 0) return chosen(fewest, alone, true);
  const outerMm = (count: number) => (plan.top.widthMm + glueUp.trimWidthMm) / count - glueUp.trimWidthMm / 2;
  for (
    let count = fewest.boardCount;
    count <= fewest.boardCount + MOST_MORE && outerMm(count) >= 1;
    count++
  ) {
    const rough = withCount(count);
    const given = stock.boards.reduce((sum, board) => sum + givenBy(board, stock, rough), 0);
    if (given < count) continue;
    const first = count === fewest.boardCount;
    return first
      ? chosen(rough, `the boards in stock give them; ${alone}`, true)
      : chosen(
          rough,
          `the fewest that the boards in stock give for certain; ${boards(count - 1)} they may not.`,
          false,
        );
  }
  return chosen(
    fewest,
    `none of up to ${fewest.boardCount + MOST_MORE} fits: the boards in stock are too few, too short, too narrow or too thin.`,
    false,
  );
}
