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
export {
  type ThinnedSolids,
  type ThinnedSolidsInput,
  thinnedSolids,
  thinnedSolidsRule,
} from './rules/thinned-solids.ts';
export { type WetFilm, type WetFilmInput, wetFilm, wetFilmRule } from './rules/wet-film.ts';
