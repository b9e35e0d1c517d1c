/**
 * Zod schemas derived from the cards of rules, for forms, links and files. Needs `zod`, an optional peer.
 *
 * @module rules/zod
 */
import * as z from 'zod/mini';
import type { InputSpec, Rule } from './define-rule.ts';
import type { Limits } from './require.ts';

function numberSchema({ min, max, integer }: Limits): z.ZodMiniType<number> {
  const allowed = `expected ${integer ? 'a whole number ' : ''}between ${min} and ${max}`;
  return z
    .number({ error: allowed })
    .check(
      z.minimum(min, allowed),
      z.maximum(max, allowed),
      ...(integer ? [z.refine(Number.isInteger, allowed)] : []),
    );
}

function specSchema(spec: InputSpec): z.ZodMiniType {
  switch (spec.kind) {
    case 'number':
      return numberSchema(spec);
    case 'numbers': {
      const count = `expected ${spec.minItems} to ${spec.maxItems} numbers`;
      return z
        .array(numberSchema(spec), { error: count })
        .check(z.minLength(spec.minItems, count), z.maxLength(spec.maxItems, count));
    }
    case 'choice': {
      const names = Object.keys(spec.options);
      return z.enum(names, { error: `expected one of ${names.join(', ')}` });
    }
  }
}

/**
 * The schema of a rule's inputs. It accepts exactly what the rule's function accepts.
 *
 * @param rule - The rule's card.
 * @returns A zod schema; what it parses can be handed to `rule.compute`.
 * @example
 * ```ts
 * import { inputSchema } from '@scantling/rules/zod';
 * const card = { inputs: { widthMm: { kind: 'number', min: 0, max: 100 } } };
 * inputSchema(card).safeParse({ widthMm: 20 }).success // => true
 * inputSchema(card).safeParse({ widthMm: Number.NaN }).success // => false
 * ```
 */
export function inputSchema<I, O>(rule: Pick<Rule<I, O>, 'inputs' | 'requires'>): z.ZodMiniType<I> {
  const shape = Object.fromEntries(
    Object.entries<InputSpec>(rule.inputs).map(([name, spec]) => [name, specSchema(spec)]),
  );
  const object = z.object(shape, { error: 'expected an object' }) as unknown as z.ZodMiniType<I>;
  return (rule.requires ?? []).reduce(
    (schema, { says, holds }) => schema.check(z.refine((input) => holds(input as I), says)),
    object,
  );
}
