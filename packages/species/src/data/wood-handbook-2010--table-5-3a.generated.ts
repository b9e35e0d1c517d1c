// Written by `npm run tables` from data/tables/wood-handbook-2010--table-5-3a.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import type { MetricStrengthRow } from '../rows.ts';

/** Strength of clear, straight-grained woods grown in the United States, metric units: Table 5-3a of wood-handbook-2010. */
export const woodHandbook2010Table53a: readonly MetricStrengthRow[] = [
  { species: "Pine, pond", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 51000, modulusOfElasticityMPa: 8800, workToMaximumLoadKPa: 52, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, pond", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 80000, modulusOfElasticityMPa: 12100, workToMaximumLoadKPa: 59, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, ponderosa", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 35000, modulusOfElasticityMPa: 6900, workToMaximumLoadKPa: 36, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, ponderosa", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 65000, modulusOfElasticityMPa: 8900, workToMaximumLoadKPa: 49, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, red", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 40000, modulusOfElasticityMPa: 8800, workToMaximumLoadKPa: 42, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, red", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 76000, modulusOfElasticityMPa: 11200, workToMaximumLoadKPa: 68, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, sand", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 52000, modulusOfElasticityMPa: 7000, workToMaximumLoadKPa: 66, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, sand", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 80000, modulusOfElasticityMPa: 9700, workToMaximumLoadKPa: 66, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, shortleaf", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 51000, modulusOfElasticityMPa: 9600, workToMaximumLoadKPa: 57, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, shortleaf", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 90000, modulusOfElasticityMPa: 12100, workToMaximumLoadKPa: 76, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, slash", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 60000, modulusOfElasticityMPa: 10500, workToMaximumLoadKPa: 66, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, slash", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 112000, modulusOfElasticityMPa: 13700, workToMaximumLoadKPa: 91, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, spruce", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 41000, modulusOfElasticityMPa: 6900, workToMaximumLoadKPa: null, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, spruce", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 72000, modulusOfElasticityMPa: 8500, workToMaximumLoadKPa: null, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, sugar", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 34000, modulusOfElasticityMPa: 7100, workToMaximumLoadKPa: 37, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, sugar", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 57000, modulusOfElasticityMPa: 8200, workToMaximumLoadKPa: 38, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, Virginia", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 50000, modulusOfElasticityMPa: 8400, workToMaximumLoadKPa: 75, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, Virginia", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 90000, modulusOfElasticityMPa: 10500, workToMaximumLoadKPa: 94, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, western white", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 32000, modulusOfElasticityMPa: 8200, workToMaximumLoadKPa: 34, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Pine, western white", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 67000, modulusOfElasticityMPa: 10100, workToMaximumLoadKPa: 61, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Redwood, old-growth", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 52000, modulusOfElasticityMPa: 8100, workToMaximumLoadKPa: 51, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Redwood, old-growth", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 69000, modulusOfElasticityMPa: 9200, workToMaximumLoadKPa: 48, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Redwood, young-growth", moisture: "green", specificGravityRatio: null, modulusOfRuptureKPa: 41000, modulusOfElasticityMPa: 6600, workToMaximumLoadKPa: 39, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Redwood, young-growth", moisture: "12%", specificGravityRatio: null, modulusOfRuptureKPa: 54000, modulusOfElasticityMPa: 7600, workToMaximumLoadKPa: 36, sideHardnessN: null, confirmed: "text", tier: "publication" },
  { species: "Maple, sugar", moisture: "green", specificGravityRatio: 0.56, modulusOfRuptureKPa: 65000, modulusOfElasticityMPa: 10700, workToMaximumLoadKPa: null, sideHardnessN: 4300, confirmed: "text", tier: "reprint" },
  { species: "Maple, sugar", moisture: "12%", specificGravityRatio: 0.63, modulusOfRuptureKPa: 109000, modulusOfElasticityMPa: 12600, workToMaximumLoadKPa: null, sideHardnessN: 6400, confirmed: "text", tier: "reprint" },
  { species: "Oak, red, laurel", moisture: "green", specificGravityRatio: 0.56, modulusOfRuptureKPa: 54000, modulusOfElasticityMPa: 9600, workToMaximumLoadKPa: null, sideHardnessN: 4400, confirmed: "text", tier: "reprint" },
  { species: "Oak, red, laurel", moisture: "12%", specificGravityRatio: 0.63, modulusOfRuptureKPa: 87000, modulusOfElasticityMPa: 11700, workToMaximumLoadKPa: null, sideHardnessN: 5400, confirmed: "text", tier: "reprint" },
  { species: "Oak, white, bur", moisture: "green", specificGravityRatio: 0.58, modulusOfRuptureKPa: 50000, modulusOfElasticityMPa: 6100, workToMaximumLoadKPa: null, sideHardnessN: 4900, confirmed: "text", tier: "reprint" },
  { species: "Oak, white, bur", moisture: "12%", specificGravityRatio: 0.64, modulusOfRuptureKPa: 71000, modulusOfElasticityMPa: 7100, workToMaximumLoadKPa: null, sideHardnessN: 6100, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodHandbook2010Table53aProvenance: TableProvenance = {
  source: woodHandbook2010,
  at: "Table 5-3a",
  title: "Strength of clear, straight-grained woods grown in the United States, metric units",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [{"rows":["Maple, sugar; 12%"],"columns":["modulusOfElasticityMPa"],"says":"The Maple Flooring Manufacturers Association gives a modulus of elasticity of 1.88 million psi at 12 %, where the Wood Handbook gives 1.83 million psi, 12 600 MPa."},{"rows":["Maple, sugar; green"],"columns":["modulusOfElasticityMPa"],"says":"The Maple Flooring Manufacturers Association gives a modulus of elasticity of 1.65 million psi green, where the Wood Handbook gives 10 700 MPa, 1.55 million psi."}],
  notes: ["Specific gravity is ovendry mass over the volume at the stated moisture content.","The table gives modulus of rupture rounded to 1000 kPa and modulus of elasticity rounded to 100 MPa.","Specific gravity and hardness of the rows on the page that was seen are not carried: Table 5-3b has them.","Work to maximum load is printed in kJ/m³, which is kPa."],
};
