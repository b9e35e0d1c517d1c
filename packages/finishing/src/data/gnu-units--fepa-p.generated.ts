// Written by `npm run tables` from data/tables/gnu-units--fepa-p.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { gnuUnits } from '@scantling/rules/sources';
import type { GritRow } from '../rows.ts';

/** FEPA P grades of coated abrasives (ISO 6344), by median size: lines 6905 to 7155: FEPA P of gnu-units. */
export const gnuUnitsFepaP: readonly GritRow[] = [
  { grade: "P12", medianUm: 1815, confirmed: "text", tier: "reprint" },
  { grade: "P16", medianUm: 1324, confirmed: "text", tier: "reprint" },
  { grade: "P20", medianUm: 1000, confirmed: "text", tier: "reprint" },
  { grade: "P24", medianUm: 764, confirmed: "text", tier: "reprint" },
  { grade: "P30", medianUm: 642, confirmed: "text", tier: "reprint" },
  { grade: "P36", medianUm: 538, confirmed: "text", tier: "reprint" },
  { grade: "P40", medianUm: 425, confirmed: "text", tier: "reprint" },
  { grade: "P50", medianUm: 336, confirmed: "text", tier: "reprint" },
  { grade: "P60", medianUm: 269, confirmed: "text", tier: "reprint" },
  { grade: "P80", medianUm: 201, confirmed: "text", tier: "reprint" },
  { grade: "P100", medianUm: 162, confirmed: "text", tier: "reprint" },
  { grade: "P120", medianUm: 125, confirmed: "text", tier: "reprint" },
  { grade: "P150", medianUm: 100, confirmed: "text", tier: "reprint" },
  { grade: "P180", medianUm: 82, confirmed: "text", tier: "reprint" },
  { grade: "P220", medianUm: 68, confirmed: "text", tier: "reprint" },
  { grade: "P240", medianUm: 58.5, confirmed: "text", tier: "reprint" },
  { grade: "P280", medianUm: 52.2, confirmed: "text", tier: "reprint" },
  { grade: "P320", medianUm: 46.2, confirmed: "text", tier: "reprint" },
  { grade: "P360", medianUm: 40.5, confirmed: "text", tier: "reprint" },
  { grade: "P400", medianUm: 35, confirmed: "text", tier: "reprint" },
  { grade: "P500", medianUm: 30.2, confirmed: "text", tier: "reprint" },
  { grade: "P600", medianUm: 25.8, confirmed: "text", tier: "reprint" },
  { grade: "P800", medianUm: 21.8, confirmed: "text", tier: "reprint" },
  { grade: "P1000", medianUm: 18.3, confirmed: "text", tier: "reprint" },
  { grade: "P1200", medianUm: 15.3, confirmed: "text", tier: "reprint" },
  { grade: "P1500", medianUm: 12.6, confirmed: "text", tier: "reprint" },
  { grade: "P2000", medianUm: 10.3, confirmed: "text", tier: "reprint" },
  { grade: "P2500", medianUm: 8.4, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const gnuUnitsFepaPProvenance: TableProvenance = {
  source: gnuUnits,
  at: "lines 6905 to 7155: FEPA P",
  title: "FEPA P grades of coated abrasives (ISO 6344), by median size",
  rights: "Single figures of a standard, as a unit database under a free licence states them.",
  errata: [],
  notes: ["Whole figures are printed without a decimal.","The database says that its FEPA tables are taken from the federation’s own page.","A dictionary of sizes prints the same figures for P12 to P120."],
};
