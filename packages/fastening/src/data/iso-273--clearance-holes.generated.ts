// Written by `npm run tables` from data/tables/iso-273--clearance-holes.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { iso273 } from '@scantling/rules/sources';
import type { MetricClearanceHoleRow } from '../rows.ts';

/** Clearance holes for metric screws: fine, medium and coarse series, 1 to 36 mm of iso-273. */
export const iso273ClearanceHoles: readonly MetricClearanceHoleRow[] = [
  { diameterMm: 1, closeMm: 1.1, normalMm: 1.2, looseMm: 1.3, confirmed: "text", tier: "reprint" },
  { diameterMm: 1.2, closeMm: 1.3, normalMm: 1.4, looseMm: 1.5, confirmed: "text", tier: "reprint" },
  { diameterMm: 1.4, closeMm: 1.5, normalMm: 1.6, looseMm: 1.8, confirmed: "text", tier: "reprint" },
  { diameterMm: 1.6, closeMm: 1.7, normalMm: 1.8, looseMm: 2, confirmed: "text", tier: "reprint" },
  { diameterMm: 1.8, closeMm: 2, normalMm: 2.1, looseMm: 2.2, confirmed: "text", tier: "reprint" },
  { diameterMm: 2, closeMm: 2.2, normalMm: 2.4, looseMm: 2.6, confirmed: "text", tier: "reprint" },
  { diameterMm: 2.5, closeMm: 2.7, normalMm: 2.9, looseMm: 3.1, confirmed: "text", tier: "reprint" },
  { diameterMm: 3, closeMm: 3.2, normalMm: 3.4, looseMm: 3.6, confirmed: "text", tier: "reprint" },
  { diameterMm: 3.5, closeMm: 3.7, normalMm: 3.9, looseMm: 4.2, confirmed: "text", tier: "reprint" },
  { diameterMm: 4, closeMm: 4.3, normalMm: 4.5, looseMm: 4.8, confirmed: "text", tier: "reprint" },
  { diameterMm: 4.5, closeMm: 4.8, normalMm: 5, looseMm: 5.3, confirmed: "text", tier: "reprint" },
  { diameterMm: 5, closeMm: 5.3, normalMm: 5.5, looseMm: 5.8, confirmed: "text", tier: "reprint" },
  { diameterMm: 6, closeMm: 6.4, normalMm: 6.6, looseMm: 7, confirmed: "text", tier: "reprint" },
  { diameterMm: 7, closeMm: 7.4, normalMm: 7.6, looseMm: 8, confirmed: "text", tier: "reprint" },
  { diameterMm: 8, closeMm: 8.4, normalMm: 9, looseMm: 10, confirmed: "text", tier: "reprint" },
  { diameterMm: 10, closeMm: 10.5, normalMm: 11, looseMm: 12, confirmed: "text", tier: "reprint" },
  { diameterMm: 12, closeMm: 13, normalMm: 13.5, looseMm: 14.5, confirmed: "text", tier: "reprint" },
  { diameterMm: 14, closeMm: 15, normalMm: 15.5, looseMm: 16.5, confirmed: "text", tier: "reprint" },
  { diameterMm: 16, closeMm: 17, normalMm: 17.5, looseMm: 18.5, confirmed: "text", tier: "reprint" },
  { diameterMm: 18, closeMm: 19, normalMm: 20, looseMm: 21, confirmed: "text", tier: "reprint" },
  { diameterMm: 20, closeMm: 21, normalMm: 22, looseMm: 24, confirmed: "text", tier: "reprint" },
  { diameterMm: 22, closeMm: 23, normalMm: 24, looseMm: 26, confirmed: "text", tier: "reprint" },
  { diameterMm: 24, closeMm: 25, normalMm: 26, looseMm: 28, confirmed: "text", tier: "reprint" },
  { diameterMm: 27, closeMm: 28, normalMm: 30, looseMm: 32, confirmed: "text", tier: "reprint" },
  { diameterMm: 30, closeMm: 31, normalMm: 33, looseMm: 35, confirmed: "text", tier: "reprint" },
  { diameterMm: 36, closeMm: 37, normalMm: 39, looseMm: 42, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const iso273ClearanceHolesProvenance: TableProvenance = {
  source: iso273,
  at: "fine, medium and coarse series, 1 to 36 mm",
  title: "Clearance holes for metric screws",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["Seen as copied in src/Mod/PartDesign/App/FeatureHole.cpp."],
};
