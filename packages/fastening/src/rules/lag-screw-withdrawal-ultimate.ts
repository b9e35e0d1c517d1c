import { defineRule, plusZero, requireChoice, requireInputs } from '@scantling/rules';
import { woodHandbook2010, woodHandbook2021 } from '@scantling/rules/sources';
import { notStructuralDesign, steelToo, testValue } from '../cautions.ts';
import { MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { airDryInput, grainChoice, shankInput, threadInWoodInput } from '../withdrawal-terms.ts';

const limits = {
  shankDiameterMm: { min: 1, max: 50 },
  threadInWoodMm: { min: 0, max: 500 },
  airDrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface LagScrewWithdrawalUltimateInput {
  /** Diameter of the shank, mm, 1 to 50. */
  readonly shankDiameterMm: number;
  /** Length of thread in the wood that holds the point, without the tapered tip, mm, 0 to 500. */
  readonly threadInWoodMm: number;
  /** Specific gravity: ovendry mass, volume at 12 % moisture content, 0.1 to 1.3. */
  readonly airDrySpecificGravityRatio: number;
  /** Whether the screw stands in side grain or in end grain. */
  readonly grain: 'side' | 'end';
}

export interface LagScrewWithdrawalUltimate {
  /** Pull that draws an average lag screw out, N. */
  readonly ultimateN: number;
}

/**
 * The pull at which lag screws came out of wood in tests, on average: a test value, not a design value.
 * In end grain it is about three quarters of that in side grain.
 *
 * @returns The average pull that draws a lag screw out, N.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-282), Eq. 8-14.
 * @example
 * ```ts
 * import { lagScrewWithdrawalUltimate } from '@scantling/fastening';
 * // 40 mm of thread of an 8 mm lag screw in sugar maple: 125.4 × 0.63^1.5 × 8^0.75 × 40
 * const screw = { shankDiameterMm: 8, threadInWoodMm: 40, airDrySpecificGravityRatio: 0.63 };
 * lagScrewWithdrawalUltimate({ ...screw, grain: 'side' }).ultimateN // => 11931.2
 * lagScrewWithdrawalUltimate({ ...screw, threadInWoodMm: -1, grain: 'side' }) // throws lagScrewWithdrawalUltimate requires threadInWoodMm between 0 and 500, got -1
 * ```
 */
export function lagScrewWithdrawalUltimate(
  input: LagScrewWithdrawalUltimateInput,
): LagScrewWithdrawalUltimate {
  requireInputs('lagScrewWithdrawalUltimate', input, limits);
  const { shankDiameterMm, threadInWoodMm, airDrySpecificGravityRatio, grain } = input;
  requireChoice('lagScrewWithdrawalUltimate', 'grain', grain, ['side', 'end']);
  const share = grain === 'end' ? 0.75 : 1;
  return {
    ultimateN: plusZero(
      share * 125.4 * airDrySpecificGravityRatio ** 1.5 * shankDiameterMm ** 0.75 * threadInWoodMm,
    ),
  };
}

export const lagScrewWithdrawalUltimateRule = /* @__PURE__ */ defineRule<
  LagScrewWithdrawalUltimateInput,
  LagScrewWithdrawalUltimate
>(() => ({
  id: 'fastening/lag-screw-withdrawal-ultimate',
  title: 'Lag screw pulled out: test value',
  summary: 'The pull at which lag screws came out of wood in tests, on average. It is no design value.',
  basis: 'measured',
  inputs: {
    shankDiameterMm: shankInput(limits.shankDiameterMm),
    threadInWoodMm: threadInWoodInput(
      limits.threadInWoodMm,
      'In the piece that holds the point, without the tapered tip.',
    ),
    airDrySpecificGravityRatio: airDryInput(limits.airDrySpecificGravityRatio),
    grain: grainChoice(),
  },
  outputs: { ultimateN: { label: 'Average pull that draws it out', unit: 'N' } },
  compute: lagScrewWithdrawalUltimate,
  formula: String.raw`p = 125.4 \, c \, G^{3/2} D^{3/4} L`,
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
  valid: { shankDiameterMm: [5.1, 25.4] },
  sources: [
    { source: woodHandbook2021, at: 'Eq. 8-14, p. 8-12, metric form', confirmed: 'text', tier: 'reprint' },
    {
      source: woodHandbook2010,
      at: 'p. 8-13: in end grain about three fourths of side grain',
      confirmed: 'text',
    },
    { source: woodHandbook2010, at: 'Eq. 8-14, inch form with 8,100', confirmed: 'memory' },
  ],
  examples: [
    {
      given: { shankDiameterMm: 9.5, threadInWoodMm: 60, airDrySpecificGravityRatio: 0.5, grain: 'side' },
      expect: { ultimateN: '14394' },
      from: {
        workedByHand: '0.5^1.5 = 0.353553; 9.5^0.75 = 5.41119; 125.4 × 0.353553 × 5.41119 × 60 = 14394 N',
      },
    },
    {
      given: { shankDiameterMm: 16, threadInWoodMm: 50, airDrySpecificGravityRatio: 0.64, grain: 'end' },
      expect: { ultimateN: '19261.4' },
      from: {
        workedByHand:
          '0.64^1.5 = 0.512; 16^0.75 = 8; 125.4 × 0.512 × 8 × 50 = 25681.9; 0.75 × 25681.92 = 19261.4 N',
      },
    },
  ],
  laws: [
    {
      of: 'ultimateN',
      by: {
        shankDiameterMm: 'increasing',
        threadInWoodMm: 'proportional',
        airDrySpecificGravityRatio: 'increasing',
      },
    },
  ],
  peers: [
    {
      name: 'the same in inches and pounds, 8,100 G^(3/2) D^(3/4) L',
      of: 'ultimateN',
      compute: ({ shankDiameterMm, threadInWoodMm, airDrySpecificGravityRatio, grain }) =>
        8100 *
        (grain === 'end' ? 0.75 : 1) *
        airDrySpecificGravityRatio ** 1.5 *
        (shankDiameterMm / MM_PER_IN) ** 0.75 *
        (threadInWoodMm / MM_PER_IN) *
        N_PER_LBF,
      // Both constants are rounded as printed: 8,100 is 125.375 in mm and N.
      relative: 2.5e-4,
      source: { source: woodHandbook2010, at: 'Eq. 8-14, inch form', confirmed: 'memory' },
    },
  ],
  cautions: [testValue, steelToo, notStructuralDesign],
}));
