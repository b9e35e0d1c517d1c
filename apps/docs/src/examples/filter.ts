/** What worked examples are told apart by; also the names in a link. */
export const facets = ['source', 'package', 'known'] as const;

export type Facet = (typeof facets)[number];

/** What is asked for, or what an example is; an empty text asks for all. */
export type Facts = Readonly<Record<Facet, string>>;

/** What a link asks for, and the facets for which it asks for something that is not offered. */
export function readFilter(
  query: string,
  offered: Readonly<Record<Facet, readonly string[]>>,
): { filter: Facts; unknown: Facet[] } {
  const asked = new URLSearchParams(query);
  const unknown: Facet[] = [];
  const one = (facet: Facet) => {
    const value = asked.get(facet) ?? '';
    if (value === '' || offered[facet].includes(value)) return value;
    unknown.push(facet);
    return '';
  };
  return { filter: { source: one('source'), package: one('package'), known: one('known') }, unknown };
}

/** The query of a link to what is asked for; empty where that is everything. */
export function queryOf(filter: Facts): string {
  const query = `${new URLSearchParams(facets.flatMap((facet) => (filter[facet] ? [[facet, filter[facet]]] : [])))}`;
  return query && `?${query}`;
}

export const passes = (facts: Facts, filter: Facts): boolean =>
  facets.every((facet) => filter[facet] === '' || filter[facet] === facts[facet]);

/** How much is shown, for a reader. */
export function shownInWords(shown: number, all: number, unknown: readonly Facet[]): string {
  const asked = unknown.length > 0 ? `The link asks for a ${unknown.join(' and a ')} that is not here. ` : '';
  if (shown === all) return `${asked}All ${all} worked examples are shown.`;
  return `${asked}${shown === 0 ? 'None' : shown} of ${all} worked examples ${shown === 1 ? 'is' : 'are'} shown.`;
}
