import { defineRule, requireInputs } from '@scantling/rules';
import { eurocode5, timberDesignToEurocode } from '@scantling/rules/sources';
import { makersDataFirst, notStructuralDesign } from '../cautions.ts';

const limits = { threadDiameterMm: { min: 0.5, max: 40 } } as const;

export interface PointsidePenetrationInput {
  /** Outer diameter of the thread, mm, 0.5 to 40. */
  readonly threadDiameterMm: number;
}

export interface PointsidePenetration {
  /** Least length of thread in the wood for a screw that is pulled, mm. */
  readonly leastThreadMm: number;
  /** Least depth of a smooth shank in the wood for its diameter to count against sideways loads, mm. */
  readonly leastShankMm: number;
}

/**
 * How much of a screw the European design code wants in the wood that takes its point: six diameters of thread where
 * it is pulled, and four of the smooth shank where the shank is to count against a sideways load.
 *
 * @returns Both lengths, mm.
 * @throws RangeError where the diameter is outside its limits.
 * Source: Eurocode 5 (EN 1995-1-1), 8.7.1 and 8.7.2, as a textbook on it puts them.
 * @example
 * ```ts
 * import { pointsidePenetration } from '@scantling/fastening';
 * pointsidePenetration({ threadDiameterMm: 5 }) // => { leastThreadMm: 30, leastShankMm: 20 }
 * ```
 */
export function pointsidePenetration(input: PointsidePenetrationInput): PointsidePenetration {
  requireInputs('pointsidePenetration', input, limits);
  return { leastThreadMm: 6 * input.threadDiameterMm, leastShankMm: 4 * input.threadDiameterMm };
}

export const pointsidePenetrationRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/pointside-penetration',
  title: 'Least thread in the wood, by the European code',
  summary:
    'How much thread the European design code wants in the wood where a screw is pulled, and how much smooth shank where it is pushed sideways.',
  basis: 'convention',
  inputs: {
    threadDiameterMm: {
      kind: 'number',
      label: 'Thread diameter',
      unit: 'mm',
      ...limits.threadDiameterMm,
      help: 'Outer diameter of the thread.',
    },
  },
  outputs: {
    leastThreadMm: { label: 'Least thread, pulled', unit: 'mm' },
    leastShankMm: {
      label: 'Least smooth shank, sideways',
      unit: 'mm',
      help: 'With less of it, 1.1 times the root diameter counts instead.',
    },
  },
  compute: pointsidePenetration,
  formula: String.raw`\ell_{ef} = 6d, \qquad \ell_s = 4d`,
  symbols: {
    '\\ell_{ef}': 'least thread in the wood',
    '\\ell_s': 'least smooth shank in the wood',
    d: 'outer diameter of the thread',
  },
  inSymbols: (input, output) => ({
    '\\ell_{ef}': output.leastThreadMm,
    '\\ell_s': output.leastShankMm,
    d: input.threadDiameterMm,
  }),
  sources: [
    {
      source: timberDesignToEurocode,
      at: 'example 10.13.6: the coefficient of the threaded penetration must exceed 6 (8.7.2(3)); 10.3.3: the shank counts from 4d on, else 1.1 times the root',
      confirmed: 'text',
      tier: 'reprint',
    },
    { source: eurocode5, at: '8.7.1(2), 8.7.1(3) and 8.7.2(3)', confirmed: 'memory' },
  ],
  examples: [
    {
      given: { threadDiameterMm: 4.5 },
      expect: { leastThreadMm: '27.00', leastShankMm: '18.00' },
      from: { workedByHand: '6 × 4.5 = 27.00 mm; 4 × 4.5 = 18.00 mm' },
    },
  ],
  laws: [
    { of: 'leastThreadMm', by: { threadDiameterMm: 'proportional' } },
    { of: 'leastShankMm', by: { threadDiameterMm: 'proportional' } },
  ],
  cautions: [makersDataFirst, notStructuralDesign],
}));
