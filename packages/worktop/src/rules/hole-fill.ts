import { defineRule, requireList, requireNumber } from '@scantling/rules';
import { euclidElements, nfpa70 } from '@scantling/rules/sources';
import { cablesThatMove, mainsWiring, plugsAreWider } from '../cable-cautions.ts';

const hole = { min: 1, max: 1000 } as const;
const cables = { min: 0.1, max: 300, minItems: 1, maxItems: 2000 } as const;

export interface HoleFillInput {
  /** Of the hole, mm, 1 to 1000. */
  readonly holeDiameterMm: number;
  /** Of each cable, mm, 0.1 to 300; 1 to 2000 cables. */
  readonly cableDiametersMm: readonly number[];
}

export interface HoleFill {
  /** Share of the hole's area that the cables take up, %; cables over 100 % do not go in. */
  readonly fillPct: number;
}

/**
 * How much of a round hole its cables take up, of whatever diameters they are. Electrical codes limit this share for
 * conduits, where cables are drawn through a long way round bends: 53 % for one cable, 31 % for two, 40 % for more.
 *
 * @returns The share of the area, %.
 * @throws RangeError where an input is outside its limits.
 * Source: Euclid, Elements, XII.2; the limits, for conduits: NFPA 70, chapter 9, Table 1.
 * @example
 * ```ts
 * import { holeFill } from '@scantling/worktop';
 * // Two cables of 9 mm and one of 6 mm in a hole of 30 mm
 * holeFill({ holeDiameterMm: 30, cableDiametersMm: [9, 9, 6] }) // => { fillPct: 22 }
 * ```
 */
export function holeFill(input: HoleFillInput): HoleFill {
  const { holeDiameterMm, cableDiametersMm } = input ?? {};
  requireNumber('holeFill', 'holeDiameterMm', holeDiameterMm, hole);
  requireList('holeFill', 'cableDiametersMm', cableDiametersMm, cables);
  return { fillPct: 100 * (Math.hypot(...cableDiametersMm) / holeDiameterMm) ** 2 };
}

export const holeFillRule = /* @__PURE__ */ defineRule(() => ({
  id: 'worktop/hole-fill',
  title: 'Fill of a cable hole',
  summary: 'How much of a hole’s area is taken up by the cables that pass through it.',
  basis: 'exact',
  inputs: {
    holeDiameterMm: { kind: 'number', label: 'Diameter of the hole', unit: 'mm', ...hole },
    cableDiametersMm: {
      kind: 'numbers',
      label: 'Diameter of each cable',
      unit: 'mm',
      ...cables,
      help: 'Over the sheath, one number for each cable: 9, 9, 6.',
    },
  },
  outputs: {
    fillPct: {
      label: 'Share of the hole',
      unit: '%',
      help: 'Codes allow in a conduit 53 % for one cable, 31 % for two, 40 % for more.',
    },
  },
  compute: holeFill,
  formula: String.raw`f = \frac{S}{D^2}, \qquad S = d_1^2 + d_2^2 + \cdots`,
  symbols: {
    f: 'share of the area',
    S: 'squares of all diameters together, mm²',
    'd_1, d_2': 'diameters of the cables',
    D: 'diameter of the hole',
  },
  inSymbols: (input, output) => ({
    f: output.fillPct / 100,
    S: input.cableDiametersMm.reduce((sum, diameter) => sum + diameter ** 2, 0),
    D: input.holeDiameterMm,
  }),
  sources: [
    {
      source: euclidElements,
      at: 'Book XII, Proposition 2: circles are to one another as the squares on their diameters',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: nfpa70,
      at: 'Chapter 9, Table 1: share of the cross section of conduit, 53 % for one, 31 % for two, 40 % for more',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { holeDiameterMm: 30, cableDiametersMm: [9, 9, 6] },
      expect: { fillPct: '22.0' },
      from: { workedByHand: '9² + 9² + 6² = 198; 100 × 198 / 30² = 22.0 %' },
    },
    {
      given: { holeDiameterMm: 40, cableDiametersMm: [20] },
      expect: { fillPct: '25.0' },
      from: { workedByHand: '100 × 20² / 40² = 25.0 %' },
    },
  ],
  laws: [{ of: 'fillPct', by: { holeDiameterMm: 'decreasing' } }],
  cautions: [plugsAreWider, cablesThatMove, mainsWiring],
}));
