import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { shellacConversionTable } from '@scantling/rules/sources';
import { G_PER_LB, LB_PER_GAL, ML_PER_GAL } from '../lb-per-gal.ts';
import { flakeLimits } from '../shellac.ts';
import { shellacCard } from '../shellac-card.ts';

const limits = {
  flakesG: { min: 0, max: 50_000 },
  alcoholMl: { min: 1, max: 100_000 },
  flakeDensityGPerL: flakeLimits,
} as const;

export interface ShellacCutInput {
  /** Flakes dissolved, g, 0 to 50 000. */
  readonly flakesG: number;
  /** Alcohol, mL, 1 to 100 000. */
  readonly alcoholMl: number;
  /** Density of the flakes, g/L, 900 to 1300: how much room they take once dissolved. */
  readonly flakeDensityGPerL: number;
}

export interface ShellacCut {
  /** Cut as the trade counts it, pounds to a US gallon of alcohol. */
  readonly perAlcoholLbPerGal: number;
  /** Pounds in a US gallon of the solution: less, since the flakes take up room. */
  readonly perSolutionLbPerGal: number;
  /** Flakes in a litre of the solution, g/L. */
  readonly concentrationGPerL: number;
}

/**
 * The cut of a shellac by both ways of counting, and in grams to the litre.
 *
 * @returns Cut per gallon of alcohol and per gallon of solution, lb/gal, and the concentration, g/L of solution.
 * @throws RangeError where an input is outside its limits.
 * Source: a cut is pounds of flakes dissolved in a US gallon of alcohol; 1 lb/gal is 119.826 g/L.
 * @example
 * ```ts
 * import { shellacCut } from '@scantling/finishing';
 * // 240 g in a litre, which becomes 1.2 L
 * shellacCut({ flakesG: 240, alcoholMl: 1000, flakeDensityGPerL: 1200 }) // => { perAlcoholLbPerGal: 2.0029, perSolutionLbPerGal: 1.66908, concentrationGPerL: 200 }
 * ```
 */
export function shellacCut(input: ShellacCutInput): ShellacCut {
  requireInputs('shellacCut', input, limits);
  const gPerAlcoholL = plusZero((input.flakesG * 1000) / input.alcoholMl);
  const concentrationGPerL = gPerAlcoholL / (1 + gPerAlcoholL / input.flakeDensityGPerL);
  return {
    perAlcoholLbPerGal: gPerAlcoholL / LB_PER_GAL,
    perSolutionLbPerGal: concentrationGPerL / LB_PER_GAL,
    concentrationGPerL,
  };
}

export const shellacCutRule = /* @__PURE__ */ defineRule(() => {
  const { sources, cautions, flakeDensityGPerL } = shellacCard();
  return {
    id: 'finishing/shellac-cut',
    title: 'The cut of a shellac',
    summary: 'What pound cut a weight of flakes in a volume of alcohol is, by both ways of counting.',
    basis: 'convention',
    inputs: {
      flakesG: { kind: 'number', label: 'Flakes', unit: 'g', ...limits.flakesG },
      alcoholMl: { kind: 'number', label: 'Alcohol', unit: 'mL', ...limits.alcoholMl },
      flakeDensityGPerL,
    },
    outputs: {
      perAlcoholLbPerGal: { label: 'Cut, per gallon of alcohol', unit: 'lb/gal' },
      perSolutionLbPerGal: { label: 'Cut, per gallon of solution', unit: 'lb/gal' },
      concentrationGPerL: { label: 'Flakes in a litre of solution', unit: 'g/L' },
    },
    compute: shellacCut,
    formula: String.raw`c_A = \frac{m}{V}, \qquad c_L = \frac{m}{V + m / \rho}`,
    symbols: {
      c_A: 'cut per gallon of alcohol',
      c_L: 'cut per gallon of solution',
      m: 'flakes, lb',
      V: 'alcohol, gal',
      '\\rho': 'density of the flakes, lb/gal',
    },
    inSymbols: ({ flakesG, alcoholMl, flakeDensityGPerL }, output) => ({
      c_A: output.perAlcoholLbPerGal,
      c_L: output.perSolutionLbPerGal,
      m: flakesG / G_PER_LB,
      V: alcoholMl / ML_PER_GAL,
      '\\rho': flakeDensityGPerL / LB_PER_GAL,
    }),
    sources: [
      ...sources,
      {
        source: shellacConversionTable,
        at: 'note: 2 lb in 1 gal of alcohol make 1.2 gal, so a gallon of it holds 1.66 lb',
        confirmed: 'text',
        tier: 'reprint',
      },
    ],
    examples: [
      {
        given: { flakesG: 240, alcoholMl: 1000, flakeDensityGPerL: 1200 },
        expect: { perAlcoholLbPerGal: '2.003', perSolutionLbPerGal: '1.669', concentrationGPerL: '200.0' },
        from: {
          workedByHand:
            '240 / 119.8264 = 2.003; 240 g take up 240 / 1.2 = 200 mL; 240 / (1 + 0.2) = 200 g/L; 200 / 119.8264 = 1.669',
        },
      },
      {
        given: { flakesG: 2 * 453.59237, alcoholMl: 3785.411784, flakeDensityGPerL: 10 * LB_PER_GAL },
        expect: { perAlcoholLbPerGal: '2', perSolutionLbPerGal: '1.66' },
        within: {
          value: 0.007,
          because: 'The note prints 1.66 for 2 / 1.2 = 1.667, cut off and not rounded.',
        },
        from: {
          source: shellacConversionTable,
          at: 'note: a gallon of 2-lb cut contains only 1.66 lb',
          confirmed: 'text',
          tier: 'reprint',
        },
      },
    ],
    laws: [
      { of: 'perAlcoholLbPerGal', by: { flakesG: 'proportional', alcoholMl: 'decreasing' } },
      { of: 'perSolutionLbPerGal', by: { flakesG: 'increasing', flakeDensityGPerL: 'increasing' } },
      { of: 'concentrationGPerL', by: { flakesG: 'increasing', alcoholMl: 'decreasing' } },
    ],
    cautions,
  };
});
