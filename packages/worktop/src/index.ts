/**
 * One checked plan for a whole work top.
 *
 * @module worktop
 */
export { planDrawing } from './drawing.ts';
export { holeTable } from './hole-table.ts';
export type * from './plan/base.ts';
export type * from './plan/finish.ts';
export type * from './plan/holes.ts';
export type * from './plan/load.ts';
export type * from './plan/place.ts';
export type { Plan, SettledPlan } from './plan/plan.ts';
export type * from './plan/screws.ts';
export type * from './plan/stock.ts';
export type * from './plan/top.ts';
export { planWorktop } from './plan-worktop.ts';
export { planReport } from './report.ts';
export type * from './result.ts';
export type { Swing } from './season.ts';
