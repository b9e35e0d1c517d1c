import type { AnyCalculation } from './calculation.ts';

const jobs = import.meta.glob<{ readonly default: AnyCalculation }>('../jobs/*.ts');

/** The calculation of the rule or of the job that an element names: what makes one of a rule is loaded with a rule. */
export async function loadCalculation({ rule, job }: DOMStringMap): Promise<AnyCalculation> {
  if (rule) return (await import('./load-rule.ts')).loadRule(rule);
  const load = jobs[`../jobs/${job}.ts`];
  if (!load) throw new Error(`There is no calculator ${job}.`);
  return (await load()).default;
}
