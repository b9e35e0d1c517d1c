/**
 * How much finish, mixed how, spread how thin.
 *
 * @module finishing
 */

export { type Alligation, type AlligationInput, alligation, alligationRule } from './rules/alligation.ts';
export { type Dilution, type DilutionInput, dilution, dilutionRule } from './rules/dilution.ts';
export { type DryFilm, type DryFilmInput, dryFilm, dryFilmRule } from './rules/dry-film.ts';
export {
  type FinishVolume,
  type FinishVolumeInput,
  finishVolume,
  finishVolumeRule,
} from './rules/finish-volume.ts';
export { type JarHeight, type JarHeightInput, jarHeight, jarHeightRule } from './rules/jar-height.ts';
export { type LaidFilm, type LaidFilmInput, laidFilm, laidFilmRule } from './rules/laid-film.ts';
export {
  type LargestBatch,
  type LargestBatchInput,
  largestBatch,
  largestBatchRule,
} from './rules/largest-batch.ts';
export { type MixByParts, type MixByPartsInput, mixByParts, mixByPartsRule } from './rules/mix-by-parts.ts';
export { type ShellacCut, type ShellacCutInput, shellacCut, shellacCutRule } from './rules/shellac-cut.ts';
export {
  type ShellacFlakes,
  type ShellacFlakesInput,
  shellacFlakes,
  shellacFlakesRule,
} from './rules/shellac-flakes.ts';
export {
  type ShellacThinning,
  type ShellacThinningInput,
  shellacThinning,
  shellacThinningRule,
} from './rules/shellac-thinning.ts';
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
export {
  type ApplicationMethod,
  type TransferEfficiency,
  type TransferEfficiencyInput,
  transferEfficiency,
  transferEfficiencyRule,
} from './rules/transfer-efficiency.ts';
export { type VocContent, type VocContentInput, vocContent, vocContentRule } from './rules/voc-content.ts';
export {
  type VocOfSolids,
  type VocOfSolidsInput,
  vocOfSolids,
  vocOfSolidsRule,
} from './rules/voc-of-solids.ts';
export {
  type VolumeSolids,
  type VolumeSolidsInput,
  volumeSolids,
  volumeSolidsRule,
} from './rules/volume-solids.ts';
export { type WetFilm, type WetFilmInput, wetFilm, wetFilmRule } from './rules/wet-film.ts';
export {
  type WipingVarnish,
  type WipingVarnishInput,
  wipingVarnish,
  wipingVarnishRule,
} from './rules/wiping-varnish.ts';
export type { CutPer } from './shellac.ts';
