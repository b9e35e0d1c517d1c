import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { csvParseRows } from 'd3-dsv';
import * as z from 'zod';

const sentence = z.string().min(3);

const numberColumn = z.strictObject({
  kind: z.literal('number'),
  /** Property of the generated rows; it ends in the printed unit. */
  name: z.string(),
  unit: z.string(),
  /** Decimals as printed, the same for every figure of the column. */
  decimals: z.int().min(0),
  /** Where every figure plausibly lies: outside it is a misprint or a slip of the pen. */
  range: z.tuple([z.number(), z.number()]),
  mayBeEmpty: z.literal(true).optional(),
});

const textColumn = z.strictObject({ kind: z.literal('text'), name: z.string() });

const choiceColumn = z.strictObject({
  kind: z.literal('choice'),
  name: z.string(),
  oneOf: z.array(z.string()).min(1),
});

/** Where a row was seen: a key of `seenAt`, or nothing. It stays in the table and is not generated. */
const addressColumn = z.strictObject({ kind: z.literal('address') });

/** What stands beside a table: where it comes from, what its columns are, what is known to be wrong in it. */
const metaSchema = z.strictObject({
  /** Id of the source card. */
  source: z.string(),
  /** Table and page. */
  at: z.string().min(3),
  title: sentence,
  rights: sentence,
  rowCount: z.int(),
  sha256: z.string(),
  /** Type of a row, exported by the package's `src/rows.ts`. */
  rowType: z.string().regex(/^[A-Z]\w+$/),
  /** Columns that together tell one row from the others. */
  key: z.array(z.string()).min(1),
  columns: z.record(
    z.string(),
    z.discriminatedUnion('kind', [numberColumn, textColumn, choiceColumn, addressColumn]),
  ),
  /** Addresses at which rows were seen, by the key that stands in the column of addresses; `null` for a copy not to be linked. */
  seenAt: z.record(z.string(), z.url().nullable()),
  errata: z.array(
    z.strictObject({
      rows: z.array(z.string()).min(1),
      /** Headings of the columns that it is about, where it is not about the whole rows. */
      columns: z.array(z.string()).min(1).optional(),
      says: sentence,
    }),
  ),
  notes: z.array(sentence),
});

export type TableMeta = z.infer<typeof metaSchema>;
export type Column = TableMeta['columns'][string];
export type Erratum = TableMeta['errata'][number];

/** A printed table and what stands beside it, as read. */
export interface Table {
  readonly packageDir: string;
  /** File name without its ending: `wood-handbook-2010--table-4-3`. */
  readonly id: string;
  readonly meta: TableMeta;
  readonly metaText: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly sha256: string;
}

const tablesDir = (packageDir: string) => join(packageDir, 'data', 'tables');

/** Ids of a package's tables; none where it has no tables. */
export const tableIds = (packageDir: string): string[] =>
  existsSync(tablesDir(packageDir))
    ? readdirSync(tablesDir(packageDir))
        .filter((file) => file.endsWith('.csv'))
        .map((file) => basename(file, '.csv'))
        .sort()
    : [];

/** Reads a table; throws naming the file where what stands beside it cannot be read. */
export function readTable(packageDir: string, id: string): Table {
  const csv = readFileSync(join(tablesDir(packageDir), `${id}.csv`), 'utf8');
  const metaText = readFileSync(join(tablesDir(packageDir), `${id}.meta.json`), 'utf8');
  const meta = metaSchema.safeParse(JSON.parse(metaText));
  if (!meta.success) throw new Error(`${id}.meta.json: ${z.prettifyError(meta.error)}`);
  const [header = [], ...rows] = csvParseRows(csv);
  const sha256 = createHash('sha256').update(csv).digest('hex');
  return { packageDir, id, meta: meta.data, metaText, header, rows, sha256 };
}

/** The cell of a row under a heading; empty where there is none. */
export const cell = (table: Table, row: readonly string[], heading: string): string =>
  row[table.header.indexOf(heading)] ?? '';

/** A row's cells under the key columns, as errata name it. */
export const rowKey = (table: Table, row: readonly string[]): string =>
  table.meta.key.map((heading) => cell(table, row, heading)).join('; ');
