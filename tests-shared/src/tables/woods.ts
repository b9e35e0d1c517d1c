import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvParse } from 'd3-dsv';
import * as z from 'zod';
import { camel, exportName, literal } from './emit.ts';
import { cell, rowKey, type Table } from './table.ts';

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

type WoodLine = z.infer<typeof woodSchema>;

/** A row of a table that is about woods, with its name. */
interface NamedRow {
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

function readWoods(path: string): WoodLine[] {
  return csvParse(readFileSync(path, 'utf8')).map((line) => {
    const wood = woodSchema.safeParse(line);
    if (!wood.success) throw new Error(`woods.csv: ${line.common_name}: ${z.prettifyError(wood.error)}`);
    return wood.data;
  });
}

const idOf = ({ common_name }: WoodLine) => common_name.toLowerCase().replaceAll(' ', '-');

/** Whether a printed name has a botanical one in brackets. */
const isBotanical = (species: string) => species.includes('(');

const fields = (values: Readonly<Record<string, string>>) =>
  Object.entries(values)
    .map(([name, value]) => `${name}: ${value}`)
    .join(', ');

/** Where a wood's botanical name stands: in brackets in a table's row, or in the list that woods.csv follows. */
function botanicalSource(
  { botanical_name, botanical_confirmed }: WoodLine,
  rows: readonly NamedRow[],
): string {
  const printed = rows.find(({ species }) => isBotanical(species));
  if (printed) {
    const { table, row, species } = printed;
    return `{ ${fields({
      name: JSON.stringify(/\((.+)\)/.exec(species)?.[1]),
      table: exportName(table.id),
      confirmed: JSON.stringify(cell(table, row, 'confirmed')),
      tier: JSON.stringify(cell(table, row, 'tier')),
    })} }`;
  }
  if (botanical_name === '') return 'null';
  const seen = { table: 'speciesList', confirmed: '"text"', tier: '"reprint"' };
  const recalled = { table: 'woodDescriptions', confirmed: '"memory"', tier: '"memory"' };
  const name = JSON.stringify(botanical_name);
  return `{ ${fields({ name, ...(botanical_confirmed === 'text' ? seen : recalled) })} }`;
}

/** What is known to be wrong with the figures of a row that woods show, by their columns. */
function errataOf({ table, row }: NamedRow): Readonly<Record<string, string>> {
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

function rowSource(named: NamedRow, errata: readonly string[]): string {
  const { table, row } = named;
  const shown = Object.entries(table.meta.columns).flatMap(([heading, column]) => {
    const text = cell(table, row, heading);
    return column.kind !== 'address' && SHOWN.includes(column.name) && text !== ''
      ? [[column.name, literal(column, text)]]
      : [];
  });
  const known = Object.entries(errataOf(named)).map(([name, says]) => [
    name,
    `erratum${errata.indexOf(says) + 1}`,
  ]);
  return `    { ${fields({
    table: exportName(table.id),
    ...Object.fromEntries(shown),
    ...(known.length > 0 && { errata: `{ ${fields(Object.fromEntries(known))} }` }),
  })} },`;
}

function woodSource(wood: WoodLine, all: readonly NamedRow[], errata: readonly string[]): string {
  const rows = all.filter(({ species }) => wood.printed_as.includes(species));
  const { common_name, group, origin, trade_names, other_names, printed_as } = wood;
  const aliases = [...trade_names, ...other_names];
  const values = Object.entries({ group, origin, aliases, printedAs: printed_as }).map(
    ([name, value]) => `  ${name}: ${JSON.stringify(value)},`,
  );
  return [
    `/** ${common_name[0]?.toUpperCase()}${common_name.slice(1)}. */`,
    `export const ${camel(idOf(wood))}: Wood = /* @__PURE__ */ joinWood({`,
    `  id: ${JSON.stringify(idOf(wood))},`,
    `  commonName: ${JSON.stringify(common_name)},`,
    `  botanicalName: ${botanicalSource(wood, rows)},`,
    ...values,
    '  rows: [',
    ...rows.map((row) => rowSource(row, errata)),
    '  ],',
    '});',
    '',
  ].join('\n');
}

/** What keeps woods and rows from being joined. */
function joinProblems(woods: readonly WoodLine[], rows: readonly NamedRow[]): string[] {
  const printed = new Set(rows.map(({ species }) => species));
  const joined = new Set(woods.flatMap(({ printed_as }) => printed_as));
  const ids = woods.map(idOf);
  const twice = woods.filter((wood, i) => ids.indexOf(idOf(wood)) !== i);
  const named = woods.filter(
    ({ botanical_name, printed_as }) => botanical_name !== '' && printed_as.some(isBotanical),
  );
  return [
    ...[...printed].filter((name) => !joined.has(name)).map((name) => `no wood is printed as ${name}`),
    ...[...joined].filter((name) => !printed.has(name)).map((name) => `no table prints ${name}`),
    ...named.map(({ common_name }) => `${common_name}: a table prints a botanical name`),
    ...twice.map(({ common_name }) => `${common_name} stands twice`),
  ];
}

const WRITTEN = '// Written by `npm run tables` from data/woods.csv and the tables; a change belongs there.';

function woodsModule(woods: readonly WoodLine[], rows: readonly NamedRow[]): string {
  const tables = [...new Set(rows.map(({ table }) => table))];
  const errata = [...new Set(rows.flatMap((row) => Object.values(errataOf(row))))];
  const sources = [...new Set(tables.map(({ meta }) => camel(meta.source)))].sort();
  return [
    WRITTEN,
    `import { ${sources.join(', ')} } from '@scantling/rules/sources';`,
    "import { speciesList, woodDescriptions } from '../botanical-names.ts';",
    "import type { PrintedTable } from '../citation.ts';",
    "import { joinWood, type Wood } from '../wood.ts';",
    '',
    ...tables.map(
      ({ id, meta }) =>
        `const ${exportName(id)}: PrintedTable = { source: ${camel(meta.source)}, at: ${JSON.stringify(meta.at)} };`,
    ),
    '',
    ...errata.map((says, i) => `const erratum${i + 1} = ${JSON.stringify(says)};`),
    '',
    ...woods.map((wood) => woodSource(wood, rows, errata)),
    '/** Every wood, in the order of `data/woods.csv`. */',
    'export const woods: readonly Wood[] = [',
    ...woods.map((wood) => `  ${camel(idOf(wood))},`),
    '];',
    '',
  ].join('\n');
}

function tradeNamesModule(woods: readonly WoodLine[]): string {
  const named = woods.flatMap(({ trade_names, printed_as }) =>
    trade_names.length > 0 ? printed_as.map((name) => ({ name, trade_names })) : [],
  );
  return [
    WRITTEN,
    '',
    '/** Names that only the trade uses, by the name under which a table prints the wood. */',
    'export const tradeNames: Readonly<Record<string, readonly string[]>> = {',
    ...named.map(({ name, trade_names }) => `  ${JSON.stringify(name)}: ${JSON.stringify(trade_names)},`),
    '};',
    '',
  ].join('\n');
}

/**
 * The modules that join the tables of a package by `data/woods.csv`, where it has one: its woods, and their trade
 * names. Joined are the tables that have a column `species`; other tables are about several woods at once.
 */
export function joinedModules(
  packageDir: string,
  tables: readonly Table[],
): { readonly name: string; readonly content: string }[] {
  const path = join(packageDir, 'data', 'woods.csv');
  if (!existsSync(path)) return [];
  const woods = readWoods(path);
  const rows = tables
    .filter(({ header }) => header.includes('species'))
    .flatMap((table) => table.rows.map((row) => ({ table, row, species: cell(table, row, 'species') })));
  for (const problem of joinProblems(woods, rows)) throw new Error(`woods.csv: ${problem}`);
  return [
    { name: 'woods', content: woodsModule(woods, rows) },
    { name: 'trade-names', content: tradeNamesModule(woods) },
  ];
}
