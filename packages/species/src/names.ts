/** The words of a name, without order, case, accents, punctuation and plural. */
export type Words = ReadonlySet<string>;

const singular = (word: string) => word.replace(/(ch|sh|ss|x)es?$|([^s])s$/, '$1$2').replace(/ie$/, 'y');

export function wordsOf(name: string): Words {
  const plain = name.normalize('NFKD').replace(/[\p{M}'’]/gu, '');
  const words = plain
    .toLowerCase()
    .replaceAll('redcedar', 'red cedar')
    .replaceAll('grey', 'gray')
    .match(/[a-z]+/g);
  return new Set(words?.map(singular));
}

/** The words that were asked for; refuses what is not text. */
export function wordsAsked(caller: string, field: string, text: string): Words {
  if (typeof text !== 'string')
    throw new RangeError(`${caller} requires ${field} to be text, got ${typeof text}`);
  return wordsOf(text);
}

export const within = (asked: Words, words: Words) => [...asked].every((word) => words.has(word));
const same = (asked: Words, words: Words) => asked.size === words.size && within(asked, words);

/** A name, taken apart: a common one, and where it has one a botanical one in brackets. */
export interface Name {
  readonly common: Words;
  readonly all: Words;
  readonly genus: string;
}

export function nameOf(text: string): Name {
  const [common = '', botanical = ''] = text.split('(');
  const [genus = ''] = wordsOf(botanical);
  return { common: wordsOf(common), all: wordsOf(text), genus };
}

/** A way in which a name may fit what was asked for. */
export type Fit<N extends Name> = (asked: Words, name: N) => boolean;

export const fitsWhole: Fit<Name> = (asked, { common, all }) => same(asked, common) || same(asked, all);

/**
 * A part of the common name, or of the botanical one with its genus: no wood is found by `alba`. Nor by a genus of
 * which it is one species: `Eucalyptus` need not be jarrah.
 */
export const fitsInPart: Fit<Name> = (asked, { common, all, genus }) =>
  within(asked, common) || (asked.has(genus) && (asked.size > 1 || all.has('spp')) && within(asked, all));

/** The things that fit what was asked for in the first of the ways in which any does. */
export function fitting<N extends Name, Thing extends { readonly names: readonly N[] }>(
  asked: Words,
  things: readonly Thing[],
  ways: readonly Fit<N>[],
): readonly Thing[] {
  for (const fits of ways) {
    const found = things.filter(({ names }) => names.some((name) => fits(asked, name)));
    if (asked.size > 0 && found.length > 0) return found;
  }
  return [];
}
