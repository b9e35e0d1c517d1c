import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { armyCarpentry1995, canadianWoodScrewsPage } from '@scantling/rules/sources';
import { drillingCare, tryOnAnOffcut } from '../cautions.ts';

const limits = { anchoredThreadMm: { min: 0, max: 1000 } } as const;

export interface LeadHoleDepthInput {
  /** Length of the thread that is to be anchored in the wood, tip included, mm, 0 to 1000. */
  readonly anchoredThreadMm: number;
}

export interface LeadHoleDepth {
  /** The shallower of the two depths, from where the thread begins in the wood, mm. */
  readonly fromMm: number;
  /** The deeper of the two, mm. */
  readonly toMm: number;
}

/**
 * How deep the hole for the threads of a wood screw is bored: half to two thirds of the thread that it is to anchor.
 * The screw cuts the rest for itself. In hardwood, and for soft screws, nearly to the tip.
 *
 * @returns The two depths, mm, from where the thread begins in the wood.
 * @throws RangeError where the length is outside its limits.
 * Source: an army course in carpentry; a timber council has more for hardwood.
 * @example
 * ```ts
 * import { leadHoleDepth } from '@scantling/fastening';
 * leadHoleDepth({ anchoredThreadMm: 27 }) // => { fromMm: 13.5, toMm: 18 }
 * ```
 */
export function leadHoleDepth(input: LeadHoleDepthInput): LeadHoleDepth {
  requireInputs('leadHoleDepth', input, limits);
  return { fromMm: plusZero(input.anchoredThreadMm / 2), toMm: plusZero((2 * input.anchoredThreadMm) / 3) };
}

export const leadHoleDepthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/lead-hole-depth',
  title: 'Depth of the hole for a screw’s threads',
  summary: 'How deep the lead hole of a wood screw is bored, by the thread that it is to anchor.',
  basis: 'convention',
  inputs: {
    anchoredThreadMm: {
      kind: 'number',
      label: 'Thread to be anchored',
      unit: 'mm',
      ...limits.anchoredThreadMm,
      help: 'In the wood, tip included.',
    },
  },
  outputs: {
    fromMm: { label: 'Depth, from', unit: 'mm', help: 'From where the thread begins in the wood.' },
    toMm: { label: 'Depth, to', unit: 'mm' },
  },
  compute: leadHoleDepth,
  formula: String.raw`h_1 = \tfrac{1}{2}\,\ell, \qquad h_2 = \tfrac{2}{3}\,\ell`,
  symbols: {
    'h_1, h_2': 'depth of the hole, from and to',
    '\\ell': 'thread to be anchored',
  },
  inSymbols: (input, output) => ({ h_1: output.fromMm, h_2: output.toMm, '\\ell': input.anchoredThreadMm }),
  sources: [
    {
      source: armyCarpentry1995,
      at: 'd. Pilot and Starter Holes: to a depth 1/2 or 2/3 the length of the threads to be anchored',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: canadianWoodScrewsPage,
      at: 'Figure 5.5: in softwoods about half of the screw’s length, in hardwoods or for soft screws nearly as deep as the screw',
      confirmed: 'text',
      erratum:
        'In hardwood the council bores nearly the whole thread, the army half to two thirds in any wood.',
    },
  ],
  examples: [
    {
      given: { anchoredThreadMm: 27 },
      expect: { fromMm: '13.50', toMm: '18.00' },
      from: { workedByHand: '27 / 2 = 13.50 mm; 2 × 27 / 3 = 18.00 mm' },
    },
  ],
  laws: [
    { of: 'fromMm', by: { anchoredThreadMm: 'proportional' } },
    { of: 'toMm', by: { anchoredThreadMm: 'proportional' } },
  ],
  cautions: [tryOnAnOffcut, drillingCare],
}));
