import { type Claim, claim, inOrder } from './claim.ts';
import { choice, figure, optional, section } from './field.ts';
import type { Plan } from './plan.ts';

/** How a machine drills the holes: see its manual, and the drill's sheet. Heights are above the face of the top. */
export interface Drilling {
  /** Where nothing stands in the way of a rapid move, mm. */
  readonly safeHeightMm: number;
  /** Where feeding begins, mm. */
  readonly retractPlaneMm: number;
  /** Height of the moves from hole to hole: what stands up between them decides. */
  readonly betweenHolesAt: 'safe height' | 'retract plane';
  /** How far the drill's tip goes below the underside, into the backing board, mm. */
  readonly belowUndersideMm: number;
  /** Depth drilled between two retracts that clear the chips, mm; left out, in one go. */
  readonly peckMm?: number | undefined;
  readonly feedMmPerMin: number;
  readonly speedRpm: number;
  /** Pause in which the spindle comes up to speed, ms; left out, none. */
  readonly spindleStartMs?: number | undefined;
}

const height = { min: 0.1, max: 1000 };

export const drillingField = section<Drilling>('How a machine drills the holes; heights above the face.', {
  safeHeightMm: figure('Where nothing stands in the way of a rapid move.', height),
  retractPlaneMm: figure('Where feeding begins.', height),
  betweenHolesAt: choice('Height of the moves from hole to hole.', ['safe height', 'retract plane']),
  belowUndersideMm: figure('How far the drill’s tip goes into the backing board.', { min: 0, max: 100 }),
  peckMm: optional(figure('Depth between two retracts; left out, in one go.', height)),
  feedMmPerMin: figure('Feed.', { min: 1, max: 20_000 }),
  speedRpm: figure('Speed of the spindle.', { min: 1, max: 100_000, integer: true }),
  spindleStartMs: optional(figure('Pause until the spindle is up to speed.', { min: 1, max: 60_000 })),
});

export function drillingClaims({ drilling, top }: Plan): Claim[] {
  if (!drilling) return [];
  const { safeHeightMm, retractPlaneMm, belowUndersideMm, peckMm } = drilling;
  const depthMm = top.thicknessMm + belowUndersideMm;
  const deep = Number(depthMm.toFixed(3));
  return [
    inOrder(['drilling.retractPlaneMm', retractPlaneMm], ['drilling.safeHeightMm', safeHeightMm]),
    ...(peckMm == null
      ? []
      : [
          claim('drilling.peckMm', peckMm <= depthMm + 1e-9, `at most the depth drilled, ${deep} mm`, peckMm),
        ]),
  ];
}
