import { woods } from './data/woods.generated.ts';
import { wordsAsked } from './names.ts';
import type { Wood } from './wood.ts';
import { type Named, namesOf, woodMeant } from './wood-names.ts';

/** What a name means. */
export interface FoundSpecies {
  /** The one wood that the name means; `null` where it means several or none. */
  readonly species: Wood | null;
  /** The woods that an ambiguous name may mean; empty where it means one or none. */
  readonly candidates: readonly Wood[];
}

let named: readonly Named<Wood>[] | undefined;

/**
 * Finds a wood, with everything that the tables print of it.
 *
 * @param text - Name of the wood: its common name, a name from a table, a name of the trade or the botanical name.
 *   Case, accents, punctuation, plural and the order of words do not matter. A part of a name does where no other
 *   wood has it, and a wood that is of the kind goes before one that has only the word: `cedar` is not cedar elm. Of a
 *   botanical name, genus and species do; a genus alone means the woods of it, where there are several, or where the tables name no species of it. Words of cut,
 *   figure and stock, such as quartersawn, curly and lumber, are passed over.
 * @returns `species`, the one wood that is meant, or `null`; `candidates`, the woods that an ambiguous name may mean.
 *   Text that names no wood gives neither.
 * @throws RangeError where `text` is not text.
 * Source: each figure names its own. The trade's names are common practice, no source.
 * @example
 * ```ts
 * import { findSpecies } from '@scantling/species';
 * const { species } = findSpecies('Hard Maple');
 * species.id // => 'sugar-maple'
 * species.shrinkage.tangentialPct.value // => 9.9
 * species.at12Pct.modulusOfElasticityMPa.citation.at // => 'Table 5-3a'
 * findSpecies('Acer rubrum').species.commonName // => 'red maple'
 * findSpecies('soft maple').species // => null
 * findSpecies('soft maple').candidates.map(({ id }) => id) // => ['bigleaf-maple', 'red-maple', 'silver-maple']
 * findSpecies('rift-sawn red oak').candidates.map(({ id }) => id) // => ['commercial-red-oak', 'northern-red-oak']
 * findSpecies('walnut lumber').species.id // => 'black-walnut'
 * findSpecies('plywood') // => { species: null, candidates: [] }
 * findSpecies(7) // throws findSpecies requires text to be text, got number
 * ```
 */
export function findSpecies(text: string): FoundSpecies {
  const asked = wordsAsked('findSpecies', 'text', text);
  named ??= woods.map((wood) => ({
    wood,
    names: namesOf({ ...wood, botanicalName: wood.botanicalName?.name }),
  }));
  return woodMeant(asked, named);
}
