// Written by `npm run tables` from data/tables/iso-7093--plain-washers.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { iso7093 } from '@scantling/rules/sources';
import type { MetricWasherRow } from '../rows.ts';

/** Plain washers, large series: table of dimensions, M3 to M36 of iso-7093. */
export const iso7093PlainWashers: readonly MetricWasherRow[] = [
  { size: "M3", diameterMm: 3, insideDiameterMm: 3.2, outsideDiameterMm: 9, thicknessMm: 0.8, confirmed: "text", tier: "reprint" },
  { size: "M3.5", diameterMm: 3.5, insideDiameterMm: 3.7, outsideDiameterMm: 11, thicknessMm: 0.8, confirmed: "text", tier: "reprint" },
  { size: "M4", diameterMm: 4, insideDiameterMm: 4.3, outsideDiameterMm: 12, thicknessMm: 1, confirmed: "text", tier: "reprint" },
  { size: "M5", diameterMm: 5, insideDiameterMm: 5.3, outsideDiameterMm: 15, thicknessMm: 1.2, confirmed: "text", tier: "reprint" },
  { size: "M6", diameterMm: 6, insideDiameterMm: 6.4, outsideDiameterMm: 18, thicknessMm: 1.6, confirmed: "text", tier: "reprint" },
  { size: "M8", diameterMm: 8, insideDiameterMm: 8.4, outsideDiameterMm: 24, thicknessMm: 2, confirmed: "text", tier: "reprint" },
  { size: "M10", diameterMm: 10, insideDiameterMm: 10.5, outsideDiameterMm: 30, thicknessMm: 2.5, confirmed: "text", tier: "reprint" },
  { size: "M12", diameterMm: 12, insideDiameterMm: 13, outsideDiameterMm: 37, thicknessMm: 3, confirmed: "text", tier: "reprint" },
  { size: "M14", diameterMm: 14, insideDiameterMm: 15, outsideDiameterMm: 44, thicknessMm: 3, confirmed: "text", tier: "reprint" },
  { size: "M16", diameterMm: 16, insideDiameterMm: 17, outsideDiameterMm: 50, thicknessMm: 3, confirmed: "text", tier: "reprint" },
  { size: "M20", diameterMm: 20, insideDiameterMm: 22, outsideDiameterMm: 60, thicknessMm: 4, confirmed: "text", tier: "reprint" },
  { size: "M24", diameterMm: 24, insideDiameterMm: 26, outsideDiameterMm: 72, thicknessMm: 5, confirmed: "text", tier: "reprint" },
  { size: "M30", diameterMm: 30, insideDiameterMm: 33, outsideDiameterMm: 92, thicknessMm: 6, confirmed: "text", tier: "reprint" },
  { size: "M36", diameterMm: 36, insideDiameterMm: 39, outsideDiameterMm: 110, thicknessMm: 8, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const iso7093PlainWashersProvenance: TableProvenance = {
  source: iso7093,
  at: "table of dimensions, M3 to M36",
  title: "Plain washers, large series",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["Seen as copied in database/component/fastener/iso_7093.scad, which states the least and the greatest thickness; the thickness here is their middle."],
};
