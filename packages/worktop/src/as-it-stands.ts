import type { Plan, SettledPlan } from './plan/plan.ts';
import { slid } from './settle/slid.ts';
import type { Settlement } from './settle.ts';

/** Whether a plan leaves a choice to the planner. */
export const isOpen = ({ base, holes, screws, glueUp }: Plan): boolean =>
  [
    base.fixedLineMm,
    holes.first,
    screws?.lengthMm,
    glueUp?.boardCount,
    ...(base.sliding ?? []).map(({ slideMm }) => slideMm),
  ].includes('choose');

/** A plan that leaves nothing open, with what slides where it has slid to. */
export function asItStands(plan: Plan): Settlement {
  const sliding = plan.base.sliding ?? [];
  const slidesMm = sliding.map(({ slideMm }) => slideMm as number);
  return { settled: { ...plan, base: slid(plan.base, sliding, slidesMm) } as SettledPlan, chosen: [] };
}
