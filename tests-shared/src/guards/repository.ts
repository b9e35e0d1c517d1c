import type { Problems } from '../law-kit/problem.ts';
import type { Manifest } from './workspace.ts';

/** A file with its text. */
export interface TextFile {
  readonly file: string;
  readonly text: string;
}

const LONGEST = 300;

/** Whether people write a file line by line: data, lock and generated files are apart. */
export const isWritten = (file: string) =>
  /\.(ts|tsx|mjs|js|astro|css|md|mdx|sh|yml|yaml)$/.test(file) && !/\.generated\.ts$/.test(file);

/** Whether a file holds text at all. */
export const isText = (file: string) => !/\.(png|jpe?g|webp|ico|woff2?|pdf|tgz)$/.test(file);

/** A file that has grown past what one reads in one go wants to be two. */
export function lengthProblems({ file, text }: TextFile): Problems {
  const lines = text.split('\n').length - 1;
  return lines > LONGEST ? [`${file} has ${lines} lines, more than ${LONGEST}`] : [];
}

const hosts = /\bregistry\.[\w-]+\.\w{2,}|\bnpm\.pkg\.\w+/i;
const machinePaths =
  /(?:^|[\s"'`(=:[,])((?:file:\/\/)?\/(?:home|Users|root|work|tmp|workspaces?)\/[\w.-]+|[A-Z]:\\Users\\\w+)/m;

/** No file names the host of a package registry, or a path that only one machine has. */
export function placeProblems({ file, text }: TextFile): Problems {
  const host = hosts.exec(text)?.[0];
  const path = machinePaths.exec(text)?.[1];
  return [
    ...(host ? [`${file} names the registry ${host}`] : []),
    ...(path ? [`${file} names a path of one machine: ${path}`] : []),
  ];
}

/** Whether a file holds tests. */
export const isTest = (file: string) => /\.(test|spec|bench)\.[jt]sx?$/.test(file);

const passedOver =
  /\b(?:test|it|describe|suite)(?:\.\w+)*\.(?:skip|skipIf|runIf|todo|fails|only)\b|\bx(?:it|test|describe)\(/;

/** Every test runs. */
export function skippedTestProblems({ file, text }: TextFile): Problems {
  const found = passedOver.exec(text)?.[0];
  return found ? [`${file}: ${found}`] : [];
}

/** All packages have the same version. */
export function versionProblems(manifests: readonly Manifest[]): Problems {
  const versions = [...new Set(manifests.map(({ version }) => version))];
  return versions.length === 1 ? [] : [`packages have different versions: ${versions.join(', ')}`];
}

/** The README's table has a row for a package. */
export const readmeProblems = (readme: string, { name }: Pick<Manifest, 'name'>): Problems =>
  readme.split('\n').some((line) => line.startsWith('|') && line.includes(`\`${name}\``))
    ? []
    : [`the README's table has no row for ${name}`];

/** A package that has rules has a test that checks them. */
export const ruleTestProblems = (name: string, tests: readonly string[]): Problems =>
  tests.some((text) => /^describeRules\(/m.test(text)) ? [] : [`no test of ${name} calls describeRules`];
