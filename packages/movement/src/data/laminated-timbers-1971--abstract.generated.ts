// Written by `npm run tables` from data/tables/laminated-timbers-1971--abstract.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { laminatedTimbers1971 } from '@scantling/rules/sources';
import type { ServiceMoistureRow } from '../rows.ts';

/** Moisture content of laminated timbers in use, and of their fabrication: abstract of laminated-timbers-1971. */
export const laminatedTimbers1971Abstract: readonly ServiceMoistureRow[] = [
  { region: "Rocky Mountain area, South Dakota to Arizona", use: "laminated timbers in service", averageMoisturePct: 8, leastMoisturePct: 6.6, mostMoisturePct: 10.5, confirmed: "text", tier: "publication" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const laminatedTimbers1971AbstractProvenance: TableProvenance = {
  source: laminatedTimbers1971,
  at: "abstract",
  title: "Moisture content of laminated timbers in use, and of their fabrication",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [],
  notes: ["Averages of 25 structures over three years, indoors and out. The abstract says that they did not vary significantly with the season: the range lies between structures."],
};
