import {
  type Limits,
  plusZero,
  requireChoice,
  requireFields,
  requireInputs,
  requireThat,
} from '@scantling/rules';
import { changeBesideMetal } from './rules/change-beside-metal.ts';

const CALLER = 'fitStrip';

const moisture: Limits = { min: 0, max: 30 };
const temperature: Limits = { min: -60, max: 150 };
const expansion: Limits = { min: 0, max: 200 };
const coefficient: Limits = { min: 0, max: 0.02 };

/** A strip of metal let into wood, and the year that both will see. */
export interface StripInWood {
  readonly strip: {
    /** Length, mm, 1 to 20 000. */
    readonly lengthMm: number;
    /** Width, mm, 1 to 1000. */
    readonly widthMm: number;
    /** Thermal expansion, µm per metre and kelvin, 0 to 200. */
    readonly expansionUmPerMK: number;
  };
  /** Which way the length of the strip runs. */
  readonly runs: 'along the grain' | 'across the grain';
  readonly wood: {
    /** Dimensional change coefficient along the grain, per 1 %, 0 to 0.02: see `longitudinalShrinkage`. */
    readonly alongPerPct: number;
    /** Dimensional change coefficient across the grain, in the plane of the strip, per 1 %, 0 to 0.02. */
    readonly acrossPerPct: number;
    /** Thermal expansion along the grain, µm per metre and kelvin, 0 to 200. */
    readonly alongUmPerMK: number;
    /** Thermal expansion across the grain, µm per metre and kelvin, 0 to 200. */
    readonly acrossUmPerMK: number;
  };
  /** What both are like when the strip is let in. */
  readonly buildingDay: { readonly moisturePct: number; readonly temperatureC: number };
  /**
   * The extremes of the year; any moisture may meet any temperature. Where building day is drier, wetter, colder or
   * warmer than all of it, its moisture and its temperature count as an extreme too.
   */
  readonly year: {
    readonly driestMoisturePct: number;
    readonly wettestMoisturePct: number;
    readonly coldestTemperatureC: number;
    readonly warmestTemperatureC: number;
  };
  /** Where the strip is fastened for good, mm from its start along its length, 0 to its length. */
  readonly heldAtMm: number;
  /** Movement of an end that glue, screws and looks may bear, mm, 0 to 100. */
  readonly toleranceMm: number;
}

/** One end of the strip, or one side of it. */
export interface StripEnd {
  /** Gap to leave there between metal and wood on building day, mm. */
  readonly gapMm: number;
  /** How far both slide past each other there over the year, mm: the gap at its widest, and what a slot allows. */
  readonly travelMm: number;
}

/**
 * `moves together`: at no end more than the tolerance, so it may be fastened all over. `needs a gap`: the metal
 * becomes too long for its recess; a second fastening wants a slot. `needs slots`: the wood outgrows the metal, so no
 * end is pressed, yet a second fastening wants a slot.
 */
export type StripVerdict = 'moves together' | 'needs a gap' | 'needs slots';

/** The strip in one direction. */
export interface StripDirection {
  readonly verdict: StripVerdict;
  /** Most by which the metal outgrows the wood in the year, mm. */
  readonly metalOutgrowsMm: number;
  /** Most by which the wood outgrows the metal in the year, mm. */
  readonly woodOutgrowsMm: number;
  /** The end from which `heldAtMm` is measured; for the width, one side. */
  readonly start: StripEnd;
  /** The other end; for the width, the other side. */
  readonly end: StripEnd;
}

/** A strip over the year, lengthwise and across its width. */
export interface StripFit {
  readonly length: StripDirection;
  /** Across its width, where it is taken to be held in the middle. */
  readonly width: StripDirection;
}

function requireStrip(given: StripInWood): void {
  const { strip, runs, wood, buildingDay, year, heldAtMm, toleranceMm } = given ?? {};
  requireFields(CALLER, 'strip', strip, {
    lengthMm: { min: 1, max: 20_000 },
    widthMm: { min: 1, max: 1000 },
    expansionUmPerMK: expansion,
  });
  requireChoice(CALLER, 'runs', runs, ['along the grain', 'across the grain']);
  requireFields(CALLER, 'wood', wood, {
    alongPerPct: coefficient,
    acrossPerPct: coefficient,
    alongUmPerMK: expansion,
    acrossUmPerMK: expansion,
  });
  requireFields(CALLER, 'buildingDay', buildingDay, { moisturePct: moisture, temperatureC: temperature });
  requireFields(CALLER, 'year', year, {
    driestMoisturePct: moisture,
    wettestMoisturePct: moisture,
    coldestTemperatureC: temperature,
    warmestTemperatureC: temperature,
  });
  const ordered = (least: keyof typeof year, most: keyof typeof year) =>
    requireThat(
      CALLER,
      year[least] <= year[most],
      `year.${least} at most year.${most}, got ${year[least]} and ${year[most]}`,
    );
  ordered('driestMoisturePct', 'wettestMoisturePct');
  ordered('coldestTemperatureC', 'warmestTemperatureC');
  requireInputs(
    CALLER,
    { heldAtMm, toleranceMm },
    { heldAtMm: { min: 0, max: strip.lengthMm }, toleranceMm: { min: 0, max: 100 } },
  );
}

/** One direction: how far metal and wood part in the year, and what that asks for at either end. */
function fitDirection(
  given: StripInWood,
  lengthMm: number,
  grain: 'along' | 'across',
  startShare: number,
): StripDirection {
  const { strip, wood, buildingDay, year, toleranceMm } = given;
  const moistures = [buildingDay.moisturePct, year.driestMoisturePct, year.wettestMoisturePct];
  const temperatures = [buildingDay.temperatureC, year.coldestTemperatureC, year.warmestTemperatureC];
  const differences = moistures.flatMap((toMoisturePct) =>
    temperatures.map(
      (toTemperatureC) =>
        changeBesideMetal({
          lengthMm,
          coefficientPerPct: wood[`${grain}PerPct`],
          woodUmPerMK: wood[`${grain}UmPerMK`],
          metalUmPerMK: strip.expansionUmPerMK,
          fromMoisturePct: buildingDay.moisturePct,
          toMoisturePct,
          fromTemperatureC: buildingDay.temperatureC,
          toTemperatureC,
        }).differenceMm,
    ),
  );
  // Building day, with a difference of 0, is among them.
  const metalOutgrowsMm = Math.max(...differences);
  const woodOutgrowsMm = plusZero(-Math.min(...differences));
  const endAt = (share: number): StripEnd => ({
    gapMm: metalOutgrowsMm * share,
    travelMm: (metalOutgrowsMm + woodOutgrowsMm) * share,
  });
  const freerShare = Math.max(startShare, 1 - startShare);
  const exceeds = (outgrowsMm: number) => outgrowsMm * freerShare > toleranceMm;
  const slotsOrNone = exceeds(woodOutgrowsMm) ? 'needs slots' : 'moves together';
  return {
    verdict: exceeds(metalOutgrowsMm) ? 'needs a gap' : slotsOrNone,
    metalOutgrowsMm,
    woodOutgrowsMm,
    start: endAt(startShare),
    end: endAt(1 - startShare),
  };
}

/**
 * Whether a metal strip let into wood moves with it through the year, and where it needs room: at either end, and at
 * either side of its width. Along the grain warmth and moisture both count and stay small; across it moisture decides.
 *
 * @param given - The strip, the wood beside it, building day and the extremes of the year.
 * @returns For its length and its width a verdict, how far each outgrows the other, and the gap and the travel at
 *   each end.
 * @throws RangeError where an input is outside its limits, naming its path.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 13-2, and thermal expansion, as in `changeBesideMetal`.
 * @example
 * ```ts
 * import { fitStrip } from '@scantling/movement';
 * // A brass cutting guide along the front of a flatsawn sugar maple top, screwed at its left end
 * const guide = fitStrip({
 *   strip: { lengthMm: 1500, widthMm: 20, expansionUmPerMK: 19 },
 *   runs: 'along the grain',
 *   wood: { alongPerPct: 0.0000668, acrossPerPct: 0.00353, alongUmPerMK: 3.8, acrossUmPerMK: 39.8 },
 *   buildingDay: { moisturePct: 8, temperatureC: 20 },
 *   year: { driestMoisturePct: 6, wettestMoisturePct: 11, coldestTemperatureC: 14, warmestTemperatureC: 28 },
 *   heldAtMm: 0,
 *   toleranceMm: 0.2,
 * });
 * guide.length.verdict // => 'needs a gap'
 * guide.length.end // => { gapMm: 0.3828, travelMm: 0.8202 }
 * guide.width // => { verdict: 'moves together', metalOutgrowsMm: 0.1437, woodOutgrowsMm: 0.2151, start: { gapMm: 0.0718, travelMm: 0.1794 }, end: { gapMm: 0.0718, travelMm: 0.1794 } }
 * ```
 */
export function fitStrip(given: StripInWood): StripFit {
  requireStrip(given);
  const { strip, runs, heldAtMm } = given;
  const [lengthwise, widthwise] =
    runs === 'along the grain' ? (['along', 'across'] as const) : (['across', 'along'] as const);
  return {
    length: fitDirection(given, strip.lengthMm, lengthwise, plusZero(heldAtMm / strip.lengthMm)),
    width: fitDirection(given, strip.widthMm, widthwise, 0.5),
  };
}
