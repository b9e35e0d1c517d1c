import { choice, figure, list, open, optional, section, text } from './field.ts';
import { gap, named, place, position, screwHole } from './limits.ts';
import type { Obstacle, Open, Point } from './place.ts';
import { obstacle } from './top.ts';

/** A screw through the base into the top, and the slot that the base gives it. */
export interface Fixing extends Point {
  readonly name: string;
  /** Length across the grain of the slot in the base, mm; of a round hole, its diameter. */
  readonly slotMm: number;
}

/** Members that slide together, with the screws in them. */
export interface SlidingPart {
  readonly name: string;
  /** Names of its members. */
  readonly members: readonly string[];
  /** Names of the fixings that slide with it. */
  readonly fixings: readonly string[];
  readonly widensTowards: 'left' | 'right' | 'front' | 'back';
  /** How far it may slide that way from where it is drawn, mm; negative, back. */
  readonly leastSlideMm: number;
  readonly mostSlideMm: number;
  /** How far it is slid, mm; `choose` makes the base as wide as the holes allow. */
  readonly slideMm: number | Open;
}

/** A base that rises and falls. */
export interface Lift {
  /** From the floor to the top of the base, mm. */
  readonly leastHeightMm: number;
  readonly mostHeightMm: number;
  /** From the floor to the face of the top, for the work it is for, mm: lowest and highest. */
  readonly lowestWorkMm: number;
  readonly highestWorkMm: number;
  /** What it may lift, as its maker states it, kg. */
  readonly capacityKg: number;
  /** What goes up besides the top and what lies on it, kg: the upper frame, screws, drawers. */
  readonly frameMassKg: number;
  /** Least that stays of the capacity, %. */
  readonly leastMarginPct: number;
}

export interface Base {
  readonly members: readonly Obstacle[];
  /** Where the top is held so that it moves away from there on both sides, mm from the front edge. */
  readonly fixedLineMm: number | Open;
  readonly shankDiameterMm: number;
  /** Room left at each end of a slot at the end of the season, mm. */
  readonly slotClearanceMm: number;
  /** Least distance that a hole's rim keeps from a screw, mm. */
  readonly screwClearanceMm: number;
  readonly fixings: readonly Fixing[];
  /** Parts that slide; none where the base is fixed. */
  readonly sliding?: readonly SlidingPart[] | undefined;
  readonly lift?: Lift | undefined;
}

const height = { min: 0, max: 3000 };
const mass = { min: 0, max: 10_000 };

const slidingPart = section<SlidingPart>('Members that slide together.', {
  ...named,
  members: list('Names of its members.', text('A member’s name.'), 1, 20),
  fixings: list('Names of the fixings that slide with it.', text('A fixing’s name.'), 0, 100),
  widensTowards: choice('Where it goes to make the base wider.', ['left', 'right', 'front', 'back']),
  leastSlideMm: figure('Least that it may slide that way; negative, back.', position),
  mostSlideMm: figure('Most that it may slide that way.', position),
  slideMm: open(figure('How far it is slid; choose: as far as the holes allow.', position)),
});

const lift = section<Lift>('A base that rises and falls.', {
  leastHeightMm: figure('From the floor to the top of the base, lowered.', height),
  mostHeightMm: figure('From the floor to the top of the base, raised.', height),
  lowestWorkMm: figure('Lowest height of the work surface that is wanted.', height),
  highestWorkMm: figure('Highest height of the work surface that is wanted.', height),
  capacityKg: figure('What it may lift, as its maker states it.', { min: 1, max: 10_000 }),
  frameMassKg: figure('What goes up besides the top and what lies on it.', mass),
  leastMarginPct: figure('Least that stays of the capacity.', { min: 0, max: 90 }),
});

export const baseField = section<Base>('The base under the top.', {
  members: list('What the top lies on.', obstacle('A member of the base.'), 1, 100),
  fixedLineMm: open(figure('Where the top is held, from the front edge.', position)),
  shankDiameterMm: figure('Diameter of the screws where they pass through the base.', { min: 1, max: 20 }),
  slotClearanceMm: figure('Room left at each end of a slot.', { min: 0, max: 50 }),
  screwClearanceMm: figure('Least distance that a hole’s rim keeps from a screw.', gap),
  fixings: list(
    'The screws through the base into the top.',
    section<Fixing>('A screw and its slot.', {
      ...named,
      ...place,
      slotMm: figure('Length of the slot across the grain; of a round hole, its diameter.', screwHole),
    }),
    1,
    100,
  ),
  sliding: optional(list('Parts of the base that slide.', slidingPart, 0, 8)),
  lift: optional(lift),
});
