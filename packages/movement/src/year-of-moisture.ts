import { requireThat } from '@scantling/rules';
import { inNameOf } from './in-name-of.ts';
import { type EquilibriumMoistureInput, equilibriumMoisture } from './rules/equilibrium-moisture.ts';

const MONTHS = 12;

/**
 * The moisture content that wood is drawn to over a year. It is the equilibrium with the air: thick or finished
 * wood lags behind and turns back before it gets there, so it moves less than these figures say.
 */
export interface YearOfMoisture {
  /** Month by month, January first, % of ovendry mass; `null` where only the extremes are known. */
  readonly monthsPct: readonly number[] | null;
  /** Place of the driest month in that list, 0 for January, the first of equals; `null` where there are no months. */
  readonly driestMonthIndex: number | null;
  /** Place of the wettest month in that list, 0 for January, the first of equals; `null` where there are no months. */
  readonly wettestMonthIndex: number | null;
  /** Lowest moisture content of the year, % of ovendry mass. */
  readonly driestMoisturePct: number;
  /** Highest moisture content of the year, % of ovendry mass. */
  readonly wettestMoisturePct: number;
  /** From the lowest to the highest, in percent of ovendry mass. */
  readonly rangePct: number;
}

export interface YearFromMonthsInput {
  /** Air of each month, January first: exactly twelve readings, each an average of the month. */
  readonly months: readonly EquilibriumMoistureInput[];
}

export interface YearFromExtremesInput {
  /** Air that dries the wood most, averaged over some weeks: in a heated house that of late winter. */
  readonly driest: EquilibriumMoistureInput;
  /** Air that wets the wood most, averaged over some weeks. */
  readonly wettest: EquilibriumMoistureInput;
}

/** A year of which only the two ends are known. */
export const betweenExtremes = (driestMoisturePct: number, wettestMoisturePct: number): YearOfMoisture => ({
  monthsPct: null,
  driestMonthIndex: null,
  wettestMonthIndex: null,
  driestMoisturePct,
  wettestMoisturePct,
  rangePct: wettestMoisturePct - driestMoisturePct,
});

/** A year of twelve known months. */
export function overMonths(monthsPct: readonly number[]): YearOfMoisture {
  const driestMoisturePct = Math.min(...monthsPct);
  const wettestMoisturePct = Math.max(...monthsPct);
  return {
    ...betweenExtremes(driestMoisturePct, wettestMoisturePct),
    monthsPct,
    driestMonthIndex: monthsPct.indexOf(driestMoisturePct),
    wettestMonthIndex: monthsPct.indexOf(wettestMoisturePct),
  };
}

const moistureIn = (caller: string, path: string, air: EquilibriumMoistureInput) =>
  inNameOf(caller, `${path}.`, () => equilibriumMoisture(air).moisturePct);

/**
 * The year of wood in a room whose air was read every month.
 *
 * @param input - Twelve readings of temperature (°C, −30 to 100) and relative humidity (%, 0 to 100).
 * @returns Moisture content month by month, the driest and the wettest month, and the range.
 * @throws RangeError where there are not exactly twelve readings, or one is outside its limits.
 * @example
 * ```ts
 * import { yearFromMonths } from '@scantling/movement';
 * const humidities = [35, 36, 38, 40, 43, 46, 50, 50, 47, 43, 39, 36];
 * const year = yearFromMonths({ months: humidities.map((relativeHumidityPct) => ({ temperatureC: 20, relativeHumidityPct })) });
 * year.driestMonthIndex // => 0
 * year.wettestMonthIndex // => 6
 * year.driestMoisturePct // => 6.96
 * year.wettestMoisturePct // => 9.271
 * yearFromMonths({ months: [{ temperatureC: 20, relativeHumidityPct: 101 }] }) // throws yearFromMonths requires months to hold 12 readings, got 1
 * ```
 */
export function yearFromMonths(input: YearFromMonthsInput): YearOfMoisture {
  const months: unknown = input?.months;
  const held = Array.isArray(months) ? String(months.length) : typeof months;
  requireThat('yearFromMonths', held === `${MONTHS}`, `months to hold ${MONTHS} readings, got ${held}`);
  return overMonths(Array.from(input.months, (air, i) => moistureIn('yearFromMonths', `months[${i}]`, air)));
}

/**
 * The year of wood in a room of which only the driest and the wettest air are known.
 *
 * @param input - Temperature (°C, −30 to 100) and relative humidity (%, 0 to 100) at both ends.
 * @returns The lowest and highest moisture content and the range; no months.
 * @throws RangeError where a reading is outside its limits, or the air called driest keeps wood wetter.
 * @example
 * ```ts
 * import { yearFromExtremes } from '@scantling/movement';
 * const driest = { temperatureC: 20, relativeHumidityPct: 35 };
 * const wettest = { temperatureC: 24, relativeHumidityPct: 65 };
 * yearFromExtremes({ driest, wettest }).driestMoisturePct // => 6.96
 * yearFromExtremes({ driest, wettest }).rangePct // => 4.89
 * yearFromExtremes({ driest, wettest: {} }) // throws yearFromExtremes requires wettest.temperatureC between -30 and 100
 * ```
 */
export function yearFromExtremes(input: YearFromExtremesInput): YearOfMoisture {
  const caller = 'yearFromExtremes';
  const driest = moistureIn(caller, 'driest', input?.driest);
  const wettest = moistureIn(caller, 'wettest', input?.wettest);
  requireThat(
    caller,
    driest <= wettest,
    `driest to keep wood no wetter than wettest does, got ${driest.toFixed(1)} % and ${wettest.toFixed(1)} %`,
  );
  return betweenExtremes(driest, wettest);
}
