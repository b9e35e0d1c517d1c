import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import type { Problems } from '../law-kit/problem.ts';

/** A package as it would be published. */
export interface Tarball {
  readonly name: string;
  readonly path: string;
  readonly dir: string;
}

/** Packs packages as a release would. */
export function pack(packageDirs: readonly string[], to: string): Tarball[] {
  const said = execFileSync(
    'npm',
    ['pack', '--json', '--ignore-scripts', '--pack-destination', to, ...packageDirs],
    {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    },
  );
  const packed = JSON.parse(said) as { name: string; filename: string }[];
  return packageDirs.map((dir) => {
    const { name } = JSON.parse(readFileSync(join(dir, 'package.json'), 'utf8')) as { name: string };
    const file = packed.find((one) => one.name === name)?.filename;
    if (!file) throw new Error(`npm pack made no tarball of ${name}`);
    return { name, dir, path: join(to, file) };
  });
}

/** A package.json that other tools read well. */
export async function manifestLint({ name, path }: Tarball): Promise<Problems> {
  const bytes = readFileSync(path);
  const tarball = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
  const { messages, pkg } = await publint({ strict: true, pack: { tarball } });
  return messages.map((message) => `${name}: ${formatMessage(message, pkg, { color: false })}`);
}

/**
 * Types that other programs find, and that say what the code is. Packages are ES modules only, so the ways that
 * load CommonJS, and the old way that knows no `exports`, are not asked.
 */
export async function typeResolutionProblems({ name, path }: Tarball): Promise<Problems> {
  const result = await checkPackage(createPackageFromTarballData(readFileSync(path)));
  if (!result.types) return [`${name} has no types`];
  return result.problems
    .filter((problem) => !('resolutionKind' in problem && /^node10|cjs$/.test(problem.resolutionKind)))
    .map((problem) => `${name}: ${problem.kind} ${'entrypoint' in problem ? problem.entrypoint : ''}`.trim());
}
