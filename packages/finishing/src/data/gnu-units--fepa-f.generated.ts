// Written by `npm run tables` from data/tables/gnu-units--fepa-f.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { gnuUnits } from '@scantling/rules/sources';
import type { GritRow } from '../rows.ts';

/** FEPA F grades of bonded abrasives, by median size: lines 6905 to 7155: FEPA F of gnu-units. */
export const gnuUnitsFepaF: readonly GritRow[] = [
  { grade: "F4", medianUm: 4890, confirmed: "text", tier: "reprint" },
  { grade: "F5", medianUm: 4125, confirmed: "text", tier: "reprint" },
  { grade: "F6", medianUm: 3460, confirmed: "text", tier: "reprint" },
  { grade: "F7", medianUm: 2900, confirmed: "text", tier: "reprint" },
  { grade: "F8", medianUm: 2460, confirmed: "text", tier: "reprint" },
  { grade: "F10", medianUm: 2085, confirmed: "text", tier: "reprint" },
  { grade: "F12", medianUm: 1765, confirmed: "text", tier: "reprint" },
  { grade: "F14", medianUm: 1470, confirmed: "text", tier: "reprint" },
  { grade: "F16", medianUm: 1230, confirmed: "text", tier: "reprint" },
  { grade: "F20", medianUm: 1040, confirmed: "text", tier: "reprint" },
  { grade: "F22", medianUm: 885, confirmed: "text", tier: "reprint" },
  { grade: "F24", medianUm: 745, confirmed: "text", tier: "reprint" },
  { grade: "F30", medianUm: 625, confirmed: "text", tier: "reprint" },
  { grade: "F36", medianUm: 525, confirmed: "text", tier: "reprint" },
  { grade: "F40", medianUm: 438, confirmed: "text", tier: "reprint" },
  { grade: "F46", medianUm: 370, confirmed: "text", tier: "reprint" },
  { grade: "F54", medianUm: 310, confirmed: "text", tier: "reprint" },
  { grade: "F60", medianUm: 260, confirmed: "text", tier: "reprint" },
  { grade: "F70", medianUm: 218, confirmed: "text", tier: "reprint" },
  { grade: "F80", medianUm: 185, confirmed: "text", tier: "reprint" },
  { grade: "F90", medianUm: 154, confirmed: "text", tier: "reprint" },
  { grade: "F100", medianUm: 129, confirmed: "text", tier: "reprint" },
  { grade: "F120", medianUm: 109, confirmed: "text", tier: "reprint" },
  { grade: "F150", medianUm: 82, confirmed: "text", tier: "reprint" },
  { grade: "F180", medianUm: 69, confirmed: "text", tier: "reprint" },
  { grade: "F220", medianUm: 58, confirmed: "text", tier: "reprint" },
  { grade: "F230", medianUm: 53, confirmed: "text", tier: "reprint" },
  { grade: "F240", medianUm: 44.5, confirmed: "text", tier: "reprint" },
  { grade: "F280", medianUm: 36.5, confirmed: "text", tier: "reprint" },
  { grade: "F320", medianUm: 29.2, confirmed: "text", tier: "reprint" },
  { grade: "F360", medianUm: 22.8, confirmed: "text", tier: "reprint" },
  { grade: "F400", medianUm: 17.3, confirmed: "text", tier: "reprint" },
  { grade: "F500", medianUm: 12.8, confirmed: "text", tier: "reprint" },
  { grade: "F600", medianUm: 9.3, confirmed: "text", tier: "reprint" },
  { grade: "F800", medianUm: 6.5, confirmed: "text", tier: "reprint" },
  { grade: "F1000", medianUm: 4.5, confirmed: "text", tier: "reprint" },
  { grade: "F1200", medianUm: 3, confirmed: "text", tier: "reprint" },
  { grade: "F1500", medianUm: 2, confirmed: "text", tier: "reprint" },
  { grade: "F2000", medianUm: 1.2, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const gnuUnitsFepaFProvenance: TableProvenance = {
  source: gnuUnits,
  at: "lines 6905 to 7155: FEPA F",
  title: "FEPA F grades of bonded abrasives, by median size",
  rights: "Single figures of a standard, as a unit database under a free licence states them.",
  errata: [],
  notes: ["Whole figures are printed without a decimal.","The database says that its FEPA tables are taken from the federation’s own page."],
};
