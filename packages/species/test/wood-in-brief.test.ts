import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findSpecies, findWoodInBrief, type Wood, woods, woodsInBrief } from '../src/index.ts';

const figures = ({ movement, at12Pct }: Pick<Wood, 'movement' | 'at12Pct'>) =>
  [
    movement.radialPerPct,
    movement.tangentialPerPct,
    at12Pct.specificGravityRatio,
    at12Pct.modulusOfElasticityMPa,
  ].map((figure) => figure && { value: figure.value, citation: figure.citation });

const wholly = (text: string) => {
  const { species, candidates } = findSpecies(text);
  return { species: species?.commonName ?? null, candidates: candidates.map((wood) => wood.commonName) };
};

const inBrief = (text: string) => {
  const { species, candidates } = findWoodInBrief(text);
  return { species: species?.commonName ?? null, candidates: candidates.map((wood) => wood.commonName) };
};

const names = woods.flatMap(({ id, commonName, botanicalName, printedAs, aliases }) => [
  id,
  commonName,
  ...(botanicalName ? [botanicalName.name, `${commonName} (${botanicalName.name})`] : []),
  ...printedAs,
  ...aliases,
]);
const words = [...new Set(names.flatMap((name) => name.match(/\p{L}+/gu) ?? []))];

test('every wood is there in brief, with the figures to use and their citations', () => {
  expect(
    woodsInBrief.map(({ commonName, botanicalName }) => [commonName, botanicalName?.name ?? null]),
  ).toEqual(woods.map(({ commonName, botanicalName }) => [commonName, botanicalName?.name ?? null]));
  let known = 0;
  for (const [i, wood] of woods.entries()) {
    const { movement, at12Pct } = woodsInBrief[i] ?? { movement: null, at12Pct: null };
    const brief = [
      movement?.radialPerPct,
      movement?.tangentialPerPct,
      at12Pct?.specificGravityRatio,
      at12Pct?.modulusOfElasticityMPa,
    ];
    expect(brief, wood.commonName).toEqual(figures(wood));
    known += brief.filter((figure) => figure).length;
  }
  expect(known).toBeGreaterThan(400);
});

describe('a name means in brief what it means', () => {
  test('each name, each word and each two neighbouring words of a name', () => {
    expect(words.length).toBeGreaterThan(400);
    const pairs = names.flatMap((name) => {
      const all = name.match(/\p{L}+/gu) ?? [];
      return all.slice(1).map((word, i) => `${all[i]} ${word}`);
    });
    for (const text of [...names, ...words, ...pairs])
      expect([text, inBrief(text)]).toEqual([text, wholly(text)]);
  });

  test('any words of names and of cuts together', () => {
    const word = fc.constantFrom(...words, 'quartersawn', 'lumber', 'curly', 'plywood');
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 4 }), (some) => {
        const text = some.join(' ');
        expect(inBrief(text)).toEqual(wholly(text));
      }),
    );
  });

  test('it refuses what is not text', () => {
    expect(() => findWoodInBrief(null as never)).toThrow(RangeError);
  });
});
