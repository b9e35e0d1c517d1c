import type { TableProvenance } from '@scantling/rules';
import {
  engineeringTablesThermalExpansion,
  engineeringTablesThermalExpansionProvenance,
} from './data/engineering-tables--thermal-expansion.generated.ts';
import {
  thermalExpansionArticleTable,
  thermalExpansionArticleTableProvenance,
} from './data/thermal-expansion-article--table.generated.ts';
import {
  woodHandbook2010ThermalExpansion,
  woodHandbook2010ThermalExpansionProvenance,
} from './data/wood-handbook-2010--thermal-expansion.generated.ts';
import type { ThermalExpansionRow } from './rows.ts';

/** Thermal expansion of metals and of wood, as tables print it. Where they disagree both rows stay. */
export const thermalExpansionTable: readonly ThermalExpansionRow[] = /* @__PURE__ */ [
  thermalExpansionArticleTable,
  engineeringTablesThermalExpansion,
  woodHandbook2010ThermalExpansion,
].flat();

/** The tables that the rows of `thermalExpansionTable` come from. */
export const thermalExpansionProvenance: readonly TableProvenance[] = [
  thermalExpansionArticleTableProvenance,
  engineeringTablesThermalExpansionProvenance,
  woodHandbook2010ThermalExpansionProvenance,
];
