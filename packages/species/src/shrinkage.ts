import type { TableProvenance } from '@scantling/rules';
import {
  woodHandbook1999Table35,
  woodHandbook1999Table35Provenance,
} from './data/wood-handbook-1999--table-3-5.generated.ts';
import {
  woodHandbook2010Table43,
  woodHandbook2010Table43Provenance,
} from './data/wood-handbook-2010--table-4-3.generated.ts';
import {
  woodHandbook2010Table44,
  woodHandbook2010Table44Provenance,
} from './data/wood-handbook-2010--table-4-4.generated.ts';
import { type Found, findRow } from './find-row.ts';
import type { DomesticShrinkageRow, ImportedShrinkageRow } from './rows.ts';

/** A row of one of the shrinkage tables. */
export type AnyShrinkageRow = DomesticShrinkageRow | ImportedShrinkageRow;

/** Every row of the shrinkage tables, % of the green dimension, from green to ovendry. */
export const shrinkageTable: readonly AnyShrinkageRow[] = /* @__PURE__ */ [
  woodHandbook2010Table43,
  woodHandbook1999Table35,
  woodHandbook2010Table44,
].flat();

/** The tables that the rows of `shrinkageTable` come from. */
export const shrinkageProvenance: readonly TableProvenance[] = [
  woodHandbook2010Table43Provenance,
  woodHandbook1999Table35Provenance,
  woodHandbook2010Table44Provenance,
];

/**
 * The shrinkage of a species from green to ovendry, with its source.
 *
 * @param name - Name of the wood. Case, accents, punctuation and the order of words do not matter:
 *   `sugar maple` finds `Maple, sugar`. A part of a name does where no other wood has it; `species` in the result
 *   says which row answered. For imported woods the botanical name does too.
 * @returns The row: `radialPct`, `tangentialPct` (`null` where none is printed) and `volumetricPct` in % of the
 *   green dimension, how it was confirmed, and its citation. `null` where no row has that name.
 * @throws RangeError where the name fits several species; the message lists them.
 * Source: Wood Handbook (FPL-GTR-190), Tables 4-3 and 4-4; one row from FPL-GTR-113, Table 3-5.
 * @example
 * ```ts
 * import { findShrinkage } from '@scantling/species';
 * findShrinkage('white ash').tangentialPct // => 7.8
 * findShrinkage('Tectona grandis').species // => 'Teak (Tectona grandis)'
 * findShrinkage('white ash').citation.at // => 'Table 4-3, p. 4-6'
 * findShrinkage('sugar pine').confirmed // => 'memory'
 * findShrinkage('plywood') // => null
 * findShrinkage('birch') // throws findShrinkage requires name to mean one species, got "birch": Birch, Alaska paper
 * ```
 */
export function findShrinkage(name: string): Found<AnyShrinkageRow> | null {
  return findRow<AnyShrinkageRow>('findShrinkage', name, [
    { rows: woodHandbook2010Table43, provenance: woodHandbook2010Table43Provenance },
    { rows: woodHandbook1999Table35, provenance: woodHandbook1999Table35Provenance },
    { rows: woodHandbook2010Table44, provenance: woodHandbook2010Table44Provenance },
  ]);
}
