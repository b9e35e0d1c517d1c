import { checkBoards, checkGluing, checkPanel } from '../checks/glue-up.ts';
import { plannedGlueUp } from '../parts/glue-up.ts';
import type { Section } from './section.ts';

export const glueUp: Section<typeof plannedGlueUp> = {
  planned: plannedGlueUp,
  checks: [checkBoards, checkGluing, checkPanel],
};
