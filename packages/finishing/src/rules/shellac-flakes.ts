import { defineRule, plusZero, requireChoice, requireInputs } from '@scantling/rules';
import { poundCutAnswer } from '@scantling/rules/sources';
import { G_PER_LB, LB_PER_GAL, ML_PER_GAL } from '../lb-per-gal.ts';
import { type CutPer, cutLimits, flakeLimits, shellacMlLimits } from '../shellac.ts';
import { shellacCard } from '../shellac-card.ts';

export interface ShellacFlakesInput {
  /** Cut wanted, pounds of flakes to the US gallon, 0.1 to 6. */
  readonly cutLbPerGal: number;
  /** Alcohol, mL, 0 to 100 000. */
  readonly alcoholMl: number;
  /** Density of the flakes, g/L, 900 to 1300: how much room they take once dissolved. */
  readonly flakeDensityGPerL: number;
  /** Whether the cut counts a gallon of alcohol, as the trade does, or of the finished solution. */
  readonly cutPer: CutPer;
}

export interface ShellacFlakes {
  /** Flakes to dissolve, g. */
  readonly flakesG: number;
  /** What it makes, mL: the flakes take up room. */
  readonly solutionMl: number;
}

/**
 * How much dry shellac to dissolve in a volume of alcohol for a wanted cut, and what it makes.
 *
 * @returns Flakes in g, solution in mL.
 * @throws RangeError where an input is outside its limits, or the convention is none of the two.
 * Source: a cut is pounds of flakes dissolved in a US gallon of alcohol; 1 lb/gal is 119.826 g/L.
 * @example
 * ```ts
 * import { shellacFlakes } from '@scantling/finishing';
 * // Two pounds to the gallon, in half a litre of alcohol: 2 × 119.826 × 0.5
 * shellacFlakes({ cutLbPerGal: 2, alcoholMl: 500, flakeDensityGPerL: 1100, cutPer: 'alcohol' }) // => { flakesG: 119.826, solutionMl: 608.93 }
 * ```
 */
export function shellacFlakes(input: ShellacFlakesInput): ShellacFlakes {
  requireInputs('shellacFlakes', input, {
    cutLbPerGal: cutLimits,
    alcoholMl: shellacMlLimits,
    flakeDensityGPerL: flakeLimits,
  });
  requireChoice('shellacFlakes', 'cutPer', input.cutPer, ['alcohol', 'solution']);
  const gPerL = input.cutLbPerGal * LB_PER_GAL;
  // Of a litre of solution the flakes leave only a part to the alcohol.
  const alcoholShare = input.cutPer === 'alcohol' ? 1 : 1 - gPerL / input.flakeDensityGPerL;
  const flakesG = plusZero((gPerL * input.alcoholMl) / 1000 / alcoholShare);
  return { flakesG, solutionMl: plusZero(input.alcoholMl + (flakesG * 1000) / input.flakeDensityGPerL) };
}

export const shellacFlakesRule = /* @__PURE__ */ defineRule<ShellacFlakesInput, ShellacFlakes>(() => {
  const { sources, cautions, flakeDensityGPerL, cutPer } = shellacCard();
  return {
    id: 'finishing/shellac-flakes',
    title: 'Shellac by the pound cut',
    summary: 'How much dry shellac goes into a volume of alcohol for a wanted cut, and how much that makes.',
    basis: 'convention',
    inputs: {
      cutLbPerGal: {
        kind: 'number',
        label: 'Cut',
        unit: 'lb/gal',
        ...cutLimits,
        help: 'Pounds of flakes to the US gallon: 1 for a sealer, 2 to 3 for brushing. 1 lb/gal is 119.8 g/L.',
      },
      alcoholMl: { kind: 'number', label: 'Alcohol', unit: 'mL', ...shellacMlLimits },
      flakeDensityGPerL,
      cutPer,
    },
    outputs: {
      flakesG: { label: 'Flakes', unit: 'g' },
      solutionMl: { label: 'Makes', unit: 'mL', help: 'The flakes take up room.' },
    },
    compute: shellacFlakes,
    formula: String.raw`m = \frac{c V}{a}, \qquad V_L = V + \frac{m}{\rho}`,
    symbols: {
      m: 'flakes, lb',
      c: 'cut',
      V: 'alcohol, gal',
      a: 'share of alcohol in a gallon that the cut counts: 1 where it is of alcohol, 1 − c/ρ where it is of solution',
      '\\rho': 'density of the flakes, lb/gal',
      V_L: 'solution, gal',
    },
    inSymbols: (input, output) => ({
      m: output.flakesG / G_PER_LB,
      c: input.cutLbPerGal,
      V: input.alcoholMl / ML_PER_GAL,
      a: input.cutPer === 'alcohol' ? 1 : 1 - (input.cutLbPerGal * LB_PER_GAL) / input.flakeDensityGPerL,
      '\\rho': input.flakeDensityGPerL / LB_PER_GAL,
      V_L: output.solutionMl / ML_PER_GAL,
    }),
    sources,
    examples: [
      {
        given: { cutLbPerGal: 2, alcoholMl: 1000, flakeDensityGPerL: 1100, cutPer: 'alcohol' },
        expect: { flakesG: '239.65', solutionMl: '1217.9' },
        from: { workedByHand: '2 × 119.8264 = 239.65; 1000 + 239.65 / 1.1 = 1217.9' },
      },
      {
        given: { cutLbPerGal: 3, alcoholMl: 473.176473, flakeDensityGPerL: 1200, cutPer: 'alcohol' },
        expect: { flakesG: { printed: '6', unit: 'oz', times: 28.349523125 } },
        from: {
          source: poundCutAnswer,
          at: 'a 3-lb cut: 6 ounces to a pint',
          confirmed: 'text',
          tier: 'reprint',
        },
      },
      {
        given: { cutLbPerGal: 1, alcoholMl: 473.176473, flakeDensityGPerL: 1200, cutPer: 'alcohol' },
        expect: { flakesG: { printed: '2', unit: 'oz', times: 28.349523125 } },
        from: {
          source: poundCutAnswer,
          at: 'a 1-lb cut: 2 ounces to a pint',
          confirmed: 'text',
          tier: 'reprint',
        },
      },
      {
        given: { cutLbPerGal: 2, alcoholMl: 1000, flakeDensityGPerL: 1100, cutPer: 'solution' },
        expect: { flakesG: '306.4', solutionMl: '1278.6' },
        from: {
          workedByHand:
            '239.653 / (1 − 239.653 / 1100) = 306.41, that is 306.4; 1000 + 306.41 / 1.1 = 1278.6',
        },
      },
    ],
    laws: [
      { of: 'flakesG', by: { alcoholMl: 'proportional', cutLbPerGal: 'increasing' } },
      { of: 'solutionMl', by: { alcoholMl: 'proportional', flakeDensityGPerL: 'decreasing' } },
    ],
    cautions,
  };
});
