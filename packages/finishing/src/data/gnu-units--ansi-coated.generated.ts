// Written by `npm run tables` from data/tables/gnu-units--ansi-coated.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { gnuUnits } from '@scantling/rules/sources';
import type { GritRow } from '../rows.ts';

/** ANSI grades of coated abrasives, by median size: lines 6905 to 7155: ANSI coated of gnu-units. */
export const gnuUnitsAnsiCoated: readonly GritRow[] = [
  { grade: "ANSI 4", medianUm: 4890, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 5", medianUm: 4125, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 6", medianUm: 3460, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 7", medianUm: 2900, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 8", medianUm: 2460, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 10", medianUm: 2085, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 12", medianUm: 1765, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 14", medianUm: 1470, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 16", medianUm: 1230, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 20", medianUm: 1040, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 22", medianUm: 885, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 24", medianUm: 745, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 30", medianUm: 625, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 36", medianUm: 525, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 40", medianUm: 438, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 46", medianUm: 370, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 54", medianUm: 310, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 60", medianUm: 260, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 70", medianUm: 218, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 80", medianUm: 185, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 90", medianUm: 154, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 100", medianUm: 129, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 120", medianUm: 109, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 150", medianUm: 82, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 180", medianUm: 69, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 220", medianUm: 58, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 240", medianUm: 50, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 280", medianUm: 39.5, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 320", medianUm: 29.5, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 360", medianUm: 23, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 400", medianUm: 18.25, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 500", medianUm: 13.9, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 600", medianUm: 10.55, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 800", medianUm: 11.5, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 1000", medianUm: 9.5, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 2000", medianUm: 7.2, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 2500", medianUm: 5.5, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 3000", medianUm: 4, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 4000", medianUm: 3, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 6000", medianUm: 2, confirmed: "text", tier: "reprint" },
  { grade: "ANSI 8000", medianUm: 1.2, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const gnuUnitsAnsiCoatedProvenance: TableProvenance = {
  source: gnuUnits,
  at: "lines 6905 to 7155: ANSI coated",
  title: "ANSI grades of coated abrasives, by median size",
  rights: "Single figures of a standard, as a unit database under a free licence states them.",
  errata: [{"rows":["ANSI 600","ANSI 800"],"says":"The list is not monotone: grade 800 is printed coarser (11.5 µm) than grade 600 (10.55 µm), which the database remarks on itself."}],
  notes: ["Figures are printed with as many decimals as they need.","Grades coarser than 240 are those of FEPA F, in the database as well; finer ones come from the abrasive makers’ association."],
};
