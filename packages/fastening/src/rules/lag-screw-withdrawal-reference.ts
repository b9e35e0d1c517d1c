import { defineRule, plusZero, requireChoice, requireInputs } from '@scantling/rules';
import { nds2005, nds2015, structuralAnalysisLibrary } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign, steelToo } from '../cautions.ts';
import { inPounds, MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { grainChoice, ovendryInput, shankInput, threadInWoodInput } from '../withdrawal-terms.ts';

const limits = {
  shankDiameterMm: { min: 1, max: 50 },
  threadInWoodMm: { min: 0, max: 500 },
  ovendrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface LagScrewWithdrawalReferenceInput {
  /** Diameter of the shank, mm, 1 to 50. */
  readonly shankDiameterMm: number;
  /** Length of thread in the wood that holds the point, without the tapered tip, mm, 0 to 500. */
  readonly threadInWoodMm: number;
  /** Specific gravity: ovendry mass, ovendry volume, 0.1 to 1.3. */
  readonly ovendrySpecificGravityRatio: number;
  /** Whether the screw stands in side grain or in end grain. */
  readonly grain: 'side' | 'end';
}

export interface LagScrewWithdrawalReference {
  /** Pull that a lag screw may be given, N, before the other factors of the code. */
  readonly referenceN: number;
}

/**
 * The pull that the American design code for timber lets a lag screw carry, by allowable stress and before its factors
 * other than that for end grain.
 *
 * @returns The reference design value, N.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS 2015 and 2018, Eq. 12.2-1, for screws of 1/4 to 1 1/4 in and specific gravities of 0.31 to 0.73.
 * @example
 * ```ts
 * import { lagScrewWithdrawalReference } from '@scantling/fastening';
 * // A 1/4 in lag screw with 1 in of thread in wood of 0.50: 225 lb
 * const screw = { shankDiameterMm: 6.35, threadInWoodMm: 25.4, ovendrySpecificGravityRatio: 0.5 };
 * lagScrewWithdrawalReference({ ...screw, grain: 'side' }).referenceN // => 1000.85
 * lagScrewWithdrawalReference({ ...screw, grain: 'end' }).referenceN // => 750.64
 * ```
 */
export function lagScrewWithdrawalReference(
  input: LagScrewWithdrawalReferenceInput,
): LagScrewWithdrawalReference {
  requireInputs('lagScrewWithdrawalReference', input, limits);
  const { shankDiameterMm, threadInWoodMm, ovendrySpecificGravityRatio, grain } = input;
  requireChoice('lagScrewWithdrawalReference', 'grain', grain, ['side', 'end']);
  const endGrain = grain === 'end' ? 0.75 : 1;
  const perInchLbf = 1800 * ovendrySpecificGravityRatio ** 1.5 * (shankDiameterMm / MM_PER_IN) ** 0.75;
  return { referenceN: plusZero(endGrain * perInchLbf * (threadInWoodMm / MM_PER_IN) * N_PER_LBF) };
}

export const lagScrewWithdrawalReferenceRule = /* @__PURE__ */ defineRule<
  LagScrewWithdrawalReferenceInput,
  LagScrewWithdrawalReference
>(() => ({
  id: 'fastening/lag-screw-withdrawal-reference',
  title: 'Lag screw pulled out: design value',
  summary:
    'The pull that the American design code for timber lets a lag screw carry, before its factors for moisture, time and heat.',
  basis: 'measured',
  inputs: {
    shankDiameterMm: shankInput(limits.shankDiameterMm),
    threadInWoodMm: threadInWoodInput(
      limits.threadInWoodMm,
      'In the piece that holds the point, without the tapered tip.',
    ),
    ovendrySpecificGravityRatio: ovendryInput(limits.ovendrySpecificGravityRatio),
    grain: grainChoice(),
  },
  outputs: { referenceN: { label: 'Reference design value', unit: 'N' } },
  compute: lagScrewWithdrawalReference,
  formula: String.raw`W = 1800 \, C_{eg} \, G^{3/2} D^{3/4} p_t`,
  symbols: {
    W: 'reference design value, lb',
    'C_{eg}': '1 in side grain, 0.75 in end grain',
    G: 'specific gravity, ovendry mass and volume',
    D: 'shank diameter, in',
    p_t: 'thread in the wood, in',
  },
  inSymbols: (input, output) => ({
    W: output.referenceN / N_PER_LBF,
    'C_{eg}': input.grain === 'end' ? 0.75 : 1,
    G: input.ovendrySpecificGravityRatio,
    D: input.shankDiameterMm / MM_PER_IN,
    p_t: input.threadInWoodMm / MM_PER_IN,
  }),
  valid: { shankDiameterMm: [6.35, 31.75], ovendrySpecificGravityRatio: [0.31, 0.73] },
  sources: [
    { source: nds2005, at: 'Eq. 11.2-1, and § 11.2.1.2 on end grain', confirmed: 'text' },
    { source: nds2015, at: 'Table 12.2A, p. 77: thread without the tapered tip', confirmed: 'text' },
  ],
  examples: [
    {
      given: { shankDiameterMm: 6.35, threadInWoodMm: 25.4, ovendrySpecificGravityRatio: 0.5, grain: 'side' },
      expect: { referenceN: inPounds('225') },
      from: { source: nds2015, at: 'Table 12.2A, 1/4 in, G 0.50', confirmed: 'text' },
    },
    {
      given: {
        shankDiameterMm: 9.525,
        threadInWoodMm: 25.4,
        ovendrySpecificGravityRatio: 0.5,
        grain: 'side',
      },
      expect: { referenceN: inPounds('305') },
      from: { source: nds2015, at: 'Table 12.2A, 3/8 in, G 0.50', confirmed: 'text' },
    },
    {
      given: {
        shankDiameterMm: 12.7,
        threadInWoodMm: 2.1875 * 25.4,
        ovendrySpecificGravityRatio: 0.55,
        grain: 'side',
      },
      expect: { referenceN: '4247.94' },
      from: {
        source: structuralAnalysisLibrary,
        at: 'withdrawal_design_value_test_02.py: example E2.3, 1/2 in lag screw of 4 in through 1 1/2 in of southern pine',
        confirmed: 'text',
      },
    },
    {
      given: { shankDiameterMm: 25.4, threadInWoodMm: 50.8, ovendrySpecificGravityRatio: 0.64, grain: 'end' },
      expect: { referenceN: '6149.2' },
      from: {
        workedByHand:
          '0.64^1.5 = 0.512; 1800 × 0.512 = 921.6 lb for each inch; 0.75 × 921.6 × 2 = 1382.4; 1382.4 × 4.448222 = 6149.2 N',
      },
    },
  ],
  laws: [
    {
      of: 'referenceN',
      by: {
        shankDiameterMm: 'increasing',
        threadInWoodMm: 'proportional',
        ovendrySpecificGravityRatio: 'increasing',
      },
    },
  ],
  cautions: [ndsDecides, steelToo, notStructuralDesign],
}));
