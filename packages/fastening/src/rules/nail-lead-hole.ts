import { defineRule, requireInputs } from '@scantling/rules';
import { buildingDesignHandbook } from '@scantling/rules/sources';
import { drillingCare, tryOnAnOffcut } from '../cautions.ts';
import { ovendryInput } from '../withdrawal-terms.ts';

const limits = {
  diameterMm: { min: 0.5, max: 12 },
  ovendrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface NailLeadHoleInput {
  /** Diameter of the nail, mm, 0.5 to 12. */
  readonly diameterMm: number;
  /** Specific gravity of the wood, ovendry mass and volume, 0.1 to 1.3. */
  readonly ovendrySpecificGravityRatio: number;
}

export interface NailLeadHole {
  /** Largest hole that may be bored for the nail, mm. */
  readonly largestHoleMm: number;
}

/**
 * How large a hole may be bored for a nail so that the wood does not split and the nail still holds: 90 % of its
 * diameter in wood denser than 0.6, 75 % in lighter wood.
 *
 * @returns The largest hole, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS, as a handbook of building design puts it.
 * @example
 * ```ts
 * import { nailLeadHole } from '@scantling/fastening';
 * nailLeadHole({ diameterMm: 3, ovendrySpecificGravityRatio: 0.66 }).largestHoleMm // => 2.7
 * ```
 */
export function nailLeadHole(input: NailLeadHoleInput): NailLeadHole {
  requireInputs('nailLeadHole', input, limits);
  return { largestHoleMm: (input.ovendrySpecificGravityRatio > 0.6 ? 0.9 : 0.75) * input.diameterMm };
}

export const nailLeadHoleRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/nail-lead-hole',
  title: 'Hole for a nail, by density',
  summary: 'The largest hole that may be bored for a nail to keep the wood from splitting, by its density.',
  basis: 'convention',
  inputs: {
    diameterMm: { kind: 'number', label: 'Nail diameter', unit: 'mm', ...limits.diameterMm },
    ovendrySpecificGravityRatio: ovendryInput(limits.ovendrySpecificGravityRatio),
  },
  outputs: { largestHoleMm: { label: 'Largest hole', unit: 'mm' } },
  compute: nailLeadHole,
  formula: String.raw`d_h = \begin{cases} 0.90\,D & G > 0.6 \\ 0.75\,D & G \le 0.6 \end{cases}`,
  symbols: {
    d_h: 'largest hole',
    D: 'nail diameter',
    G: 'specific gravity',
  },
  inSymbols: (input, output) => ({
    d_h: output.largestHoleMm,
    D: input.diameterMm,
    G: input.ovendrySpecificGravityRatio,
  }),
  sources: [
    {
      source: buildingDesignHandbook,
      at: 'nails and spikes: at most 90 % of the diameter above 0.6, 75 % in less dense wood',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { diameterMm: 3, ovendrySpecificGravityRatio: 0.66 },
      expect: { largestHoleMm: '2.700' },
      from: { workedByHand: '0.90 × 3 = 2.700 mm' },
    },
    {
      given: { diameterMm: 3, ovendrySpecificGravityRatio: 0.6 },
      expect: { largestHoleMm: '2.250' },
      from: { workedByHand: '0.6 is not yet dense: 0.75 × 3 = 2.250 mm' },
    },
    {
      given: { diameterMm: 2.8, ovendrySpecificGravityRatio: 0.42 },
      expect: { largestHoleMm: '2.100' },
      from: { workedByHand: '0.75 × 2.8 = 2.100 mm' },
    },
  ],
  laws: [
    { of: 'largestHoleMm', by: { diameterMm: 'proportional', ovendrySpecificGravityRatio: 'increasing' } },
  ],
  cautions: [tryOnAnOffcut, drillingCare],
}));
