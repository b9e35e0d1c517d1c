import { expect, test } from 'vitest';
import {
  idleDependencyProblems,
  importProblems,
  importsOf,
  manifestProblems,
} from '../src/guards/dependencies.ts';
import { expectClean } from '../src/guards/findings.ts';
import {
  isTest,
  isText,
  isWritten,
  lengthProblems,
  placeProblems,
  readmeProblems,
  ruleTestProblems,
  skippedTestProblems,
  versionProblems,
} from '../src/guards/repository.ts';
import { apps, packages, readText, repositoryFiles } from '../src/guards/workspace.ts';

const withText = (files: readonly string[]) => files.map((file) => ({ file, text: readText(file) }));
const filesOf = (dir: string, pattern: RegExp) =>
  repositoryFiles().filter((file) => file.startsWith(`${dir}/`) && pattern.test(file));

test('package.json files depend downwards', () => {
  expectClean([...packages, ...apps], ({ manifest }) => manifestProblems(manifest));
});

test.each([...packages, ...apps])('$name imports from below', ({ dir, manifest }) => {
  expectClean(filesOf(`${dir}/src`, /\.(tsx?|mjs|astro)$/), (file) =>
    importProblems(dir, manifest, file, importsOf(file, readText(file))),
  );
});

test('packages depend on nothing that they do not import', () => {
  expectClean(packages, ({ dir, manifest }) => {
    const sources = filesOf(`${dir}/src`, /\.ts$/);
    return idleDependencyProblems(
      manifest,
      sources.flatMap((file) => importsOf(file, readText(file))),
    );
  });
});

test('packages with rules have a test that checks them', () => {
  const withRules = packages.filter(({ dir }) => filesOf(`${dir}/src/rules`, /\.ts$/).length > 0);
  expectClean(withRules, ({ dir, name }) =>
    ruleTestProblems(
      name,
      withText(filesOf(`${dir}/test`, /\.test\.ts$/)).map(({ text }) => text),
    ),
  );
});

test('packages move together', () => {
  const manifests = [...packages, ...apps].map(({ manifest }) => manifest);
  expect(manifests.length).toBeGreaterThan(1);
  expect(versionProblems(manifests)).toEqual([]);
});

test('the README lists every package', () => {
  const readme = readText('README.md');
  expectClean(packages, ({ manifest }) => readmeProblems(readme, manifest));
});

test('files are short enough to read', () => {
  expectClean(withText(repositoryFiles().filter(isWritten)), lengthProblems);
});

test('files name no registry and no path of one machine', () => {
  expectClean(withText(repositoryFiles().filter(isText)), placeProblems);
});

test('no test is passed over', () => {
  expectClean(withText(repositoryFiles().filter(isTest)), skippedTestProblems);
});
