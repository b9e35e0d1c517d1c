// Written by `npm run tables` from data/tables/oregon-wood-properties--table.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { oregonWoodProperties } from '@scantling/rules/sources';
import type { OregonRow } from '../rows.ts';

/** Relative working and physical properties of western softwoods at 12 % moisture content: Table (inch-pound) of oregon-wood-properties. */
export const oregonWoodPropertiesTable: readonly OregonRow[] = [
  { species: "Douglas-fir", moisture: "12%", specificGravityRatio: 0.48, weightGreenLbPerFt3: 43, weightAirDryLbPerFt3: 34, tangentialPct: 7.6, modulusOfRupturePsi: 12400, modulusOfElasticityMillionPsi: 1.95, sideHardnessLbf: 710, confirmed: "text", tier: "publication" },
  { species: "Western larch", moisture: "12%", specificGravityRatio: 0.52, weightGreenLbPerFt3: 50, weightAirDryLbPerFt3: 36, tangentialPct: 9.1, modulusOfRupturePsi: 13000, modulusOfElasticityMillionPsi: 1.87, sideHardnessLbf: 830, confirmed: "text", tier: "publication" },
  { species: "Engelmann spruce", moisture: "12%", specificGravityRatio: 0.35, weightGreenLbPerFt3: 36, weightAirDryLbPerFt3: 27, tangentialPct: 7.1, modulusOfRupturePsi: 9300, modulusOfElasticityMillionPsi: 1.3, sideHardnessLbf: 390, confirmed: "text", tier: "publication" },
  { species: "Western hemlock", moisture: "12%", specificGravityRatio: 0.45, weightGreenLbPerFt3: 41, weightAirDryLbPerFt3: 31, tangentialPct: 7.8, modulusOfRupturePsi: 11300, modulusOfElasticityMillionPsi: 1.63, sideHardnessLbf: 540, confirmed: "text", tier: "publication" },
  { species: "Noble fir", moisture: "12%", specificGravityRatio: 0.39, weightGreenLbPerFt3: 30, weightAirDryLbPerFt3: 26, tangentialPct: 8.3, modulusOfRupturePsi: 10700, modulusOfElasticityMillionPsi: 1.72, sideHardnessLbf: 410, confirmed: "text", tier: "publication" },
  { species: "Grand fir", moisture: "12%", specificGravityRatio: 0.39, weightGreenLbPerFt3: 47, weightAirDryLbPerFt3: 26, tangentialPct: 7, modulusOfRupturePsi: 8900, modulusOfElasticityMillionPsi: 1.57, sideHardnessLbf: 490, confirmed: "text", tier: "publication" },
  { species: "Subalpine fir", moisture: "12%", specificGravityRatio: 0.32, weightGreenLbPerFt3: 45, weightAirDryLbPerFt3: 28, tangentialPct: 7.5, modulusOfRupturePsi: 8600, modulusOfElasticityMillionPsi: 1.29, sideHardnessLbf: 350, confirmed: "text", tier: "publication" },
  { species: "Pacific silver fir", moisture: "12%", specificGravityRatio: 0.43, weightGreenLbPerFt3: 36, weightAirDryLbPerFt3: 27, tangentialPct: 9.2, modulusOfRupturePsi: 11000, modulusOfElasticityMillionPsi: 1.76, sideHardnessLbf: 430, confirmed: "text", tier: "publication" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const oregonWoodPropertiesTableProvenance: TableProvenance = {
  source: oregonWoodProperties,
  at: "Table (inch-pound)",
  title: "Relative working and physical properties of western softwoods at 12 % moisture content",
  rights: "Facts, quoted with their source; the publication itself is protected.",
  errata: [{"rows":["Grand fir; 12%"],"columns":["tangentialPct"],"says":"The table gives a tangential shrinkage of 7.0 %, where the Wood Handbook, Table 4-3, prints 7.5 %."},{"rows":["Subalpine fir; 12%"],"columns":["tangentialPct"],"says":"The table gives a tangential shrinkage of 7.5 %, where the Wood Handbook, Table 4-3, prints 7.4 %."}],
  notes: ["The table cites the Wood Handbook.","It heads its shrinkage \"% across the grain shrinkage (6% MC)\"; the figures are those that the Wood Handbook, Table 4-3, prints for tangential shrinkage from green to ovendry, but for two firs."],
};
