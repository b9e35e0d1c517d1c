import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { camel, exportName } from './emit.ts';
import { cell, type Table } from './table.ts';
import {
  botanicalNameOf,
  errataOf,
  idOf,
  inBrackets,
  type NamedRow,
  readWoods,
  rowsOf,
  shownOf,
  type WoodLine,
  WRITTEN,
} from './wood-rows.ts';
import { briefModule } from './woods-in-brief.ts';

const fields = (values: Readonly<Record<string, string>>) =>
  Object.entries(values)
    .map(([name, value]) => `${name}: ${value}`)
    .join(', ');

/** Where a wood's botanical name stands: in brackets in a table's row, or in the list that woods.csv follows. */
function botanicalSource(wood: WoodLine, rows: readonly NamedRow[]): string {
  const name = JSON.stringify(botanicalNameOf(wood, rows));
  const printed = rows.find(({ species }) => inBrackets(species));
  if (printed) {
    const { confirmed, tier } = shownOf(printed);
    return `{ ${fields({ name, table: exportName(printed.table.id), confirmed: `${confirmed}`, tier: `${tier}` })} }`;
  }
  if (wood.botanical_name === '') return 'null';
  const seen = { table: 'speciesList', confirmed: '"text"', tier: '"reprint"' };
  const recalled = { table: 'woodDescriptions', confirmed: '"memory"', tier: '"memory"' };
  return `{ ${fields({ name, ...(wood.botanical_confirmed === 'text' ? seen : recalled) })} }`;
}

function rowSource(named: NamedRow, errata: readonly string[]): string {
  const known = Object.entries(errataOf(named)).map(([name, says]) => [
    name,
    `erratum${errata.indexOf(says) + 1}`,
  ]);
  return `    { ${fields({
    table: exportName(named.table.id),
    ...shownOf(named),
    ...(known.length > 0 && { errata: `{ ${fields(Object.fromEntries(known))} }` }),
  })} },`;
}

function woodSource(wood: WoodLine, all: readonly NamedRow[], errata: readonly string[]): string {
  const rows = rowsOf(wood, all);
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
    ({ botanical_name, printed_as }) => botanical_name !== '' && printed_as.some(inBrackets),
  );
  return [
    ...[...printed].filter((name) => !joined.has(name)).map((name) => `no wood is printed as ${name}`),
    ...[...joined].filter((name) => !printed.has(name)).map((name) => `no table prints ${name}`),
    ...named.map(({ common_name }) => `${common_name}: a table prints a botanical name`),
    ...twice.map(({ common_name }) => `${common_name} stands twice`),
  ];
}

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
 * The modules that join the tables of a package by `data/woods.csv`, where it has one: its woods, whole and in
 * brief, and their trade names. Joined are the tables that have a column `species`; other tables are about several woods at once.
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
    { name: 'woods-in-brief', content: briefModule(woods, rows) },
    { name: 'trade-names', content: tradeNamesModule(woods) },
  ];
}
