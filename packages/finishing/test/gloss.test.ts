import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type GlossLevelsInput, glossGeometry, glossLevels } from '../src/index.ts';

const levels = (at60Gu: number, at85Gu: number) => glossLevels({ at60Gu, at85Gu }).map(({ level }) => level);

// Source: product lists of the same institute, as text: a finish of level 2 reads at most 10 at 60° and 10 to 35 at 85°,
// one of level 3 10 to 25 and 10 to 35, one of level 5 at least 35 and at most 70 at 60°.
test('levels are those that the institute asks of products', () => {
  for (const [at60Gu, at85Gu, level] of [
    [0, 10, '2'],
    [10, 35, '2'],
    [10, 10, '3'],
    [25, 35, '3'],
    [35, 0, '5'],
    [70, 90, '5'],
  ] as const) {
    expect(levels(at60Gu, at85Gu)).toContain(level);
  }
  expect(levels(10.1, 20)).not.toContain('2');
  expect(levels(9.9, 20)).not.toContain('3');
  expect(levels(70.1, 90)).not.toContain('5');
});

// Source: ISO 2813:2014, as text: a finish that looks the same reads 35 at 20°, 70 at 60° and 95 at 85°.
test('the example of ISO 2813 is between semi-gloss and gloss', () => {
  expect(levels(70, 95)).toEqual(['5', '6']);
  expect(glossGeometry({ at60Gu: 70 }).geometryDeg).toBe(60);
});

test('the glossiest level begins above its figure, and a glossier finish is never of a duller level', () => {
  expect(levels(85, 99)).toEqual(['6']);
  expect(levels(85.1, 99)).toEqual(['7']);
  const reading = numberArb({ min: 0, max: 200 });
  fc.assert(
    fc.property(reading, reading, reading, (one, other, at85Gu) => {
      const duller = levels(Math.min(one, other), at85Gu);
      const glossier = levels(Math.max(one, other), at85Gu);
      fc.pre(duller.length > 0 && glossier.length > 0);
      expect(Number(glossier.at(-1))).toBeGreaterThanOrEqual(Number(duller.at(-1)));
      expect(Number(glossier[0])).toBeGreaterThanOrEqual(Number(duller[0]));
    }),
  );
});

test('each level says where it stands', () => {
  const [satin] = glossLevels({ at60Gu: 30, at85Gu: 50 });
  expect(satin?.citation).toMatchObject({ confirmed: 'text', at: expect.stringMatching(/levels: 4$/) });
});

test.each<[object, string]>([
  [{ at60Gu: -1, at85Gu: 5 }, 'at60Gu between 0 and 200, got -1'],
  [{ at60Gu: 1 }, 'at85Gu between 0 and 200, got undefined'],
])('refuses %o', (input, says) => {
  expect(() => glossLevels(input as GlossLevelsInput)).toThrow(`glossLevels requires ${says}`);
});
