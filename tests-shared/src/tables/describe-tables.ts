import { describe, expect, test } from 'vitest';
import type { Problems } from '../law-kit/problem.ts';
import { generatedPath, staleFiles } from './generate.ts';
import { moduleProblems, tableChecks } from './problems.ts';
import { readTable, tableIds } from './table.ts';

/** A package that is said to have tables has some, and no generated file without its table. */
export const packageProblems = (packageDir: string): Problems => [
  ...(tableIds(packageDir).length > 0 ? [] : ['no table was found']),
  ...staleFiles(packageDir)
    .filter(({ content }) => content === null)
    .map(({ path }) => `${path.slice(packageDir.length)} has no table`),
];

/**
 * Checks every table of a package, and the code generated from it. A new table needs no test of its own.
 *
 * @param packageDir - The package's folder.
 */
export function describeTables(packageDir: string): void {
  test('has tables, and nothing generated without one', () => {
    expect(packageProblems(packageDir)).toEqual([]);
  });
  for (const id of tableIds(packageDir)) {
    describe(id, () => {
      for (const [name, check] of Object.entries(tableChecks)) {
        test(name, () => expect(check(readTable(packageDir, id))).toEqual([]));
      }
      test('gives its values to the generated module', async () => {
        const module = await import(generatedPath(packageDir, id));
        expect(moduleProblems(readTable(packageDir, id), module)).toEqual([]);
      });
    });
  }
}
