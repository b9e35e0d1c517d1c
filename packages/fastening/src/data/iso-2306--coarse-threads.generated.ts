// Written by `npm run tables` from data/tables/iso-2306--coarse-threads.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { iso2306 } from '@scantling/rules/sources';
import type { MetricThreadRow } from '../rows.ts';

/** Coarse metric threads: pitch and drill before tapping: coarse threads M1.6 to M24 of iso-2306. */
export const iso2306CoarseThreads: readonly MetricThreadRow[] = [
  { size: "M1.6", diameterMm: 1.6, pitchMm: 0.35, tapDrillDiameterMm: 1.25, confirmed: "text", tier: "reprint" },
  { size: "M2", diameterMm: 2, pitchMm: 0.4, tapDrillDiameterMm: 1.6, confirmed: "text", tier: "reprint" },
  { size: "M2.5", diameterMm: 2.5, pitchMm: 0.45, tapDrillDiameterMm: 2.05, confirmed: "text", tier: "reprint" },
  { size: "M3", diameterMm: 3, pitchMm: 0.5, tapDrillDiameterMm: 2.5, confirmed: "text", tier: "reprint" },
  { size: "M4", diameterMm: 4, pitchMm: 0.7, tapDrillDiameterMm: 3.3, confirmed: "text", tier: "reprint" },
  { size: "M5", diameterMm: 5, pitchMm: 0.8, tapDrillDiameterMm: 4.2, confirmed: "text", tier: "reprint" },
  { size: "M6", diameterMm: 6, pitchMm: 1, tapDrillDiameterMm: 5, confirmed: "text", tier: "reprint" },
  { size: "M8", diameterMm: 8, pitchMm: 1.25, tapDrillDiameterMm: 6.8, confirmed: "text", tier: "reprint" },
  { size: "M10", diameterMm: 10, pitchMm: 1.5, tapDrillDiameterMm: 8.5, confirmed: "text", tier: "reprint" },
  { size: "M12", diameterMm: 12, pitchMm: 1.75, tapDrillDiameterMm: 10.2, confirmed: "text", tier: "reprint" },
  { size: "M14", diameterMm: 14, pitchMm: 2, tapDrillDiameterMm: 12, confirmed: "text", tier: "reprint" },
  { size: "M16", diameterMm: 16, pitchMm: 2, tapDrillDiameterMm: 14, confirmed: "text", tier: "reprint" },
  { size: "M18", diameterMm: 18, pitchMm: 2.5, tapDrillDiameterMm: 15.5, confirmed: "text", tier: "reprint" },
  { size: "M20", diameterMm: 20, pitchMm: 2.5, tapDrillDiameterMm: 17.5, confirmed: "text", tier: "reprint" },
  { size: "M22", diameterMm: 22, pitchMm: 2.5, tapDrillDiameterMm: 19.5, confirmed: "text", tier: "reprint" },
  { size: "M24", diameterMm: 24, pitchMm: 3, tapDrillDiameterMm: 21, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const iso2306CoarseThreadsProvenance: TableProvenance = {
  source: iso2306,
  at: "coarse threads M1.6 to M24",
  title: "Coarse metric threads: pitch and drill before tapping",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["Seen as copied in src/Mod/PartDesign/App/FeatureHole.cpp. A drill is about the diameter less the pitch."],
};
