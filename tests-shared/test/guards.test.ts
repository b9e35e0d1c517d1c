import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { builtProblems } from '../src/guards/built.ts';
import { bundle, bundleProblems } from '../src/guards/bundles.ts';
import { importProblems, importsOf, manifestProblems } from '../src/guards/dependencies.ts';
import { install, isInstalled, lend, loadErrors, typeErrors } from '../src/guards/empty-project.ts';
import { expectClean } from '../src/guards/findings.ts';
import { docstringProblems, publicFunctions, readApi, unitProblems } from '../src/guards/public-api.ts';
import {
  lengthProblems,
  placeProblems,
  readmeProblems,
  ruleTestProblems,
  skippedTestProblems,
  versionProblems,
} from '../src/guards/repository.ts';
import { manifestLint, pack, type Tarball, typeResolutionProblems } from '../src/guards/tarballs.ts';

// Each guard is fed something bad that it must find, and something good that it must leave alone.

const temporary = mkdtempSync(join(tmpdir(), 'scantling-guards-'));
afterAll(() => rmSync(temporary, { recursive: true, force: true }));

/** Writes files below a temporary folder and gives that folder. */
function folder(name: string, files: Readonly<Record<string, string | object>>): string {
  const dir = join(temporary, name);
  for (const [file, content] of Object.entries(files)) {
    mkdirSync(join(dir, file, '..'), { recursive: true });
    writeFileSync(join(dir, file), typeof content === 'string' ? content : JSON.stringify(content));
  }
  return dir;
}

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
    'test.skip(',
    'it.todo(',
    'describe.skipIf(x)(',
    'test.concurrent.only(',
    'test.fails(',
    'xit(',
  ])('has no test like %s', (call) => {
    expect(skippedTestProblems({ file: 'a.test.ts', text: `  ${call}'adds', () => {})` })).toHaveLength(1);
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
/** Half. @example
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

describe('what is published', { timeout: 60_000 }, () => {
  const js = 'export const half = (x) => x / 2;\n';
  const dts = 'export declare const half: (x: number) => number;\n';
  const good = manifest('good', {
    license: 'MIT',
    type: 'module',
    sideEffects: false,
    exports: { '.': { types: './index.d.ts', default: './index.js' } },
  });
  const dirs = {
    good: folder('good', { 'package.json': good, 'index.js': js, 'index.d.ts': dts }),
    lost: folder('lost', {
      'package.json': {
        ...good,
        name: '@scantling/lost',
        exports: { '.': { types: './gone.d.ts', default: './index.js' } },
      },
      'index.js': js,
      'index.d.ts': dts,
    }),
    mixed: folder('mixed', {
      'package.json': { ...good, name: '@scantling/mixed', type: 'commonjs' },
      'index.js': js,
      'index.d.ts': dts,
    }),
    hungry: folder('hungry', {
      'package.json': { ...good, name: '@scantling/hungry' },
      'index.js': `import * as z from 'zod';\nexport const schema = z.number();\n`,
      'index.d.ts': `import type { ZodNumber } from 'zod';\nexport declare const schema: ZodNumber;\nexport declare const page: Document;\n`,
    }),
  };
  const project = join(temporary, 'project');
  let tarballs: Record<string, Tarball> = {};

  beforeAll(() => {
    const packed = pack(Object.values(dirs), temporary);
    tarballs = Object.fromEntries(
      packed.map((tarball) => [tarball.name.replace('@scantling/', ''), tarball]),
    );
    install(project, [tarballs.good, tarballs.hungry] as Tarball[]);
  }, 60_000);

  const tarball = (name: keyof typeof dirs) => tarballs[name] as Tarball;

  test('has a package.json that other tools read well', async () => {
    expect(await manifestLint(tarball('good'))).toEqual([]);
    expect(await manifestLint(tarball('lost'))).not.toEqual([]);
    expect(await manifestLint(tarball('mixed'))).not.toEqual([]);
  });

  test('has types that other programs find', async () => {
    expect(await typeResolutionProblems(tarball('good'))).toEqual([]);
    expect(await typeResolutionProblems(tarball('lost'))).not.toEqual([]);
    expect(await typeResolutionProblems(tarball('mixed'))).not.toEqual([]);
  });

  test('passes a strict type check without what it did not ask for', () => {
    expect(isInstalled(project, 'zod')).toBe(false);
    for (const resolution of ['nodenext', 'bundler'] as const) {
      expect(typeErrors(project, ['@scantling/good'], resolution)).toEqual([]);
      expect(typeErrors(project, ['@scantling/hungry'], resolution).length).toBeGreaterThan(1);
      expect(typeErrors(project, ['@scantling/absent'], resolution)).not.toEqual([]);
    }
  });

  test('loads without what it did not ask for', () => {
    expect(loadErrors(project, ['@scantling/good'])).toEqual([]);
    expect(loadErrors(project, ['@scantling/hungry', '@scantling/absent'])).toHaveLength(2);
    lend(project, 'zod');
    expect(loadErrors(project, ['@scantling/hungry'])).toEqual([]);
  });

  test('is light, and carries nothing that was not asked for', async () => {
    const light = await bundle('@scantling/good', ['half'], project);
    expect(bundleProblems('half', light, 100, ['zod'])).toEqual([]);
    expect(bundleProblems('half', light, 10, ['=>'])).toHaveLength(2);
    await expect(bundle('@scantling/good', ['third'], project)).rejects.toThrow('third');
    expect(bundleProblems('nothing', { text: '', gzipBytes: 20 }, 100, [])).toHaveLength(1);
  });

  test('was built from the sources as they stand', () => {
    const map = (content: string) => ({ sources: ['../src/index.ts'], sourcesContent: [content] });
    const built = (name: string, content: string) =>
      folder(`packages/${name}`, { 'src/index.ts': 'now', 'dist/index.js.map': map(content) });
    expect(builtProblems(built('fresh', 'now'))).toEqual([]);
    expect(builtProblems(built('stale', 'then'))).toEqual([
      'packages/stale has changed since its dist was built: run npm run build first.',
    ]);
    expect(builtProblems(folder('packages/none', { 'src/index.ts': 'now' }))).toEqual([
      'packages/none has no dist: run npm run build first.',
    ]);
  });
});
