import type { Citation, Source, TableRow } from '@scantling/rules';

/** A table, and where it stands. */
export interface PrintedTable {
  readonly source: Source;
  /** Table and page. */
  readonly at: string;
}

/** A row's citation: its table, its own mark, and what is known to be wrong with it. */
export function citationOf(
  { source, at }: PrintedTable,
  { confirmed, tier }: TableRow,
  erratum?: string,
): Citation {
  return { source, at, confirmed, ...(tier === 'reprint' && { tier }), ...(erratum && { erratum }) };
}
