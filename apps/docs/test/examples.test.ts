import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Facts, facets, passes, queryOf, readFilter, shownInWords } from '../src/examples/filter.ts';
import { workedExamples } from '../src/examples/worked-examples.ts';

const offered = { source: ['', 'a-book', 'a-table'], package: ['', 'grids'], known: ['', 'hand', 'memory'] };
const filterArb: fc.Arbitrary<Facts> = fc.record({
  source: fc.constantFrom(...offered.source),
  package: fc.constantFrom(...offered.package),
  known: fc.constantFrom(...offered.known),
});
const factsArb = filterArb.filter((facts) => facts.package !== '' && facts.known !== '');
const all: Facts = { source: '', package: '', known: '' };

describe('the filter of worked examples', () => {
  test('comes back from its own link', () => {
    fc.assert(
      fc.property(filterArb, (filter) => {
        expect(readFilter(queryOf(filter), offered)).toEqual({ filter, unknown: [] });
      }),
    );
    expect(queryOf(all)).toBe('');
    expect(queryOf({ ...all, source: 'a-book' })).toBe('?source=a-book');
  });

  test('takes from any link only what is offered, and says what is not', () => {
    expect(readFilter('?source=%3Cscript%3E&known=hand&__proto__=x', offered)).toEqual({
      filter: { ...all, known: 'hand' },
      unknown: ['source'],
    });
    fc.assert(
      fc.property(fc.string(), (query) => {
        const { filter } = readFilter(query, offered);
        expect(facets.every((facet) => offered[facet].includes(filter[facet]))).toBe(true);
      }),
    );
  });

  test('asking for more shows no more, asking for nothing shows all', () => {
    fc.assert(
      fc.property(factsArb, filterArb, (facts, filter) => {
        expect(passes(facts, all)).toBe(true);
        expect(passes(facts, filter)).toBe(
          facets.every((facet) => !filter[facet] || passes(facts, { ...all, [facet]: filter[facet] })),
        );
      }),
    );
    expect(passes({ source: 'a-book', package: 'grids', known: 'hand' }, { ...all, source: 'a-table' })).toBe(
      false,
    );
  });

  test('says how many are shown', () => {
    expect(shownInWords(9, 9, [])).toBe('All 9 worked examples are shown.');
    expect(shownInWords(1, 9, [])).toBe('1 of 9 worked examples is shown.');
    expect(shownInWords(0, 9, [])).toBe('None of 9 worked examples are shown.');
    expect(shownInWords(9, 9, ['source'])).toBe(
      'The link asks for a source that is not here. All 9 worked examples are shown.',
    );
  });
});

test('there are worked examples, each agrees, and each that is off in a printed digit says why', () => {
  expect(workedExamples.length).toBeGreaterThan(25);
  for (const { rule, number, figures, because } of workedExamples) {
    const name = `${rule.id}, example ${number}`;
    expect(figures.length, name).toBeGreaterThan(0);
    expect(
      figures.filter(({ agrees }) => !agrees),
      name,
    ).toEqual([]);
    if (figures.some(({ ofLastDigit }) => ofLastDigit > 1 + 1e-9)) expect(because, name).toMatch(/\S.*\.$/s);
  }
});
