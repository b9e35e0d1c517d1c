import { defineRule, requireInputs } from '@scantling/rules';
import { coatingConversionChart } from '@scantling/rules/sources';

const limits = {
  wetFilmUm: { min: 1, max: 5000 },
  volumeSolidsPct: { min: 1, max: 100 },
  thinnerPct: { min: 0, max: 1000 },
} as const;

export interface DryFilmInput {
  /** Film laid, µm, 1 to 5000. */
  readonly wetFilmUm: number;
  /** Solids by volume before thinning, %, 1 to 100. */
  readonly volumeSolidsPct: number;
  /** Thinner added, % of the volume of the finish, 0 to 1000. */
  readonly thinnerPct: number;
}

export interface DryFilm {
  /** Film left once dry, µm. */
  readonly dryFilmUm: number;
}

/**
 * What a wet coat leaves once dry, thinner counted.
 *
 * @returns The dry film, µm.
 * @throws RangeError where an input is outside its limits.
 * Source: the solids stay, the rest goes; a coating maker's chart with worked examples.
 * @example
 * ```ts
 * import { dryFilm } from '@scantling/finishing';
 * // 100 µm wet at 50 % solids with a quarter of thinner: 100 × 0.5 / 1.25
 * dryFilm({ wetFilmUm: 100, volumeSolidsPct: 50, thinnerPct: 25 }) // => { dryFilmUm: 40 }
 * ```
 */
export function dryFilm(input: DryFilmInput): DryFilm {
  requireInputs('dryFilm', input, limits);
  return { dryFilmUm: (input.wetFilmUm * input.volumeSolidsPct) / (100 + input.thinnerPct) };
}

const mils = (printed: string) => ({ printed, unit: 'mil', times: 25.4 });

export const dryFilmRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/dry-film',
  title: 'Dry film of a wet coat',
  summary: 'How thick a film a coat leaves once the solvent or water has gone, with the thinner counted.',
  basis: 'derived',
  inputs: {
    wetFilmUm: {
      kind: 'number',
      label: 'Wet film',
      unit: 'µm',
      ...limits.wetFilmUm,
      help: 'Read with a wet film comb right after the coat is laid.',
    },
    volumeSolidsPct: {
      kind: 'number',
      label: 'Solids by volume before thinning',
      unit: '%',
      ...limits.volumeSolidsPct,
      help: 'See the product’s data sheet. By volume, not by weight.',
    },
    thinnerPct: {
      kind: 'number',
      label: 'Thinner added',
      unit: '%',
      ...limits.thinnerPct,
      help: 'Of the volume of the finish: half and half is 100 %.',
    },
  },
  outputs: { dryFilmUm: { label: 'Dry film', unit: 'µm' } },
  compute: dryFilm,
  formula: String.raw`\mathit{DFT} = \frac{\mathit{WFT} \, V_S}{1 + t}`,
  symbols: {
    '\\mathit{DFT}': 'dry film thickness',
    '\\mathit{WFT}': 'wet film thickness',
    V_S: 'solids by volume before thinning, as a fraction',
    t: 'thinner added, as a fraction of the finish',
  },
  sources: [
    {
      source: coatingConversionChart,
      at: 'how to calculate WFT to DFT, without thinner and thinned 10 %',
      confirmed: 'text',
      tier: 'reprint',
      erratum:
        'Its thinned example ends with 2.8 mil, which is the answer without thinner; 8 × 0.35 / 1.1 is 2.5 mil.',
    },
  ],
  examples: [
    {
      given: { wetFilmUm: 8 * 25.4, volumeSolidsPct: 35, thinnerPct: 0 },
      expect: { dryFilmUm: mils('2.8') },
      from: {
        source: coatingConversionChart,
        at: '8 mils wet at 35 %, without thinner',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { wetFilmUm: 8 * 25.4, volumeSolidsPct: 35, thinnerPct: 10 },
      expect: { dryFilmUm: mils('2.545') },
      from: { workedByHand: '8 × 0.35 / 1.1 = 2.545 mil' },
    },
  ],
  laws: [
    {
      of: 'dryFilmUm',
      by: { wetFilmUm: 'proportional', volumeSolidsPct: 'proportional', thinnerPct: 'decreasing' },
    },
  ],
  cautions: ['On bare wood the first coat soaks in and leaves less than this.'],
}));
