import packages from 'virtual:rules';
import { type AnyRule, rulesIn } from '@scantling/rules';
import type { AnyCalculation } from './calculation.ts';
import { calculationOf } from './of-rule.ts';

const jobs = import.meta.glob<{ readonly default: AnyCalculation }>('../jobs/*.ts');

/** One chunk a rule: a page loads only its own card and function. */
export async function loadRule(id: string): Promise<AnyRule> {
  const [name = '', file = ''] = id.split('/');
  const ofPackage = await packages[name]?.();
  const exported = await ofPackage?.default[file]?.();
  const rule = exported && rulesIn(exported).find((one) => one.id === id);
  if (!rule) throw new Error(`There is no rule ${id}.`);
  return rule;
}

/** The calculation of the rule or of the job that an element names. */
export async function loadCalculation({ rule, job }: DOMStringMap): Promise<AnyCalculation> {
  if (rule) return calculationOf(await loadRule(rule));
  const load = jobs[`../jobs/${job}.ts`];
  if (!load) throw new Error(`There is no calculator ${job}.`);
  return (await load()).default;
}
