import { join } from 'node:path';
import { type AnyRule, rulesIn } from '@scantling/rules';
import * as sources from '@scantling/rules/sources';
import { beforeAll, describe, expect, test } from 'vitest';
import { budgets } from '../src/budgets.ts';
import { builtProblems } from '../src/guards/built.ts';
import { bundle, bundleProblems } from '../src/guards/bundles.ts';
import { packages, root } from '../src/guards/workspace.ts';
import { functionName } from '../src/law-kit/card.ts';
import { largerRules, RULE_GZIP_BYTES } from '../src/rule-budgets.ts';

const rules: { from: string; rule: AnyRule }[] = [];
for (const { manifest } of packages) {
  const exports = (await import(/* @vite-ignore */ manifest.name)) as object;
  rules.push(...rulesIn(exports).map((rule) => ({ from: manifest.name, rule })));
}

/** The words of cards and sources, which belong to pages and not into a program that computes. */
const cardWords = rules.flatMap(({ rule }) => [rule.title, rule.summary, rule.formula]);
const sourceWords = Object.values(sources).flatMap(({ title, identifier }) => [
  title,
  ...(identifier ? [identifier] : []),
]);
const words = [...cardWords, ...sourceWords];
/** A word of every DXF file, and so of the library that writes them. */
const DXF_WORD = 'AcDb';

beforeAll(() => {
  expect(packages.flatMap(({ dir }) => builtProblems(join(root, dir)))).toEqual([]);
});

test('every package has a budget, and every exception is a rule', () => {
  const inTable = [...new Set(budgets.map((budget) => budget.package))];
  expect(inTable.sort()).toEqual(packages.map(({ manifest }) => manifest.name).sort());
  const ids = rules.map(({ rule }) => rule.id);
  expect(Object.keys(largerRules).filter((id) => !ids.includes(id))).toEqual([]);
  expect(cardWords.length).toBeGreaterThan(0);
  expect(sourceWords.length).toBeGreaterThan(0);
});

describe('what a program ships that imports', () => {
  test.each(
    budgets.map((budget) => {
      const from = budget.package + (budget.subpath ?? '');
      return [`${budget.imports.join(' and ')} from ${from}`, from, budget] as const;
    }),
  )('%s', async (title, from, budget) => {
    const never = ['zod', ...(budget.writesDxf ? [] : [DXF_WORD]), ...(budget.citesSources ? [] : words)];
    const shipped = await bundle(from, budget.imports, root, budget.atFirst);
    expect(bundleProblems(title, shipped, budget.maxGzipBytes, never)).toEqual([]);
    // What may come along does: the word that must not appear elsewhere is one that would be seen.
    if (budget.writesDxf) expect(shipped.text).toContain(DXF_WORD);
  });

  test.each(packages.map(({ manifest }) => manifest.name))('everything from %s', async (name) => {
    const everything = Object.keys((await import(/* @vite-ignore */ name)) as object);
    const shipped = await bundle(name, everything);
    expect(bundleProblems(name, shipped, Number.POSITIVE_INFINITY, ['zod', DXF_WORD])).toEqual([]);
  });

  test.each(rules.map(({ from, rule }) => [rule.id, from, rule] as const))(
    'the rule %s',
    async (id, from) => {
      const shipped = await bundle(from, [functionName(id)]);
      const ceiling = largerRules[id]?.maxGzipBytes ?? RULE_GZIP_BYTES;
      expect(bundleProblems(id, shipped, ceiling, ['zod', DXF_WORD, ...words])).toEqual([]);
      if (id in largerRules)
        expect(shipped.gzipBytes, 'needs its exception').toBeGreaterThan(RULE_GZIP_BYTES);
    },
  );
});
