import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tradeNames } from '../src/data/trade-names.generated.ts';
import {
  findMovementCoefficients,
  findShrinkage,
  movementCoefficientProvenance,
  movementCoefficientTable,
  namesNear,
  type SpeciesRow,
  shrinkageProvenance,
  shrinkageTable,
} from '../src/index.ts';

interface Finder {
  readonly find: (name: string) => SpeciesRow | null;
  readonly rows: readonly SpeciesRow[];
}

const finders: Record<string, Finder> = {
  findShrinkage: { find: findShrinkage, rows: shrinkageTable },
  findMovementCoefficients: { find: findMovementCoefficients, rows: movementCoefficientTable },
};

/** A name with its words in another order, case and punctuation. */
const disguised = (rows: readonly SpeciesRow[]) =>
  fc.constantFrom(...rows).chain(({ species }) => {
    const words = species.match(/[A-Za-z]+/g) ?? [];
    return fc.record({
      species: fc.constant(species),
      name: fc
        .tuple(
          fc.shuffledSubarray(words, { minLength: words.length }),
          fc.array(fc.constantFrom(' ', ', ', '-', ' / ', '; '), {
            minLength: words.length,
            maxLength: words.length,
          }),
          fc.boolean(),
        )
        .map(([order, gaps, shout]) => {
          const name = order.map((word, i) => word + gaps[i]).join('');
          return shout ? name.toUpperCase() : name.toLowerCase();
        }),
    });
  });

const sorted = (words: readonly string[]) =>
  [...new Set(words.map((word) => word.toLowerCase()))].sort().join();
describe.each(Object.entries(finders))('%s', (caller, { find, rows }) => {
  test('finds every row by its printed name', () => {
    expect(rows.length).toBeGreaterThan(100);
    for (const row of rows) expect(find(row.species)).toMatchObject(row);
  });

  test('finds every row whatever the order, case and punctuation of its words', () => {
    fc.assert(
      fc.property(disguised(rows), ({ species, name }) => {
        expect(find(name)?.species).toBe(species);
      }),
    );
  });

  test('gives a row whose name holds every word asked for, or null, or says which there are', () => {
    const word = fc.constantFrom(
      ...rows.flatMap(({ species }) => species.match(/[A-Za-z]+/g) ?? []),
      'zebra',
    );
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 3 }), (words) => {
        const holding = rows.filter(({ species }) =>
          [species, ...(tradeNames[species] ?? [])].some((name) =>
            words.every((one) => name.toLowerCase().includes(one.toLowerCase())),
          ),
        );
        try {
          const found = find(words.join(' '));
          if (found === null) return;
          expect(holding.map(({ species }) => species)).toContain(found.species);
        } catch (error) {
          expect(error).toBeInstanceOf(RangeError);
          expect((error as Error).message).toMatch(`${caller} requires name to mean one species, got "`);
          expect(holding.length).toBeGreaterThan(1);
        }
      }),
    );
  });

  test('answers null to any text that names no wood', () => {
    for (const name of ['', ' ', '12', 'wood', 'polyester', '木', 'c', 'and', 'spp'])
      expect(find(name)).toBeNull();
    fc.assert(
      fc.property(fc.string(), (name) => {
        expect(find(`zebra ${name}`)).toBeNull();
      }),
    );
  });

  test('refuses what is not text', () => {
    for (const name of [undefined, null, 7, ['sugar maple']]) {
      expect(() => find(name as unknown as string)).toThrow(
        new RegExp(`^${caller} requires name to be text, got `),
      );
    }
  });

  test('lists the candidates of a name that fits several', () => {
    expect(() => find('MAPLE')).toThrow(RangeError);
    for (const one of ['Maple, bigleaf', 'Maple, red', 'Maple, sugar'])
      expect(() => find('maple')).toThrow(one);
  });
});

test('the trade’s ways to write a name', () => {
  expect(findShrinkage('sugar maple')?.species).toBe('Maple, sugar');
  expect(findShrinkage('northern red oak')?.species).toBe('Oak, red, northern red');
  expect(findShrinkage('white oak')?.species).toBe('Oak, white, white');
  expect(findShrinkage('eastern red cedar')?.species).toBe('Cedar, eastern redcedar');
  expect(findMovementCoefficients('eastern redcedar')?.species).toBe('Cedar, eastern red');
  expect(findShrinkage('yellow poplar')?.species).toBe('Yellow-poplar');
  expect(findShrinkage('khaya')?.species).toBe('Mahogany, African (Khaya spp.)');
  expect(findShrinkage('Ipê')?.species).toBe('Ipe (Tabebuia spp.)');
  expect(findShrinkage('baldcypress')?.citation.source.year).toBe(1999);
  // A genus of many woods, of which the table has one.
  expect(findShrinkage('eucalyptus')).toBeNull();
  expect(findShrinkage('Eucalyptus marginata')?.species).toBe('Jarrah (Eucalyptus marginata)');
});

const aliases = [...new Set(Object.values(tradeNames).flat())];

test.each(aliases)('the trade’s name %s', (name) => {
  // Common practice, no source.
  for (const { find, rows } of Object.values(finders)) {
    expect(rows.filter(({ species }) => sorted(species.split(/\W+/)) === sorted(name.split(' ')))).toEqual(
      [],
    );
    const meant = rows.map(({ species }) => species).filter((species) => tradeNames[species]?.includes(name));
    expect(meant).not.toEqual([]);
    for (const written of [name, name.toUpperCase(), name.split(' ').reverse().join('-')]) {
      if (meant.length === 1) expect(find(written)?.species).toBe(meant[0]);
      else expect(() => find(written)).toThrow(`got "${written}": ${meant.join('; ')}`);
    }
  }
});

test('the trade’s names are still the usual ones', () => {
  // Common practice, no source.
  const usual = {
    'hard maple': 'Maple, sugar',
    'rock maple': 'Maple, sugar',
    'tulip poplar': 'Yellow-poplar',
    'sweet gum': 'Sweetgum',
    'bald cypress': 'Baldcypress',
    'honey locust': 'Honeylocust',
    'tan oak': 'Tanoak',
  };
  for (const [name, species] of Object.entries(usual)) {
    expect(findShrinkage(name)?.species).toBe(species);
    expect(findMovementCoefficients(name)?.species).toBe(species);
  }
  expect(() => findShrinkage('soft maple')).toThrow('Maple, red; Maple, silver');
});

test('names near to a name share a word with it', () => {
  const printed = movementCoefficientTable.map(({ species }) => species);
  expect(namesNear('Curly MAPLES', movementCoefficientTable)).toEqual(
    printed.filter((species) => species.startsWith('Maple')),
  );
  expect(namesNear('plywood', movementCoefficientTable)).toEqual([]);
  fc.assert(
    fc.property(fc.constantFrom(...movementCoefficientTable), fc.string(), ({ species }, more) => {
      expect(namesNear(`${more} ${species}`, movementCoefficientTable)).toContain(species);
    }),
  );
});

test('an answer names its table, its mark and what is wrong with it', () => {
  expect(findShrinkage('sugar maple')).toMatchObject({
    confirmed: 'text',
    tier: 'reprint',
    citation: { source: { id: 'wood-handbook-2010' }, at: 'Table 4-3, p. 4-6', confirmed: 'text' },
  });
  expect(findShrinkage('sugar maple')?.citation).not.toHaveProperty('erratum');
  expect(findMovementCoefficients('black oak')?.citation.erratum).toMatch('California black oak');
  expect(findMovementCoefficients('redwood old growth')?.citation.erratum).toMatch('22 %');
});

test('every erratum reaches the answers it is about', () => {
  const stated = (found: ReturnType<typeof findShrinkage> | ReturnType<typeof findMovementCoefficients>) =>
    found?.citation.erratum;
  const errata = [
    ...movementCoefficientProvenance.errata.map((one) => ({ ...one, find: findMovementCoefficients })),
    ...shrinkageProvenance.flatMap((table) => table.errata).map((one) => ({ ...one, find: findShrinkage })),
  ];
  expect(errata.length).toBeGreaterThan(3);
  for (const { rows, says, find } of errata) {
    for (const species of rows) expect(stated(find(species))).toContain(says);
  }
});
