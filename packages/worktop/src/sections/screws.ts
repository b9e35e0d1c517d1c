import { checkEngagement, checkThroughFace } from '../checks/engagement.ts';
import { checkWashers } from '../checks/washers.ts';
import { plannedScrews } from '../parts/screws.ts';
import type { Section } from './section.ts';

export const screws: Section<typeof plannedScrews> = {
  planned: plannedScrews,
  checks: [checkThroughFace, checkEngagement, checkWashers],
};
