import { type ShoppingPlan, shoppingPlan } from './lists/shopping-plan.ts';
import { checkLines } from './report/checks.ts';
import { calendarSection, finishSection, shopSection } from './report/finish.ts';
import { screwsSection, slotsSection, stripSection } from './report/fixing.ts';
import { accessoriesSection, cablesSection, holesSection, templateSection } from './report/holes.ts';
import { cutSection, shoppingSection } from './report/lists.ts';
import { liftSection, loadSection } from './report/load.ts';
import { section } from './report/text.ts';
import { chosenSection, glueUpSection, topSection, yearSection } from './report/top.ts';
import type { WorktopPlan } from './result.ts';

const verdicts = {
  pass: 'It can be built from.',
  warn: 'It can be built from; see what the checks warn of.',
  fail: 'It can NOT be built from as it stands; see the checks that fail.',
};

/**
 * The plan as plain text to read at the bench, with its cut list and its shopping list.
 *
 * @param result - A computed plan.
 * @param shopping - Its shopping plan, where that is at hand.
 * @returns Text, lines ended by line feeds.
 * @example
 * ```ts
 * import { planReport, planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * planReport(planWorktop(parsePlan(binderyBench))).split('\n')[0] // => 'Bindery bench'
 * ```
 */
export function planReport(result: WorktopPlan, shopping: ShoppingPlan = shoppingPlan(result)): string {
  const { plan, status, checks, cautions } = result;
  const sections = [
    `${plan.name}\n${verdicts[status]}`,
    topSection(result),
    chosenSection(result),
    yearSection(result),
    glueUpSection(result),
    slotsSection(result),
    screwsSection(result),
    stripSection(result),
    holesSection(result),
    templateSection(result),
    accessoriesSection(result),
    cablesSection(result),
    loadSection(result),
    liftSection(result),
    finishSection(result),
    shopSection(result),
    calendarSection(result),
    cutSection(shopping, plan),
    shoppingSection(shopping),
    section('Checks', checks.map(checkLines)),
    section('Cautions', cautions),
  ];
  return `${sections.filter((one) => one !== null).join('\n\n')}\n`;
}
