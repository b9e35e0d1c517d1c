// Written by `npm run tables` from data/tables/wood-handbook-2010--bonding-pressures.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import type { GluePressureRow } from '../rows.ts';

/** Pressures on the glue line: ch. 10, p. 10-16: pressures for bonding of wood-handbook-2010. */
export const woodHandbook2010BondingPressures: readonly GluePressureRow[] = [
  { wood: "of low density", pressurePsi: 100, confirmed: "memory", tier: "memory" },
  { wood: "of the highest density", pressurePsi: 247, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const woodHandbook2010BondingPressuresProvenance: TableProvenance = {
  source: woodHandbook2010,
  at: "ch. 10, p. 10-16: pressures for bonding",
  title: "Pressures on the glue line",
  rights: "Figures of a United States government publication.",
  errata: [],
  notes: ["Small areas of flat, well-planed surfaces can be bonded satisfactorily at lower pressures."],
};
