import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { concreteMathematics1994 } from '@scantling/rules/sources';

const limits = {
  lengthMm: { min: 0, max: 20_000 },
  pitchMm: { min: 0, max: 10_000 },
  count: { min: 1, max: 20_000, integer: true },
} as const;

export interface CentredRowInput {
  /** Length that the row stands on, mm, 0 to 20 000. */
  readonly lengthMm: number;
  /** From centre to centre, mm, 0 to 10 000. */
  readonly pitchMm: number;
  /** Number of holes, 1 to 20 000. */
  readonly count: number;
}

export interface CentredRow {
  /** Centre of the first hole from the near end, and of the last from the far end, mm. */
  readonly firstMm: number;
}

const fits = ({ lengthMm, pitchMm, count }: CentredRowInput) => (count - 1) * pitchMm <= lengthMm;

/**
 * Where a row of evenly pitched holes begins so that both ends are left the same.
 *
 * @returns The distance from either end to the centre of the hole nearest to it, mm.
 * @throws RangeError where an input is outside its limits or the row is longer than the length.
 * Source: the arithmetic progression, Concrete Mathematics, section 2.2.
 * @example
 * ```ts
 * import { centredRow } from '@scantling/grids';
 * centredRow({ lengthMm: 1500, pitchMm: 96, count: 15 }).firstMm // => 78
 * centredRow({ lengthMm: 1300, pitchMm: 96, count: 15 }) // throws centredRow requires a row no longer than lengthMm
 * ```
 */
export function centredRow(input: CentredRowInput): CentredRow {
  requireInputs('centredRow', input, limits);
  const { lengthMm, pitchMm, count } = input;
  const rowMm = (count - 1) * pitchMm;
  requireThat('centredRow', fits(input), `a row no longer than lengthMm ${lengthMm}, got ${rowMm} mm`);
  return { firstMm: plusZero((lengthMm - rowMm) / 2) };
}

export const centredRowRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/centred-row',
  title: 'A row in the middle of a length',
  summary: 'Where a row of evenly pitched holes begins so that both ends of the board are left the same.',
  basis: 'derived',
  inputs: {
    lengthMm: {
      kind: 'number',
      label: 'Length',
      unit: 'mm',
      ...limits.lengthMm,
      help: 'Of the whole board.',
    },
    pitchMm: {
      kind: 'number',
      label: 'Pitch',
      unit: 'mm',
      ...limits.pitchMm,
      help: 'From centre to centre.',
    },
    count: { kind: 'number', label: 'Number of holes', unit: '1', ...limits.count },
  },
  outputs: {
    firstMm: {
      label: 'First hole',
      unit: 'mm',
      help: 'From the end of the board to the centre of the first hole; the last hole is as far from the other end.',
    },
  },
  compute: centredRow,
  formula: String.raw`x_0 = \frac{L - (n - 1)\,p}{2}`,
  symbols: { x_0: 'first hole', L: 'length', n: 'number of holes', p: 'pitch' },
  requires: [{ says: 'the row is no longer than the length', holds: fits }],
  sources: [
    {
      source: concreteMathematics1994,
      at: 'section 2.2: the general arithmetic progression a + bk',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { lengthMm: 1500, pitchMm: 96, count: 15 },
      expect: { firstMm: '78.000' },
      from: { workedByHand: '14 × 96 = 1344; 1500 − 1344 = 156; 156 / 2 = 78 mm' },
    },
  ],
  laws: [{ of: 'firstMm', by: { lengthMm: 'linear', pitchMm: 'linear' } }],
}));
