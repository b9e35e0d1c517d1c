import { cautions } from './cautions.ts';
import { checkPlan, worst } from './checks/index.ts';
import { computed } from './computed.ts';
import type { Plan } from './plan/plan.ts';
import type { WorktopPlan } from './result.ts';
import { type Basis, basisOf } from './season.ts';
import type { Sections } from './sections.ts';
import type { Settlement } from './settle.ts';

/** What a plan is computed with: all there is, or as much of it as the plan asks for. */
export interface Means {
  readonly settle: (plan: Plan, basis: Basis, sections: Sections) => Settlement;
  readonly sections: Sections;
}

/** The computed plan with its choices and its checks. */
export function planWith(plan: Plan, { settle, sections }: Means): WorktopPlan {
  const basis = basisOf(plan);
  const { settled, chosen } = settle(plan, basis, sections);
  const parts = computed(settled, basis, sections);
  const checks = checkPlan(parts, sections);
  return { ...parts, asked: plan, chosen, status: worst(checks), checks, cautions };
}
