import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { builtProblems } from '../src/guards/built.ts';
import { install, isInstalled, lend, loadErrors, typeErrors } from '../src/guards/empty-project.ts';
import { manifestLint, pack, type Tarball, typeResolutionProblems } from '../src/guards/tarballs.ts';
import { entrySources, packages, root } from '../src/guards/workspace.ts';
import { temporaryFolder } from './temporary-folder.ts';

const dirs = packages.map(({ dir }) => join(root, dir));
const { path: temporary } = temporaryFolder('tarballs');
const project = join(temporary, 'project');
const mains = packages.map(({ manifest }) => manifest.name);
const plan = () =>
  spawnSync(join(project, 'node_modules', '.bin', 'scantling-plan'), [], {
    cwd: temporary,
    encoding: 'utf8',
  });
const everyEntry = packages.flatMap((one) =>
  entrySources(one).map(({ subpath }) => one.manifest.name + subpath.slice(1)),
);
let tarballs: Tarball[] = [];

beforeAll(() => {
  expect(dirs.flatMap(builtProblems)).toEqual([]);
  tarballs = pack(dirs, temporary);
}, 60_000);

describe.each(packages.map(({ manifest }) => manifest.name))('the tarball of %s', (name) => {
  const tarball = () => tarballs.find((one) => one.name === name) as Tarball;

  test('has a package.json that other tools read well', async () => {
    expect(await manifestLint(tarball())).toEqual([]);
  });

  test('has types that other programs find', async () => {
    expect(await typeResolutionProblems(tarball())).toEqual([]);
  });
});

describe('an empty project with the tarballs and without zod', { timeout: 60_000 }, () => {
  beforeAll(() => install(project, tarballs), 60_000);

  test('has every package, and no zod', () => {
    expect(mains.filter((name) => !isInstalled(project, name))).toEqual([]);
    expect(isInstalled(project, 'zod')).toBe(false);
  });

  test.each(['nodenext', 'bundler'] as const)('passes a strict type check, resolving as %s', (resolution) => {
    expect(mains.length).toBeGreaterThan(0);
    expect(typeErrors(project, mains, resolution)).toEqual([]);
  });

  test('loads every package', () => {
    expect(loadErrors(project, mains)).toEqual([]);
  });

  test('has a command that says what it needs', () => {
    const { status, stderr } = plan();
    expect([status, stderr.trim()]).toEqual([2, 'Reading a plan file needs zod: npm install zod']);
  });

  describe('and with zod and jspdf after all', () => {
    beforeAll(() => {
      for (const name of ['zod', 'jspdf']) lend(project, name);
    });

    test('passes a strict type check of every entry', () => {
      expect(everyEntry.length).toBeGreaterThan(mains.length);
      // The types of zod itself need those of a browser or of Node.
      const lib = ['lib.es2022.d.ts', 'lib.dom.d.ts'];
      expect(typeErrors(project, everyEntry, 'nodenext', lib)).toEqual([]);
    });

    test('plans a top with the command', () => {
      const { status, stdout, stderr } = plan();
      expect([status, stderr]).toEqual([0, '']);
      expect(stdout).toContain('Bindery bench');
    });

    test('loads every entry', () => {
      expect(loadErrors(project, everyEntry)).toEqual([]);
    });
  });
});
