import { checkCalendar } from '../checks/calendar.ts';
import { plannedCalendar } from '../parts/calendar.ts';
import type { Section } from './section.ts';

export const calendar: Section<typeof plannedCalendar> = {
  planned: plannedCalendar,
  checks: [checkCalendar],
};
