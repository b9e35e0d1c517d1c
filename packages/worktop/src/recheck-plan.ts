import { recheckAccessories } from './recheck/accessories.ts';
import { recheckCables } from './recheck/cables.ts';
import { recheckCalendar } from './recheck/calendar.ts';
import { recheckChoices } from './recheck/choices.ts';
import type { Finding } from './recheck/finding.ts';
import { recheckFinish } from './recheck/finish.ts';
import { recheckFixings } from './recheck/fixings.ts';
import { recheckGlueUp } from './recheck/glue-up.ts';
import { recheckHoles } from './recheck/holes.ts';
import { recheckLift } from './recheck/lift.ts';
import { recheckMovement } from './recheck/movement.ts';
import { recheckSag } from './recheck/sag.ts';
import { recheckScrews } from './recheck/screws.ts';
import { recheckShop } from './recheck/shop.ts';
import { recheckStrip } from './recheck/strip.ts';
import { recheckTemplate } from './recheck/template.ts';
import { recheckVerdicts } from './recheck/verdicts/recheck-verdicts.ts';
import type { WorktopPlan } from './result.ts';

/** What another computation makes of a finished plan. */
export interface Recheck {
  /** Whether it bears out every claim. */
  readonly agrees: boolean;
  /** Claims that it does not bear out. */
  readonly findings: readonly Finding[];
}

const questions = [
  recheckChoices,
  recheckMovement,
  recheckGlueUp,
  recheckHoles,
  recheckFixings,
  recheckScrews,
  recheckStrip,
  recheckTemplate,
  recheckAccessories,
  recheckSag,
  recheckLift,
  recheckCables,
  recheckShop,
  recheckFinish,
  recheckCalendar,
  recheckVerdicts,
];

/**
 * Recomputes the claims of a finished plan from the plan alone, by other code than made it: other constants of the same
 * equation, distances measured another way, every place of the grid counted.
 *
 * @param result - What `planWorktop` gave, or the same read back from a file.
 * @returns Whether all claims are borne out, and those that are not.
 * @example
 * ```ts
 * import { planWorktop, recheckPlan } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const result = planWorktop(parsePlan(binderyBench));
 * recheckPlan(result) // => { agrees: true, findings: [] }
 * const moved = { ...result, holes: result.holes.map((hole) => ({ ...hole, xMm: hole.xMm + 1 })) };
 * recheckPlan(moved).agrees // => false
 * ```
 */
export function recheckPlan(result: WorktopPlan): Recheck {
  const findings = questions.flatMap((recheck) => recheck(result));
  return { agrees: findings.length === 0, findings };
}
