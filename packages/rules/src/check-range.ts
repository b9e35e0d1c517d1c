import type { Rule } from './define-rule.ts';

/** What a card says of its inputs and of where its source claims them. */
export type RuleRange<I, O> = Pick<Rule<I, O>, 'inputs' | 'valid'>;

/** An input that lies outside the range its source claims. */
export interface RangeNote {
  readonly input: string;
  readonly given: number;
  readonly valid: readonly [number, number];
  /** The same as a sentence, with the number given to four digits. */
  readonly message: string;
}

/**
 * Compares inputs with the range that the rule's source claims. The number computed outside it stands; it just
 * no longer has the source behind it.
 *
 * @param rule - The rule's card, or its range alone.
 * @param input - Inputs that the rule accepts.
 * @returns One note for each input outside the claimed range; none where all is inside.
 * @example
 * ```ts
 * import { checkRange } from '@scantling/rules';
 * const card = { inputs: { moisturePct: { label: 'Moisture content', unit: '%' } }, valid: { moisturePct: [6, 14] } };
 * checkRange(card, { moisturePct: 20 })[0].message // => 'Moisture content 20 % is outside 6 to 14 %, the range that the source claims.'
 * checkRange(card, { moisturePct: 27.524918021643558 })[0].message // => 'Moisture content 27.52 % is outside 6 to 14 %, the range that the source claims.'
 * checkRange(card, { moisturePct: 8 }) // => []
 * ```
 */
export function checkRange<I extends object, O>(
  rule: Pick<Rule<I, O>, 'inputs' | 'valid'>,
  input: I,
): RangeNote[] {
  const claimed = Object.entries(rule.valid ?? {}) as [keyof I & string, RangeNote['valid']][];
  return claimed.flatMap(([name, valid]) => {
    const spec = rule.inputs[name];
    if (spec.kind === 'choice') return [];
    const unit = spec.unit === '1' ? '' : ` ${spec.unit}`;
    const outside = (value: number) => !(value >= valid[0] && value <= valid[1]);
    return ([input[name]].flat() as number[]).filter(outside).map((given) => ({
      input: name,
      given,
      valid,
      // Rounding may take a number to the very limit that it is beyond; then it is said in full.
      message: `${spec.label} ${[Number(given.toPrecision(4)), given].find(outside)}${unit} is outside ${valid.join(' to ')}${unit}, the range that the source claims.`,
    }));
  });
}
