import { type Point, type Range, SAME_MM } from './geometry.ts';
import type { GridTerms } from './layout-holes.ts';

/** Where the holes of a grid may be: column and row of each, at offset 0, and how far the offset goes. */
export interface Lattice {
  readonly columns: number;
  readonly rows: number;
  readonly range: Range;
}

/** Where row `j` begins at offset 0: a staggered row of a filled grid may have a hole before its first. */
export function rowStart({ pitchXMm, columns, staggered }: GridTerms, row: number): number {
  if (!staggered || row % 2 === 0) return 0;
  return columns ? pitchXMm / 2 : -pitchXMm / 2;
}

/**
 * A grid that fills its panel repeats after a pitch, so its offset lies within one: every keep-out folds into one
 * pitch cell. A grid of given size may begin anywhere on the panel.
 */
export function latticeOf({ panel, pitchXMm, pitchYMm, columns, rows, staggered }: GridTerms): Lattice {
  const { lengthMm, widthMm } = panel;
  // In a staggered row a hole may come half a pitch before the first.
  const filled = Math.floor(lengthMm / pitchXMm) + (staggered ? 2 : 1);
  return {
    columns: columns ?? filled,
    rows: rows ?? Math.floor(widthMm / pitchYMm) + 1,
    range: {
      x1: 0,
      x2: columns ? lengthMm : Math.min(pitchXMm, lengthMm),
      y1: 0,
      y2: rows ? widthMm : Math.min(pitchYMm, widthMm),
    },
  };
}

/** Offsets to begin with, where a grid can begin: in the middle of the panel, at the margin on one side or the other. */
function startsOf(sideMm: number, count: number | undefined, pitchMm: number, awayMm: number): number[] {
  const fitting = count ?? Math.max(1, Math.floor((sideMm - 2 * awayMm) / pitchMm + SAME_MM) + 1);
  const spanMm = (fitting - 1) * pitchMm;
  const starts = [(sideMm - spanMm) / 2, awayMm, sideMm - awayMm - spanMm];
  return starts
    .map((start) => (count ? start : ((start % pitchMm) + pitchMm) % pitchMm))
    .filter((start) => start >= 0 && start <= sideMm);
}

/** The same in both directions. */
export function seedsOf(grid: GridTerms): (readonly [number, number])[] {
  const { panel, pitchXMm, pitchYMm, columns, rows } = grid;
  const awayMm = grid.edgeMarginMm + grid.holeDiameterMm / 2;
  return startsOf(panel.lengthMm, columns, pitchXMm, awayMm).flatMap((xMm) =>
    startsOf(panel.widthMm, rows, pitchYMm, awayMm).map((yMm) => [xMm, yMm] as const),
  );
}

/** The first hole that keeps the margin, given where the lattice begins: in a narrow panel not every row has one. */
export function firstKept(grid: GridTerms, offset: Point): Point {
  const { panel, pitchXMm, pitchYMm, columns, rows, staggered } = grid;
  const awayMm = grid.edgeMarginMm + grid.holeDiameterMm / 2 - SAME_MM;
  const beforeMargin = (startMm: number, pitchMm: number) =>
    Math.max(0, Math.ceil((awayMm - startMm) / pitchMm));
  const inRow = (row: number): Point => {
    const startMm = offset.xMm + rowStart(grid, row);
    const skipped = columns ? 0 : beforeMargin(startMm, pitchXMm);
    return { xMm: startMm + skipped * pitchXMm, yMm: offset.yMm + row * pitchYMm };
  };
  const row = rows ? 0 : beforeMargin(offset.yMm, pitchYMm);
  const first = inRow(row);
  return staggered && !columns && first.xMm > panel.lengthMm - awayMm ? inRow(row + 1) : first;
}
