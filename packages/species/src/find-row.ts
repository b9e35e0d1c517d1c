import type { Citation, TableProvenance } from '@scantling/rules';
import type { SpeciesRow } from './rows.ts';
import { tradeNames } from './trade-names.ts';

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

type Words = ReadonlySet<string>;

/** The words of a name without order, case, accents and punctuation. */
function wordsOf(name: string): Words {
  const plain = name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return new Set(plain.replaceAll('redcedar', 'red cedar').match(/[a-z]+/g));
}

const within = (asked: Words, words: Words) => [...asked].every((word) => words.has(word));
const same = (asked: Words, words: Words) => asked.size === words.size && within(asked, words);

/** A printed name: a common name, and for an imported wood a botanical one in brackets. */
function nameOf(species: string) {
  const [common = '', botanical = ''] = species.split('(');
  const [genus = ''] = wordsOf(botanical);
  return { common: wordsOf(common), all: wordsOf(species), genus };
}

function fitsWhole(asked: Words, species: string): boolean {
  const { common, all } = nameOf(species);
  return same(asked, common) || same(asked, all);
}

function fitsInPart(asked: Words, species: string): boolean {
  const { common, all, genus } = nameOf(species);
  return within(asked, common) || (asked.has(genus) && within(asked, all));
}

/** What was asked for, each as a table may print it: several where the trade means several woods by it. */
function meaningsOf(asked: Words): readonly Words[] {
  const meant = Object.entries(tradeNames).find(([name]) => same(asked, wordsOf(name)));
  return meant ? meant[1].map(wordsOf) : [asked];
}

function citationOf({ species, confirmed }: SpeciesRow, provenance: TableProvenance): Citation {
  const { source, at, errata } = provenance;
  const said = errata.filter(({ rows }) => rows.includes(species)).map(({ says }) => says);
  return { source, at, confirmed, ...(said.length > 0 && { erratum: said.join(' ') }) };
}

/** The one row that a name means: by its whole name, else by a part of it that no other row has. */
export function findRow<Row extends SpeciesRow>(
  caller: string,
  name: string,
  tables: readonly SpeciesTable<Row>[],
): Found<Row> | null {
  if (typeof name !== 'string')
    throw new RangeError(`${caller} requires name to be text, got ${typeof name}`);
  const asked = wordsOf(name);
  if (asked.size === 0) return null;
  const entries = tables.flatMap(({ rows, provenance }) => rows.map((row) => ({ row, provenance })));
  const meanings = meaningsOf(asked);
  const fittingBy = (fits: typeof fitsWhole) =>
    entries.filter(({ row }) => meanings.some((words) => fits(words, row.species)));
  const whole = fittingBy(fitsWhole);
  const fitting = whole.length > 0 ? whole : fittingBy(fitsInPart);
  const [first] = fitting;
  if (!first) return null;
  if (fitting.length > 1) {
    const candidates = fitting.map(({ row }) => row.species).join('; ');
    throw new RangeError(`${caller} requires name to mean one species, got "${name}": ${candidates}`);
  }
  return { ...first.row, citation: citationOf(first.row, first.provenance) };
}
