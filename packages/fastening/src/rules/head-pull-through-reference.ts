import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign } from '../cautions.ts';
import { inPounds, MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { ovendryInput } from '../withdrawal-terms.ts';

const limits = {
  headDiameterMm: { min: 1, max: 100 },
  sideMm: { min: 0, max: 500 },
  ovendrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface HeadPullThroughReferenceInput {
  /** Diameter of the round head, mm, 1 to 100. */
  readonly headDiameterMm: number;
  /** Thickness of the wood under the head, mm, 0 to 500. */
  readonly sideMm: number;
  /** Specific gravity of that wood: ovendry mass, ovendry volume, 0.1 to 1.3. */
  readonly ovendrySpecificGravityRatio: number;
}

export interface HeadPullThroughReference {
  /** Pull that may be given to the head, N, before the factors of the code. */
  readonly referenceN: number;
}

/**
 * The pull at which the American design code for timber still trusts a round head not to come through the wood under it,
 * by allowable stress and before its factors. Beyond two and a half head diameters more thickness does not help.
 *
 * @returns The reference design value, N.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS 2018, Eq. 12.2-6a and 12.2-6b, for heads of 0.234 to 0.5 in on 5/16 to 1 1/2 in of wood.
 * @example
 * ```ts
 * import { headPullThroughReference } from '@scantling/fastening';
 * // The head of a No. 8 screw, 0.312 in, on 1 in of wood of 0.50: 132 lb
 * headPullThroughReference({ headDiameterMm: 7.9248, sideMm: 25.4, ovendrySpecificGravityRatio: 0.5 }).referenceN // => 586.64
 * ```
 */
export function headPullThroughReference(input: HeadPullThroughReferenceInput): HeadPullThroughReference {
  requireInputs('headPullThroughReference', input, limits);
  const { headDiameterMm, sideMm, ovendrySpecificGravityRatio } = input;
  const headIn = headDiameterMm / MM_PER_IN;
  const usedIn = Math.min(sideMm / MM_PER_IN, 2.5 * headIn);
  const pullLbf = 690 * Math.PI * headIn * ovendrySpecificGravityRatio ** 2 * usedIn;
  return { referenceN: plusZero(pullLbf * N_PER_LBF) };
}

export const headPullThroughReferenceRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/head-pull-through-reference',
  title: 'Screw head pulled through: design value',
  summary:
    'The pull at which the American design code for timber still trusts a round head not to come through the wood under it, before its factors.',
  basis: 'measured',
  inputs: {
    headDiameterMm: { kind: 'number', label: 'Head diameter', unit: 'mm', ...limits.headDiameterMm },
    sideMm: { kind: 'number', label: 'Wood under the head', unit: 'mm', ...limits.sideMm },
    ovendrySpecificGravityRatio: ovendryInput(limits.ovendrySpecificGravityRatio),
  },
  outputs: { referenceN: { label: 'Reference design value', unit: 'N' } },
  compute: headPullThroughReference,
  formula: String.raw`W_H = 690 \, \pi \, D_H \, G^2 \min(t_{ns}, \, 2.5 \, D_H)`,
  symbols: {
    W_H: 'reference design value, lb',
    D_H: 'head diameter, in',
    G: 'specific gravity, ovendry mass and volume',
    't_{ns}': 'wood under the head, in',
  },
  inSymbols: (input, output) => ({
    W_H: output.referenceN / N_PER_LBF,
    D_H: input.headDiameterMm / MM_PER_IN,
    G: input.ovendrySpecificGravityRatio,
    't_{ns}': input.sideMm / MM_PER_IN,
  }),
  valid: {
    headDiameterMm: [5.94, 12.7],
    sideMm: [7.9375, 38.1],
    ovendrySpecificGravityRatio: [0.31, 0.73],
  },
  sources: [
    {
      source: nds2018,
      at: '§ 12.2.5.1, p. 78, and Table 12.2F, p. 82: the heads and thicknesses that the equation is for',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: nds2018,
      at: 'Eq. 12.2-6a, and 12.2-6b where 1725 stands for 2.5 times 690',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { headDiameterMm: 0.312 * 25.4, sideMm: 25.4, ovendrySpecificGravityRatio: 0.5 },
      expect: { referenceN: inPounds('132') },
      from: {
        source: nds2018,
        at: 'Table 12.2F, head of 0.312 in, 1 in, G 0.50',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { headDiameterMm: 0.234 * 25.4, sideMm: 0.3125 * 25.4, ovendrySpecificGravityRatio: 0.5 },
      expect: { referenceN: inPounds('40') },
      from: {
        source: nds2018,
        at: 'Table 12.2F, head of 0.234 in, 5/16 in, G 0.50',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { headDiameterMm: 12.7, sideMm: 38.1, ovendrySpecificGravityRatio: 0.42 },
      expect: { referenceN: inPounds('239') },
      from: {
        source: nds2018,
        at: 'Table 12.2F, head of 0.500 in, 1 1/2 in, G 0.42',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
  ],
  laws: [
    {
      of: 'referenceN',
      by: { headDiameterMm: 'increasing', sideMm: 'increasing', ovendrySpecificGravityRatio: 'increasing' },
    },
  ],
  cautions: [ndsDecides, notStructuralDesign],
}));
