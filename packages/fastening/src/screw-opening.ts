import { fixingTravel } from './rules/fixing-travel.ts';
import { slotLength } from './rules/slot-length.ts';
import { washerOverSlot } from './rules/washer-over-slot.ts';

/** Lengths nearer than this are the same length, rounding apart. */
export const SAME_MM = 1e-9;

/** What is to be done to a hole of the base. */
export type OpeningWork =
  | 'leave it as it is'
  | 'drill it round'
  | 'drill it larger'
  | 'cut a slot'
  | 'make it a slot';

/** An opening of the base, across the grain, in which something travels with the top. */
export interface OpeningSize {
  /** Least length across the grain that lets it travel, with the clearance at both ends, mm. */
  readonly neededMm: number;
  /** Length across the grain once the work is done, mm. */
  readonly lengthMm: number;
  /** From the point given to the end towards the fixed line, once the work is done, mm. */
  readonly toInnerEndMm: number;
  /** From the point given to the end away from the fixed line, once the work is done, mm. */
  readonly toOuterEndMm: number;
  /** By how much a hole that is there has to grow towards the fixed line, mm. */
  readonly longerTowardsMm: number;
  /** By how much it has to grow away from the fixed line, mm. */
  readonly longerAwayMm: number;
  /**
   * Where the screw may stand on building day, mm from the point given: positive away from the fixed line. Only a hole
   * that is there already, and stays as it is, leaves a choice.
   */
  readonly screwOffset: { readonly leastMm: number; readonly mostMm: number };
}

/** The hole or slot of the base that a screw travels in. */
export interface ScrewOpening extends OpeningSize {
  readonly work: OpeningWork;
  /** Least washer that covers the opening all year, mm. */
  readonly coveringWasherMm: number;
}

/** What an opening has to let through, and what is there. */
export interface OpeningQuestion {
  readonly distanceMm: number;
  readonly swellPct: number;
  readonly shrinkPct: number;
  readonly shankDiameterMm: number;
  readonly clearanceMm: number;
  /** Length across the grain of the hole that is there, its middle at the point given; `null` where there is none. */
  readonly existingMm: number | null;
}

/** Where a screw may stand so that a hole holds it all year: at each season its place scales about the fixed line. */
function screwRoom({ distanceMm, swellPct, shrinkPct }: OpeningQuestion, eitherWayMm: number) {
  const scales = [1, 1 + swellPct / 100, 1 - shrinkPct / 100];
  const leastMm = Math.max(...scales.map((scale) => (distanceMm - eitherWayMm) / scale)) - distanceMm;
  const mostMm = Math.min(...scales.map((scale) => (distanceMm + eitherWayMm) / scale)) - distanceMm;
  return leastMm <= mostMm + SAME_MM ? { leastMm: Math.min(leastMm, mostMm) + 0, mostMm: mostMm + 0 } : null;
}

/**
 * The opening for one screw. On the fixed line, where the screw does not travel, a round hole does, and one that is there
 * has only to pass the shank; everywhere else the clearance is kept at both ends.
 */
export function screwOpening(given: OpeningQuestion): ScrewOpening & { readonly still: boolean } {
  const { distanceMm, swellPct, shrinkPct, shankDiameterMm, clearanceMm, existingMm } = given;
  const travel = fixingTravel({ distanceMm, swellPct, shrinkPct });
  const { slotLengthMm: neededMm } = slotLength({ shankDiameterMm, clearanceMm, ...travel });
  const still = Math.max(travel.swellMm, travel.shrinkMm) <= SAME_MM;
  const radiusMm = shankDiameterMm / 2;
  const halfMm = (existingMm ?? 0) / 2;
  const room = existingMm === null ? null : screwRoom(given, halfMm - radiusMm - (still ? 0 : clearanceMm));

  // From the point given to either end: of the hole that stays, of a round hole, or of a slot.
  const toInnerEndMm = room ? halfMm : Math.max(radiusMm + clearanceMm + travel.shrinkMm, halfMm);
  const toOuterEndMm = room ? halfMm : Math.max(radiusMm + clearanceMm + travel.swellMm, halfMm);
  const lengthMm = toInnerEndMm + toOuterEndMm;

  const screwOffset = room ?? { leastMm: 0, mostMm: 0 };
  const nearestMm = Math.min(Math.max(0, screwOffset.leastMm), screwOffset.mostMm);
  const screwMm = distanceMm + nearestMm;
  const swings = [(screwMm * swellPct) / 100, (-screwMm * shrinkPct) / 100];
  const { washerDiameterMm: coveringWasherMm } = washerOverSlot({
    slotLengthMm: lengthMm,
    screwFromInnerEndMm: toInnerEndMm + nearestMm,
    swellMm: Math.max(0, ...swings),
    shrinkMm: Math.max(0, ...swings.map((swing) => -swing)),
    lapMm: 0,
  });
  const fresh = still ? 'drill it round' : 'cut a slot';
  const mended = still ? 'drill it larger' : 'make it a slot';
  return {
    work: room ? 'leave it as it is' : existingMm === null ? fresh : mended,
    neededMm,
    lengthMm,
    toInnerEndMm,
    toOuterEndMm,
    longerTowardsMm: existingMm === null ? 0 : toInnerEndMm - halfMm,
    longerAwayMm: existingMm === null ? 0 : toOuterEndMm - halfMm,
    screwOffset,
    coveringWasherMm,
    still,
  };
}
