import { defineRule, requireInputs } from '@scantling/rules';
import { coverageAnswer2003 } from '@scantling/rules/sources';
import { solidsLimits } from '../mixing.ts';

const limits = {
  volumeSolidsPct: solidsLimits,
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
 * Source: volume is area times thickness; stated so in a worked answer of a resource centre for coatings.
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
  symbols: {
    R: 'spreading rate, m²/L',
    V_S: 'solids by volume, %',
    '\\mathit{DFT}': 'dry film thickness, µm',
  },
  inSymbols: (input, output) => ({
    R: output.spreadingRateM2PerL,
    V_S: input.volumeSolidsPct,
    '\\mathit{DFT}': input.dryFilmUm,
  }),
  sources: [
    {
      source: coverageAnswer2003,
      at: 'coverage = 1604 × gallons × volume solids × transfer efficiency / film thickness (mils)',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { volumeSolidsPct: 65, dryFilmUm: 125 },
      expect: { spreadingRateM2PerL: '5.200' },
      from: { workedByHand: '65 × 10 / 125 = 5.2 m²/L' },
    },
    {
      given: { volumeSolidsPct: 100, dryFilmUm: 25.4 },
      expect: {
        spreadingRateM2PerL: { printed: '1604', unit: 'ft²/gal', times: 0.09290304 / 3.785411784 },
      },
      from: {
        source: coverageAnswer2003,
        at: '1,604 is the number of ft² that a solid gallon will cover at 1.0 mils',
        confirmed: 'text',
      },
    },
  ],
  laws: [{ of: 'spreadingRateM2PerL', by: { volumeSolidsPct: 'proportional', dryFilmUm: 'decreasing' } }],
  cautions: [
    'Theoretical: bare wood soaks up the first coat, and some stays in pads, rags and jars. Where the product’s own sheet gives a spreading rate for wood, use that.',
  ],
}));
