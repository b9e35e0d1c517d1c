import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Field } from '../src/plan/field.ts';
import { planJsonSchema } from '../src/schema/json-schema.ts';
import { PlanFileError, parsePlan } from '../src/schema.ts';
import { exampleContents } from './example-files.ts';
import { type PlaceInFile, placesIn, valueAt, withPlace } from './fields.ts';

const published: unknown = JSON.parse(readFileSync(new URL('../plan.schema.json', import.meta.url), 'utf8'));

// A general JSON Schema validator, which knows nothing of zod.
const validate = new Ajv({ strict: true, strictTypes: false }).compile(published as object);
const schemaTakes = (content: unknown): boolean => validate(content);

function parserTakes(content: unknown): boolean {
  try {
    parsePlan(content);
    return true;
  } catch (error) {
    if (error instanceof PlanFileError) return false;
    throw error;
  }
}

const contents = exampleContents();
const names = [...contents.keys()];
const contentOf = (name: string) => contents.get(name) as Record<string, unknown>;

test('the published file is what the schema gives: npm run plan-schema', () => {
  expect(published).toEqual(JSON.parse(JSON.stringify(planJsonSchema())));
});

test.each(names)('the example %s is valid', (name) => {
  expect(validate(contentOf(name)), JSON.stringify(validate.errors)).toBe(true);
});

test('every place is explained', () => {
  const explained = (place: unknown): string[] => {
    if (typeof place !== 'object' || place === null) return [];
    const { properties = {} } = place as { properties?: Record<string, { description?: string }> };
    const own = Object.entries(properties).flatMap(([key, { description }]) => (description ? [] : [key]));
    return [...own, ...Object.values(place).flatMap(explained)];
  };
  expect(Object.keys((published as { properties: object }).properties)).toContain('glueUp');
  expect(explained(published)).toEqual([]);
});

/** Values that can't stand in a place, of the kinds that a JSON Schema can tell. */
function spoils({ key, field }: PlaceInFile, value: unknown): unknown[] {
  const length = key.endsWith('Mm');
  const wrongType = field.kind === 'list' || field.kind === 'figures' ? [{}, 'x', 7] : [[], [7]];
  const needed = field.optional || key === '' ? [] : [undefined];
  return [true, null, ...wrongType, ...needed, ...ofKind(field, length, value)];
}

function ofKind(field: Field, length: boolean, value: unknown): unknown[] {
  switch (field.kind) {
    case 'figure': {
      const { min, max, integer } = field.limits;
      const text = length ? ['35', 'wide', '', '1/2', '½'] : ['35', '1 in'];
      return [min - 1, min - 1e-9, max + 1, 1e300, ...text, ...(integer ? [min + 0.5] : [])];
    }
    case 'figures':
    case 'list': {
      const items = value as readonly unknown[];
      const many = Array.from({ length: field.maxItems + 1 }, () => items[0] ?? 1);
      return [many, ...(field.minItems > 0 ? [[]] : [])];
    }
    case 'text':
      return ['', '   ', 'x'.repeat(61), 'two\nlines', 'tab\there', '\u0085', 7];
    case 'choice':
      return ['another', '', ` ${field.names[0]}`, 7];
    case 'section':
      return [{ ...(value as object), unheardOf: 1 }, 'x', 7];
  }
}

describe('refuses what parsePlan refuses for its shape', () => {
  test.each(names)('in %s', (name) => {
    const content = contentOf(name);
    const spoilt = placesIn(content)
      .filter(({ path }) => path.length > 0)
      .flatMap((place) =>
        spoils(place, valueAt(content, place.path)).map((value) => ({ path: place.path, value })),
      );
    expect(spoilt.length).toBeGreaterThan(500);
    fc.assert(
      fc.property(fc.constantFrom(...spoilt), ({ path, value }) => {
        const wrong = withPlace(content, path, value);
        expect([parserTakes(wrong), schemaTakes(wrong)]).toEqual([false, false]);
      }),
      { numRuns: 300 },
    );
  });
});

test('takes all that parsePlan takes: no editor marks what can be planned', () => {
  const digits = fc.integer({ min: 0, max: 99 }).map(String);
  const number = fc.oneof(
    digits,
    fc.tuple(digits, digits).map((two) => two.join('.')),
    fc.tuple(digits, digits).map((two) => two.join(',')),
    fc.tuple(digits, fc.constantFrom('½', ' ¾', '-7/8', ' 1/2', '⅝')).map((two) => two.join('')),
    fc.constantFrom('½', '⅞', '1/3', '.5'),
  );
  const unit = fc.constantFrom(
    'in',
    'IN.',
    'inches',
    '"',
    '″',
    '”',
    'ft',
    "'",
    '′',
    'mm',
    'mm. ',
    'cm',
    'm',
    '',
  );
  const lengthText = fc
    .tuple(fc.constantFrom('', '-', '−', '+', ' '), number, fc.constantFrom('', ' ', '\u00a0'), unit)
    .map((parts) => parts.join(''));
  const anything = fc.oneof(lengthText, fc.jsonValue(), fc.string(), fc.integer(), fc.constant('choose'));
  const places = names.flatMap((name) =>
    placesIn(contentOf(name)).map(({ path }) => ({ content: contentOf(name), path })),
  );
  let taken = 0;
  fc.assert(
    fc.property(fc.constantFrom(...places), anything, ({ content, path }, value) => {
      const changed = withPlace(content, path, value);
      if (!parserTakes(changed)) return;
      taken += 1;
      expect(schemaTakes(changed)).toBe(true);
    }),
    { numRuns: 3000 },
  );
  expect(taken).toBeGreaterThan(50);
});

test('names its own place in a file, which parsePlan passes over', () => {
  const content = { $schema: '../plan.schema.json', ...contentOf(names[0] as string) };
  expect(schemaTakes(content)).toBe(true);
  expect(parsePlan(content)).not.toHaveProperty('$schema');
  expect(parsePlan(content)).toEqual(parsePlan(contentOf(names[0] as string)));
});
