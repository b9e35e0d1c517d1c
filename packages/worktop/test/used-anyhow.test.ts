import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Plan, planWorktop } from '../src/index.ts';
import type { Field, Figure } from '../src/plan/field.ts';
import { planField } from '../src/plan/plan.ts';
import { usedBench } from './used-bench.ts';

type Path = readonly (string | number)[];

/** Every figure of a plan, with what it may be by itself. */
function figuresIn(given: unknown, field: Field, path: Path = []): { path: Path; field: Figure }[] {
  if (field.kind === 'figure') return typeof given === 'number' ? [{ path, field }] : [];
  if (typeof given !== 'object' || given === null) return [];
  const values = given as Record<string, unknown>;
  if (field.kind === 'list') {
    return Object.entries(values).flatMap(([i, item]) => figuresIn(item, field.of, [...path, Number(i)]));
  }
  if (field.kind !== 'section') return [];
  return Object.entries(field.fields).flatMap(([key, inner]) =>
    figuresIn(values[key], inner, [...path, key]),
  );
}

function withFigure(plan: Plan, path: Path, value: number): Plan {
  const copy = structuredClone(plan) as unknown as Record<string | number, unknown>;
  const parent = path.slice(0, -1).reduce((at, key) => at[key] as Record<string | number, unknown>, copy);
  parent[path.at(-1) as string] = value;
  return copy as unknown as Plan;
}

/** Anything that is no finite number, wherever it hides. */
const unsound = (value: unknown, path = 'result'): string[] =>
  typeof value === 'number'
    ? Number.isFinite(value)
      ? []
      : [path]
    : typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, item]) => unsound(item, `${path}.${key}`))
      : [];

const figures = figuresIn(usedBench(), planField);
const change = fc
  .constantFrom(...figures)
  .chain(({ path, field }) => numberArb(field.limits).map((value) => ({ path, value })));

test('a plan of any figures that may be is planned, with sound figures, or refused by a place in it', () => {
  expect(figures.length).toBeGreaterThan(60);
  let planned = 0;
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
      const plan = changes.reduce((so, { path, value }) => withFigure(so, path, value), usedBench());
      // More than this is a matter of time, not of soundness.
      fc.pre(plan.holes.columns * plan.holes.rows <= 400);
      try {
        const { asked, ...result } = planWorktop(plan);
        expect(unsound(result)).toEqual([]);
        planned += 1;
      } catch (error) {
        expect(error).toBeInstanceOf(RangeError);
        expect((error as Error).message).toMatch(
          /^planWorktop requires (top|seasons|base|holes|finish|template|accessories|load|cables)\b/,
        );
      }
    }),
    { numRuns: 150 },
  );
  expect(planned).toBeGreaterThan(15);
});
