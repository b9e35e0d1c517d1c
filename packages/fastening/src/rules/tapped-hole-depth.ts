import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { tappedHolesNote } from '@scantling/rules/sources';
import { drillingCare } from '../cautions.ts';

const limits = {
  diameterMm: { min: 1, max: 64 },
  fullThreadMm: { min: 0, max: 300 },
} as const;

export interface TappedHoleDepthInput {
  /** Diameter of the machine screw, mm, 1 to 64. */
  readonly diameterMm: number;
  /** How deep the thread is to be full, mm, 0 to 300. */
  readonly fullThreadMm: number;
}

export interface TappedHoleDepth {
  /** How deep to drill, at full diameter, mm. */
  readonly drillMm: number;
}

/**
 * How deep to drill a blind hole that is to be tapped: deeper than the full thread by a quarter of it below M6, by a
 * fifth from M6 to M12 and by 15 % above, for the lead of the tap and the chips.
 *
 * @returns Depth of the drilled hole at its full diameter, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: BS 1936, as a reference site quotes it.
 * @example
 * ```ts
 * import { tappedHoleDepth } from '@scantling/fastening';
 * tappedHoleDepth({ diameterMm: 6, fullThreadMm: 9 }).drillMm // => 10.8
 * ```
 */
export function tappedHoleDepth(input: TappedHoleDepthInput): TappedHoleDepth {
  requireInputs('tappedHoleDepth', input, limits);
  const { diameterMm, fullThreadMm } = input;
  const share = diameterMm < 6 ? 0.25 : diameterMm <= 12 ? 0.2 : 0.15;
  return { drillMm: plusZero((1 + share) * fullThreadMm) };
}

export const tappedHoleDepthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/tapped-hole-depth',
  title: 'Depth of a hole to be tapped',
  summary: 'How much deeper than its full thread a blind hole in metal is drilled before it is tapped.',
  basis: 'convention',
  inputs: {
    diameterMm: { kind: 'number', label: 'Screw diameter', unit: 'mm', ...limits.diameterMm },
    fullThreadMm: {
      kind: 'number',
      label: 'Full thread',
      unit: 'mm',
      ...limits.fullThreadMm,
      help: 'How deep the thread is to be full.',
    },
  },
  outputs: { drillMm: { label: 'Drill to', unit: 'mm', help: 'At full diameter; the tip goes deeper.' } },
  compute: tappedHoleDepth,
  formula: String.raw`h = (1 + k)\,\ell, \qquad k = \begin{cases} 0.25 & D < 6 \\ 0.20 & 6 \le D \le 12 \\ 0.15 & D > 12 \end{cases}`,
  symbols: {
    h: 'depth to drill',
    '\\ell': 'full thread',
    k: 'share added',
    D: 'screw diameter, mm',
  },
  inSymbols: ({ diameterMm, fullThreadMm }, output) => ({
    h: output.drillMm,
    '\\ell': fullThreadMm,
    k: diameterMm < 6 ? 0.25 : diameterMm <= 12 ? 0.2 : 0.15,
    D: diameterMm,
  }),
  sources: [
    {
      source: tappedHolesNote,
      at: 'note on tapping holes: 0.25, 0.2 and 0.15 of the full thread, after BS 1936',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { diameterMm: 5, fullThreadMm: 8 },
      expect: { drillMm: '10.00' },
      from: { workedByHand: '(1 + 0.25) × 8 = 10.00 mm' },
    },
    {
      given: { diameterMm: 8, fullThreadMm: 12 },
      expect: { drillMm: '14.40' },
      from: { workedByHand: '(1 + 0.20) × 12 = 14.40 mm' },
    },
    {
      given: { diameterMm: 16, fullThreadMm: 24 },
      expect: { drillMm: '27.60' },
      from: { workedByHand: '(1 + 0.15) × 24 = 27.60 mm' },
    },
  ],
  laws: [{ of: 'drillMm', by: { fullThreadMm: 'proportional', diameterMm: 'decreasing' } }],
  cautions: [drillingCare],
}));
