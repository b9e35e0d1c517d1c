import { checkCableHole, checkCableLength, checkCablePlace } from '../checks/cables.ts';
import { plannedCables } from '../parts/cables.ts';
import type { Section } from './section.ts';

export const cables: Section<typeof plannedCables> = {
  planned: plannedCables,
  checks: [checkCableHole, checkCablePlace, checkCableLength],
};
