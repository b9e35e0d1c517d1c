import { type CalendarStep, coatCalendar } from '@scantling/finishing';
import type { SettledPlan } from '../plan/plan.ts';

/** When each coat is laid, and when the top may be used. */
export interface PlannedCalendar {
  /** In the order of the work. */
  readonly steps: readonly CalendarStep[];
  /** When it may be used, from the beginning of the first step, h. */
  readonly readyHours: number;
  /** The day on which it may be used, counted from 1. */
  readonly readyDayIndex: number;
}

/** All coats on both faces; edges and holes are done with the faces that they open in. */
export function plannedCalendar({ finish, calendar }: SettledPlan): PlannedCalendar | null {
  if (!calendar) return null;
  const { steps, readyHours, readyDayIndex } = coatCalendar({
    ...calendar,
    undersideCoatCount: finish.coats,
    topCoatCount: finish.coats,
  });
  return { steps, readyHours, readyDayIndex };
}
