import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { nailWithdrawalNote1965, woodHandbook2010, woodHandbook2021 } from '@scantling/rules/sources';
import { notStructuralDesign, testValue } from '../cautions.ts';
import { MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { airDryInput } from '../withdrawal-terms.ts';

const limits = {
  diameterMm: { min: 0.5, max: 15 },
  penetrationMm: { min: 0, max: 500 },
  airDrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface NailWithdrawalUltimateInput {
  /** Diameter of the nail, mm, 0.5 to 15. */
  readonly diameterMm: number;
  /** Length of nail in the wood that holds the point, mm, 0 to 500. */
  readonly penetrationMm: number;
  /** Specific gravity: ovendry mass, volume at 12 % moisture content, 0.1 to 1.3. */
  readonly airDrySpecificGravityRatio: number;
}

export interface NailWithdrawalUltimate {
  /** Pull that draws an average nail out, N. */
  readonly ultimateN: number;
}

/**
 * The pull at which bright smooth wire nails came out of side grain in tests soon after they were driven, on average:
 * a test value, not a design value. It falls as the wood dries and moves.
 *
 * @returns The average pull that draws a nail out, N.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-282), Eq. 8-1.
 * @example
 * ```ts
 * import { nailWithdrawalUltimate } from '@scantling/fastening';
 * // A 10d common nail 50 mm deep in wood of 0.5: 54.12 × 0.5^2.5 × 3.76 × 50
 * nailWithdrawalUltimate({ diameterMm: 3.76, penetrationMm: 50, airDrySpecificGravityRatio: 0.5 }).ultimateN // => 1798.6
 * ```
 */
export function nailWithdrawalUltimate(input: NailWithdrawalUltimateInput): NailWithdrawalUltimate {
  requireInputs('nailWithdrawalUltimate', input, limits);
  const { diameterMm, penetrationMm, airDrySpecificGravityRatio } = input;
  return {
    ultimateN: plusZero(54.12 * airDrySpecificGravityRatio ** 2.5 * diameterMm * penetrationMm),
  };
}

const inInches = (constantPsi: number, { diameterMm, penetrationMm }: NailWithdrawalUltimateInput) =>
  constantPsi * (diameterMm / MM_PER_IN) * (penetrationMm / MM_PER_IN) * N_PER_LBF;

export const nailWithdrawalUltimateRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/nail-withdrawal-ultimate',
  title: 'Nail pulled out: test value',
  summary:
    'The pull at which smooth wire nails came out of side grain in tests, on average. It is no design value.',
  basis: 'measured',
  inputs: {
    diameterMm: { kind: 'number', label: 'Nail diameter', unit: 'mm', ...limits.diameterMm },
    penetrationMm: {
      kind: 'number',
      label: 'Nail in the wood',
      unit: 'mm',
      ...limits.penetrationMm,
      help: 'In the piece that holds the point.',
    },
    airDrySpecificGravityRatio: airDryInput(limits.airDrySpecificGravityRatio),
  },
  outputs: { ultimateN: { label: 'Average pull that draws it out', unit: 'N' } },
  compute: nailWithdrawalUltimate,
  formula: String.raw`p = 54.12 \, G^{5/2} D L`,
  symbols: {
    p: 'average pull that draws the nail out, N',
    G: 'specific gravity, ovendry mass and volume at 12 %',
    D: 'nail diameter, mm',
    L: 'nail in the wood, mm',
  },
  inSymbols: (input, output) => ({
    p: output.ultimateN,
    G: input.airDrySpecificGravityRatio,
    D: input.diameterMm,
    L: input.penetrationMm,
  }),
  sources: [
    { source: woodHandbook2021, at: 'Eq. 8-1, p. 8-2, metric form', confirmed: 'text', tier: 'reprint' },
    { source: woodHandbook2010, at: 'Eq. 8-1, inch form with 7,850', confirmed: 'memory' },
  ],
  examples: [
    {
      given: { diameterMm: 3.76, penetrationMm: 50, airDrySpecificGravityRatio: 0.5 },
      expect: { ultimateN: '1798.6' },
      from: { workedByHand: '0.5^2.5 = 0.1767767; 54.12 × 0.1767767 × 3.76 × 50 = 1798.6 N' },
    },
  ],
  laws: [
    {
      of: 'ultimateN',
      by: {
        diameterMm: 'proportional',
        penetrationMm: 'proportional',
        airDrySpecificGravityRatio: 'increasing',
      },
    },
  ],
  peers: [
    {
      name: 'the same in inches and pounds, 7,850 G^(5/2) D L',
      of: 'ultimateN',
      compute: (input) => inInches(7850 * input.airDrySpecificGravityRatio ** 2.5, input),
      // Both constants are rounded as printed: 7,850 psi is 54.124 MPa.
      relative: 1e-4,
      source: { source: woodHandbook2010, at: 'Eq. 8-1, inch form', confirmed: 'memory' },
    },
    {
      name: 'the older test value, 6,900 G^(5/2) D L by ovendry volume, with G swollen by 0.9 % for each 1 % of moisture',
      of: 'ultimateN',
      compute: (input) => {
        const { airDrySpecificGravityRatio } = input;
        const ovendry = airDrySpecificGravityRatio / (1 - 0.108 * airDrySpecificGravityRatio);
        return inInches(6900 * ovendry ** 2.5, input);
      },
      // Two fits to tests; they cross near 0.5 and part towards light and heavy woods.
      relative: 0.08,
      over: { airDrySpecificGravityRatio: [0.3, 0.7] },
      source: { source: nailWithdrawalNote1965, at: 'p. 1: p = 6900 G^(5/2) D', confirmed: 'text' },
    },
  ],
  cautions: [testValue, notStructuralDesign],
}));
