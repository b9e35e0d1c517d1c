import { defineRule, requireInputs } from '@scantling/rules';
import { coatingConversionChart, thinnedSolidsNote } from '@scantling/rules/sources';
import { oilyRags, productSheet, solvents, thinWithin } from '../cautions.ts';

const limits = {
  volumeSolidsPct: { min: 1, max: 100 },
  thinnerPct: { min: 0, max: 1000 },
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
 * Source: a coating maker's conversion chart and a painter's note, both with worked examples.
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

export const thinnedSolidsRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/thinned-solids',
  title: 'Solids after thinning',
  summary:
    'How much of a finish still stays on the wood when thinner was added: the same solids in more liquid.',
  basis: 'derived',
  inputs: {
    volumeSolidsPct: {
      kind: 'number',
      label: 'Solids by volume before',
      unit: '%',
      ...limits.volumeSolidsPct,
      help: 'See the product’s data sheet. By volume, not by weight.',
    },
    thinnerPct: {
      kind: 'number',
      label: 'Thinner added',
      unit: '%',
      ...limits.thinnerPct,
      help: 'Of the volume of the finish: 250 mL to a litre is 25 %.',
    },
  },
  outputs: { thinnedSolidsPct: { label: 'Solids by volume after', unit: '%' } },
  compute: thinnedSolids,
  formula: String.raw`V_T = \frac{V_S}{1 + t}`,
  symbols: {
    V_T: 'solids by volume after',
    V_S: 'solids by volume before',
    t: 'thinner added, as a fraction of the finish',
  },
  sources: [
    {
      source: coatingConversionChart,
      at: 'how to calculate WFT to DFT (thinned 10 %): volume solids / (1 + thinner)',
      confirmed: 'text',
      tier: 'reprint',
      erratum:
        'Its example goes on to a dry film of 2.8 mil from 8 mil wet, which is the answer without thinner; 8 × 35 % / 110 % is 2.5 mil.',
    },
    { source: thinnedSolidsNote, at: 'answer C and what follows', confirmed: 'text' },
  ],
  examples: [
    {
      given: { volumeSolidsPct: 35, thinnerPct: 10 },
      expect: { thinnedSolidsPct: '32' },
      from: {
        source: coatingConversionChart,
        at: 'how to calculate WFT to DFT (thinned 10 %): 35 % / 110 % = 32 %',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { volumeSolidsPct: 60, thinnerPct: 25 },
      expect: { thinnedSolidsPct: '48' },
      from: {
        source: thinnedSolidsNote,
        at: 'answer C: a quart of thinner in a gallon at 60 %',
        confirmed: 'text',
      },
    },
  ],
  laws: [{ of: 'thinnedSolidsPct', by: { volumeSolidsPct: 'proportional', thinnerPct: 'decreasing' } }],
  cautions: [thinWithin, oilyRags, solvents, productSheet],
}));
