/**
 * Wood properties by species, each value with its source and how it was confirmed.
 *
 * @module species
 */
export type { Found } from './find-row.ts';
export {
  findMovementCoefficients,
  movementCoefficientProvenance,
  movementCoefficientTable,
} from './movement-coefficients.ts';
export type {
  DomesticShrinkageRow,
  ImportedShrinkageRow,
  MovementCoefficientRow,
  ShrinkageRow,
  SpeciesRow,
} from './rows.ts';
export {
  type AnyShrinkageRow,
  findShrinkage,
  shrinkageProvenance,
  shrinkageTable,
} from './shrinkage.ts';
