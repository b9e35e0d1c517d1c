import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import * as z from 'zod';
import { literal } from './emit.ts';
import { cell, rowKey, type Table } from './table.ts';

/** What the modules made of it begin with. */
export const WRITTEN =
  '// Written by `npm run tables` from data/woods.csv and the tables; a change belongs there.';

const list = z.string().transform((text) => text.split('; ').filter(Boolean));

/** A line of `data/woods.csv`: a wood, and the names under which the tables print it. */
const woodSchema = z
  .strictObject({
    common_name: z.string().regex(/^[A-Za-z]+([ -][A-Za-z]+)*$/),
    /** Empty where a table prints it in brackets, or where it is not known for certain. */
    botanical_name: z.string(),
    botanical_confirmed: z.enum(['text', 'memory', '']),
    group: z.enum(['hardwood', 'softwood']),
    origin: z.enum(['domestic', 'imported']),
    /** Those that the searches in single tables know too: few, since each such search carries them. */
    trade_names: list,
    other_names: list,
    printed_as: list.refine((names) => names.length > 0, 'no row of a table'),
  })
  .refine(
    ({ botanical_name, botanical_confirmed }) => (botanical_name === '') === (botanical_confirmed === ''),
    'a botanical name says how it was confirmed',
  );

export type WoodLine = z.infer<typeof woodSchema>;

/** A row of a table that is about woods, with its name. */
export interface NamedRow {
  readonly table: Table;
  readonly row: readonly string[];
  readonly species: string;
}

/** Columns that woods show; weights and work to maximum load stay in their tables. */
const SHOWN = [
  'moisture',
  'radialPct',
  'tangentialPct',
  'volumetricPct',
  'radialPerPct',
  'tangentialPerPct',
  'specificGravityRatio',
  'modulusOfElasticityMillionPsi',
  'modulusOfElasticityMPa',
  'modulusOfRupturePsi',
  'modulusOfRuptureKPa',
  'modulusOfRuptureMPa',
  'sideHardnessLbf',
  'sideHardnessN',
  'confirmed',
  'tier',
];

export function readWoods(path: string): WoodLine[] {
  return csvParse(readFileSync(path, 'utf8')).map((line) => {
    const wood = woodSchema.safeParse(line);
    if (!wood.success) throw new Error(`woods.csv: ${line.common_name}: ${z.prettifyError(wood.error)}`);
    return wood.data;
  });
}

export const idOf = ({ common_name }: WoodLine) => common_name.toLowerCase().replaceAll(' ', '-');

/** The rows that print a wood. */
export const rowsOf = ({ printed_as }: WoodLine, rows: readonly NamedRow[]) =>
  rows.filter(({ species }) => printed_as.includes(species));

/** The botanical name that a printed one has in brackets. */
export const inBrackets = (species: string): string | undefined => /\((.+)\)/.exec(species)?.[1];

/** A wood's botanical name: of a row that prints one, or of the list that woods.csv follows. */
export const botanicalNameOf = (wood: WoodLine, rows: readonly NamedRow[]): string | null =>
  rows.map(({ species }) => inBrackets(species)).find(Boolean) ?? (wood.botanical_name || null);

/** What woods show of a row, as the code for it. */
export const shownOf = ({ table, row }: NamedRow): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(table.meta.columns).flatMap(([heading, column]) => {
      const text = cell(table, row, heading);
      return column.kind !== 'address' && SHOWN.includes(column.name) && text !== ''
        ? [[column.name, literal(column, text)]]
        : [];
    }),
  );

/** What is known to be wrong with the figures of a row that woods show, by their columns. */
export function errataOf({ table, row }: NamedRow): Readonly<Record<string, string>> {
  const about = table.meta.errata.filter(({ rows }) => rows.includes(rowKey(table, row)));
  return Object.fromEntries(
    Object.entries(table.meta.columns).flatMap(([heading, column]) => {
      if (column.kind !== 'number' || !SHOWN.includes(column.name) || cell(table, row, heading) === '')
        return [];
      const says = about.filter(({ columns }) => columns?.includes(heading) ?? true).map((one) => one.says);
      return says.length > 0 ? [[column.name, says.join(' ')]] : [];
    }),
  );
}
