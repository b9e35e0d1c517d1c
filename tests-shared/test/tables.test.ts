import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { packageProblems } from '../src/tables/describe-tables.ts';
import { exportName } from '../src/tables/emit.ts';
import { generatedPath, staleFiles, writeBuilt } from '../src/tables/generate.ts';
import { moduleProblems, tableChecks } from '../src/tables/problems.ts';
import { readTable, tableIds } from '../src/tables/table.ts';

const repository = fileURLToPath(new URL('../..', import.meta.url));
const script = join(repository, 'scripts', 'build-tables.ts');

const ID = 'wood-handbook-2010--table-0';
const CSV = `species,radial,tangential,confirmed,tier,seen_at
"Ash, white",4.9,7.8,text,publication,p. 1
"Birch, gray",5.2,,memory,memory,
`;
const percent = { kind: 'number', unit: '%', decimals: 1, range: [1, 10] };
const META = {
  source: 'wood-handbook-2010',
  at: 'Table 0',
  title: 'Two woods',
  rights: 'Public domain.',
  rowCount: 2,
  sha256: '',
  rowType: 'TwoWoodsRow',
  key: ['species'],
  columns: {
    species: { kind: 'text', name: 'species' },
    radial: { ...percent, name: 'radialPct' },
    tangential: { ...percent, name: 'tangentialPct', mayBeEmpty: true },
    confirmed: { kind: 'choice', name: 'confirmed', oneOf: ['text', 'memory', 'heard'] },
    tier: { kind: 'choice', name: 'tier', oneOf: ['publication', 'memory'] },
    seen_at: { kind: 'address' },
  },
  seenAt: { 'p. 1': 'https://example.org/page-1' },
  errata: [{ rows: ['Ash, white'], says: 'Printed twice.' }],
  notes: [],
};
const MODULE = {
  [exportName(ID)]: [
    { species: 'Ash, white', radialPct: 4.9, tangentialPct: 7.8, confirmed: 'text', tier: 'publication' },
    { species: 'Birch, gray', radialPct: 5.2, tangentialPct: null, confirmed: 'memory', tier: 'memory' },
  ],
};

let root: string;
let packageDir: string;
const csvPath = () => join(packageDir, 'data', 'tables', `${ID}.csv`);
const metaPath = () => join(packageDir, 'data', 'tables', `${ID}.meta.json`);

const run = (...args: string[]) =>
  spawnSync(process.execPath, [script, ...args], { cwd: root, encoding: 'utf8' });

const rebuild = () => staleFiles(packageDir).forEach(writeBuilt);

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'tables-'));
  packageDir = join(root, 'packages', 'demo');
  mkdirSync(join(packageDir, 'data', 'tables'), { recursive: true });
  writeFileSync(csvPath(), CSV);
  writeFileSync(metaPath(), JSON.stringify(META, null, 2));
  rebuild();
});
afterEach(() => rmSync(root, { recursive: true }));

const edit = (path: string, from: string | RegExp, to: string) => {
  const before = readFileSync(path, 'utf8');
  const after = before.replace(from, to);
  expect(after).not.toBe(before);
  writeFileSync(path, after);
};

/** The checks that object, by name, once everything that can be rewritten has been. */
function objections({ rewritten }: { rewritten: boolean }): string[] {
  if (rewritten) rebuild();
  const table = readTable(packageDir, ID);
  return Object.entries(tableChecks).flatMap(([name, check]) => (check(table).length > 0 ? [name] : []));
}

const STALE = ['has the rows and the checksum that it states', 'is what the generated module was made from'];

describe('a good table', () => {
  test('satisfies every check', () => {
    expect(Object.keys(tableChecks)).toHaveLength(8);
    expect(objections({ rewritten: false })).toEqual([]);
    expect(packageProblems(packageDir)).toEqual([]);
    expect(moduleProblems(readTable(packageDir, ID), MODULE)).toEqual([]);
  });

  test('gives rows with numbers and null, the source apart from them', () => {
    const module = readFileSync(generatedPath(packageDir, ID), 'utf8');
    expect(module).toContain(
      '{ species: "Birch, gray", radialPct: 5.2, tangentialPct: null, confirmed: "memory"',
    );
    expect(module).toContain("import { woodHandbook2010 } from '@scantling/rules/sources';");
    expect(module.indexOf('Printed twice.')).toBeGreaterThan(module.indexOf('];'));
  });
});

describe('a bad table is found out', () => {
  test.each<[string, () => void]>([
    ['changed without rebuilding', () => edit(csvPath(), '4.9', '4.8')],
    [
      'a row added without rebuilding',
      () => writeFileSync(csvPath(), `${CSV}"Elm, rock",4.8,8.1,memory,memory,\n`),
    ],
  ])('%s', (_, spoil) => {
    spoil();
    expect(objections({ rewritten: false })).toEqual(STALE);
    expect(objections({ rewritten: true })).toEqual([]);
  });

  test.each<[string, () => void]>([
    ['stale checksum', () => edit(metaPath(), /"sha256": "[^"]+"/, '"sha256": "0"')],
    ['wrong row count', () => edit(metaPath(), '"rowCount": 2', '"rowCount": 3')],
  ])('%s', (_, spoil) => {
    spoil();
    expect(objections({ rewritten: false })).toContain('has the rows and the checksum that it states');
  });

  test('stale generated file', () => {
    edit(generatedPath(packageDir, ID), '5.2', '5.3');
    expect(objections({ rewritten: false })).toEqual(['is what the generated module was made from']);
  });

  const figures = 'holds numbers with the printed decimals, in the plausible range';
  const shape = 'has the columns, the keys and the errata that it states';
  const marks = 'says of every row how it was confirmed';
  test.each<[string, string | RegExp, string, string]>([
    ['a non-number', '4.9', '4,9%', figures],
    ['a number in words', '4.9', 'NaN', figures],
    ['an empty cell where none may be', '4.9', '', figures],
    ['a figure with its decimals lost', '4.9', '5', figures],
    ['a figure out of range', '4.9', '49.0', figures],
    ['an unknown mark', 'text,', 'hearsay,', marks],
    ['a mark that only the table itself allows', 'text,', 'heard,', marks],
    ['seen, with no address', 'p. 1', '', marks],
    ['seen at an unknown address', 'p. 1', 'p. 2', marks],
    ['from memory, yet of a publication', 'memory,memory', 'memory,publication', marks],
    ['a mark not described', 'memory,memory', 'computed,memory', 'holds the words that it may'],
    ['a heading not described', 'radial,', 'Radial,', shape],
    ['a row too long', 'p. 1', 'p. 1,', shape],
    ['a row that stands twice', 'Birch, gray', 'Ash, white', shape],
    ['an erratum about no row', 'Ash, white', 'Ash, green', shape],
  ])('%s', (_, from, to, finding) => {
    edit(csvPath(), from, to);
    expect(objections({ rewritten: true })).toContain(finding);
  });

  test.each<[string, string, string, string]>([
    ['a name that hides its unit', '"radialPct"', '"radial"', 'names its figures by their printed units'],
    [
      'an unknown source',
      '"source": "wood-handbook-2010"',
      '"source": "wood-handbook-1840"',
      'comes from a known source',
    ],
    ['an erratum about no column', '"says"', '"columns": ["Radial"], "says"', shape],
  ])('%s', (_, from, to, finding) => {
    edit(metaPath(), from, to);
    expect(objections({ rewritten: true })).toContain(finding);
  });

  test('a generated value that is not the cell', () => {
    const table = readTable(packageDir, ID);
    const [ash, birch] = MODULE[exportName(ID)] ?? [];
    const withRows = (...rows: unknown[]) => moduleProblems(table, { [exportName(ID)]: rows });
    expect(withRows({ ...ash, radialPct: 4.8 }, birch)).toHaveLength(1);
    expect(withRows(ash, { ...birch, tangentialPct: 0 })).toHaveLength(1);
    expect(withRows({ ...ash, species: undefined }, birch)).toHaveLength(1);
    expect(withRows(ash)).toHaveLength(1);
    expect(moduleProblems(table, {})).toHaveLength(1);
  });

  test('no rows, no tables, a generated file without its table', () => {
    writeFileSync(csvPath(), CSV.slice(0, CSV.indexOf('\n') + 1));
    expect(objections({ rewritten: true })).toContain('has the rows and the checksum that it states');
    rmSync(csvPath());
    expect(packageProblems(packageDir)).toEqual([
      'no table was found',
      `/src/data/${ID}.generated.ts has no table`,
    ]);
    expect(packageProblems(join(root, 'packages'))).toEqual(['no table was found']);
  });

  test('a description that cannot be read names its file and what is wrong', () => {
    edit(metaPath(), '"rights"', '"right"');
    expect(() => readTable(packageDir, ID)).toThrow(`${ID}.meta.json`);
    expect(() => readTable(packageDir, ID)).toThrow('rights');
  });
});

describe('npm run tables', () => {
  test('--check ends with 1, names the file and writes nothing', () => {
    expect(run('--check')).toMatchObject({ status: 0, stderr: '' });
    edit(csvPath(), '4.9', '4.8');
    const before = readFileSync(generatedPath(packageDir, ID), 'utf8');
    const checked = run('--check');
    expect(checked.status).toBe(1);
    expect(checked.stderr).toContain(join('packages', 'demo', 'src', 'data', `${ID}.generated.ts`));
    expect(readFileSync(generatedPath(packageDir, ID), 'utf8')).toBe(before);
    expect(run().status).toBe(0);
    expect(run('--check').status).toBe(0);
  });

  test('rewrites only the row count and the checksum of a description', () => {
    const before = readFileSync(metaPath(), 'utf8').split('\n');
    edit(csvPath(), '4.9', '4.8');
    run();
    const after = readFileSync(metaPath(), 'utf8').split('\n');
    expect(after.filter((line, i) => line !== before[i])).toEqual([expect.stringContaining('"sha256"')]);
  });

  test('takes away a generated file whose table is gone, and ends with 1 where there is no table at all', () => {
    const other = generatedPath(packageDir, 'gone--table');
    cpSync(generatedPath(packageDir, ID), other);
    expect(run('--check').stderr).toContain('gone--table');
    run();
    expect(readdirSync(join(packageDir, 'src', 'data'))).toEqual([`${ID}.generated.ts`]);
    rmSync(csvPath());
    expect(run('--check')).toMatchObject({ status: 1, stderr: expect.stringContaining('No table') });
  });

  test('has nothing to write in this repository', () => {
    const said = execFileSync(process.execPath, [script, '--check'], { cwd: repository, encoding: 'utf8' });
    const packages = readdirSync(join(repository, 'packages')).map((name) =>
      join(repository, 'packages', name),
    );
    const tables = packages.flatMap(tableIds).length;
    expect(tables).toBeGreaterThan(0);
    expect(said).toContain(`${tables} tables, 0 files stale.`);
  });
});
