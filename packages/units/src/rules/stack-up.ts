import { defineRule, requireList, requireThat } from '@scantling/rules';
import { jcgm100, toleranceAccumulation2008 } from '@scantling/rules/sources';
import { sumMm } from '../length/ticks.ts';

const limits = {
  lengthsMm: { min: -1e6, max: 1e6, minItems: 1, maxItems: 100 },
  tolerancesMm: { min: 0, max: 1e6, minItems: 1, maxItems: 100 },
} as const;

export interface StackUpInput {
  /** Lengths in the stack, mm, 1 to 100 of them, −1e6 to 1e6; one that is taken away is negative. */
  readonly lengthsMm: readonly number[];
  /** Tolerance of each length, ± mm, 0 to 1e6, in the same order. */
  readonly tolerancesMm: readonly number[];
}

export interface StackUp {
  /** Sum of the lengths, mm. */
  readonly totalMm: number;
  /** Tolerance of the total, ± mm, when every length is off to its limit and the same way. */
  readonly worstCaseMm: number;
  /** Tolerance of the total, ± mm, by root-sum-square. */
  readonly rootSumSquareMm: number;
}

/**
 * The length of parts set end to end, or of the gap they leave, and how far it may be off. Worst case adds the
 * tolerances. Root-sum-square is what to expect of lengths that vary independently about their nominal length, all
 * tolerances being the same number of standard deviations; it is too small where one tape or one stop made them all.
 *
 * @returns Total and both tolerances, mm.
 * @throws RangeError where the lists differ in length or a number is outside its limits.
 * Source: root-sum-square, JCGM 100:2008, Eq. (10); worst case, ASME Y14.5, 2.6, as retold.
 * @example
 * ```ts
 * import { stackUp } from '@scantling/units';
 * // A 100 mm opening less a 40 mm and a 59 mm part, ± 0.3, 0.2 and 0.6 mm
 * stackUp({ lengthsMm: [100, -40, -59], tolerancesMm: [0.3, 0.2, 0.6] }) // => { totalMm: 1, worstCaseMm: 1.1, rootSumSquareMm: 0.7 }
 * ```
 */
export function stackUp(input: StackUpInput): StackUp {
  const { lengthsMm, tolerancesMm } = input ?? {};
  requireList('stackUp', 'lengthsMm', lengthsMm, limits.lengthsMm);
  requireList('stackUp', 'tolerancesMm', tolerancesMm, limits.tolerancesMm);
  requireThat(
    'stackUp',
    lengthsMm.length === tolerancesMm.length,
    `as many tolerancesMm as lengthsMm, got ${tolerancesMm.length} and ${lengthsMm.length}`,
  );
  return {
    totalMm: sumMm(lengthsMm),
    worstCaseMm: sumMm(tolerancesMm),
    rootSumSquareMm: Math.hypot(...tolerancesMm),
  };
}

export const stackUpRule = /* @__PURE__ */ defineRule(() => ({
  id: 'units/stack-up',
  title: 'Stack-up of tolerances',
  summary: 'How far the sum of several lengths may be off when each of them has a tolerance.',
  basis: 'derived',
  inputs: {
    lengthsMm: {
      kind: 'numbers',
      label: 'Lengths',
      unit: 'mm',
      ...limits.lengthsMm,
      help: 'A length that is taken away, as a part from an opening, is negative.',
    },
    tolerancesMm: {
      kind: 'numbers',
      label: 'Tolerances, plus or minus',
      unit: 'mm',
      ...limits.tolerancesMm,
      help: 'One for each length, in the same order.',
    },
  },
  outputs: {
    totalMm: { label: 'Total', unit: 'mm' },
    worstCaseMm: { label: 'Tolerance, worst case', unit: 'mm' },
    rootSumSquareMm: { label: 'Tolerance, root-sum-square', unit: 'mm' },
  },
  compute: stackUp,
  formula: String.raw`L = \sum_i \ell_i, \qquad T_{\mathrm{worst}} = \sum_i t_i, \qquad T_{\mathrm{rss}} = \sqrt{\textstyle\sum_i t_i^2}`,
  symbols: { L: 'total', '\\ell_i': 'length', t_i: 'its tolerance' },
  requires: [
    {
      says: 'one tolerance for each length',
      holds: ({ lengthsMm, tolerancesMm }) => lengthsMm.length === tolerancesMm.length,
    },
  ],
  sources: [
    { source: jcgm100, at: '5.1.2, Eq. (10), with sensitivity coefficients of ±1', confirmed: 'text' },
    {
      source: toleranceAccumulation2008,
      at: 'chain dimensioning: the tolerances are added',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { lengthsMm: [25.4, 38.1, 25.4], tolerancesMm: [0.127, 0.127, 0.127] },
      expect: {
        totalMm: { printed: '3.500', unit: 'in', times: 25.4 },
        worstCaseMm: { printed: '0.015', unit: 'in', times: 25.4 },
      },
      from: {
        workedByHand:
          '1.000 + 1.500 + 1.000 = 3.500 in; 3 × 0.005 = 0.015 in. The weblog prints this mean and this tolerance for three dimensions in a chain; the three lengths are ours',
      },
    },
    {
      given: {
        lengthsMm: Array.from({ length: 10 }, () => 1000),
        tolerancesMm: Array.from({ length: 10 }, () => 0.1),
      },
      expect: { totalMm: '10000', worstCaseMm: '1.0', rootSumSquareMm: '0.32' },
      from: {
        source: jcgm100,
        at: '5.2.2, example: ten resistors of 1000 Ω, each ± 100 mΩ; 1 Ω when all are off alike, 0.32 Ω by Eq. (10)',
        confirmed: 'memory',
      },
    },
    {
      given: { lengthsMm: [100, -40, -59], tolerancesMm: [0.3, 0.2, 0.6] },
      expect: { totalMm: '1.000', worstCaseMm: '1.100', rootSumSquareMm: '0.700' },
      from: {
        workedByHand:
          '100 − 40 − 59 = 1; 0.3 + 0.2 + 0.6 = 1.1; 0.09 + 0.04 + 0.36 = 0.49, and 0.7 squared is 0.49',
      },
    },
  ],
}));
