import type { AnyRule, InputSpec } from '@scantling/rules';
import fc from 'fast-check';

export type Input = Record<string, unknown>;

const numberArb = ({ min, max, integer }: { min: number; max: number; integer?: true }) =>
  integer
    ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) })
    : fc.oneof(
        { weight: 8, arbitrary: fc.double({ min, max, noNaN: true }).map((x) => x + 0) },
        { weight: 1, arbitrary: fc.constantFrom(min, max) },
      );

const specArb = (spec: InputSpec): fc.Arbitrary<unknown> => {
  switch (spec.kind) {
    case 'number':
      return numberArb(spec);
    case 'numbers':
      return fc.array(numberArb(spec), { minLength: spec.minItems, maxLength: Math.min(spec.maxItems, 12) });
    case 'choice':
      return fc.constantFrom(...Object.keys(spec.options));
  }
};

/** Inputs anywhere within a rule's limits, its ends included, whether or not its other conditions hold. */
export const limitsArb = (rule: AnyRule): fc.Arbitrary<Input> =>
  fc.record(
    Object.fromEntries(Object.entries<InputSpec>(rule.inputs).map(([name, spec]) => [name, specArb(spec)])),
  );

/** Inputs that a rule must answer. */
export const inputArb = (rule: AnyRule): fc.Arbitrary<Input> =>
  limitsArb(rule).filter((input) => (rule.requires ?? []).every(({ holds }) => holds(input)));
