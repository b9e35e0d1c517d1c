import type { Check, Computed, Status } from '../result.ts';
import { checkAccessories } from './accessories.ts';
import { checkCableHole, checkCableLength, checkCablePlace } from './cables.ts';
import { checkCalendar } from './calendar.ts';
import { checkCover } from './cover.ts';
import { checkEngagement, checkThroughFace } from './engagement.ts';
import { checkFinish } from './finish.ts';
import { checkBoards, checkGluing, checkPanel } from './glue-up.ts';
import { checkHoles, checkInlays } from './holes.ts';
import { checkHeight, checkWeight } from './lift.ts';
import { checkLiftOff, checkSag } from './sag.ts';
import { checkScrews, checkSlots } from './screws.ts';
import { checkShop } from './shop.ts';
import { checkStripMovement } from './strip-movement.ts';
import { checkStripRabbet } from './strip-rabbet.ts';
import { checkStripScrews } from './strip-screws.ts';
import { checkTemplate } from './template.ts';
import { checkWashers } from './washers.ts';
import { checkMoisture, checkSpecies } from './wood.ts';

/** What is asked of a section that the plan leaves out has no answer. */
const questions: readonly ((computed: Computed) => Check | null)[] = [
  checkSpecies,
  checkMoisture,
  checkBoards,
  checkGluing,
  checkPanel,
  checkInlays,
  checkStripRabbet,
  checkStripMovement,
  checkStripScrews,
  checkHoles,
  checkSlots,
  checkScrews,
  checkThroughFace,
  checkEngagement,
  checkWashers,
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
  checkShop,
  checkFinish,
  checkCalendar,
];

/** Every question put to a plan, in the order of the work. */
export const checkPlan = (computed: Computed): Check[] =>
  questions.map((check) => check(computed)).filter((answer) => answer !== null);

const order: readonly Status[] = ['pass', 'warn', 'fail'];

/** The gravest verdict. */
export const worst = (checks: readonly Check[]): Status =>
  order[Math.max(0, ...checks.map(({ status }) => order.indexOf(status)))] as Status;
