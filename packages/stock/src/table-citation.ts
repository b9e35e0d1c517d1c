import type { Citation, TableProvenance, TableRow } from '@scantling/rules';

/** Where a row of a table stands, how it was confirmed, and what is known to be wrong with it. */
export function citationOf(
  { source, at, errata }: TableProvenance,
  { confirmed, tier }: TableRow,
  key: string,
): Citation {
  const erratum = errata
    .filter(({ rows }) => rows.includes(key))
    .map(({ says }) => says)
    .join(' ');
  return {
    source,
    at: `${at}: ${key}`,
    confirmed,
    ...(tier === 'reprint' && { tier }),
    ...(erratum && { erratum }),
  };
}
