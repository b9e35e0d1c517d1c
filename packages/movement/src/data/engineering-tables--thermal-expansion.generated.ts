// Written by `npm run tables` from data/tables/engineering-tables--thermal-expansion.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { engineeringTables } from '@scantling/rules/sources';
import type { ThermalExpansionRow } from '../rows.ts';

/** Coefficients of linear thermal expansion of metals: coefficients of linear thermal expansion near room temperature of engineering-tables. */
export const engineeringTablesThermalExpansion: readonly ThermalExpansionRow[] = [
  { material: "carbon steel", direction: "every", lowUmPerMK: 12, highUmPerMK: 12, confirmed: "memory", tier: "memory" },
  { material: "stainless steel 304", direction: "every", lowUmPerMK: 17.3, highUmPerMK: 17.3, confirmed: "memory", tier: "memory" },
  { material: "aluminium", direction: "every", lowUmPerMK: 23.1, highUmPerMK: 23.1, confirmed: "memory", tier: "memory" },
  { material: "brass", direction: "every", lowUmPerMK: 19, highUmPerMK: 19, confirmed: "memory", tier: "memory" },
  { material: "copper", direction: "every", lowUmPerMK: 16.5, highUmPerMK: 16.5, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const engineeringTablesThermalExpansionProvenance: TableProvenance = {
  source: engineeringTables,
  at: "coefficients of linear thermal expansion near room temperature",
  title: "Coefficients of linear thermal expansion of metals",
  rights: "Facts, in common to many tables.",
  errata: [],
  notes: ["Printed as millionths per kelvin (10⁻⁶/K), which are µm/(m·K). A single figure stands as both low and high; whole figures are printed without a decimal.","Recalled, not seen."],
};
