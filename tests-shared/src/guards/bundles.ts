import { gzipSync } from 'node:zlib';
import { build, type Plugin } from 'esbuild';
import type { Problems } from '../law-kit/problem.ts';
import { root } from './workspace.ts';

/** A bundle as a program would ship it. */
export interface Bundle {
  readonly text: string;
  readonly gzipBytes: number;
}

/** Leaves out what is loaded by `import()`. */
const loadedLater: Plugin = {
  name: 'loaded later',
  setup(build) {
    build.onResolve({ filter: /./ }, ({ kind, path }) =>
      kind === 'dynamic-import' ? { path, external: true } : null,
    );
  },
};

/** Bundles a few names of a package, from its `dist`, the way a program that imports them does. */
export async function bundle(
  from: string,
  names: readonly string[],
  resolveDir = root,
  atFirst = false,
): Promise<Bundle> {
  const { outputFiles } = await build({
    stdin: { contents: `export { ${names} } from '${from}';`, resolveDir },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    target: 'es2022',
    platform: 'browser',
    charset: 'utf8',
    logLevel: 'silent',
    plugins: atFirst ? [loadedLater] : [],
  });
  const text = outputFiles[0]?.text ?? '';
  return { text, gzipBytes: gzipSync(text, { level: 9 }).length };
}

/** A bundle that is missing, too heavy, or carries what its user did not ask for. */
export function bundleProblems(
  title: string,
  { text, gzipBytes }: Bundle,
  maxGzipBytes: number,
  never: readonly string[],
): Problems {
  const carried = never.find((words) => text.toLowerCase().includes(words.toLowerCase()));
  return [
    ...(/\bexport\b/.test(text) ? [] : [`${title}: the bundle is empty`]),
    ...(gzipBytes <= maxGzipBytes ? [] : [`${title}: ${gzipBytes} bytes, ceiling ${maxGzipBytes}`]),
    ...(carried === undefined ? [] : [`${title}: carries "${carried}"`]),
  ];
}
