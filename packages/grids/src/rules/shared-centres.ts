import { defineRule, requireInputs } from '@scantling/rules';

const pitch = { min: 1, max: 10_000 };
const limits = {
  pitchMm: pitch,
  otherPitchMm: pitch,
  count: { min: 1, max: 20_000, integer: true },
  toleranceMm: { min: 0, max: 100 },
} as const;

export interface SharedCentresInput {
  /** Pitch of the row, mm, 1 to 10 000, taken to the nanometre. */
  readonly pitchMm: number;
  /** Pitch of the other row, mm, 1 to 10 000, taken to the nanometre: 32 for cabinet hardware. */
  readonly otherPitchMm: number;
  /** Number of holes in the row, 1 to 20 000. */
  readonly count: number;
  /** How far a hole may be off, mm, 0 to 100, taken to the nanometre; 0 asks for the very same place. */
  readonly toleranceMm: number;
}

export interface SharedCentres {
  /** How many holes of the row fall on the other one, the first included. */
  readonly sharedCount: number;
}

const NM_PER_MM = 1e6;

/**
 * How many holes of a row fall on another row of a different pitch that begins at the same hole and goes on without end.
 * So a bench whose pitch is a multiple of 32 mm takes cabinet hardware at every hole: 3 × 32 = 96 mm.
 *
 * @returns The number of holes that both rows have, the first included.
 * @throws RangeError where an input is outside its limits.
 * Common practice, no source: that 32 mm is a usual pitch of hardware, and 96 mm of benches.
 * @example
 * ```ts
 * import { sharedCentres } from '@scantling/grids';
 * sharedCentres({ pitchMm: 96, otherPitchMm: 32, count: 15, toleranceMm: 0 }) // => { sharedCount: 15 }
 * // At 100 mm every eighth hole: 8 × 100 = 25 × 32
 * sharedCentres({ pitchMm: 100, otherPitchMm: 32, count: 15, toleranceMm: 0 }) // => { sharedCount: 2 }
 * ```
 */
export function sharedCentres(input: SharedCentresInput): SharedCentres {
  requireInputs('sharedCentres', input, limits);
  // Whole nanometres: 12 holes at 25.4 mm are on 304.8 mm, and not a rounding error beside it.
  const [pitchNm, otherNm, toleranceNm] = [input.pitchMm, input.otherPitchMm, input.toleranceMm].map((mm) =>
    Math.round(mm * NM_PER_MM),
  ) as [number, number, number];
  let sharedCount = 0;
  for (let i = 0; i < input.count; i++) {
    const beyondNm = (i * pitchNm) % otherNm;
    if (Math.min(beyondNm, otherNm - beyondNm) <= toleranceNm) sharedCount += 1;
  }
  return { sharedCount };
}

export const sharedCentresRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/shared-centres',
  title: 'Holes that two pitches share',
  summary:
    'How many holes of a row fall on the holes of another pitch, such as the 32 mm of cabinet hardware, from the first hole on.',
  basis: 'convention',
  inputs: {
    pitchMm: {
      kind: 'number',
      label: 'Pitch',
      unit: 'mm',
      ...limits.pitchMm,
      help: 'From centre to centre.',
    },
    otherPitchMm: {
      kind: 'number',
      label: 'Other pitch',
      unit: 'mm',
      ...limits.otherPitchMm,
      help: '32 mm is usual for cabinet hardware.',
    },
    count: { kind: 'number', label: 'Number of holes', unit: '1', ...limits.count },
    toleranceMm: {
      kind: 'number',
      label: 'A hole may be off by',
      unit: 'mm',
      ...limits.toleranceMm,
      help: '0 asks for the very same place.',
    },
  },
  outputs: { sharedCount: { label: 'Holes on both', unit: '1', help: 'The first one included.' } },
  compute: sharedCentres,
  formula: String.raw`n_s = \#\left\{\, i < n : \left| i\,p - q\,\mathrm{round}\!\left(\frac{i\,p}{q}\right) \right| \le t \,\right\}`,
  symbols: {
    n_s: 'holes on both',
    n: 'number of holes',
    p: 'pitch',
    q: 'other pitch',
    t: 'how far a hole may be off',
  },
  sources: [],
  examples: [
    {
      given: { pitchMm: 96, otherPitchMm: 32, count: 15, toleranceMm: 0 },
      expect: { sharedCount: '15.0' },
      from: { workedByHand: '96 / 32 = 3, a whole number, so each of the 15 holes is on both' },
    },
    {
      given: { pitchMm: 100, otherPitchMm: 32, count: 15, toleranceMm: 0 },
      expect: { sharedCount: '2.0' },
      from: {
        workedByHand:
          '8 × 100 = 800 and 25 × 32 = 800, and no fewer than 8 pitches do: the first hole and the ninth of 15, so 2',
      },
    },
    {
      given: { pitchMm: 95.25, otherPitchMm: 32, count: 15, toleranceMm: 2 },
      expect: { sharedCount: '3.0' },
      from: {
        workedByHand:
          'each hole at 3 3/4 in falls short by another 96 − 95.25 = 0.75 mm: 0, 0.75, 1.5 and then 3 × 0.75 = 2.25, too much; ' +
          'the last falls short by 14 × 0.75 = 10.5 mm, so 3 holes',
      },
    },
  ],
  laws: [{ of: 'sharedCount', by: { count: 'increasing', toleranceMm: 'increasing' } }],
}));
