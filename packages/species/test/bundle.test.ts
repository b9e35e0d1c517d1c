import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { expect, test } from 'vitest';
import { woods } from '../src/index.ts';

const index = fileURLToPath(new URL('../src/index.ts', import.meta.url));

async function bundled(name: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents: `export { ${name} } from ${JSON.stringify(index)};`,
      resolveDir: fileURLToPath(new URL('.', import.meta.url)),
    },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    conditions: ['@scantling/source'],
  });
  return outputFiles[0]?.text ?? '';
}

test('the rows alone ship no citation, and one table does not ship the other', async () => {
  const shrinkage = await bundled('shrinkageTable');
  expect(shrinkage).toContain('Maple, sugar');
  expect(shrinkage).not.toContain('Forest Products Laboratory');
  expect(shrinkage).not.toContain('tangentialPerPct');
  const coefficients = await bundled('movementCoefficientTable');
  expect(coefficients).toContain('Maple, sugar');
  expect(coefficients).not.toContain('Forest Products Laboratory');
  expect(coefficients).not.toContain('tangentialPct');
});

test('a search ships its own table and the citations', async () => {
  const search = await bundled('findMovementCoefficients');
  expect(search).toContain('Forest Products Laboratory');
  expect(search).not.toContain('volumetricPct');
});

test('one strength table ships its own rows and citation, and shrinkage ships none of them', async () => {
  const metric = await bundled('metricStrength');
  expect(metric).toContain('modulusOfElasticityMPa');
  expect(metric).not.toContain('modulusOfElasticityMillionPsi');
  expect(metric).not.toContain('Oregon State University');
  const shrinkage = await bundled('findShrinkage');
  expect(shrinkage).toContain('volumetricPct');
  expect(shrinkage).not.toContain('modulusOfElasticity');
});

test('one wood ships what is known of it and nothing of the others', async () => {
  const one = await bundled('sugarMaple');
  for (const own of ['sugar-maple', 'Acer saccharum', 'hard maple', 'Maple Flooring Manufacturers'])
    expect(one).toContain(own);
  for (const { id, commonName, botanicalName } of woods) {
    if (id === 'sugar-maple') continue;
    expect(one).not.toContain(`"${id}"`);
    expect(one).not.toContain(`"${commonName}"`);
    if (botanicalName) expect(one).not.toContain(botanicalName.name);
  }
  for (const other of ['Oregon', 'fibre saturation', 'Tree Species Strength Properties', 'requires'])
    expect(one).not.toContain(other);
});

test('a search among all woods ships them, and no table besides', async () => {
  const search = await bundled('findSpecies');
  expect(woods.filter(({ id }) => !search.includes(`"${id}"`))).toEqual([]);
  const ofTables = ['workToMaximumLoad', 'weightGreen', 'National Design Specification', 'public domain'];
  expect(ofTables.filter((words) => search.includes(words))).toEqual([]);
});

test('tables ship no wood', async () => {
  for (const name of ['shrinkageTable', 'findShrinkage', 'findMovementCoefficients', 'metricStrength']) {
    const table = await bundled(name);
    for (const ofWoods of ['botanicalName', 'Acer saccharum', 'Forest Inventory'])
      expect(table).not.toContain(ofWoods);
  }
});
