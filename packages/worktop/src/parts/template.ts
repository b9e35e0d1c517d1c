import { type GridPlace, stepTemplate, type TemplatePlan } from '@scantling/grids';
import { least } from '../checks/check.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { BlockedHole, PlannedHole } from '../result.ts';
import type { HolePlace } from './accessories.ts';

/** Where the template is put, and what is drilled through it there. */
export interface TemplateStep {
  /** Where the template's first hole stands, counted from 1. */
  readonly column: number;
  readonly row: number;
  /** The two finished holes that place it; none for the first, which stands against the front and left edges. */
  readonly pins: readonly HolePlace[];
  readonly pinSpanMm: number | null;
  readonly drilled: readonly HolePlace[];
  /** Farthest that one of those holes may be off, with every error at its limit, mm. */
  readonly worstCaseMm: number;
}

/** How far off a drilled hole may be, and what is then left beside it. */
export interface SteppedHoleError extends HolePlace {
  /** With every error at its limit, and with errors that vary independently, mm. */
  readonly worstCaseMm: number;
  readonly rootSumSquareMm: number;
  /** From its rim to what is nearest with the worst of these, all year, mm; negative where they may meet. */
  readonly leftMm: number;
  readonly nearest: string;
}

/** How all holes are drilled through a template that is stepped along. */
export interface PlannedTemplate {
  readonly steps: readonly TemplateStep[];
  /** Proved: nobody needs fewer. */
  readonly leastStepCount: number;
  readonly proven: boolean;
  readonly unreached: readonly HolePlace[];
  /** Why they are not reached; `null` where all are. */
  readonly why: string | null;
  /** The hole that may be farthest off, and the one that comes nearest to what it has to miss. */
  readonly farthestOff: SteppedHoleError | null;
  readonly tightest: SteppedHoleError | null;
}

/** People count from 1. */
const fromOne = ({ column, row }: GridPlace): HolePlace => ({ column: column + 1, row: row + 1 });

/** What is left beside each hole once it is as far off as it may be. */
function errorsOf(stepped: TemplatePlan['holes'], holes: readonly PlannedHole[]): SteppedHoleError[] {
  const planned = new Map(holes.map((hole) => [`${hole.column} ${hole.row}`, hole]));
  return stepped.flatMap((hole) => {
    const place = fromOne(hole);
    const { clearanceMm, nearest } = planned.get(`${place.column} ${place.row}`) as PlannedHole;
    const worstCaseMm = hole.worstCase.distanceMm;
    const rootSumSquareMm = hole.rootSumSquare.distanceMm;
    return { ...place, worstCaseMm, rootSumSquareMm, leftMm: clearanceMm - worstCaseMm, nearest };
  });
}

export function plannedTemplate(
  { template, holes: grid }: SettledPlan,
  holes: readonly PlannedHole[],
  blockedHoles: readonly BlockedHole[],
): PlannedTemplate | null {
  if (!template) return null;
  const { columns, rows, ...errors } = template;
  const found = stepTemplate({
    columns: grid.columns,
    rows: grid.rows,
    pitchXMm: grid.pitchXMm,
    pitchYMm: grid.pitchYMm,
    template: { columns, rows },
    dropped: blockedHoles.map(({ column, row }) => ({ column: column - 1, row: row - 1 })),
    ...errors,
  });
  const drilled = errorsOf(found.holes, holes);
  return {
    steps: found.placements.map((placement) => ({
      ...fromOne(placement),
      pins: placement.pins.map(fromOne),
      pinSpanMm: placement.pinSpanMm,
      drilled: placement.bores.map(fromOne),
      worstCaseMm: placement.worstCase.distanceMm,
    })),
    leastStepCount: found.leastPlacementCount,
    proven: found.proven,
    unreached: found.unreached.map(fromOne),
    why: found.why,
    farthestOff: least(drilled, ({ worstCaseMm }) => -worstCaseMm),
    tightest: least(drilled, ({ leftMm }) => leftMm),
  };
}
