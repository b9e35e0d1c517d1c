import type { Calendar } from '../plan/finish.ts';
import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';

/** Rounding of hours. */
const SAME_H = 1e-6;

/** The first moment from a given one on when somebody works, and for as long as it takes. */
function inWorkingHours(fromHours: number, needs: number, { opensHours, closesHours }: Calendar): number {
  const midnight = 24 * Math.floor((fromHours + SAME_H) / 24);
  const begins = Math.max(fromHours, midnight + opensHours);
  return begins + needs <= midnight + closesHours + SAME_H ? begins : midnight + 24 + opensHours;
}

/** Every step waits for what is before it, in hours in which somebody works, and for no more. */
export function recheckCalendar({ plan, calendar }: WorktopPlan): Finding[] {
  const asked = plan.calendar;
  if (!calendar || !asked) return same('calendar', calendar === null, asked == null);
  const { startsHours, layHours, recoatHours, recoatWithinHours, turnHours } = asked;
  const { steps } = calendar;
  const coats = (face: string) => steps.filter((step) => step.does === 'coat' && step.face === face);
  const firstHours = inWorkingHours(startsHours, layHours, asked);
  const findings = steps.flatMap((step, i) => {
    const path = `calendar.steps[${i}]`;
    const before = steps.slice(0, i);
    const underneath = before.filter(({ does, face }) => does === 'coat' && face === step.face).at(-1);
    const last = before.filter(({ does }) => does === 'coat').at(-1);
    const previous = before.at(-1);
    const isCoat = step.does === 'coat';
    const needs = isCoat ? layHours : 0;
    // What has to be over before this may begin, in hours since the midnight before the first day.
    const ready = Math.max(
      previous ? firstHours + previous.doneHours : startsHours,
      isCoat && underneath ? firstHours + underneath.doneHours + recoatHours : 0,
      !isCoat && last ? firstHours + last.doneHours + turnHours : 0,
    );
    const begins = inWorkingHours(ready, needs, asked);
    const sinceMidnight = firstHours + step.atHours;
    return [
      ...agree(`${path}.atHours`, step.atHours, begins - firstHours),
      ...agree(`${path}.doneHours`, step.doneHours, step.atHours + needs),
      ...agree(`${path}.dayIndex`, step.dayIndex, 1 + Math.floor((sinceMidnight + SAME_H) / 24), 0),
      ...agree(`${path}.clockHours`, step.clockHours, sinceMidnight - 24 * (step.dayIndex - 1)),
      ...same(
        `${path}.sandFirst`,
        step.sandFirst,
        isCoat &&
          underneath !== undefined &&
          step.atHours - underneath.doneHours > recoatWithinHours + SAME_H,
      ),
      ...holds(`${path}.does`, isCoat || step.does === 'turn', `"${step.does}" is nothing that is done`),
      ...same(`${path}.position`, step.position, isCoat ? coats(step.face).indexOf(step) + 1 : 0),
      ...holds(
        `${path}.face`,
        isCoat ? previous === undefined || previous.face === step.face : previous?.face !== step.face,
        'the other face is up',
      ),
    ];
  });
  const done = Math.max(0, ...steps.filter(({ does }) => does === 'coat').map(({ doneHours }) => doneHours));
  const readyHours = done + 24 * asked.dryingDays;
  return [
    ...findings,
    ...agree('calendar.steps', coats('top').length, plan.finish.coats, 0),
    ...agree('calendar.steps', coats('underside').length, plan.finish.coats, 0),
    ...agree('calendar.readyHours', calendar.readyHours, readyHours),
    ...agree(
      'calendar.readyDayIndex',
      calendar.readyDayIndex,
      1 + Math.floor((firstHours + readyHours + SAME_H) / 24),
      0,
    ),
  ];
}
