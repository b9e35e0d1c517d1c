import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { generatedPath, staleFiles, writeBuilt } from '../src/tables/generate.ts';

const TABLE = `species,radial,confirmed,tier
"Ash, white",4.9,text,publication
"Birch, gray",,memory,memory
Teak (Tectona grandis),2.5,text,reprint
`;
const META = {
  source: 'wood-handbook-2010',
  at: 'Table 0',
  title: 'Three woods',
  rights: 'Public domain.',
  rowCount: 3,
  sha256: '',
  rowType: 'ThreeWoodsRow',
  key: ['species'],
  columns: {
    species: { kind: 'text', name: 'species' },
    radial: { kind: 'number', unit: '%', decimals: 1, range: [1, 10], name: 'radialPct', mayBeEmpty: true },
    confirmed: { kind: 'choice', name: 'confirmed', oneOf: ['text', 'memory'] },
    tier: { kind: 'choice', name: 'tier', oneOf: ['publication', 'reprint', 'memory'] },
  },
  seenAt: {},
  errata: [{ rows: ['Ash, white'], says: 'Printed twice.' }],
  notes: [],
};
const WOODS = `common_name,botanical_name,botanical_confirmed,group,origin,trade_names,other_names,printed_as
white ash,Fraxinus americana,text,hardwood,domestic,cabinet ash; bat ash,,"Ash, white"
gray birch,,,hardwood,domestic,,,"Birch, gray"
teak,,,hardwood,imported,,,Teak (Tectona grandis)
`;

let packageDir: string;
const woodsPath = () => join(packageDir, 'data', 'woods.csv');
const rebuild = () => staleFiles(packageDir).forEach(writeBuilt);
const generated = (name: string) => readFileSync(generatedPath(packageDir, name), 'utf8');

beforeEach(() => {
  packageDir = mkdtempSync(join(tmpdir(), 'woods-'));
  mkdirSync(join(packageDir, 'data', 'tables'), { recursive: true });
  const table = join(packageDir, 'data', 'tables', 'wood-handbook-2010--table-0');
  writeFileSync(`${table}.csv`, TABLE);
  writeFileSync(`${table}.meta.json`, JSON.stringify(META));
  writeFileSync(woodsPath(), WOODS);
  rebuild();
});
afterEach(() => rmSync(packageDir, { recursive: true }));

const edit = (from: string, to: string) => {
  expect(WOODS).toContain(from);
  writeFileSync(woodsPath(), WOODS.replace(from, to));
};

describe('the woods of a package', () => {
  test('are one constant each, with their rows, marks and errata', () => {
    const woods = generated('woods');
    expect(woods.match(/^export const \w+: Wood = \/\* @__PURE__ \*\/ joinWood\(/gm)).toHaveLength(3);
    expect(woods).toContain('export const whiteAsh: Wood');
    expect(woods).toContain(
      '{ table: woodHandbook2010Table0, radialPct: 4.9, confirmed: "text", tier: "publication", errata: { radialPct: erratum1 } }',
    );
    expect(woods).toContain('const erratum1 = "Printed twice."');
    expect(woods).toContain('{ table: woodHandbook2010Table0, confirmed: "memory", tier: "memory" }');
    expect(generated('trade-names')).toContain('"Ash, white": ["cabinet ash","bat ash"],');
  });

  test('take of an erratum the columns that it is about, and none about what no wood shows', () => {
    const table = join(packageDir, 'data', 'tables', 'wood-handbook-2010--table-0');
    const errata = [
      { rows: ['Ash, white'], columns: ['radial'], says: 'Printed 4.8.' },
      { rows: ['Ash, white'], columns: ['species'], says: 'Printed Asch.' },
    ];
    writeFileSync(`${table}.meta.json`, JSON.stringify({ ...META, errata }));
    rebuild();
    expect(generated('woods')).toContain('const erratum1 = "Printed 4.8."');
    expect(generated('woods')).toContain('errata: { radialPct: erratum1 } }');
    expect(generated('woods')).not.toContain('Asch');
    const provenance = generated('wood-handbook-2010--table-0');
    expect(provenance).toContain('"columns":["radialPct"]');
    expect(provenance).toContain('Printed Asch.');
  });

  test('have their botanical name from the table where it prints one, else from the list', () => {
    const woods = generated('woods');
    expect(woods).toContain(
      'botanicalName: { name: "Fraxinus americana", table: speciesList, confirmed: "text", tier: "reprint" }',
    );
    expect(woods).toContain(
      'botanicalName: { name: "Tectona grandis", table: woodHandbook2010Table0, confirmed: "text", tier: "reprint" }',
    );
    expect(woods).toContain('botanicalName: null,');
  });

  test('are stale after a change, and go away with their list', () => {
    expect(staleFiles(packageDir)).toEqual([]);
    edit('gray birch', 'grey birch');
    expect(
      staleFiles(packageDir)
        .map(({ path }) => path)
        .sort(),
    ).toEqual(['woods', 'woods-in-brief'].map((name) => generatedPath(packageDir, name)).sort());
    rebuild();
    expect(generated('woods')).toContain('export const greyBirch');
    rmSync(woodsPath());
    expect(staleFiles(packageDir).map(({ content }) => content)).toEqual([null, null, null]);
  });

  test.each([
    [
      'a row that belongs to no wood',
      '"Ash, white"\n',
      '"Birch, gray"\n',
      'no wood is printed as Ash, white',
    ],
    [
      'a row that no table has',
      'Teak (Tectona grandis)',
      'Teak (Tectona grandis); Iroko',
      'no table prints Iroko',
    ],
    ['a wood without a row', ',"Birch, gray"', ',', 'gray birch: ✖ no row of a table'],
    ['an unknown group', 'hardwood,imported', 'grass,imported', 'teak: ✖ Invalid option'],
    [
      'a botanical name that says not how it is known',
      'americana,text',
      'americana,',
      'white ash: ✖ a botanical name',
    ],
    ['two botanical names', 'teak,,', 'teak,Tectona grandis,text', 'teak: a table prints a botanical name'],
    ['two woods of one name', 'gray birch', 'white ash', 'white ash stands twice'],
  ])('are refused with %s', (_, from, to, says) => {
    edit(from, to);
    expect(() => staleFiles(packageDir)).toThrow(`woods.csv: ${says}`);
  });
});
