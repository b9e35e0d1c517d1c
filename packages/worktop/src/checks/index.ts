import type { Check, Computed, Status } from '../result.ts';
import type { Question } from '../sections/section.ts';
import type { Sections } from '../sections.ts';
import { checkCover } from './cover.ts';
import { checkFinish } from './finish.ts';
import { checkHoles, checkInlays } from './holes.ts';
import { checkScrews, checkSlots } from './screws.ts';
import { checkMoisture, checkSpecies } from './wood.ts';

/** Every question put to a plan, in the order of the work. */
export function checkPlan(computed: Computed, sections: Sections): Check[] {
  const { glueUp, strip, screws, template, accessories, sag, lift, cables, shop, calendar } = sections;
  const questions: readonly Question[] = [
    checkSpecies,
    checkMoisture,
    ...glueUp.checks,
    checkInlays,
    ...strip.checks,
    checkHoles,
    checkSlots,
    checkScrews,
    ...screws.checks,
    checkCover,
    ...template.checks,
    ...accessories.checks,
    ...sag.checks,
    ...lift.checks,
    ...cables.checks,
    ...shop.checks,
    checkFinish,
    ...calendar.checks,
  ];
  return questions.map((check) => check(computed)).filter((answer) => answer !== null);
}

const order: readonly Status[] = ['pass', 'warn', 'fail'];

/** The gravest verdict. */
export const worst = (checks: readonly Check[]): Status =>
  order[Math.max(0, ...checks.map(({ status }) => order.indexOf(status)))] as Status;
