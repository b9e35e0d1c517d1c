/**
 * One checked plan for a whole work top.
 *
 * @module worktop
 */
export { planDrawing } from './drawing.ts';
export { holeTable } from './hole-table.ts';
export type { Air, Cut, Fixing, Liquid, Obstacle, Plan, Point, Rectangle } from './plan.ts';
export { planWorktop } from './plan-worktop.ts';
export { planReport } from './report.ts';
export type {
  BlockedHole,
  Check,
  Figure,
  PlannedFinish,
  PlannedFixing,
  PlannedHole,
  SeasonalMovement,
  Status,
  WorktopPlan,
} from './result.ts';
