import { expect, test } from 'vitest';
import { expectClean } from '../src/guards/findings.ts';
import { docstringProblems, packageApi, publicFunctions, unitProblems } from '../src/guards/public-api.ts';
import { packages } from '../src/guards/workspace.ts';

const api = packageApi(packages);

test('every package exports something', () => {
  expectClean(packages, ({ manifest }) =>
    api.names.some(({ title }) => title.startsWith(`${manifest.name}: `))
      ? []
      : [`${manifest.name} exports nothing`],
  );
});

test('every exported function shows itself at work', () => {
  expectClean(publicFunctions(api), docstringProblems);
});

test('every number that is handed in or out names its unit', () => {
  const { looked, problems } = unitProblems(api);
  expect(looked).toBeGreaterThan(100);
  expect(problems).toEqual([]);
});
