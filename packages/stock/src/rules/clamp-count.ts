import { defineRule, requireInputs } from '@scantling/rules';
import { clampsUnderLoad } from '../cautions.ts';

const side = { min: 1, max: 20_000 };
const limits = {
  forceN: { min: 0, max: 1e7 },
  clampForceN: { min: 1, max: 1e7 },
  lengthMm: side,
  spreadDepthMm: side,
};

export interface ClampCountInput {
  /** All clamps together, N, 0 to 10⁷. */
  readonly forceN: number;
  /** What one clamp is tightened to, N, 1 to 10⁷. */
  readonly clampForceN: number;
  /** Length of the joint, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** From the clamp's pad to the nearest glue line, mm, 1 to 20 000: the outermost board and a block before it. */
  readonly spreadDepthMm: number;
}

export interface ClampCount {
  readonly clampCount: number;
  /** From clamp to clamp, mm; the first sits half of it from the end. */
  readonly spacingMm: number;
}

/**
 * How many clamps a panel takes: enough for the force, and close enough that the pressure, which spreads at 45° from
 * every pad, leaves no part of the nearest joint without.
 *
 * @returns Number of clamps, one at least, and their spacing, mm.
 * @throws RangeError where an input is outside its limits.
 * Common practice, no source: the 45°. The rest is division.
 * @example
 * ```ts
 * import { clampCount } from '@scantling/stock';
 * // 81 kN along 1800 mm, clamps of 5 kN: the force asks for 17; boards of 120 mm would be content with 8
 * clampCount({ forceN: 81_000, clampForceN: 5000, lengthMm: 1800, spreadDepthMm: 120 }) // => { clampCount: 17, spacingMm: 105.88 }
 * ```
 */
export function clampCount(input: ClampCountInput): ClampCount {
  requireInputs('clampCount', input, limits);
  const { lengthMm } = input;
  const asked = Math.max(1, input.forceN / input.clampForceN, lengthMm / input.spreadDepthMm / 2);
  // What is over a whole number by less than rounding is not another clamp.
  const count = Math.ceil(asked * (1 - 1e-12));
  return { clampCount: count, spacingMm: lengthMm / count };
}

export const clampCountRule = /* @__PURE__ */ defineRule(() => ({
  id: 'stock/clamp-count',
  title: 'How many clamps',
  summary: 'How many clamps a glued-up panel takes, and how far apart they sit.',
  basis: 'convention',
  inputs: {
    forceN: { kind: 'number', label: 'All clamps together', unit: 'N', ...limits.forceN },
    clampForceN: {
      kind: 'number',
      label: 'One clamp',
      unit: 'N',
      ...limits.clampForceN,
      help: 'What it is tightened to: at most what its maker states.',
    },
    lengthMm: { kind: 'number', label: 'Length of the joint', unit: 'mm', ...limits.lengthMm },
    spreadDepthMm: {
      kind: 'number',
      label: 'From pad to nearest glue line',
      unit: 'mm',
      ...limits.spreadDepthMm,
      help: 'The width of the outermost board, and of a block between it and the clamp.',
    },
  },
  outputs: {
    clampCount: { label: 'Clamps', unit: '1' },
    spacingMm: { label: 'From clamp to clamp', unit: 'mm', help: 'The first sits half of it from the end.' },
  },
  compute: clampCount,
  formula: String.raw`n = \left\lceil \max\left( 1, \frac{F}{f}, \frac{L}{2 d} \right) \right\rceil, \qquad s = \frac{L}{n}`,
  symbols: {
    n: 'clamps',
    F: 'force of all clamps',
    f: 'force of one',
    L: 'length of the joint',
    d: 'from pad to nearest glue line',
    s: 'spacing',
  },
  inSymbols: (input, output) => ({
    n: output.clampCount,
    F: input.forceN,
    f: input.clampForceN,
    L: input.lengthMm,
    d: input.spreadDepthMm,
    s: output.spacingMm,
  }),
  sources: [],
  examples: [
    {
      given: { forceN: 40_000, clampForceN: 5000, lengthMm: 1800, spreadDepthMm: 150 },
      expect: { clampCount: '8.0', spacingMm: '225.0' },
      from: {
        workedByHand: '40000 / 5000 = 8.0 by force; 1800 / (2 × 150) = 6.0 by spread; 1800 / 8 = 225.0 mm',
      },
    },
    {
      given: { forceN: 10_000, clampForceN: 5000, lengthMm: 1800, spreadDepthMm: 60 },
      expect: { clampCount: '15.0', spacingMm: '120.0' },
      from: {
        workedByHand: '10000 / 5000 = 2.0 by force; 1800 / (2 × 60) = 15.0 by spread; 1800 / 15 = 120.0 mm',
      },
    },
  ],
  laws: [
    {
      of: 'clampCount',
      by: {
        forceN: 'increasing',
        clampForceN: 'decreasing',
        lengthMm: 'increasing',
        spreadDepthMm: 'decreasing',
      },
    },
  ],
  cautions: [clampsUnderLoad],
}));
