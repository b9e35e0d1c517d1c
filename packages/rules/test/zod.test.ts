import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as z from 'zod';
import {
  type AnyRule,
  type InputSpec,
  type Limits,
  requireChoice,
  requireInputs,
  requireList,
  requireThat,
} from '../src/index.ts';
import { inputSchema } from '../src/zod.ts';

const names = ['aMm', 'bMm', 'cMm'];

const limitsArb: fc.Arbitrary<Limits> = fc
  .tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: 1, max: 50 }), fc.boolean())
  .map(([min, span, integer]) => ({ min, max: min + span, ...(integer && { integer }) }));

const specArb: fc.Arbitrary<InputSpec> = fc.oneof(
  limitsArb.map((limits) => ({ kind: 'number' as const, label: 'A', unit: 'mm' as const, ...limits })),
  fc.tuple(limitsArb, fc.nat(3), fc.nat(3)).map(([limits, minItems, more]) => ({
    kind: 'numbers' as const,
    label: 'A',
    unit: 'mm' as const,
    minItems,
    maxItems: minItems + more,
    ...limits,
  })),
  fc.uniqueArray(fc.constantFrom('ash', 'elm', 'oak', 'toString', ''), { minLength: 1 }).map((options) => ({
    kind: 'choice' as const,
    label: 'A',
    options: Object.fromEntries(options.map((option) => [option, option])),
  })),
);

const inputsArb = fc
  .tuple(specArb, specArb, specArb)
  .map((specs) => Object.fromEntries(names.map((name, i) => [name, specs[i] as InputSpec])));

const valueArb = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: -60, max: 110 }) },
  { weight: 2, arbitrary: fc.double({ min: -60, max: 110 }) },
  { weight: 4, arbitrary: fc.array(fc.integer({ min: -60, max: 110 }), { maxLength: 7 }) },
  { weight: 4, arbitrary: fc.constantFrom('ash', 'elm', 'oak', 'toString', '__proto__', '') },
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -0, null, undefined, true, 5n),
  fc.anything(),
);

/** A function that refuses as every rule's function must, written with the helpers that rules use. */
function refuse(inputs: Record<string, InputSpec>, input: Record<string, unknown>): void {
  for (const [name, spec] of Object.entries(inputs)) {
    if (spec.kind === 'choice') requireChoice('demo', name, input[name], Object.keys(spec.options));
    else if (spec.kind === 'numbers') requireList('demo', name, input[name], spec);
    else requireInputs('demo', input as Record<string, number>, { [name]: spec });
  }
}

const takes = (attempt: () => void) => {
  try {
    attempt();
    return true;
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    return false;
  }
};

const card = (inputs: Record<string, InputSpec>, requires?: AnyRule['requires']) =>
  ({ inputs, ...(requires && { requires }) }) as Pick<AnyRule, 'inputs' | 'requires'>;

test('the schema takes exactly what the helpers let through', () => {
  let taken = 0;
  let refused = 0;
  fc.assert(
    fc.property(specArb, valueArb, (spec, value) => {
      const allowed = takes(() => refuse({ a: spec }, { a: value }));
      expect(inputSchema(card({ a: spec })).safeParse({ a: value }).success).toBe(allowed);
      if (allowed) taken += 1;
      else refused += 1;
    }),
    { numRuns: 4000 },
  );
  expect(Math.min(taken, refused)).toBeGreaterThan(200);
});

test('one refused input is enough, and only what is named is asked for', () => {
  fc.assert(
    fc.property(inputsArb, fc.tuple(valueArb, valueArb, valueArb), (inputs, values) => {
      const input = { ...Object.fromEntries(names.map((name, i) => [name, values[i]])), other: 'thing' };
      const allowed = takes(() => refuse(inputs, input));
      expect(inputSchema(card(inputs)).safeParse(input).success).toBe(allowed);
    }),
    { numRuns: 1000 },
  );
});

const between = { kind: 'number', label: 'A', unit: 'mm', min: 0, max: 100 } as const;
const pair = card({ minMm: between, maxMm: between }, [
  { says: 'minMm below maxMm', holds: ({ minMm, maxMm }) => minMm < maxMm },
]);

test('conditions between inputs are the schema’s too', () => {
  fc.assert(
    fc.property(fc.double({ min: -5, max: 105 }), fc.double({ min: -5, max: 105 }), (minMm, maxMm) => {
      const allowed = takes(() => {
        requireInputs('demo', { minMm, maxMm }, { minMm: between, maxMm: between });
        requireThat('demo', minMm < maxMm, 'minMm below maxMm');
      });
      expect(inputSchema(pair).safeParse({ minMm, maxMm }).success).toBe(allowed);
    }),
  );
});

test('what it takes it hands on unchanged', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 49, noNaN: true }),
      fc.double({ min: 50, max: 100, noNaN: true }),
      (minMm, maxMm) => {
        expect(inputSchema(pair).parse({ minMm, maxMm })).toEqual({ minMm, maxMm });
      },
    ),
  );
});

test('what it says tells people what is allowed', () => {
  const schema = inputSchema(
    card({
      lengthMm: between,
      count: { ...between, kind: 'number', integer: true },
      readingsMm: { ...between, kind: 'numbers', minItems: 1, maxItems: 3 },
      cut: { kind: 'choice', label: 'Cut', options: { flatsawn: 'Flatsawn', quartersawn: 'Quartersawn' } },
    }),
  );
  const result = schema.safeParse({ lengthMm: 101, count: 1.5, readingsMm: [], cut: 'curly' });
  expect(result.error?.issues.map(({ path, message }) => [path.join('.'), message])).toEqual([
    ['lengthMm', 'expected between 0 and 100'],
    ['count', 'expected a whole number between 0 and 100'],
    ['readingsMm', 'expected 1 to 3 numbers'],
    ['cut', 'expected one of flatsawn, quartersawn'],
  ]);
  expect(inputSchema(pair).safeParse({ minMm: 5, maxMm: 3 }).error?.issues[0]?.message).toBe(
    'minMm below maxMm',
  );
  expect(schema.safeParse(undefined).error?.issues[0]?.message).toBe('expected an object');
});

test('it is a schema of zod’s, so that JSON Schema can be made from it', () => {
  const schema = z.toJSONSchema(inputSchema(card({ lengthMm: between })) as unknown as z.ZodType);
  expect(schema).toMatchObject({
    type: 'object',
    required: ['lengthMm'],
    properties: { lengthMm: { type: 'number', minimum: 0, maximum: 100 } },
  });
});
