import type { Rule } from './define-rule.ts';

/** An input that lies outside the range its source claims. */
export interface RangeNote {
  readonly input: string;
  readonly given: number;
  readonly valid: readonly [number, number];
  /** The same as a sentence. */
  readonly message: string;
}

/**
 * Compares inputs with the range that the rule's source claims. The number computed outside it stands; it just
 * no longer has the source behind it.
 *
 * @param rule - The rule's card.
 * @param input - Inputs that the rule accepts.
 * @returns One note for each input outside the claimed range; none where all is inside.
 * @example
 * ```ts
 * import { checkRange } from '@scantling/rules';
 * const card = { inputs: { moisturePct: { label: 'Moisture content', unit: '%' } }, valid: { moisturePct: [6, 14] } };
 * checkRange(card, { moisturePct: 20 })[0].message // => 'Moisture content 20 % is outside 6 to 14 %, the range that the source claims.'
 * checkRange(card, { moisturePct: 8 }) // => []
 * ```
 */
export function checkRange<I extends object, O>(
  rule: Pick<Rule<I, O>, 'inputs' | 'valid'>,
  input: I,
): RangeNote[] {
  const notes: RangeNote[] = [];
  for (const name of Object.keys(rule.valid ?? {}) as (keyof I & string)[]) {
    const valid = rule.valid?.[name];
    const spec = rule.inputs[name];
    if (!valid || spec.kind === 'choice') continue;
    const unit = spec.unit === '1' ? '' : ` ${spec.unit}`;
    for (const given of [input[name]].flat() as number[]) {
      if (given >= valid[0] && given <= valid[1]) continue;
      const message = `${spec.label} ${given}${unit} is outside ${valid[0]} to ${valid[1]}${unit}, the range that the source claims.`;
      notes.push({ input: name, given, valid, message });
    }
  }
  return notes;
}
