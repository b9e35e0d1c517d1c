// Written by `npm run tables` from data/tables/wood-strength-tabulation--table.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodStrengthTabulation } from '@scantling/rules/sources';
import type { TabulatedStrengthRow } from '../rows.ts';

/** Average specific gravity and modulus of elasticity of hardwoods: Table of wood-strength-tabulation. */
export const woodStrengthTabulationTable: readonly TabulatedStrengthRow[] = [
  { species: "Alder, red", moisture: "12%", specificGravityRatio: 0.41, modulusOfElasticityMillionPsi: 1.38, confirmed: "text", tier: "reprint" },
  { species: "Ash, black", moisture: "12%", specificGravityRatio: 0.49, modulusOfElasticityMillionPsi: 1.6, confirmed: "text", tier: "reprint" },
  { species: "Ash, blue", moisture: "12%", specificGravityRatio: 0.58, modulusOfElasticityMillionPsi: 1.4, confirmed: "text", tier: "reprint" },
  { species: "Ash, green", moisture: "12%", specificGravityRatio: 0.56, modulusOfElasticityMillionPsi: 1.66, confirmed: "text", tier: "reprint" },
  { species: "Ash, Oregon", moisture: "12%", specificGravityRatio: 0.55, modulusOfElasticityMillionPsi: 1.36, confirmed: "text", tier: "reprint" },
  { species: "Ash, white", moisture: "12%", specificGravityRatio: 0.6, modulusOfElasticityMillionPsi: 1.74, confirmed: "text", tier: "reprint" },
  { species: "Aspen, bigtooth", moisture: "12%", specificGravityRatio: 0.39, modulusOfElasticityMillionPsi: 1.43, confirmed: "text", tier: "reprint" },
  { species: "Aspen, quaking", moisture: "12%", specificGravityRatio: 0.38, modulusOfElasticityMillionPsi: 1.18, confirmed: "text", tier: "reprint" },
  { species: "Basswood", moisture: "12%", specificGravityRatio: 0.37, modulusOfElasticityMillionPsi: 1.46, confirmed: "text", tier: "reprint" },
  { species: "Beech, American", moisture: "12%", specificGravityRatio: 0.64, modulusOfElasticityMillionPsi: 1.72, confirmed: "text", tier: "reprint" },
  { species: "Birch, paper", moisture: "12%", specificGravityRatio: 0.55, modulusOfElasticityMillionPsi: 1.59, confirmed: "text", tier: "reprint" },
  { species: "Birch, sweet", moisture: "12%", specificGravityRatio: 0.65, modulusOfElasticityMillionPsi: 2.17, confirmed: "text", tier: "reprint" },
  { species: "Birch, yellow", moisture: "12%", specificGravityRatio: 0.62, modulusOfElasticityMillionPsi: 2.01, confirmed: "text", tier: "reprint" },
  { species: "Butternut", moisture: "12%", specificGravityRatio: 0.38, modulusOfElasticityMillionPsi: 1.18, confirmed: "text", tier: "reprint" },
  { species: "Cherry, black", moisture: "12%", specificGravityRatio: 0.5, modulusOfElasticityMillionPsi: 1.49, confirmed: "text", tier: "reprint" },
  { species: "Chestnut, American", moisture: "12%", specificGravityRatio: 0.43, modulusOfElasticityMillionPsi: 1.23, confirmed: "text", tier: "reprint" },
  { species: "Cottonwood, eastern", moisture: "12%", specificGravityRatio: 0.4, modulusOfElasticityMillionPsi: 1.37, confirmed: "text", tier: "reprint" },
  { species: "Elm, American", moisture: "12%", specificGravityRatio: 0.5, modulusOfElasticityMillionPsi: 1.34, confirmed: "text", tier: "reprint" },
  { species: "Elm, rock", moisture: "12%", specificGravityRatio: 0.63, modulusOfElasticityMillionPsi: 1.54, confirmed: "text", tier: "reprint" },
  { species: "Elm, slippery", moisture: "12%", specificGravityRatio: 0.53, modulusOfElasticityMillionPsi: 1.49, confirmed: "text", tier: "reprint" },
  { species: "Hackberry", moisture: "12%", specificGravityRatio: 0.53, modulusOfElasticityMillionPsi: 1.19, confirmed: "text", tier: "reprint" },
  { species: "Hickory, pecan", moisture: "12%", specificGravityRatio: 0.66, modulusOfElasticityMillionPsi: 1.73, confirmed: "text", tier: "reprint" },
  { species: "Hickory, mockernut", moisture: "12%", specificGravityRatio: 0.72, modulusOfElasticityMillionPsi: 2.22, confirmed: "text", tier: "reprint" },
  { species: "Hickory, pignut", moisture: "12%", specificGravityRatio: 0.75, modulusOfElasticityMillionPsi: 2.26, confirmed: "text", tier: "reprint" },
  { species: "Hickory, shagbark", moisture: "12%", specificGravityRatio: 0.72, modulusOfElasticityMillionPsi: 2.16, confirmed: "text", tier: "reprint" },
  { species: "Hickory, shellbark", moisture: "12%", specificGravityRatio: 0.69, modulusOfElasticityMillionPsi: 1.89, confirmed: "text", tier: "reprint" },
  { species: "Locust, black", moisture: "12%", specificGravityRatio: 0.69, modulusOfElasticityMillionPsi: 2.05, confirmed: "text", tier: "reprint" },
  { species: "Magnolia, cucumbertree", moisture: "12%", specificGravityRatio: 0.48, modulusOfElasticityMillionPsi: 1.82, confirmed: "text", tier: "reprint" },
  { species: "Magnolia, southern", moisture: "12%", specificGravityRatio: 0.5, modulusOfElasticityMillionPsi: 1.4, confirmed: "text", tier: "reprint" },
  { species: "Maple, bigleaf", moisture: "12%", specificGravityRatio: 0.48, modulusOfElasticityMillionPsi: 1.45, confirmed: "text", tier: "reprint" },
  { species: "Maple, black", moisture: "12%", specificGravityRatio: 0.57, modulusOfElasticityMillionPsi: 1.62, confirmed: "text", tier: "reprint" },
  { species: "Maple, red", moisture: "12%", specificGravityRatio: 0.54, modulusOfElasticityMillionPsi: 1.64, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodStrengthTabulationTableProvenance: TableProvenance = {
  source: woodStrengthTabulation,
  at: "Table",
  title: "Average specific gravity and modulus of elasticity of hardwoods",
  rights: "Facts, quoted with their source; the publication itself is protected.",
  errata: [{"rows":["Alder, red; 12%","Ash, black; 12%","Ash, blue; 12%","Ash, green; 12%","Ash, Oregon; 12%","Ash, white; 12%","Aspen, bigtooth; 12%","Aspen, quaking; 12%","Basswood; 12%","Beech, American; 12%","Birch, paper; 12%","Birch, sweet; 12%","Birch, yellow; 12%","Butternut; 12%","Cherry, black; 12%","Chestnut, American; 12%","Cottonwood, eastern; 12%","Elm, American; 12%","Elm, rock; 12%","Elm, slippery; 12%","Hackberry; 12%","Hickory, pecan; 12%","Hickory, mockernut; 12%","Hickory, pignut; 12%","Hickory, shagbark; 12%","Hickory, shellbark; 12%","Locust, black; 12%","Magnolia, cucumbertree; 12%","Magnolia, southern; 12%","Maple, bigleaf; 12%","Maple, black; 12%","Maple, red; 12%"],"columns":["specificGravityRatio"],"says":"The page heads its specific gravity ovendry; the figures equal those of the Wood Handbook at 12 %."}],
  notes: ["The page names no author."],
};
