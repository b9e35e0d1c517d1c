import { type ShoppingPlan, shoppingPlan } from './lists/shopping-plan.ts';
import type { WorktopPlan } from './result.ts';
import { drillStep, markStep } from './work-sheet/holes.ts';
import { fixStep, rabbetStep } from './work-sheet/metal.ts';
import type { WorkSheet } from './work-sheet/model.ts';
import { finishStep, sandStep } from './work-sheet/surface.ts';
import { flattenStep, glueStep, millStep } from './work-sheet/wood.ts';

const titles = (checks: WorktopPlan['checks']) => checks.map(({ title }) => `“${title}”`).join(', ');

function warningsOf({ checks }: WorktopPlan): string[] {
  const failed = checks.filter(({ status }) => status === 'fail');
  const warned = checks.filter(({ status }) => status === 'warn');
  return [
    ...(failed.length ? [`NOT to be built from as it stands. Not met: ${titles(failed)}.`] : []),
    ...(warned.length ? [`To judge before you begin: ${titles(warned)}. The report says why.`] : []),
  ];
}

/**
 * A plan as a sheet for the shop: mill, glue, flatten, rabbet, mark, drill, sand, finish, fix. Each step has its settings,
 * tasks to tick, what is left to decide, and cautions. The order is common practice, no source.
 *
 * @param result - A computed plan.
 * @param shopping - Its shopping plan, where that is at hand: how the boards are cut stands there.
 * @returns The sheet. `printWorkSheet` of `@scantling/worktop/print` makes pages of it.
 * @example
 * ```ts
 * import { planWorktop, workSheet } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const { steps } = workSheet(planWorktop(parsePlan(binderyBench)));
 * steps.map(({ stage }) => stage) // => ['mill', 'glue', 'flatten', 'rabbet', 'mark', 'drill', 'sand', 'finish', 'fix']
 * ```
 */
export function workSheet(result: WorktopPlan, shopping: ShoppingPlan = shoppingPlan(result)): WorkSheet {
  const { plan, movement } = result;
  const steps = [
    millStep(result, shopping),
    glueStep(result),
    flattenStep(result),
    rabbetStep(result),
    markStep(result),
    drillStep(result),
    sandStep(),
    finishStep(result),
    fixStep(result),
  ];
  return {
    name: plan.name,
    says: `Wood: ${movement.species}, ${plan.top.cut}. Measured from the front-left corner seen from above: x along the grain, y across it.`,
    warnings: warningsOf(result),
    steps: steps.filter((step) => step !== null),
    cautions: result.cautions,
  };
}
