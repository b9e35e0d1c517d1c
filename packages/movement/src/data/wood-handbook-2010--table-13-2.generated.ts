// Written by `npm run tables` from data/tables/wood-handbook-2010--table-13-2.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import type { InstallationMoistureRow } from '../rows.ts';

/** Recommended moisture content of wood at the time of installation: Table 13-2, ch. 13 of wood-handbook-2010. */
export const woodHandbook2010Table132: readonly InstallationMoistureRow[] = [
  { region: "Most areas of the United States", use: "interior", examples: "woodwork, flooring, furniture, wood trim", averageMoisturePct: 8, leastMoisturePct: 6, mostMoisturePct: 10, confirmed: "text", tier: "reprint" },
  { region: "Most areas of the United States", use: "exterior", examples: "siding, wood trim, sheathing, laminated timbers", averageMoisturePct: 12, leastMoisturePct: 9, mostMoisturePct: 14, confirmed: "text", tier: "reprint" },
  { region: "Dry southwestern area", use: "interior", examples: "woodwork, flooring, furniture, wood trim", averageMoisturePct: 6, leastMoisturePct: 4, mostMoisturePct: 9, confirmed: "memory", tier: "memory" },
  { region: "Dry southwestern area", use: "exterior", examples: "siding, wood trim, sheathing, laminated timbers", averageMoisturePct: 9, leastMoisturePct: 7, mostMoisturePct: 12, confirmed: "memory", tier: "memory" },
  { region: "Damp, warm coastal area", use: "interior", examples: "woodwork, flooring, furniture, wood trim", averageMoisturePct: 11, leastMoisturePct: 8, mostMoisturePct: 13, confirmed: "memory", tier: "memory" },
  { region: "Damp, warm coastal area", use: "exterior", examples: "siding, wood trim, sheathing, laminated timbers", averageMoisturePct: 12, leastMoisturePct: 9, mostMoisturePct: 14, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodHandbook2010Table132Provenance: TableProvenance = {
  source: woodHandbook2010,
  at: "Table 13-2, ch. 13",
  title: "Recommended moisture content of wood at the time of installation",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [],
  notes: ["The two rows of most areas were seen as an engineer's letter of 2000 quotes them from Table 14-1 of an older edition, without the list of uses; that this edition prints the same figures is from memory.","The averages 8, 6 and 11 % for interior use were also seen in a post that quotes the map beside the table, Figure 13-1.","The table is about the day of installation: an average, and what single pieces may have. It does not claim that they are the extremes of a year."],
};
