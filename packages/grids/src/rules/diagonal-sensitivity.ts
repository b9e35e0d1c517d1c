import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { parallelogramLawNote } from '@scantling/rules/sources';

const side = { min: 1, max: 20_000 };
const limits = { lengthMm: side, widthMm: side, readingErrorMm: { min: 0, max: 100 } } as const;

export interface DiagonalSensitivityInput {
  /** Length of the rectangle, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** Its width, mm, 1 to 20 000. */
  readonly widthMm: number;
  /** How far off each diagonal may be read, ± mm, 0 to 100. */
  readonly readingErrorMm: number;
}

export interface DiagonalSensitivity {
  /** How far from 90° a corner may be whose diagonals read the same, in degrees, either way. */
  readonly offSquareDeg: number;
  /** How far its back edge may have slid along the front one, mm, either way. */
  readonly leanMm: number;
}

/** From a corner of a square rectangle to its diagonal, mm. */
const cornerToDiagonal = ({ lengthMm, widthMm }: DiagonalSensitivityInput) =>
  1 / Math.hypot(1 / lengthMm, 1 / widthMm);

/**
 * How far out of square a rectangle may be although its diagonals read the same: one was read too long and the other
 * too short.
 *
 * @returns The angle in degrees and the slide of the back edge in mm, either way.
 * @throws RangeError where an input is outside its limits or the error is so large that any angle would do.
 * Source: the cosine rule in the two triangles of a parallelogram, with diagonals that differ by twice the error.
 * @example
 * ```ts
 * import { diagonalSensitivity } from '@scantling/grids';
 * // Each diagonal of 1500 by 600 mm read to half a millimetre
 * diagonalSensitivity({ lengthMm: 1500, widthMm: 600, readingErrorMm: 0.5 }) // => { offSquareDeg: 0.05142, leanMm: 0.5385 }
 * ```
 */
export function diagonalSensitivity(input: DiagonalSensitivityInput): DiagonalSensitivity {
  requireInputs('diagonalSensitivity', input, limits);
  const { widthMm, readingErrorMm } = input;
  const mostMm = cornerToDiagonal(input);
  requireThat(
    'diagonalSensitivity',
    readingErrorMm <= mostMm,
    `readingErrorMm up to ${mostMm}, got ${readingErrorMm}`,
  );
  const sine = readingErrorMm / mostMm;
  return { offSquareDeg: plusZero((Math.asin(sine) * 180) / Math.PI), leanMm: plusZero(widthMm * sine) };
}

/** The slide that takes two diagonals as far apart as the readings may hide, found by halving. */
function bySliding({ lengthMm, widthMm, readingErrorMm }: DiagonalSensitivityInput): number {
  const apart = (slideMm: number) => {
    const depthMm = Math.sqrt((widthMm - slideMm) * (widthMm + slideMm));
    return Math.hypot(lengthMm + slideMm, depthMm) - Math.hypot(lengthMm - slideMm, depthMm);
  };
  let [low, high] = [0, widthMm];
  for (let halvings = 0; halvings < 60; halvings++) {
    const middle = (low + high) / 2;
    if (apart(middle) < 2 * readingErrorMm) low = middle;
    else high = middle;
  }
  return low;
}

export const diagonalSensitivityRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/diagonal-sensitivity',
  title: 'How squarely two diagonals can be read',
  summary:
    'How far out of square a rectangle may be although its diagonals read the same, from how finely they are read.',
  basis: 'derived',
  inputs: {
    lengthMm: { kind: 'number', label: 'Length', unit: 'mm', ...limits.lengthMm },
    widthMm: { kind: 'number', label: 'Width', unit: 'mm', ...limits.widthMm },
    readingErrorMm: {
      kind: 'number',
      label: 'Error of each reading',
      unit: 'mm',
      ...limits.readingErrorMm,
      help: 'Either way: half a division of the tape at best.',
    },
  },
  outputs: {
    offSquareDeg: { label: 'Off square, at most', unit: '°', help: 'Either way.' },
    leanMm: {
      label: 'Slide of the back edge, at most',
      unit: 'mm',
      help: 'Along the front edge, either way.',
    },
  },
  compute: diagonalSensitivity,
  formula: String.raw`\sin\delta = e \sqrt{\frac{1}{a^2} + \frac{1}{b^2}}, \qquad s = b \sin\delta`,
  symbols: {
    '\\delta': 'angle off square',
    s: 'slide of the back edge',
    e: 'error of each reading',
    'a, b': 'length and width',
  },
  requires: [
    {
      says: 'the error of reading is no more than the distance from a corner to the diagonal',
      holds: (input) => input.readingErrorMm <= cornerToDiagonal(input),
    },
  ],
  sources: [
    {
      source: parallelogramLawNote,
      at: 'the cosine rule in the two triangles at one side, their diagonals longer and shorter by the error',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { lengthMm: 1500, widthMm: 600, readingErrorMm: 0.5 },
      expect: { offSquareDeg: '0.05142', leanMm: '0.5385' },
      from: {
        workedByHand:
          '0.5 × √(1 / 1500² + 1 / 600²) = 0.00089753; sin(0.0514245°) = 0.00089753; ' +
          '600 × 0.00089753 = 0.5385 mm',
      },
    },
    {
      given: { lengthMm: 1200, widthMm: 900, readingErrorMm: 2 },
      expect: { leanMm: '2.500' },
      from: { workedByHand: '900 × 2 × √(1 / 1200² + 1 / 900²) = 2.500 mm' },
    },
  ],
  laws: [
    { of: 'leanMm', by: { readingErrorMm: 'proportional', lengthMm: 'decreasing', widthMm: 'increasing' } },
    {
      of: 'offSquareDeg',
      by: { readingErrorMm: 'increasing', lengthMm: 'decreasing', widthMm: 'decreasing' },
    },
  ],
  peers: [
    {
      name: 'the slide that sets the diagonals apart by twice the error',
      of: 'leanMm',
      compute: bySliding,
      // With both sides fixed one diagonal gains a little less than the other loses: e² / (2 d²), 4e-6 at most here.
      relative: 5e-6,
      over: { lengthMm: [500, 20_000], widthMm: [500, 20_000], readingErrorMm: [0.01, 2] },
    },
  ],
}));
