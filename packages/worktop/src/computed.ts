import { plannedFinish } from './parts/finish.ts';
import { plannedFixings } from './parts/fixings.ts';
import { plannedHoles } from './parts/holes.ts';
import { topMass } from './parts/top-mass.ts';
import type { SettledPlan } from './plan/plan.ts';
import type { Computed } from './result.ts';
import type { Basis } from './season.ts';
import type { Sections } from './sections.ts';

/** Everything that follows from a plan with nothing left to choose. */
export function computed(plan: SettledPlan, basis: Basis, sections: Sections): Computed {
  const { wood, movement, swing } = basis;
  const { holes, blockedHoles } = plannedHoles(plan, swing);
  const fixings = plannedFixings(plan, swing);
  const strip = sections.strip.planned(plan, basis);
  const mass = topMass(plan, wood, holes, strip);
  return {
    plan,
    movement,
    swing,
    holes,
    blockedHoles,
    fixings,
    template: sections.template.planned(plan, holes, blockedHoles),
    accessories: sections.accessories.planned(plan, swing, holes),
    sag: sections.sag.planned(plan, wood, holes, mass.woodKg),
    lift: sections.lift.planned(plan, mass, movement.wettestMoisturePct),
    cables: sections.cables.planned(plan, swing, holes),
    glueUp: sections.glueUp.planned(plan, basis),
    screws: sections.screws.planned(plan, fixings, strip),
    strip,
    finish: plannedFinish(plan, holes.length),
    shop: sections.shop.planned(plan, movement),
    calendar: sections.calendar.planned(plan),
  };
}
