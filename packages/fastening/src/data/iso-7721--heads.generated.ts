// Written by `npm run tables` from data/tables/iso-7721--heads.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { iso7721 } from '@scantling/rules/sources';
import type { MetricHeadRow } from '../rows.ts';

/** Countersunk head screws with slot or cross recess: head: the heads of ISO 2009, 2010, 7046 and 7047 of iso-7721. */
export const iso7721Heads: readonly MetricHeadRow[] = [
  { size: "M1.6", diameterMm: 1.6, headDiameterMm: 3.6, headEdgeDiameterMm: 2.8, headHeightMm: 1, confirmed: "text", tier: "reprint" },
  { size: "M2", diameterMm: 2, headDiameterMm: 4.4, headEdgeDiameterMm: 3.6, headHeightMm: 1.2, confirmed: "text", tier: "reprint" },
  { size: "M2.5", diameterMm: 2.5, headDiameterMm: 5.5, headEdgeDiameterMm: 4.5, headHeightMm: 1.5, confirmed: "text", tier: "reprint" },
  { size: "M3", diameterMm: 3, headDiameterMm: 6.3, headEdgeDiameterMm: 5.3, headHeightMm: 1.65, confirmed: "text", tier: "reprint" },
  { size: "M3.5", diameterMm: 3.5, headDiameterMm: 8.2, headEdgeDiameterMm: 7.1, headHeightMm: 2.35, confirmed: "text", tier: "reprint" },
  { size: "M4", diameterMm: 4, headDiameterMm: 9.4, headEdgeDiameterMm: 8.2, headHeightMm: 2.7, confirmed: "text", tier: "reprint" },
  { size: "M5", diameterMm: 5, headDiameterMm: 10.4, headEdgeDiameterMm: 9.2, headHeightMm: 2.7, confirmed: "text", tier: "reprint" },
  { size: "M6", diameterMm: 6, headDiameterMm: 12.6, headEdgeDiameterMm: 11.2, headHeightMm: 3.3, confirmed: "text", tier: "reprint" },
  { size: "M8", diameterMm: 8, headDiameterMm: 17.3, headEdgeDiameterMm: 15.6, headHeightMm: 4.65, confirmed: "text", tier: "reprint" },
  { size: "M10", diameterMm: 10, headDiameterMm: 20, headEdgeDiameterMm: 18.1, headHeightMm: 5, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const iso7721HeadsProvenance: TableProvenance = {
  source: iso7721,
  at: "the heads of ISO 2009, 2010, 7046 and 7047",
  title: "Countersunk head screws with slot or cross recess: head",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["Seen as copied in FsData/iso2009def.csv. The head is 90°; the theoretical diameter is that of a sharp edge, the actual one lies between the least and the greatest that are allowed.","M3.5 is printed in brackets: a size to be avoided."],
};
