import { defineRule, plusZero, requireChoice, requireInputs } from '@scantling/rules';
import { woodHandbook2010, woodHandbook2021 } from '@scantling/rules/sources';
import { notStructuralDesign, steelToo, testValue } from '../cautions.ts';
import { MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { airDryInput, grainChoice, shankInput, threadInWoodInput } from '../withdrawal-terms.ts';

const limits = {
  shankDiameterMm: { min: 1, max: 30 },
  threadInWoodMm: { min: 0, max: 500 },
  airDrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface ScrewWithdrawalUltimateInput {
  /** Diameter of the shank, mm, 1 to 30. */
  readonly shankDiameterMm: number;
  /** Length of thread in the wood that holds the point, mm, 0 to 500. */
  readonly threadInWoodMm: number;
  /** Specific gravity: ovendry mass, volume at 12 % moisture content, 0.1 to 1.3. */
  readonly airDrySpecificGravityRatio: number;
  /** Whether the screw stands in side grain or in end grain. */
  readonly grain: 'side' | 'end';
}

export interface ScrewWithdrawalUltimate {
  /** Pull that draws an average screw out, N. */
  readonly ultimateN: number;
}

/**
 * The pull at which wood screws came out of wood in tests, on average: a test value, not a design value.
 * In end grain it is taken as three quarters, where single screws differ widely.
 *
 * @returns The average pull that draws a screw out, N.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-282), Eq. 8-10, for lead holes of 70 % of the root diameter in softwoods and 90 % in
 * hardwoods.
 * @example
 * ```ts
 * import { screwWithdrawalUltimate } from '@scantling/fastening';
 * // 30 mm of thread of a No. 10 screw in sugar maple: 108.25 × 0.63² × 4.83 × 30
 * const screw = { shankDiameterMm: 4.83, threadInWoodMm: 30, airDrySpecificGravityRatio: 0.63 };
 * screwWithdrawalUltimate({ ...screw, grain: 'side' }).ultimateN // => 6225.55
 * screwWithdrawalUltimate({ ...screw, grain: 'along' }) // throws screwWithdrawalUltimate requires grain to be one of side, end
 * ```
 */
export function screwWithdrawalUltimate(input: ScrewWithdrawalUltimateInput): ScrewWithdrawalUltimate {
  requireInputs('screwWithdrawalUltimate', input, limits);
  const { shankDiameterMm, threadInWoodMm, airDrySpecificGravityRatio, grain } = input;
  requireChoice('screwWithdrawalUltimate', 'grain', grain, ['side', 'end']);
  const share = grain === 'end' ? 0.75 : 1;
  return {
    ultimateN: plusZero(share * 108.25 * airDrySpecificGravityRatio ** 2 * shankDiameterMm * threadInWoodMm),
  };
}

export const screwWithdrawalUltimateRule = /* @__PURE__ */ defineRule<
  ScrewWithdrawalUltimateInput,
  ScrewWithdrawalUltimate
>(() => ({
  id: 'fastening/screw-withdrawal-ultimate',
  title: 'Wood screw pulled out: test value',
  summary: 'The pull at which wood screws came out of wood in tests, on average. It is no design value.',
  basis: 'measured',
  inputs: {
    shankDiameterMm: shankInput(limits.shankDiameterMm),
    threadInWoodMm: threadInWoodInput(limits.threadInWoodMm, 'In the piece that holds the point.'),
    airDrySpecificGravityRatio: airDryInput(limits.airDrySpecificGravityRatio),
    grain: grainChoice(),
  },
  outputs: { ultimateN: { label: 'Average pull that draws it out', unit: 'N' } },
  compute: screwWithdrawalUltimate,
  formula: String.raw`p = 108.25 \, c \, G^2 D L`,
  symbols: {
    p: 'average pull that draws the screw out, N',
    c: '1 in side grain, 0.75 in end grain',
    G: 'specific gravity, ovendry mass and volume at 12 %',
    D: 'shank diameter, mm',
    L: 'thread in the wood, mm',
  },
  inSymbols: (input, output) => ({
    p: output.ultimateN,
    c: input.grain === 'end' ? 0.75 : 1,
    G: input.airDrySpecificGravityRatio,
    D: input.shankDiameterMm,
    L: input.threadInWoodMm,
  }),
  sources: [
    { source: woodHandbook2021, at: 'Eq. 8-10, p. 8-10, metric form', confirmed: 'text', tier: 'reprint' },
    {
      source: woodHandbook2010,
      at: 'Eq. 8-11, with 75 % in end grain, and its inch form with 15,700',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { shankDiameterMm: 4.83, threadInWoodMm: 25, airDrySpecificGravityRatio: 0.5, grain: 'side' },
      expect: { ultimateN: '3267.8' },
      from: { workedByHand: '0.5² = 0.25; 108.25 × 0.25 × 4.83 × 25 = 3267.8 N' },
    },
    {
      given: { shankDiameterMm: 6, threadInWoodMm: 40, airDrySpecificGravityRatio: 0.6, grain: 'end' },
      expect: { ultimateN: '7014.6' },
      from: { workedByHand: '0.6² = 0.36; 108.25 × 0.36 × 6 × 40 = 9352.8; 0.75 × 9352.8 = 7014.6 N' },
    },
  ],
  laws: [
    {
      of: 'ultimateN',
      by: {
        shankDiameterMm: 'proportional',
        threadInWoodMm: 'proportional',
        airDrySpecificGravityRatio: 'increasing',
      },
    },
  ],
  peers: [
    {
      name: 'the same in inches and pounds, 15,700 G² D L',
      of: 'ultimateN',
      compute: ({ shankDiameterMm, threadInWoodMm, airDrySpecificGravityRatio, grain }) =>
        15_700 *
        (grain === 'end' ? 0.75 : 1) *
        airDrySpecificGravityRatio ** 2 *
        (shankDiameterMm / MM_PER_IN) *
        (threadInWoodMm / MM_PER_IN) *
        N_PER_LBF,
      // Both constants are rounded as printed: 15,700 psi is 108.248 MPa.
      relative: 3e-5,
      source: { source: woodHandbook2010, at: 'Eq. 8-11, inch form', confirmed: 'memory' },
    },
  ],
  cautions: [testValue, steelToo, notStructuralDesign],
}));
