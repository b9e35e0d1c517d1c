import { type Limits, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import type { HoleGrid, KeepOut } from './layout-holes.ts';
import { holeCount } from './rules/hole-count.ts';

const CALLER = 'layoutHoles';
const MOST_HOLES = 20_000;
const MOST_KEEP_OUTS = 1000;
const EDGES = ['left edge', 'right edge', 'front edge', 'back edge'];

const side: Limits = { min: 1, max: 20_000 };
const place: Limits = { min: -20_000, max: 20_000 };
const distance: Limits = { min: 0, max: 20_000 };
const share: Limits = { min: 0, max: 20 };
const whole: Limits = { min: 1, max: MOST_HOLES, integer: true };

/** Checks fields that lie inside others under the path that the reader wrote: `panel.lengthMm`. */
function requireFields(
  path: string,
  given: object | undefined,
  limits: Readonly<Record<string, Limits>>,
): void {
  const named = (record: object) =>
    Object.fromEntries(Object.entries(record).map(([name, value]) => [`${path}.${name}`, value]));
  requireInputs(CALLER, named(given ?? {}), named(limits) as Record<string, Limits>);
}

function checkKeepOuts(keepOuts: readonly KeepOut[]): void {
  requireThat(CALLER, Array.isArray(keepOuts), `keepOuts to be a list, got ${typeof keepOuts}`);
  requireThat(
    CALLER,
    keepOuts.length <= MOST_KEEP_OUTS,
    `at most ${MOST_KEEP_OUTS} keepOuts, got ${keepOuts.length}`,
  );
  const taken = new Map(EDGES.map((edge) => [edge, 'an edge of the panel']));
  for (const [i, keepOut] of keepOuts.entries()) {
    const path = `keepOuts[${i}]`;
    const { id, belongsTo } = keepOut ?? {};
    requireThat(
      CALLER,
      typeof id === 'string' && id.trim() !== '',
      `${path}.id to be a name, got ${typeof id === 'string' ? `"${id}"` : typeof id}`,
    );
    const holder = taken.get(id);
    requireThat(CALLER, !holder, `${path}.id unlike every other, got "${id}", the name of ${holder}`);
    taken.set(id, path);
    requireFields(path, keepOut, {
      xMm: place,
      yMm: place,
      lengthMm: distance,
      widthMm: distance,
      clearanceMm: distance,
    });
    requireChoice(CALLER, `${path}.belongsTo`, belongsTo, ['top', 'base']);
  }
}

/** As many as keep the margin at the far end; the first one stands in any case. */
const fill = (sideMm: number, firstMm: number, pitchMm: number, awayMm: number) =>
  holeCount({ usableLengthMm: Math.max(0, sideMm - awayMm - firstMm), pitchMm }).count;

/** Throws where a layout makes no sense; gives the number of columns and rows where it does. */
export function checkLayout(grid: HoleGrid): { columns: number; rows: number } {
  const { panel, firstHole, pitchXMm, pitchYMm, holeDiameterMm, edgeMarginMm, movement } = grid ?? {};
  requireFields('panel', panel, { lengthMm: side, widthMm: side });
  requireInputs(
    CALLER,
    { holeDiameterMm, edgeMarginMm },
    { holeDiameterMm: { min: 0.1, max: 1000 }, edgeMarginMm: distance },
  );
  // Holes at a pitch below their diameter would run into each other.
  const pitch = { min: Math.max(1, holeDiameterMm), max: 10_000 };
  requireInputs(CALLER, { pitchXMm, pitchYMm }, { pitchXMm: pitch, pitchYMm: pitch });
  requireFields('firstHole', firstHole, {
    xMm: { min: 0, max: panel.lengthMm },
    yMm: { min: 0, max: panel.widthMm },
  });
  if (movement !== undefined) {
    requireFields('movement', movement, { fixedLineYMm: place, shrinkPct: share, swellPct: share });
  }
  checkKeepOuts(grid.keepOuts);
  const awayMm = edgeMarginMm + holeDiameterMm / 2;
  const columns = grid.columns ?? fill(panel.lengthMm, firstHole.xMm, pitchXMm, awayMm);
  const rows = grid.rows ?? fill(panel.widthMm, firstHole.yMm, pitchYMm, awayMm);
  requireInputs(CALLER, { columns, rows }, { columns: whole, rows: whole });
  requireThat(
    CALLER,
    columns * rows <= MOST_HOLES,
    `at most ${MOST_HOLES} holes, got columns ${columns} by rows ${rows}`,
  );
  return { columns, rows };
}
