import { type Limits, requireChoice, requireFields, requireInputs, requireThat } from '@scantling/rules';
import { equalSpacing } from '@scantling/units';
import { drillingCare, slotsInMetal, tryOnAnOffcut } from './cautions.ts';
import { fixingTravel } from './rules/fixing-travel.ts';
import { slotLength } from './rules/slot-length.ts';

const CALLER = 'planStrip';
const small: Limits = { min: 0, max: 50 };
const MOST_SCREWS = 1000;

export interface StripPlanInput {
  readonly strip: {
    /** Length, mm, 10 to 20 000. */
    readonly lengthMm: number;
    /** Thickness, mm, 0.5 to 100. */
    readonly thicknessMm: number;
  };
  readonly screws: {
    /** From either end of the strip to the first screw, mm, 0 to less than half of its length. */
    readonly endDistanceMm: number;
    /** Most from screw to screw, mm, 1 to 20 000. */
    readonly mostPitchMm: number;
    /** The screw that holds the strip in place; in the middle, the one nearest to it, of two the first. */
    readonly fixed: 'first' | 'middle' | 'last';
    /** Diameter where the screw passes through the strip, mm, 0.5 to 50. */
    readonly shankDiameterMm: number;
    /** Diameter of the countersunk head to its sharp edge, mm: from the shank's to 50. */
    readonly headDiameterMm: number;
    /** Height of the countersunk head, mm, 0 to 50: from its top to where its cone meets the shank. */
    readonly headHeightMm: number;
  };
  /** How far the heads lie below the face of the strip, mm, 0 to 50. */
  readonly headBelowFaceMm: number;
  /** Most by which the strip outgrows the wood over its whole length, mm, 0 to a fifth of it: `fitStrip` gives it. */
  readonly metalOutgrowsMm: number;
  /** Most by which the wood outgrows the strip over its whole length, mm, 0 to a fifth of it: `fitStrip` gives it. */
  readonly woodOutgrowsMm: number;
  /** Movement at a screw that a round hole may bear, mm, 0 to 50. */
  readonly toleranceMm: number;
  /** Room left at each end of a slot, mm, 0 to 50. */
  readonly clearanceMm: number;
  /** Room left at each end of the strip when it is longest beside the wood, mm, 0 to 50. */
  readonly endClearanceMm: number;
}

/** A screw through the strip. */
export interface StripScrew {
  /** From the start of the strip, mm. */
  readonly atMm: number;
  /** How far the season carries it through the strip away from the fixed screw, mm: as the wood outgrows the strip. */
  readonly outMm: number;
  /** How far it carries it towards the fixed screw, mm: as the strip outgrows the wood. */
  readonly inMm: number;
  /** Slot in the strip, mm; `null` where a round hole does. */
  readonly slot: {
    readonly lengthMm: number;
    /** From the end of the slot nearer to the fixed screw to the screw's centre on building day, mm. */
    readonly screwFromInnerEndMm: number;
    /** Length of the countersink that lets the head travel too, mm, where the top of the head lies: below the face the cone is longer at the face. */
    readonly countersinkLengthMm: number;
  } | null;
}

/** One end of the strip. */
export interface StripGap {
  /** Gap to leave to the wood on building day, mm. */
  readonly gapMm: number;
  /** The gap at its widest over the year, mm. */
  readonly mostGapMm: number;
}

export interface StripPlan {
  /** From screw to screw, mm. */
  readonly pitchMm: number;
  readonly screws: readonly StripScrew[];
  /** The end from which screws are measured. */
  readonly start: StripGap;
  readonly end: StripGap;
  /** Length of a recess that is closed at both ends, mm. */
  readonly recessLengthMm: number;
  /** How deep the wood beneath is to be countersunk too, mm: 0 where the head finds room in the strip. */
  readonly countersinkInWoodMm: number;
  readonly cautions: readonly string[];
}

function requireStrip(input: StripPlanInput): void {
  const { strip, screws, metalOutgrowsMm, woodOutgrowsMm } = input ?? {};
  requireFields(CALLER, 'strip', strip, {
    lengthMm: { min: 10, max: 20_000 },
    thicknessMm: { min: 0.5, max: 100 },
  });
  requireFields(CALLER, 'screws', screws, {
    endDistanceMm: { min: 0, max: strip.lengthMm },
    mostPitchMm: { min: 1, max: 20_000 },
    shankDiameterMm: { min: 0.5, max: 50 },
    headHeightMm: small,
  });
  const { endDistanceMm, mostPitchMm, shankDiameterMm } = screws;
  requireFields(CALLER, 'screws', screws, { headDiameterMm: { min: shankDiameterMm, max: 50 } });
  requireChoice(CALLER, 'screws.fixed', screws.fixed, ['first', 'middle', 'last']);
  requireThat(
    CALLER,
    2 * endDistanceMm < strip.lengthMm,
    `screws.endDistanceMm below half of strip.lengthMm, got ${endDistanceMm} and ${strip.lengthMm}`,
  );
  requireThat(
    CALLER,
    (strip.lengthMm - 2 * endDistanceMm) / mostPitchMm < MOST_SCREWS,
    `screws.mostPitchMm to make at most ${MOST_SCREWS} screws, got ${mostPitchMm} on ${strip.lengthMm}`,
  );
  const { headBelowFaceMm, toleranceMm, clearanceMm, endClearanceMm } = input;
  const movement: Limits = { min: 0, max: strip.lengthMm / 5 };
  requireInputs(
    CALLER,
    { metalOutgrowsMm, woodOutgrowsMm, headBelowFaceMm, toleranceMm, clearanceMm, endClearanceMm },
    {
      metalOutgrowsMm: movement,
      woodOutgrowsMm: movement,
      headBelowFaceMm: small,
      toleranceMm: small,
      clearanceMm: small,
      endClearanceMm: small,
    },
  );
}

/** Which screw holds the strip, counted from 0. */
const fixedIndex = (fixed: StripPlanInput['screws']['fixed'], spaces: number) =>
  ({ first: 0, middle: Math.floor(spaces / 2), last: spaces })[fixed];

/**
 * The screws along a metal strip that is let into wood, and what the strip needs to move beside the wood: one screw holds
 * it in place, every other one whose hole would bind gets a slot with a countersink as long, and both ends get a gap. It
 * serves a strip along the grain, where the difference is small, and one across it, where the wood moves much farther
 * than the metal: the two numbers say which.
 *
 * @param input - Strip, screws, and by how much strip and wood outgrow each other; lengths in mm on building day.
 * @returns Pitch, each screw with its slot, both gaps, and how deep the wood beneath is to be countersunk, mm.
 * @throws RangeError where a field is missing or outside its limits, naming its path.
 * Source: common practice, no source; the movement is `fixingTravel`, the slot `slotLength`, the pitch `equalSpacing`.
 * @example
 * ```ts
 * import { planStrip } from '@scantling/fastening';
 * // A brass cutting guide of 1500 mm along the front of a maple top, held by its first screw
 * const guide = planStrip({
 *   strip: { lengthMm: 1500, thicknessMm: 5 },
 *   screws: { endDistanceMm: 30, mostPitchMm: 250, fixed: 'first', shankDiameterMm: 4, headDiameterMm: 8, headHeightMm: 2.4 },
 *   headBelowFaceMm: 0.2,
 *   metalOutgrowsMm: 0.4,
 *   woodOutgrowsMm: 0.45,
 *   toleranceMm: 0.1,
 *   clearanceMm: 0.2,
 *   endClearanceMm: 0.1,
 * });
 * guide.screws.map(({ atMm }) => atMm) // => [30, 270, 510, 750, 990, 1230, 1470]
 * guide.screws[1].slot // => null
 * guide.screws[6].slot // => { lengthMm: 5.216, screwFromInnerEndMm: 2.584, countersinkLengthMm: 9.216 }
 * guide.end // => { gapMm: 0.492, mostGapMm: 0.933 }
 * guide.countersinkInWoodMm // => 0
 * ```
 */
export function planStrip(input: StripPlanInput): StripPlan {
  requireStrip(input);
  const { strip, screws, metalOutgrowsMm, woodOutgrowsMm, toleranceMm, clearanceMm } = input;
  const { endDistanceMm, mostPitchMm, fixed, shankDiameterMm, headDiameterMm, headHeightMm } = screws;
  const betweenMm = strip.lengthMm - 2 * endDistanceMm;
  // A pitch that divides the length misses a whole number by rounding errors alone.
  const spaces = Math.max(1, Math.ceil(betweenMm / mostPitchMm - 1e-9));
  const { pitchMm, positionsMm } = equalSpacing({
    startMm: endDistanceMm,
    lengthMm: betweenMm,
    spaces,
    ends: 'marked',
  });
  const heldAtMm = positionsMm[fixedIndex(fixed, spaces)] as number;
  const travelAt = (atMm: number) =>
    fixingTravel({
      distanceMm: Math.abs(atMm - heldAtMm),
      swellPct: (100 * woodOutgrowsMm) / strip.lengthMm,
      shrinkPct: (100 * metalOutgrowsMm) / strip.lengthMm,
    });
  const screwAt = (atMm: number): StripScrew => {
    const travel = travelAt(atMm);
    const { slotLengthMm: lengthMm, screwFromInnerEndMm } = slotLength({
      shankDiameterMm,
      clearanceMm,
      ...travel,
    });
    const countersinkLengthMm = headDiameterMm + (lengthMm - shankDiameterMm);
    const bears = Math.max(travel.swellMm, travel.shrinkMm) <= toleranceMm;
    const slot = bears ? null : { lengthMm, screwFromInnerEndMm, countersinkLengthMm };
    return { atMm, outMm: travel.swellMm, inMm: travel.shrinkMm, slot };
  };
  const gapAt = (atMm: number): StripGap => {
    const travel = travelAt(atMm);
    const gapMm = input.endClearanceMm + travel.shrinkMm;
    return { gapMm, mostGapMm: gapMm + travel.swellMm };
  };
  const [start, end] = [gapAt(0), gapAt(strip.lengthMm)];
  return {
    pitchMm,
    screws: positionsMm.map(screwAt),
    start,
    end,
    recessLengthMm: start.gapMm + strip.lengthMm + end.gapMm,
    countersinkInWoodMm: Math.max(0, headHeightMm + input.headBelowFaceMm - strip.thicknessMm),
    cautions: [tryOnAnOffcut, drillingCare, slotsInMetal],
  };
}
