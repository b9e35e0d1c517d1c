import { plannedFinish } from './parts/finish.ts';
import { plannedFixings } from './parts/fixings.ts';
import { plannedHoles } from './parts/holes.ts';
import type { SettledPlan } from './plan/plan.ts';
import type { Computed } from './result.ts';
import type { Basis } from './season.ts';

/** Everything that follows from a plan with nothing left to choose. */
export function computed(plan: SettledPlan, basis: Basis): Computed {
  const { movement, swing } = basis;
  const { holes, blockedHoles } = plannedHoles(plan, swing);
  return {
    plan,
    movement,
    swing,
    holes,
    blockedHoles,
    fixings: plannedFixings(plan, swing),
    finish: plannedFinish(plan, holes.length),
  };
}
