import type { AnyRule, InputSpec, Limits } from '@scantling/rules';
import fc from 'fast-check';

export type Input = Record<string, unknown>;

/** After so many refused inputs in a row a rule's conditions leave nothing to check. */
const MOST_REFUSALS = 20_000;

const STEPS = 2 ** 30;

/** Numbers spread evenly over the limits, so that a fault at a workshop's sizes is met; then any, then the ends. */
export function numberArb({ min, max, integer }: Limits): fc.Arbitrary<number> {
  const ends = [min, max, ...(min <= 0 && max >= 0 ? [0, -0] : [])].filter((x) => !(integer && x % 1));
  const even = integer
    ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) })
    : fc.nat(STEPS).map((step) => Math.min(max, min + ((max - min) * step) / STEPS));
  const any = integer ? even : fc.double({ min, max, noNaN: true });
  const inside = fc.oneof({ weight: 3, arbitrary: even }, { weight: 1, arbitrary: any });
  if (ends.length === 0) return inside;
  return fc.oneof({ weight: 8, arbitrary: inside }, { weight: 1, arbitrary: fc.constantFrom(...ends) });
}

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

/** Whether all of a rule's conditions between inputs hold. */
export const isLawful = (rule: AnyRule, input: Input) =>
  (rule.requires ?? []).every(({ holds }) => holds(input));

/** Inputs anywhere within a rule's limits, its ends and −0 included, whether or not its other conditions hold. */
export const limitsArb = (rule: AnyRule): fc.Arbitrary<Input> =>
  fc.record(
    Object.fromEntries(Object.entries<InputSpec>(rule.inputs).map(([name, spec]) => [name, specArb(spec)])),
    { noNullPrototype: true },
  );

/** Inputs that a rule must answer. */
export const inputArb = (rule: AnyRule): fc.Arbitrary<Input> => {
  let refusals = 0;
  return limitsArb(rule).filter((input) => {
    if (isLawful(rule, input)) refusals = 0;
    else if (++refusals > MOST_REFUSALS) {
      throw new Error(`${rule.id}: the conditions refuse ${MOST_REFUSALS} inputs in a row`);
    }
    return refusals === 0;
  });
};
