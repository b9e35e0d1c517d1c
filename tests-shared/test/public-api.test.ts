import { expect, test } from 'vitest';
import { expectClean } from '../src/guards/findings.ts';
import {
  docstringProblems,
  isRuleFunction,
  packageApi,
  publicFunctions,
  readmeExampleProblems,
  ruleDocstringProblems,
  unitProblems,
} from '../src/guards/public-api.ts';
import { packages, readText } from '../src/guards/workspace.ts';

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

test('the docstring of every rule says what comes back, what is refused, and where it comes from', () => {
  expectClean(publicFunctions(api).filter(isRuleFunction), ruleDocstringProblems);
});

test('the README shows each package with something that it exports', () => {
  const readme = readText('README.md');
  expectClean(packages, ({ manifest }) => readmeExampleProblems(readme, manifest.name, api));
});

test('every number that is handed in or out names its unit', () => {
  const { looked, problems } = unitProblems(api);
  expect(looked).toBeGreaterThan(100);
  expect(problems).toEqual([]);
});
