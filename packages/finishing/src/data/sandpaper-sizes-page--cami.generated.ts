// Written by `npm run tables` from data/tables/sandpaper-sizes-page--cami.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { sandpaperSizesPage } from '@scantling/rules/sources';
import type { GritRow } from '../rows.ts';

/** CAMI grades of coated abrasives, by average size: table of grades: average particle size of sandpaper-sizes-page. */
export const sandpaperSizesPageCami: readonly GritRow[] = [
  { grade: "CAMI 16", medianUm: 1320, confirmed: "text", tier: "publication" },
  { grade: "CAMI 20", medianUm: 905, confirmed: "text", tier: "publication" },
  { grade: "CAMI 24", medianUm: 715, confirmed: "text", tier: "publication" },
  { grade: "CAMI 30", medianUm: 638, confirmed: "text", tier: "publication" },
  { grade: "CAMI 36", medianUm: 535, confirmed: "text", tier: "publication" },
  { grade: "CAMI 40", medianUm: 428, confirmed: "text", tier: "publication" },
  { grade: "CAMI 50", medianUm: 351, confirmed: "text", tier: "publication" },
  { grade: "CAMI 60", medianUm: 268, confirmed: "text", tier: "publication" },
  { grade: "CAMI 80", medianUm: 192, confirmed: "text", tier: "publication" },
  { grade: "CAMI 100", medianUm: 141, confirmed: "text", tier: "publication" },
  { grade: "CAMI 120", medianUm: 116, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 150", medianUm: 93, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 180", medianUm: 78, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 220", medianUm: 66, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 240", medianUm: 53.5, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 280", medianUm: 44, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 320", medianUm: 36, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 360", medianUm: 28.8, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 400", medianUm: 23.6, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 500", medianUm: 19.7, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 600", medianUm: 16, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 800", medianUm: 12.2, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 1000", medianUm: 9.2, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const sandpaperSizesPageCamiProvenance: TableProvenance = {
  source: sandpaperSizesPage,
  at: "table of grades: average particle size",
  title: "CAMI grades of coated abrasives, by average size",
  rights: "Single figures of an institute’s grading, as many pages reprint them.",
  errata: [{"rows":["CAMI 80","CAMI 220","CAMI 320","CAMI 400","CAMI 600"],"says":"The list of ANSI coated grades in the units database gives 185, 58, 29.5, 18.25 and 10.55 µm for these numbers."},{"rows":["CAMI 24","CAMI 1000"],"says":"Another page gives 708 and 10.3 µm."}],
  notes: ["Grades are sold in the United States under a bare number. CAMI states the average size, FEPA a range of sizes with its median.","Grades finer than 100 are recalled, not seen. Whole figures are printed without a decimal."],
};
