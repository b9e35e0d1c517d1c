import type { Confirmation, Source, Tier } from './citation.ts';

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
