import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planWorktop } from '../src/index.ts';
import type { Field } from '../src/plan/field.ts';
import { PlanFileError, parsePlan } from '../src/schema.ts';
import { exampleContents } from './example-files.ts';
import { placesIn, withPlace } from './fields.ts';

/** What may stand in a place for its shape, up to its very limits: whether it goes with the rest is another matter. */
function allowed(field: Field): fc.Arbitrary<unknown> {
  const open = field.open ? [fc.constant('choose')] : [];
  const left = field.optional ? [fc.constant(undefined)] : [];
  switch (field.kind) {
    case 'figure': {
      const { min, max, integer } = field.limits;
      const limits = fc.constantFrom(min, max);
      const within = integer ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true });
      return fc.oneof(limits, within, ...open, ...left);
    }
    case 'choice':
      return fc.oneof(fc.constantFrom(...field.names), ...left);
    default:
      return fc.oneof(fc.constantFrom('maple', 'left leg frame', 'screw left back', []), ...open, ...left);
  }
}

const anything = fc.oneof(
  fc.jsonValue(),
  fc.double(),
  fc.string(),
  fc.constantFrom('0 in', '-5 mm', '1e309', '3 ft 14 in', '٣ mm', '<script>', 0, -1, 1e308, 5e-324),
);

test('any spoilt value gives a plan or a clear refusal, never another kind of error', () => {
  const places = [...exampleContents()].flatMap(([file, content]) =>
    placesIn(content).map((place) => ({ file, content, ...place })),
  );
  const spoilt = fc
    .constantFrom(...places)
    .chain(({ file, content, path, field }) =>
      fc
        .oneof(allowed(field), anything)
        .map((value) => ({ file, path, value, content: withPlace(content, path, value) })),
    );
  let planned = 0;
  fc.assert(
    fc.property(spoilt, ({ content }) => {
      try {
        const { checks } = planWorktop(parsePlan(content));
        expect(checks.flatMap(({ says }) => says).join('\n')).not.toMatch(/NaN|undefined|Infinity/);
        planned += 1;
      } catch (error) {
        if (error instanceof PlanFileError) {
          for (const problem of error.problems) expect(problem).toMatch(/^(the plan|[a-z][A-Za-z.[\]\d]+): /);
        } else if (error instanceof RangeError) {
          expect(error.message).toMatch(/^planWorktop requires (top|seasons)\./);
        } else throw error;
      }
    }),
    { numRuns: 300 },
  );
  expect(planned).toBeGreaterThan(50);
});
