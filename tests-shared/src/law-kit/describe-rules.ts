import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type AnyRule, rulesIn } from '@scantling/rules';
import { describe, expect, test } from 'vitest';
import { cardProblems, functionName } from './card.ts';
import { exampleProblems, exampleRangeProblems, handWorkingProblems, toleranceProblems } from './examples.ts';
import { lawProblems } from './laws.ts';
import { peerProblems } from './peers.ts';
import type { Problems } from './problem.ts';
import { refusalProblems } from './refusals.ts';
import { idleInputProblems, repeatProblems, resultProblems } from './results.ts';

/** Everything that every rule must satisfy. */
export const ruleChecks = {
  'its card is whole': cardProblems,
  'reproduces its published examples': exampleProblems,
  'asks its examples for a close agreement': toleranceProblems,
  'takes its examples from inside the claimed range': exampleRangeProblems,
  'shows arithmetic that comes out': handWorkingProblems,
  'gives finite numbers and leaves its inputs alone': resultProblems,
  'gives the same answer again': repeatProblems,
  'refuses exactly what its schema refuses': refusalProblems,
  'needs each of its inputs': idleInputProblems,
  'obeys its laws': lawProblems,
  'agrees with its peers': peerProblems,
} as const satisfies Readonly<Record<string, (rule: AnyRule) => Problems>>;

/** Rule files, by file name without `.ts`. */
export const ruleFiles = (packageDir: string): string[] =>
  readdirSync(join(packageDir, 'src', 'rules'))
    .filter((file) => file.endsWith('.ts'))
    .map((file) => file.slice(0, -3));

/** A rule file that nobody exports, function and card, is a rule that nobody checks. */
export function exportProblems(exports: object, packageName: string, files: readonly string[]): Problems {
  const named = exports as Readonly<Record<string, unknown>>;
  const rules = new Map(rulesIn(exports).map((rule) => [rule.id, rule]));
  const expected = files.map((file) => `${packageName}/${file}`);
  return [
    ...(files.length === 0 ? ['no rule file was found'] : []),
    ...(rules.size === rulesIn(exports).length ? [] : ['two cards have the same id']),
    ...expected.flatMap((id) => {
      const rule = rules.get(id);
      const name = functionName(id);
      if (!rule) return [`${id} is not exported`];
      return [
        ...(named[`${name}Rule`] === rule ? [] : [`${id}: its card is not exported as ${name}Rule`]),
        ...(named[name] === rule.compute
          ? []
          : [`${id}: the exported ${name} is not what its card computes`]),
      ];
    }),
    ...[...rules.keys()].filter((id) => !expected.includes(id)).map((id) => `${id} has no file of its name`),
  ];
}

/**
 * Checks every rule that a package exports. A new rule needs no test of its own.
 *
 * @param exports - The package's namespace: `import * as movement from '../src/index.ts'`.
 * @param dir - The package's folder.
 */
export function describeRules(exports: object, { dir }: { dir: string | URL }): void {
  const folder = dir instanceof URL ? fileURLToPath(dir) : dir;
  const { name } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { name: string };
  test('exports every rule file', () => {
    expect(exportProblems(exports, name.replace(/^.*\//, ''), ruleFiles(folder))).toEqual([]);
  });
  for (const rule of rulesIn(exports)) {
    describe(rule.id, () => {
      for (const [check, problems] of Object.entries(ruleChecks)) {
        test(check, () => expect(problems(rule)).toEqual([]));
      }
    });
  }
}
