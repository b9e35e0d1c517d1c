import { defineRule, plusZero, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { shellacConversionTable } from '@scantling/rules/sources';
import { LB_PER_GAL } from '../lb-per-gal.ts';
import { type CutPer, cutLimits, flakeLimits, shellacMlLimits } from '../shellac.ts';
import { shellacCard } from '../shellac-card.ts';

export interface ShellacThinningInput {
  /** Solution there is, mL, 0 to 100 000. */
  readonly solutionMl: number;
  /** Its cut, lb/gal, 0.1 to 6. */
  readonly fromCutLbPerGal: number;
  /** Cut wanted, lb/gal, at most what there is. */
  readonly toCutLbPerGal: number;
  /** Density of the flakes, g/L, 900 to 1300: how much room they take once dissolved. */
  readonly flakeDensityGPerL: number;
  /** Whether both cuts count a gallon of alcohol, as the trade does, or of the finished solution. */
  readonly cutPer: CutPer;
}

export interface ShellacThinning {
  /** Alcohol to add, mL. */
  readonly alcoholMl: number;
}

/**
 * How much alcohol takes shellac from one cut to a lighter one.
 *
 * @returns The alcohol to add, mL.
 * @throws RangeError where an input is outside its limits, or the wanted cut is above what there is.
 * Source: the flakes stay; a table of a woodworking magazine gives the same to about a quarter part, but for a few cells
 * that are up to 0.83 of a part off.
 * @example
 * ```ts
 * import { shellacThinning } from '@scantling/finishing';
 * // Of 1100 mL of a 1-lb cut of flakes that dense, 1000 mL are alcohol; half the cut takes as much again
 * shellacThinning({ solutionMl: 1100, fromCutLbPerGal: 1, toCutLbPerGal: 0.5, flakeDensityGPerL: 1198.2642731689663, cutPer: 'alcohol' }) // => { alcoholMl: 1000 }
 * ```
 */
export function shellacThinning(input: ShellacThinningInput): ShellacThinning {
  requireInputs('shellacThinning', input, {
    solutionMl: shellacMlLimits,
    fromCutLbPerGal: cutLimits,
    toCutLbPerGal: cutLimits,
    flakeDensityGPerL: flakeLimits,
  });
  requireChoice('shellacThinning', 'cutPer', input.cutPer, ['alcohol', 'solution']);
  const { fromCutLbPerGal: from, toCutLbPerGal: to } = input;
  requireThat('shellacThinning', to <= from, `toCutLbPerGal at most fromCutLbPerGal, got ${to} and ${from}`);
  // Flakes take up room: only a part of the solution is alcohol, which is to become from / to times as much.
  const alcoholShare =
    input.cutPer === 'solution' ? 1 : 1 / (1 + (from * LB_PER_GAL) / input.flakeDensityGPerL);
  return { alcoholMl: plusZero((input.solutionMl * alcoholShare * (from - to)) / to) };
}

export const shellacThinningRule = /* @__PURE__ */ defineRule<ShellacThinningInput, ShellacThinning>(() => {
  const { sources, cautions, flakeDensityGPerL, cutPer } = shellacCard();
  const cut = { kind: 'number', unit: 'lb/gal', ...cutLimits } as const;
  return {
    id: 'finishing/shellac-thinning',
    title: 'Shellac from one cut to a lighter one',
    summary:
      'How much alcohol to add to dissolved shellac of a known cut, so that it has the lighter cut wanted.',
    basis: 'derived',
    inputs: {
      solutionMl: { kind: 'number', label: 'Solution there is', unit: 'mL', ...shellacMlLimits },
      fromCutLbPerGal: { ...cut, label: 'Its cut' },
      toCutLbPerGal: { ...cut, label: 'Cut wanted' },
      flakeDensityGPerL,
      cutPer,
    },
    outputs: { alcoholMl: { label: 'Alcohol to add', unit: 'mL' } },
    compute: shellacThinning,
    formula: String.raw`V_A = a V\,\frac{c_1 - c_2}{c_2}`,
    symbols: {
      V_A: 'alcohol to add',
      V: 'solution there is',
      'c_1, c_2': 'its cut, and the cut wanted',
      a: 'share of alcohol in the solution, 1/(1 + c₁/ρ), where ρ is the density of the flakes in pounds a gallon; 1 where cuts count a gallon of solution',
    },
    inSymbols: ({ cutPer, flakeDensityGPerL, fromCutLbPerGal, ...input }, output) => ({
      V_A: output.alcoholMl,
      V: input.solutionMl,
      c_1: fromCutLbPerGal,
      c_2: input.toCutLbPerGal,
      a: cutPer === 'solution' ? 1 : 1 / (1 + (fromCutLbPerGal * LB_PER_GAL) / flakeDensityGPerL),
    }),
    requires: [
      {
        says: 'the wanted cut at most what there is',
        holds: ({ fromCutLbPerGal, toCutLbPerGal }) => toCutLbPerGal <= fromCutLbPerGal,
      },
    ],
    sources: [
      ...sources,
      {
        source: shellacConversionTable,
        at: 'the whole table, which a test compares',
        confirmed: 'text',
        tier: 'reprint',
        erratum:
          'Five of its 27 cells are off by more than 0.15 of a part or a twentieth from what its own note leads to; from 5 lb to 3 lb it has 7/8, where 4/9 is right.',
      },
    ],
    examples: [
      {
        given: {
          solutionMl: 500,
          fromCutLbPerGal: 3,
          toCutLbPerGal: 1,
          flakeDensityGPerL: 1100,
          cutPer: 'solution',
        },
        expect: { alcoholMl: '1000.0' },
        from: { workedByHand: '500 × 3 / 1 = 1500; 1500 − 500 = 1000' },
      },
      {
        given: {
          solutionMl: 1500,
          fromCutLbPerGal: 5,
          toCutLbPerGal: 2,
          flakeDensityGPerL: 10 * LB_PER_GAL,
          cutPer: 'alcohol',
        },
        expect: { alcoholMl: '1500.0' },
        from: {
          workedByHand:
            '5 lb in 1 gal make 1.5 gal, so 1500 mL hold 1500 / 1.5 = 1000 mL of alcohol; 1000 × 5 / 2 = 2500 are wanted; 2500 − 1000 = 1500. The table has 1 to 1 as well',
        },
      },
    ],
    laws: [
      {
        of: 'alcoholMl',
        by: { solutionMl: 'proportional', fromCutLbPerGal: 'increasing', toCutLbPerGal: 'decreasing' },
      },
    ],
    cautions,
  };
});
