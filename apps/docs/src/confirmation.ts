import type { AnyRule, Basis, Citation, Confirmation, Source } from '@scantling/rules';

export const basisInWords: Readonly<Record<Basis, string>> = {
  exact: 'exact, by definition',
  derived: 'derived, by algebra or geometry',
  measured: 'measured in experiments',
  convention: 'convention of the trade',
};

export const confirmedInWords: Readonly<Record<Confirmation, string>> = {
  text: 'seen in the text',
  memory: 'from memory',
  computed: 'computed here',
};

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
    confirmed: confirmedInWords[from.confirmed],
  };
}

/** What the statement of a rule rests on, in a few words. */
export function restsOn({ sources }: AnyRule): string {
  if (sources.length === 0) return 'common practice, no source';
  return [...new Set(sources.map(({ confirmed }) => confirmedInWords[confirmed]))].join(', ');
}
