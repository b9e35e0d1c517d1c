// Written by `npm run tables` from data/tables/din-7996--round-heads.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { din7996 } from '@scantling/rules/sources';
import type { MetricWoodScrewRow } from '../rows.ts';

/** Cross recessed round head wood screws: thread and head: table of dimensions of din-7996. */
export const din7996RoundHeads: readonly MetricWoodScrewRow[] = [
  { diameterMm: 2, rootDiameterMm: 1.4, pitchMm: 0.9, headDiameterMm: 4, headHeightMm: 1.4, confirmed: "text", tier: "reprint" },
  { diameterMm: 2.5, rootDiameterMm: 1.7, pitchMm: 1.1, headDiameterMm: 5, headHeightMm: 1.7, confirmed: "text", tier: "reprint" },
  { diameterMm: 3, rootDiameterMm: 2.1, pitchMm: 1.35, headDiameterMm: 6, headHeightMm: 2.1, confirmed: "text", tier: "reprint" },
  { diameterMm: 3.5, rootDiameterMm: 2.4, pitchMm: 1.6, headDiameterMm: 7, headHeightMm: 2.35, confirmed: "text", tier: "reprint" },
  { diameterMm: 4, rootDiameterMm: 2.8, pitchMm: 1.8, headDiameterMm: 8, headHeightMm: 2.8, confirmed: "text", tier: "reprint" },
  { diameterMm: 4.5, rootDiameterMm: 3.1, pitchMm: 2, headDiameterMm: 9, headHeightMm: 3.1, confirmed: "text", tier: "reprint" },
  { diameterMm: 5, rootDiameterMm: 3.5, pitchMm: 2.2, headDiameterMm: 10, headHeightMm: 3.5, confirmed: "text", tier: "reprint" },
  { diameterMm: 5.5, rootDiameterMm: 3.5, pitchMm: 2.2, headDiameterMm: 11, headHeightMm: 3.8, confirmed: "text", tier: "reprint" },
  { diameterMm: 6, rootDiameterMm: 4.2, pitchMm: 2.6, headDiameterMm: 12, headHeightMm: 4.2, confirmed: "text", tier: "reprint" },
  { diameterMm: 7, rootDiameterMm: 4.9, pitchMm: 3.2, headDiameterMm: 14, headHeightMm: 4.9, confirmed: "text", tier: "reprint" },
  { diameterMm: 8, rootDiameterMm: 5.6, pitchMm: 3.6, headDiameterMm: 16, headHeightMm: 5.6, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const din7996RoundHeadsProvenance: TableProvenance = {
  source: din7996,
  at: "table of dimensions",
  title: "Cross recessed round head wood screws: thread and head",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [{"rows":["5.5"],"columns":["rootDiameterMm","pitchMm"],"says":"The data set gives the thread of the 5 mm screw again; DIN 7998 has a root of 3.8 mm and a pitch of 2.4 mm (memory)."}],
  notes: ["Seen as copied in the data set. The thread is that of DIN 7998."],
};
