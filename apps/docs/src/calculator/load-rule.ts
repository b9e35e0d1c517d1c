import packages from 'virtual:rules';
import { rulesIn } from '@scantling/rules';
import type { AnyCalculation } from './calculation.ts';
import { calculationOf } from './of-rule.ts';

/** The calculation of a rule. One chunk a rule: a page loads only its own card and function. */
export async function loadRule(id: string): Promise<AnyCalculation> {
  const [name = '', file = ''] = id.split('/');
  const ofPackage = await packages[name]?.();
  const exported = await ofPackage?.default[file]?.();
  const rule = exported && rulesIn(exported).find((one) => one.id === id);
  if (!rule) throw new Error(`There is no rule ${id}.`);
  return calculationOf(rule);
}
