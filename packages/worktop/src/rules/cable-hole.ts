import { defineRule, requireList, requireNumber } from '@scantling/rules';
import { nfpa70 } from '@scantling/rules/sources';
import { cablesThatMove, mainsWiring, plugsAreWider } from '../cable-cautions.ts';

const fill = { min: 1, max: 100 } as const;
const cables = { min: 0.1, max: 300, minItems: 1, maxItems: 2000 } as const;

export interface CableHoleInput {
  /** Of each cable, mm, 0.1 to 300; 1 to 2000 cables. */
  readonly cableDiametersMm: readonly number[];
  /** Share of the hole’s area that they may take up, %, 1 to 100. */
  readonly mostFillPct: number;
}

export interface CableHole {
  /** Diameter that the hole needs at least, mm. */
  readonly holeDiameterMm: number;
}

/**
 * The hole for cables of whatever diameters, from the share of its area that they may take up, and never so narrow that
 * the two thickest do not pass side by side. Electrical codes allow 53 % for one cable in a conduit, 31 % for two, 40 %
 * for more: a published convention, for longer ways than through a top.
 *
 * @returns The least diameter of the hole, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: a convention; the shares of NFPA 70, chapter 9, Table 1, are for conduits.
 * @example
 * ```ts
 * import { cableHole } from '@scantling/worktop';
 * // Two cables of 9 mm and one of 6 mm
 * cableHole({ cableDiametersMm: [9, 9, 6], mostFillPct: 40 }).holeDiameterMm // => 22.25
 * // The share alone would give 8.5 mm
 * cableHole({ cableDiametersMm: [6, 6], mostFillPct: 100 }).holeDiameterMm // => 12
 * ```
 */
export function cableHole(input: CableHoleInput): CableHole {
  const { cableDiametersMm, mostFillPct } = input ?? {};
  requireNumber('cableHole', 'mostFillPct', mostFillPct, fill);
  requireList('cableHole', 'cableDiametersMm', cableDiametersMm, cables);
  const [first = 0, second = 0] = [...cableDiametersMm].sort((a, b) => b - a);
  const byShareMm = (10 * Math.hypot(...cableDiametersMm)) / Math.sqrt(mostFillPct);
  return { holeDiameterMm: Math.max(first + second, byShareMm) };
}

export const cableHoleRule = /* @__PURE__ */ defineRule(() => ({
  id: 'worktop/cable-hole',
  title: 'Hole for cables of several thicknesses',
  summary:
    'How wide a hole has to be so that cables take up no more than a share of it, and the thickest two still pass.',
  basis: 'convention',
  inputs: {
    cableDiametersMm: {
      kind: 'numbers',
      label: 'Diameter of each cable',
      unit: 'mm',
      ...cables,
      help: 'Over the sheath, one number for each cable: 9, 9, 6.',
    },
    mostFillPct: {
      kind: 'number',
      label: 'Share that they may take up',
      unit: '%',
      ...fill,
      help: 'Codes allow in a conduit 53 % for one cable, 31 % for two, 40 % for more.',
    },
  },
  outputs: { holeDiameterMm: { label: 'Least diameter of the hole', unit: 'mm' } },
  compute: cableHole,
  formula: String.raw`D = \max\left(d_1 + d_2, \; \sqrt{\frac{S}{f}}\right), \qquad S = d_1^2 + d_2^2 + \cdots`,
  symbols: {
    D: 'diameter of the hole',
    'd_1, d_2': 'diameters of the cables, the thickest first, mm',
    S: 'squares of all diameters together, mm²',
    f: 'share of the area that they may take up',
  },
  inSymbols: ({ cableDiametersMm, mostFillPct }, output) => {
    const [thickest = 0, next = 0] = [...cableDiametersMm].sort((a, b) => b - a);
    return {
      D: output.holeDiameterMm,
      d_1: thickest,
      d_2: next,
      S: cableDiametersMm.reduce((sum, diameter) => sum + diameter ** 2, 0),
      f: mostFillPct / 100,
    };
  },
  sources: [
    {
      source: nfpa70,
      at: 'Chapter 9, Table 1: share of the cross section of conduit, 53 % for one, 31 % for two, 40 % for more',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { cableDiametersMm: [9, 9, 6], mostFillPct: 40 },
      expect: { holeDiameterMm: '22.25' },
      from: { workedByHand: '9² + 9² + 6² = 198; 10 × sqrt(198 / 40) = 22.25 mm, more than 9 + 9 = 18' },
    },
    {
      given: { cableDiametersMm: [12, 7, 7], mostFillPct: 80 },
      expect: { holeDiameterMm: '19.0' },
      from: {
        workedByHand: '12² + 7² + 7² = 242; 10 × sqrt(242 / 80) = 17.39 mm, less than 12 + 7 = 19.0 mm',
      },
    },
  ],
  laws: [{ of: 'holeDiameterMm', by: { mostFillPct: 'decreasing' } }],
  cautions: [plugsAreWider, cablesThatMove, mainsWiring],
}));
