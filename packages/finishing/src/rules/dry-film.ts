import { defineRule, requireInputs } from '@scantling/rules';
import { finishingGuidebook2012, wetFilmAnswer2003 } from '@scantling/rules/sources';
import { solidsLimits, thinnerLimits } from '../mixing.ts';
import { mixingCard } from '../mixing-card.ts';

const limits = {
  wetFilmUm: { min: 1, max: 5000 },
  volumeSolidsPct: solidsLimits,
  thinnerPct: thinnerLimits,
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
 * Source: the solids stay, the rest goes; stated so, with thinner, in a guidebook for finishing shops.
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

export const dryFilmRule = /* @__PURE__ */ defineRule(() => {
  const { volumeSolidsPct, thinnerPct } = mixingCard();
  const mils = (printed: string) => ({ printed, unit: 'mil', times: 25.4 });
  return {
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
      volumeSolidsPct,
      thinnerPct,
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
    inSymbols: (input, output) => ({
      '\\mathit{DFT}': output.dryFilmUm,
      '\\mathit{WFT}': input.wetFilmUm,
      V_S: input.volumeSolidsPct / 100,
      t: input.thinnerPct / 100,
    }),
    sources: [
      {
        source: finishingGuidebook2012,
        at: 'p. 615: WFT = DFT / (solids by volume / (100 % + thinner added))',
        confirmed: 'text',
      },
      { source: wetFilmAnswer2003, at: 'formula and example', confirmed: 'text' },
    ],
    examples: [
      {
        given: { wetFilmUm: 3.57 * 25.4, volumeSolidsPct: 42, thinnerPct: 0 },
        expect: { dryFilmUm: mils('1.5') },
        from: { source: wetFilmAnswer2003, at: 'example: 3.57 mils wet for 1.5 at 42 %', confirmed: 'text' },
      },
      {
        given: { wetFilmUm: 100, volumeSolidsPct: 50, thinnerPct: 25 },
        expect: { dryFilmUm: '40.00' },
        from: { workedByHand: '100 × 0.5 / 1.25 = 40 µm' },
      },
    ],
    laws: [
      {
        of: 'dryFilmUm',
        by: { wetFilmUm: 'proportional', volumeSolidsPct: 'proportional', thinnerPct: 'decreasing' },
      },
    ],
    cautions: ['On bare wood the first coat soaks in and leaves less than this.'],
  };
});
