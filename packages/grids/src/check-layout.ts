import { type Limits, requireChoice, requireFields, requireInputs, requireThat } from '@scantling/rules';
import { checkShape } from './check-shape.ts';
import { SAME_MM } from './geometry.ts';
import type { GridTerms, HoleGrid, KeepIn, KeepOut } from './layout-holes.ts';
import { distance, MOST_HOLES, MOST_KEEP_OUTS, place, side } from './limits.ts';
import { edges } from './obstacles.ts';
import { holeCount } from './rules/hole-count.ts';

const MOST_AREAS = 100;

const share: Limits = { min: 0, max: 20 };
const whole: Limits = { min: 1, max: MOST_HOLES, integer: true };

function requireListOf(caller: string, name: string, list: unknown, most: number): void {
  requireThat(caller, Array.isArray(list), `${name} to be a list, got ${typeof list}`);
  const { length } = list as unknown[];
  requireThat(caller, length <= most, `at most ${most} ${name}, got ${length}`);
}

/** Names that are taken, each with what has it. */
type Names = Map<string, string>;

function claimName(caller: string, path: string, id: unknown, taken: Names): void {
  const given = typeof id === 'string' ? `"${id}"` : typeof id;
  requireThat(caller, typeof id === 'string' && id.trim() !== '', `${path}.id to be a name, got ${given}`);
  const holder = taken.get(id as string);
  requireThat(caller, !holder, `${path}.id unlike every other, got ${given}, the name of ${holder}`);
  taken.set(id as string, path);
}

function checkKeepOuts(caller: string, keepOuts: readonly KeepOut[], taken: Names): void {
  requireListOf(caller, 'keepOuts', keepOuts, MOST_KEEP_OUTS);
  for (const [i, keepOut] of keepOuts.entries()) {
    const path = `keepOuts[${i}]`;
    claimName(caller, path, keepOut?.id, taken);
    checkShape(caller, path, keepOut);
    requireFields(caller, path, keepOut, { clearanceMm: distance });
    requireChoice(caller, `${path}.belongsTo`, keepOut.belongsTo, ['top', 'strip', 'base']);
  }
}

function checkKeepIn(caller: string, keepIn: KeepIn, taken: Names): void {
  claimName(caller, 'keepIn', keepIn.id, taken);
  requireFields(caller, 'keepIn', keepIn, { clearanceMm: distance });
  const { areas } = keepIn;
  requireListOf(caller, 'keepIn.areas', areas, MOST_AREAS);
  requireThat(caller, areas.length > 0, 'keepIn.areas to hold an area, got none');
  for (const [i, area] of areas.entries()) checkShape(caller, `keepIn.areas[${i}]`, area);
}

/** Throws where a grid makes no sense, wherever it begins. */
export function checkGrid(caller: string, grid: GridTerms): void {
  const { panel, pitchXMm, pitchYMm, holeDiameterMm, edgeMarginMm, staggered, movement } = grid ?? {};
  requireFields(caller, 'panel', panel, { lengthMm: side, widthMm: side });
  requireInputs(
    caller,
    { holeDiameterMm, edgeMarginMm },
    { holeDiameterMm: { min: 0.1, max: 1000 }, edgeMarginMm: distance },
  );
  // Holes at a pitch below their diameter would run into each other; in a staggered grid, rows may be nearer.
  const apart = { min: Math.max(1, holeDiameterMm), max: 10_000 };
  requireInputs(caller, { pitchXMm }, { pitchXMm: apart });
  const rowsApart = Math.sqrt(Math.max(0, holeDiameterMm ** 2 - (pitchXMm / 2) ** 2));
  const nearer = { min: Math.max(1, holeDiameterMm / 2, rowsApart), max: 10_000 };
  requireInputs(caller, { pitchYMm }, { pitchYMm: staggered ? nearer : apart });
  requireThat(
    caller,
    staggered === undefined || typeof staggered === 'boolean',
    `staggered to be true or false, got ${typeof staggered}`,
  );
  if (movement !== undefined) {
    requireFields(caller, 'movement', movement, { fixedLineYMm: place, shrinkPct: share, swellPct: share });
  }
  const taken: Names = new Map(edges.map((edge) => [edge, 'an edge of the panel']));
  checkKeepOuts(caller, grid.keepOuts, taken);
  if (grid.keepIn !== undefined) checkKeepIn(caller, grid.keepIn, taken);
}

/** As many as keep the margin at the far end; the first one stands in any case. */
const fill = (sideMm: number, firstMm: number, pitchMm: number, awayMm: number) =>
  holeCount({ usableLengthMm: Math.max(0, sideMm - awayMm - firstMm), pitchMm }).count;

/** Throws where there would be more holes than anybody bores. */
export function checkCounts(caller: string, columns: number, rows: number): void {
  requireInputs(caller, { columns, rows }, { columns: whole, rows: whole });
  requireThat(
    caller,
    columns * rows <= MOST_HOLES,
    `at most ${MOST_HOLES} holes, got columns ${columns} by rows ${rows}`,
  );
}

/** Where a staggered row begins: half a pitch before the first where a filled panel has room, else half a pitch after. */
function staggeredStart({ firstHole, pitchXMm, columns, edgeMarginMm, holeDiameterMm }: HoleGrid): number {
  const beforeMm = firstHole.xMm - pitchXMm / 2;
  const fits = columns === undefined && beforeMm >= edgeMarginMm + holeDiameterMm / 2 - SAME_MM;
  return fits ? beforeMm : firstHole.xMm + pitchXMm / 2;
}

/** Throws where a layout makes no sense; gives the number of columns and rows, and where each row begins, where it does. */
export function checkLayout(grid: HoleGrid) {
  const caller = 'layoutHoles';
  checkGrid(caller, grid);
  const { panel, firstHole, pitchXMm, pitchYMm, holeDiameterMm, edgeMarginMm, staggered } = grid;
  requireFields(caller, 'firstHole', firstHole, {
    xMm: { min: 0, max: panel.lengthMm },
    yMm: { min: 0, max: panel.widthMm },
  });
  const awayMm = edgeMarginMm + holeDiameterMm / 2;
  const columnsFrom = (xMm: number) => grid.columns ?? fill(panel.lengthMm, xMm, pitchXMm, awayMm);
  const columns = columnsFrom(firstHole.xMm);
  const rows = grid.rows ?? fill(panel.widthMm, firstHole.yMm, pitchYMm, awayMm);
  checkCounts(caller, columns, rows);
  const secondXMm = staggered ? staggeredStart(grid) : firstHole.xMm;
  const inSecondRow = columnsFrom(secondXMm);
  const startOf = (row: number) =>
    row % 2 === 0 ? { xMm: firstHole.xMm, columns } : { xMm: secondXMm, columns: inSecondRow };
  return { columns, rows, startOf };
}
