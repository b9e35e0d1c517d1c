import type { TableRow } from '@scantling/rules';

/** What every row of a species table says. */
export interface SpeciesRow extends TableRow {
  /** Name as the table prints it, its heading first: `Maple, sugar`. */
  readonly species: string;
}

/** Shrinkage from green to ovendry, % of the green dimension. */
export interface ShrinkageRow extends SpeciesRow {
  /** Across the growth rings, %: the width of a quartersawn board. */
  readonly radialPct: number;
  /** Along the growth rings, %: the width of a flatsawn board; `null` where the table prints none. */
  readonly tangentialPct: number | null;
  /** Of the volume, %. */
  readonly volumetricPct: number;
}

/** Shrinkage of a wood grown in the United States. */
export interface DomesticShrinkageRow extends ShrinkageRow {
  readonly group: 'hardwood' | 'softwood';
}

/** Shrinkage of an imported wood. */
export interface ImportedShrinkageRow extends ShrinkageRow {
  /** Where it grows: `AF` Africa, `AM` tropical America, `AS` Asia and Oceania. */
  readonly location: 'AF' | 'AM' | 'AS';
}

/** Share of its dimension by which a wood moves for each 1 % of moisture content, between 6 and 14 %. */
export interface MovementCoefficientRow extends SpeciesRow {
  readonly group: 'hardwood' | 'softwood' | 'imported';
  /** Across the growth rings, per 1 %: the width of a quartersawn board. */
  readonly radialPerPct: number;
  /** Along the growth rings, per 1 %: the width of a flatsawn board. */
  readonly tangentialPerPct: number;
}

/** Strength of clear, straight-grained wood, at one moisture content. */
export interface StrengthRow extends SpeciesRow {
  readonly moisture: 'green' | '12%';
}

/** Strength in the units of the inch-pound tables. */
export interface InchPoundStrengthRow extends StrengthRow {
  /** Ovendry mass over the volume at the row's moisture content, by that of water. */
  readonly specificGravityRatio: number;
  readonly modulusOfRupturePsi: number;
  readonly modulusOfElasticityMillionPsi: number;
  /** Printed in in·lbf/in³, which is psi. */
  readonly workToMaximumLoadPsi: number | null;
  readonly sideHardnessLbf: number | null;
}

/** Strength in the units of the metric table, which rounds more. */
export interface MetricStrengthRow extends StrengthRow {
  readonly specificGravityRatio: number | null;
  readonly modulusOfRuptureKPa: number;
  readonly modulusOfElasticityMPa: number;
  /** Printed in kJ/m³, which is kPa. */
  readonly workToMaximumLoadKPa: number | null;
  readonly sideHardnessN: number | null;
}

/** A row of the table of the Oregon Wood Innovation Center. */
export interface OregonRow extends StrengthRow {
  readonly specificGravityRatio: number;
  readonly weightGreenLbPerFt3: number;
  readonly weightAirDryLbPerFt3: number;
  /** Tangential shrinkage from green to ovendry, whatever the heading says. */
  readonly tangentialPct: number;
  readonly modulusOfRupturePsi: number;
  readonly modulusOfElasticityMillionPsi: number;
  readonly sideHardnessLbf: number;
}

/** A row of a tabulation that prints specific gravity and stiffness only. */
export interface TabulatedStrengthRow extends StrengthRow {
  readonly specificGravityRatio: number;
  readonly modulusOfElasticityMillionPsi: number;
}

/** Modulus of rupture alone. */
export interface RuptureRow extends StrengthRow {
  readonly modulusOfRuptureMPa: number;
}

/** Specific gravity assigned to a combination of species: ovendry mass over ovendry volume. */
export interface AssignedSpecificGravityRow extends SpeciesRow {
  readonly specificGravityRatio: number;
}
