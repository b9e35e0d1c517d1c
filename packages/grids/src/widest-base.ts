import { plusZero, requireChoice, requireFields, requireInputs, requireThat } from '@scantling/rules';
import { bestOffset } from './best-offset.ts';
import { checkCounts, checkGrid } from './check-layout.ts';
import { checkPairs, encountersOf } from './encounters.ts';
import type { Point } from './geometry.ts';
import { type Lattice, latticeOf, rowStart, seedsOf } from './lattice.ts';
import type { GridTerms, KeepOut } from './layout-holes.ts';
import { place } from './limits.ts';
import { outlineOf, type Shape } from './shape.ts';
import { type Body, bodyOf, seenAlong } from './slide-blocks.ts';
import { type Slide, searchSlides } from './slide-search.ts';

/** A setting stays no further below the widest than this. */
const GAP_MM = 0.01;

/** So many ranges of offsets are looked at before the answer is given as it stands, fewer where each takes long. */
const MOST_RANGES = 20_000;
const MOST_LOOKS = 1e7;

const MOST_PARTS = 8;
const MOST_DROPPED = 10;

const ways = ['left', 'right', 'front', 'back'] as const;

/** A part of the base that slides, with everything that is fixed to it. */
export interface SlidingPart {
  /** Its name, unlike every other part's. */
  readonly id: string;
  /** Ids of the keep-outs that slide with it, one or more. They belong to the base; none is a band or slides with another part too. */
  readonly keepOutIds: readonly string[];
  /** Where it goes to make the base wider, seen from above with the datum at the front left. */
  readonly widensTowards: 'left' | 'right' | 'front' | 'back';
  /** Least that it may slide that way from where it is drawn, mm, −20 000 to 20 000: below 0, it may slide back. */
  readonly leastSlideMm: number;
  /** Most that it may slide that way, mm, no less than the least, up to 20 000. */
  readonly mostSlideMm: number;
}

/** A grid of given size over a base with parts that slide. */
export interface SlidingBase extends GridTerms {
  readonly columns: number;
  readonly rows: number;
  /** Where the grid begins, where that is not to be found: its first hole, on the panel. */
  readonly firstHole?: Point | undefined;
  /** 1 to 8. */
  readonly parts: readonly SlidingPart[];
  /** Holes that one would do without for a wider base, 0 to 10. */
  readonly mostDroppedCount: number;
}

/** How a base stands, and where the grid begins so that it can. */
export interface BaseSetting {
  /** Holes that are lost. */
  readonly droppedCount: number;
  /** What all parts have slid the way that widens, added up, mm. */
  readonly spreadMm: number;
  /** No setting that drops no more holes, and leaves the others 0.01 mm more than they ask for, is wider than this, mm. */
  readonly spreadBoundMm: number;
  /** How far each part has slid the way that widens, in the order of the parts. */
  readonly slides: readonly { readonly id: string; readonly slideMm: number }[];
  /** For `layoutHoles`: as given, or where the tightest hole has most to spare at this setting. */
  readonly firstHole: Point;
  /** The keep-outs as they then stand, for `layoutHoles`. */
  readonly keepOuts: readonly KeepOut[];
}

/** The widest settings of a base. */
export interface WidestBase {
  /** From the one that drops fewest holes on, each wider than the one before; none where more than may be would be lost. */
  readonly settings: readonly BaseSetting[];
  /**
   * Whether it is proven that no setting is wider by more than 0.01 mm, or drops fewer holes, with 0.01 mm to spare at
   * every hole it keeps. What fits with less than that may be missed.
   */
  readonly proven: boolean;
}

/** What the keep-outs of a part have to be; `taken` holds those of the parts before. */
function checkKeepOutIds(
  caller: string,
  path: string,
  { id, keepOutIds }: SlidingPart,
  keepOuts: readonly KeepOut[],
  taken: Map<string, string>,
): void {
  requireThat(caller, Array.isArray(keepOutIds), `${path} to be a list, got ${typeof keepOutIds}`);
  requireThat(caller, keepOutIds.length > 0, `${path} to name a keep-out, got none`);
  for (const [i, keepOutId] of keepOutIds.entries()) {
    const given = JSON.stringify(keepOutId);
    const keepOut = keepOuts.find((one) => one.id === keepOutId);
    requireThat(caller, keepOut !== undefined, `${path}[${i}] to be the id of a keep-out, got ${given}`);
    const slides = keepOut?.belongsTo === 'base' && keepOut.shape !== 'band';
    requireThat(caller, slides, `${path}[${i}] to belong to the base and to be no band, got ${given}`);
    const holder = taken.get(keepOutId);
    const once = `${path}[${i}] to be named once, got ${given}, which slides with "${holder}" already`;
    requireThat(caller, holder === undefined, once);
    taken.set(keepOutId, id);
  }
}

function checkParts(caller: string, { parts, keepOuts }: SlidingBase): void {
  requireThat(caller, Array.isArray(parts), `parts to be a list, got ${typeof parts}`);
  const { length } = parts;
  requireThat(caller, length >= 1 && length <= MOST_PARTS, `1 to ${MOST_PARTS} parts, got ${length}`);
  const names = new Set<string>();
  const taken = new Map<string, string>();
  for (const [i, part] of parts.entries()) {
    const path = `parts[${i}]`;
    const { id, leastSlideMm, mostSlideMm, widensTowards } = part ?? {};
    const named = typeof id === 'string' && id.trim() !== '' && !names.has(id);
    requireThat(caller, named, `${path}.id to be a name unlike every other, got ${JSON.stringify(id)}`);
    names.add(id);
    requireFields(caller, path, { leastSlideMm }, { leastSlideMm: place });
    requireFields(caller, path, { mostSlideMm }, { mostSlideMm: { ...place, min: leastSlideMm } });
    requireChoice(caller, `${path}.widensTowards`, widensTowards, ways);
    checkKeepOutIds(caller, `${path}.keepOutIds`, part, keepOuts, taken);
  }
}

/** Every hole of a grid of given size at offset 0. */
function placesOf(grid: SlidingBase): Point[] {
  const rows = Array.from({ length: grid.rows }, (_, row) => row);
  const columns = Array.from({ length: grid.columns }, (_, column) => column);
  return rows.flatMap((row) =>
    columns.map((column) => ({
      xMm: rowStart(grid, row) + column * grid.pitchXMm,
      yMm: row * grid.pitchYMm,
    })),
  );
}

/** A part as the holes see it. */
function slideOf(part: SlidingPart, grid: SlidingBase): Slide {
  const { widensTowards, leastSlideMm, mostSlideMm, keepOutIds } = part;
  const axis = widensTowards === 'left' || widensTowards === 'right' ? 'x' : 'y';
  return {
    axis,
    sign: widensTowards === 'right' || widensTowards === 'back' ? 1 : -1,
    leastMm: leastSlideMm,
    mostMm: mostSlideMm,
    bodies: grid.keepOuts
      .filter(({ id }) => keepOutIds.includes(id))
      .map((keepOut) => {
        const neededMm = grid.holeDiameterMm / 2 + keepOut.clearanceMm;
        return bodyOf(axis, outlineOf(keepOut, grid.panel), neededMm);
      }),
    holes: placesOf(grid).map((at) => seenAlong(axis, at)),
  };
}

/** A box counts as one side. */
const sidesIn = (bodies: readonly Body[]) =>
  bodies.reduce((sum, { corners }) => sum + Math.max(1, corners.length), 0);

/** A shape further along x and y. */
function shifted<S extends Shape>(shape: S, xMm: number, yMm: number): S {
  const move = (point: Point) => ({ xMm: point.xMm + xMm, yMm: point.yMm + yMm });
  if (shape.shape === 'band') return shape;
  return shape.shape === 'polygon'
    ? { ...shape, corners: shape.corners.map(move) }
    : { ...shape, ...move(shape) };
}

/** The keep-outs with the parts where they have slid. */
function standing({ keepOuts, parts }: SlidingBase, slides: readonly Slide[], slidesMm: readonly number[]) {
  return keepOuts.map((keepOut) => {
    const i = parts.findIndex(({ keepOutIds }) => keepOutIds.includes(keepOut.id));
    const { axis, sign } = slides[i] ?? { axis: 'x', sign: 1 };
    const byMm = sign * (slidesMm[i] ?? 0);
    return axis === 'x' ? shifted(keepOut, byMm, 0) : shifted(keepOut, 0, byMm);
  });
}

/** The lattice, at the one place where it begins if that is given. */
function placed(lattice: Lattice, { firstHole }: SlidingBase): Lattice {
  if (!firstHole) return lattice;
  const { xMm, yMm } = firstHole;
  return { ...lattice, range: { x1: xMm, x2: xMm, y1: yMm, y2: yMm } };
}

/** Where the tightest hole has most to spare, if that keeps as many holes as the place found. */
function roomiest(grid: GridTerms, found: Point, wantedCount: number): Point {
  const { firstHole, keptCount } = bestOffset(grid);
  return firstHole && keptCount >= wantedCount ? firstHole : found;
}

/**
 * How wide a base with sliding parts can stand under a grid of holes, where the grid then begins, and how much wider it
 * could stand for every hole that one does without. With `movement`, over every season. Found by branch and bound over
 * the offset of the grid, so that the answer comes with its proof.
 *
 * @param base - A grid of given size as for `bestOffset`, and the parts of the base that slide. Keep-outs that are on
 *   no part stay where they are. Parts are held against holes, not against each other: their limits keep them apart.
 * @returns The widest setting that drops fewest holes, and each wider one with how many holes it costs, up to
 *   `mostDroppedCount`. A setting that fits with less than 0.01 mm to spare may be missed, as by `bestOffset`.
 * @throws RangeError where a field is missing or outside its limits, or a part carries what cannot slide.
 * @example
 * ```ts
 * import { widestBase } from '@scantling/grids';
 * // Holes at 50, 150 … 450 mm; a leg 40 mm wide goes up to 80 mm to the right. Unhindered until its edge is 5 mm from the rim of a hole.
 * const leg = { shape: 'rectangle', id: 'leg', xMm: 270, yMm: 0, lengthMm: 40, widthMm: 100, clearanceMm: 5, belongsTo: 'base' };
 * const { settings, proven } = widestBase({
 *   panel: { lengthMm: 500, widthMm: 100 },
 *   ...{ pitchXMm: 100, pitchYMm: 100, columns: 5, rows: 1, holeDiameterMm: 20, edgeMarginMm: 40 },
 *   keepOuts: [leg],
 *   parts: [{ id: 'leg frame', keepOutIds: ['leg'], widensTowards: 'right', leastSlideMm: 0, mostSlideMm: 80 }],
 *   mostDroppedCount: 1,
 * });
 * settings.map(({ droppedCount, spreadMm }) => [droppedCount, spreadMm]) // => [[0, 25.0], [1, 80.0]]
 * proven // => true
 * ```
 */
export function widestBase(base: SlidingBase): WidestBase {
  const caller = 'widestBase';
  checkGrid(caller, base);
  checkCounts(caller, base.columns, base.rows);
  const { mostDroppedCount, parts } = base;
  requireInputs(
    caller,
    { mostDroppedCount },
    { mostDroppedCount: { min: 0, max: MOST_DROPPED, integer: true } },
  );
  checkParts(caller, base);
  if (base.firstHole !== undefined) {
    requireFields(caller, 'firstHole', base.firstHole, {
      xMm: { min: 0, max: base.panel.lengthMm },
      yMm: { min: 0, max: base.panel.widthMm },
    });
  }
  const lattice = placed(latticeOf(base), base);
  const slides = parts.map((part) => slideOf(part, base));
  const sliding = new Set(parts.flatMap(({ keepOutIds }) => keepOutIds));
  const staying = { ...base, keepOuts: base.keepOuts.filter(({ id }) => !sliding.has(id)) };
  const holeCount = base.columns * base.rows;
  const pairs = slides.reduce((sum, { bodies }) => sum + holeCount * sidesIn(bodies), 0);
  checkPairs(caller, pairs);
  const widest = searchSlides(
    {
      range: lattice.range,
      encounters: encountersOf(caller, staying, lattice, GAP_MM),
      slides,
      movement: base.movement,
      mostDroppedCount,
      gapMm: GAP_MM,
      mostRanges: Math.min(MOST_RANGES, MOST_LOOKS / pairs),
    },
    base.firstHole ? [[base.firstHole.xMm, base.firstHole.yMm]] : seedsOf(base),
  );
  const settings: BaseSetting[] = [];
  for (const [droppedCount, { spreadMm, boundMm, xMm, yMm, slidesMm }] of widest.entries()) {
    if (spreadMm <= (settings.at(-1)?.spreadMm ?? Number.NEGATIVE_INFINITY)) continue;
    const keepOuts = standing(base, slides, slidesMm);
    settings.push({
      ...{ droppedCount, spreadMm: plusZero(spreadMm), spreadBoundMm: plusZero(boundMm) },
      slides: parts.map(({ id }, i) => ({ id, slideMm: plusZero(slidesMm[i] as number) })),
      firstHole: base.firstHole ?? roomiest({ ...base, keepOuts }, { xMm, yMm }, holeCount - droppedCount),
      keepOuts,
    });
  }
  return { settings, proven: widest.every(({ spreadMm, boundMm }) => boundMm <= spreadMm + GAP_MM) };
}
