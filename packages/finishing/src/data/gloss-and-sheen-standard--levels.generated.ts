// Written by `npm run tables` from data/tables/gloss-and-sheen-standard--levels.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { glossAndSheenStandard } from '@scantling/rules/sources';
import type { GlossLevelRow } from '../rows.ts';

/** Gloss levels: MPI Gloss and Sheen Standards, the table of levels of gloss-and-sheen-standard. */
export const glossAndSheenStandardLevels: readonly GlossLevelRow[] = [
  { level: "1", likeness: "a traditional matte finish", leastAt60Gu: null, mostAt60Gu: 5, leastAt85Gu: null, mostAt85Gu: 10, confirmed: "text", tier: "publication" },
  { level: "2", likeness: "a velvet-like finish", leastAt60Gu: null, mostAt60Gu: 10, leastAt85Gu: 10, mostAt85Gu: 35, confirmed: "text", tier: "publication" },
  { level: "3", likeness: "a traditional eggshell-like finish", leastAt60Gu: 10, mostAt60Gu: 25, leastAt85Gu: 10, mostAt85Gu: 35, confirmed: "text", tier: "publication" },
  { level: "4", likeness: "a satin-like finish", leastAt60Gu: 20, mostAt60Gu: 35, leastAt85Gu: 35, mostAt85Gu: null, confirmed: "text", tier: "publication" },
  { level: "5", likeness: "a traditional semi-gloss", leastAt60Gu: 35, mostAt60Gu: 70, leastAt85Gu: null, mostAt85Gu: null, confirmed: "text", tier: "publication" },
  { level: "6", likeness: "a traditional gloss", leastAt60Gu: 70, mostAt60Gu: 85, leastAt85Gu: null, mostAt85Gu: null, confirmed: "text", tier: "publication" },
  { level: "7", likeness: "a high gloss", leastAt60Gu: 85, mostAt60Gu: null, leastAt85Gu: null, mostAt85Gu: null, confirmed: "text", tier: "publication" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const glossAndSheenStandardLevelsProvenance: TableProvenance = {
  source: glossAndSheenStandard,
  at: "MPI Gloss and Sheen Standards, the table of levels",
  title: "Gloss levels",
  rights: "Single figures of a standard, as its institute states them on a page.",
  errata: [],
  notes: ["Level 7 begins above its least figure; every other range has both its ends in it, so that a figure may belong to two levels.","The levels are those of paints; clear finishes on wood are read the same way."],
};
