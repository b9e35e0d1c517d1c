/**
 * How much finish, mixed how, spread how thin.
 *
 * @module finishing
 */
export {
  type FinishVolume,
  type FinishVolumeInput,
  finishVolume,
  finishVolumeRule,
} from './rules/finish-volume.ts';
export { type MixByParts, type MixByPartsInput, mixByParts, mixByPartsRule } from './rules/mix-by-parts.ts';
export {
  type SpreadingRate,
  type SpreadingRateInput,
  spreadingRate,
  spreadingRateRule,
} from './rules/spreading-rate.ts';
