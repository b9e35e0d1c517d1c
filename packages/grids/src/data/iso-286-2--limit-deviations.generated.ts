// Written by `npm run tables` from data/tables/iso-286-2--limit-deviations.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { iso2862 } from '@scantling/rules/sources';
import type { LimitDeviationsRow } from '../rows.ts';

/** Limit deviations of some holes and shafts: classes H7, H8, H11, H13, h6 and g6, over 3 to 30 mm of iso-286-2. */
export const iso2862LimitDeviations: readonly LimitDeviationsRow[] = [
  { overMm: 3, upToMm: 6, toleranceClass: "H7", upperDeviationUm: 12, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 6, upToMm: 10, toleranceClass: "H7", upperDeviationUm: 15, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 10, upToMm: 18, toleranceClass: "H7", upperDeviationUm: 18, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 18, upToMm: 30, toleranceClass: "H7", upperDeviationUm: 21, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 3, upToMm: 6, toleranceClass: "H8", upperDeviationUm: 18, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 6, upToMm: 10, toleranceClass: "H8", upperDeviationUm: 22, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 10, upToMm: 18, toleranceClass: "H8", upperDeviationUm: 27, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 18, upToMm: 30, toleranceClass: "H8", upperDeviationUm: 33, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 3, upToMm: 6, toleranceClass: "H11", upperDeviationUm: 75, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 6, upToMm: 10, toleranceClass: "H11", upperDeviationUm: 90, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 10, upToMm: 18, toleranceClass: "H11", upperDeviationUm: 110, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 18, upToMm: 30, toleranceClass: "H11", upperDeviationUm: 130, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 3, upToMm: 6, toleranceClass: "H13", upperDeviationUm: 180, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 6, upToMm: 10, toleranceClass: "H13", upperDeviationUm: 220, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 10, upToMm: 18, toleranceClass: "H13", upperDeviationUm: 270, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 18, upToMm: 30, toleranceClass: "H13", upperDeviationUm: 330, lowerDeviationUm: 0, confirmed: "text", tier: "reprint" },
  { overMm: 3, upToMm: 6, toleranceClass: "h6", upperDeviationUm: 0, lowerDeviationUm: -8, confirmed: "text", tier: "reprint" },
  { overMm: 6, upToMm: 10, toleranceClass: "h6", upperDeviationUm: 0, lowerDeviationUm: -9, confirmed: "text", tier: "reprint" },
  { overMm: 10, upToMm: 18, toleranceClass: "h6", upperDeviationUm: 0, lowerDeviationUm: -11, confirmed: "text", tier: "reprint" },
  { overMm: 18, upToMm: 30, toleranceClass: "h6", upperDeviationUm: 0, lowerDeviationUm: -13, confirmed: "text", tier: "reprint" },
  { overMm: 3, upToMm: 6, toleranceClass: "g6", upperDeviationUm: -4, lowerDeviationUm: -12, confirmed: "memory", tier: "memory" },
  { overMm: 6, upToMm: 10, toleranceClass: "g6", upperDeviationUm: -5, lowerDeviationUm: -14, confirmed: "memory", tier: "memory" },
  { overMm: 10, upToMm: 18, toleranceClass: "g6", upperDeviationUm: -6, lowerDeviationUm: -17, confirmed: "memory", tier: "memory" },
  { overMm: 18, upToMm: 30, toleranceClass: "g6", upperDeviationUm: -7, lowerDeviationUm: -20, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const iso2862LimitDeviationsProvenance: TableProvenance = {
  source: iso2862,
  at: "classes H7, H8, H11, H13, h6 and g6, over 3 to 30 mm",
  title: "Limit deviations of some holes and shafts",
  rights: "Single figures of a standard, as reprints in catalogues and course books state them.",
  errata: [{"rows":["h6; 18"],"says":"One reprint gives 0 and −30 µm; another, and the width of IT6 for over 18 to 30 mm, give 0 and −13 µm. The first is taken for a misprint."}],
  notes: ["A row holds for nominal sizes over its first figure, up to and including its second.","The rows of g6 are recalled. A tool maker's page that reprints JIS B 0401:1999 gives the same four."],
};
