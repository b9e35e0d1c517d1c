import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import type { Problems } from '../law-kit/problem.ts';
import type { Tarball } from './tarballs.ts';
import { type Manifest, root } from './workspace.ts';

const manifestIn = (dir: string) => JSON.parse(readFileSync(join(dir, 'package.json'), 'utf8')) as Manifest;

/** What packages need from elsewhere, taken from what is installed here: the install asks no network. */
function thirdParty(manifests: readonly Manifest[]): Record<string, string> {
  const folders: Record<string, string> = {};
  const add = ({ dependencies = {} }: Manifest) => {
    for (const name of Object.keys(dependencies)) {
      if (name.startsWith('@scantling/') || folders[name]) continue;
      const folder = join(root, 'node_modules', name);
      folders[name] = `file:${folder}`;
      add(manifestIn(folder));
    }
  };
  manifests.forEach(add);
  return folders;
}

/** Installs tarballs, and nothing that they do not ask for, into an empty project. */
export function install(dir: string, tarballs: readonly Tarball[]): void {
  const ours = Object.fromEntries(tarballs.map(({ name, path }) => [name, `file:${path}`]));
  const dependencies = { ...ours, ...thirdParty(tarballs.map((tarball) => manifestIn(tarball.dir))) };
  mkdirSync(dir, { recursive: true });
  writeFileSync(join(dir, 'package.json'), JSON.stringify({ private: true, type: 'module', dependencies }));
  const quietly = ['--ignore-scripts', '--no-audit', '--no-fund', '--no-package-lock', '--install-links'];
  execFileSync('npm', ['install', '--offline', ...quietly], { cwd: dir, stdio: 'pipe' });
}

/** Lends the project a package that is installed here. */
export function lend(dir: string, name: string): void {
  symlinkSync(join(root, 'node_modules', name), join(dir, 'node_modules', name), 'dir');
}

export const isInstalled = (dir: string, name: string): boolean =>
  existsSync(join(dir, 'node_modules', name));

/** How a strict program finds modules: as Node does, or as a bundler does. */
export const resolutions = {
  nodenext: { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext },
  bundler: { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler },
};

const imports = (specifiers: readonly string[]) =>
  specifiers.map((specifier, i) => `import * as m${i} from '${specifier}';\n`).join('');

/** Errors of a strict type check, declarations included, of a program that imports these modules. */
export function typeErrors(
  dir: string,
  specifiers: readonly string[],
  resolution: keyof typeof resolutions,
  lib = ['lib.es2022.d.ts'],
): Problems {
  const file = join(dir, `${resolution}.ts`);
  const used = specifiers.map((_, i) => `m${i}`);
  writeFileSync(file, `${imports(specifiers)}export const all: readonly object[] = [${used}];\n`);
  const program = ts.createProgram([file], {
    ...resolutions[resolution],
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    skipLibCheck: false,
    types: [],
    lib,
    target: ts.ScriptTarget.ES2022,
    noEmit: true,
  });
  return ts.getPreEmitDiagnostics(program).map(({ file: where, messageText }) => {
    const place = where ? `${where.fileName.slice(dir.length + 1)}: ` : '';
    return place + ts.flattenDiagnosticMessageText(messageText, ' ');
  });
}

/** Modules that do not load under Node, or that export nothing. */
export function loadErrors(dir: string, specifiers: readonly string[]): Problems {
  return specifiers.flatMap((specifier) => {
    const program = `import * as m from '${specifier}'; if (Object.keys(m).length === 0) throw new Error('exports nothing');`;
    const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', program], {
      cwd: dir,
      encoding: 'utf8',
    });
    const said = stderr.split('\n').find((line) => /Error/.test(line)) ?? stderr;
    return status === 0 ? [] : [`${specifier}: ${said.trim()}`];
  });
}
