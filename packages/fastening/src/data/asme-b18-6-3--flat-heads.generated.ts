// Written by `npm run tables` from data/tables/asme-b18-6-3--flat-heads.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { asmeB1863 } from '@scantling/rules/sources';
import type { InchMachineScrewRow } from '../rows.ts';

/** Machine screws of inch series: coarse thread and 82° flat head: 82° flat countersunk head machine screws of asme-b18-6-3. */
export const asmeB1863FlatHeads: readonly InchMachineScrewRow[] = [
  { size: "No. 0", diameterIn: 0.06, threadsPerIn: 80, headDiameterIn: 0.112, headHeightIn: 0.035, confirmed: "text", tier: "reprint" },
  { size: "No. 1", diameterIn: 0.073, threadsPerIn: 64, headDiameterIn: 0.137, headHeightIn: 0.043, confirmed: "text", tier: "reprint" },
  { size: "No. 2", diameterIn: 0.086, threadsPerIn: 56, headDiameterIn: 0.162, headHeightIn: 0.051, confirmed: "text", tier: "reprint" },
  { size: "No. 3", diameterIn: 0.099, threadsPerIn: 48, headDiameterIn: 0.187, headHeightIn: 0.059, confirmed: "text", tier: "reprint" },
  { size: "No. 4", diameterIn: 0.112, threadsPerIn: 40, headDiameterIn: 0.212, headHeightIn: 0.067, confirmed: "text", tier: "reprint" },
  { size: "No. 5", diameterIn: 0.125, threadsPerIn: 40, headDiameterIn: 0.237, headHeightIn: 0.075, confirmed: "text", tier: "reprint" },
  { size: "No. 6", diameterIn: 0.138, threadsPerIn: 32, headDiameterIn: 0.262, headHeightIn: 0.083, confirmed: "text", tier: "reprint" },
  { size: "No. 8", diameterIn: 0.164, threadsPerIn: 32, headDiameterIn: 0.312, headHeightIn: 0.1, confirmed: "text", tier: "reprint" },
  { size: "No. 10", diameterIn: 0.19, threadsPerIn: 24, headDiameterIn: 0.362, headHeightIn: 0.116, confirmed: "text", tier: "reprint" },
  { size: "No. 12", diameterIn: 0.216, threadsPerIn: 24, headDiameterIn: 0.412, headHeightIn: 0.132, confirmed: "text", tier: "reprint" },
  { size: "1/4", diameterIn: 0.25, threadsPerIn: 20, headDiameterIn: 0.477, headHeightIn: 0.153, confirmed: "text", tier: "reprint" },
  { size: "5/16", diameterIn: 0.3125, threadsPerIn: 18, headDiameterIn: 0.597, headHeightIn: 0.191, confirmed: "text", tier: "reprint" },
  { size: "3/8", diameterIn: 0.375, threadsPerIn: 16, headDiameterIn: 0.717, headHeightIn: 0.23, confirmed: "text", tier: "reprint" },
  { size: "7/16", diameterIn: 0.4375, threadsPerIn: 14, headDiameterIn: 0.76, headHeightIn: 0.223, confirmed: "text", tier: "reprint" },
  { size: "1/2", diameterIn: 0.5, threadsPerIn: 13, headDiameterIn: 0.815, headHeightIn: 0.223, confirmed: "text", tier: "reprint" },
  { size: "9/16", diameterIn: 0.5625, threadsPerIn: 12, headDiameterIn: 0.932, headHeightIn: 0.26, confirmed: "text", tier: "reprint" },
  { size: "5/8", diameterIn: 0.625, threadsPerIn: 11, headDiameterIn: 1.05, headHeightIn: 0.298, confirmed: "text", tier: "reprint" },
  { size: "3/4", diameterIn: 0.75, threadsPerIn: 10, headDiameterIn: 1.285, headHeightIn: 0.372, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const asmeB1863FlatHeadsProvenance: TableProvenance = {
  source: asmeB1863,
  at: "82° flat countersunk head machine screws",
  title: "Machine screws of inch series: coarse thread and 82° flat head",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [{"rows":["9/16"],"columns":["threadsPerIn"],"says":"The data set gives a pitch of 2.166 666 667 mm, which is 11.7 threads to the inch; the coarse thread has 12."}],
  notes: ["Seen as copied in FsData/asmeb18.6.3.1adef.csv, in millimetres; each is a whole number of thousandths of an inch. The diameters are the basic ones of their sizes.","The head height is reckoned down to the thread’s least diameter, not to the shank: it is more than a cone from head to shank is high. Above 3/8 in the head is a smaller one.","No. 0 is printed with 80 threads, the fine thread: it has no coarse one."],
};
