import { defineRule, requireNumber } from '@scantling/rules';
import {
  luthiersMoistureThread,
  moistureArticle,
  smallKilnManual,
  woodHandbook2010,
} from '@scantling/rules/sources';
import { moistureEquation, moistureEquationSources, moistureEquationSymbols } from '../moisture-equation.ts';
import { equilibriumMoisture } from './equilibrium-moisture.ts';

const limits = {
  temperatureC: { min: -30, max: 100 },
  moisturePct: { min: 0, max: 30 },
} as const;

/** Halvings of 100 % after which the bracket is narrower than two neighbouring numbers near its upper end. */
const HALVINGS = 60;

export interface HumidityForMoistureInput {
  /** Temperature of the air, °C, −30 to 100. */
  readonly temperatureC: number;
  /** Moisture content that the wood is wanted to come to, % of its ovendry mass, 0 to 30. */
  readonly moisturePct: number;
}

export interface HumidityForMoisture {
  /** Relative humidity of the air, %; `null` where no humidity up to 100 % keeps wood so wet. */
  readonly relativeHumidityPct: number | null;
}

/**
 * The relative humidity at which wood comes to a wanted moisture content, while the air keeps its temperature:
 * the equation of {@link equilibriumMoisture}, solved for the humidity.
 *
 * @returns The relative humidity, %; `null` where even 100 % does not keep wood so wet.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 4-5, claimed for the range of its Table 4-2: from −1.1 °C up, answers
 * from 5 to 95 % relative humidity.
 * @example
 * ```ts
 * import { humidityForMoisture } from '@scantling/movement';
 * humidityForMoisture({ temperatureC: 20, moisturePct: 9.271 }).relativeHumidityPct // => 50.00
 * humidityForMoisture({ temperatureC: 20, moisturePct: 29.5 }) // => { relativeHumidityPct: null }
 * humidityForMoisture({ temperatureC: 20, moisturePct: 31 }) // throws humidityForMoisture requires moisturePct between 0 and 30
 * ```
 */
export function humidityForMoisture(input: HumidityForMoistureInput): HumidityForMoisture {
  const { temperatureC, moisturePct } = input ?? {};
  requireNumber('humidityForMoisture', 'temperatureC', temperatureC, limits.temperatureC);
  requireNumber('humidityForMoisture', 'moisturePct', moisturePct, limits.moisturePct);
  const tooDry = (relativeHumidityPct: number) =>
    equilibriumMoisture({ temperatureC, relativeHumidityPct }).moisturePct < moisturePct;
  let low = 0;
  let high = 100;
  if (tooDry(high)) return { relativeHumidityPct: null };
  // Wood is wetter in damper air at every temperature allowed, so the answer never leaves the bracket.
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (tooDry(middle)) low = middle;
    else high = middle;
  }
  return { relativeHumidityPct: moisturePct ? high : 0 };
}

export const humidityForMoistureRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/humidity-for-moisture',
  title: 'Humidity for a moisture content',
  summary: 'How damp a room has to be for wood in it to come to a wanted moisture content and stay there.',
  basis: 'measured',
  inputs: {
    temperatureC: {
      kind: 'number',
      label: 'Air temperature',
      unit: '°C',
      ...limits.temperatureC,
      help: 'Where the wood is kept, averaged over weeks.',
    },
    moisturePct: {
      kind: 'number',
      label: 'Moisture content wanted',
      unit: '%',
      ...limits.moisturePct,
      help: 'Share of the ovendry mass, as a moisture meter reads it.',
    },
  },
  outputs: {
    relativeHumidityPct: {
      label: 'Relative humidity to keep',
      unit: '%',
      help: 'Nothing where even air of 100 % would not keep wood so wet.',
    },
  },
  compute: humidityForMoisture,
  formula: moistureEquation(String.raw` \text{, solved for } h`),
  symbols: { M: 'moisture content wanted, %', ...moistureEquationSymbols },
  valid: { temperatureC: [-1.1, 100] },
  sources: moistureEquationSources,
  examples: [
    {
      given: { temperatureC: 10, moisturePct: 8.5 },
      expect: { relativeHumidityPct: '44' },
      from: {
        source: luthiersMoistureThread,
        at: 'reading off a chart: 50 °F, 44 %, 8.5 %',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { temperatureC: (70 - 32) / 1.8, moisturePct: 7.7 },
      expect: { relativeHumidityPct: '40' },
      from: {
        source: smallKilnManual,
        at: 'p. 41: 7.7 % at 70 °F and 40 %, read from its table of the Wood Handbook',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { temperatureC: 60, moisturePct: 8.4 },
      expect: { relativeHumidityPct: '55' },
      from: {
        source: moistureArticle,
        at: 'example: T = 140 °F, h = 0.55',
        confirmed: 'text',
        tier: 'reprint',
        erratum: 'The same article quotes 8.0 from an older table.',
      },
    },
    {
      given: { temperatureC: -1.1, moisturePct: 24.3 },
      expect: { relativeHumidityPct: '95' },
      from: { source: woodHandbook2010, at: 'Table 4-2, −1.1 °C, 95 %', confirmed: 'memory' },
    },
    {
      given: { temperatureC: 20, moisturePct: 9.271 },
      expect: { relativeHumidityPct: '50.0' },
      from: {
        workedByHand:
          'W = 349 + 1.29 × 20 + 0.0135 × 400 = 380.2; ' +
          'K = 0.805 + 0.000736 × 20 − 0.00000273 × 400 = 0.818628; ' +
          'K₁ = 6.27 − 0.00938 × 20 − 0.000303 × 400 = 5.9612; ' +
          'K₂ = 1.91 + 0.0407 × 20 − 0.000293 × 400 = 2.6068; ' +
          'tried with 50.0 %: K h = 0.818628 × 0.5 = 0.409314; ' +
          'K₁ K h = 5.9612 × 0.409314 = 2.440003; ' +
          'K₁ K₂ K² h² = 2.440003 × 2.6068 × 0.409314 = 2.603483; ' +
          'first term 0.409314 / (1 − 0.409314) = 0.69295; ' +
          'second term (2.440003 + 2 × 2.603483) / (1 + 2.440003 + 2.603483) = 1.26532; ' +
          'M = 1800 / 380.2 × (0.69295 + 1.26532) = 9.271 %, which is the moisture content wanted',
      },
    },
  ],
  laws: [{ of: 'relativeHumidityPct', by: { moisturePct: 'increasing' } }],
  cautions: [
    'Wood takes weeks to months to get there, longer where it is thick or finished. Check it with a moisture meter.',
    'Air that is kept damp grows mould and drips on cold walls and windows: find out what your building bears before you humidify it.',
  ],
}));
