import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { type AnyRule, rulesIn } from '@scantling/rules';
import { describe, expect, test } from 'vitest';
import { cardProblems, functionName } from './card.ts';
import { idleInputProblems, refusalProblems, resultProblems } from './domain.ts';
import { exampleProblems, exampleRangeProblems, toleranceProblems } from './examples.ts';
import { lawProblems, peerProblems } from './laws.ts';
import type { Problems } from './problem.ts';

/** Everything that every rule must satisfy. */
export const ruleChecks: Readonly<Record<string, (rule: AnyRule) => Problems>> = {
  'its card is whole': cardProblems,
  'reproduces its published examples': exampleProblems,
  'asks its examples for a close agreement': toleranceProblems,
  'takes its examples from inside the claimed range': exampleRangeProblems,
  'gives finite numbers and leaves its inputs alone': resultProblems,
  'refuses exactly what its schema refuses': refusalProblems,
  'needs each of its inputs': idleInputProblems,
  'obeys its laws': lawProblems,
  'agrees with its peers': peerProblems,
};

/** Rule files, by file name without `.ts`. */
export const ruleFiles = (packageDir: string): string[] =>
  readdirSync(join(packageDir, 'src', 'rules'))
    .filter((file) => file.endsWith('.ts'))
    .map((file) => file.slice(0, -3));

/** A rule file that nobody exports, function and card, is a rule that nobody checks. */
export function exportProblems(exports: object, files: readonly string[]): Problems {
  const ids = rulesIn(exports).map(({ id }) => id.slice(id.indexOf('/') + 1));
  return [
    ...(files.length === 0 ? ['no rule file was found'] : []),
    ...files.filter((file) => !ids.includes(file)).map((file) => `${file} is not exported`),
    ...files
      .filter((file) => !(functionName(`/${file}`) in exports))
      .map((file) => `${file}: function not exported`),
    ...ids.filter((id) => !files.includes(id)).map((id) => `${id} has no file of its name`),
  ];
}

/**
 * Checks every rule that a package exports. A new rule needs no test of its own.
 *
 * @param exports - The package's namespace: `import * as movement from '../src/index.ts'`.
 * @param dir - The package's folder.
 */
export function describeRules(exports: object, { dir }: { dir: string }): void {
  test('exports every rule file', () => {
    expect(exportProblems(exports, ruleFiles(dir))).toEqual([]);
  });
  for (const rule of rulesIn(exports)) {
    describe(rule.id, () => {
      for (const [name, check] of Object.entries(ruleChecks)) {
        test(name, () => expect(check(rule)).toEqual([]));
      }
    });
  }
}
