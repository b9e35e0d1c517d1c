import { defineRule, requireInputs } from '@scantling/rules';
import { finishingGuidebook2012 } from '@scantling/rules/sources';
import { oilyRags, productSheet, solvents, thinWithin } from '../cautions.ts';
import { solidsLimits, thinnerLimits } from '../mixing.ts';
import { mixingCard } from '../mixing-card.ts';

const limits = {
  volumeSolidsPct: solidsLimits,
  thinnerPct: thinnerLimits,
} as const;

export interface ThinnedSolidsInput {
  /** Solids by volume before thinning, %, 1 to 100. */
  readonly volumeSolidsPct: number;
  /** Thinner added, % of the volume of the finish, 0 to 1000. */
  readonly thinnerPct: number;
}

export interface ThinnedSolids {
  /** Solids by volume of the thinned finish, %. */
  readonly thinnedSolidsPct: number;
}

/**
 * Solids by volume of a finish after thinner is added: the same solids in more liquid.
 *
 * @returns The solids of the thinned finish, % by volume.
 * @throws RangeError where an input is outside its limits.
 * Source: a guidebook for finishing shops, in its formula for wet films.
 * @example
 * ```ts
 * import { thinnedSolids } from '@scantling/finishing';
 * // A litre at 60 % with a quarter litre of thinner: 60 / 1.25
 * thinnedSolids({ volumeSolidsPct: 60, thinnerPct: 25 }).thinnedSolidsPct // => 48
 * ```
 */
export function thinnedSolids(input: ThinnedSolidsInput): ThinnedSolids {
  requireInputs('thinnedSolids', input, limits);
  return { thinnedSolidsPct: (input.volumeSolidsPct * 100) / (100 + input.thinnerPct) };
}

export const thinnedSolidsRule = /* @__PURE__ */ defineRule(() => {
  const { volumeSolidsPct, thinnerPct } = mixingCard();
  return {
    id: 'finishing/thinned-solids',
    title: 'Solids after thinning',
    summary:
      'How much of a finish still stays on the wood when thinner was added: the same solids in more liquid.',
    basis: 'derived',
    inputs: {
      volumeSolidsPct,
      thinnerPct,
    },
    outputs: { thinnedSolidsPct: { label: 'Solids by volume after', unit: '%' } },
    compute: thinnedSolids,
    formula: String.raw`V_T = \frac{V_S}{1 + t}`,
    symbols: {
      V_T: 'solids by volume after',
      V_S: 'solids by volume before',
      t: 'thinner added, as a fraction of the finish',
    },
    inSymbols: (input, output) => ({
      V_T: output.thinnedSolidsPct,
      V_S: input.volumeSolidsPct,
      t: input.thinnerPct / 100,
    }),
    sources: [
      {
        source: finishingGuidebook2012,
        at: 'p. 615: solids by volume / (100 % + thinner added)',
        confirmed: 'text',
      },
    ],
    examples: [
      {
        given: { volumeSolidsPct: 60, thinnerPct: 25 },
        expect: { thinnedSolidsPct: '48.00' },
        from: { workedByHand: '60 / 1.25 = 48' },
      },
      {
        given: { volumeSolidsPct: 35, thinnerPct: 10 },
        expect: { thinnedSolidsPct: '31.82' },
        from: { workedByHand: '35 / 1.1 = 31.82' },
      },
    ],
    laws: [{ of: 'thinnedSolidsPct', by: { volumeSolidsPct: 'proportional', thinnerPct: 'decreasing' } }],
    cautions: [thinWithin, oilyRags, solvents, productSheet],
  };
});
