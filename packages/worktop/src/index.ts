/**
 * One checked plan for a whole work top.
 *
 * @module worktop
 */
export { planDrawing } from './drawing.ts';
export { drillingProgram } from './drilling-program.ts';
export { holeTable } from './hole-table.ts';
export type { BarPurchase, BarsToBuy } from './lists/bars.ts';
export type { BoardPurchase, BoughtBoard, NeededBoards } from './lists/boards.ts';
export { cutList } from './lists/cut-list.ts';
export type { LiquidPurchase } from './lists/liquids.ts';
export { shoppingList } from './lists/shopping-list.ts';
export {
  type NeededScrews,
  type NeededStrip,
  type ShoppingPlan,
  shoppingPlan,
} from './lists/shopping-plan.ts';
export type { HolePlace, PlannedAccessory } from './parts/accessories.ts';
export type { PlannedCables } from './parts/cables.ts';
export type { PlannedCalendar } from './parts/calendar.ts';
export type { GlueUpStage, PlannedGlueUp } from './parts/glue-up.ts';
export type { PlannedLift } from './parts/lift.ts';
export type { PlannedSag, PlannedSupport, SagFigures } from './parts/sag.ts';
export type { BoringSetting, PlannedScrew, PlannedScrews } from './parts/screws.ts';
export type { PlannedShop } from './parts/shop.ts';
export type { PlannedRabbet, PlannedStrip, PlannedStripScrew } from './parts/strip.ts';
export type { PlannedTemplate, SteppedHoleError, TemplateStep } from './parts/template.ts';
export type { Base, Fixing, Lift, SlidingPart } from './plan/base.ts';
export type { Drilling } from './plan/drilling.ts';
export type { Air, Calendar, Finish, Liquid, Shop } from './plan/finish.ts';
export type { Accessory, Holes, Template } from './plan/holes.ts';
export type { CableKind, Cables, HeavyThing, Load } from './plan/load.ts';
export type * from './plan/place.ts';
export type { Plan, SettledPlan } from './plan/plan.ts';
export type { Screws, Strip } from './plan/screws.ts';
export type {
  BarPart,
  BarStock,
  BoardDefect,
  OfferedBar,
  OfferedBoard,
  OfferedContainer,
  Stock,
} from './plan/stock.ts';
export type { Cut, Glue, GlueUp, Top } from './plan/top.ts';
export { planWorktop } from './plan-worktop.ts';
export type { Finding } from './recheck/finding.ts';
export { type Recheck, recheckPlan } from './recheck-plan.ts';
export { planReport } from './report.ts';
export type * from './result.ts';
export {
  type BundleDiameter,
  type BundleDiameterInput,
  bundleDiameter,
  bundleDiameterRule,
} from './rules/bundle-diameter.ts';
export { type CableHole, type CableHoleInput, cableHole, cableHoleRule } from './rules/cable-hole.ts';
export {
  type CableLength,
  type CableLengthInput,
  cableLength,
  cableLengthRule,
} from './rules/cable-length.ts';
export { type HoleFill, type HoleFillInput, holeFill, holeFillRule } from './rules/hole-fill.ts';
export type { Swing } from './season.ts';
export {
  type Amount,
  type Change,
  type ChangedCheck,
  type Tightness,
  type WhatIf,
  type WhatIfSteps,
  whatIf,
} from './what-if.ts';
export type { Setting, WorkSheet, WorkStep } from './work-sheet/model.ts';
export { workSheet } from './work-sheet.ts';
