// Written by `npm run tables` from data/tables/thermal-expansion-article--table.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { thermalExpansionArticle } from '@scantling/rules/sources';
import type { ThermalExpansionRow } from '../rows.ts';

/** Coefficients of linear thermal expansion of metals and woods: table, at 20 °C of thermal-expansion-article. */
export const thermalExpansionArticleTable: readonly ThermalExpansionRow[] = [
  { material: "aluminium", direction: "every", lowUmPerMK: 23.1, highUmPerMK: 23.1, confirmed: "text", tier: "reprint" },
  { material: "brass", direction: "every", lowUmPerMK: 19, highUmPerMK: 19, confirmed: "text", tier: "reprint" },
  { material: "carbon steel", direction: "every", lowUmPerMK: 10.8, highUmPerMK: 10.8, confirmed: "text", tier: "reprint" },
  { material: "steel", direction: "every", lowUmPerMK: 11, highUmPerMK: 13, confirmed: "text", tier: "reprint" },
  { material: "stainless steel", direction: "every", lowUmPerMK: 17.3, highUmPerMK: 17.3, confirmed: "text", tier: "reprint" },
  { material: "copper", direction: "every", lowUmPerMK: 17, highUmPerMK: 17, confirmed: "text", tier: "reprint" },
  { material: "oak", direction: "across", lowUmPerMK: 54, highUmPerMK: 54, confirmed: "text", tier: "reprint" },
  { material: "Douglas-fir", direction: "radial", lowUmPerMK: 27, highUmPerMK: 27, confirmed: "text", tier: "reprint" },
  { material: "Douglas-fir", direction: "tangential", lowUmPerMK: 45, highUmPerMK: 45, confirmed: "text", tier: "reprint" },
  { material: "Douglas-fir", direction: "along", lowUmPerMK: 3.5, highUmPerMK: 3.5, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const thermalExpansionArticleTableProvenance: TableProvenance = {
  source: thermalExpansionArticle,
  at: "table, at 20 °C",
  title: "Coefficients of linear thermal expansion of metals and woods",
  rights: "Facts, quoted with their source; the publication itself is protected.",
  errata: [{"rows":["carbon steel; every"],"says":"Tables for engineers give 12, within the 11 to 13 that this table prints for steel."},{"rows":["copper; every"],"says":"Other tables give 16.5."},{"rows":["Douglas-fir; tangential"],"says":"The Wood Handbook's equation gives 35 for ovendry wood of specific gravity 0.51, and a measurement of 1973, at 12 % moisture content, 38."}],
  notes: ["Printed as millionths per kelvin (10⁻⁶/K), which are µm/(m·K). A single figure stands as both low and high; whole figures are printed without a decimal.","Six rows of metals and four of wood, of a longer table."],
};
