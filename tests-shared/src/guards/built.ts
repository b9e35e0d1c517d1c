import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import type { Problems } from '../law-kit/problem.ts';

interface SourceMap {
  readonly sources: readonly string[];
  readonly sourcesContent: readonly string[];
}

/** A package's `dist` is there, and was built from its sources as they stand. */
export function builtProblems(packageDir: string): Problems {
  const name = relative(resolve(packageDir, '../..'), packageDir);
  const maps = globSync(join(packageDir, 'dist/**/*.js.map'));
  if (maps.length === 0) return [`${name} has no dist: run npm run build first.`];
  const stale = maps.some((map) => {
    const { sources, sourcesContent } = JSON.parse(readFileSync(map, 'utf8')) as SourceMap;
    return sources.some((source, i) => {
      const file = resolve(dirname(map), source);
      return !existsSync(file) || readFileSync(file, 'utf8') !== sourcesContent[i];
    });
  });
  return stale ? [`${name} has changed since its dist was built: run npm run build first.`] : [];
}
