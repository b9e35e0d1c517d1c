import { asItStands, isOpen } from './as-it-stands.ts';
import type { Plan } from './plan/plan.ts';
import { requirePlan } from './plan/require-plan.ts';
import { planWith } from './plan-with.ts';
import type { WorktopPlan } from './result.ts';
import { sections } from './sections.ts';
import { settle } from './settle.ts';

/**
 * Plans a whole work top: how it moves through the year, where its holes are drilled, what slots its screws
 * need, how much finish it takes, and whether all of that goes together. What the plan leaves open is chosen.
 *
 * @param plan - What is to be built. `parsePlan` of `@scantling/worktop/schema` reads it from a file.
 * @returns The computed plan with its choices and its checks. A plan that can't be built from is an answer, not an error.
 * @throws RangeError where a figure is impossible, naming it, what was given and what is allowed.
 * @example
 * ```ts
 * import { planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const { status, holes } = planWorktop(parsePlan(binderyBench));
 * status // => 'pass'
 * holes.length // => 65
 * ```
 */
export function planWorktop(plan: Plan): WorktopPlan {
  requirePlan(plan);
  return planWith(plan, { settle: isOpen(plan) ? settle : asItStands, sections });
}
