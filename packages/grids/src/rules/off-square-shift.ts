import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { parallelogramLawNote } from '@scantling/rules/sources';

const limits = {
  distanceMm: { min: 0, max: 20_000 },
  offSquareDeg: { min: -45, max: 45 },
} as const;

export interface OffSquareShiftInput {
  /** From the edge that the square stands on to the centre of the hole, mm, 0 to 20 000. */
  readonly distanceMm: number;
  /** How much the angle at the datum falls short of 90°, in degrees, −45 to 45; negative where it is wider. */
  readonly offSquareDeg: number;
}

export interface OffSquareShift {
  /** How far the hole has slid along that edge, mm; positive to the right of a datum on the left. */
  readonly leanMm: number;
  /** How far it is from where it should be, mm. */
  readonly shiftMm: number;
}

const radians = (deg: number) => (deg * Math.PI) / 180;

/**
 * How far off a hole comes when it is marked along a line that should be square to the edge and is not. The hole at the
 * far corner is off by the most; how far along the edge it stands does not matter.
 *
 * @returns The slide along the edge and the whole distance from the right place, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: the cosine rule, with two equal sides.
 * @example
 * ```ts
 * import { offSquareShift } from '@scantling/grids';
 * // A tenth of a degree, 500 mm from the front edge
 * offSquareShift({ distanceMm: 500, offSquareDeg: 0.1 }).shiftMm // => 0.8727
 * ```
 */
export function offSquareShift(input: OffSquareShiftInput): OffSquareShift {
  requireInputs('offSquareShift', input, limits);
  const { distanceMm, offSquareDeg } = input;
  return {
    leanMm: plusZero(distanceMm * Math.sin(radians(offSquareDeg))),
    shiftMm: plusZero(2 * distanceMm * Math.sin(radians(Math.abs(offSquareDeg)) / 2)),
  };
}

/** The distance between where the hole is and where it should be. */
function byCoordinates({ distanceMm, offSquareDeg }: OffSquareShiftInput): number {
  const angle = radians(90 - offSquareDeg);
  return Math.hypot(distanceMm * Math.cos(angle), distanceMm * (Math.sin(angle) - 1));
}

export const offSquareShiftRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/off-square-shift',
  title: 'What a corner out of square does to a hole',
  summary:
    'How far off a hole comes when the line that it is marked along is not quite square to the edge of the panel.',
  basis: 'derived',
  inputs: {
    distanceMm: {
      kind: 'number',
      label: 'Hole from the edge',
      unit: 'mm',
      ...limits.distanceMm,
      help: 'From the edge that the square stands on. For a whole grid take the farthest hole.',
    },
    offSquareDeg: {
      kind: 'number',
      label: 'Off square',
      unit: '°',
      ...limits.offSquareDeg,
      help: 'How much the angle at the datum falls short of 90°; negative where it is wider.',
    },
  },
  outputs: {
    leanMm: {
      label: 'Slide along the edge',
      unit: 'mm',
      help: 'Positive to the right of a datum on the left.',
    },
    shiftMm: { label: 'Off by', unit: 'mm', help: 'From where the hole should be.' },
  },
  compute: offSquareShift,
  formula: String.raw`s = y \sin\delta, \qquad e = 2\,y \left|\sin\frac{\delta}{2}\right|`,
  symbols: {
    s: 'slide along the edge',
    e: 'how far the hole is off',
    y: 'hole from the edge',
    '\\delta': 'angle off square',
  },
  sources: [
    { source: parallelogramLawNote, at: 'the cosine rule, here with two equal sides', confirmed: 'text' },
  ],
  examples: [
    {
      given: { distanceMm: 500, offSquareDeg: 0.1 },
      expect: { leanMm: '0.87266', shiftMm: '0.87266' },
      from: { workedByHand: '500 × sin(0.1°) = 0.87266; 2 × 500 × sin(0.05°) = 0.87266 mm' },
    },
    {
      given: { distanceMm: 500, offSquareDeg: -30 },
      expect: { leanMm: '-250.000', shiftMm: '258.819' },
      from: { workedByHand: '500 × sin(−30°) = −250.000; 2 × 500 × sin(15°) = 258.819 mm' },
    },
  ],
  laws: [
    { of: 'leanMm', by: { distanceMm: 'proportional', offSquareDeg: 'increasing' } },
    { of: 'shiftMm', by: { distanceMm: 'proportional' } },
  ],
  peers: [
    {
      name: 'the way between two points',
      of: 'shiftMm',
      compute: byCoordinates,
      // At angles this small the other way loses digits: it subtracts a cosine from 1.
      absolute: 1e-9,
    },
  ],
}));
