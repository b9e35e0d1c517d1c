import { plannedAccessories } from './parts/accessories.ts';
import { plannedCables } from './parts/cables.ts';
import { plannedCalendar } from './parts/calendar.ts';
import { plannedFinish } from './parts/finish.ts';
import { plannedFixings } from './parts/fixings.ts';
import { plannedGlueUp } from './parts/glue-up.ts';
import { plannedHoles } from './parts/holes.ts';
import { plannedLift } from './parts/lift.ts';
import { plannedSag } from './parts/sag.ts';
import { plannedScrews } from './parts/screws.ts';
import { plannedShop } from './parts/shop.ts';
import { plannedStrip } from './parts/strip.ts';
import { plannedTemplate } from './parts/template.ts';
import { topMass } from './parts/top-mass.ts';
import type { SettledPlan } from './plan/plan.ts';
import type { Computed } from './result.ts';
import type { Basis } from './season.ts';

/** Everything that follows from a plan with nothing left to choose. */
export function computed(plan: SettledPlan, basis: Basis): Computed {
  const { wood, movement, swing } = basis;
  const { holes, blockedHoles } = plannedHoles(plan, swing);
  const fixings = plannedFixings(plan, swing);
  const strip = plannedStrip(plan, basis);
  const mass = topMass(plan, wood, holes, strip);
  return {
    plan,
    movement,
    swing,
    holes,
    blockedHoles,
    fixings,
    template: plannedTemplate(plan, holes, blockedHoles),
    accessories: plannedAccessories(plan, swing, holes),
    sag: plannedSag(plan, wood, holes, mass.woodKg),
    lift: plannedLift(plan, mass, movement.wettestMoisturePct),
    cables: plannedCables(plan, swing, holes),
    glueUp: plannedGlueUp(plan, basis),
    screws: plannedScrews(plan, fixings, strip),
    strip,
    finish: plannedFinish(plan, holes.length),
    shop: plannedShop(plan, movement),
    calendar: plannedCalendar(plan),
  };
}
