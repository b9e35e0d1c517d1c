/**
 * Plans a top with as little code as its plan asks for: what a section needs is loaded when a plan has it.
 *
 * @module worktop/on-demand
 */
import { asItStands, isOpen } from './as-it-stands.ts';
import type { Plan } from './plan/plan.ts';
import { requirePlan } from './plan/require-plan.ts';
import { type Means, planWith } from './plan-with.ts';
import type { WorktopPlan } from './result.ts';

/** Stands for a section that the plan leaves out. */
const leftOut = { planned: () => null, checks: [] };

/** Loads a part if the plan has something for it. */
const ifAny = <Part, Else>(asked: unknown, load: () => Promise<Part>, orElse: Else) =>
  asked ? load() : orElse;

async function meansFor(plan: Plan): Promise<Means> {
  const [settle, glueUp, strip, screws, template, accessories, sag, lift, cables, shop, calendar] =
    await Promise.all([
      ifAny(isOpen(plan), async () => (await import('./settle.ts')).settle, asItStands),
      ifAny(plan.glueUp, async () => (await import('./sections/glue-up.ts')).glueUp, leftOut),
      ifAny(plan.strip, async () => (await import('./sections/strip.ts')).strip, leftOut),
      ifAny(plan.screws, async () => (await import('./sections/screws.ts')).screws, leftOut),
      ifAny(plan.template, async () => (await import('./sections/template.ts')).template, leftOut),
      ifAny(plan.accessories, async () => (await import('./sections/accessories.ts')).accessories, leftOut),
      ifAny(plan.load, async () => (await import('./sections/sag.ts')).sag, leftOut),
      ifAny(plan.base.lift, async () => (await import('./sections/lift.ts')).lift, leftOut),
      ifAny(plan.cables, async () => (await import('./sections/cables.ts')).cables, leftOut),
      ifAny(plan.shop, async () => (await import('./sections/shop.ts')).shop, leftOut),
      ifAny(plan.calendar, async () => (await import('./sections/calendar.ts')).calendar, leftOut),
    ]);
  return {
    settle,
    sections: { glueUp, strip, screws, template, accessories, sag, lift, cables, shop, calendar },
  };
}

/**
 * The same as `planWorktop`, for a page that has to be light: the parts of the planner that a plan asks for are loaded
 * by `import()` the first time, and are there from then on.
 *
 * @param plan - What is to be built. `parsePlan` of `@scantling/worktop/schema` reads it from a file.
 * @returns The computed plan with its choices and its checks, as `planWorktop` gives it.
 * @throws RangeError where a figure is impossible, naming it, what was given and what is allowed.
 * @example
 * ```ts
 * import { planOnDemand } from '@scantling/worktop/on-demand';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const { status, holes } = await planOnDemand(parsePlan(binderyBench));
 * status // => 'pass'
 * holes.length // => 65
 * ```
 */
export async function planOnDemand(plan: Plan): Promise<WorktopPlan> {
  requirePlan(plan);
  return planWith(plan, await meansFor(plan));
}
