import { woodHandbook2010 } from '@scantling/rules/sources';
import { factors } from '@scantling/units';
import { describe, expect, test } from 'vitest';
import { accuracyOf } from '../../../tests-shared/src/accuracy.ts';
import { readTable, tableIds } from '../../../tests-shared/src/tables/table.ts';
import { ruleAccuracy } from '../src/accuracy/rules.ts';
import { surfaceOf } from '../src/accuracy/surface.ts';
import { comparedTables } from '../src/accuracy/tables.ts';
import { rules } from '../src/registry.ts';
import { citedSources, knownOfSource, restingInWords } from '../src/sources/cited.ts';
import { citationsInCode, codeCitations } from '../src/sources/code-citations.ts';
import { printedTables } from '../src/sources/tables.ts';

const root = `${import.meta.dirname}/../../..`;
const total = <T>(list: readonly T[], size: (one: T) => number) =>
  list.reduce((sum, one) => sum + size(one), 0);

describe('sources', () => {
  test('every citation of a card stands with its source, once', () => {
    const inCards = total(
      rules,
      ({ sources, peers = [] }) => sources.length + peers.filter(({ source }) => source).length,
    );
    expect(inCards).toBeGreaterThan(100);
    const listed = total(citedSources, (cited) =>
      total(cited.rules, ({ statement, peers }) => statement.length + peers.length),
    );
    expect(listed).toBe(inCards);
    const published = total(rules, ({ examples }) => examples.filter(({ from }) => 'source' in from).length);
    expect(total(citedSources, ({ examples }) => examples.length)).toBe(published);
    expect(total(citedSources, (cited) => cited.factors.length)).toBe(
      total(factors, ({ sources }) => sources.length),
    );
  });

  test('every table stands with its source, and its rows are known as its file says', () => {
    expect(total(citedSources, ({ tables }) => tables.length)).toBe(printedTables.length);
    const files = new Set(printedTables.map(({ packageName }) => packageName));
    expect(total([...files], (name) => tableIds(`${root}/packages/${name}`).length)).toBe(
      printedTables.length,
    );
    for (const { id, packageName, known, rowCount } of printedTables) {
      expect(
        total(known, ({ rows }) => rows),
        id,
      ).toBe(rowCount);
      expect(readTable(`${root}/packages/${packageName}`, id).rows, id).toHaveLength(rowCount);
    }
  });

  test('citations are read from code with their place, and sources named without one are not lost', () => {
    const text = `import { woodHandbook2010, iso2813 } from '@scantling/rules/sources';
      const one = { source: woodHandbook2010, at: 'ch. 2', confirmed: 'text', tier: 'reprint' };
      const two = [{ source: woodHandbook2010, at: 'ch. 3' }];
      const three = gloss(iso2813);`;
    expect(citationsInCode(text)).toEqual([
      { source: woodHandbook2010, at: 'ch. 2', known: { confirmed: 'text', tier: 'reprint' } },
      { source: woodHandbook2010, at: 'ch. 3' },
      { source: expect.objectContaining({ id: 'iso-2813' }) },
    ]);
    const files = new Set(codeCitations.map(({ packageName, file }) => `${packageName}/${file}`));
    expect([...files]).toContain('finishing/hazards');
    expect(codeCitations.some(({ source, at }) => source.id === 'iso-8502-4' && at)).toBe(true);
  });

  test('each says how much rests on it and how that is known', () => {
    const handbook = citedSources.find(({ source }) => source === woodHandbook2010);
    if (!handbook) throw new Error('Nothing cites the Wood Handbook.');
    expect(restingInWords(handbook)).toMatch(/^\d+ rules, \d+ worked examples, \d+ tables/);
    expect(knownOfSource(handbook)).toMatch(/seen in the text: \d+.*; rows of tables .*from memory: \d+/);
  });
});

describe('accuracy', () => {
  test('the tables compared are those of npm run accuracy, with the same figures', async () => {
    const tables = [...(await accuracyOf(root)).values()].flat();
    expect(comparedTables.map(({ table }) => table.title).sort()).toEqual(
      tables.map(({ title }) => title).sort(),
    );
    expect(total(comparedTables, ({ summary }) => summary.count)).toBe(
      total(tables, ({ deviations }) => deviations.length),
    );
  });

  test('a surface has every figure in its place', () => {
    const tables = comparedTables.filter(({ table }) => table.surface);
    expect(tables.length).toBeGreaterThan(0);
    for (const { table, summary } of tables) {
      const surface = surfaceOf(table);
      const cells = (surface?.rows ?? []).flatMap((row) => row.cells.filter((cell) => cell !== null));
      expect(cells).toHaveLength(summary.count);
      expect(cells.filter(({ same }) => same)).toHaveLength(summary.withinLastDigit);
    }
    expect(surfaceOf({ title: 'x', unit: '', decimals: 0, deviations: [] })).toBeNull();
  });

  test('of every rule, the mean deviation is at most the worst', () => {
    for (const rule of rules) {
      const { figures, known, worst, mean, withinLastDigit } = ruleAccuracy(rule);
      expect(known).toHaveLength(figures);
      expect(mean).toBeLessThanOrEqual(worst * (1 + 1e-12));
      expect(withinLastDigit === figures).toBe(worst <= 1 + 1e-9);
    }
  });
});
