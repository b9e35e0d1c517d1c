import type { Confirmation, Source, Tier } from './citation.ts';

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
