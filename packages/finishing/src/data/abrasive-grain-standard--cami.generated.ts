// Written by `npm run tables` from data/tables/abrasive-grain-standard--cami.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { abrasiveGrainStandard } from '@scantling/rules/sources';
import type { GritRow } from '../rows.ts';

/** CAMI grades of coated abrasives, by average size: average particle sizes of coated abrasives, as widely reprinted of abrasive-grain-standard. */
export const abrasiveGrainStandardCami: readonly GritRow[] = [
  { grade: "CAMI 36", medianUm: 535, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 40", medianUm: 428, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 50", medianUm: 351, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 60", medianUm: 268, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 80", medianUm: 192, confirmed: "memory", tier: "memory" },
  { grade: "CAMI 100", medianUm: 141, confirmed: "memory", tier: "memory" },
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
export const abrasiveGrainStandardCamiProvenance: TableProvenance = {
  source: abrasiveGrainStandard,
  at: "average particle sizes of coated abrasives, as widely reprinted",
  title: "CAMI grades of coated abrasives, by average size",
  rights: "Single figures of a standard, as many pages reprint them.",
  errata: [{"rows":["CAMI 80","CAMI 220","CAMI 320","CAMI 400","CAMI 600"],"says":"The list of ANSI coated grades in the units database gives 185, 58, 29.5, 18.25 and 10.55 µm for these numbers."}],
  notes: ["Recalled, not seen. Grades are sold in the United States under a bare number."],
};
