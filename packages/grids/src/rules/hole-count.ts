import { defineRule, requireInputs } from '@scantling/rules';
import { concreteMathematics1994 } from '@scantling/rules/sources';

const limits = {
  usableLengthMm: { min: 0, max: 20_000 },
  pitchMm: { min: 1, max: 10_000 },
} as const;

export interface HoleCountInput {
  /** From the centre of the first hole to the farthest place for the centre of the last, mm, 0 to 20 000. */
  readonly usableLengthMm: number;
  /** From centre to centre, mm, 1 to 10 000. */
  readonly pitchMm: number;
}

export interface HoleCount {
  /** How many holes fit, the first one included. */
  readonly count: number;
  /** What is left beyond the centre of the last hole, mm, less than one pitch. */
  readonly leftoverMm: number;
}

/** As a share of the pitch: 100 pitches of 25.4 mm may come out a rounding error longer than 2540 mm. */
const ROUNDING = 1e-9;

/**
 * How many holes fit along a length when they stand at an even pitch.
 *
 * @returns The number of holes, and the length left beyond the last one in mm.
 * @throws RangeError where an input is outside its limits.
 * Source: the count of whole numbers in a closed interval, Concrete Mathematics, section 3.2.
 * @example
 * ```ts
 * import { holeCount } from '@scantling/grids';
 * // 14 pitches of 96 mm are 1344 mm; a 15th would need 1440 mm
 * holeCount({ usableLengthMm: 1400, pitchMm: 96 }) // => { count: 15, leftoverMm: 56 }
 * ```
 */
export function holeCount(input: HoleCountInput): HoleCount {
  requireInputs('holeCount', input, limits);
  const { usableLengthMm, pitchMm } = input;
  const pitches = Math.floor(usableLengthMm / pitchMm + ROUNDING);
  return { count: pitches + 1, leftoverMm: Math.max(0, usableLengthMm - pitches * pitchMm) };
}

export const holeCountRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/hole-count',
  title: 'How many holes fit in a row',
  summary: 'How many holes at an even pitch fit along a length, and how much is left over at the end.',
  basis: 'derived',
  inputs: {
    usableLengthMm: {
      kind: 'number',
      label: 'Usable length',
      unit: 'mm',
      ...limits.usableLengthMm,
      help: 'From the centre of the first hole to the farthest place for the centre of the last.',
    },
    pitchMm: {
      kind: 'number',
      label: 'Pitch',
      unit: 'mm',
      ...limits.pitchMm,
      help: 'From centre to centre.',
    },
  },
  outputs: {
    count: { label: 'Holes', unit: '1' },
    leftoverMm: { label: 'Left over', unit: 'mm', help: 'Beyond the centre of the last hole.' },
  },
  compute: holeCount,
  formula: String.raw`n = \left\lfloor \frac{L}{p} \right\rfloor + 1, \qquad r = L - (n - 1)\,p`,
  symbols: { n: 'number of holes', L: 'usable length', p: 'pitch', r: 'left over' },
  sources: [
    {
      source: concreteMathematics1994,
      at: 'section 3.2, eq. (3.12): whole numbers in a closed interval',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { usableLengthMm: 1400, pitchMm: 96 },
      expect: { count: '15.0', leftoverMm: '56.000' },
      from: {
        workedByHand: '1400 / 96 = 14.58, so 14 pitches and 15 holes; 1400 − 14 × 96 = 1400 − 1344 = 56 mm',
      },
    },
  ],
  laws: [{ of: 'count', by: { usableLengthMm: 'increasing', pitchMm: 'decreasing' } }],
}));
