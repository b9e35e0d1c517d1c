import { choice, figure, list, open, section } from './field.ts';
import { gap, named, place } from './limits.ts';
import type { Open, Point } from './place.ts';

export interface Holes {
  readonly diameterMm: number;
  readonly pitchXMm: number;
  readonly pitchYMm: number;
  /** Where the first hole is; `choose`: where the holes keep most clear of what they must miss. */
  readonly first: Point | Open;
  readonly columns: number;
  readonly rows: number;
  /** Least distance from a hole's rim to the edge of the top, mm. */
  readonly edgeMarginMm: number;
  /** What happens to a hole that comes too near: the plan fails, or the hole is left out. */
  readonly blocked: 'fail' | 'leave out';
}

/** A template on the pitch of the holes that is stepped over the top. */
export interface Template {
  readonly columns: number;
  readonly rows: number;
  /** Least distance between the two pins that place it, mm. */
  readonly leastPinSpanMm: number;
  /** Diameter of its holes less that of the pins, mm. */
  readonly playInTemplateMm: number;
  /** Diameter of the bored holes less that of the pins, mm. */
  readonly playInHoleMm: number;
  /** Farthest that it stands off a datum edge, mm. */
  readonly datumErrorMm: number;
  /** Farthest that a bored hole lies from the middle of its guide hole, mm. */
  readonly boringErrorMm: number;
  /** How much its pitch may be off, mm for each hole. */
  readonly templatePitchErrorMm: number;
}

/** Something rigid with pins that stands in the holes. */
export interface Accessory {
  readonly name: string;
  /** Where its pins are, from any point of it. */
  readonly pins: readonly Point[];
  /** Limits of the pins' diameter, mm. */
  readonly leastPinMm: number;
  readonly mostPinMm: number;
  /** Limits of the holes' diameter as bored, mm. */
  readonly leastHoleMm: number;
  readonly mostHoleMm: number;
  /** Farthest that a pin, and a hole, lies from its place, mm. */
  readonly pinPositionErrorMm: number;
  readonly holePositionErrorMm: number;
}

const count = { min: 1, max: 500, integer: true } as const;
const pitch = { min: 1, max: 2000 };
const diameter = { min: 1, max: 200 };
const error = { min: 0, max: 10 };

const pointField = section<Point>('A place on the top.', place);

export const holesField = section<Holes>('The grid of holes.', {
  diameterMm: figure('Of each hole.', diameter),
  pitchXMm: figure('From hole to hole along the grain.', pitch),
  pitchYMm: figure('From hole to hole across the grain.', pitch),
  first: open(pointField),
  columns: figure('Holes along the grain.', count),
  rows: figure('Holes across the grain.', count),
  edgeMarginMm: figure('Least distance from a hole’s rim to the edge.', gap),
  blocked: choice('What happens to a hole that comes too near.', ['fail', 'leave out']),
});

export const templateField = section<Template>('A template that is stepped over the top.', {
  columns: figure('Its guide holes along the grain.', count),
  rows: figure('Its guide holes across the grain.', count),
  leastPinSpanMm: figure('Least distance between the two pins that place it.', { min: 0, max: 10_000 }),
  playInTemplateMm: figure('Diameter of its holes less that of the pins.', error),
  playInHoleMm: figure('Diameter of the bored holes less that of the pins.', error),
  datumErrorMm: figure('Farthest that it stands off a datum edge.', error),
  boringErrorMm: figure('Farthest that a hole lies from the middle of its guide hole.', error),
  templatePitchErrorMm: figure('How much its pitch may be off, for each hole.', error),
});

export const accessoryField = section<Accessory>('Something with pins that stands in the holes.', {
  ...named,
  pins: list('Where its pins are, from any point of it.', pointField, 1, 24),
  leastPinMm: figure('Least diameter of its pins.', diameter),
  mostPinMm: figure('Largest diameter of its pins.', diameter),
  leastHoleMm: figure('Least diameter of the holes as bored.', diameter),
  mostHoleMm: figure('Largest diameter of the holes as bored.', diameter),
  pinPositionErrorMm: figure('Farthest that a pin lies from its place.', error),
  holePositionErrorMm: figure('Farthest that a hole lies from its place.', error),
});
