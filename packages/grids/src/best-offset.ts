import { checkCounts, checkGrid } from './check-layout.ts';
import { encountersOf, type Lattice, rowStart } from './encounters.ts';
import { type Point, SAME_MM } from './geometry.ts';
import type { GridTerms } from './layout-holes.ts';
import { searchOffset } from './offset-search.ts';

/** The answer stays no further below the best than this. */
const GAP_MM = 0.01;

/** So many ranges are looked at before the answer is given as it stands. */
const MOST_RANGES = 200_000;

/** Where a grid best begins, and the proof. */
export interface BestOffset {
  /** Centre of the first hole that keeps the edge margin, for `layoutHoles`; `null` where no hole can. */
  readonly firstHole: Point | null;
  /** Holes that keep every clearance there. */
  readonly keptCount: number;
  /** Least that a kept hole has beyond the clearance asked for, mm; `null` where no hole is kept. */
  readonly spareMm: number | null;
  /** No offset that keeps as many holes leaves them more than this, mm; `null` where no hole is kept. */
  readonly spareBoundMm: number | null;
  /** Whether it is proven that no offset keeps more holes with 0.01 mm to spare, nor as many with 0.01 mm more. */
  readonly proven: boolean;
}

/**
 * A grid that fills its panel repeats after a pitch, so its offset lies within one: every keep-out folds into one
 * pitch cell. A grid of given size may begin anywhere on the panel.
 */
function latticeOf({ panel, pitchXMm, pitchYMm, columns, rows, staggered }: GridTerms): Lattice {
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
function seedsOf(sideMm: number, count: number | undefined, pitchMm: number, awayMm: number): number[] {
  const fitting = count ?? Math.max(1, Math.floor((sideMm - 2 * awayMm) / pitchMm + SAME_MM) + 1);
  const spanMm = (fitting - 1) * pitchMm;
  const starts = [(sideMm - spanMm) / 2, awayMm, sideMm - awayMm - spanMm];
  return starts
    .map((start) => (count ? start : ((start % pitchMm) + pitchMm) % pitchMm))
    .filter((start) => start >= 0 && start <= sideMm);
}

/** The first hole that keeps the margin, given where the lattice begins: in a narrow panel not every row has one. */
function firstKept(grid: GridTerms, offset: Point): Point {
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

/**
 * Where a grid of holes best begins: the offset that keeps most holes, and of those the one whose tightest hole has
 * most to spare beyond the clearance asked for. With `movement`, over every season. Found by branch and bound, so
 * that the answer comes with its proof.
 *
 * @param grid - As for `layoutHoles`, without its first hole. Without `columns` or `rows` the grid fills the panel.
 * @returns The first hole for `layoutHoles`, how many holes it keeps and what the tightest has to spare; the bound
 *   that no other offset passes. An offset that keeps more holes, but with less than 0.01 mm to spare, may be missed.
 * @throws RangeError where a field is missing or outside its limits.
 * @example
 * ```ts
 * import { bestOffset } from '@scantling/grids';
 * // Four holes fit along 400 mm; a rail 40 mm wide stands at 190 to 230. Midway between two holes, either side has 48 − 20 − 10 mm.
 * const best = bestOffset({
 *   panel: { lengthMm: 400, widthMm: 100 },
 *   ...{ pitchXMm: 96, pitchYMm: 96, rows: 1, holeDiameterMm: 20, edgeMarginMm: 10 },
 *   keepOuts: [
 *     { shape: 'rectangle', id: 'rail', xMm: 190, yMm: 0, lengthMm: 40, widthMm: 100, clearanceMm: 5, belongsTo: 'base' },
 *   ],
 * });
 * [best.keptCount, best.spareMm, best.proven] // => [4, 13.0, true]
 * ```
 */
export function bestOffset(grid: GridTerms): BestOffset {
  const caller = 'bestOffset';
  checkGrid(caller, grid);
  const { panel, pitchXMm, pitchYMm, holeDiameterMm, edgeMarginMm } = grid;
  const lattice = latticeOf(grid);
  checkCounts(caller, lattice.columns, lattice.rows);
  const awayMm = edgeMarginMm + holeDiameterMm / 2;
  const seeds = seedsOf(panel.lengthMm, grid.columns, pitchXMm, awayMm).flatMap((xMm) =>
    seedsOf(panel.widthMm, grid.rows, pitchYMm, awayMm).map((yMm) => [xMm, yMm] as const),
  );
  const farthestMm = Math.hypot(panel.lengthMm, panel.widthMm);
  for (let capMm = Math.hypot(pitchXMm, pitchYMm) / 2; ; capMm *= 2) {
    const found = searchOffset(
      {
        range: lattice.range,
        holeCount: lattice.columns * lattice.rows,
        encounters: encountersOf(grid, lattice, capMm),
        capMm,
        ...{ gapMm: GAP_MM, mostRanges: MOST_RANGES },
      },
      seeds,
    );
    // What is further away than the cap was left out: where the bound reaches it, look further.
    if (found.kept > 0 && found.boundMm >= capMm && capMm < farthestMm) continue;
    const proven = found.boundMm <= found.spareMm + GAP_MM && !found.moreOpen;
    if (found.kept === 0) {
      return { firstHole: null, keptCount: 0, spareMm: null, spareBoundMm: null, proven };
    }
    return {
      firstHole: firstKept(grid, found),
      keptCount: found.kept,
      spareMm: found.spareMm,
      spareBoundMm: found.boundMm,
      proven,
    };
  }
}
