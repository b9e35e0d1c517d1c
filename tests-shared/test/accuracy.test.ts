import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import {
  type AccuracyTable,
  accuracyMarkdown,
  accuracyOf,
  deviationSurface,
  readmeOf,
  withAccuracy,
} from '../src/accuracy.ts';

const repository = fileURLToPath(new URL('../..', import.meta.url));

const figure = { printed: 7, ours: 7.04, known: 0.05, confirmed: 'text' } as const;
const table: AccuracyTable = {
  title: 'Demo',
  unit: '%',
  decimals: 2,
  deviations: [figure, { ...figure, ours: 6.9, confirmed: 'memory' }],
};

test('the READMEs state what comes out today', async () => {
  const packages = await accuracyOf(repository);
  expect([...packages.keys()].length).toBeGreaterThan(0);
  for (const [folder, tables] of packages) {
    const { stands, ought } = readmeOf(folder, tables);
    expect(stands).toBe(ought);
  }
});

test('no folder of figures is an error', async () => {
  await expect(accuracyOf(`${repository}/scripts`)).rejects.toThrow('No packages/*/accuracy');
});

describe('the summary', () => {
  test('counts the figures and gives the worst and the mean deviation', () => {
    const cells = accuracyMarkdown([table]).split('\n').at(-1)?.split('|');
    expect(cells?.map((cell) => cell.trim())).toEqual([
      ...['', 'Demo', '2', '1 text, 1 memory', '0.10 %', '0.07 %', '1', ''],
    ]);
  });

  test('refuses what compares nothing', () => {
    expect(() => accuracyMarkdown([])).toThrow('no table');
    expect(() => accuracyMarkdown([{ ...table, deviations: [] }])).toThrow('Demo: nothing was compared');
    for (const wrong of [{ ours: Number.NaN }, { printed: Number.POSITIVE_INFINITY }, { known: 0 }]) {
      const deviations = [figure, { ...figure, ...wrong }];
      expect(() => accuracyMarkdown([{ ...table, deviations }])).toThrow('is no comparison');
    }
  });
});

describe('on a page', () => {
  const [start, end] = ['<!-- accuracy: written by npm run accuracy -->', '<!-- end of accuracy -->'];

  test('it stands between its marks, and writing it twice changes nothing', () => {
    const once = withAccuracy(`before ${start} old ${end} after`, [table]);
    expect(once).toMatch(/^before .*after$/s);
    expect(once).not.toContain('old');
    expect(once).toContain('| Demo');
    expect(withAccuracy(once, [table])).toBe(once);
  });

  test('a page without the marks is an error', () => {
    for (const page of ['', start, end, `${end}${start}`])
      expect(() => withAccuracy(page, [table])).toThrow('The page has no');
  });
});

test('a surface shows every deviation, signed, where it belongs', () => {
  const at = (row: number, column: number, ours: number) => ({ ...figure, ours, at: { row, column } });
  const laid = deviationSurface({
    ...table,
    surface: { row: '°C', column: '%' },
    deviations: [at(20, 50, 7.04), at(10, 50, 6.97), at(10, 40, 7)],
  });
  expect(laid?.split('\n')).toEqual([
    'Demo: ours less printed, in 0.01 %; down °C, across %',
    '         40  50',
    '    10    0  -3',
    '    20        4',
  ]);
  expect(deviationSurface(table)).toBeNull();
});
