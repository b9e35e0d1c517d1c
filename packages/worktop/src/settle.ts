import type { Plan, SettledPlan } from './plan/plan.ts';
import type { Chosen } from './result.ts';
import type { Basis } from './season.ts';

/** A plan with every choice made, and what was chosen. */
export interface Settlement {
  readonly settled: SettledPlan;
  readonly chosen: readonly Chosen[];
}

/** Makes the choices that a plan leaves open, together where they depend on each other. */
export function settle(plan: Plan, _basis: Basis): Settlement {
  return { settled: plan as SettledPlan, chosen: [] };
}
