import { woods } from './data/woods.generated.ts';
import {
  type Fit,
  fitsInPart,
  fitsWhole,
  fitting,
  type Name,
  nameOf,
  type Words,
  within,
  wordsAsked,
  wordsOf,
} from './names.ts';
import type { Wood } from './wood.ts';

/** What a name means. */
export interface FoundSpecies {
  /** The one wood that the name means; `null` where it means several or none. */
  readonly species: Wood | null;
  /** The woods that an ambiguous name may mean; empty where it means one or none. */
  readonly candidates: readonly Wood[];
}

/** A name of a wood, with what it says the wood is: `pine` of `sugar pine` and of `Pine, sugar`. */
interface WoodName extends Name {
  /** None in a name that only the trade uses: Oregon pine is no pine. */
  readonly kind?: string | undefined;
}

function ownName(text: string): WoodName {
  const [heading = ''] = text.split(/[,:(]/);
  return { ...nameOf(text), kind: [...wordsOf(heading)].at(-1) };
}

/** A wood's own name with the botanical one, its names in the tables, and those of the trade. */
const namesOf = ({ commonName, botanicalName, printedAs, aliases }: Wood): readonly WoodName[] => [
  ...[botanicalName ? `${commonName} (${botanicalName.name})` : commonName, ...printedAs].map(ownName),
  ...aliases.map(nameOf),
];

/** A part that holds the kind: `cedar` is a part of `yellow cedar` and of `cedar elm`, and the kind of the first. */
const fitsKind: Fit<WoodName> = (asked, { common, kind = '' }) => asked.has(kind) && within(asked, common);

const fitsGenus: Fit<WoodName> = (asked, { genus }) => asked.size === 1 && asked.has(genus);

let named: readonly { readonly wood: Wood; readonly names: readonly WoodName[] }[] | undefined;

/** The woods of which these words are a name, a part of a name, or the genus. */
function woodsNamed(asked: Words): readonly Wood[] {
  named ??= woods.map((wood) => ({ wood, names: namesOf(wood) }));
  const most = fitting(asked, named, [fitsWhole, fitsKind, fitsGenus]);
  const found = most.length > 1 ? most : fitting(asked, named, [fitsWhole, fitsKind, fitsInPart]);
  return found.map(({ wood }) => wood);
}

/** Words of cut, figure and stock that makers add to the name of a wood: common practice, no source. */
const besideName =
  /^(quarter(ed|sawn)?|(rift|flat|plain)(sawn)?|sawn|cut|figured|curly|birdseye|bird|eye|tiger|quilted|spalted|wood|lumber|timber|board|plank|slab|solid)$/;

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
  const inFull = woodsNamed(asked);
  const rest = new Set([...asked].filter((word) => !besideName.test(word)));
  const found = inFull.length > 0 ? inFull : woodsNamed(rest);
  const [first] = found;
  return found.length === 1 && first
    ? { species: first, candidates: [] }
    : { species: null, candidates: found };
}
