import {
  type Fit,
  fitsInPart,
  fitsWhole,
  fitting,
  type Name,
  nameOf,
  type Words,
  within,
  wordsOf,
} from './names.ts';

/** The names of a wood, in its own words and in those of tables and of the trade. */
export interface NamedWood {
  readonly commonName: string;
  readonly botanicalName?: string | null | undefined;
  readonly printedAs: readonly string[];
  readonly aliases: readonly string[];
}

/** A name of a wood, with what it says the wood is: `pine` of `sugar pine` and of `Pine, sugar`. */
export interface WoodName extends Name {
  /** None in a name that only the trade uses: Oregon pine is no pine. */
  readonly kind?: string | undefined;
}

function ownName(text: string): WoodName {
  const [heading = ''] = text.split(/[,:(]/);
  return { ...nameOf(text), kind: [...wordsOf(heading)].at(-1) };
}

/** A wood's own name with the botanical one, its names in the tables, and those of the trade. */
export const namesOf = ({
  commonName,
  botanicalName,
  printedAs,
  aliases,
}: NamedWood): readonly [WoodName, ...WoodName[]] => [
  ownName(botanicalName ? `${commonName} (${botanicalName})` : commonName),
  ...printedAs.map(ownName),
  ...aliases.map(nameOf),
];

/** A thing with its names taken apart. */
export interface Named<Wood> {
  readonly wood: Wood;
  readonly names: readonly WoodName[];
}

/** A part that holds the kind: `cedar` is a part of `yellow cedar` and of `cedar elm`, and the kind of the first. */
const fitsKind: Fit<WoodName> = (asked, { common, kind = '' }) => asked.has(kind) && within(asked, common);

const fitsGenus: Fit<WoodName> = (asked, { genus }) => asked.size === 1 && asked.has(genus);

/** The woods of which these words are a name, a part of a name, or the genus. */
function woodsNamed<Wood>(asked: Words, named: readonly Named<Wood>[]): readonly Wood[] {
  const most = fitting(asked, named, [fitsWhole, fitsKind, fitsGenus]);
  const found = most.length > 1 ? most : fitting(asked, named, [fitsWhole, fitsKind, fitsInPart]);
  return found.map(({ wood }) => wood);
}

/** Words of cut, figure and stock that makers add to the name of a wood: common practice, no source. */
const besideName =
  /^(quarter(ed|sawn)?|(rift|flat|plain)(sawn)?|sawn|cut|figured|curly|birdseye|bird|eye|tiger|quilted|spalted|wood|lumber|timber|board|plank|slab|solid)$/;

/** The one wood that is meant, or `null` with those that may be. */
export function woodMeant<Wood>(asked: Words, named: readonly Named<Wood>[]) {
  const inFull = woodsNamed(asked, named);
  const rest = new Set([...asked].filter((word) => !besideName.test(word)));
  const found = inFull.length > 0 ? inFull : woodsNamed(rest, named);
  const [first] = found;
  return found.length === 1 && first
    ? { species: first, candidates: [] }
    : { species: null, candidates: found };
}
