import type { AnyRule, Citation } from '@scantling/rules';
import { fieldTexts } from '../calculator/field.ts';
import { howKnown, type Known } from '../confirmation.ts';
import { ruleHref, rules } from '../registry.ts';
import { type Comparison, compareExample } from '../worked.ts';

/** A worked example of a rule with its figures beside ours. */
export interface WorkedExample {
  readonly rule: AnyRule;
  /** Its place among the examples of its rule, from 1. */
  readonly number: number;
  readonly figures: readonly Comparison[];
  /** Where it stands, or the arithmetic. */
  readonly from: Citation | { readonly workedByHand: string };
  readonly known: Known;
  /** Why more than the last printed digit is allowed, where it is. */
  readonly because: string | undefined;
  /** Its rule's calculator, filled in. */
  readonly link: string;
}

function worked(rule: AnyRule): WorkedExample[] {
  return rule.examples.map((example, i) => ({
    rule,
    number: i + 1,
    figures: compareExample(rule, example),
    from: example.from,
    known: howKnown(example.from),
    because: example.within?.because,
    link: `${ruleHref(rule)}?${new URLSearchParams(fieldTexts(rule, example.given))}`,
  }));
}

const byRule = new Map(rules.map((rule) => [rule.id, worked(rule)]));

export const examplesOf = (rule: AnyRule): readonly WorkedExample[] => byRule.get(rule.id) ?? [];

export const workedExamples: readonly WorkedExample[] = rules.flatMap(examplesOf);
