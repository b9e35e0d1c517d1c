/**
 * Equilibrium moisture content, and how wood shrinks and swells with it.
 *
 * @module movement
 */
export {
  laminatedTimbers1971Abstract as serviceMoistureTable,
  laminatedTimbers1971AbstractProvenance as serviceMoistureProvenance,
} from './data/laminated-timbers-1971--abstract.generated.ts';
export {
  woodHandbook2010Table42 as equilibriumMoistureTable,
  woodHandbook2010Table42Provenance as equilibriumMoistureProvenance,
} from './data/wood-handbook-2010--table-4-2.generated.ts';
export {
  woodHandbook2010Table131 as outdoorMoistureTable,
  woodHandbook2010Table131Provenance as outdoorMoistureProvenance,
} from './data/wood-handbook-2010--table-13-1.generated.ts';
export {
  woodHandbook2010Table132 as installationMoistureTable,
  woodHandbook2010Table132Provenance as installationMoistureProvenance,
} from './data/wood-handbook-2010--table-13-2.generated.ts';
export {
  woodHandbook2010Table163 as moistureExcludingTable,
  woodHandbook2010Table163Provenance as moistureExcludingProvenance,
} from './data/wood-handbook-2010--table-16-3.generated.ts';
export { type FoundYear, findHeatedYear, findUnheatedYear } from './find-year.ts';
export {
  type FinishResistance,
  type FinishResistanceInput,
  finishResistance,
} from './finish-resistance.ts';
export {
  fitStrip,
  type StripDirection,
  type StripEnd,
  type StripFit,
  type StripInWood,
  type StripVerdict,
} from './fit-strip.ts';
export { type LongitudinalShrinkage, longitudinalShrinkage } from './longitudinal-shrinkage.ts';
export {
  type MoistureOnDay,
  type MoistureOverTime,
  type MoistureOverTimeInput,
  type MoistureRange,
  moistureOverTime,
} from './moisture-over-time.ts';
export {
  type BoardChange,
  type PanelBoard,
  type PanelChange,
  type PanelChangeInput,
  type PanelJoint,
  panelChange,
} from './panel-change.ts';
export type {
  EquilibriumMoistureRow,
  InstallationMoistureRow,
  MoistureExcludingRow,
  OutdoorMoistureRow,
  ServiceMoistureRow,
  ThermalExpansionRow,
} from './rows.ts';
export {
  type AirLayerResistance,
  type AirLayerResistanceInput,
  airLayerResistance,
  airLayerResistanceRule,
} from './rules/air-layer-resistance.ts';
export {
  type ChangeAtRingAngle,
  type ChangeAtRingAngleInput,
  changeAtRingAngle,
  changeAtRingAngleRule,
} from './rules/change-at-ring-angle.ts';
export { type ChangeBand, type ChangeBandInput, changeBand, changeBandRule } from './rules/change-band.ts';
export {
  type ChangeBesideMetal,
  type ChangeBesideMetalInput,
  changeBesideMetal,
  changeBesideMetalRule,
} from './rules/change-beside-metal.ts';
export {
  type CoefficientFromShrinkage,
  type CoefficientFromShrinkageInput,
  coefficientFromShrinkage,
  coefficientFromShrinkageRule,
} from './rules/coefficient-from-shrinkage.ts';
export { type CupDepth, type CupDepthInput, cupDepth, cupDepthRule } from './rules/cup-depth.ts';
export {
  type EquilibriumMoisture,
  type EquilibriumMoistureInput,
  equilibriumMoisture,
  equilibriumMoistureNotes,
  equilibriumMoistureRule,
} from './rules/equilibrium-moisture.ts';
export {
  type HumidityAfterHeating,
  type HumidityAfterHeatingInput,
  humidityAfterHeating,
  humidityAfterHeatingRule,
} from './rules/humidity-after-heating.ts';
export {
  type HumidityForMoisture,
  type HumidityForMoistureInput,
  humidityForMoisture,
  humidityForMoistureRule,
} from './rules/humidity-for-moisture.ts';
export {
  type MoistureFromWeights,
  type MoistureFromWeightsInput,
  moistureFromWeights,
  moistureFromWeightsRule,
} from './rules/moisture-from-weights.ts';
export {
  type HeldPanel,
  type PanelInGroove,
  type PanelInGrooveInput,
  panelInGroove,
  panelInGrooveRule,
} from './rules/panel-in-groove.ts';
export { type PanelMass, type PanelMassInput, panelMass, panelMassRule } from './rules/panel-mass.ts';
export {
  type SpecificGravityAtMoisture,
  type SpecificGravityAtMoistureInput,
  specificGravityAtMoisture,
  specificGravityAtMoistureRule,
} from './rules/specific-gravity-at-moisture.ts';
export {
  type ThermalChange,
  type ThermalChangeInput,
  thermalChange,
  thermalChangeRule,
} from './rules/thermal-change.ts';
export {
  type TransverseDiffusion,
  type TransverseDiffusionInput,
  transverseDiffusion,
  transverseDiffusionRule,
} from './rules/transverse-diffusion.ts';
export {
  type WidthChange,
  type WidthChangeInput,
  widthChange,
  widthChangeNotes,
  widthChangeRule,
} from './rules/width-change.ts';
export {
  type WidthChangeByShrinkage,
  type WidthChangeByShrinkageInput,
  widthChangeByShrinkage,
  widthChangeByShrinkageRule,
} from './rules/width-change-by-shrinkage.ts';
export {
  type WoodDensity,
  type WoodDensityInput,
  woodDensity,
  woodDensityRule,
} from './rules/wood-density.ts';
export {
  type WoodThermalExpansion,
  type WoodThermalExpansionInput,
  woodThermalExpansion,
  woodThermalExpansionRule,
} from './rules/wood-thermal-expansion.ts';
export {
  type SeasonalMoisture,
  type SeasonalMoistureInput,
  type SeasonalMovement,
  type SeasonalMovementInput,
  seasonalMoisture,
  seasonalMovement,
} from './seasonal-movement.ts';
export { thermalExpansionProvenance, thermalExpansionTable } from './thermal-expansion.ts';
export {
  type YearFromExtremesInput,
  type YearFromMonthsInput,
  type YearOfMoisture,
  yearFromExtremes,
  yearFromMonths,
} from './year-of-moisture.ts';
