import type { AnyRule, OutputSpec } from '@scantling/rules';
import type { AnyCalculation } from './calculation.ts';
import { fieldTexts } from './field.ts';

/** The calculator that a rule's card makes by itself, with the inputs of its first example unless others are given. */
export function calculationOf(rule: AnyRule, given: object = rule.examples[0]?.given): AnyCalculation {
  return {
    fields: rule.inputs,
    first: fieldTexts(rule, given),
    compute(input) {
      const output = rule.compute(input);
      return {
        figures: Object.entries<OutputSpec>(rule.outputs).map(([name, { label, unit }]) => ({
          name,
          label,
          value: output[name],
          unit,
          exact: rule.basis === 'exact',
        })),
        steps: [{ what: rule.title, rule: rule.id, given: input, gives: output }],
      };
    },
  };
}
