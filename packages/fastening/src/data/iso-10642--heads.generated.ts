// Written by `npm run tables` from data/tables/iso-10642--heads.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { iso10642 } from '@scantling/rules/sources';
import type { MetricHeadRow } from '../rows.ts';

/** Hexagon socket countersunk head screws: head: table of dimensions of iso-10642. */
export const iso10642Heads: readonly MetricHeadRow[] = [
  { size: "M2", diameterMm: 2, headDiameterMm: 4.09, headEdgeDiameterMm: 3.9, headHeightMm: 1.24, confirmed: "text", tier: "reprint" },
  { size: "M2.5", diameterMm: 2.5, headDiameterMm: 5.08, headEdgeDiameterMm: 4.9, headHeightMm: 1.55, confirmed: "text", tier: "reprint" },
  { size: "M3", diameterMm: 3, headDiameterMm: 6.72, headEdgeDiameterMm: 6, headHeightMm: 1.86, confirmed: "text", tier: "reprint" },
  { size: "M4", diameterMm: 4, headDiameterMm: 8.96, headEdgeDiameterMm: 8, headHeightMm: 2.48, confirmed: "text", tier: "reprint" },
  { size: "M5", diameterMm: 5, headDiameterMm: 11.2, headEdgeDiameterMm: 10, headHeightMm: 3.1, confirmed: "text", tier: "reprint" },
  { size: "M6", diameterMm: 6, headDiameterMm: 13.44, headEdgeDiameterMm: 12, headHeightMm: 3.72, confirmed: "text", tier: "reprint" },
  { size: "M8", diameterMm: 8, headDiameterMm: 17.92, headEdgeDiameterMm: 16, headHeightMm: 4.96, confirmed: "text", tier: "reprint" },
  { size: "M10", diameterMm: 10, headDiameterMm: 22.4, headEdgeDiameterMm: 20.5, headHeightMm: 6.2, confirmed: "text", tier: "reprint" },
  { size: "M12", diameterMm: 12, headDiameterMm: 26.88, headEdgeDiameterMm: 25, headHeightMm: 7.44, confirmed: "text", tier: "reprint" },
  { size: "M14", diameterMm: 14, headDiameterMm: 30.8, headEdgeDiameterMm: 28.4, headHeightMm: 8.4, confirmed: "text", tier: "reprint" },
  { size: "M16", diameterMm: 16, headDiameterMm: 33.6, headEdgeDiameterMm: 31, headHeightMm: 8.8, confirmed: "text", tier: "reprint" },
  { size: "M20", diameterMm: 20, headDiameterMm: 40.32, headEdgeDiameterMm: 38, headHeightMm: 10.16, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const iso10642HeadsProvenance: TableProvenance = {
  source: iso10642,
  at: "table of dimensions",
  title: "Hexagon socket countersunk head screws: head",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [{"rows":["M2","M2.5"],"columns":["headDiameterMm"],"says":"The data set gives 4.09 and 5.08 mm; 2.24 diameters as for the next sizes, which the printed heights follow from, would be 4.48 and 5.60 mm."}],
  notes: ["Seen as copied in FsData/iso10642def.csv. The head is 90°; the theoretical diameter is that of a sharp edge, the actual one lies between the least and the greatest that are allowed.","M14 is printed in brackets: a size to be avoided."],
};
