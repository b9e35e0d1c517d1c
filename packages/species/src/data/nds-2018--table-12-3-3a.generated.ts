// Written by `npm run tables` from data/tables/nds-2018--table-12-3-3a.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import type { AssignedSpecificGravityRow } from '../rows.ts';

/** Specific gravity assigned to combinations of species for the design of connections: Table 12.3.3A of nds-2018. */
export const nds2018Table1233a: readonly AssignedSpecificGravityRow[] = [
  { species: "Alaska Cedar", specificGravityRatio: 0.47, confirmed: "text", tier: "reprint" },
  { species: "Alaska Hemlock", specificGravityRatio: 0.46, confirmed: "text", tier: "reprint" },
  { species: "Aspen", specificGravityRatio: 0.39, confirmed: "text", tier: "reprint" },
  { species: "Balsam Fir", specificGravityRatio: 0.36, confirmed: "text", tier: "reprint" },
  { species: "Beech-Birch-Hickory", specificGravityRatio: 0.71, confirmed: "text", tier: "reprint" },
  { species: "Cottonwood", specificGravityRatio: 0.41, confirmed: "text", tier: "reprint" },
  { species: "Douglas Fir-Larch", specificGravityRatio: 0.5, confirmed: "text", tier: "reprint" },
  { species: "Douglas Fir-Larch (North)", specificGravityRatio: 0.49, confirmed: "text", tier: "reprint" },
  { species: "Douglas Fir-South", specificGravityRatio: 0.46, confirmed: "text", tier: "reprint" },
  { species: "Eastern Hemlock", specificGravityRatio: 0.41, confirmed: "text", tier: "reprint" },
  { species: "Eastern Softwoods", specificGravityRatio: 0.36, confirmed: "text", tier: "reprint" },
  { species: "Eastern Spruce", specificGravityRatio: 0.41, confirmed: "text", tier: "reprint" },
  { species: "Eastern White Pine", specificGravityRatio: 0.36, confirmed: "text", tier: "reprint" },
  { species: "Hem-Fir", specificGravityRatio: 0.43, confirmed: "text", tier: "reprint" },
  { species: "Mixed Maple", specificGravityRatio: 0.55, confirmed: "text", tier: "reprint" },
  { species: "Mixed Oak", specificGravityRatio: 0.68, confirmed: "text", tier: "reprint" },
  { species: "Mixed Southern Pine", specificGravityRatio: 0.51, confirmed: "text", tier: "reprint" },
  { species: "Northern Red Oak", specificGravityRatio: 0.68, confirmed: "text", tier: "reprint" },
  { species: "Ponderosa Pine", specificGravityRatio: 0.43, confirmed: "text", tier: "reprint" },
  { species: "Red Maple", specificGravityRatio: 0.58, confirmed: "text", tier: "reprint" },
  { species: "Red Oak", specificGravityRatio: 0.67, confirmed: "text", tier: "reprint" },
  { species: "Redwood", specificGravityRatio: 0.37, confirmed: "text", tier: "reprint" },
  { species: "Sitka Spruce", specificGravityRatio: 0.43, confirmed: "text", tier: "reprint" },
  { species: "Southern Pine", specificGravityRatio: 0.55, confirmed: "text", tier: "reprint" },
  { species: "Spruce-Pine-Fir", specificGravityRatio: 0.42, confirmed: "text", tier: "reprint" },
  { species: "Spruce-Pine-Fir (South)", specificGravityRatio: 0.36, confirmed: "text", tier: "reprint" },
  { species: "Western Cedars", specificGravityRatio: 0.36, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const nds2018Table1233aProvenance: TableProvenance = {
  source: nds2018,
  at: "Table 12.3.3A",
  title: "Specific gravity assigned to combinations of species for the design of connections",
  rights: "Facts, quoted with their source; the publication itself is protected.",
  errata: [],
  notes: ["Specific gravity is ovendry mass over ovendry volume: more than the same wood has at 12 % or green.","A combination groups species that are sold together; no row is of one wood by itself.","Seen as copied in python_modules/materials/awc_nds/specific_gravity.py."],
};
