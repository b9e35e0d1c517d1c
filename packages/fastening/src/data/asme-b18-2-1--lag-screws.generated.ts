// Written by `npm run tables` from data/tables/asme-b18-2-1--lag-screws.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { asmeB1821 } from '@scantling/rules/sources';
import type { InchLagScrewRow } from '../rows.ts';

/** Lag screws: diameter, threads to the inch and root diameter: lag screws: thread of asme-b18-2-1. */
export const asmeB1821LagScrews: readonly InchLagScrewRow[] = [
  { size: "No. 10", diameterIn: 0.19, threadsPerIn: 11, rootDiameterIn: 0.12, confirmed: "text", tier: "reprint" },
  { size: "1/4", diameterIn: 0.25, threadsPerIn: 10, rootDiameterIn: 0.173, confirmed: "text", tier: "reprint" },
  { size: "5/16", diameterIn: 0.3125, threadsPerIn: 9, rootDiameterIn: 0.227, confirmed: "text", tier: "reprint" },
  { size: "3/8", diameterIn: 0.375, threadsPerIn: 7, rootDiameterIn: 0.265, confirmed: "text", tier: "reprint" },
  { size: "7/16", diameterIn: 0.4375, threadsPerIn: 7, rootDiameterIn: 0.328, confirmed: "text", tier: "reprint" },
  { size: "1/2", diameterIn: 0.5, threadsPerIn: 6, rootDiameterIn: 0.371, confirmed: "text", tier: "reprint" },
  { size: "5/8", diameterIn: 0.625, threadsPerIn: 5, rootDiameterIn: 0.471, confirmed: "text", tier: "reprint" },
  { size: "3/4", diameterIn: 0.75, threadsPerIn: 4.5, rootDiameterIn: 0.579, confirmed: "text", tier: "reprint" },
  { size: "7/8", diameterIn: 0.875, threadsPerIn: 4, rootDiameterIn: 0.683, confirmed: "text", tier: "reprint" },
  { size: "1", diameterIn: 1, threadsPerIn: 3.5, rootDiameterIn: 0.78, confirmed: "text", tier: "reprint" },
  { size: "1 1/8", diameterIn: 1.125, threadsPerIn: 3.25, rootDiameterIn: 0.887, confirmed: "text", tier: "reprint" },
  { size: "1 1/4", diameterIn: 1.25, threadsPerIn: 3.25, rootDiameterIn: 1.012, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const asmeB1821LagScrewsProvenance: TableProvenance = {
  source: asmeB1821,
  at: "lag screws: thread",
  title: "Lag screws: diameter, threads to the inch and root diameter",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["The depth of a thread is 0.385 of its pitch, says the page; the root diameter follows from it."],
};
