import { checkLiftOff, checkSag } from '../checks/sag.ts';
import { plannedSag } from '../parts/sag.ts';
import type { Section } from './section.ts';

export const sag: Section<typeof plannedSag> = { planned: plannedSag, checks: [checkSag, checkLiftOff] };
