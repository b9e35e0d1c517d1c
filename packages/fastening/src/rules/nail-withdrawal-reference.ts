import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import {
  nailWithdrawalNote1965,
  nds2018,
  structuralAnalysisLibrary,
  withdrawalExamplesPage,
} from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign } from '../cautions.ts';
import { inPounds, MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { ovendryInput } from '../withdrawal-terms.ts';

const limits = {
  diameterMm: { min: 0.5, max: 15 },
  penetrationMm: { min: 0, max: 500 },
  ovendrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface NailWithdrawalReferenceInput {
  /** Diameter of the nail, mm, 0.5 to 15. */
  readonly diameterMm: number;
  /** Length of nail in the side grain of the wood that holds the point, mm, 0 to 500. */
  readonly penetrationMm: number;
  /** Specific gravity: ovendry mass, ovendry volume, 0.1 to 1.3. */
  readonly ovendrySpecificGravityRatio: number;
}

export interface NailWithdrawalReference {
  /** Pull that a nail may be given, N, before the factors of the code. */
  readonly referenceN: number;
}

/**
 * The pull that the American design code for timber lets a smooth nail carry out of side grain, by allowable stress and
 * before its factors: a fifth of the older test value. It lets no nail carry a pull out of end grain.
 *
 * @returns The reference design value, N.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS 2018, Eq. 12.2-3, for nails of 0.092 to 0.375 in and specific gravities of 0.31 to 0.73.
 * @example
 * ```ts
 * import { nailWithdrawalReference } from '@scantling/fastening';
 * // An 8d common nail 1 in deep in wood of 0.50: 1380 × 0.50^2.5 × 0.131 = 32 lb
 * nailWithdrawalReference({ diameterMm: 3.3274, penetrationMm: 25.4, ovendrySpecificGravityRatio: 0.5 }).referenceN // => 142.15
 * ```
 */
export function nailWithdrawalReference(input: NailWithdrawalReferenceInput): NailWithdrawalReference {
  requireInputs('nailWithdrawalReference', input, limits);
  const { diameterMm, penetrationMm, ovendrySpecificGravityRatio } = input;
  const perInchLbf = 1380 * ovendrySpecificGravityRatio ** 2.5 * (diameterMm / MM_PER_IN);
  return { referenceN: plusZero(perInchLbf * (penetrationMm / MM_PER_IN) * N_PER_LBF) };
}

export const nailWithdrawalReferenceRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/nail-withdrawal-reference',
  title: 'Nail pulled out: design value',
  summary:
    'The pull that the American design code for timber lets a smooth nail carry out of side grain, before its factors.',
  basis: 'measured',
  inputs: {
    diameterMm: { kind: 'number', label: 'Nail diameter', unit: 'mm', ...limits.diameterMm },
    penetrationMm: {
      kind: 'number',
      label: 'Nail in the wood',
      unit: 'mm',
      ...limits.penetrationMm,
      help: 'In the side grain of the piece that holds the point.',
    },
    ovendrySpecificGravityRatio: ovendryInput(limits.ovendrySpecificGravityRatio),
  },
  outputs: { referenceN: { label: 'Reference design value', unit: 'N' } },
  compute: nailWithdrawalReference,
  formula: String.raw`W = 1380 \, G^{5/2} D \, p_t`,
  symbols: {
    W: 'reference design value, lb',
    G: 'specific gravity, ovendry mass and volume',
    D: 'nail diameter, in',
    p_t: 'nail in the wood, in',
  },
  inSymbols: (input, output) => ({
    W: output.referenceN / N_PER_LBF,
    G: input.ovendrySpecificGravityRatio,
    D: input.diameterMm / MM_PER_IN,
    p_t: input.penetrationMm / MM_PER_IN,
  }),
  valid: { diameterMm: [2.3, 9.525], ovendrySpecificGravityRatio: [0.31, 0.73] },
  sources: [
    {
      source: nds2018,
      at: 'Eq. 12.2-3, its range, and § 12.2.3.3 on end grain',
      confirmed: 'text',
      tier: 'reprint',
    },
    { source: withdrawalExamplesPage, at: 'nails and spikes, Eq. 1', confirmed: 'text', tier: 'reprint' },
  ],
  examples: [
    {
      given: { diameterMm: 0.203 * 25.4, penetrationMm: 25.4, ovendrySpecificGravityRatio: 0.45 },
      expect: { referenceN: inPounds('38') },
      from: {
        source: withdrawalExamplesPage,
        at: 'example: nail of 0.203 in, spruce of 0.45',
        confirmed: 'text',
      },
    },
    {
      given: { diameterMm: 0.131 * 25.4, penetrationMm: 100, ovendrySpecificGravityRatio: 0.42 },
      expect: { referenceN: { printed: '3619.3', unit: 'N/m', times: 0.1 } },
      from: {
        source: structuralAnalysisLibrary,
        at: 'withdrawal_design_value_test_01.py: example E2.1a, 0.131 in nail in spruce-pine-fir',
        confirmed: 'text',
      },
    },
  ],
  laws: [
    {
      of: 'referenceN',
      by: {
        diameterMm: 'proportional',
        penetrationMm: 'proportional',
        ovendrySpecificGravityRatio: 'increasing',
      },
    },
  ],
  peers: [
    {
      name: 'a fifth of the older test value, 6,900 G^(5/2) D',
      of: 'referenceN',
      compute: ({ diameterMm, penetrationMm, ovendrySpecificGravityRatio: g }) =>
        ((6900 / 5) * g ** 2.5 * diameterMm * penetrationMm * N_PER_LBF) / MM_PER_IN ** 2,
      relative: 1e-12,
      source: { source: nailWithdrawalNote1965, at: 'p. 1: p = 6900 G^(5/2) D', confirmed: 'text' },
    },
  ],
  cautions: [ndsDecides, notStructuralDesign],
}));
