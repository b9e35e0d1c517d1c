import { defineRule, plusZero, requireChoice, requireInputs } from '@scantling/rules';
import { civilFormulasHandbook } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign, slipsFirst } from '../cautions.ts';
import { MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { grainChoice, shankInput } from '../withdrawal-terms.ts';

const limits = { shankDiameterMm: { min: 0, max: 30 } } as const;

const coefficientsPsi = { I: 4800, II: 3960, III: 3240, IV: 2520 } as const;

export interface ScrewLateralByGroupInput {
  /** Diameter of the shank, mm, 0 to 30. */
  readonly shankDiameterMm: number;
  /** Group of the wood, from the densest, I, to the lightest, IV. */
  readonly group: keyof typeof coefficientsPsi;
  /** Whether the screw stands in side grain or in end grain. */
  readonly grain: 'side' | 'end';
}

export interface ScrewLateralByGroup {
  /** Sideways force that a screw may be given, N. */
  readonly allowedN: number;
}

/**
 * The sideways force that a wood screw was allowed in seasoned wood before 1991, by the group of the wood: a second
 * opinion beside the yield limits of today.
 *
 * @returns The allowed force, N.
 * @throws RangeError where an input is outside its limits.
 * Source: handbook of civil engineering formulas, Eq. 6.38.
 * @example
 * ```ts
 * import { screwLateralByGroup } from '@scantling/fastening';
 * // A No. 10 screw in southern pine, group II: 3960 × 0.190² = 143 lb
 * screwLateralByGroup({ shankDiameterMm: 4.826, group: 'II', grain: 'side' }).allowedN // => 635.9
 * screwLateralByGroup({ shankDiameterMm: 4.826, group: 'V', grain: 'side' }) // throws screwLateralByGroup requires group to be one of I, II, III, IV
 * ```
 */
export function screwLateralByGroup(input: ScrewLateralByGroupInput): ScrewLateralByGroup {
  requireInputs('screwLateralByGroup', input, limits);
  const { shankDiameterMm, group, grain } = input;
  requireChoice('screwLateralByGroup', 'group', group, Object.keys(coefficientsPsi));
  requireChoice('screwLateralByGroup', 'grain', grain, ['side', 'end']);
  const allowableLbf = coefficientsPsi[group] * (shankDiameterMm / MM_PER_IN) ** 2;
  return { allowedN: plusZero(allowableLbf * N_PER_LBF * (grain === 'end' ? 2 / 3 : 1)) };
}

export const screwLateralByGroupRule = /* @__PURE__ */ defineRule<
  ScrewLateralByGroupInput,
  ScrewLateralByGroup
>(() => ({
  id: 'fastening/screw-lateral-by-group',
  title: 'Wood screw pushed sideways: the rule before 1991',
  summary: 'The sideways force that a wood screw was allowed before 1991, by the group of the wood.',
  basis: 'convention',
  inputs: {
    shankDiameterMm: shankInput(limits.shankDiameterMm),
    group: {
      kind: 'choice',
      label: 'Group of the wood',
      options: {
        I: 'I, the densest',
        II: 'II: Douglas fir, southern pine',
        III: 'III: western hemlock, Norway pine, redwood',
        IV: 'IV: eastern hemlock, spruce',
      },
    },
    grain: grainChoice(),
  },
  outputs: { allowedN: { label: 'Allowed force', unit: 'N' } },
  compute: screwLateralByGroup,
  formula: String.raw`p = c \, C D^2`,
  symbols: {
    p: 'allowed force, lb',
    c: '1 in side grain, 2/3 in end grain',
    C: '4800, 3960, 3240 and 2520 for groups I to IV',
    D: 'shank diameter, in',
  },
  inSymbols: (input, output) => ({
    p: output.allowedN / N_PER_LBF,
    c: input.grain === 'end' ? 2 / 3 : 1,
    C: coefficientsPsi[input.group],
    D: input.shankDiameterMm / MM_PER_IN,
  }),
  sources: [
    {
      source: civilFormulasHandbook,
      at: 'Eq. 6.38 and Table 6.2, p. 170; end grain, p. 171',
      confirmed: 'text',
    },
  ],
  examples: (
    [
      ['I', 'side', '4800 × 0.5² = 1200.0 lb', '5337.9', '1200.0 × 4.448222 = 5337.9 N'],
      ['II', 'side', '3960 × 0.5² = 990.0 lb', '4403.7', '990.0 × 4.448222 = 4403.7 N'],
      ['III', 'side', '3240 × 0.5² = 810.0 lb', '3603.1', '810.0 × 4.448222 = 3603.1 N'],
      ['IV', 'end', '2 / 3 × 2520 × 0.5² = 420.0 lb', '1868.3', '420.0 × 4.448222 = 1868.3 N'],
    ] as const
  ).map(([group, grain, inLbf, printed, inN]) => ({
    given: { shankDiameterMm: 12.7, group, grain },
    expect: { allowedN: printed },
    from: { workedByHand: `${inLbf}; ${inN}` },
  })),
  laws: [{ of: 'allowedN', by: { shankDiameterMm: 'increasing' } }],
  cautions: [ndsDecides, slipsFirst, notStructuralDesign],
}));
