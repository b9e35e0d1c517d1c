import { plannedCalendar } from './parts/calendar.ts';
import { plannedFinish } from './parts/finish.ts';
import { plannedFixings } from './parts/fixings.ts';
import { plannedGlueUp } from './parts/glue-up.ts';
import { plannedHoles } from './parts/holes.ts';
import { plannedScrews } from './parts/screws.ts';
import { plannedShop } from './parts/shop.ts';
import { plannedStrip } from './parts/strip.ts';
import type { SettledPlan } from './plan/plan.ts';
import type { Computed } from './result.ts';
import type { Basis } from './season.ts';

/** Everything that follows from a plan with nothing left to choose. */
export function computed(plan: SettledPlan, basis: Basis): Computed {
  const { movement, swing } = basis;
  const { holes, blockedHoles } = plannedHoles(plan, swing);
  const fixings = plannedFixings(plan, swing);
  const strip = plannedStrip(plan, basis);
  return {
    plan,
    movement,
    swing,
    holes,
    blockedHoles,
    fixings,
    glueUp: plannedGlueUp(plan, basis),
    screws: plannedScrews(plan, fixings, strip),
    strip,
    finish: plannedFinish(plan, holes.length),
    shop: plannedShop(plan, movement),
    calendar: plannedCalendar(plan),
  };
}
