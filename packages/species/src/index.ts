/**
 * Wood properties by species, each value with its source and how it was confirmed.
 *
 * @module species
 */
export * from './data/woods.generated.ts';
export { type Found, namesNear, type SpeciesTable } from './find-row.ts';
export { type FoundSpecies, findSpecies } from './find-species.ts';
export {
  findMovementCoefficients,
  movementCoefficientProvenance,
  movementCoefficientTable,
} from './movement-coefficients.ts';
export type {
  AssignedSpecificGravityRow,
  DomesticShrinkageRow,
  ImportedShrinkageRow,
  InchPoundStrengthRow,
  MetricStrengthRow,
  MovementCoefficientRow,
  OregonRow,
  RuptureRow,
  ShrinkageRow,
  SpeciesRow,
  StrengthRow,
  TabulatedStrengthRow,
} from './rows.ts';
export {
  type AnyShrinkageRow,
  findShrinkage,
  shrinkageProvenance,
  shrinkageTable,
} from './shrinkage.ts';
export {
  assignedSpecificGravity,
  inchPoundStrength,
  mapleFlooringStrength,
  metricStrength,
  oregonProperties,
  ruptureStrength,
  tabulatedStrength,
} from './strength.ts';
export type {
  PrintedFigure,
  Wood,
  WoodFigure,
  WoodMovement,
  WoodShrinkage,
  WoodStrength,
} from './wood.ts';
export {
  type FoundWood,
  findWoodInBrief,
  type WoodInBrief,
  woodsInBrief,
} from './wood-in-brief.ts';
