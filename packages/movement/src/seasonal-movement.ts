import { requireFields, requireNumber, requireThat } from '@scantling/rules';
import { inNameOf } from './in-name-of.ts';
import { widthChange } from './rules/width-change.ts';
import type { YearOfMoisture } from './year-of-moisture.ts';

/** Up to fibre saturation; wetter wood does not move. */
const moisture = { min: 0, max: 30 };

export interface SeasonalMoistureInput {
  /** The year's extremes: what `yearFromMonths`, `yearFromExtremes` and the finders give, or the two figures alone. */
  readonly year: Pick<YearOfMoisture, 'driestMoisturePct' | 'wettestMoisturePct'>;
  /** Moisture content on building day, % of ovendry mass, 0 to 30. */
  readonly moisturePct: number;
}

export interface SeasonalMoisture {
  /** How far the wood dries below building day, in percent of ovendry mass, 0 or more. */
  readonly dryingPct: number;
  /** How far the wood gets wetter than on building day, in percent of ovendry mass, 0 or more. */
  readonly wettingPct: number;
  /** Building day against the year. Wood that is drier or wetter than all of it never comes back to its width. */
  readonly buildingDay: 'drier' | 'within' | 'wetter';
}

export interface SeasonalMovementInput extends SeasonalMoistureInput {
  /** Width across the grain on building day, mm, 0 to 10 000. */
  readonly widthMm: number;
  /** Dimensional change coefficient of the species and cut, per 1 % of moisture content, 0 to 0.02. */
  readonly coefficientPerPct: number;
}

export interface SeasonalMovement {
  /** How much narrower than on building day the width becomes, mm, 0 or more. */
  readonly shrinkMm: number;
  /** How much wider than on building day the width becomes, mm, 0 or more. */
  readonly swellMm: number;
  /** Change from building day to the driest day, mm: positive where even then the wood is wider. */
  readonly driestChangeMm: number;
  /** Change from building day to the wettest day, mm: negative where even then the wood is narrower. */
  readonly wettestChangeMm: number;
}

function requireYear(caller: string, input: SeasonalMoistureInput): void {
  const { year, moisturePct } = input ?? {};
  requireNumber(caller, 'moisturePct', moisturePct, moisture);
  requireFields(caller, 'year', year, { driestMoisturePct: moisture, wettestMoisturePct: moisture });
  const { driestMoisturePct: driest, wettestMoisturePct: wettest } = year;
  requireThat(
    caller,
    driest <= wettest,
    `year.driestMoisturePct of at most year.wettestMoisturePct, got ${driest} and ${wettest}`,
  );
}

/**
 * How far the moisture content moves each way from building day over a year.
 *
 * @param input - The year's extremes and the moisture content on building day.
 * @returns Both ways, 0 or more each, and whether building day lies within the year.
 * @throws RangeError where a moisture content is not between 0 and 30 %, or the extremes stand the wrong way round.
 * @example
 * ```ts
 * import { seasonalMoisture } from '@scantling/movement';
 * const year = { driestMoisturePct: 6, wettestMoisturePct: 10 };
 * seasonalMoisture({ year, moisturePct: 9 }) // => { dryingPct: 3, wettingPct: 1, buildingDay: 'within' }
 * seasonalMoisture({ year, moisturePct: 14 }) // => { dryingPct: 8, wettingPct: 0, buildingDay: 'wetter' }
 * seasonalMoisture({ year, moisturePct: 31 }) // throws seasonalMoisture requires moisturePct between 0 and 30, got 31
 * ```
 */
export function seasonalMoisture(input: SeasonalMoistureInput): SeasonalMoisture {
  requireYear('seasonalMoisture', input);
  const { year, moisturePct } = input;
  const dryingPct = Math.max(0, moisturePct - year.driestMoisturePct);
  const wettingPct = Math.max(0, year.wettestMoisturePct - moisturePct);
  const drier = moisturePct < year.driestMoisturePct;
  const wetter = moisturePct > year.wettestMoisturePct;
  return { dryingPct, wettingPct, buildingDay: drier ? 'drier' : wetter ? 'wetter' : 'within' };
}

/**
 * How much a board or panel shrinks and swells from building day over a year, by the coefficient of its species and
 * cut. Building day counts as a day of the year: a top built wetter than it will ever be shrinks and does not swell.
 *
 * @param input - The year's extremes, the moisture content and the width on building day, and the coefficient.
 * @returns Both ways in mm, 0 or more each, and the change with its sign at each end of the year.
 * @throws RangeError where an input is outside its limits, or the extremes stand the wrong way round.
 * Source: `widthChange`, Wood Handbook (FPL-GTR-190), Eq. 13-2, claimed for 6 to 14 % moisture content.
 * @example
 * ```ts
 * import { seasonalMovement } from '@scantling/movement';
 * // Sugar maple, flatsawn, 600 mm wide, built at 9 %: 600 × 0.00353 × 3 and × 1
 * const top = { widthMm: 600, coefficientPerPct: 0.00353, year: { driestMoisturePct: 6, wettestMoisturePct: 10 } };
 * seasonalMovement({ ...top, moisturePct: 9 }) // => { shrinkMm: 6.354, swellMm: 2.118, driestChangeMm: -6.354, wettestChangeMm: 2.118 }
 * seasonalMovement({ ...top, moisturePct: 14 }).swellMm // => 0
 * ```
 */
export function seasonalMovement(input: SeasonalMovementInput): SeasonalMovement {
  const caller = 'seasonalMovement';
  requireYear(caller, input);
  const { year, widthMm, coefficientPerPct, moisturePct: fromMoisturePct } = input;
  const changeAt = (toMoisturePct: number) =>
    inNameOf(
      caller,
      '',
      () => widthChange({ widthMm, coefficientPerPct, fromMoisturePct, toMoisturePct }).changeMm,
    );
  const driestChangeMm = changeAt(year.driestMoisturePct);
  const wettestChangeMm = changeAt(year.wettestMoisturePct);
  return {
    shrinkMm: Math.max(0, -driestChangeMm),
    swellMm: Math.max(0, wettestChangeMm),
    driestChangeMm,
    wettestChangeMm,
  };
}
