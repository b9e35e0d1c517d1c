/**
 * Screws that hold a solid top down and let it move.
 *
 * @module fastening
 */
export {
  type FixingTravel,
  type FixingTravelInput,
  fixingTravel,
  fixingTravelRule,
} from './rules/fixing-travel.ts';
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
export {
  type ScrewBesideTab,
  type ScrewBesideTabInput,
  screwBesideTab,
  screwBesideTabRule,
} from './rules/screw-beside-tab.ts';
export { type SlotLength, type SlotLengthInput, slotLength, slotLengthRule } from './rules/slot-length.ts';
export { type SlotTravel, type SlotTravelInput, slotTravel, slotTravelRule } from './rules/slot-travel.ts';
export {
  type StripRabbet,
  type StripRabbetInput,
  stripRabbet,
  stripRabbetRule,
} from './rules/strip-rabbet.ts';
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
