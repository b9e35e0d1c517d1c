import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { civilFormulasHandbook, nds2018, withdrawalExamplesPage } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign, steelToo } from '../cautions.ts';
import { inPounds, MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { ovendryInput, shankInput, threadInWoodInput } from '../withdrawal-terms.ts';

const limits = {
  shankDiameterMm: { min: 1, max: 30 },
  threadInWoodMm: { min: 0, max: 500 },
  ovendrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface ScrewWithdrawalReferenceInput {
  /** Diameter of the shank, mm, 1 to 30. */
  readonly shankDiameterMm: number;
  /** Length of thread in the side grain of the wood that holds the point, mm, 0 to 500. */
  readonly threadInWoodMm: number;
  /** Specific gravity: ovendry mass, ovendry volume, 0.1 to 1.3. */
  readonly ovendrySpecificGravityRatio: number;
}

export interface ScrewWithdrawalReference {
  /** Pull that a screw may be given, N, before the factors of the code. */
  readonly referenceN: number;
}

/**
 * The pull that the American design code for timber lets a wood screw carry out of side grain, by allowable stress and
 * before its factors: a little under a fifth of the test value. It lets no wood screw carry a pull out of end grain.
 *
 * @returns The reference design value, N.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS 2018, Eq. 12.2-2, for No. 6 to 24 screws and specific gravities of 0.31 to 0.73.
 * @example
 * ```ts
 * import { screwWithdrawalReference } from '@scantling/fastening';
 * // A No. 10 screw with 1 in of thread in wood of 0.50: 2850 × 0.50² × 0.190 = 135 lb
 * screwWithdrawalReference({ shankDiameterMm: 4.826, threadInWoodMm: 25.4, ovendrySpecificGravityRatio: 0.5 }).referenceN // => 602.18
 * ```
 */
export function screwWithdrawalReference(input: ScrewWithdrawalReferenceInput): ScrewWithdrawalReference {
  requireInputs('screwWithdrawalReference', input, limits);
  const { shankDiameterMm, threadInWoodMm, ovendrySpecificGravityRatio } = input;
  const perInchLbf = 2850 * ovendrySpecificGravityRatio ** 2 * (shankDiameterMm / MM_PER_IN);
  return { referenceN: plusZero(perInchLbf * (threadInWoodMm / MM_PER_IN) * N_PER_LBF) };
}

export const screwWithdrawalReferenceRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/screw-withdrawal-reference',
  title: 'Wood screw pulled out: design value',
  summary:
    'The pull that the American design code for timber lets a wood screw carry out of side grain, before its factors.',
  basis: 'measured',
  inputs: {
    shankDiameterMm: shankInput(limits.shankDiameterMm),
    threadInWoodMm: threadInWoodInput(
      limits.threadInWoodMm,
      'In the side grain of the piece that holds the point.',
    ),
    ovendrySpecificGravityRatio: ovendryInput(limits.ovendrySpecificGravityRatio),
  },
  outputs: { referenceN: { label: 'Reference design value', unit: 'N' } },
  compute: screwWithdrawalReference,
  formula: String.raw`W = 2850 \, G^2 D \, p_t`,
  symbols: {
    W: 'reference design value, lb',
    G: 'specific gravity, ovendry mass and volume',
    D: 'shank diameter, in',
    p_t: 'thread in the wood, in',
  },
  inSymbols: (input, output) => ({
    W: output.referenceN / N_PER_LBF,
    G: input.ovendrySpecificGravityRatio,
    D: input.shankDiameterMm / MM_PER_IN,
    p_t: input.threadInWoodMm / MM_PER_IN,
  }),
  valid: { shankDiameterMm: [3.5, 9.5], ovendrySpecificGravityRatio: [0.31, 0.73] },
  sources: [
    {
      source: nds2018,
      at: 'Eq. 12.2-2, its range, and § 12.2.2.3 on end grain',
      confirmed: 'text',
      tier: 'reprint',
    },
    { source: civilFormulasHandbook, at: 'Eq. 6.37, p. 170', confirmed: 'text' },
  ],
  examples: [
    {
      given: { shankDiameterMm: 0.19 * 25.4, threadInWoodMm: 25.4, ovendrySpecificGravityRatio: 0.5 },
      expect: { referenceN: inPounds('135') },
      from: {
        source: nds2018,
        at: 'Table 12.2B, No. 10, G 0.50',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { shankDiameterMm: 0.19 * 25.4, threadInWoodMm: 25.4, ovendrySpecificGravityRatio: 0.45 },
      expect: { referenceN: inPounds('109') },
      within: {
        value: 2.95,
        because: 'The page cuts 109.65 lb off to 109 lb where it ought to be rounded up.',
      },
      from: {
        source: withdrawalExamplesPage,
        at: 'example: No. 10 screw, 0.190 in, spruce of 0.45',
        confirmed: 'text',
      },
    },
    {
      given: { shankDiameterMm: 5.08, threadInWoodMm: 30.48, ovendrySpecificGravityRatio: 0.6 },
      expect: { referenceN: '1095.33' },
      from: {
        workedByHand:
          '5.08 / 25.4 = 0.2 in; 30.48 / 25.4 = 1.2 in; 2850 × 0.6² × 0.2 × 1.2 = 246.24 lb; 246.24 × 4.448222 = 1095.33 N',
      },
    },
  ],
  laws: [
    {
      of: 'referenceN',
      by: {
        shankDiameterMm: 'proportional',
        threadInWoodMm: 'proportional',
        ovendrySpecificGravityRatio: 'increasing',
      },
    },
  ],
  cautions: [ndsDecides, steelToo, notStructuralDesign],
}));
