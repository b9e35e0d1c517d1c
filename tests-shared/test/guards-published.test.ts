import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { builtProblems } from '../src/guards/built.ts';
import { bundle, bundleProblems } from '../src/guards/bundles.ts';
import { install, isInstalled, lend, loadErrors, typeErrors } from '../src/guards/empty-project.ts';
import { manifestLint, pack, type Tarball, typeResolutionProblems } from '../src/guards/tarballs.ts';
import { temporaryFolder } from './temporary-folder.ts';

// As in guards.test.ts: each guard is fed something bad that it must find, and something good.

const { path, folder } = temporaryFolder('published');

describe('a guard of what is published', { timeout: 60_000 }, () => {
  const js = 'export const half = (x) => x / 2;\n';
  const dts = 'export declare const half: (x: number) => number;\n';
  const good = {
    name: '@scantling/good',
    version: '0.1.0',
    license: 'MIT',
    type: 'module',
    sideEffects: false,
    exports: { '.': { types: './index.d.ts', default: './index.js' } },
  };
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
  const project = join(path, 'project');
  let tarballs: Record<string, Tarball> = {};

  beforeAll(() => {
    const packed = pack(Object.values(dirs), path);
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
