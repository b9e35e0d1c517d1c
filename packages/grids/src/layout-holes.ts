import { checkLayout } from './check-layout.ts';
import { distanceToBox, type Movement, type Point, SAME_MM, wayOf } from './geometry.ts';
import { distanceMm, type Obstacle, obstaclesOf } from './obstacles.ts';
import { pitchPosition } from './rules/pitch-position.ts';
import type { Panel, Shape } from './shape.ts';

/** Something that holes must miss. */
export type KeepOut = Shape & {
  /** Its name, unlike every other and unlike the names of the panel's edges. */
  readonly id: string;
  /** Least distance that a hole's rim keeps from it, mm, 0 to 20 000. */
  readonly clearanceMm: number;
  /** What is there, in a few words. */
  readonly reason?: string;
  /** The top and a strip let into it move with the holes; the base beneath stays. */
  readonly belongsTo: 'top' | 'strip' | 'base';
};

/** Where on the top holes may be: every hole lies whole in one of the areas. */
export interface KeepIn {
  /** Its name, unlike those of the keep-outs and of the panel's edges. */
  readonly id: string;
  /** Least distance that a hole's rim keeps from the outline of its area, mm, 0 to 20 000. */
  readonly clearanceMm: number;
  /** At most 100. */
  readonly areas: readonly Shape[];
}

/** Holes at a pitch on a panel and what they must miss, wherever the grid begins. */
export interface GridTerms {
  readonly panel: Panel;
  /** Along the grain, centre to centre, mm, up to 10 000; no two holes may overlap. */
  readonly pitchXMm: number;
  /** Across the grain, centre to centre, mm, up to 10 000; no two holes may overlap. */
  readonly pitchYMm: number;
  /**
   * Every second row, the second one first, stands half a pitch further along; where the grid fills the panel it begins
   * half a pitch before the first, if that keeps the margin.
   */
  readonly staggered?: boolean;
  /** How many along the grain; left out, as many as keep the edge margin at the far end. */
  readonly columns?: number;
  /** How many across the grain; left out, as many as keep the edge margin at the back. */
  readonly rows?: number;
  /** Diameter of every hole, mm, 0.1 to 1000. */
  readonly holeDiameterMm: number;
  /** Least distance from a hole's rim to an edge of the panel, mm, 0 to 20 000. */
  readonly edgeMarginMm: number;
  /** At most 1000. */
  readonly keepOuts: readonly KeepOut[];
  /** Left out, holes may be anywhere. */
  readonly keepIn?: KeepIn;
  /** How the panel moves over the base; left out, clearances are those of building day. */
  readonly movement?: Movement;
}

/** A panel, a grid of holes and what they must miss. */
export interface HoleGrid extends GridTerms {
  /** Centre of the hole nearest to the datum: column 0, row 0. It lies on the panel. */
  readonly firstHole: Point;
}

/** Something that a hole comes too near to. */
export interface Conflict {
  /** Id of the keep-out or of the keep-in, or the name of the edge. */
  readonly with: string;
  /** Clearance there is, mm; negative where they overlap. */
  readonly clearanceMm: number;
  /** Clearance it asks for, mm. */
  readonly neededMm: number;
}

/** A hole of the grid. */
export interface Hole extends Point {
  /** Counted from 0 at the front. */
  readonly row: number;
  /** Counted from 0 at the left. */
  readonly column: number;
  /** From its rim to whatever is nearest, mm; negative where they overlap. */
  readonly clearanceMm: number;
  /** What is nearest: the id of a keep-out or of the keep-in, or the name of an edge. */
  readonly nearest: string;
}

/** A place of the grid that gets no hole. */
export interface DroppedHole extends Hole {
  /** Everything that it would come too near to. */
  readonly conflicts: readonly Conflict[];
  /** The same as a sentence. */
  readonly why: string;
}

/** Where the holes are, and where none may be. */
export interface HoleLayout {
  readonly columns: number;
  readonly rows: number;
  /** Row by row from the front, each from the left. */
  readonly holes: readonly Hole[];
  readonly dropped: readonly DroppedHole[];
}

/** To a hundredth of a millimetre, what there is rounded down and what is needed rounded up: a lack always shows. */
function sentence(clearanceMm: number, { name, neededMm, reason, within }: Obstacle): string {
  const is = Math.floor(clearanceMm * 100 + SAME_MM) / 100;
  const needed = Math.ceil(neededMm * 100 - SAME_MM) / 100;
  const what = reason ? `${name} (${reason})` : name;
  const [apart, over] = within ? ['inside', 'reaches out of'] : ['from', 'overlaps'];
  return `${is < 0 ? `${over} ${what} by ${-is} mm` : `${is} mm ${apart} ${what}`}, needs ${needed} mm`;
}

/**
 * Lays out a grid of round holes on a panel and drops those that come too near to an edge or to a keep-out. With
 * `movement`, a keep-out that belongs to the base is judged by the least clearance over the seasons.
 *
 * @param grid - Panel, grid, hole size and what the holes must miss; all in mm, x along the grain, y across it, from
 *   the front-left corner seen from above.
 * @returns The holes that may be bored, each with its clearance to what is nearest, and the dropped ones with why.
 * @throws RangeError where a field is missing or outside its limits: holes that would overlap, a first hole off the
 *   panel, two keep-outs of one name, more than 20 000 holes.
 * @example
 * ```ts
 * import { layoutHoles } from '@scantling/grids';
 * const layout = layoutHoles({
 *   panel: { lengthMm: 500, widthMm: 300 },
 *   firstHole: { xMm: 50, yMm: 50 },
 *   pitchXMm: 100,
 *   pitchYMm: 100,
 *   holeDiameterMm: 20,
 *   edgeMarginMm: 25,
 *   keepOuts: [
 *     { shape: 'rectangle', id: 'front rail', xMm: 0, yMm: 65, lengthMm: 180, widthMm: 40, clearanceMm: 6, belongsTo: 'base' },
 *   ],
 * });
 * layout.holes.length // => 13
 * layout.dropped.map(({ xMm, yMm, why }) => [xMm, yMm, why]) // => [[50, 50, '5 mm from front rail, needs 6 mm'], [150, 50, '5 mm from front rail, needs 6 mm']]
 * ```
 */
export function layoutHoles(grid: HoleGrid): HoleLayout {
  const { columns, rows, startOf } = checkLayout(grid);
  const { firstHole, pitchXMm, pitchYMm, holeDiameterMm } = grid;
  const obstacles = obstaclesOf(grid);
  const holes: Hole[] = [];
  const dropped: DroppedHole[] = [];
  for (let row = 0; row < rows; row++) {
    const yMm = pitchPosition({ startMm: firstHole.yMm, pitchMm: pitchYMm, index: row }).positionMm;
    const start = startOf(row);
    const still = { lowMm: yMm, highMm: yMm };
    const moving = grid.movement ? wayOf(yMm, grid.movement) : still;
    for (let column = 0; column < start.columns; column++) {
      const xMm = pitchPosition({ startMm: start.xMm, pitchMm: pitchXMm, index: column }).positionMm;
      let clearanceMm = Number.POSITIVE_INFINITY;
      let nearest = '';
      const tooNear: { to: Obstacle; clearanceMm: number }[] = [];
      for (const to of obstacles) {
        // Most things are so far away that the boxes round them say enough.
        const toBoxMm = distanceToBox(xMm, to.movement ? moving : still, to.box) - holeDiameterMm / 2;
        if (toBoxMm >= clearanceMm && toBoxMm >= to.neededMm) continue;
        const toItMm = distanceMm(to, xMm, yMm) - holeDiameterMm / 2;
        if (toItMm < clearanceMm) {
          clearanceMm = toItMm;
          nearest = to.name;
        }
        if (toItMm < to.neededMm - SAME_MM) tooNear.push({ to, clearanceMm: toItMm });
      }
      const hole = { row, column, xMm, yMm, clearanceMm, nearest };
      if (tooNear.length === 0) {
        holes.push(hole);
        continue;
      }
      dropped.push({
        ...hole,
        conflicts: tooNear.map(({ to, ...one }) => ({ with: to.name, ...one, neededMm: to.neededMm })),
        why: tooNear.map((one) => sentence(one.clearanceMm, one.to)).join('; '),
      });
    }
  }
  return { columns, rows, holes, dropped };
}
