import type { AnyRule, Basis, Citation, OutputSpec, Peer, Source } from '@scantling/rules';
import { withUnit } from './calculator/field.ts';
import { printNumber } from './calculator/numbers.ts';

export const basisInWords: Readonly<Record<Basis, string>> = {
  exact: 'exact, by definition',
  derived: 'derived, by algebra or geometry',
  measured: 'measured in experiments',
  convention: 'convention of the trade',
};

/** How it is known that a figure or a statement is so, the surest first. */
export type Known = 'publication' | 'reprint' | 'hand' | 'computed' | 'memory';

export const knownInWords: Readonly<Record<Known, string>> = {
  publication: 'seen in the text',
  reprint: 'seen in a reprint',
  hand: 'worked by hand',
  computed: 'computed here',
  memory: 'from memory',
};

type Origin = Pick<Citation, 'confirmed' | 'tier'> | { readonly workedByHand: string };

export function howKnown(from: Origin): Known {
  if ('workedByHand' in from) return 'hand';
  if (from.tier === 'reprint') return 'reprint';
  return from.confirmed === 'text' ? 'publication' : from.confirmed;
}

export const knownBy = (from: Origin): string => knownInWords[howKnown(from)];

/** In how many of several cases which is known how, in words: `seen in the text: 12, from memory: 3`. */
export function countsInWords(known: readonly Known[]): string {
  const ways = Object.keys(knownInWords) as Known[];
  return ways
    .map((way) => [knownInWords[way], known.filter((one) => one === way).length] as const)
    .filter(([, count]) => count > 0)
    .map(([words, count]) => (known.length === count ? words : `${words}: ${count}`))
    .join(', ');
}

export function yearInWords({ year }: Source): string {
  if (year === undefined) return 'undated';
  return year < 0 ? `${-year} BC` : `${year}`;
}

/** A source with its year, as it is cited. */
export const titleWithYear = (source: Source): string => `${source.title} (${yearInWords(source)})`;

/** A citation in one text. */
export const citationInWords = (citation: Citation): string =>
  `${titleWithYear(citation.source)}, ${citation.at} (${knownBy(citation)})`;

/** What the statement of a rule rests on, in a few words. */
export function restsOn({ sources }: AnyRule): string {
  if (sources.length === 0) return 'common practice, no source';
  return [...new Set(sources.map(knownBy))].join(', ');
}

/** How closely another way to the same output agrees. */
export function agreementInWords(
  { relative, absolute }: Pick<Peer<unknown, unknown>, 'relative' | 'absolute'>,
  { unit }: OutputSpec,
): string {
  const difference = (text: string) => (unit === '%' ? `${text} percentage points` : withUnit(text, unit));
  return [
    ...(relative === undefined ? [] : [`${printNumber(relative * 100, 3)} % of the figure`]),
    ...(absolute === undefined ? [] : [difference(printNumber(absolute, 3))]),
  ].join(' or ');
}
