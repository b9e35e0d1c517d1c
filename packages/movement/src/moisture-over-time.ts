import { plusZero, requireInputs, requireList } from '@scantling/rules';
import { cutIntoLayers, type Profile } from './layers.ts';

const limits = {
  thicknessMm: { min: 1, max: 1000 },
  diffusionMm2PerDay: { min: 0.01, max: 1000 },
  topResistanceDaysPerMm: { min: 0, max: 1e6 },
  undersideResistanceDaysPerMm: { min: 0, max: 1e6 },
  startMoisturePct: { min: 0, max: 30 },
  runDays: { min: 1, max: 36_500, integer: true },
} as const;
const climateLimits = { min: 0, max: 30, minItems: 1, maxItems: 365 } as const;

const YEAR_DAYS = 365;
const STEPS_PER_DAY = 8;
const LAYERS = 40;

/** A panel, its faces, and the air it stands in. */
export interface MoistureOverTimeInput {
  /** Thickness of the panel, mm, 1 to 1000. */
  readonly thicknessMm: number;
  /** Diffusion coefficient across the grain, mm² a day, 0.01 to 1000; 10⁻¹⁰ m²/s is 8.64 mm² a day. */
  readonly diffusionMm2PerDay: number;
  /** What the finish of the top holds back, days to the millimetre, from 0 (bare) to 10⁶ (as good as sealed). */
  readonly topResistanceDaysPerMm: number;
  /** The same for the underside. */
  readonly undersideResistanceDaysPerMm: number;
  /** Moisture content on the first day, the same throughout, % of ovendry mass, 0 to 30. */
  readonly startMoisturePct: number;
  /**
   * What wood would come to in the air of each part of the year, % of ovendry mass, 0 to 30. The parts are alike in
   * length and come again every year: 12 are months, 365 are days, a single one is air that stays as it is.
   */
  readonly equilibriumMoisturePct: readonly number[];
  /** Place in that list of the part that the run begins with, counted from 0; left out, the first. */
  readonly firstIndex?: number;
  /** How long to follow it, days, 1 to 36 500, a whole number. */
  readonly runDays: number;
}

/** How the water is spread through the panel at the end of a day. */
export interface MoistureOnDay extends Profile {
  /** Days since the start. */
  readonly timeDays: number;
  /** The average of both faces, less the core: positive while the panel takes up water. */
  readonly gradientPct: number;
}

/** The lowest and the highest mean moisture content of some days, and when: of several such days, the first. */
export interface MoistureRange {
  /** Lowest, % of ovendry mass. */
  readonly driestMoisturePct: number;
  /** When, in days since the start. */
  readonly driestDays: number;
  /** Highest, % of ovendry mass. */
  readonly wettestMoisturePct: number;
  /** When, in days since the start. */
  readonly wettestDays: number;
}

export interface MoistureOverTime {
  /** The start, and then the end of every day: `daily[30]` is day 30. */
  readonly daily: readonly MoistureOnDay[];
  /** Over the whole run, the start with it. */
  readonly run: MoistureRange;
  /** Over its last 365 days: once some years have passed, the seasons alone. */
  readonly lastYear: MoistureRange;
  /**
   * Range of the mean in the last year, as a share of the climate's: near 1 for thin bare wood, near 0 for a thick top
   * behind a tight finish; a run that still comes from a start outside its climate can give more than 1. `null` where
   * the climate has no range.
   */
  readonly swingRatio: number | null;
}

function rangeOf(days: readonly MoistureOnDay[]): MoistureRange {
  const driest = days.reduce((best, day) => (day.meanPct < best.meanPct ? day : best));
  const wettest = days.reduce((best, day) => (day.meanPct > best.meanPct ? day : best));
  return {
    driestMoisturePct: driest.meanPct,
    driestDays: driest.timeDays,
    wettestMoisturePct: wettest.meanPct,
    wettestDays: wettest.timeDays,
  };
}

/**
 * Follows the moisture content through the thickness of a panel over days and years. Water diffuses inside; at each
 * face it passes whatever the finish holds back. That is why a thick finished top never sees the extremes of its
 * climate: long before it gets to one, the season turns.
 *
 * Mean, faces and core stay within the range of start and climate, whatever the coefficients. How soon they get
 * anywhere is only as well known as the coefficients are: `transverseDiffusion` gives one of them within a factor of
 * three, `finishResistance` the other within two; run it with both ends. Left out are the edges: along the grain
 * water moves ten to fifteen times as readily, so seal the end grain or reckon with the whole climate near it.
 *
 * The width over the year is one call more: hand `lastYear` or `run` to `seasonalMovement`, or any two of the means to
 * `widthChange`. `yearFromMonths` makes the climate from readings of the air.
 *
 * Source: J. Crank, The Mathematics of Diffusion, ch. 4, a plane sheet with a resistance at its faces. Solved in 40
 * layers and 8 steps a day. For each 1 % by which its air changes at once, the mean of bare wood is then off by no more
 * than 0.002 % at 45 mm and 2.5 mm² a day, 0.005 % at 45 mm and 30 mm² a day, and 0.025 % at 3 mm and 2.5 mm² a day;
 * most on the first day.
 *
 * @returns Every day's mean, faces, core and gradient; the driest and wettest mean and when; the share of the climate's
 * range that the panel goes through.
 * @throws RangeError where an input is outside its limits.
 * @example
 * ```ts
 * import { moistureOverTime, seasonalMovement } from '@scantling/movement';
 * // A sugar maple top, 600 by 45 mm, glued up in May at 8 %, in a room with these months, January first.
 * const room = { equilibriumMoisturePct: [6, 6, 6.5, 7, 8, 9.5, 10.5, 11, 10, 9, 7.5, 6.5], firstIndex: 4 };
 * const maple = { thicknessMm: 45, diffusionMm2PerDay: 2.5, startMoisturePct: 8, runDays: 3650 };
 * const faces = { topResistanceDaysPerMm: 2, undersideResistanceDaysPerMm: 2 };
 * const { lastYear, swingRatio } = moistureOverTime({ ...maple, ...room, ...faces });
 * // The air takes wood from 6 to 11 %; the varnished top goes through less than half of that.
 * [lastYear.driestMoisturePct, lastYear.wettestMoisturePct] // => [7.13, 9.28]
 * swingRatio // => 0.43
 * seasonalMovement({ year: lastYear, moisturePct: 8, widthMm: 600, coefficientPerPct: 0.00353 }).shrinkMm // => 1.84
 * moistureOverTime({ ...maple, ...room, ...faces, runDays: 0 }) // throws moistureOverTime requires runDays a whole number between 1 and 36500, got 0
 * ```
 */
export function moistureOverTime(input: MoistureOverTimeInput): MoistureOverTime {
  const caller = 'moistureOverTime';
  requireInputs(caller, input, limits);
  const { equilibriumMoisturePct: climate, runDays, firstIndex = 0 } = input;
  requireList(caller, 'equilibriumMoisturePct', climate, climateLimits);
  requireInputs(caller, { firstIndex }, { firstIndex: { min: 0, max: climate.length - 1, integer: true } });

  const air = climate.map((_, i) => plusZero(climate[(i + firstIndex) % climate.length] as number));
  const yearSteps = YEAR_DAYS * STEPS_PER_DAY;
  const airAt = (step: number) =>
    air[Math.floor((((step % yearSteps) + 0.5) * air.length) / yearSteps)] as number;
  const resolution = { layerCount: LAYERS, stepDays: 1 / STEPS_PER_DAY };
  const panel = cutIntoLayers(input, resolution, plusZero(input.startMoisturePct));
  const endOf = (timeDays: number): MoistureOnDay => {
    const profile = panel.profile();
    const gradientPct = (profile.topPct + profile.undersidePct) / 2 - profile.corePct;
    return { timeDays, ...profile, gradientPct };
  };

  const daily = [endOf(0)];
  for (let step = 0; step < runDays * STEPS_PER_DAY; step++) {
    panel.step(airAt(step));
    if ((step + 1) % STEPS_PER_DAY === 0) daily.push(endOf((step + 1) / STEPS_PER_DAY));
  }
  const lastYear = rangeOf(daily.slice(-YEAR_DAYS));
  const climateSwingPct = Math.max(...air) - Math.min(...air);
  const swingPct = lastYear.wettestMoisturePct - lastYear.driestMoisturePct;
  return {
    daily,
    run: rangeOf(daily),
    lastYear,
    swingRatio: climateSwingPct > 0 ? swingPct / climateSwingPct : null,
  };
}
