import { defineRule, requireInputs } from '@scantling/rules';
import { finishingGuidebook2012, wetFilmAnswer2003 } from '@scantling/rules/sources';
import { solidsLimits } from '../mixing.ts';

const limits = {
  dryFilmUm: { min: 1, max: 5000 },
  volumeSolidsPct: solidsLimits,
} as const;

export interface WetFilmInput {
  /** Film that one coat is to leave once dry, µm, 1 to 5000. */
  readonly dryFilmUm: number;
  /** Solids by volume of the liquid as it is applied, %, 1 to 100. */
  readonly volumeSolidsPct: number;
}

export interface WetFilm {
  /** Film to lay down wet, µm. */
  readonly wetFilmUm: number;
}

/**
 * How thick a coat has to go on wet to leave a wanted film once dry.
 *
 * @returns The wet film in µm.
 * @throws RangeError where an input is outside its limits.
 * Source: the solids stay, the rest goes; stated so in a worked answer of a resource centre for coatings.
 * @example
 * ```ts
 * import { wetFilm } from '@scantling/finishing';
 * // 25 µm at 40 % solids: 25 / 0.4
 * wetFilm({ dryFilmUm: 25, volumeSolidsPct: 40 }).wetFilmUm // => 62.5
 * ```
 */
export function wetFilm(input: WetFilmInput): WetFilm {
  requireInputs('wetFilm', input, limits);
  // A share of 1 at most, so that rounding never makes a wet film thinner than the dry one it leaves.
  return { wetFilmUm: input.dryFilmUm / (input.volumeSolidsPct / 100) };
}

export const wetFilmRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/wet-film',
  title: 'Wet film for a dry film',
  summary: 'How thick a coat has to go on wet to leave a wanted film once the solvent or water has gone.',
  basis: 'derived',
  inputs: {
    dryFilmUm: {
      kind: 'number',
      label: 'Dry film of one coat',
      unit: 'µm',
      ...limits.dryFilmUm,
      help: 'See the product’s data sheet. 1 mil, a thousandth of an inch, is 25.4 µm.',
    },
    volumeSolidsPct: {
      kind: 'number',
      label: 'Solids by volume',
      unit: '%',
      ...limits.volumeSolidsPct,
      help: 'Of the liquid as it is applied, thinner included. By volume, not by weight.',
    },
  },
  outputs: {
    wetFilmUm: {
      label: 'Wet film',
      unit: 'µm',
      help: 'Read with a wet film comb right after the coat is laid.',
    },
  },
  compute: wetFilm,
  formula: String.raw`\mathit{WFT} = \frac{\mathit{DFT}}{V_S}`,
  symbols: {
    '\\mathit{WFT}': 'wet film thickness',
    '\\mathit{DFT}': 'dry film thickness',
    V_S: 'solids by volume, as a fraction',
  },
  inSymbols: (input, output) => ({
    '\\mathit{WFT}': output.wetFilmUm,
    '\\mathit{DFT}': input.dryFilmUm,
    V_S: input.volumeSolidsPct / 100,
  }),
  sources: [
    {
      source: finishingGuidebook2012,
      at: 'p. 615: wet-film measurement, without thinner',
      confirmed: 'text',
    },
    { source: wetFilmAnswer2003, at: 'formula', confirmed: 'text' },
  ],
  examples: [
    {
      given: { dryFilmUm: 1.5 * 25.4, volumeSolidsPct: 42 },
      expect: { wetFilmUm: { printed: '3.57', unit: 'mil', times: 25.4 } },
      from: { source: wetFilmAnswer2003, at: 'example: 1.5 mils at 42 %', confirmed: 'text' },
    },
    {
      given: { dryFilmUm: 25, volumeSolidsPct: 40 },
      expect: { wetFilmUm: '62.50' },
      from: { workedByHand: '25 / 0.4 = 62.5 µm' },
    },
  ],
  laws: [{ of: 'wetFilmUm', by: { dryFilmUm: 'proportional', volumeSolidsPct: 'decreasing' } }],
  cautions: ['A coat laid thicker than the product’s sheet allows runs, wrinkles or stays soft.'],
}));
