// Written by `npm run tables` from data/tables/asme-b18-6-1--flat-heads.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { asmeB1861 } from '@scantling/rules/sources';
import type { InchWoodScrewRow } from '../rows.ts';

/** Wood screws by gauge: body, thread and flat head: Tables 2 to 4: flat countersunk head wood screws of asme-b18-6-1. */
export const asmeB1861FlatHeads: readonly InchWoodScrewRow[] = [
  { gauge: 0, diameterIn: 0.06, bodyDiameterIn: 0.064, threadsPerIn: 32, headDiameterIn: 0.119, headEdgeDiameterIn: 0.099, headHeightIn: 0.035, confirmed: "text", tier: "reprint" },
  { gauge: 1, diameterIn: 0.073, bodyDiameterIn: 0.077, threadsPerIn: 28, headDiameterIn: 0.146, headEdgeDiameterIn: 0.123, headHeightIn: 0.043, confirmed: "text", tier: "reprint" },
  { gauge: 2, diameterIn: 0.086, bodyDiameterIn: 0.09, threadsPerIn: 26, headDiameterIn: 0.172, headEdgeDiameterIn: 0.147, headHeightIn: 0.051, confirmed: "text", tier: "reprint" },
  { gauge: 3, diameterIn: 0.099, bodyDiameterIn: 0.103, threadsPerIn: 24, headDiameterIn: 0.199, headEdgeDiameterIn: 0.171, headHeightIn: 0.059, confirmed: "text", tier: "reprint" },
  { gauge: 4, diameterIn: 0.112, bodyDiameterIn: 0.116, threadsPerIn: 22, headDiameterIn: 0.225, headEdgeDiameterIn: 0.195, headHeightIn: 0.067, confirmed: "text", tier: "reprint" },
  { gauge: 5, diameterIn: 0.125, bodyDiameterIn: 0.129, threadsPerIn: 20, headDiameterIn: 0.252, headEdgeDiameterIn: 0.22, headHeightIn: 0.075, confirmed: "text", tier: "reprint" },
  { gauge: 6, diameterIn: 0.138, bodyDiameterIn: 0.142, threadsPerIn: 18, headDiameterIn: 0.279, headEdgeDiameterIn: 0.244, headHeightIn: 0.083, confirmed: "text", tier: "reprint" },
  { gauge: 7, diameterIn: 0.151, bodyDiameterIn: 0.155, threadsPerIn: 16, headDiameterIn: 0.305, headEdgeDiameterIn: 0.268, headHeightIn: 0.091, confirmed: "text", tier: "reprint" },
  { gauge: 8, diameterIn: 0.164, bodyDiameterIn: 0.168, threadsPerIn: 15, headDiameterIn: 0.332, headEdgeDiameterIn: 0.292, headHeightIn: 0.1, confirmed: "text", tier: "reprint" },
  { gauge: 9, diameterIn: 0.177, bodyDiameterIn: 0.181, threadsPerIn: 14, headDiameterIn: 0.358, headEdgeDiameterIn: 0.316, headHeightIn: 0.108, confirmed: "text", tier: "reprint" },
  { gauge: 10, diameterIn: 0.19, bodyDiameterIn: 0.194, threadsPerIn: 13, headDiameterIn: 0.385, headEdgeDiameterIn: 0.34, headHeightIn: 0.116, confirmed: "text", tier: "reprint" },
  { gauge: 12, diameterIn: 0.216, bodyDiameterIn: 0.22, threadsPerIn: 11, headDiameterIn: 0.438, headEdgeDiameterIn: 0.389, headHeightIn: 0.132, confirmed: "text", tier: "reprint" },
  { gauge: 14, diameterIn: 0.242, bodyDiameterIn: 0.246, threadsPerIn: 10, headDiameterIn: 0.507, headEdgeDiameterIn: 0.452, headHeightIn: 0.153, confirmed: "text", tier: "reprint" },
  { gauge: 16, diameterIn: 0.268, bodyDiameterIn: 0.272, threadsPerIn: 9, headDiameterIn: 0.544, headEdgeDiameterIn: 0.485, headHeightIn: 0.164, confirmed: "text", tier: "reprint" },
  { gauge: 18, diameterIn: 0.294, bodyDiameterIn: 0.298, threadsPerIn: 8, headDiameterIn: 0.635, headEdgeDiameterIn: 0.568, headHeightIn: 0.191, confirmed: "text", tier: "reprint" },
  { gauge: 20, diameterIn: 0.32, bodyDiameterIn: 0.324, threadsPerIn: 8, headDiameterIn: 0.65, headEdgeDiameterIn: 0.582, headHeightIn: 0.196, confirmed: "text", tier: "reprint" },
  { gauge: 24, diameterIn: 0.372, bodyDiameterIn: 0.376, threadsPerIn: 7, headDiameterIn: 0.762, headEdgeDiameterIn: 0.685, headHeightIn: 0.23, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const asmeB1861FlatHeadsProvenance: TableProvenance = {
  source: asmeB1861,
  at: "Tables 2 to 4: flat countersunk head wood screws",
  title: "Wood screws by gauge: body, thread and flat head",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [{"rows":["18"],"columns":["headHeightIn"],"says":"The height is that of the 5/16 in head of machine and tapping screws, which is as wide; a cone of 82° from this head to this shank is 0.196 in high."}],
  notes: ["Seen as copied in FsData/asmeb18.6.1.2def.csv. The basic diameter is 0.060 in + 0.013 in for each gauge; the body is at most 0.004 in thicker.","The head is 82°, its greatest diameter measured to a sharp edge, its least over the worn or rounded one; neither angle nor lengths are in this table."],
};
