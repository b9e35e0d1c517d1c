import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { concreteMathematics1994 } from '@scantling/rules/sources';

const limits = {
  startMm: { min: -20_000, max: 20_000 },
  pitchMm: { min: 0, max: 10_000 },
  index: { min: 0, max: 20_000, integer: true },
} as const;

export interface PitchPositionInput {
  /** Where the first one is, mm from the datum, −20 000 to 20 000. */
  readonly startMm: number;
  /** From centre to centre, mm, 0 to 10 000. */
  readonly pitchMm: number;
  /** How many pitches after the first one, 0 to 20 000; 0 is the first one itself. */
  readonly index: number;
}

export interface PitchPosition {
  /** Where it is, mm from the datum. */
  readonly positionMm: number;
}

/**
 * Where a hole in an evenly pitched row is, measured from the datum and not from the hole before it, so that
 * errors do not add up along the row.
 *
 * @returns The position in mm from the datum.
 * @throws RangeError where an input is outside its limits.
 * Source: the arithmetic progression, Concrete Mathematics, section 2.2.
 * @example
 * ```ts
 * import { pitchPosition } from '@scantling/grids';
 * pitchPosition({ startMm: 78, pitchMm: 96, index: 14 }).positionMm // => 1422
 * ```
 */
export function pitchPosition(input: PitchPositionInput): PitchPosition {
  requireInputs('pitchPosition', input, limits);
  return { positionMm: plusZero(input.startMm + input.index * input.pitchMm) };
}

export const pitchPositionRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/pitch-position',
  title: 'Position of a hole in a row',
  summary:
    'Where each hole of an evenly pitched row is, measured from one datum so that errors do not add up.',
  basis: 'derived',
  inputs: {
    startMm: { kind: 'number', label: 'First hole', unit: 'mm', ...limits.startMm, help: 'From the datum.' },
    pitchMm: {
      kind: 'number',
      label: 'Pitch',
      unit: 'mm',
      ...limits.pitchMm,
      help: 'From centre to centre.',
    },
    index: {
      kind: 'number',
      label: 'Pitches after the first hole',
      unit: '1',
      ...limits.index,
      help: '0 is the first hole itself.',
    },
  },
  outputs: { positionMm: { label: 'Position', unit: 'mm', help: 'From the datum.' } },
  compute: pitchPosition,
  formula: String.raw`x_i = x_0 + i\,p`,
  symbols: {
    x_i: 'position',
    x_0: 'position of the first hole',
    i: 'pitches after the first hole',
    p: 'pitch',
  },
  sources: [
    {
      source: concreteMathematics1994,
      at: 'section 2.2: the general arithmetic progression a + bk',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { startMm: 78, pitchMm: 96, index: 14 },
      expect: { positionMm: '1422.000' },
      from: { workedByHand: '14 × 96 = 1344; 78 + 1344 = 1422 mm' },
    },
  ],
  laws: [{ of: 'positionMm', by: { startMm: 'linear', pitchMm: 'linear' } }],
}));
