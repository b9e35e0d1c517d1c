// Written by `npm run tables` from data/tables/asme-b18-2-8--clearance-holes.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { asmeB1828 } from '@scantling/rules/sources';
import type { InchClearanceHoleRow } from '../rows.ts';

/** Clearance holes for inch screws, rounded to 0.1 mm: least hole of close, normal and loose fit, No. 0 to 3/4 in of asme-b18-2-8. */
export const asmeB1828ClearanceHoles: readonly InchClearanceHoleRow[] = [
  { size: "No. 0", diameterIn: 0.06, closeMm: 1.7, normalMm: 1.9, looseMm: 2.4, confirmed: "text", tier: "reprint" },
  { size: "No. 1", diameterIn: 0.073, closeMm: 2.1, normalMm: 2.3, looseMm: 2.6, confirmed: "text", tier: "reprint" },
  { size: "No. 2", diameterIn: 0.086, closeMm: 2.4, normalMm: 2.6, looseMm: 2.9, confirmed: "text", tier: "reprint" },
  { size: "No. 3", diameterIn: 0.099, closeMm: 2.7, normalMm: 2.9, looseMm: 3.3, confirmed: "text", tier: "reprint" },
  { size: "No. 4", diameterIn: 0.112, closeMm: 3, normalMm: 3.3, looseMm: 3.7, confirmed: "text", tier: "reprint" },
  { size: "No. 5", diameterIn: 0.125, closeMm: 3.6, normalMm: 4, looseMm: 4.4, confirmed: "text", tier: "reprint" },
  { size: "No. 6", diameterIn: 0.138, closeMm: 3.9, normalMm: 4.3, looseMm: 4.7, confirmed: "text", tier: "reprint" },
  { size: "No. 8", diameterIn: 0.164, closeMm: 4.6, normalMm: 5, looseMm: 5.4, confirmed: "text", tier: "reprint" },
  { size: "No. 10", diameterIn: 0.19, closeMm: 5.2, normalMm: 5.6, looseMm: 6, confirmed: "text", tier: "reprint" },
  { size: "1/4", diameterIn: 0.25, closeMm: 6.8, normalMm: 7.1, looseMm: 7.5, confirmed: "text", tier: "reprint" },
  { size: "5/16", diameterIn: 0.3125, closeMm: 8.3, normalMm: 8.7, looseMm: 9.1, confirmed: "text", tier: "reprint" },
  { size: "3/8", diameterIn: 0.375, closeMm: 9.9, normalMm: 10.3, looseMm: 10.7, confirmed: "text", tier: "reprint" },
  { size: "7/16", diameterIn: 0.4375, closeMm: 11.5, normalMm: 11.9, looseMm: 12.3, confirmed: "text", tier: "reprint" },
  { size: "1/2", diameterIn: 0.5, closeMm: 13.5, normalMm: 14.3, looseMm: 15.5, confirmed: "text", tier: "reprint" },
  { size: "5/8", diameterIn: 0.625, closeMm: 16.7, normalMm: 17.5, looseMm: 18.6, confirmed: "text", tier: "reprint" },
  { size: "3/4", diameterIn: 0.75, closeMm: 19.8, normalMm: 20.6, looseMm: 23, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const asmeB1828ClearanceHolesProvenance: TableProvenance = {
  source: asmeB1828,
  at: "least hole of close, normal and loose fit, No. 0 to 3/4 in",
  title: "Clearance holes for inch screws, rounded to 0.1 mm",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["Seen as copied in src/Mod/PartDesign/App/FeatureHole.cpp, in millimetres rounded to one decimal; the standard prints inches. The diameters are the basic ones of their sizes.","Metric drills of the standard’s Table 3a, as a handbook for machinists reprints it (p. 1743), agree but for those that are not whole tenths: No. 1 2.05 and 2.25 mm, 1/4 in close 6.7 mm, 7/16 in normal 11.8 mm, 7/16 in loose 12.2 mm, and a few above."],
};
