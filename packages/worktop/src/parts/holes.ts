import { type KeepOut, layoutHoles } from '@scantling/grids';
import type { Obstacle } from '../plan/place.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { BlockedHole, PlannedHole } from '../result.ts';
import type { Swing } from '../season.ts';

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

/** A screw is a keep-out too: it is fixed in the top, so no hole may run into it. */
const screws = ({
  fixings,
  shankDiameterMm,
  screwClearanceMm,
}: Pick<SettledPlan['base'], 'fixings' | 'shankDiameterMm' | 'screwClearanceMm'>): KeepOut[] =>
  fixings.map(({ name, xMm, yMm }) => ({
    shape: 'circle',
    id: `screw ${name}`,
    xMm,
    yMm,
    diameterMm: shankDiameterMm,
    clearanceMm: screwClearanceMm,
    belongsTo: 'top',
  }));

/** What the holes have to miss. */
export const keepOutsOf = ({ top, base }: Pick<SettledPlan, 'top' | 'base'>): KeepOut[] => [
  ...base.members.map((member) => keepOut(member, 'base')),
  ...top.inlays.map((inlay) => keepOut(inlay, 'strip')),
  ...screws(base),
];

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
  const { top, base, holes } = plan;
  const { first, diameterMm, pitchXMm, pitchYMm, columns, rows, edgeMarginMm } = holes;
  const grid = layoutHoles({
    panel: { lengthMm: top.lengthMm, widthMm: top.widthMm },
    firstHole: first,
    holeDiameterMm: diameterMm,
    pitchXMm,
    pitchYMm,
    columns,
    rows,
    edgeMarginMm,
    keepOuts: keepOutsOf(plan),
    movement: { fixedLineYMm: base.fixedLineMm, ...swing },
  });
  return { holes: grid.holes.map(fromOne), blockedHoles: grid.dropped.map(fromOne) };
}
