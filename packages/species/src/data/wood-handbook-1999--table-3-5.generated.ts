// Written by `npm run tables` from data/tables/wood-handbook-1999--table-3-5.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodHandbook1999 } from '@scantling/rules/sources';
import type { DomesticShrinkageRow } from '../rows.ts';

/** Shrinkage of woods grown in the United States, % of the green dimension, from green to ovendry (the edition of 1999): Table 3-5 of wood-handbook-1999. */
export const woodHandbook1999Table35: readonly DomesticShrinkageRow[] = [
  { species: "Baldcypress", group: "softwood", radialPct: 3.8, tangentialPct: 6.2, volumetricPct: 10.5, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodHandbook1999Table35Provenance: TableProvenance = {
  source: woodHandbook1999,
  at: "Table 3-5",
  title: "Shrinkage of woods grown in the United States, % of the green dimension, from green to ovendry (the edition of 1999)",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [],
  notes: ["Only the row that could not be placed on the page of the edition of 2010."],
};
