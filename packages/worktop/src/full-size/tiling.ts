import { type Paper, papers } from '../pdf.ts';
import type { Point } from '../plan/place.ts';
import type { Box } from './box.ts';

/** How a drawing at full size is cut into tiles, one a page; tiles count from the front-left corner. */
export interface Tiling {
  /** Whether the paper lies on its long side. */
  readonly lying: boolean;
  readonly columns: number;
  readonly rows: number;
  /** What one tile shows along x and along y, mm. */
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly overlapMm: number;
  /** The front-left corner of the first tile. */
  readonly start: Point;
}

/** Height of the strip under a tile that holds its place and the bars. */
export const STRIP_MM = 20;

/** A step from tile to tile is no less, or paper would be covered with overlaps. */
const LEAST_STEP_MM = 20;

/** Along one side: as few tiles as reach from end to end, laid so that what is left over is the same on both ends. */
function along(fromMm: number, toMm: number, tileMm: number, overlapMm: number) {
  const stepMm = tileMm - overlapMm;
  const count = Math.max(1, Math.ceil((toMm - fromMm - overlapMm) / stepMm - 1e-9));
  const spareMm = (count - 1) * stepMm + tileMm - (toMm - fromMm);
  return { count, startMm: fromMm - spareMm / 2 };
}

function layTiles(
  extent: Box,
  [widthMm, heightMm]: readonly [number, number],
  marginMm: number,
  overlapMm: number,
) {
  const tile = { lengthMm: widthMm - 2 * marginMm, widthMm: heightMm - 2 * marginMm - STRIP_MM };
  if (Math.min(tile.lengthMm, tile.widthMm) - overlapMm < LEAST_STEP_MM) return null;
  const x = along(extent.left, extent.right, tile.lengthMm, overlapMm);
  const y = along(extent.front, extent.back, tile.widthMm, overlapMm);
  return { columns: x.count, rows: y.count, ...tile, overlapMm, start: { xMm: x.startMm, yMm: y.startMm } };
}

/** The tiles that cover an extent on so few pages as can be, the paper upright or lying; `null` where it is too small. */
export function tilingOf(extent: Box, paper: Paper, marginMm: number, overlapMm: number): Tiling | null {
  const [widthMm, heightMm] = papers[paper];
  const upright = layTiles(extent, [widthMm, heightMm], marginMm, overlapMm);
  const lying = layTiles(extent, [heightMm, widthMm], marginMm, overlapMm);
  const pages = (tiles: typeof upright) => (tiles ? tiles.columns * tiles.rows : Number.POSITIVE_INFINITY);
  if (!upright && !lying) return null;
  return pages(lying) < pages(upright)
    ? { lying: true, ...(lying as NonNullable<typeof lying>) }
    : { lying: false, ...(upright as NonNullable<typeof upright>) };
}

/** What a tile shows; columns and rows count from 0. */
export function tileBox({ start, lengthMm, widthMm, overlapMm }: Tiling, column: number, row: number): Box {
  const left = start.xMm + column * (lengthMm - overlapMm);
  const front = start.yMm + row * (widthMm - overlapMm);
  return { left, front, right: left + lengthMm, back: front + widthMm };
}

/** Along one side: the lines midway in the overlaps, where one tile is cut to lie on the next. */
function seams(startMm: number, tileMm: number, overlapMm: number, count: number): number[] {
  return Array.from(
    { length: count - 1 },
    (_, i) => startMm + (i + 1) * (tileMm - overlapMm) + overlapMm / 2,
  );
}

export const seamsX = ({ start, lengthMm, overlapMm, columns }: Tiling): number[] =>
  seams(start.xMm, lengthMm, overlapMm, columns);

export const seamsY = ({ start, widthMm, overlapMm, rows }: Tiling): number[] =>
  seams(start.yMm, widthMm, overlapMm, rows);

/** Half the side of a registration mark. */
export const MARK_REACH_MM = 4;

/** A quarter and three quarters of the way along each stretch between two lines. */
const quarters = (lines: readonly number[]): number[] =>
  lines.slice(1).flatMap((to, i) => {
    const from = lines[i] as number;
    return [from + (to - from) / 4, from + (3 * (to - from)) / 4];
  });

/** The middles of the registration marks: two on each border that tiles share. Each tile shows those it holds whole. */
export function registrationMarks(tiling: Tiling): Point[] {
  const { start, lengthMm, widthMm, overlapMm, columns, rows } = tiling;
  const [linesX, linesY] = [seamsX(tiling), seamsY(tiling)];
  const endX = start.xMm + (columns - 1) * (lengthMm - overlapMm) + lengthMm;
  const endY = start.yMm + (rows - 1) * (widthMm - overlapMm) + widthMm;
  return [
    ...linesX.flatMap((xMm) => quarters([start.yMm, ...linesY, endY]).map((yMm) => ({ xMm, yMm }))),
    ...linesY.flatMap((yMm) => quarters([start.xMm, ...linesX, endX]).map((xMm) => ({ xMm, yMm }))),
  ];
}
