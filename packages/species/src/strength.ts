import {
  mapleFlooringPropertiesTable,
  mapleFlooringPropertiesTableProvenance,
} from './data/maple-flooring-properties--table.generated.ts';
import { nds2018Table1233a, nds2018Table1233aProvenance } from './data/nds-2018--table-12-3-3a.generated.ts';
import {
  oregonWoodPropertiesTable,
  oregonWoodPropertiesTableProvenance,
} from './data/oregon-wood-properties--table.generated.ts';
import {
  woodHandbook2010Table53a,
  woodHandbook2010Table53aProvenance,
} from './data/wood-handbook-2010--table-5-3a.generated.ts';
import {
  woodHandbook2010Table53b,
  woodHandbook2010Table53bProvenance,
} from './data/wood-handbook-2010--table-5-3b.generated.ts';
import {
  woodRuptureTableTable,
  woodRuptureTableTableProvenance,
} from './data/wood-rupture-table--table.generated.ts';
import {
  woodStrengthTabulationTable,
  woodStrengthTabulationTableProvenance,
} from './data/wood-strength-tabulation--table.generated.ts';
import type { SpeciesTable } from './find-row.ts';
import type {
  AssignedSpecificGravityRow,
  InchPoundStrengthRow,
  MetricStrengthRow,
  OregonRow,
  RuptureRow,
  TabulatedStrengthRow,
} from './rows.ts';

/** Wood Handbook, Table 5-3b: strength by species in inch-pound units, green and at 12 %. */
export const inchPoundStrength: SpeciesTable<InchPoundStrengthRow> = {
  rows: woodHandbook2010Table53b,
  provenance: woodHandbook2010Table53bProvenance,
};

/** Wood Handbook, Table 5-3a: the same in metric units, rounded more. */
export const metricStrength: SpeciesTable<MetricStrengthRow> = {
  rows: woodHandbook2010Table53a,
  provenance: woodHandbook2010Table53aProvenance,
};

/** Oregon Wood Innovation Center: western softwoods at 12 %, inch-pound units. */
export const oregonProperties: SpeciesTable<OregonRow> = {
  rows: oregonWoodPropertiesTable,
  provenance: oregonWoodPropertiesTableProvenance,
};

/** A tabulation of specific gravity and modulus of elasticity of hardwoods at 12 %. */
export const tabulatedStrength: SpeciesTable<TabulatedStrengthRow> = {
  rows: woodStrengthTabulationTable,
  provenance: woodStrengthTabulationTableProvenance,
};

/** Maple Flooring Manufacturers Association: sugar maple, green and at 12 %. */
export const mapleFlooringStrength: SpeciesTable<InchPoundStrengthRow> = {
  rows: mapleFlooringPropertiesTable,
  provenance: mapleFlooringPropertiesTableProvenance,
};

/** Modulus of rupture at 12 %, from a page that cites the Wood Handbook. */
export const ruptureStrength: SpeciesTable<RuptureRow> = {
  rows: woodRuptureTableTable,
  provenance: woodRuptureTableTableProvenance,
};

/** Specific gravity that a design standard assigns to combinations of species: ovendry, so of no single wood. */
export const assignedSpecificGravity: SpeciesTable<AssignedSpecificGravityRow> = {
  rows: nds2018Table1233a,
  provenance: nds2018Table1233aProvenance,
};
