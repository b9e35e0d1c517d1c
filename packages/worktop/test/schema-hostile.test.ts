import { describe, expect, test } from 'vitest';
import { PlanFileError, parsePlan } from '../src/schema.ts';
import { exampleContents } from './example-files.ts';
import { type PlaceInFile, placesIn, withPlace } from './fields.ts';

/** The messages that a file is refused with, which have to come soon and be short. */
function refusal(content: unknown): readonly string[] {
  const start = performance.now();
  try {
    parsePlan(content);
    return [];
  } catch (error) {
    if (!(error instanceof PlanFileError)) throw error;
    expect(error.message.length).toBeLessThan(20_000);
    for (const problem of error.problems) expect(problem).toMatch(/^(the plan|[a-z][A-Za-z.[\]\d]+): /);
    return error.problems;
  } finally {
    expect(performance.now() - start).toBeLessThan(2000);
  }
}

const content = exampleContents().get('bindery-bench.json') as Record<string, unknown>;
const places = placesIn(content).filter(({ path }) => path.length > 0);
const placesOf = (...kinds: PlaceInFile['field']['kind'][]) =>
  places.filter(({ field }) => kinds.includes(field.kind));
const dotted = ({ path }: PlaceInFile) => path.join('.').replace(/\.(\d+)/g, '[$1]');

describe('text of five million characters', () => {
  const long = 'x'.repeat(5_000_000);
  const blank = ' '.repeat(5_000_000);

  test('is refused in every place', () => {
    for (const place of places) {
      for (const text of [long, blank]) {
        const problems = refusal(withPlace(content, place.path, text));
        expect(problems.some((problem) => problem.startsWith(`${dotted(place)}: `))).toBe(true);
      }
    }
  });

  test('is refused as a key, of which the first 40 characters are shown', () => {
    expect(refusal({ ...content, [long]: 1 })).toEqual([
      expect.stringMatching(/^the plan: unknown key "x{40}"; known here: version, name, top, /),
    ]);
  });
});

test('a million items are refused in every list, by their number', () => {
  const lists = placesOf('list', 'figures');
  expect(lists.length).toBeGreaterThan(10);
  const million = new Array<unknown>(1_000_000).fill(0);
  for (const place of lists) {
    expect(refusal(withPlace(content, place.path, million))).toEqual([
      expect.stringMatching(/: expected a list of \d+ to \d+, got a list of 1000000$/),
    ]);
  }
});

test('a hundred thousand unknown keys are counted, and a few named', () => {
  const many = Object.fromEntries(Array.from({ length: 100_000 }, (_, i) => [`key${i}`, i]));
  const problems = refusal({ ...content, ...many });
  expect(problems).toHaveLength(6);
  expect(problems.at(-1)).toBe('the plan: unknown keys, 99995 more');
});

test('nesting without end is refused in every place', () => {
  const deep = (levels: number) => {
    let value: unknown = 1;
    for (let i = 0; i < levels; i += 1) value = i % 2 ? [value] : { members: value };
    return value;
  };
  for (const { path } of places) {
    expect(refusal(withPlace(content, path, deep(100_000))).length).toBeGreaterThan(0);
  }
  expect(refusal(deep(100_000)).length).toBeGreaterThan(0);
});

test('a number beyond all doubles is no number of millimetres', () => {
  const text = JSON.stringify(content).replace('"width":640', '"width":1e309');
  expect(refusal(JSON.parse(text))).toEqual([
    expect.stringMatching(/^top\.width: expected a length between 1 and 10000 mm.*got Infinity$/),
  ]);
  for (const { path } of placesOf('figure')) {
    for (const value of [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN]) {
      expect(refusal(withPlace(content, path, value))).toHaveLength(1);
    }
  }
});

describe('names that every object knows', () => {
  const known = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype', 'valueOf'];

  test('are unknown keys in every section, and change no object', () => {
    for (const name of known) {
      for (const { path } of [{ path: [] }, ...placesOf('section')]) {
        const section = path.reduce((at, key) => at[key] as never, content);
        const text = JSON.stringify(section).replace('{', `{"${name}":{"polluted":1},`);
        const spoilt = withPlace(content, path, JSON.parse(text));
        expect(refusal(spoilt)).toEqual([
          expect.stringMatching(
            new RegExp(`^[\\w. [\\]]+: unknown key "${name}"; (known here|did you mean)`),
          ),
        ]);
      }
    }
    expect({}).not.toHaveProperty('polluted');
  });

  test('are no choice, no version and no unit', () => {
    for (const name of known) {
      expect(refusal(withPlace(content, ['top', 'cut'], name))).toHaveLength(1);
      expect(refusal(withPlace(content, ['version'], name))).toHaveLength(1);
      expect(refusal(withPlace(content, ['top', 'width'], `5 ${name}`))).toHaveLength(1);
    }
  });
});
