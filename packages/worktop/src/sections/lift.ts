import { checkHeight, checkWeight } from '../checks/lift.ts';
import { plannedLift } from '../parts/lift.ts';
import type { Section } from './section.ts';

export const lift: Section<typeof plannedLift> = { planned: plannedLift, checks: [checkWeight, checkHeight] };
