import { clock } from '../clock.ts';
import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

/** A day that is missed is a plan that does not hold; a coat that comes late only costs sanding. */
export function checkCalendar({ plan, calendar }: Computed): Check | null {
  if (!calendar || !plan.calendar) return null;
  const { steps, readyDayIndex } = calendar;
  const { readyByDays, recoatWithinHours, dryingDays } = plan.calendar;
  const inTime = readyDayIndex <= readyByDays;
  const late = steps.filter(({ sandFirst }) => sandFirst);
  const last = Math.max(...steps.map(({ dayIndex }) => dayIndex));
  const ready = `The last coat is laid on day ${last}; with ${dryingDays} days to dry the top may be used on day ${readyDayIndex}`;
  return {
    id: 'calendar',
    title: 'The finish is ready in time',
    status: inTime ? (late.length ? 'warn' : 'pass') : 'fail',
    says: [
      inTime
        ? `${ready}, by day ${readyByDays} as asked.`
        : `calendar.readyByDays is ${readyByDays}. ${ready}: begin sooner, lay fewer coats, or give it ${readyDayIndex} days.`,
      ...late.map(
        ({ face, position, dayIndex, clockHours }) =>
          `calendar: coat ${position} of the ${face}, on day ${dayIndex} at ${clock(clockHours)}, comes more than ${recoatWithinHours} h after the one before; sand first.`,
      ),
    ].join('\n'),
    figures: [
      figure('ready on day', readyDayIndex, 'd'),
      figure('asked for by day', readyByDays, 'd'),
      figure('coats to sand for first', late.length, '1'),
    ],
    margin: { given: readyDayIndex, max: readyByDays, unit: 'd' },
    rules: [],
  };
}
