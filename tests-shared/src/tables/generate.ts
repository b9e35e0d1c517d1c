import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { camel, emittedErratum, exportName, literal } from './emit.ts';
import { cell, readTable, type Table, tableIds } from './table.ts';
import { joinedModules } from './woods.ts';

function rowSource(table: Table, row: readonly string[]): string {
  const fields = Object.entries(table.meta.columns).flatMap(([heading, column]) =>
    column.kind === 'address' ? [] : [`${column.name}: ${literal(column, cell(table, row, heading))}`],
  );
  return `  { ${fields.join(', ')} },`;
}

/** The module that holds a table's rows, and apart from them where they come from. */
function generateModule(table: Table): string {
  const { id, meta, rows } = table;
  const { at, title, rights, notes } = meta;
  const errata = meta.errata.map((erratum) => emittedErratum(meta, erratum));
  const source = camel(meta.source);
  const provenance = Object.entries({ at, title, rights, errata, notes }).map(
    ([name, value]) => `  ${name}: ${JSON.stringify(value)},`,
  );
  return [
    `// Written by \`npm run tables\` from data/tables/${id}.csv; a change belongs there.`,
    "import type { TableProvenance } from '@scantling/rules';",
    `import { ${source} } from '@scantling/rules/sources';`,
    `import type { ${meta.rowType} } from '../rows.ts';`,
    '',
    `/** ${title}: ${at} of ${meta.source}. */`,
    `export const ${exportName(id)}: readonly ${meta.rowType}[] = [`,
    ...rows.map((row) => rowSource(table, row)),
    '];',
    '',
    '/** Where these rows come from, and what is known to be wrong in them. */',
    `export const ${exportName(id)}Provenance: TableProvenance = {`,
    `  source: ${source},`,
    ...provenance,
    '};',
    '',
  ].join('\n');
}

/** The meta file with the row count and checksum that its table has now; nothing else in it moves. */
const refreshMeta = ({ metaText, rows, sha256 }: Table): string =>
  metaText
    .replace(/"rowCount": *-?\d+/, `"rowCount": ${rows.length}`)
    .replace(/"sha256": *"[^"]*"/, `"sha256": "${sha256}"`);

/** A file as it should stand; `null` where it should not stand at all. */
export interface BuiltFile {
  readonly path: string;
  readonly content: string | null;
}

const generatedDir = (packageDir: string) => join(packageDir, 'src', 'data');

export const generatedPath = (packageDir: string, id: string): string =>
  join(generatedDir(packageDir), `${id}.generated.ts`);

function filesOfTable(table: Table): BuiltFile[] {
  const meta = join(table.packageDir, 'data', 'tables', `${table.id}.meta.json`);
  return [
    { path: generatedPath(table.packageDir, table.id), content: generateModule(table) },
    { path: meta, content: refreshMeta(table) },
  ];
}

/** Every file that follows from a package's tables, and generated files whose table is gone. */
function builtFiles(packageDir: string): BuiltFile[] {
  const tables = tableIds(packageDir).map((id) => readTable(packageDir, id));
  const files = [
    ...tables.flatMap(filesOfTable),
    ...joinedModules(packageDir, tables).map(({ name, content }) => ({
      path: generatedPath(packageDir, name),
      content,
    })),
  ];
  const dir = generatedDir(packageDir);
  const orphans = (existsSync(dir) ? readdirSync(dir) : [])
    .filter((file) => file.endsWith('.generated.ts'))
    .map((file) => ({ path: join(dir, file), content: null }))
    .filter(({ path }) => !files.some((file) => file.path === path));
  return [...files, ...orphans];
}

const contentOf = (path: string) => (existsSync(path) ? readFileSync(path, 'utf8') : null);

/** The built files that do not stand as they should. */
export const staleFiles = (packageDir: string): BuiltFile[] =>
  builtFiles(packageDir).filter(({ path, content }) => contentOf(path) !== content);

/** Makes a built file stand as it should. */
export function writeBuilt({ path, content }: BuiltFile): void {
  if (content === null) {
    rmSync(path);
  } else {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  }
}
