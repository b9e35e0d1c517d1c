// Written by `npm run tables` from data/tables/wood-rupture-table--table.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodRuptureTable } from '@scantling/rules/sources';
import type { RuptureRow } from '../rows.ts';

/** Modulus of rupture of common woods at 12 % moisture content: Table of wood-rupture-table. */
export const woodRuptureTableTable: readonly RuptureRow[] = [
  { species: "Ash, black", moisture: "12%", modulusOfRuptureMPa: 87, confirmed: "text", tier: "reprint" },
  { species: "Ash, blue", moisture: "12%", modulusOfRuptureMPa: 95, confirmed: "text", tier: "reprint" },
  { species: "Ash, green", moisture: "12%", modulusOfRuptureMPa: 97, confirmed: "text", tier: "reprint" },
  { species: "Ash, white", moisture: "12%", modulusOfRuptureMPa: 103, confirmed: "text", tier: "reprint" },
  { species: "Aspen, quaking", moisture: "12%", modulusOfRuptureMPa: 58, confirmed: "text", tier: "reprint" },
  { species: "Basswood, American", moisture: "12%", modulusOfRuptureMPa: 60, confirmed: "text", tier: "reprint" },
  { species: "Beech, American", moisture: "12%", modulusOfRuptureMPa: 103, confirmed: "text", tier: "reprint" },
  { species: "Birch, paper", moisture: "12%", modulusOfRuptureMPa: 85, confirmed: "text", tier: "reprint" },
  { species: "Birch, sweet", moisture: "12%", modulusOfRuptureMPa: 117, confirmed: "text", tier: "reprint" },
  { species: "Birch, yellow", moisture: "12%", modulusOfRuptureMPa: 114, confirmed: "text", tier: "reprint" },
  { species: "Butternut", moisture: "12%", modulusOfRuptureMPa: 56, confirmed: "text", tier: "reprint" },
  { species: "Cedar, northern white", moisture: "12%", modulusOfRuptureMPa: 45, confirmed: "text", tier: "reprint" },
  { species: "Cedar, western red", moisture: "12%", modulusOfRuptureMPa: 52, confirmed: "text", tier: "reprint" },
  { species: "Cherry, black", moisture: "12%", modulusOfRuptureMPa: 85, confirmed: "text", tier: "reprint" },
  { species: "Chestnut, American", moisture: "12%", modulusOfRuptureMPa: 59, confirmed: "text", tier: "reprint" },
  { species: "Cottonwood, black", moisture: "12%", modulusOfRuptureMPa: 59, confirmed: "text", tier: "reprint" },
  { species: "Douglas-fir, coast", moisture: "12%", modulusOfRuptureMPa: 85, confirmed: "text", tier: "reprint" },
  { species: "Elm, American", moisture: "12%", modulusOfRuptureMPa: 81, confirmed: "text", tier: "reprint" },
  { species: "Fir, balsam", moisture: "12%", modulusOfRuptureMPa: 63, confirmed: "text", tier: "reprint" },
  { species: "Fir, white", moisture: "12%", modulusOfRuptureMPa: 68, confirmed: "text", tier: "reprint" },
  { species: "Hemlock, eastern", moisture: "12%", modulusOfRuptureMPa: 61, confirmed: "text", tier: "reprint" },
  { species: "Hemlock, western", moisture: "12%", modulusOfRuptureMPa: 78, confirmed: "text", tier: "reprint" },
  { species: "Hickory, mockernut", moisture: "12%", modulusOfRuptureMPa: 132, confirmed: "text", tier: "reprint" },
  { species: "Larch, western", moisture: "12%", modulusOfRuptureMPa: 90, confirmed: "text", tier: "reprint" },
  { species: "Locust, black", moisture: "12%", modulusOfRuptureMPa: 134, confirmed: "text", tier: "reprint" },
  { species: "Magnolia, cucumbertree", moisture: "12%", modulusOfRuptureMPa: 85, confirmed: "text", tier: "reprint" },
  { species: "Maple, bigleaf", moisture: "12%", modulusOfRuptureMPa: 74, confirmed: "text", tier: "reprint" },
  { species: "Maple, black", moisture: "12%", modulusOfRuptureMPa: 92, confirmed: "text", tier: "reprint" },
  { species: "Maple, red", moisture: "12%", modulusOfRuptureMPa: 92, confirmed: "text", tier: "reprint" },
  { species: "Maple, silver", moisture: "12%", modulusOfRuptureMPa: 61, confirmed: "text", tier: "reprint" },
  { species: "Maple, sugar", moisture: "12%", modulusOfRuptureMPa: 109, confirmed: "text", tier: "reprint" },
  { species: "Oak, black", moisture: "12%", modulusOfRuptureMPa: 96, confirmed: "text", tier: "reprint" },
  { species: "Oak, bur", moisture: "12%", modulusOfRuptureMPa: 71, confirmed: "text", tier: "reprint" },
  { species: "Oak, chestnut", moisture: "12%", modulusOfRuptureMPa: 92, confirmed: "text", tier: "reprint" },
  { species: "Oak, laurel", moisture: "12%", modulusOfRuptureMPa: 87, confirmed: "text", tier: "reprint" },
  { species: "Oak, live", moisture: "12%", modulusOfRuptureMPa: 127, confirmed: "text", tier: "reprint" },
  { species: "Oak, northern red", moisture: "12%", modulusOfRuptureMPa: 99, confirmed: "text", tier: "reprint" },
  { species: "Oak, pin", moisture: "12%", modulusOfRuptureMPa: 97, confirmed: "text", tier: "reprint" },
  { species: "Oak, post", moisture: "12%", modulusOfRuptureMPa: 91, confirmed: "text", tier: "reprint" },
  { species: "Oak, scarlet", moisture: "12%", modulusOfRuptureMPa: 120, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodRuptureTableTableProvenance: TableProvenance = {
  source: woodRuptureTable,
  at: "Table",
  title: "Modulus of rupture of common woods at 12 % moisture content",
  rights: "Facts, quoted with their source; the publication itself is protected.",
  errata: [],
  notes: ["The page cites the Wood Handbook, edition of 2010."],
};
