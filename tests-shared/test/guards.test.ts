import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  idleDependencyProblems,
  importProblems,
  importsOf,
  manifestProblems,
} from '../src/guards/dependencies.ts';
import { expectClean } from '../src/guards/findings.ts';
import {
  docstringProblems,
  publicFunctions,
  readApi,
  readmeExampleProblems,
  ruleDocstringProblems,
  unitProblems,
} from '../src/guards/public-api.ts';
import {
  lengthProblems,
  placeProblems,
  readmeProblems,
  ruleTestProblems,
  skippedTestProblems,
  versionProblems,
} from '../src/guards/repository.ts';
import { temporaryFolder } from './temporary-folder.ts';

// Each guard is fed something bad that it must find, and something good that it must leave alone.

const { folder } = temporaryFolder('guards');

const manifest = (name: string, more: object = {}) => ({
  name: `@scantling/${name}`,
  version: '0.1.0',
  ...more,
});

test('a guard that looks at nothing fails', () => {
  expect(() => expectClean([], () => [])).toThrow('looked at nothing');
  expect(() => expectClean([1], () => ['bad'])).toThrow();
  expectClean([1], () => []);
});

describe('dependency direction', () => {
  const needs = (...names: string[]) =>
    Object.fromEntries(names.map((name) => [`@scantling/${name}`, '0.1.0']));

  test.each([
    ['upwards', manifest('units', { dependencies: needs('movement') })],
    ['sideways', manifest('grids', { dependencies: needs('movement') })],
    ['on itself', manifest('grids', { dependencies: needs('grids') })],
    ['as a peer', manifest('rules', { peerDependencies: needs('units') })],
    ['optionally', manifest('rules', { optionalDependencies: needs('units') })],
    ['on a stranger', manifest('grids', { dependencies: needs('cabinets') })],
    ['as a stranger', manifest('cabinets', { dependencies: needs('rules') })],
    ['on another version', manifest('grids', { dependencies: { '@scantling/rules': '^0.1.0' } })],
  ])('in package.json must not point %s', (_, bad) => {
    expect(manifestProblems(bad)).toHaveLength(1);
  });

  test('in package.json may point downwards, and anywhere for tests', () => {
    const good = { dependencies: needs('rules', 'units'), devDependencies: needs('worktop') };
    expect(manifestProblems(manifest('movement', good))).toEqual([]);
  });

  const grids = manifest('grids', {
    dependencies: needs('rules', 'movement'),
    peerDependencies: { zod: '^4.0.0' },
  });
  const problems = (text: string, file = 'packages/grids/src/layout.ts') =>
    importProblems('packages/grids', grids, file, importsOf(file, text));

  test.each([
    ["import { widthChange } from '@scantling/movement';"],
    ["import type { WidthChange } from '@scantling/movement';"],
    ["export * from '@scantling/movement';"],
    ["const movement = await import('@scantling/movement');"],
    ["import { length } from '@scantling/units';"],
    ["import { planWorktop } from '@scantling/worktop/schema';"],
    ["import { widthChange } from '../../movement/src/index.ts';"],
    ["import { describeRules } from '../test/kit.ts';"],
    ["import { readFileSync } from 'node:fs';"],
    ["import fc from 'fast-check';"],
  ])('in code must not be: %s', (text) => {
    expect(problems(text)).not.toEqual([]);
  });

  test('in code may point downwards and within the package', () => {
    const good =
      "import { a } from '@scantling/rules/sources';\nimport { b } from './geometry.ts';\nimport * as z from 'zod';";
    expect(importsOf('a.ts', good)).toHaveLength(3);
    expect(problems(good)).toEqual([]);
    expect(problems("import { parseArgs } from 'node:util';", 'packages/grids/src/cli.ts')).toEqual([]);
  });

  test('must be used: nobody installs what is never imported', () => {
    const idle = (...specifiers: string[]) => idleDependencyProblems(grids, specifiers);
    expect(idle('@scantling/rules/sources', '@scantling/movement')).toHaveLength(1);
    expect(idle('@scantling/rules-of-thumb', '@scantling/movement', 'zod/mini')).toHaveLength(1);
    expect(idle('@scantling/rules/sources', '@scantling/movement', 'zod/mini')).toEqual([]);
  });

  test('is seen in the pages of the site too', () => {
    const page =
      "---\nimport { x } from 'left-pad';\n---\n<p>text</p>\n<script>\nimport 'right-pad';\n</script>\n";
    expect(importsOf('index.astro', page)).toEqual(['left-pad', 'right-pad']);
  });
});

describe('the repository', () => {
  test('has no file past 300 lines', () => {
    expect(lengthProblems({ file: 'a.ts', text: 'x\n'.repeat(301) })).toHaveLength(1);
    expect(lengthProblems({ file: 'a.ts', text: 'x\n'.repeat(300) })).toEqual([]);
  });

  const path = (...parts: string[]) => `/${parts.join('/')}`;
  test.each([
    `"resolved": "https://${['registry', 'example', 'org'].join('.')}/zod.tgz"`,
    `const root = '${path('home', 'someone', 'scantling')}';`,
    `see ${path('Users', 'someone')}`,
    `file://${path('root', 'scantling')}`,
    `cd ${path('tmp', 'x')}`,
    `C:${'\\'}Users${'\\'}someone`,
  ])('names no registry and no path of one machine: %s', (text) => {
    expect(placeProblems({ file: 'a', text })).toHaveLength(1);
  });

  test('may name a system path or a page', () => {
    const text = 'apt-get puts it at /usr/bin/chromium; see https://example.org/home/page and ../home/x';
    expect(placeProblems({ file: 'a', text })).toEqual([]);
  });

  test.each([
    ['test', 'skip'],
    ['it', 'todo'],
    ['describe', 'skipIf(x)'],
    ['test', 'concurrent', 'only'],
    ['test', 'fails'],
  ])('has no test like %s.%s', (...words) => {
    const text = `  ${words.join('.')}('adds', () => {})`;
    expect(skippedTestProblems({ file: 'a.test.ts', text })).toHaveLength(1);
  });

  test('may have plain and tabled tests', () => {
    const text = "test('exits(', () => {}); test.each([1])('x', () => {}); const skip = 1;";
    expect(skippedTestProblems({ file: 'a.test.ts', text })).toEqual([]);
  });

  test('moves all versions together', () => {
    expect(versionProblems([manifest('a'), { ...manifest('b'), version: '0.2.0' }])).toHaveLength(1);
    expect(versionProblems([manifest('a'), manifest('b')])).toEqual([]);
  });

  test('lists every package in the README', () => {
    const readme = 'About `@scantling/grids`.\n| [`@scantling/units`](packages/units) | lengths |';
    expect(readmeProblems(readme, manifest('grids'))).toHaveLength(1);
    expect(readmeProblems(readme, manifest('units'))).toEqual([]);
  });

  test('checks the rules of every package', () => {
    expect(ruleTestProblems('grids', ['// describeRules(grids)', 'test(1)'])).toHaveLength(1);
    expect(ruleTestProblems('grids', ["import x;\ndescribeRules(grids, { dir: '..' });"])).toEqual([]);
  });
});

describe('public names', () => {
  const source = `
/** Half.
 * @returns Half of it.
 * @throws RangeError where it is not a number.
 * Source: common sense, p. 1.
 * @example
 * \`\`\`ts
 * half({ widthMm: 3 }) // => { halfMm: 1.5 }
 * \`\`\`
 */
export function half(input: { readonly widthMm: number }): { readonly halfMm: number; readonly count: number } { return { halfMm: input.widthMm / 2, count: 2 }; }
/** Nothing is shown. */
export const twice = (input: { readonly width: number }) => ({ doubled: [input.width] as readonly number[] });
/** @example
 * \`\`\`ts
 * twice({ width: 1 }) // => { doubled: [1] }
 * \`\`\`
 */
export function other(): void {}
export interface Cut { readonly kerf?: number | null; readonly name: string; readonly deep: { readonly depth: number } }
`;
  const api = () =>
    readApi([{ title: 'demo', file: join(folder('api', { 'index.ts': source }), 'index.ts') }]);

  test('are functions that show themselves at work', () => {
    const found = publicFunctions(api()).map((one) => [one.name, docstringProblems(one).length]);
    expect(Object.fromEntries(found)).toEqual({ half: 0, twice: 1, other: 1 });
  });

  test('of rules say what comes back, what is refused, and where it comes from', () => {
    const problems = publicFunctions(api()).map((one) => [one.name, ruleDocstringProblems(one).length]);
    expect(Object.fromEntries(problems)).toEqual({ half: 0, twice: 3, other: 3 });
  });

  test('stand in the README’s rows', () => {
    const row = (call: string) => `| [\`demo\`](packages/demo) | halves | \`${call}\` |`;
    expect(readmeExampleProblems(row('half({ widthMm: 3 })'), 'demo', api())).toEqual([]);
    expect(readmeExampleProblems(row('third(3)'), 'demo', api())).toHaveLength(1);
    expect(readmeExampleProblems(row('half'), 'demo', api())).toHaveLength(1);
    expect(readmeExampleProblems('`half(3)`', 'demo', api())).toHaveLength(1);
  });

  test('carry units in inputs, results, lists and nested values', () => {
    const { looked, problems } = unitProblems(api());
    expect(looked).toBe(7);
    expect(problems.map((problem) => /: (\w+) \(/.exec(problem)?.[1]).sort()).toEqual([
      'depth',
      'doubled',
      'kerf',
      'width',
    ]);
  });
});
