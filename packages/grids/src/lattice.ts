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

/** From an edge to the centre of a hole that keeps the margin. */
const awayOf = ({ edgeMarginMm, holeDiameterMm }: GridTerms): number => edgeMarginMm + holeDiameterMm / 2;

/**
 * A grid that fills its panel begins within a pitch from the margin, so every keep-out folds into one pitch cell. A
 * grid of given size may begin anywhere on the panel.
 */
export function latticeOf(grid: GridTerms): Lattice {
  const { panel, pitchXMm, pitchYMm, columns, rows, staggered } = grid;
  const from = (sideMm: number) => Math.min(sideMm, awayOf(grid));
  const filled = (sideMm: number, pitchMm: number) =>
    Math.floor((sideMm - from(sideMm)) / pitchMm + SAME_MM) + 1;
  const [x1, y1] = [columns ? 0 : from(panel.lengthMm), rows ? 0 : from(panel.widthMm)];
  return {
    // In a staggered row a hole may come half a pitch before the first.
    columns: columns ?? filled(panel.lengthMm, pitchXMm) + (staggered ? 1 : 0),
    rows: rows ?? filled(panel.widthMm, pitchYMm),
    range: {
      ...{ x1, x2: columns ? panel.lengthMm : Math.min(x1 + pitchXMm, panel.lengthMm) },
      ...{ y1, y2: rows ? panel.widthMm : Math.min(y1 + pitchYMm, panel.widthMm) },
    },
  };
}

/** Offsets to begin with, where a grid can begin: in the middle of the panel, at the margin on one side or the other. */
function startsOf(sideMm: number, count: number | undefined, pitchMm: number, awayMm: number): number[] {
  const fitting = count ?? Math.max(1, Math.floor((sideMm - 2 * awayMm) / pitchMm + SAME_MM) + 1);
  const spanMm = (fitting - 1) * pitchMm;
  const starts = [(sideMm - spanMm) / 2, awayMm, sideMm - awayMm - spanMm];
  return starts.filter((start) => start >= 0 && start <= sideMm);
}

/** The same in both directions. */
export function seedsOf(grid: GridTerms): (readonly [number, number])[] {
  const { panel, pitchXMm, pitchYMm, columns, rows } = grid;
  return startsOf(panel.lengthMm, columns, pitchXMm, awayOf(grid)).flatMap((xMm) =>
    startsOf(panel.widthMm, rows, pitchYMm, awayOf(grid)).map((yMm) => [xMm, yMm] as const),
  );
}

/**
 * The first hole of a layout that begins at an offset: where a narrow panel leaves the first of staggered rows without a
 * hole, that of the second row, or half a pitch before where that keeps the margin.
 */
export function firstHoleOf(grid: GridTerms, { xMm, yMm }: Point): Point {
  const { panel, pitchXMm, pitchYMm, columns, staggered } = grid;
  const beforeMm = xMm + rowStart(grid, 1);
  if (!staggered || columns || xMm <= panel.lengthMm - awayOf(grid) + SAME_MM) return { xMm, yMm };
  return { xMm: beforeMm < awayOf(grid) - SAME_MM ? beforeMm + pitchXMm : beforeMm, yMm: yMm + pitchYMm };
}
