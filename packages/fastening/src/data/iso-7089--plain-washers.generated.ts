// Written by `npm run tables` from data/tables/iso-7089--plain-washers.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { iso7089 } from '@scantling/rules/sources';
import type { MetricWasherRow } from '../rows.ts';

/** Plain washers, normal series: table of dimensions, M1.6 to M36 of iso-7089. */
export const iso7089PlainWashers: readonly MetricWasherRow[] = [
  { size: "M1.6", diameterMm: 1.6, insideDiameterMm: 1.7, outsideDiameterMm: 4, thicknessMm: 0.3, confirmed: "text", tier: "reprint" },
  { size: "M2", diameterMm: 2, insideDiameterMm: 2.2, outsideDiameterMm: 5, thicknessMm: 0.3, confirmed: "text", tier: "reprint" },
  { size: "M2.5", diameterMm: 2.5, insideDiameterMm: 2.7, outsideDiameterMm: 6, thicknessMm: 0.5, confirmed: "text", tier: "reprint" },
  { size: "M3", diameterMm: 3, insideDiameterMm: 3.2, outsideDiameterMm: 7, thicknessMm: 0.5, confirmed: "text", tier: "reprint" },
  { size: "M4", diameterMm: 4, insideDiameterMm: 4.3, outsideDiameterMm: 9, thicknessMm: 0.8, confirmed: "text", tier: "reprint" },
  { size: "M5", diameterMm: 5, insideDiameterMm: 5.3, outsideDiameterMm: 10, thicknessMm: 1, confirmed: "text", tier: "reprint" },
  { size: "M6", diameterMm: 6, insideDiameterMm: 6.4, outsideDiameterMm: 12, thicknessMm: 1.6, confirmed: "text", tier: "reprint" },
  { size: "M8", diameterMm: 8, insideDiameterMm: 8.4, outsideDiameterMm: 16, thicknessMm: 1.6, confirmed: "text", tier: "reprint" },
  { size: "M10", diameterMm: 10, insideDiameterMm: 10.5, outsideDiameterMm: 20, thicknessMm: 2, confirmed: "text", tier: "reprint" },
  { size: "M12", diameterMm: 12, insideDiameterMm: 13, outsideDiameterMm: 24, thicknessMm: 2.5, confirmed: "text", tier: "reprint" },
  { size: "M16", diameterMm: 16, insideDiameterMm: 17, outsideDiameterMm: 30, thicknessMm: 3, confirmed: "text", tier: "reprint" },
  { size: "M20", diameterMm: 20, insideDiameterMm: 21, outsideDiameterMm: 37, thicknessMm: 3, confirmed: "text", tier: "reprint" },
  { size: "M24", diameterMm: 24, insideDiameterMm: 25, outsideDiameterMm: 44, thicknessMm: 4, confirmed: "text", tier: "reprint" },
  { size: "M30", diameterMm: 30, insideDiameterMm: 31, outsideDiameterMm: 56, thicknessMm: 4, confirmed: "text", tier: "reprint" },
  { size: "M36", diameterMm: 36, insideDiameterMm: 37, outsideDiameterMm: 66, thicknessMm: 5, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const iso7089PlainWashersProvenance: TableProvenance = {
  source: iso7089,
  at: "table of dimensions, M1.6 to M36",
  title: "Plain washers, normal series",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["Seen as copied in FsData/iso7089def.csv."],
};
