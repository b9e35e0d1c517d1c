import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import {
  alduchovEskridge1996,
  bolton1980,
  dewPointTable,
  saturatedVapourPage,
} from '@scantling/rules/sources';
import { magnusExponent } from '../magnus.ts';

const limits = {
  temperatureC: { min: -45, max: 60 },
  relativeHumidityPct: { min: 1, max: 100 },
} as const;

export interface DewPointInput {
  /** Temperature of the air, °C, −45 to 60. */
  readonly temperatureC: number;
  /** Relative humidity of the air, over water as weather stations give it, %, 1 to 100. */
  readonly relativeHumidityPct: number;
}

export interface DewPoint {
  /** Temperature at which the air begins to leave water on a surface, °C. */
  readonly dewPointC: number;
}

/**
 * The dew point of air: a surface as cold as this gets wet. Over water, so that below 0 °C it lies a little under the
 * frost point.
 *
 * @returns The dew point, °C.
 * @throws RangeError where an input is outside its limits.
 * Source: the Magnus formula with the coefficients of the WMO Guide to Instruments and Methods of Observation (WMO-No. 8).
 * @example
 * ```ts
 * import { dewPoint } from '@scantling/finishing';
 * dewPoint({ temperatureC: 20, relativeHumidityPct: 65 }).dewPointC // => 13.22
 * dewPoint({ temperatureC: 20, relativeHumidityPct: 0 }) // throws dewPoint requires relativeHumidityPct between 1 and 100, got 0
 * ```
 */
export function dewPoint(input: DewPointInput): DewPoint {
  requireInputs('dewPoint', input, limits);
  const { temperatureC, relativeHumidityPct } = input;
  const exponent = Math.log(relativeHumidityPct / 100) + magnusExponent(temperatureC);
  return { dewPointC: plusZero((243.12 * exponent) / (17.62 - exponent)) };
}

/** The same with other coefficients of the Magnus formula. */
const magnus =
  (factor: number, offsetC: number) =>
  ({ temperatureC, relativeHumidityPct }: DewPointInput): number => {
    const exponent = Math.log(relativeHumidityPct / 100) + (factor * temperatureC) / (offsetC + temperatureC);
    return (offsetC * exponent) / (factor - exponent);
  };

export const dewPointRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/dew-point',
  title: 'Dew point of the air',
  summary:
    'The temperature at which air leaves water on a surface: wood, metal and a fresh coat must stay well above it.',
  basis: 'measured',
  inputs: {
    temperatureC: { kind: 'number', label: 'Temperature of the air', unit: '°C', ...limits.temperatureC },
    relativeHumidityPct: {
      kind: 'number',
      label: 'Relative humidity',
      unit: '%',
      ...limits.relativeHumidityPct,
      help: 'Measured where the work stands, not at the weather station.',
    },
  },
  outputs: { dewPointC: { label: 'Dew point', unit: '°C' } },
  compute: dewPoint,
  formula: String.raw`t_d = \frac{243.12\,g}{17.62 - g}, \quad g = \ln\frac{h}{100} + \frac{17.62\,t}{243.12 + t}`,
  symbols: {
    t_d: 'dew point, °C',
    g: 'logarithm of the vapour pressure over 6.112 hPa',
    t: 'temperature of the air, °C',
    h: 'relative humidity, %',
  },
  inSymbols: ({ temperatureC, relativeHumidityPct }, output) => ({
    t_d: output.dewPointC,
    g: Math.log(relativeHumidityPct / 100) + magnusExponent(temperatureC),
    t: temperatureC,
    h: relativeHumidityPct,
  }),
  sources: [
    {
      source: saturatedVapourPage,
      at: 'Eq. (1): saturation vapour pressure over water, after WMO-No. 8, solved for the temperature',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { temperatureC: 20, relativeHumidityPct: 70 },
      expect: { dewPointC: '14.4' },
      from: {
        source: dewPointTable,
        at: 'worked example below the table: 20 °C, 70 %',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { temperatureC: 25, relativeHumidityPct: 50 },
      expect: { dewPointC: '13.8' },
      within: {
        value: 0.06,
        because: 'The table says of itself that its values are rounded; 13.85 lies between two.',
      },
      from: { source: dewPointTable, at: 'cell at 25 °C, 50 %', confirmed: 'text', tier: 'reprint' },
    },
    {
      given: { temperatureC: 15, relativeHumidityPct: 80 },
      expect: { dewPointC: '11.58' },
      from: {
        workedByHand:
          '17.62 × 15 / (243.12 + 15) = 1.0239424; ln(0.8) = −0.2231436; 1.0239424 − 0.2231436 = 0.8007988; ' +
          '243.12 × 0.8007988 / (17.62 − 0.8007988) = 11.58 °C',
      },
    },
  ],
  laws: [{ of: 'dewPointC', by: { temperatureC: 'increasing', relativeHumidityPct: 'increasing' } }],
  peers: [
    {
      name: 'the same with the coefficients of 1996',
      of: 'dewPointC',
      compute: magnus(17.625, 243.04),
      absolute: 0.06,
      source: {
        source: alduchovEskridge1996,
        at: 'coefficients 17.625 and 243.04 °C',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      name: 'the same with the coefficients of 1980',
      of: 'dewPointC',
      compute: magnus(17.67, 243.5),
      absolute: 0.06,
      over: { temperatureC: [-20, 50], relativeHumidityPct: [10, 100] },
      source: {
        source: bolton1980,
        at: 'coefficients 17.67 and 243.5 °C',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
  ],
  cautions: [
    'A humidity that is read 5 % too low puts the dew point 1 to 2 °C too low, and more in dry air: keep a margin, and measure the surface too.',
  ],
}));
