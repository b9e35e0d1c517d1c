/**
 * Enough finish, mixed right, coat by coat, on a dry and evenly sanded surface.
 *
 * @module finishing
 */

export {
  type BlendLiquids,
  type BlendLiquidsInput,
  blendLiquids,
  type CornerMix,
} from './blend-liquids.ts';
export {
  type BoughtSize,
  type BuyFinish,
  type BuyFinishInput,
  buyFinish,
  type ContainerSize,
} from './buy-finish.ts';
export {
  type Condition,
  type ConditionFinding,
  type ConditionsCheck,
  type ConditionsInput,
  checkConditions,
  type ProductWindow,
} from './check-conditions.ts';
export {
  checkVapour,
  type EvaporatingSolvent,
  type VapourCheck,
  type VapourCheckInput,
  type VapourLevel,
} from './check-vapour.ts';
export {
  type CalendarStep,
  type CoatCalendar,
  type CoatCalendarInput,
  coatCalendar,
} from './coat-calendar.ts';
export {
  type BuiltCoat,
  type FilmBuild,
  type FilmBuildInput,
  type FilmCoat,
  filmBuild,
} from './film-build.ts';
export {
  type BoredHoles,
  type FinishAreas,
  type FinishAreasInput,
  finishAreas,
  type Rabbet,
} from './finish-areas.ts';
export { type GlossLevel, type GlossLevelsInput, glossLevels } from './gloss-levels.ts';
export {
  equivalentGrits,
  type FoundGrit,
  findGrit,
  type Grit,
  type GritList,
  type GritTable,
  gritTables,
  type ListedGrit,
  type NearestGrit,
  nearestGrit,
} from './grits.ts';
export { finishingHazards, type Hazard, type HazardKind } from './hazards.ts';
export { type JarMark, type JarMarks, type JarMarksInput, jarMarks } from './jar-marks.ts';
export { type LiquidContents, type MixLiquids, type MixLiquidsInput, mixLiquids } from './mix-liquids.ts';
export {
  type BatchShare,
  type FinishUse,
  type PlanBatches,
  type PlanBatchesInput,
  type PlannedBatch,
  planBatches,
} from './plan-batches.ts';
export {
  type CoatedFace,
  type CoatNeeds,
  type FaceResult,
  type LiquidNeeded,
  type PlanCoats,
  type PlanCoatsInput,
  type PlannedCoat,
  planCoats,
} from './plan-coats.ts';
export type { ExposureLimitRow, GritRow, LimitKind, LimitSetter, SolventRow } from './rows.ts';
export { type Alligation, type AlligationInput, alligation, alligationRule } from './rules/alligation.ts';
export { type DewPoint, type DewPointInput, dewPoint, dewPointRule } from './rules/dew-point.ts';
export { type Dilution, type DilutionInput, dilution, dilutionRule } from './rules/dilution.ts';
export {
  type DilutionAir,
  type DilutionAirInput,
  dilutionAir,
  dilutionAirRule,
} from './rules/dilution-air.ts';
export { type DryFilm, type DryFilmInput, dryFilm, dryFilmRule } from './rules/dry-film.ts';
export {
  type FinishVolume,
  type FinishVolumeInput,
  finishVolume,
  finishVolumeRule,
} from './rules/finish-volume.ts';
export {
  type GlossGeometry,
  type GlossGeometryInput,
  glossGeometry,
  glossGeometryRule,
} from './rules/gloss-geometry.ts';
export { type JarHeight, type JarHeightInput, jarHeight, jarHeightRule } from './rules/jar-height.ts';
export { type LaidFilm, type LaidFilmInput, laidFilm, laidFilmRule } from './rules/laid-film.ts';
export {
  type LargestBatch,
  type LargestBatchInput,
  largestBatch,
  largestBatchRule,
} from './rules/largest-batch.ts';
export {
  type MassConcentration,
  type MassConcentrationInput,
  massConcentration,
  massConcentrationRule,
} from './rules/mass-concentration.ts';
export { type MixByParts, type MixByPartsInput, mixByParts, mixByPartsRule } from './rules/mix-by-parts.ts';
export {
  type MixtureExposure,
  type MixtureExposureInput,
  mixtureExposure,
  mixtureExposureRule,
} from './rules/mixture-exposure.ts';
export { type PurgeTime, type PurgeTimeInput, purgeTime, purgeTimeRule } from './rules/purge-time.ts';
export {
  type ScratchRoughness,
  type ScratchRoughnessInput,
  scratchRoughness,
  scratchRoughnessRule,
} from './rules/scratch-roughness.ts';
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
  type ShiftExposure,
  type ShiftExposureInput,
  shiftExposure,
  shiftExposureRule,
} from './rules/shift-exposure.ts';
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
export {
  type VapourInRoom,
  type VapourInRoomInput,
  vapourInRoom,
  vapourInRoomRule,
} from './rules/vapour-in-room.ts';
export { type VocContent, type VocContentInput, vocContent, vocContentRule } from './rules/voc-content.ts';
export {
  type VocOfSolids,
  type VocOfSolidsInput,
  vocOfSolids,
  vocOfSolidsRule,
} from './rules/voc-of-solids.ts';
export {
  type VolumeConcentration,
  type VolumeConcentrationInput,
  volumeConcentration,
  volumeConcentrationRule,
} from './rules/volume-concentration.ts';
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
export { type SandingNote, sandingNotes } from './sanding-notes.ts';
export {
  checkSandingSequence,
  type DampWipe,
  type LargeStep,
  type SandingCheck,
  type SandingCheckInput,
  type SandingGap,
  type SandingPass,
  type SandingSequence,
  type SandingSequenceInput,
  sandingSequence,
} from './sanding-sequence.ts';
export { type Sheen, type SheenOfCoats, type SheenOfCoatsInput, sheenOfCoats } from './sheen.ts';
export type { CutPer } from './shellac.ts';
export {
  type ExposureLimitTable,
  exposureLimitTables,
  type FoundExposureLimit,
  type FoundSolvent,
  findExposureLimits,
  findSolvent,
  namesLike,
  type SubstanceCandidate,
  solventProvenance,
  solventTable,
} from './solvents.ts';
export { type WholeParts, type WholePartsInput, wholeParts } from './whole-parts.ts';
