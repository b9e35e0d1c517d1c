import { requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { oilyRags, productSheet, solvents } from './cautions.ts';
import { ROUNDING_HOURS } from './rounding.ts';

const coatCount = { min: 0, max: 20, integer: true } as const;
const hours = { min: 0, max: 1000 } as const;
const clock = { min: 0, max: 24 } as const;
const limits = {
  undersideCoatCount: coatCount,
  topCoatCount: coatCount,
  layHours: { min: 0.05, max: 24 },
  recoatHours: hours,
  recoatWithinHours: { min: 0, max: 10_000 },
  turnHours: hours,
  dryingDays: { min: 0, max: 365 },
  opensHours: clock,
  closesHours: clock,
  startsHours: clock,
} as const;

export interface CoatCalendarInput {
  /** Coats on the underside, 0 to 20. */
  readonly undersideCoatCount: number;
  /** Coats on the top and the edges, which are laid in one go, 0 to 20. */
  readonly topCoatCount: number;
  /** Turn the panel once, when the underside has all its coats, or after each coat. */
  readonly turned: 'once' | 'after each coat';
  /** Time to lay one coat and see to the holes, h, 0.05 to 24. */
  readonly layHours: number;
  /** From the end of a coat to the next on the same face, h, 0 to 1000: see the product’s sheet. */
  readonly recoatHours: number;
  /** Later than this after the end of a coat it has to be sanded first, h, at least `recoatHours`. */
  readonly recoatWithinHours: number;
  /** From the end of a coat until the panel can be turned and lie on it, h, 0 to 1000. */
  readonly turnHours: number;
  /** Days to dry from the last coat until it may be used, d, 0 to 365. */
  readonly dryingDays: number;
  /** When work may begin, hour of the day, 0 to 24. */
  readonly opensHours: number;
  /** When a coat has to be done, hour of the day; a coat fits in between. */
  readonly closesHours: number;
  /** When the first coat may begin on the first day, hour of the day. */
  readonly startsHours: number;
}

/** Something that is done at a time. */
export interface CalendarStep {
  readonly does: 'coat' | 'turn';
  /** The face that is coated, or that comes up. */
  readonly face: 'underside' | 'top';
  /** Which coat of this face, counted from 1; 0 for a turn. */
  readonly position: number;
  /** When it begins, from the beginning of the first step, h. */
  readonly atHours: number;
  /** When it is done, from the beginning of the first step, h. */
  readonly doneHours: number;
  /** Which day it is done on, counted from 1. */
  readonly dayIndex: number;
  /** Hour of that day at which it begins, 0 to 24. */
  readonly clockHours: number;
  /** Whether the coat below is older than may be coated over without sanding. */
  readonly sandFirst: boolean;
  /** What to do, in a sentence or two. */
  readonly says: string;
}

export interface CoatCalendar {
  readonly steps: readonly CalendarStep[];
  /** When it may be used, from the beginning of the first step, h. */
  readonly readyHours: number;
  /** Which day that is, counted from 1. */
  readonly readyDayIndex: number;
  readonly cautions: readonly string[];
}

type Move = Pick<CalendarStep, 'does' | 'face' | 'position'>;

/** Which day a moment falls on, counted from 0. */
const dayOf = (hours: number) => Math.floor((hours + ROUNDING_HOURS) / 24);

/** What is done in what order: the underside first. */
function order({ undersideCoatCount, topCoatCount, turned }: CoatCalendarInput): Move[] {
  const coat = (face: Move['face'], position: number): Move => ({ does: 'coat', face, position });
  const turn = (face: Move['face']): Move => ({ does: 'turn', face, position: 0 });
  const all = (face: Move['face'], count: number) =>
    Array.from({ length: count }, (_, i) => coat(face, i + 1));
  const rounds = Math.max(undersideCoatCount, topCoatCount);
  const coats =
    turned === 'once'
      ? [...all('underside', undersideCoatCount), ...all('top', topCoatCount)]
      : Array.from({ length: rounds }, (_, i) => [
          ...(i < undersideCoatCount ? [coat('underside', i + 1)] : []),
          ...(i < topCoatCount ? [coat('top', i + 1)] : []),
        ]).flat();
  return coats.flatMap((move, i) => {
    const before = coats[i - 1];
    return before && before.face !== move.face ? [turn(move.face), move] : [move];
  });
}

function sentence({ does, face, position }: Move, sandFirst: boolean): string {
  if (does === 'turn') {
    return `Turn the panel, ${face} up, onto blocks or points that touch no hole; wipe away what ran through the holes.`;
  }
  const sand = sandFirst ? 'Sand first: the coat below is too old to hold the next one. ' : '';
  const where = face === 'top' ? 'Top and edges' : 'Underside';
  return `${sand}${where}, coat ${position}. Draw the finish away from the mouths of the holes, wipe their walls with a nearly dry swab, and take off drips below before they set.`;
}

/**
 * The order and the times of the coats on a top with holes through it, on a calendar of working hours: each step as
 * early as drying and the working day allow. Plain hours, no dates.
 *
 * @throws RangeError where an input is outside its limits, there is no coat, or a coat does not fit in the working day.
 * Source: common practice, no source; the hours are those of the product’s own sheet.
 * @example
 * ```ts
 * import { coatCalendar } from '@scantling/finishing';
 * const { steps, readyDayIndex } = coatCalendar({
 *   undersideCoatCount: 1, topCoatCount: 2, turned: 'once', layHours: 1, recoatHours: 6, recoatWithinHours: 24, turnHours: 4,
 *   dryingDays: 3, opensHours: 8, closesHours: 18, startsHours: 8,
 * });
 * steps.map(({ does, face, dayIndex, clockHours }) => `day ${dayIndex}, ${clockHours} h: ${does}, ${face}`) // => ['day 1, 8 h: coat, underside', 'day 1, 13 h: turn, top', 'day 1, 13 h: coat, top', 'day 2, 8 h: coat, top']
 * readyDayIndex // => 5
 * ```
 */
export function coatCalendar(input: CoatCalendarInput): CoatCalendar {
  requireInputs('coatCalendar', input, limits);
  requireChoice('coatCalendar', 'turned', input.turned, ['once', 'after each coat']);
  const { layHours, recoatHours, recoatWithinHours, turnHours, opensHours, closesHours, startsHours } = input;
  const moves = order(input);
  requireThat('coatCalendar', moves.length > 0, 'some coat on one of the faces, got none');
  requireThat(
    'coatCalendar',
    recoatHours <= recoatWithinHours,
    `recoatHours at most recoatWithinHours, got ${recoatHours} and ${recoatWithinHours}`,
  );
  requireThat(
    'coatCalendar',
    opensHours + layHours <= closesHours + ROUNDING_HOURS,
    `closesHours at least layHours after opensHours, got ${closesHours}, ${layHours} and ${opensHours}`,
  );
  /** The first moment from one on at which something so long fits in a working day; hours from midnight before day 1. */
  const soonest = (from: number, lasts: number): number => {
    const day = dayOf(from);
    const opening = Math.max(from, day * 24 + opensHours);
    return opening + lasts <= day * 24 + closesHours + ROUNDING_HOURS ? opening : (day + 1) * 24 + opensHours;
  };
  const begins = soonest(startsHours, layHours);
  const dry = { underside: Number.NEGATIVE_INFINITY, top: Number.NEGATIVE_INFINITY };
  let now = begins;
  let lastDone = begins;
  const steps = moves.map((move): CalendarStep => {
    const { does, face } = move;
    const coating = does === 'coat';
    const lasts = coating ? layHours : 0;
    const earliest = coating ? dry[face] + recoatHours : Math.max(dry.underside, dry.top) + turnHours;
    const at = soonest(Math.max(now, earliest), lasts);
    const sandFirst = coating && move.position > 1 && at > dry[face] + recoatWithinHours + ROUNDING_HOURS;
    now = at + lasts;
    if (coating) {
      dry[face] = now;
      lastDone = now;
    }
    return {
      ...move,
      atHours: at - begins,
      doneHours: now - begins,
      dayIndex: dayOf(at) + 1,
      clockHours: at - 24 * dayOf(at),
      sandFirst,
      says: sentence(move, sandFirst),
    };
  });
  const ready = lastDone + input.dryingDays * 24;
  return {
    steps,
    readyHours: ready - begins,
    readyDayIndex: dayOf(ready) + 1,
    cautions: [
      'The product’s sheet says when a coat may be coated over, turned and used; cold, damp air and thick coats take longer.',
      oilyRags,
      solvents,
      productSheet,
    ],
  };
}
