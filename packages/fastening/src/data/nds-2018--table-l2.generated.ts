// Written by `npm run tables` from data/tables/nds-2018--table-l2.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import type { LagScrewTipRow } from '../rows.ts';

/** Lag screws for the design of connections: diameter, root diameter and tapered tip: Appendix L, Table L2 of nds-2018. */
export const nds2018TableL2: readonly LagScrewTipRow[] = [
  { size: "1/4", diameterIn: 0.25, rootDiameterIn: 0.173, tipLengthIn: 0.15625, confirmed: "memory", tier: "memory" },
  { size: "5/16", diameterIn: 0.3125, rootDiameterIn: 0.227, tipLengthIn: 0.1875, confirmed: "memory", tier: "memory" },
  { size: "3/8", diameterIn: 0.375, rootDiameterIn: 0.265, tipLengthIn: 0.21875, confirmed: "memory", tier: "memory" },
  { size: "7/16", diameterIn: 0.4375, rootDiameterIn: 0.328, tipLengthIn: 0.28125, confirmed: "memory", tier: "memory" },
  { size: "1/2", diameterIn: 0.5, rootDiameterIn: 0.371, tipLengthIn: 0.3125, confirmed: "memory", tier: "memory" },
  { size: "5/8", diameterIn: 0.625, rootDiameterIn: 0.471, tipLengthIn: 0.375, confirmed: "memory", tier: "memory" },
  { size: "3/4", diameterIn: 0.75, rootDiameterIn: 0.579, tipLengthIn: 0.4375, confirmed: "memory", tier: "memory" },
  { size: "7/8", diameterIn: 0.875, rootDiameterIn: 0.683, tipLengthIn: 0.5, confirmed: "memory", tier: "memory" },
  { size: "1", diameterIn: 1, rootDiameterIn: 0.78, tipLengthIn: 0.5625, confirmed: "memory", tier: "memory" },
  { size: "1 1/8", diameterIn: 1.125, rootDiameterIn: 0.887, tipLengthIn: 0.625, confirmed: "memory", tier: "memory" },
  { size: "1 1/4", diameterIn: 1.25, rootDiameterIn: 1.012, tipLengthIn: 0.75, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const nds2018TableL2Provenance: TableProvenance = {
  source: nds2018,
  at: "Appendix L, Table L2",
  title: "Lag screws for the design of connections: diameter, root diameter and tapered tip",
  rights: "Facts, quoted with their source; the publication itself is protected.",
  errata: [],
  notes: ["All rows are recalled. The tip is printed as a fraction; its root diameters are those that a reprint of ASME B18.2.1 shows."],
};
