import { type GridTerms, type KeepOut, layoutHoles } from '@scantling/grids';
import type { Base } from '../plan/base.ts';
import type { Holes } from '../plan/holes.ts';
import type { Obstacle } from '../plan/place.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Top } from '../plan/top.ts';
import type { BlockedHole, PlannedHole } from '../result.ts';
import type { Swing } from '../season.ts';

/** A top and the base under it, with the grid of holes, wherever that begins. */
export interface HolesOverBase {
  readonly top: Top;
  readonly base: Pick<Base, 'members' | 'fixings' | 'shankDiameterMm' | 'screwClearanceMm'>;
  readonly holes: Omit<Holes, 'first'>;
}

const keepOut = (obstacle: Obstacle, belongsTo: KeepOut['belongsTo']): KeepOut => ({
  shape: 'rectangle',
  id: obstacle.name,
  xMm: obstacle.xMm,
  yMm: obstacle.yMm,
  lengthMm: obstacle.lengthMm,
  widthMm: obstacle.widthMm,
  clearanceMm: obstacle.clearanceMm,
  belongsTo,
});

/** What a screw is called among the things that holes must miss. */
export const screwId = (name: string): string => `screw ${name}`;

/** A screw is a keep-out too: it is fixed in the top, so no hole may run into it. */
const screws = ({ fixings, shankDiameterMm, screwClearanceMm }: HolesOverBase['base']): KeepOut[] =>
  fixings.map(({ name, xMm, yMm }) => ({
    shape: 'circle',
    id: screwId(name),
    xMm,
    yMm,
    diameterMm: shankDiameterMm,
    clearanceMm: screwClearanceMm,
    belongsTo: 'top',
  }));

/** What the holes have to miss. */
export const keepOutsOf = ({ top, base }: Pick<HolesOverBase, 'top' | 'base'>): KeepOut[] => [
  ...base.members.map((member) => keepOut(member, 'base')),
  ...top.inlays.map((inlay) => keepOut(inlay, 'strip')),
  ...screws(base),
];

/** A grid whose columns and rows are counted. */
export type CountedGrid = GridTerms & { readonly columns: number; readonly rows: number };

/** The grid as `@scantling/grids` takes it, with the top held at a line. */
export function gridOver(plan: HolesOverBase, fixedLineMm: number, swing: Swing): CountedGrid {
  const { top, holes } = plan;
  const { diameterMm, pitchXMm, pitchYMm, columns, rows, edgeMarginMm } = holes;
  return {
    panel: { lengthMm: top.lengthMm, widthMm: top.widthMm },
    holeDiameterMm: diameterMm,
    pitchXMm,
    pitchYMm,
    columns,
    rows,
    edgeMarginMm,
    keepOuts: keepOutsOf(plan),
    movement: { fixedLineYMm: fixedLineMm, ...swing },
  };
}

/** People count from 1. */
const fromOne = <T extends { readonly row: number; readonly column: number }>(hole: T): T => ({
  ...hole,
  row: hole.row + 1,
  column: hole.column + 1,
});

/** The grid laid out so that it misses the base in every season, and the inlays and screws always. */
export function plannedHoles(
  plan: SettledPlan,
  swing: Swing,
): { holes: PlannedHole[]; blockedHoles: BlockedHole[] } {
  const grid = gridOver(plan, plan.base.fixedLineMm, swing);
  const layout = layoutHoles({ ...grid, firstHole: plan.holes.first });
  return { holes: layout.holes.map(fromOne), blockedHoles: layout.dropped.map(fromOne) };
}
