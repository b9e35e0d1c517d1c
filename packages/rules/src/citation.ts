/**
 * How a figure was confirmed: `text` was seen in a stored text of the source, `memory` was recalled and not
 * seen, `computed` was derived here and has no published answer.
 */
export type Confirmation = 'text' | 'memory' | 'computed';

/** What was seen: the publication itself, a reprint of what it says, or neither. */
export type Tier = 'publication' | 'reprint' | 'memory';

/** A publication, standard or dataset that rules and tables rest on. */
export interface Source {
  /** Short key, unique among all sources. */
  readonly id: string;
  readonly title: string;
  readonly author: string;
  /** Year of publication; left out where the source bears none. */
  readonly year?: number;
  /** Number of the report, standard or regulation, where it has one. */
  readonly identifier?: string;
  readonly url?: string;
  /** What a reader needs to know before trusting it: misprints, editions, what was seen of it. */
  readonly note?: string;
}

/** Where in a source a statement stands, and how we know. */
export interface Citation {
  readonly source: Source;
  /** Equation, table or page: precise enough to be looked up. */
  readonly at: string;
  readonly confirmed: Confirmation;
  /** What was seen of it; left out where `text` was the publication's own. */
  readonly tier?: Tier;
  /** A disagreement with the source, or between sources: both figures stay on record. */
  readonly erratum?: string;
}
