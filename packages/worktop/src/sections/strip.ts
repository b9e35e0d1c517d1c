import { checkStripMovement } from '../checks/strip-movement.ts';
import { checkStripRabbet } from '../checks/strip-rabbet.ts';
import { checkStripScrews } from '../checks/strip-screws.ts';
import { plannedStrip } from '../parts/strip.ts';
import type { Section } from './section.ts';

export const strip: Section<typeof plannedStrip> = {
  planned: plannedStrip,
  checks: [checkStripRabbet, checkStripMovement, checkStripScrews],
};
