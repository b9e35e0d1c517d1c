import { cautions } from './cautions.ts';
import { checkPlan, worst } from './checks/index.ts';
import { plannedFinish, plannedFixings, plannedHoles } from './parts.ts';
import type { Plan } from './plan.ts';
import { requirePlan } from './require-plan.ts';
import type { WorktopPlan } from './result.ts';
import { seasonalMovement, swingOf } from './season.ts';

/**
 * Plans a whole work top: how it moves through the year, where its holes are drilled, what slots its screws
 * need, how much finish it takes, and whether all of that goes together.
 *
 * @param plan - What is to be built. `parsePlan` of `@scantling/worktop/schema` reads it from a file.
 * @returns The computed plan with its checks. A plan that can't be built from is an answer, not an error.
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
  const movement = seasonalMovement(plan);
  const swing = swingOf(movement, plan.top.widthMm);
  const { holes, blockedHoles } = plannedHoles(plan, swing);
  const fixings = plannedFixings(plan, swing);
  const finish = plannedFinish(plan, holes.length);
  const computed = { plan, movement, holes, blockedHoles, fixings, finish };
  const checks = checkPlan(computed);
  return { ...computed, status: worst(checks), checks, cautions };
}
