import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { expect, test } from 'vitest';

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
