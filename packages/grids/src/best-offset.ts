import { checkCounts, checkGrid } from './check-layout.ts';
import { encountersOf } from './encounters.ts';
import type { Point } from './geometry.ts';
import { firstHoleOf, latticeOf, seedsOf } from './lattice.ts';
import type { GridTerms } from './layout-holes.ts';
import { searchOffset } from './offset-search.ts';

/** The answer stays no further below the best than this. */
const GAP_MM = 0.01;

/** So many ranges are looked at before the answer is given as it stands, fewer where each takes long. */
const MOST_RANGES = 200_000;
const MOST_LOOKS = 2e8;

/** So many are mostly enough; where they are not, there is a ridge, and a bound that costs more pays. */
const EASY_RANGES = 1000;

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
  const { panel, pitchXMm, pitchYMm } = grid;
  const lattice = latticeOf(grid);
  checkCounts(caller, lattice.columns, lattice.rows);
  const farthestMm = Math.hypot(panel.lengthMm, panel.widthMm);
  for (let capMm = Math.hypot(pitchXMm, pitchYMm) / 2; ; capMm *= 2) {
    const encounters = encountersOf(caller, grid, lattice, capMm);
    const found = searchOffset(
      {
        range: lattice.range,
        holeCount: lattice.columns * lattice.rows,
        ...{ encounters, capMm, gapMm: GAP_MM, easyRanges: EASY_RANGES },
        mostRanges: Math.min(MOST_RANGES, MOST_LOOKS / Math.max(1, encounters.pairs)),
      },
      seedsOf(grid),
    );
    // What is further away than the cap was left out: where the bound reaches it, look further.
    if (found.kept > 0 && found.boundMm >= capMm && capMm < farthestMm) continue;
    const proven = found.boundMm <= found.spareMm + GAP_MM && !found.moreOpen;
    if (found.kept === 0) {
      return { firstHole: null, keptCount: 0, spareMm: null, spareBoundMm: null, proven };
    }
    return {
      firstHole: firstHoleOf(grid, found),
      keptCount: found.kept,
      spareMm: found.spareMm,
      spareBoundMm: found.boundMm,
      proven,
    };
  }
}
