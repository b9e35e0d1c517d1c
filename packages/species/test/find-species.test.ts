import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findSpecies, type Wood, woods } from '../src/index.ts';

const idsOf = (text: string) => {
  const { species, candidates } = findSpecies(text);
  return species ? [species.id] : candidates.map(({ id }) => id);
};

const plain = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
const wordsIn = (name: string): string[] => plain(name).match(/[a-z]+/g) ?? [];

const botanical = ({ botanicalName }: Wood) => (botanicalName ? [botanicalName.name] : []);
const namesOf = (wood: Wood) => [
  wood.id,
  wood.commonName,
  ...botanical(wood),
  ...wood.printedAs,
  ...wood.aliases,
];
const names = woods.flatMap((wood) => namesOf(wood).map((name) => ({ wood, name })));

/** A name with its words in another order, case, number, punctuation and accents. */
const disguised = (name: string) => {
  const words = wordsIn(name);
  const gap = fc.constantFrom(' ', ', ', '-', ' / ', '; ', ' (', ') ', '’ ');
  return fc
    .tuple(
      fc.shuffledSubarray(words, { minLength: words.length }),
      fc.array(gap, { minLength: words.length, maxLength: words.length }),
      fc.boolean(),
      fc.boolean(),
    )
    .map(([order, gaps, shout, accents]) => {
      const text = order.map((word, i) => `${gaps[i]}${word}`).join('');
      const marked = accents ? text.replaceAll('e', 'é').replaceAll('o', 'ö') : text;
      return shout ? marked.toUpperCase() : marked;
    });
};

describe('findSpecies', () => {
  test('finds every wood by each of its names, alone or among the candidates', () => {
    expect(names.length).toBeGreaterThan(700);
    for (const { wood, name } of names) expect([name, ...idsOf(name)]).toContain(wood.id);
  });

  test('means one wood by each common name and each name in a table, but for those of several woods', () => {
    const own = names.filter(({ wood, name }) =>
      [wood.id, wood.commonName, ...wood.printedAs].includes(name),
    );
    const shared = new Set(
      own.flatMap(({ wood, name }) => (findSpecies(name).species === wood ? [] : [name])),
    );
    expect([...shared]).toEqual([
      'Red oak: water, laurel, willow',
      'white-oak',
      'white oak',
      'Oak, white, white',
      'Oak, white',
      'Douglas-fir',
    ]);
    expect(idsOf('white oak')).toEqual(['commercial-white-oak', 'white-oak']);
  });

  test('does not mind order, case, punctuation and accents', () => {
    const some = fc.constantFrom(...names).chain(({ name }) => fc.tuple(fc.constant(name), disguised(name)));
    fc.assert(
      fc.property(some, ([name, text]) => {
        expect(idsOf(text)).toEqual(idsOf(name));
      }),
    );
  });

  test('does not mind the plural', () => {
    const last = (plural: (word: string) => string) => (name: string) => name.replace(/[a-z]+$/, plural);
    const plural = last((word) => {
      if (word.endsWith('y')) return `${word.slice(0, -1)}ies`;
      return /(ch|sh|x)$/.test(word) ? `${word}es` : `${word}s`;
    });
    const singular = woods.filter(({ commonName }) => !commonName.endsWith('s'));
    expect(singular.length).toBeGreaterThan(160);
    for (const { commonName } of singular) expect(idsOf(plural(commonName))).toEqual(idsOf(commonName));
    expect(idsOf('ashes')).toEqual(idsOf('ash'));
  });

  test('gives candidates only of which one name holds all the words', () => {
    const word = fc.constantFrom('zebra', ...names.flatMap(({ name }) => wordsIn(name)));
    let several = 0;
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 3 }), (words) => {
        const { species, candidates } = findSpecies(words.join(' '));
        expect(candidates).not.toHaveLength(1);
        expect(new Set(candidates).size).toBe(candidates.length);
        if (species) expect(candidates).toEqual([]);
        several += candidates.length;
        for (const wood of species ? [species] : candidates) {
          // A plural as printed, such as lauans, finds the singular too.
          const own = [`${wood.commonName} ${botanical(wood)}`, ...namesOf(wood)].map(plain);
          const holds = own.some((name) => words.every((one) => name.includes(one.replace(/s$/, ''))));
          expect([wood.id, words, holds]).toEqual([wood.id, words, true]);
        }
      }),
    );
    expect(several).toBeGreaterThan(0);
  });

  const isName = (one: string) =>
    woods.some((wood) => namesOf(wood).some((name) => wordsIn(name).join() === one));

  test('leaves out no wood whose common name holds the word, where none is just that and none is of that kind', () => {
    const everyWord = [...new Set(woods.flatMap(({ commonName }) => wordsIn(commonName)))];
    const kinds = woods.flatMap(({ commonName, printedAs }) => [
      wordsIn(commonName).at(-1),
      ...printedAs.map((name) => wordsIn(name.split(/[,:(]/)[0] ?? '').at(-1)),
    ]);
    const free = everyWord.filter((one) => !isName(one) && !kinds.includes(one));
    expect(free.length).toBeGreaterThan(50);
    for (const one of free)
      for (const { id, commonName } of woods)
        if (wordsIn(commonName).includes(one)) expect([one, ...idsOf(one)]).toContain(id);
  });

  test('gives all woods of a kind, and none that only has the word', () => {
    const kinds = ['cedar', 'spruce', 'willow', 'oak', 'maple', 'pine', 'elm', 'ash', 'birch', 'hickory'];
    for (const kind of kinds) {
      const found = idsOf(kind);
      expect(found.length).toBeGreaterThan(1);
      for (const { id, commonName, printedAs } of woods) {
        const ofKind =
          wordsIn(commonName.replace('redcedar', 'cedar')).at(-1) === kind ||
          printedAs.some((name) => wordsIn(name)[0] === kind);
        expect([id, found.includes(id)]).toEqual([id, ofKind]);
      }
    }
  });

  const beside = [
    ...['quartersawn', 'Quarter-sawn', 'quartered', 'riftsawn', 'rift', 'flatsawn', 'plain sawn', 'FLAT CUT'],
    ...['curly', 'birdseye', 'bird’s-eye', 'figured', 'tiger', 'quilted', 'spalted'],
    ...['wood', 'lumber', 'timbers', 'board', 'boards', 'planks', 'slabs', 'solid'],
  ];

  test('passes over words of cut, figure and stock', () => {
    const words = fc.array(fc.constantFrom(...beside), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(fc.constantFrom(...names), words, words, ({ name }, before, after) => {
        expect(idsOf([...before, name, ...after].join(' '))).toEqual(idsOf(name));
      }),
    );
    for (const word of beside) expect(findSpecies(word)).toEqual({ species: null, candidates: [] });
    expect(idsOf('curly zebra boards')).toEqual([]);
  });

  test('takes a genus for no single species of it', () => {
    const genera = new Set(woods.flatMap((wood) => botanical(wood).map((name) => name.split(' ')[0] ?? '')));
    for (const genus of genera) {
      const { species } = findSpecies(genus);
      if (!species || isName(genus.toLowerCase())) continue;
      // Catalpa is the common name too.
      const isCommon = wordsIn(species.commonName).includes(genus.toLowerCase());
      const isWhole = species.botanicalName?.name === `${genus} spp.`;
      expect([genus, isCommon || isWhole]).toEqual([genus, true]);
    }
    expect(genera.size).toBeGreaterThan(60);
    expect(idsOf('Acer')).toHaveLength(6);
  });

  test('answers neither to text that names no wood', () => {
    for (const text of ['', ' ', '12', 'polyester', '木', 'c', 'and', 'spp', 'saccharum', '('])
      expect(findSpecies(text)).toEqual({ species: null, candidates: [] });
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(findSpecies(`zebra ${text}`)).toEqual({ species: null, candidates: [] });
      }),
    );
  });

  test('refuses what is not text', () => {
    for (const text of [undefined, null, 7, ['sugar maple']])
      expect(() => findSpecies(text as unknown as string)).toThrow(
        /^findSpecies requires text to be text, got /,
      );
  });

  test.each([
    // Common practice, no source.
    ['hard maple', ['sugar-maple']],
    ['Rock Maple', ['sugar-maple']],
    ['soft maple', ['bigleaf-maple', 'red-maple', 'silver-maple']],
    ['tulip poplar', ['yellow-poplar']],
    ['tulip', ['yellow-poplar']],
    // Names that the trade shares among woods, some of which stand in no table.
    ['tulipwood', []],
    ['whitewood', []],
    ['red birch', []],
    ['eucalyptus', []],
    ['Eucalyptus marginata', ['jarrah']],
    ['poplar', ['yellow-poplar']],
    ['aromatic cedar', ['eastern-redcedar']],
    ['eastern red cedar', ['eastern-redcedar']],
    ['Oregon pine', ['coast-douglas-fir']],
    ['Douglas fir', ['coast-douglas-fir', 'interior-north-douglas-fir', 'interior-west-douglas-fir']],
    ['doug fir', ['coast-douglas-fir', 'interior-north-douglas-fir', 'interior-west-douglas-fir']],
    ['Douglas-fir, Coast-type', ['coast-douglas-fir']],
    ['Honduran mahogany', ['true-mahogany']],
    ['Alaskan yellow cedar', ['yellow-cedar']],
    ['luan', ['dark-red-lauan', 'light-red-lauan', 'white-lauan']],
    ['grey elm', ['american-elm']],
    ['grey birch', ['gray-birch']],
    ['larch', ['western-larch', 'tamarack']],
    ['locust', ['honeylocust', 'black-locust']],
    ['quartersawn white oak', ['commercial-white-oak', 'white-oak']],
    ['rift red oak', ['commercial-red-oak', 'northern-red-oak']],
    ['curly maple', idsOf('maple')],
    ['birdseye hard maple', ['sugar-maple']],
    ['walnut lumber', ['black-walnut']],
    ['maple wood', idsOf('maple')],
    ['laurel', ['laurel-oak', 'water-oak', 'willow-oak']],
    ['Lawson’s cypress', ['port-orford-cedar']],
    ['linden', ['american-basswood']],
    ['basswood', ['american-basswood']],
    ['planetree', ['american-sycamore']],
    ['white walnut', ['butternut']],
    ['walnut', ['black-walnut']],
    ['cherry', ['black-cherry']],
    ['persimmon', ['common-persimmon']],
    ['southern yellow pine', ['loblolly-pine', 'longleaf-pine', 'shortleaf-pine', 'slash-pine']],
    ['red oak', ['commercial-red-oak', 'northern-red-oak']],
    ['khaya', ['african-mahogany']],
    ['mahogany', ['true-mahogany']],
    ['Philippine mahogany', ['dark-red-lauan', 'light-red-lauan', 'white-lauan']],
    ['redwood', ['old-growth-redwood', 'young-growth-redwood']],
    // As the botanical names stand in their sources.
    ['Quercus rubra', ['northern-red-oak']],
    ['PINUS taeda', ['loblolly-pine']],
    ['Swietenia', []],
    ['Tabebuia', ['ipe']],
    ['Carya', idsOf('hickory')],
    ['Swietenia macrophylla', ['true-mahogany']],
    ['Sequoia sempervirens', ['old-growth-redwood', 'young-growth-redwood']],
  ])('knows %s', (text, ids) => {
    expect(idsOf(text)).toEqual(ids);
  });
});
