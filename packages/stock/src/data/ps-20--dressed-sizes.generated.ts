// Written by `npm run tables` from data/tables/ps-20--dressed-sizes.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { ps20 } from '@scantling/rules/sources';
import type { DressedSizeRow } from '../rows.ts';

/** Dressed sizes of softwood lumber: PS 20, nominal and minimum-dressed sizes of boards and dimension lumber of ps-20. */
export const ps20DressedSizes: readonly DressedSizeRow[] = [
  { use: "board", side: "thickness", nominalIn: 0.375, dryIn: 0.3125, greenIn: 0.34375, confirmed: "text", tier: "reprint" },
  { use: "board", side: "thickness", nominalIn: 0.5, dryIn: 0.4375, greenIn: 0.46875, confirmed: "text", tier: "reprint" },
  { use: "board", side: "thickness", nominalIn: 0.625, dryIn: 0.5625, greenIn: 0.59375, confirmed: "text", tier: "reprint" },
  { use: "board", side: "thickness", nominalIn: 0.75, dryIn: 0.625, greenIn: 0.6875, confirmed: "text", tier: "reprint" },
  { use: "board", side: "thickness", nominalIn: 1, dryIn: 0.75, greenIn: 0.78125, confirmed: "text", tier: "reprint" },
  { use: "board", side: "thickness", nominalIn: 1.25, dryIn: 1, greenIn: 1.03125, confirmed: "text", tier: "reprint" },
  { use: "board", side: "thickness", nominalIn: 1.5, dryIn: 1.25, greenIn: 1.28125, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 2, dryIn: 1.5, greenIn: 1.5625, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 3, dryIn: 2.5, greenIn: 2.5625, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 4, dryIn: 3.5, greenIn: 3.5625, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 5, dryIn: 4.5, greenIn: 4.625, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 6, dryIn: 5.5, greenIn: 5.625, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 7, dryIn: 6.5, greenIn: 6.625, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 8, dryIn: 7.25, greenIn: 7.5, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 9, dryIn: 8.25, greenIn: 8.5, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 10, dryIn: 9.25, greenIn: 9.5, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 11, dryIn: 10.25, greenIn: 10.5, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 12, dryIn: 11.25, greenIn: 11.5, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 14, dryIn: 13.25, greenIn: 13.5, confirmed: "text", tier: "reprint" },
  { use: "board", side: "width", nominalIn: 16, dryIn: 15.25, greenIn: 15.5, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "thickness", nominalIn: 2, dryIn: 1.5, greenIn: 1.5625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "thickness", nominalIn: 2.5, dryIn: 2, greenIn: 2.0625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "thickness", nominalIn: 3, dryIn: 2.5, greenIn: 2.5625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "thickness", nominalIn: 3.5, dryIn: 3, greenIn: 3.0625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "thickness", nominalIn: 4, dryIn: 3.5, greenIn: 3.5625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "thickness", nominalIn: 4.5, dryIn: 4, greenIn: 4.0625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 2, dryIn: 1.5, greenIn: 1.5625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 2.5, dryIn: 2, greenIn: 2.0625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 3, dryIn: 2.5, greenIn: 2.5625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 3.5, dryIn: 3, greenIn: 3.0625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 4, dryIn: 3.5, greenIn: 3.5625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 4.5, dryIn: 4, greenIn: 4.0625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 5, dryIn: 4.5, greenIn: 4.625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 6, dryIn: 5.5, greenIn: 5.625, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 8, dryIn: 7.25, greenIn: 7.5, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 10, dryIn: 9.25, greenIn: 9.5, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 12, dryIn: 11.25, greenIn: 11.5, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 14, dryIn: 13.25, greenIn: 13.5, confirmed: "text", tier: "reprint" },
  { use: "dimension", side: "width", nominalIn: 16, dryIn: 15.25, greenIn: 15.5, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const ps20DressedSizesProvenance: TableProvenance = {
  source: ps20,
  at: "PS 20, nominal and minimum-dressed sizes of boards and dimension lumber",
  title: "Dressed sizes of softwood lumber",
  rights: "Figures of a United States government standard.",
  errata: [],
  notes: ["Printed as fractions of an inch, here as decimals.","Dry is 19 % moisture content or less. Minimum sizes: planed lumber may be larger."],
};
