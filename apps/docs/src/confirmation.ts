import type { AnyRule, Basis, Citation, Confirmation, OutputSpec, Peer, Source } from '@scantling/rules';
import { withUnit } from './calculator/field.ts';
import { printNumber } from './calculator/numbers.ts';

export const basisInWords: Readonly<Record<Basis, string>> = {
  exact: 'exact, by definition',
  derived: 'derived, by algebra or geometry',
  measured: 'measured in experiments',
  convention: 'convention of the trade',
};

const confirmedInWords: Readonly<Record<Confirmation, string>> = {
  text: 'seen in the text',
  memory: 'from memory',
  computed: 'computed here',
};

/** How it is known that a source says so. */
export const knownBy = ({ confirmed, tier }: Citation): string =>
  tier === 'reprint' ? 'seen in a reprint' : confirmedInWords[confirmed];

/** A source with its year, as it is cited. */
export function titleWithYear({ title, year }: Source): string {
  if (year === undefined) return `${title} (undated)`;
  return `${title} (${year < 0 ? `${-year} BC` : year})`;
}

/** Where a worked example comes from and how that is known, in two short texts. */
export function originInWords(from: Citation | { readonly workedByHand: string }): {
  from: string;
  confirmed: string;
} {
  if ('workedByHand' in from)
    return { from: `Worked by hand: ${from.workedByHand}`, confirmed: 'arithmetic shown' };
  return {
    from: `${titleWithYear(from.source)}, ${from.at}`,
    confirmed: knownBy(from),
  };
}

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
