import type { Citation, TableProvenance } from '@scantling/rules';
import { citationOf } from './citation.ts';
import { tradeNames } from './data/trade-names.generated.ts';
import { fitsInPart, fitsWhole, fitting, nameOf, wordsAsked, wordsOf } from './names.ts';
import type { SpeciesRow } from './rows.ts';

/** A row of a table, with where it stands. */
export type Found<Row extends SpeciesRow> = Row & {
  /** Table and page, the row's own mark, and what is known to be wrong with it. */
  readonly citation: Citation;
};

/** A table, with where it comes from. */
export interface SpeciesTable<Row extends SpeciesRow> {
  readonly rows: readonly Row[];
  readonly provenance: TableProvenance;
}

/** The one row that a name means: by a whole name, in print or in the trade, else by a part that no other row has. */
export function findRow<Row extends SpeciesRow>(
  caller: string,
  name: string,
  tables: readonly SpeciesTable<Row>[],
): Found<Row> | null {
  const asked = wordsAsked(caller, 'name', name);
  const entries = tables.flatMap(({ rows, provenance }) =>
    rows.map((row) => ({
      row,
      provenance,
      names: [row.species, ...(tradeNames[row.species] ?? [])].map(nameOf),
    })),
  );
  const found = fitting(asked, entries, [fitsWhole, fitsInPart]);
  const [first] = found;
  if (!first) return null;
  if (found.length > 1) {
    const candidates = found.map(({ row }) => row.species).join('; ');
    throw new RangeError(`${caller} requires name to mean one species, got "${name}": ${candidates}`);
  }
  const { row, provenance } = first;
  const errata = provenance.errata.filter(({ rows }) => rows.includes(row.species)).map(({ says }) => says);
  return { ...row, citation: citationOf(provenance, row, errata.join(' ')) };
}

/**
 * Names in a table that share a word with what was asked for: what to suggest where no name fits.
 *
 * @param name - The name that was asked for. Case, accents, punctuation, plural and the order of words do not matter.
 * @param rows - Rows of a table.
 * @returns Names as the table prints them, in its order; none where no name shares a word.
 * @throws RangeError where `name` is not text.
 * @example
 * ```ts
 * import { movementCoefficientTable, namesNear } from '@scantling/species';
 * namesNear('apples and pears', movementCoefficientTable) // => ['Apple']
 * namesNear('plywood', movementCoefficientTable) // => []
 * namesNear(7, movementCoefficientTable) // throws namesNear requires name to be text, got number
 * ```
 */
export function namesNear(name: string, rows: readonly Pick<SpeciesRow, 'species'>[]): string[] {
  const asked = wordsAsked('namesNear', 'name', name);
  return rows
    .map(({ species }) => species)
    .filter((species) => [...wordsOf(species)].some((word) => asked.has(word)));
}
