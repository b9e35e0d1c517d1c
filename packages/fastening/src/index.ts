/**
 * Screws that hold a solid top down and let it move.
 *
 * @module fastening
 */

export * from './check-insert-hole.ts';
export * from './choose-machine-screw.ts';
export * from './choose-screw-length.ts';
export {
  type ClearanceFit,
  type ClearanceHole,
  type ClearanceHoleInput,
  clearanceHole,
} from './clearance-hole.ts';
export { compareFixedLines, type FixedLineChoice, type FixedLineComparison } from './compare-fixed-lines.ts';
export * from './count-screws-against-racking.ts';
export * from './count-screws-to-lift.ts';
export { type FoundScrew, findScrew } from './find-screw.ts';
export type {
  FixingFit,
  FixingKind,
  GrooveWork,
  PlateFixing,
  ScrewFixing,
  Side,
  SlidingTongueFixing,
  TabFixing,
  TongueFixing,
} from './fixing-kinds.ts';
export {
  type Drill,
  type DrillSeries,
  type NearestDrills,
  type NearestDrillsInput,
  nearestDrills,
} from './nearest-drills.ts';
export { type PlainWasher, type PlainWashersInput, plainWashers } from './plain-washers.ts';
export * from './plan-depth-stops.ts';
export {
  type AcrossGrain,
  type FixedLine,
  type FixingPlan,
  type FixingPoint,
  type FixingsInput,
  type Overhang,
  type PlannedFixing,
  planFixings,
} from './plan-fixings.ts';
export {
  planStrip,
  type StripGap,
  type StripPlan,
  type StripPlanInput,
  type StripScrew,
} from './plan-strip.ts';
export type * from './rows.ts';
export * from './rules/adjusted-resistance.ts';
export * from './rules/bending-yield-strength.ts';
export * from './rules/combined-load.ts';
export {
  type CountersinkDepth,
  type CountersinkDepthInput,
  countersinkDepth,
  countersinkDepthRule,
} from './rules/countersink-depth.ts';
export {
  type CountersinkDiameter,
  type CountersinkDiameterInput,
  countersinkDiameter,
  countersinkDiameterRule,
} from './rules/countersink-diameter.ts';
export * from './rules/depth-stop-setting.ts';
export * from './rules/dowel-bearing-strength.ts';
export {
  type FixingTravel,
  type FixingTravelInput,
  fixingTravel,
  fixingTravelRule,
} from './rules/fixing-travel.ts';
export * from './rules/full-strength-penetration.ts';
export {
  type HeadBelowFace,
  type HeadBelowFaceInput,
  headBelowFace,
  headBelowFaceRule,
} from './rules/head-below-face.ts';
export * from './rules/head-pull-through-characteristic.ts';
export * from './rules/head-pull-through-reference.ts';
export {
  type HeadThroughStrip,
  type HeadThroughStripInput,
  headThroughStrip,
  headThroughStripRule,
} from './rules/head-through-strip.ts';
export * from './rules/insert-hole.ts';
export * from './rules/lag-screw-across-grain-factor.ts';
export * from './rules/lag-screw-lead-hole.ts';
export * from './rules/lag-screw-side-factor.ts';
export * from './rules/lag-screw-spacing.ts';
export * from './rules/lag-screw-withdrawal-reference.ts';
export * from './rules/lag-screw-withdrawal-ultimate.ts';
export * from './rules/lateral-resistance-reference.ts';
export * from './rules/lateral-test-value.ts';
export * from './rules/lead-hole-depth.ts';
export * from './rules/least-penetration.ts';
export * from './rules/nail-lead-hole.ts';
export * from './rules/nail-withdrawal-reference.ts';
export * from './rules/nail-withdrawal-ultimate.ts';
export {
  type PivotingPlateTravel,
  type PivotingPlateTravelInput,
  pivotingPlateTravel,
  pivotingPlateTravelRule,
} from './rules/pivoting-plate-travel.ts';
export {
  type PlateSidewaysShift,
  type PlateSidewaysShiftInput,
  plateSidewaysShift,
  plateSidewaysShiftRule,
} from './rules/plate-sideways-shift.ts';
export * from './rules/pointside-penetration.ts';
export * from './rules/predrilled-hole.ts';
export * from './rules/pulled-screw-spacing.ts';
export {
  type ScrewBesideTab,
  type ScrewBesideTabInput,
  screwBesideTab,
  screwBesideTabRule,
} from './rules/screw-beside-tab.ts';
export * from './rules/screw-lateral-by-group.ts';
export * from './rules/screw-length-by-thirds.ts';
export * from './rules/screw-spacing.ts';
export * from './rules/screw-withdrawal-characteristic.ts';
export * from './rules/screw-withdrawal-reference.ts';
export * from './rules/screw-withdrawal-ultimate.ts';
export {
  type SharpHeadDiameter,
  type SharpHeadDiameterInput,
  sharpHeadDiameter,
  sharpHeadDiameterRule,
} from './rules/sharp-head-diameter.ts';
export { type SlotLength, type SlotLengthInput, slotLength, slotLengthRule } from './rules/slot-length.ts';
export { type SlotTravel, type SlotTravelInput, slotTravel, slotTravelRule } from './rules/slot-travel.ts';
export * from './rules/steel-bearing-strength.ts';
export {
  type StripRabbet,
  type StripRabbetInput,
  stripRabbet,
  stripRabbetRule,
} from './rules/strip-rabbet.ts';
export * from './rules/tapped-engagement.ts';
export * from './rules/tapped-engagement-by-thumb.ts';
export * from './rules/tapped-hole-depth.ts';
export * from './rules/thread-engagement.ts';
export {
  type TongueInGroove,
  type TongueInGrooveInput,
  tongueInGroove,
  tongueInGrooveRule,
} from './rules/tongue-in-groove.ts';
export {
  type WasherOverSlot,
  type WasherOverSlotInput,
  washerOverSlot,
  washerOverSlotRule,
} from './rules/washer-over-slot.ts';
export {
  type WoodScrewDiameter,
  type WoodScrewDiameterInput,
  woodScrewDiameter,
  woodScrewDiameterRule,
} from './rules/wood-screw-diameter.ts';
export * from './rules/wood-screw-lead-hole.ts';
export * from './rules/wood-screw-spacing.ts';
export type { Screw, ScrewFigure, ScrewHead, ScrewKind } from './screw.ts';
export type { OpeningSize, OpeningWork, ScrewOpening } from './screw-opening.ts';
export * from './screw-tables.ts';
export type { PulledScrew } from './share-out.ts';
export type { Verdict } from './verdict.ts';
