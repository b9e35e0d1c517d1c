import type { AnyRule } from '@scantling/rules';
import type { Known } from '../confirmation.ts';
import { examplesOf } from '../examples/worked-examples.ts';

/** How far a rule is from the figures of its worked examples. */
export interface RuleAccuracy {
  readonly rule: AnyRule;
  readonly figures: number;
  /** How each of these figures is known. */
  readonly known: readonly Known[];
  /** Deviations where 1 is half of the last digit expected: up to 1 the two are the same as printed. */
  readonly worst: number;
  readonly mean: number;
  readonly withinLastDigit: number;
}

export function ruleAccuracy(rule: AnyRule): RuleAccuracy {
  const examples = examplesOf(rule);
  const off = examples.flatMap(({ figures }) => figures.map(({ ofLastDigit }) => ofLastDigit));
  if (off.length === 0) throw new Error(`${rule.id} has no worked example.`);
  return {
    rule,
    figures: off.length,
    known: examples.flatMap(({ figures, known }) => figures.map(() => known)),
    worst: Math.max(...off),
    mean: off.reduce((sum, one) => sum + one, 0) / off.length,
    withinLastDigit: off.filter(isWithinLastDigit).length,
  };
}

/** Whether a deviation leaves every printed digit as it is; a hair is left for the computer's own rounding. */
export const isWithinLastDigit = (ofLastDigit: number): boolean => ofLastDigit <= 1 + 1e-9;
