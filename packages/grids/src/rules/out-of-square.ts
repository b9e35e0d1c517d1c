import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { parallelogramAnswer, parallelogramLawNote } from '@scantling/rules/sources';

const side = { min: 1, max: 20_000 };
const diagonal = { min: 1, max: 40_000 };
const limits = { lengthMm: side, widthMm: side, diagonalMm: diagonal, otherDiagonalMm: diagonal } as const;

export interface OutOfSquareInput {
  /** Length of both long sides, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** Length of both short sides, mm, 1 to 20 000. */
  readonly widthMm: number;
  /** From the datum, the front-left corner, to the corner opposite, mm, 1 to 40 000. */
  readonly diagonalMm: number;
  /** From the front-right corner to the back-left one, mm, 1 to 40 000. */
  readonly otherDiagonalMm: number;
}

export interface OutOfSquare {
  /** How much the angle at the datum falls short of 90°, in degrees; negative where it is wider. */
  readonly offSquareDeg: number;
  /** How far the back edge has slid along the front one, mm; positive to the right. */
  readonly leanMm: number;
  /** How much the diagonals together are longer than sides of these lengths allow, mm: an error of reading. */
  readonly misfitMm: number;
}

/** The sine of the angle off square, with the difference of squares taken apart so that nothing cancels. */
const lean = ({ lengthMm, widthMm, diagonalMm, otherDiagonalMm }: OutOfSquareInput) =>
  ((diagonalMm - otherDiagonalMm) * (diagonalMm + otherDiagonalMm)) / (4 * lengthMm * widthMm);

const closes = (input: OutOfSquareInput) => Math.abs(lean(input)) <= 1;

/**
 * How far a panel or frame is out of square, from its two diagonals. Its opposite sides are taken as equally long.
 *
 * @returns The angle off 90° in degrees, how far the back has slid along the front in mm, and by how much the four
 * readings disagree: the parallelogram law ties the diagonals to the sides, and what is left over is an error of
 * reading or a pair of sides that differ.
 * @throws RangeError where an input is outside its limits or no corner has such diagonals.
 * Source: the cosine rule and the parallelogram law.
 * @example
 * ```ts
 * import { outOfSquare } from '@scantling/grids';
 * // 1500 by 600 mm, the diagonals 3 mm apart: the back has slid 1.6 mm to the right
 * const { offSquareDeg, leanMm } = outOfSquare({ lengthMm: 1500, widthMm: 600, diagonalMm: 1617, otherDiagonalMm: 1614 });
 * [offSquareDeg, leanMm] // => [0.1543, 1.6155]
 * outOfSquare({ lengthMm: 100, widthMm: 100, diagonalMm: 300, otherDiagonalMm: 100 }) // throws outOfSquare requires diagonalMm and otherDiagonalMm that fit
 * ```
 */
export function outOfSquare(input: OutOfSquareInput): OutOfSquare {
  requireInputs('outOfSquare', input, limits);
  const { lengthMm, widthMm, diagonalMm, otherDiagonalMm } = input;
  requireThat(
    'outOfSquare',
    closes(input),
    `diagonalMm and otherDiagonalMm that fit one corner between these sides, got ${diagonalMm} and ${otherDiagonalMm}`,
  );
  const sine = lean(input);
  return {
    offSquareDeg: plusZero((Math.asin(sine) * 180) / Math.PI),
    leanMm: plusZero(widthMm * sine),
    misfitMm: Math.hypot(diagonalMm, otherDiagonalMm) / Math.SQRT2 - Math.hypot(lengthMm, widthMm),
  };
}

export const outOfSquareRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/out-of-square',
  title: 'Out of square, from two diagonals',
  summary:
    'How far the corners of a panel or frame are from 90°, and how far its back edge has slid, from the two diagonals.',
  basis: 'derived',
  inputs: {
    lengthMm: {
      kind: 'number',
      label: 'Length',
      unit: 'mm',
      ...limits.lengthMm,
      help: 'Of both long sides.',
    },
    widthMm: { kind: 'number', label: 'Width', unit: 'mm', ...limits.widthMm, help: 'Of both short sides.' },
    diagonalMm: {
      kind: 'number',
      label: 'Diagonal from the datum',
      unit: 'mm',
      ...limits.diagonalMm,
      help: 'From the front-left corner to the back-right one.',
    },
    otherDiagonalMm: {
      kind: 'number',
      label: 'Other diagonal',
      unit: 'mm',
      ...limits.otherDiagonalMm,
      help: 'From the front-right corner to the back-left one.',
    },
  },
  outputs: {
    offSquareDeg: {
      label: 'Off square',
      unit: '°',
      help: 'Positive where the angle at the datum is less than 90°.',
    },
    leanMm: {
      label: 'Slide of the back edge',
      unit: 'mm',
      help: 'Along the front edge; positive to the right.',
    },
    misfitMm: {
      label: 'Left over between the readings',
      unit: 'mm',
      help: 'Nought where diagonals and sides agree; otherwise a reading is off or opposite sides differ.',
    },
  },
  compute: outOfSquare,
  formula: String.raw`\begin{aligned}
\sin\delta &= \frac{d_1^2 - d_2^2}{4\,a\,b}, \qquad s = b \sin\delta \\
m &= \sqrt{\tfrac{1}{2}(d_1^2 + d_2^2)} - \sqrt{a^2 + b^2}
\end{aligned}`,
  symbols: {
    '\\delta': 'angle off square',
    s: 'slide of the back edge',
    m: 'left over between the readings',
    'a, b': 'length and width',
    'd_1, d_2': 'diagonal from the datum, other diagonal',
  },
  requires: [{ says: 'the diagonals are those of a corner between these sides', holds: closes }],
  sources: [
    {
      source: parallelogramLawNote,
      at: 'the cosine rule in the two triangles at one side, and the sum of their squares',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { lengthMm: 1500, widthMm: 600, diagonalMm: 1617, otherDiagonalMm: 1614 },
      expect: { offSquareDeg: '0.1543', leanMm: '1.6155', misfitMm: '-0.0487' },
      from: {
        workedByHand:
          '1617² − 1614² = 9693; 9693 / (4 × 1500 × 600) = 0.0026925; sin(0.15427°) = 0.0026925; 600 × 0.0026925 = 1.6155 mm; ' +
          '√((1617² + 1614²) / 2) = 1615.5007; √(1500² + 600²) = 1615.5494; 1615.5007 − 1615.5494 = −0.0487 mm',
      },
    },
    {
      given: { lengthMm: 90, widthMm: 70, diagonalMm: 140, otherDiagonalMm: 80 },
      expect: { offSquareDeg: '31.6' },
      from: {
        source: parallelogramAnswer,
        at: 'part 1: sides 7 and 9 cm, diagonals 8 and 14 cm, an angle of about 58.4°, which is 31.6° less than 90°',
        confirmed: 'text',
      },
    },
  ],
  laws: [
    { of: 'offSquareDeg', by: { diagonalMm: 'increasing', otherDiagonalMm: 'decreasing' } },
    { of: 'leanMm', by: { diagonalMm: 'increasing', otherDiagonalMm: 'decreasing' } },
    { of: 'misfitMm', by: { lengthMm: 'decreasing', widthMm: 'decreasing' } },
  ],
}));
