import type { AnyRule, InputSpec } from '@scantling/rules';
import type { Ranges } from './answer.ts';

/** What a page needs of cards to see whether their sources cover a question: only where they claim a range. */
export function rangesOf(rules: readonly AnyRule[]): Ranges {
  const claimed = rules.flatMap(({ id, inputs, valid }) => {
    if (!valid) return [];
    const named = Object.keys(valid).map((name) => {
      const { kind, label, ...rest } = inputs[name] as InputSpec;
      return [name, { kind, label, unit: 'unit' in rest ? rest.unit : '1' }] as const;
    });
    return [[id, { valid, inputs: Object.fromEntries(named) }] as const];
  });
  return Object.fromEntries(claimed) as Ranges;
}
