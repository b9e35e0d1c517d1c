import type { Check, Computed, Status } from '../result.ts';
import { checkAccessories } from './accessories.ts';
import { checkCableHole, checkCableLength, checkCablePlace } from './cables.ts';
import { checkCalendar } from './calendar.ts';
import { checkCover } from './cover.ts';
import { checkFinish } from './finish.ts';
import { checkHoles, checkInlays } from './holes.ts';
import { checkHeight, checkWeight } from './lift.ts';
import { checkLiftOff, checkSag } from './sag.ts';
import { checkScrews, checkSlots } from './screws.ts';
import { checkTemplate } from './template.ts';
import { checkMoisture, checkSpecies } from './wood.ts';

/** What is asked of a section that the plan leaves out has no answer. */
const questions: readonly ((computed: Computed) => Check | null)[] = [
  checkSpecies,
  checkMoisture,
  checkInlays,
  checkHoles,
  checkSlots,
  checkScrews,
  checkCover,
  checkTemplate,
  checkAccessories,
  checkSag,
  checkLiftOff,
  checkWeight,
  checkHeight,
  checkCableHole,
  checkCablePlace,
  checkCableLength,
  checkFinish,
  checkCalendar,
];

/** Every question put to a plan, in the order of the work. */
export const checkPlan = (computed: Computed): Check[] =>
  questions.map((check) => check(computed)).filter((answer) => answer !== null);

const order: readonly Status[] = ['pass', 'warn', 'fail'];

/** The gravest verdict. */
export const worst = (checks: readonly Check[]): Status =>
  order[Math.max(...checks.map(({ status }) => order.indexOf(status)))] as Status;
