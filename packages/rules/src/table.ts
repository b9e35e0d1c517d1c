import type { Confirmation, Source } from './citation.ts';

/** What was seen of a row: the publication itself, a reprint of its numbers, or neither. */
export type Tier = 'publication' | 'reprint' | 'memory';

/** What every row of a printed table says of itself. */
export interface TableRow {
  readonly confirmed: Confirmation;
  readonly tier: Tier;
}

/** Where a table comes from, and what is known to be wrong in it. */
export interface TableProvenance {
  readonly source: Source;
  /** Table and page. */
  readonly at: string;
  readonly title: string;
  readonly rights: string;
  /** Disagreements, each with the rows that it is about. Both figures stay on record. */
  readonly errata: readonly { readonly rows: readonly string[]; readonly says: string }[];
  readonly notes: readonly string[];
}
