// Written by `npm run tables` from data/tables/nds-2018--table-l3.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import type { WoodScrewRootRow } from '../rows.ts';

/** Wood screws for the design of connections: diameter and root diameter: Appendix L, Table L3 of nds-2018. */
export const nds2018TableL3: readonly WoodScrewRootRow[] = [
  { gauge: 6, diameterIn: 0.138, rootDiameterIn: 0.113, confirmed: "memory", tier: "memory" },
  { gauge: 7, diameterIn: 0.151, rootDiameterIn: 0.122, confirmed: "memory", tier: "memory" },
  { gauge: 8, diameterIn: 0.164, rootDiameterIn: 0.131, confirmed: "memory", tier: "memory" },
  { gauge: 9, diameterIn: 0.177, rootDiameterIn: 0.142, confirmed: "memory", tier: "memory" },
  { gauge: 10, diameterIn: 0.19, rootDiameterIn: 0.152, confirmed: "text", tier: "reprint" },
  { gauge: 12, diameterIn: 0.216, rootDiameterIn: 0.171, confirmed: "memory", tier: "memory" },
  { gauge: 14, diameterIn: 0.242, rootDiameterIn: 0.196, confirmed: "memory", tier: "memory" },
  { gauge: 16, diameterIn: 0.268, rootDiameterIn: 0.209, confirmed: "memory", tier: "memory" },
  { gauge: 18, diameterIn: 0.294, rootDiameterIn: 0.232, confirmed: "memory", tier: "memory" },
  { gauge: 20, diameterIn: 0.32, rootDiameterIn: 0.255, confirmed: "memory", tier: "memory" },
  { gauge: 24, diameterIn: 0.372, rootDiameterIn: 0.298, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const nds2018TableL3Provenance: TableProvenance = {
  source: nds2018,
  at: "Appendix L, Table L3",
  title: "Wood screws for the design of connections: diameter and root diameter",
  rights: "Facts, quoted with their source; the publication itself is protected.",
  errata: [],
  notes: ["All rows but No. 10 are recalled; that one was seen in a worked example of the code’s publisher, copied into the tests of a structural analysis library. The diameters are those of ASME B18.6.1; a root is about four fifths of its diameter."],
};
