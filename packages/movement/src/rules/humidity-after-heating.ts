import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import {
  conservationHeatingPage,
  humidityFormulasPage,
  indoorHumidityPage,
  saturatedVapourPage,
} from '@scantling/rules/sources';

const temperature = { min: -30, max: 50 };
const limits = {
  fromTemperatureC: temperature,
  relativeHumidityPct: { min: 0, max: 100 },
  toTemperatureC: temperature,
} as const;

export interface HumidityAfterHeatingInput {
  /** Temperature of the air before, °C, −30 to 50. */
  readonly fromTemperatureC: number;
  /** Relative humidity of the air before, over water as weather stations give it, %, 0 to 100. */
  readonly relativeHumidityPct: number;
  /** Temperature of the air once heated, °C, −30 to 50; at least `fromTemperatureC`. */
  readonly toTemperatureC: number;
}

export interface HumidityAfterHeating {
  /** Relative humidity of the heated air, %. */
  readonly relativeHumidityPct: number;
}

const saturationExponent = (temperatureC: number) => (17.62 * temperatureC) / (243.12 + temperatureC);

/**
 * The relative humidity of outdoor air once it is heated indoors and nothing adds water to it. Its vapour pressure
 * stays; warm air could hold more. People, cooking and drying laundry add water, so a lived-in room is damper.
 *
 * @returns The relative humidity of the heated air, %.
 * @throws RangeError where an input is outside its limits, or the air would be cooled.
 * Source: saturation vapour pressure over water by the WMO Guide to Instruments and Methods of Observation (WMO-No. 8).
 * @example
 * ```ts
 * import { humidityAfterHeating } from '@scantling/movement';
 * // A winter day of 0 °C and 80 %, in a room of 20 °C that nobody humidifies
 * humidityAfterHeating({ fromTemperatureC: 0, relativeHumidityPct: 80, toTemperatureC: 20 }).relativeHumidityPct // => 20.96
 * humidityAfterHeating({ fromTemperatureC: 20, relativeHumidityPct: 50, toTemperatureC: 0 }) // throws humidityAfterHeating requires toTemperatureC of at least fromTemperatureC, got 0 and 20
 * ```
 */
export function humidityAfterHeating(input: HumidityAfterHeatingInput): HumidityAfterHeating {
  requireInputs('humidityAfterHeating', input, limits);
  const { fromTemperatureC, relativeHumidityPct, toTemperatureC } = input;
  requireThat(
    'humidityAfterHeating',
    toTemperatureC >= fromTemperatureC,
    `toTemperatureC of at least fromTemperatureC, got ${toTemperatureC} and ${fromTemperatureC}`,
  );
  const share = Math.exp(saturationExponent(fromTemperatureC) - saturationExponent(toTemperatureC));
  return { relativeHumidityPct: (relativeHumidityPct + 0) * share };
}

/** The same law with another published formula of the saturation vapour pressure. */
function byPowersOfTen({
  fromTemperatureC,
  relativeHumidityPct,
  toTemperatureC,
}: HumidityAfterHeatingInput): number {
  const pressure = (temperatureC: number) =>
    6.116441 * 10 ** ((7.591386 * temperatureC) / (temperatureC + 240.7263));
  return (relativeHumidityPct * pressure(fromTemperatureC)) / pressure(toTemperatureC);
}

export const humidityAfterHeatingRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/humidity-after-heating',
  title: 'Humidity of heated air',
  summary:
    'How dry outdoor air becomes once it is heated indoors, which is why wood shrinks most in a heated winter.',
  basis: 'measured',
  inputs: {
    fromTemperatureC: {
      kind: 'number',
      label: 'Temperature outdoors',
      unit: '°C',
      ...limits.fromTemperatureC,
    },
    relativeHumidityPct: {
      kind: 'number',
      label: 'Relative humidity outdoors',
      unit: '%',
      ...limits.relativeHumidityPct,
      help: 'As a weather station gives it: over water, below freezing too.',
    },
    toTemperatureC: { kind: 'number', label: 'Temperature indoors', unit: '°C', ...limits.toTemperatureC },
  },
  outputs: {
    relativeHumidityPct: {
      label: 'Relative humidity indoors',
      unit: '%',
      help: 'Where nothing adds water to the air; people, cooking and laundry do.',
    },
  },
  compute: humidityAfterHeating,
  formula: String.raw`h_2 = h_1 \exp\left(\frac{17.62\,t_1}{243.12 + t_1} - \frac{17.62\,t_2}{243.12 + t_2}\right)`,
  symbols: {
    'h_1, t_1': 'relative humidity and temperature outdoors, °C',
    'h_2, t_2': 'relative humidity and temperature indoors, °C',
  },
  requires: [
    {
      says: 'toTemperatureC of at least fromTemperatureC',
      holds: ({ fromTemperatureC, toTemperatureC }) => toTemperatureC >= fromTemperatureC,
    },
  ],
  sources: [
    {
      source: saturatedVapourPage,
      at: 'Eq. (1): saturation vapour pressure over water, after WMO-No. 8',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: conservationHeatingPage,
      at: 'that the vapour pressure indoors stays that outdoors, and the humidity falls',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { fromTemperatureC: 0, relativeHumidityPct: 90, toTemperatureC: 20 },
      expect: { relativeHumidityPct: '23' },
      within: { value: 0.6, because: 'The page reads it off a diagram and says “approximately”.' },
      from: { source: indoorHumidityPage, at: 'example: 0 °C and 90 %, heated to 20 °C', confirmed: 'text' },
    },
    {
      given: { fromTemperatureC: 10, relativeHumidityPct: 80, toTemperatureC: 20 },
      expect: { relativeHumidityPct: '42.05' },
      from: {
        workedByHand:
          '17.62 × 10 / (243.12 + 10) = 0.6961125; 17.62 × 20 / (243.12 + 20) = 1.3393129; ' +
          '80 × exp(0.6961125 − 1.3393129) = 42.05 %',
      },
    },
  ],
  laws: [
    {
      of: 'relativeHumidityPct',
      by: {
        relativeHumidityPct: 'proportional',
        fromTemperatureC: 'increasing',
        toTemperatureC: 'decreasing',
      },
    },
  ],
  peers: [
    {
      name: 'the same with a formula in powers of ten',
      of: 'relativeHumidityPct',
      compute: byPowersOfTen,
      // They lie furthest apart from −20 to 25 °C: the pressures differ by 0.37 % one way and 0.23 % the other.
      relative: 0.0062,
      over: { fromTemperatureC: [-20, 50], toTemperatureC: [-20, 50] },
      source: {
        source: humidityFormulasPage,
        at: 'constants for −20 to 50 °C, at most 0.083 % off',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
  ],
  cautions: [
    'A figure for a room without people and plants, well aired. Measure the air where the wood will stand.',
  ],
}));
