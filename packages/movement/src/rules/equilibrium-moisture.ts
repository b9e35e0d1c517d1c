import {
  checkRange,
  defineRule,
  type RangeNote,
  type RuleRange,
  requireInputs,
  requireNumber,
} from '@scantling/rules';
import {
  conservationMoistureFunction,
  luthiersMoistureThread,
  moistureArticle,
  ukuleleMoistureThread2010,
  woodHandbook2010,
} from '@scantling/rules/sources';
import { moistureEquation, moistureEquationSources, moistureEquationSymbols } from '../moisture-equation.ts';

// Within these limits the equation's constants K₁ and K₂ stay positive and K h below 0.86, so that no
// denominator comes near zero and the result rises with the humidity. Above 100 °C the relative humidity of air
// at ordinary pressure cannot reach 100 %.
const limits = {
  temperatureC: { min: -30, max: 100 },
  relativeHumidityPct: { min: 0, max: 100 },
} as const;

export interface EquilibriumMoistureInput {
  /** Temperature of the air, °C, −30 to 100. */
  readonly temperatureC: number;
  /** Relative humidity of the air, %, 0 to 100. */
  readonly relativeHumidityPct: number;
}

export interface EquilibriumMoisture {
  /** Moisture content of the wood, % of its ovendry mass. */
  readonly moisturePct: number;
}

/**
 * The moisture content that wood comes to in air of a steady temperature and humidity. Species differ little;
 * wood that dries down to it stays a little wetter than wood that takes moisture up.
 *
 * @returns The moisture content, % of ovendry mass.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 4-5, claimed for the range of its Table 4-2: from −1.1 °C up, 5 to 95 %
 * relative humidity.
 * @example
 * ```ts
 * import { equilibriumMoisture } from '@scantling/movement';
 * equilibriumMoisture({ temperatureC: 20, relativeHumidityPct: 50 }).moisturePct // => 9.271
 * equilibriumMoisture({ temperatureC: 20, relativeHumidityPct: 101 }) // throws equilibriumMoisture requires relativeHumidityPct between 0 and 100
 * ```
 */
export function equilibriumMoisture(input: EquilibriumMoistureInput): EquilibriumMoisture {
  const { temperatureC: t, relativeHumidityPct } = input ?? {};
  requireNumber('equilibriumMoisture', 'temperatureC', t, limits.temperatureC);
  requireNumber(
    'equilibriumMoisture',
    'relativeHumidityPct',
    relativeHumidityPct,
    limits.relativeHumidityPct,
  );
  const k = 0.805 + (0.000736 - 0.00000273 * t) * t;
  const kh = (k * relativeHumidityPct) / 100 + 0; // + 0 turns −0 into 0
  const k1kh = (6.27 - (0.00938 + 0.000303 * t) * t) * kh;
  const k2kh = (1.91 + (0.0407 - 0.000293 * t) * t) * kh;
  const w = 349 + (1.29 + 0.0135 * t) * t;
  return {
    moisturePct: (1800 / w) * (kh / (1 - kh) + (k1kh * (1 + 2 * k2kh)) / (1 + k1kh * (1 + k2kh))),
  };
}

/** The same equation with its constants for °F. */
function byFahrenheit({ temperatureC, relativeHumidityPct }: EquilibriumMoistureInput): number {
  const t = temperatureC * 1.8 + 32;
  const w = 330 + 0.452 * t + 0.00415 * t ** 2;
  const k = 0.791 + 0.000463 * t - 0.000000844 * t ** 2;
  const k1 = 6.34 + 0.000775 * t - 0.0000935 * t ** 2;
  const k2 = 1.09 + 0.0284 * t - 0.0000904 * t ** 2;
  const h = relativeHumidityPct / 100;
  const once = k1 * k * h;
  const twice = k1 * k2 * k ** 2 * h ** 2;
  return (1800 / w) * ((k * h) / (1 - k * h) + (once + 2 * twice) / (1 + once + twice));
}

const tableCell = (at: string) =>
  ({ source: woodHandbook2010, at: `Table 4-2, ${at}`, confirmed: 'memory' }) as const;

/** What it takes, and where its source claims it. */
const range = (): RuleRange<EquilibriumMoistureInput, EquilibriumMoisture> => ({
  inputs: {
    temperatureC: {
      kind: 'number',
      label: 'Air temperature',
      unit: '°C',
      ...limits.temperatureC,
      help: 'Where the wood is kept, averaged over weeks.',
    },
    relativeHumidityPct: {
      kind: 'number',
      label: 'Relative humidity',
      unit: '%',
      ...limits.relativeHumidityPct,
      help: 'Of the same air, averaged over weeks: thick wood does not follow a single damp day.',
    },
  },
  valid: { temperatureC: [-1.1, 100], relativeHumidityPct: [5, 95] },
});

/**
 * What lies outside the range that the source of `equilibriumMoisture` claims, without the rest of its card.
 *
 * @returns One note for each figure outside the claimed range; none where all is inside.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 4-5, claimed for the range of its Table 4-2.
 * @example
 * ```ts
 * import { equilibriumMoistureNotes } from '@scantling/movement';
 * equilibriumMoistureNotes({ temperatureC: 20, relativeHumidityPct: 2 })[0].message // => 'Relative humidity 2 % is outside 5 to 95 %, the range that the source claims.'
 * equilibriumMoistureNotes({ temperatureC: 20, relativeHumidityPct: 50 }) // => []
 * ```
 */
export function equilibriumMoistureNotes(input: EquilibriumMoistureInput): RangeNote[] {
  requireInputs('equilibriumMoistureNotes', input, limits);
  return checkRange(range(), input);
}

export const equilibriumMoistureRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/equilibrium-moisture',
  title: 'Equilibrium moisture content',
  summary:
    'The moisture content that wood settles at when the air around it keeps its temperature and humidity.',
  basis: 'measured',
  ...range(),
  outputs: {
    moisturePct: { label: 'Moisture content of the wood', unit: '%', help: 'Share of its ovendry mass.' },
  },
  compute: equilibriumMoisture,
  formula: moistureEquation(),
  symbols: { M: 'moisture content of the wood, %', ...moistureEquationSymbols },
  sources: moistureEquationSources,
  examples: [
    {
      given: { temperatureC: 60, relativeHumidityPct: 55 },
      expect: { moisturePct: '8.4' },
      from: {
        source: moistureArticle,
        at: 'example: T = 140 °F, h = 0.55',
        confirmed: 'text',
        tier: 'reprint',
        erratum: 'The same article quotes 8.0 from an older table.',
      },
    },
    {
      given: { temperatureC: 20, relativeHumidityPct: 50 },
      expect: { moisturePct: '9.271141' },
      from: {
        source: conservationMoistureFunction,
        at: 'first example: 20 °C, 50 %',
        confirmed: 'text',
      },
    },
    {
      given: { temperatureC: 21.8, relativeHumidityPct: 36.8 },
      expect: { moisturePct: '7.20' },
      from: {
        source: conservationMoistureFunction,
        at: 'second example, first reading of a room: 21.8 °C, 36.8 %',
        confirmed: 'text',
      },
    },
    {
      given: { temperatureC: (95 - 32) / 1.8, relativeHumidityPct: 44 },
      expect: { moisturePct: '7.9' },
      from: {
        source: luthiersMoistureThread,
        at: 'reading off a chart: 95 °F, 44 %',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { temperatureC: (75 - 32) / 1.8, relativeHumidityPct: 15 },
      expect: { moisturePct: '3.5' },
      from: {
        source: ukuleleMoistureThread2010,
        at: 'reading off a table: 75 °F, 15 %',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { temperatureC: (70 - 32) / 1.8, relativeHumidityPct: 40 },
      expect: { moisturePct: '7.7' },
      from: tableCell('70 °F, 40 %'),
    },
    {
      given: { temperatureC: -1.1, relativeHumidityPct: 95 },
      expect: { moisturePct: '24.3' },
      from: tableCell('−1.1 °C, 95 %'),
    },
    {
      given: { temperatureC: 20, relativeHumidityPct: 50 },
      expect: { moisturePct: '9.271' },
      from: {
        workedByHand:
          'W = 349 + 1.29 × 20 + 0.0135 × 400 = 380.2; ' +
          'K = 0.805 + 0.000736 × 20 − 0.00000273 × 400 = 0.818628; ' +
          'K₁ = 6.27 − 0.00938 × 20 − 0.000303 × 400 = 5.9612; ' +
          'K₂ = 1.91 + 0.0407 × 20 − 0.000293 × 400 = 2.6068; ' +
          'K h = 0.818628 × 0.5 = 0.409314; ' +
          'K₁ K h = 5.9612 × 0.409314 = 2.440003; ' +
          'K₁ K₂ K² h² = 2.440003 × 2.6068 × 0.409314 = 2.603483; ' +
          'first term 0.409314 / (1 − 0.409314) = 0.69295; ' +
          'second term (2.440003 + 2 × 2.603483) / (1 + 2.440003 + 2.603483) = 1.26532; ' +
          'M = 1800 / 380.2 × (0.69295 + 1.26532) = 9.271 %',
      },
    },
  ],
  laws: [{ of: 'moisturePct', by: { relativeHumidityPct: 'increasing' } }],
  peers: [
    {
      name: 'the same equation with its constants for °F',
      of: 'moisturePct',
      compute: byFahrenheit,
      absolute: 0.02,
      source: { source: woodHandbook2010, at: 'Eq. 4-5, constants for °F', confirmed: 'memory' },
    },
  ],
  cautions: [
    'Wood takes weeks to months to get there, longer where it is thick or finished. Measure with a moisture meter before you cut a joint that has to fit.',
  ],
}));
