// Written by `npm run tables` from data/tables/din-571--hexagon-heads.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { din571 } from '@scantling/rules/sources';
import type { MetricLagScrewRow } from '../rows.ts';

/** Hexagon head wood screws: thread and head: table of dimensions of din-571. */
export const din571HexagonHeads: readonly MetricLagScrewRow[] = [
  { diameterMm: 4, rootDiameterMm: 2.8, pitchMm: 1.8, acrossFlatsMm: 7, headHeightMm: 2.8, confirmed: "text", tier: "reprint" },
  { diameterMm: 5, rootDiameterMm: 3.5, pitchMm: 2.2, acrossFlatsMm: 8, headHeightMm: 3.5, confirmed: "text", tier: "reprint" },
  { diameterMm: 6, rootDiameterMm: 4.2, pitchMm: 2.6, acrossFlatsMm: 10, headHeightMm: 4, confirmed: "text", tier: "reprint" },
  { diameterMm: 8, rootDiameterMm: 5.6, pitchMm: 3.6, acrossFlatsMm: 13, headHeightMm: 5.5, confirmed: "text", tier: "reprint" },
  { diameterMm: 10, rootDiameterMm: 7, pitchMm: 4.5, acrossFlatsMm: 17, headHeightMm: 7, confirmed: "text", tier: "reprint" },
  { diameterMm: 12, rootDiameterMm: 9, pitchMm: 5, acrossFlatsMm: 19, headHeightMm: 8, confirmed: "text", tier: "reprint" },
  { diameterMm: 16, rootDiameterMm: 12, pitchMm: 6, acrossFlatsMm: 24, headHeightMm: 10, confirmed: "text", tier: "reprint" },
  { diameterMm: 20, rootDiameterMm: 15, pitchMm: 7, acrossFlatsMm: 30, headHeightMm: 13, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const din571HexagonHeadsProvenance: TableProvenance = {
  source: din571,
  at: "table of dimensions",
  title: "Hexagon head wood screws: thread and head",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["Seen as copied in FsData/din571head.csv. The thread is that of DIN 7998."],
};
