// Written by `npm run tables` from data/tables/wood-handbook-2010--thermal-expansion.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import type { ThermalExpansionRow } from '../rows.ts';

/** Coefficient of thermal expansion of ovendry wood along the grain: ch. 4, Thermal expansion of wood-handbook-2010. */
export const woodHandbook2010ThermalExpansion: readonly ThermalExpansionRow[] = [
  { material: "wood", direction: "along", lowUmPerMK: 3.1, highUmPerMK: 4.5, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodHandbook2010ThermalExpansionProvenance: TableProvenance = {
  source: woodHandbook2010,
  at: "ch. 4, Thermal expansion",
  title: "Coefficient of thermal expansion of ovendry wood along the grain",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [],
  notes: ["Printed as millionths per kelvin (10⁻⁶/K), which are µm/(m·K). A single figure stands as both low and high; whole figures are printed without a decimal.","Recalled, not seen. The range holds for hardwoods and softwoods alike; across the grain the handbook gives the equations of the rule movement/wood-thermal-expansion."],
};
