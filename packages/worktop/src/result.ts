import type { Conflict } from '@scantling/grids';
import type { Citation, Unit } from '@scantling/rules';
import type { PlannedAccessory } from './parts/accessories.ts';
import type { PlannedCables } from './parts/cables.ts';
import type { PlannedCalendar } from './parts/calendar.ts';
import type { PlannedGlueUp } from './parts/glue-up.ts';
import type { PlannedLift } from './parts/lift.ts';
import type { PlannedSag } from './parts/sag.ts';
import type { PlannedScrews } from './parts/screws.ts';
import type { PlannedShop } from './parts/shop.ts';
import type { PlannedStrip } from './parts/strip.ts';
import type { PlannedTemplate } from './parts/template.ts';
import type { Point } from './plan/place.ts';
import type { Plan, SettledPlan } from './plan/plan.ts';
import type { Swing } from './season.ts';

/** `warn` is for the maker to judge; one `fail` and the plan is not to be built from. */
export type Status = 'pass' | 'warn' | 'fail';

/** One number behind a verdict. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: Unit;
}

/**
 * What a verdict turns on, at the place where it is tightest: what there is, against the least that is needed or the most
 * that is allowed, in one unit.
 */
export interface Margin {
  readonly given: number;
  /** One of these two. */
  readonly min?: number;
  readonly max?: number;
  readonly unit: Unit;
}

/** One question put to the plan, with its verdict and the figures behind it. */
export interface Check {
  readonly id: string;
  readonly title: string;
  readonly status: Status;
  /** The verdict as a sentence; where it fails, what to change and what is allowed. */
  readonly says: string;
  readonly figures: readonly Figure[];
  /** What the verdict turns on; left out where it is no matter of more or less. */
  readonly margin?: Margin;
  /** Ids of the rules that the figures come from. */
  readonly rules: readonly string[];
}

/** How the top moves through the year, from building day. */
export interface SeasonalMovement {
  /** The wood as the table of coefficients names it. */
  readonly species: string;
  /** Where the coefficient stands, how it was confirmed, and what is known to be wrong with it. */
  readonly citation: Citation;
  readonly coefficientPerPct: number;
  readonly driestMoisturePct: number;
  readonly wettestMoisturePct: number;
  /** Change in the whole width at the driest and at the wettest, mm: negative is narrower. */
  readonly driestChangeMm: number;
  readonly wettestChangeMm: number;
}

/** A hole that is drilled, mm from the datum; rows and columns count from 1. */
export interface PlannedHole extends Point {
  readonly row: number;
  readonly column: number;
  /** Least distance from its rim to anything it must miss, over the whole year, mm. */
  readonly clearanceMm: number;
  readonly nearest: string;
}

/** A hole that is left out. */
export interface BlockedHole extends PlannedHole {
  /** Everything that it would come too near to, with the clearance there is and the one asked for. */
  readonly conflicts: readonly Conflict[];
  /** The same as a sentence. */
  readonly why: string;
}

/** A screw and the slot it needs. */
export interface PlannedFixing extends Point {
  readonly name: string;
  readonly swellMm: number;
  readonly shrinkMm: number;
  readonly neededSlotMm: number;
  readonly slotMm: number;
  /**
   * From the slot's end nearer the fixed line to the middle of the screw on building day, mm: the least and the most
   * that leave it room all year. A slot shorter than needed has none, and on the fixed line there is no inner end.
   */
  readonly screwFromInnerEndMm: { readonly leastMm: number; readonly mostMm: number } | null;
  /** Least washer that covers the slot all year, the screw midway in its room, mm. */
  readonly coveringWasherMm: number;
  /** What the member beneath keeps beyond the nearer end of the slot, mm, negative where it is cut open; `null` over none. */
  readonly leftInMemberMm: number | null;
}

/** Faces that are coated together. */
export interface FinishedFace {
  readonly name: 'top' | 'underside' | 'edges' | 'hole walls';
  readonly areaM2: number;
}

/** What one coat takes and leaves. */
export interface PlannedCoat {
  readonly mixMl: number;
  readonly productMl: number;
  readonly thinnerMl: number;
  readonly wetFilmUm: number;
  readonly dryFilmUm: number;
}

/** How much finish, and of what. */
export interface PlannedFinish {
  /** All faces together. */
  readonly areaM2: number;
  /**
   * Less the mouths of holes. What is let in fills its rabbet: its face is coated with the top, the walls and floor
   * beneath it are not.
   */
  readonly faces: readonly FinishedFace[];
  /** Solids by volume of the mix, %. */
  readonly mixSolidsPct: number;
  readonly spreadingRateM2PerL: number;
  /** Mix for all coats, mL. */
  readonly volumeMl: number;
  /** Every coat is like every other. */
  readonly eachCoat: PlannedCoat;
  readonly mix: readonly { readonly name: string; readonly volumeMl: number; readonly onHandMl: number }[];
}

/** A choice that the plan left open. */
export interface Chosen {
  /** The place in the plan, such as `holes.first`. */
  readonly path: string;
  /** What was chosen, as it would stand in a plan file: millimetres, a count, or a place on the top. */
  readonly value: number | Point;
  /** What was chosen and why, with figures. */
  readonly says: string;
  /** Whether it is proven that no other value is better. */
  readonly proven: boolean;
}

/** Everything that follows from a plan with nothing left to choose. */
export interface Computed {
  /** The plan with every choice made; members and screws stand where they have slid to. */
  readonly plan: SettledPlan;
  readonly movement: SeasonalMovement;
  /** The same as shares of any dimension across the grain. */
  readonly swing: Swing;
  readonly holes: readonly PlannedHole[];
  readonly blockedHoles: readonly BlockedHole[];
  readonly fixings: readonly PlannedFixing[];
  readonly template: PlannedTemplate | null;
  readonly accessories: readonly PlannedAccessory[] | null;
  readonly sag: PlannedSag | null;
  readonly lift: PlannedLift | null;
  readonly cables: PlannedCables | null;
  /** Sections that the plan leaves out are `null`. */
  readonly glueUp: PlannedGlueUp | null;
  readonly screws: PlannedScrews | null;
  readonly strip: PlannedStrip | null;
  readonly finish: PlannedFinish;
  readonly shop: PlannedShop | null;
  readonly calendar: PlannedCalendar | null;
}

/** The whole plan, computed and checked. */
export interface WorktopPlan extends Computed {
  /** The plan as it was given, choices open. */
  readonly asked: Plan;
  /** What was left open, and what was chosen. */
  readonly chosen: readonly Chosen[];
  readonly status: Status;
  readonly checks: readonly Check[];
  readonly cautions: readonly string[];
}
