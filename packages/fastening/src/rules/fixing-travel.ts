import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';

const limits = {
  distanceMm: { min: 0, max: 20_000 },
  swellPct: { min: 0, max: 20 },
  shrinkPct: { min: 0, max: 20 },
} as const;

export interface FixingTravelInput {
  /** From the line where the top is held to the screw, across the grain, mm, 0 to 20 000. */
  readonly distanceMm: number;
  /** Most that the top swells from its width on building day, % of that width, 0 to 20. */
  readonly swellPct: number;
  /** Most that the top shrinks from its width on building day, % of that width, 0 to 20. */
  readonly shrinkPct: number;
}

export interface FixingTravel {
  /** How far the screw travels away from the fixed line, mm. */
  readonly swellMm: number;
  /** How far it travels towards the fixed line, mm. */
  readonly shrinkMm: number;
}

/**
 * How far a screw in a solid top travels over the base while the top swells and shrinks about the line where it
 * is held: every millimetre between the two changes by the same share.
 *
 * @returns The travel in mm from building day, outward and inward, both 0 or more.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 13-2: the change is in proportion to the dimension.
 * @example
 * ```ts
 * import { fixingTravel } from '@scantling/fastening';
 * // 300 mm from the fixed line, up to 1 % swelling and 0.6 % shrinking
 * fixingTravel({ distanceMm: 300, swellPct: 1, shrinkPct: 0.6 }) // => { swellMm: 3, shrinkMm: 1.8 }
 * ```
 */
export function fixingTravel(input: FixingTravelInput): FixingTravel {
  requireInputs('fixingTravel', input, limits);
  const { distanceMm, swellPct, shrinkPct } = input;
  return {
    swellMm: plusZero((distanceMm * swellPct) / 100),
    shrinkMm: plusZero((distanceMm * shrinkPct) / 100),
  };
}

export const fixingTravelRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/fixing-travel',
  title: 'How far a screw travels with the top',
  summary:
    'How far a screw in a solid top moves over the base through the seasons, from its distance to the line where the top is held.',
  basis: 'derived',
  inputs: {
    distanceMm: {
      kind: 'number',
      label: 'From the fixed line to the screw',
      unit: 'mm',
      ...limits.distanceMm,
      help: 'Across the grain. The fixed line is where the top is held so that it cannot move.',
    },
    swellPct: {
      kind: 'number',
      label: 'Most swelling',
      unit: '%',
      ...limits.swellPct,
      help: 'Of the width on building day.',
    },
    shrinkPct: {
      kind: 'number',
      label: 'Most shrinking',
      unit: '%',
      ...limits.shrinkPct,
      help: 'Of the width on building day.',
    },
  },
  outputs: {
    swellMm: { label: 'Travel when the top swells', unit: 'mm', help: 'Away from the fixed line.' },
    shrinkMm: { label: 'Travel when the top shrinks', unit: 'mm', help: 'Towards the fixed line.' },
  },
  compute: fixingTravel,
  formula: String.raw`w = a\,\varepsilon_w, \qquad s = a\,\varepsilon_s`,
  symbols: {
    w: 'travel when the top swells',
    s: 'travel when the top shrinks',
    a: 'from the fixed line to the screw',
    '\\varepsilon_w': 'most swelling, as a fraction',
    '\\varepsilon_s': 'most shrinking, as a fraction',
  },
  inSymbols: (input, output) => ({
    w: output.swellMm,
    s: output.shrinkMm,
    a: input.distanceMm,
    '\\varepsilon_w': input.swellPct / 100,
    '\\varepsilon_s': input.shrinkPct / 100,
  }),
  sources: [
    {
      source: woodHandbook2010,
      at: 'ch. 13, the equation that goes with Table 13-5, as an extension service reprints it: change in proportion to dimension',
      confirmed: 'text',
      tier: 'reprint',
    },
    { source: woodHandbook2010, at: 'its number and page: Eq. 13-2, p. 13-17', confirmed: 'memory' },
  ],
  examples: [
    {
      given: { distanceMm: 300, swellPct: 1, shrinkPct: 0.6 },
      expect: { swellMm: '3.000', shrinkMm: '1.800' },
      from: { workedByHand: '300 × 1 / 100 = 3 mm; 300 × 0.6 / 100 = 1.8 mm' },
    },
  ],
  laws: [
    { of: 'swellMm', by: { distanceMm: 'proportional', swellPct: 'proportional' } },
    { of: 'shrinkMm', by: { distanceMm: 'proportional', shrinkPct: 'proportional' } },
  ],
}));
