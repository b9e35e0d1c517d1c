// Written by `npm run tables` from data/tables/gnu-units--jis.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { gnuUnits } from '@scantling/rules/sources';
import type { GritRow } from '../rows.ts';

/** JIS grades of abrasives, by median size: lines 6905 to 7155: JIS of gnu-units. */
export const gnuUnitsJis: readonly GritRow[] = [
  { grade: "JIS 150", medianUm: 75, confirmed: "text", tier: "reprint" },
  { grade: "JIS 180", medianUm: 63, confirmed: "text", tier: "reprint" },
  { grade: "JIS 220", medianUm: 53, confirmed: "text", tier: "reprint" },
  { grade: "JIS 280", medianUm: 48, confirmed: "text", tier: "reprint" },
  { grade: "JIS 320", medianUm: 40, confirmed: "text", tier: "reprint" },
  { grade: "JIS 360", medianUm: 35, confirmed: "text", tier: "reprint" },
  { grade: "JIS 400", medianUm: 30, confirmed: "text", tier: "reprint" },
  { grade: "JIS 600", medianUm: 20, confirmed: "text", tier: "reprint" },
  { grade: "JIS 700", medianUm: 17, confirmed: "text", tier: "reprint" },
  { grade: "JIS 800", medianUm: 14, confirmed: "text", tier: "reprint" },
  { grade: "JIS 1000", medianUm: 11.5, confirmed: "text", tier: "reprint" },
  { grade: "JIS 1200", medianUm: 9.5, confirmed: "text", tier: "reprint" },
  { grade: "JIS 1500", medianUm: 8, confirmed: "text", tier: "reprint" },
  { grade: "JIS 2000", medianUm: 6.7, confirmed: "text", tier: "reprint" },
  { grade: "JIS 2500", medianUm: 5.5, confirmed: "text", tier: "reprint" },
  { grade: "JIS 3000", medianUm: 4, confirmed: "text", tier: "reprint" },
  { grade: "JIS 4000", medianUm: 3, confirmed: "text", tier: "reprint" },
  { grade: "JIS 6000", medianUm: 2, confirmed: "text", tier: "reprint" },
  { grade: "JIS 8000", medianUm: 1.2, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const gnuUnitsJisProvenance: TableProvenance = {
  source: gnuUnits,
  at: "lines 6905 to 7155: JIS",
  title: "JIS grades of abrasives, by median size",
  rights: "Single figures of a standard, as a unit database under a free licence states them.",
  errata: [],
  notes: ["Whole figures are printed without a decimal.","As the database tabulates them; the Japanese standard itself was not seen."],
};
