import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { texasCoatingRule } from '@scantling/rules/sources';
import { productSheet, solvents } from '../cautions.ts';
import { LB_PER_GAL } from '../lb-per-gal.ts';

const limits = {
  vocGPerL: { min: 0, max: 1000 },
  solventDensityGPerL: { min: 600, max: 1700 },
} as const;

export interface VocOfSolidsInput {
  /** Volatile organic compounds in a litre of finish, g/L, at most 95 % of the solvent's density. */
  readonly vocGPerL: number;
  /** Density of the solvent, g/L, 600 to 1700; the rule takes 7.36 lb/gal, which is 881.9 g/L. */
  readonly solventDensityGPerL: number;
}

export interface VocOfSolids {
  /** Volatile organic compounds that come with a litre of solids, g/L. */
  readonly perSolidsGPerL: number;
}

/**
 * How much solvent comes with a litre of solids: what a film costs in solvent, however much the finish is thinned.
 *
 * @returns Grams of volatile organic compounds to a litre of solids.
 * @throws RangeError where an input is outside its limits, or the solvent would fill more than 95 % of the finish.
 * Source: 30 TAC 115.423(1).
 * @example
 * ```ts
 * import { vocOfSolids } from '@scantling/finishing';
 * // 390 g/L of a solvent of 780 g/L fill half of it: 390 / 0.5
 * vocOfSolids({ vocGPerL: 390, solventDensityGPerL: 780 }) // => { perSolidsGPerL: 780 }
 * ```
 */
export function vocOfSolids(input: VocOfSolidsInput): VocOfSolids {
  requireInputs('vocOfSolids', input, limits);
  const { vocGPerL, solventDensityGPerL } = input;
  requireThat(
    'vocOfSolids',
    vocGPerL <= 0.95 * solventDensityGPerL,
    `vocGPerL at most 95 % of solventDensityGPerL, got ${vocGPerL}`,
  );
  return { perSolidsGPerL: plusZero(vocGPerL / (1 - vocGPerL / solventDensityGPerL)) };
}

export const vocOfSolidsRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/voc-of-solids',
  title: 'Solvent that comes with the solids',
  summary: 'Grams of volatile organic compounds to a litre of solids, from the content of the liquid.',
  basis: 'derived',
  inputs: {
    vocGPerL: { kind: 'number', label: 'Content of the liquid', unit: 'g/L', ...limits.vocGPerL },
    solventDensityGPerL: {
      kind: 'number',
      label: 'Density of the solvent',
      unit: 'g/L',
      ...limits.solventDensityGPerL,
      help: 'The rule takes 7.36 lb/gal, 881.9 g/L, where it is not known.',
    },
  },
  outputs: { perSolidsGPerL: { label: 'To a litre of solids', unit: 'g/L' } },
  compute: vocOfSolids,
  formula: String.raw`S = \frac{C}{1 - C / D}`,
  symbols: { S: 'to a volume of solids', C: 'content of the liquid', D: 'density of the solvent' },
  inSymbols: (input, output) => ({
    S: output.perSolidsGPerL,
    C: input.vocGPerL,
    D: input.solventDensityGPerL,
  }),
  requires: [
    {
      says: 'a content of at most 95 % of the density of the solvent',
      holds: ({ vocGPerL, solventDensityGPerL }) => vocGPerL <= 0.95 * solventDensityGPerL,
    },
  ],
  sources: [{ source: texasCoatingRule, at: 'the figure, with D = 7.36', confirmed: 'text' }],
  examples: [
    {
      given: { vocGPerL: 390, solventDensityGPerL: 780 },
      expect: { perSolidsGPerL: '780.0' },
      from: { workedByHand: '390 / (1 − 390 / 780) = 780' },
    },
    {
      given: { vocGPerL: 3.5 * LB_PER_GAL, solventDensityGPerL: 7.36 * LB_PER_GAL },
      expect: { perSolidsGPerL: { printed: '6.674', unit: 'lb/gal', times: LB_PER_GAL } },
      from: { workedByHand: '3.5 / (1 − 3.5 / 7.36) = 6.674 lb to a gallon of solids' },
    },
  ],
  laws: [{ of: 'perSolidsGPerL', by: { vocGPerL: 'increasing', solventDensityGPerL: 'decreasing' } }],
  cautions: [solvents, productSheet],
}));
