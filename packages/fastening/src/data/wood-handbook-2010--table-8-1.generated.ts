// Written by `npm run tables` from data/tables/wood-handbook-2010--table-8-1.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import type { CommonNailRow } from '../rows.ts';

/** Sizes of bright common wire nails: Table 8-1 of wood-handbook-2010. */
export const woodHandbook2010Table81: readonly CommonNailRow[] = [
  { size: "2d", lengthIn: 1, diameterIn: 0.072, confirmed: "memory", tier: "memory" },
  { size: "3d", lengthIn: 1.25, diameterIn: 0.08, confirmed: "memory", tier: "memory" },
  { size: "4d", lengthIn: 1.5, diameterIn: 0.098, confirmed: "memory", tier: "memory" },
  { size: "5d", lengthIn: 1.75, diameterIn: 0.098, confirmed: "memory", tier: "memory" },
  { size: "6d", lengthIn: 2, diameterIn: 0.113, confirmed: "memory", tier: "memory" },
  { size: "8d", lengthIn: 2.5, diameterIn: 0.131, confirmed: "memory", tier: "memory" },
  { size: "10d", lengthIn: 3, diameterIn: 0.148, confirmed: "memory", tier: "memory" },
  { size: "12d", lengthIn: 3.25, diameterIn: 0.148, confirmed: "memory", tier: "memory" },
  { size: "16d", lengthIn: 3.5, diameterIn: 0.162, confirmed: "memory", tier: "memory" },
  { size: "20d", lengthIn: 4, diameterIn: 0.192, confirmed: "memory", tier: "memory" },
  { size: "30d", lengthIn: 4.5, diameterIn: 0.207, confirmed: "memory", tier: "memory" },
  { size: "40d", lengthIn: 5, diameterIn: 0.225, confirmed: "memory", tier: "memory" },
  { size: "50d", lengthIn: 5.5, diameterIn: 0.244, confirmed: "memory", tier: "memory" },
  { size: "60d", lengthIn: 6, diameterIn: 0.262, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodHandbook2010Table81Provenance: TableProvenance = {
  source: woodHandbook2010,
  at: "Table 8-1",
  title: "Sizes of bright common wire nails",
  rights: "A work of the United States government, in the public domain there.",
  errata: [{"rows":["60d"],"columns":["diameterIn"],"says":"The NDS, Table L4, has 0.263 in for this nail."}],
  notes: ["Recalled. The sizes from 6d on agree with the metric table of the edition of 2021, and all but one with the NDS, Table L4; both were seen as others carry them."],
};
