import { plusZero, requireChoice, requireFields, requireThat } from '@scantling/rules';
import { checkCounts, checkGrid } from './check-layout.ts';
import { type Point, SAME_MM } from './geometry.ts';
import type { GridTerms } from './layout-holes.ts';
import { centredRow } from './rules/centred-row.ts';
import { holeCount } from './rules/hole-count.ts';
import type { Edge } from './shape.ts';

/**
 * Where a grid is measured from in one direction: the middle leaves both ends the same, an edge is so far from the
 * nearest centres, a hole that is already there stays a hole of the grid.
 */
export type GridAnchor<EndEdge extends Edge> =
  | { readonly from: 'middle' }
  | {
      readonly from: EndEdge;
      /** From the edge to the centres nearest to it, mm; at least the edge margin and half a hole. */
      readonly distanceMm: number;
    }
  | {
      readonly from: 'hole';
      /** Its centre, mm from the datum; at least the edge margin and half a hole away from both edges. */
      readonly centreMm: number;
      /** Which column or row it is, counted from 0: where their number is given, and only there. */
      readonly index?: number;
    };

/** A panel, the holes of its grid, and where the grid is measured from. */
export interface GridToAnchor
  extends Pick<
    GridTerms,
    'panel' | 'pitchXMm' | 'pitchYMm' | 'holeDiameterMm' | 'edgeMarginMm' | 'staggered' | 'columns' | 'rows'
  > {
  /** Along the grain. */
  readonly anchorX: GridAnchor<'left edge' | 'right edge'>;
  /** Across the grain. */
  readonly anchorY: GridAnchor<'front edge' | 'back edge'>;
}

/** Where a grid begins and how large it is, for `layoutHoles`. */
export interface AnchoredGrid {
  readonly firstHole: Point;
  /** Left out where staggered rows fill the panel and differ by a hole: `layoutHoles` fills them. */
  readonly columns?: number;
  readonly rows: number;
}

/** One direction of the grid. */
interface Direction {
  readonly path: 'anchorX' | 'anchorY';
  readonly anchor: GridAnchor<Edge>;
  readonly near: Edge;
  readonly far: Edge;
  readonly side: 'lengthMm' | 'widthMm';
  readonly sideMm: number;
  readonly pitchMm: number;
  /** Least distance from an edge to a centre, mm. */
  readonly awayMm: number;
  readonly counted: 'columns' | 'rows';
  readonly count: number | undefined;
}

/** Centres at a pitch. */
interface Row {
  readonly firstMm: number;
  readonly count: number;
  /** How many of them come before the hole that was given; 0 where none was. */
  readonly before: number;
}

const CALLER = 'anchorGrid';

function checkDirection({ path, anchor, near, far, side, sideMm, awayMm, count }: Direction): void {
  const [low, high] = [awayMm, sideMm - awayMm];
  const room = high >= low - SAME_MM;
  requireThat(
    CALLER,
    room,
    `panel.${side} at least ${2 * awayMm} for a hole and its edge margins, got ${sideMm}`,
  );
  requireChoice(CALLER, `${path}.from`, anchor?.from, ['middle', near, far, 'hole']);
  if (anchor.from === 'middle') return;
  const [name, mm] =
    anchor.from === 'hole' ? ['centreMm', anchor.centreMm] : ['distanceMm', anchor.distanceMm];
  requireFields(CALLER, path, anchor, { [name]: { min: 0, max: sideMm } });
  const keepsMargin = mm >= low - SAME_MM && mm <= high + SAME_MM;
  requireThat(
    CALLER,
    keepsMargin,
    `${path}.${name} between ${low} and ${high} to keep the edge margin, got ${mm}`,
  );
  if (anchor.from !== 'hole') return;
  if (count) requireFields(CALLER, path, anchor, { index: { min: 0, max: count - 1, integer: true } });
  else {
    const { index } = anchor;
    requireThat(CALLER, index === undefined, `no ${path}.index where the grid fills the panel, got ${index}`);
  }
}

/** A row of the grid; with `moreMm`, room is kept for rows that reach so much further. */
function rowOf(direction: Direction, moreMm = 0): Row {
  const { path, anchor, far, sideMm, pitchMm, awayMm, counted, count } = direction;
  const [low, high] = [awayMm, sideMm - awayMm];
  const fill = (fromMm: number, toMm: number) =>
    holeCount({ usableLengthMm: Math.max(0, toMm - fromMm), pitchMm }).count;
  let [from, to] = [low, high];
  let before = 0;
  if (anchor.from === 'hole') {
    before = anchor.index ?? fill(low, anchor.centreMm) - 1;
    from = anchor.centreMm - before * pitchMm;
  } else if (anchor.from === far) to = sideMm - anchor.distanceMm;
  else if (anchor.from !== 'middle') from = anchor.distanceMm;

  const number = count ?? fill(from, to - moreMm);
  const spanMm = (number - 1) * pitchMm + moreMm;
  requireThat(
    CALLER,
    spanMm <= high - low + SAME_MM,
    `${counted} that span at most ${high - low} mm between the margins, got ${number} that span ${spanMm} mm`,
  );
  if (anchor.from === 'middle')
    from = centredRow({ lengthMm: sideMm - moreMm, pitchMm, count: number }).firstMm;
  if (anchor.from === far) from = to - spanMm;
  requireThat(
    CALLER,
    from >= low - SAME_MM && from + spanMm <= high + SAME_MM,
    `${path} with ${counted} between ${low} and ${high}, got ${number} from ${from} to ${from + spanMm}`,
  );
  return { firstMm: plusZero(from), count: number, before };
}

/** Whether staggered rows have as many holes each, or else every second one a hole more or less. */
function rowsAreEqual({ anchor, sideMm, pitchMm, awayMm, count }: Direction): boolean {
  if (count) return true;
  if (anchor.from === 'hole') return false;
  // Rows of one hole and of none are no grid; rows of one hole each may be.
  if (anchor.from === 'middle')
    return holeCount({ usableLengthMm: Math.max(0, sideMm - 2 * awayMm), pitchMm }).count === 1;
  // A row half a pitch nearer to the edge would keep the margin, but not the distance.
  return anchor.distanceMm - pitchMm / 2 >= awayMm - SAME_MM;
}

/** The first row of staggered ones, as `layoutHoles` takes it. A given hole stands in row `holeRow`. */
function staggeredColumns(direction: Direction, holeRow: number): { row: Row; equal: boolean } {
  const { anchor, pitchMm, awayMm, sideMm } = direction;
  const [low, high] = [awayMm - SAME_MM, sideMm - awayMm + SAME_MM];
  const halfMm = pitchMm / 2;
  const equal = rowsAreEqual(direction);
  const inFirstRow = (): GridAnchor<Edge> => {
    if (anchor.from !== 'hole' || holeRow % 2 === 0) return anchor;
    const beforeMm = anchor.centreMm - halfMm;
    return { ...anchor, centreMm: equal || beforeMm >= low ? beforeMm : anchor.centreMm + halfMm };
  };
  const row = rowOf({ ...direction, anchor: inFirstRow() }, equal ? halfMm : 0);
  const { firstMm } = row;
  requireThat(
    CALLER,
    equal || firstMm - halfMm >= low || firstMm + halfMm <= high,
    `room between the margins for a row ${halfMm} mm before or after the first, got one from ${awayMm} to ${sideMm - awayMm} with the first hole at ${firstMm}`,
  );
  return { row, equal };
}

/**
 * Where a grid of holes begins that is measured from the middle, from an edge or from a hole that is already there, in
 * each direction by itself. Without `columns` or `rows` it fills the panel as far as the edge margin lets it: from an
 * edge towards the other, from a hole both ways.
 *
 * A staggered grid is judged as a whole. With `columns`, every row has as many, and the rows together are as far from
 * the left edge as from the right, or as far from an edge as was asked for. Where it fills the panel from the middle,
 * every row is centred by itself, and rows with a hole more and a hole less alternate. From a distance of half a pitch
 * or more beyond the margin, all rows have as many. A hole given for both directions is one hole; given along the grain
 * only, it stands in the first row.
 *
 * @param input - Panel, pitches, hole size and margin as for `layoutHoles`; what each direction is measured from.
 * @returns The first hole and the counts, to be spread into the grid of `layoutHoles`.
 * @throws RangeError where a field is missing or outside its limits: a grid longer than the panel less its margins, a
 *   hole off the panel or nearer to an edge than the margin, a panel too narrow for staggered rows.
 * @example
 * ```ts
 * import { anchorGrid, layoutHoles } from '@scantling/grids';
 * const terms = { panel: { lengthMm: 600, widthMm: 400 }, pitchXMm: 96, pitchYMm: 96, holeDiameterMm: 20, edgeMarginMm: 30 };
 * // 5 pitches of 96 mm are 480 mm, and 60 mm are left at both ends; 56 + 3 × 96 = 344 mm across
 * const anchored = anchorGrid({ ...terms, anchorX: { from: 'middle' }, anchorY: { from: 'front edge', distanceMm: 56 } });
 * anchored // => { firstHole: { xMm: 60, yMm: 56 }, columns: 6, rows: 4 }
 * layoutHoles({ ...terms, ...anchored, keepOuts: [] }).holes.length // => 24
 * anchorGrid({ ...terms, anchorX: { from: 'hole', centreMm: 300 }, anchorY: { from: 'back edge', distanceMm: 50 } }).firstHole // => { xMm: 108, yMm: 62 }
 * ```
 */
export function anchorGrid(input: GridToAnchor): AnchoredGrid {
  checkGrid(CALLER, { ...input, keepOuts: [] });
  const { panel, pitchXMm, pitchYMm, holeDiameterMm, edgeMarginMm, staggered, anchorX, anchorY } = input;
  checkCounts(CALLER, input.columns ?? 1, input.rows ?? 1);
  const awayMm = edgeMarginMm + holeDiameterMm / 2;
  const across: Direction = {
    ...{ path: 'anchorY', anchor: anchorY, near: 'front edge', far: 'back edge', side: 'widthMm' },
    ...{ sideMm: panel.widthMm, pitchMm: pitchYMm, awayMm, counted: 'rows', count: input.rows },
  };
  const along: Direction = {
    ...{ path: 'anchorX', anchor: anchorX, near: 'left edge', far: 'right edge', side: 'lengthMm' },
    ...{ sideMm: panel.lengthMm, pitchMm: pitchXMm, awayMm, counted: 'columns', count: input.columns },
  };
  checkDirection(along);
  checkDirection(across);
  const rows = rowOf(across);
  const { row, equal } =
    staggered && rows.count > 1 ? staggeredColumns(along, rows.before) : { row: rowOf(along), equal: true };
  checkCounts(CALLER, row.count, rows.count);
  return {
    firstHole: { xMm: row.firstMm, yMm: rows.firstMm },
    ...(equal && { columns: row.count }),
    rows: rows.count,
  };
}
