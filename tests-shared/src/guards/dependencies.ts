import { posix } from 'node:path';
import ts from 'typescript';
import type { Problems } from '../law-kit/problem.ts';
import type { Manifest } from './workspace.ts';

/** Who may know whom: a package depends on packages of earlier rows only. */
const layers = [
  ['rules'],
  ['units', 'species'],
  ['movement', 'grids', 'fastening', 'finishing', 'stock'],
  ['worktop'],
  ['docs'],
];

const layerOf = (name: string) => layers.findIndex((layer) => layer.includes(name));

/** Only a command reads files; everything else runs in a browser too. */
const mayUseNode = (file: string) => /^apps\/|\/src\/cli(\/|\.ts$)/.test(file);

const scope = '@scantling/';

function directionProblem(from: string, to: string): Problems {
  if (layerOf(from) < 0) return [`${from} stands in no layer`];
  if (layerOf(to) < 0) return [`${from} depends on ${to}, which stands in no layer`];
  return layerOf(to) < layerOf(from) ? [] : [`${from} depends on ${to}, which is not below it`];
}

/** What a package.json depends on at run time points downwards, at the very version beside it. */
export function manifestProblems(manifest: Manifest): Problems {
  const { name, version, dependencies, peerDependencies, optionalDependencies } = manifest;
  const short = name.replace(scope, '');
  return Object.entries({ ...dependencies, ...peerDependencies, ...optionalDependencies }).flatMap(
    ([to, wanted]) =>
      to.startsWith(scope)
        ? [
            ...directionProblem(short, to.replace(scope, '')),
            ...(wanted === version ? [] : [`${short} ${version} depends on ${to} ${wanted}`]),
          ]
        : [],
  );
}

/** Everything that a source file imports, re-exports or loads. */
export function importsOf(file: string, text: string): string[] {
  const script = file.endsWith('.astro')
    ? [...text.matchAll(/^---\n([\s\S]*?)^---$|<script[^>]*>([\s\S]*?)<\/script>/gm)]
        .map((m) => m[1] ?? m[2])
        .join('\n')
    : text;
  return ts.preProcessFile(script, true, true).importedFiles.map(({ fileName }) => fileName);
}

/** Whoever installs a package installs what it depends on, so each of them is imported somewhere. */
export const idleDependencyProblems = (manifest: Manifest, specifiers: readonly string[]): Problems =>
  Object.keys({ ...manifest.dependencies, ...manifest.peerDependencies })
    .filter((name) => !specifiers.some((specifier) => `${specifier}/`.startsWith(`${name}/`)))
    .map((name) => `${manifest.name} depends on ${name} and never imports it`);

/** A source file imports only what its package.json names, from below, and nothing of its tests or of another package's insides. */
export function importProblems(
  dir: string,
  manifest: Manifest,
  file: string,
  specifiers: readonly string[],
): Problems {
  const known = { ...manifest.dependencies, ...manifest.peerDependencies };
  return specifiers.flatMap((specifier): Problems => {
    if (specifier.startsWith('.')) {
      const path = posix.join(posix.dirname(file), specifier);
      const inside = path.startsWith(`${dir}/`) && !/^(test|bench)\//.test(path.slice(dir.length + 1));
      return inside ? [] : [`${file} reaches out of its package: ${specifier}`];
    }
    if (specifier.startsWith('node:')) {
      return mayUseNode(file) ? [] : [`${file} needs Node: ${specifier}`];
    }
    // Modules that the site's builder makes up.
    if (/^(astro|virtual):/.test(specifier)) return [];
    const [first = '', second] = specifier.split('/');
    const name = first.startsWith('@') ? `${first}/${second}` : first;
    const direction = name.startsWith(scope)
      ? directionProblem(manifest.name.replace(scope, ''), name.replace(scope, ''))
      : [];
    const own = name === manifest.name;
    return [
      ...direction,
      ...(own || name in known ? [] : [`${file} imports ${name}, which its package.json does not name`]),
    ].map((problem) => `${problem} (${file})`);
  });
}
