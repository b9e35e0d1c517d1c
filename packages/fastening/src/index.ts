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
export { type SlotLength, type SlotLengthInput, slotLength, slotLengthRule } from './rules/slot-length.ts';
