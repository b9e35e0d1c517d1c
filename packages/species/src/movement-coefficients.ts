import type { TableProvenance } from '@scantling/rules';
import {
  woodHandbook2010Table135,
  woodHandbook2010Table135Provenance,
} from './data/wood-handbook-2010--table-13-5.generated.ts';
import { type Found, findRow } from './find-row.ts';
import type { MovementCoefficientRow } from './rows.ts';

/** Every row of the table of dimensional change coefficients, per 1 % of moisture content. */
export const movementCoefficientTable: readonly MovementCoefficientRow[] = woodHandbook2010Table135;

/** The table that the rows of `movementCoefficientTable` come from. */
export const movementCoefficientProvenance: TableProvenance = woodHandbook2010Table135Provenance;

/**
 * The dimensional change coefficients of a species, with their source.
 *
 * @param name - Name of the wood. Case, accents, punctuation and the order of words do not matter:
 *   `sugar maple` finds `Maple, sugar`. A part of a name does where no other wood has it; `species` in the result
 *   says which row answered.
 * @returns The row: `radialPerPct` (quartersawn width) and `tangentialPerPct` (flatsawn width), the share of the
 *   dimension for each 1 % of moisture content, claimed for 6 to 14 %; how it was confirmed, and its citation,
 *   with an erratum where the row is known to be doubtful. `null` where no row has that name.
 * @throws RangeError where the name fits several species; the message lists them.
 * Source: Wood Handbook (FPL-GTR-190), Table 13-5.
 * @example
 * ```ts
 * import { findMovementCoefficients } from '@scantling/species';
 * findMovementCoefficients('sugar maple').tangentialPerPct // => 0.00353
 * findMovementCoefficients('MAPLE (sugar)').radialPerPct // => 0.00165
 * findMovementCoefficients('black oak').citation.erratum.slice(0, 39) // => 'The coefficients do not follow from bla'
 * findMovementCoefficients('teak').confirmed // => 'memory'
 * findMovementCoefficients('ebony') // => null
 * findMovementCoefficients('walnut, English') // => null
 * findMovementCoefficients('red oak') // throws findMovementCoefficients requires name to mean one species, got "red oak": Red Oak, commercial
 * ```
 */
export function findMovementCoefficients(name: string): Found<MovementCoefficientRow> | null {
  return findRow('findMovementCoefficients', name, [
    { rows: woodHandbook2010Table135, provenance: woodHandbook2010Table135Provenance },
  ]);
}
