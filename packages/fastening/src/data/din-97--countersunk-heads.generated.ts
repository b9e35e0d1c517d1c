// Written by `npm run tables` from data/tables/din-97--countersunk-heads.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { din97 } from '@scantling/rules/sources';
import type { MetricCountersunkWoodScrewRow } from '../rows.ts';

/** Slotted countersunk head wood screws: head: table of dimensions of din-97. */
export const din97CountersunkHeads: readonly MetricCountersunkWoodScrewRow[] = [
  { diameterMm: 3, headDiameterMm: 5.6, headHeightMm: 1.65, confirmed: "memory", tier: "memory" },
  { diameterMm: 3.5, headDiameterMm: 6.5, headHeightMm: 1.93, confirmed: "memory", tier: "memory" },
  { diameterMm: 4, headDiameterMm: 7.5, headHeightMm: 2.2, confirmed: "memory", tier: "memory" },
  { diameterMm: 4.5, headDiameterMm: 8.3, headHeightMm: 2.35, confirmed: "memory", tier: "memory" },
  { diameterMm: 5, headDiameterMm: 9.2, headHeightMm: 2.5, confirmed: "memory", tier: "memory" },
  { diameterMm: 6, headDiameterMm: 11, headHeightMm: 3, confirmed: "memory", tier: "memory" },
  { diameterMm: 8, headDiameterMm: 14.5, headHeightMm: 4, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const din97CountersunkHeadsProvenance: TableProvenance = {
  source: din97,
  at: "table of dimensions",
  title: "Slotted countersunk head wood screws: head",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["All rows are recalled. The diameters are those that an open library gives for the machine screws of DIN 963, which has the same heads. The head is 90°; its diameter is that of the rounded edge, so that its height is more than half of what it is wider than the shank."],
};
