/** The words of a name, without order, case, accents, punctuation and plural. */
export type Words = ReadonlySet<string>;

const singular = (word: string) => word.replace(/(ch|sh|ss|x)es?$|([^s])s$/, '$1$2').replace(/ie$/, 'y');

export function wordsOf(name: string): Words {
  const plain = name.normalize('NFKD').replace(/[\p{M}'’]/gu, '');
  const words = plain
    .toLowerCase()
    .replaceAll('redcedar', 'red cedar')
    .match(/[a-z]+/g);
  return new Set(words?.map(singular));
}

/** The words that were asked for; refuses what is not text. */
export function wordsAsked(caller: string, field: string, text: string): Words {
  if (typeof text !== 'string')
    throw new RangeError(`${caller} requires ${field} to be text, got ${typeof text}`);
  return wordsOf(text);
}

const within = (asked: Words, words: Words) => [...asked].every((word) => words.has(word));
const same = (asked: Words, words: Words) => asked.size === words.size && within(asked, words);

/** A name: a common one, and where it has one a botanical one in brackets. */
function nameOf(text: string) {
  const [common = '', botanical = ''] = text.split('(');
  const [genus = ''] = wordsOf(botanical);
  return { common: wordsOf(common), all: wordsOf(text), genus };
}

type Name = ReturnType<typeof nameOf>;

const fitsWhole = (asked: Words, { common, all }: Name) => same(asked, common) || same(asked, all);

/** A part of the common name, or of the botanical one with its genus: no wood is found by `alba` alone. */
const fitsInPart = (asked: Words, { common, all, genus }: Name) =>
  within(asked, common) || (asked.has(genus) && within(asked, all));

/** The things of which a name is what was asked for; where there are none, those of which a part is. */
export function fitting<Thing>(
  asked: Words,
  things: readonly Thing[],
  namesOf: (thing: Thing) => readonly string[],
): Thing[] {
  if (asked.size === 0) return [];
  const named = things.map((thing) => ({ thing, names: namesOf(thing).map(nameOf) }));
  const by = (fits: typeof fitsWhole) =>
    named.filter(({ names }) => names.some((name) => fits(asked, name))).map(({ thing }) => thing);
  const whole = by(fitsWhole);
  return whole.length > 0 ? whole : by(fitsInPart);
}
