import type { Citation, Confirmation, Source, Tier } from './citation.ts';

/** What every row of a printed table says of itself. */
export interface TableRow {
  readonly confirmed: Confirmation;
  readonly tier: Tier;
}

/** What is known to be wrong in some rows of a table. */
export interface TableErratum {
  readonly rows: readonly string[];
  /** Properties of these rows that it is about; where there is none, it is about the whole rows. */
  readonly columns?: readonly string[];
  readonly says: string;
}

/** Where a table comes from, and what is known to be wrong in it. */
export interface TableProvenance {
  readonly source: Source;
  /** Table and page. */
  readonly at: string;
  readonly title: string;
  readonly rights: string;
  /** Disagreements. Both figures stay on record. */
  readonly errata: readonly TableErratum[];
  readonly notes: readonly string[];
}

/**
 * Citation of one row: where it stands in its table, how it was confirmed, and what is known to be wrong with it.
 *
 * @param table - Source, place and errata of the table.
 * @param row - What the row says of itself.
 * @param key - The row's name in the table, as its errata have it.
 * @returns The citation, for a reader.
 * @example
 * ```ts
 * import { rowCitation } from '@scantling/rules';
 * const source = { title: 'Table of woods', author: 'A bureau', year: 1950 };
 * const table = { source, at: 'Table 1', errata: [{ rows: ['oak'], says: 'Printed twice.' }] };
 * rowCitation(table, { confirmed: 'text', tier: 'publication' }, 'oak') // => { source: { title: 'Table of woods', author: 'A bureau', year: 1950 }, at: 'Table 1: oak', confirmed: 'text', erratum: 'Printed twice.' }
 * ```
 */
export function rowCitation(
  { source, at, errata }: Pick<TableProvenance, 'source' | 'at' | 'errata'>,
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
