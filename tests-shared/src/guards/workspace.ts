import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's folder. */
export const root = fileURLToPath(new URL('../../..', import.meta.url));

export type ExportTarget = string | Readonly<Record<string, string | Readonly<Record<string, string>>>>;

/** What the guards read of a package.json. */
export interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly private?: boolean;
  readonly exports?: Readonly<Record<string, ExportTarget>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

/** A package of this repository. */
export interface Package {
  /** Folder from the root: `packages/units`. */
  readonly dir: string;
  /** Last part of its name: `units`. */
  readonly name: string;
  readonly manifest: Manifest;
}

export const readText = (path: string): string => readFileSync(join(root, path), 'utf8');

/** The folders of packages that hold a package.json, within a folder of the root. */
const packagesIn = (folder: string): Package[] =>
  readdirSync(join(root, folder))
    .map((name) => `${folder}/${name}`)
    .filter((dir) => existsSync(join(root, dir, 'package.json')))
    .map((dir) => {
      const manifest = JSON.parse(readText(`${dir}/package.json`)) as Manifest;
      return { dir, name: manifest.name.replace(/^.*\//, ''), manifest };
    });

/** Every package that is published. */
export const packages: readonly Package[] = packagesIn('packages');

/** The applications built from them. */
export const apps: readonly Package[] = packagesIn('apps');

let tracked: readonly string[] | undefined;

/** Every file of the repository, from the root: what git tracks, and what it would track. */
export function repositoryFiles(): readonly string[] {
  tracked ??= execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    cwd: root,
    encoding: 'utf8',
  })
    .split('\0')
    .filter((file) => file && existsSync(join(root, file)));
  return tracked;
}

/** The source file behind each subpath that a package exports: `'.'` is `./src/index.ts`. */
export const entrySources = ({ dir, manifest }: Package): { subpath: string; file: string }[] =>
  Object.entries(manifest.exports ?? {}).flatMap(([subpath, target]) => {
    const source = typeof target === 'object' ? target['@scantling/source'] : undefined;
    return typeof source === 'string' ? [{ subpath, file: join(dir, source) }] : [];
  });
