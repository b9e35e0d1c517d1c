import { defineRule, requireInputs } from '@scantling/rules';
import { coatingConsumptionSheet, coatingCoverageSheet, wetFilmFormulae } from '@scantling/rules/sources';

const limits = {
  volumeSolidsPct: { min: 1, max: 100 },
  dryFilmUm: { min: 1, max: 5000 },
} as const;

export interface SpreadingRateInput {
  /** Solids by volume of the liquid as it is applied, %, 1 to 100. */
  readonly volumeSolidsPct: number;
  /** Film that one coat is to leave once dry, µm, 1 to 5000. */
  readonly dryFilmUm: number;
}

export interface SpreadingRate {
  /** Area that one litre covers, m²/L, with nothing lost. */
  readonly spreadingRateM2PerL: number;
}

/**
 * Area that a litre of finish covers in one coat on a smooth face that soaks up none, with nothing lost.
 *
 * @returns The theoretical spreading rate in m²/L.
 * @throws RangeError where an input is outside its limits.
 * Source: volume is area times thickness; stated so in coating makers' bulletins.
 * @example
 * ```ts
 * import { spreadingRate } from '@scantling/finishing';
 * // 40 % solids, 25 µm dry: 40 × 10 / 25
 * spreadingRate({ volumeSolidsPct: 40, dryFilmUm: 25 }).spreadingRateM2PerL // => 16
 * ```
 */
export function spreadingRate(input: SpreadingRateInput): SpreadingRate {
  requireInputs('spreadingRate', input, limits);
  return { spreadingRateM2PerL: (input.volumeSolidsPct * 10) / input.dryFilmUm };
}

/** m²/L in one ft²/gal: a square foot is 0.09290304 m², a US gallon 3.785411784 L. */
const M2_PER_L = 0.09290304 / 3.785411784;
/** µm in one mil, a thousandth of an inch. */
const UM = 25.4;

export const spreadingRateRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/spreading-rate',
  title: 'Theoretical spreading rate',
  summary:
    'How much area a litre of finish covers in one coat, if none soaks in and none is lost: the figure to begin from.',
  basis: 'derived',
  inputs: {
    volumeSolidsPct: {
      kind: 'number',
      label: 'Solids by volume',
      unit: '%',
      ...limits.volumeSolidsPct,
      help: 'What stays when the solvent or water has gone. By volume, not by weight: see the product’s data sheet.',
    },
    dryFilmUm: {
      kind: 'number',
      label: 'Dry film of one coat',
      unit: 'µm',
      ...limits.dryFilmUm,
      help: 'See the product’s data sheet. 1 mil, a thousandth of an inch, is 25.4 µm.',
    },
  },
  outputs: { spreadingRateM2PerL: { label: 'Spreading rate', unit: 'm²/L' } },
  compute: spreadingRate,
  formula: String.raw`R = \frac{10 \, V_S}{\mathit{DFT}}`,
  symbols: { R: 'spreading rate', V_S: 'solids by volume', '\\mathit{DFT}': 'dry film thickness' },
  sources: [
    {
      source: coatingConsumptionSheet,
      at: 'first formula: volume solids % × 10 / dry film thickness (micron)',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: coatingCoverageSheet,
      at: 'metric formula and example',
      confirmed: 'text',
      tier: 'reprint',
      erratum:
        'The formula is printed with 100 × SBV, the example below it with 1000 × 0.65 / 125 = 5.2; 1000 is right.',
    },
  ],
  examples: [
    {
      given: { volumeSolidsPct: 65, dryFilmUm: 125 },
      expect: { spreadingRateM2PerL: '5.2' },
      from: {
        source: coatingCoverageSheet,
        at: 'metric example: 65 % at 125 microns',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { volumeSolidsPct: 65, dryFilmUm: 5 * UM },
      expect: { spreadingRateM2PerL: { printed: '208.52', unit: 'ft²/gal', times: M2_PER_L } },
      within: {
        value: 0.0006,
        because: 'The bulletin rounds 231 000 / 144 = 1604.17 ft² to 1604, which is 0.01 % less.',
      },
      from: {
        source: coatingCoverageSheet,
        at: 'US example: 65 % at 5.0 mils',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { volumeSolidsPct: 100, dryFilmUm: 10 * UM },
      expect: { spreadingRateM2PerL: { printed: '160.417', unit: 'ft²/gal', times: M2_PER_L } },
      from: {
        source: wetFilmFormulae,
        at: 'example: 10 mils wet, which is what 100 % solids leave dry',
        confirmed: 'text',
      },
    },
  ],
  laws: [{ of: 'spreadingRateM2PerL', by: { volumeSolidsPct: 'proportional', dryFilmUm: 'decreasing' } }],
  cautions: [
    'Theoretical: bare wood soaks up the first coat, and some stays in pads, rags and jars. Where the product’s own sheet gives a spreading rate for wood, use that.',
  ],
}));
