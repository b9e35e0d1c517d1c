// Written by `npm run tables` from data/tables/maple-flooring-properties--table.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { mapleFlooringProperties } from '@scantling/rules/sources';
import type { InchPoundStrengthRow } from '../rows.ts';

/** Physical properties of sugar maple, green and at 12 % moisture content: Table of maple-flooring-properties. */
export const mapleFlooringPropertiesTable: readonly InchPoundStrengthRow[] = [
  { species: "Maple, sugar", moisture: "green", specificGravityRatio: 0.56, modulusOfRupturePsi: 9400, modulusOfElasticityMillionPsi: 1.65, workToMaximumLoadPsi: 13.3, sideHardnessLbf: 970, confirmed: "text", tier: "reprint" },
  { species: "Maple, sugar", moisture: "12%", specificGravityRatio: 0.63, modulusOfRupturePsi: 15800, modulusOfElasticityMillionPsi: 1.88, workToMaximumLoadPsi: 16.5, sideHardnessLbf: 1450, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const mapleFlooringPropertiesTableProvenance: TableProvenance = {
  source: mapleFlooringProperties,
  at: "Table",
  title: "Physical properties of sugar maple, green and at 12 % moisture content",
  rights: "Facts, quoted with their source; the publication itself is protected.",
  errata: [{"rows":["Maple, sugar; 12%"],"columns":["modulusOfElasticityMillionPsi"],"says":"The Maple Flooring Manufacturers Association gives a modulus of elasticity of 1.88 million psi at 12 %, where the Wood Handbook gives 1.83 million psi, 12 600 MPa."},{"rows":["Maple, sugar; green"],"columns":["modulusOfElasticityMillionPsi"],"says":"The Maple Flooring Manufacturers Association gives a modulus of elasticity of 1.65 million psi green, where the Wood Handbook gives 10 700 MPa, 1.55 million psi."}],
  notes: ["The table prints the green figure and the one at 12 % in one row.","Work to maximum load is printed in in·lbf/in³, which is psi."],
};
