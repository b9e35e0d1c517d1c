import { defineRule, requireInputs } from '@scantling/rules';
import { euclidElements, foundationSquaringThread } from '@scantling/rules/sources';

const side = { min: 0, max: 20_000 };
const limits = { lengthMm: side, widthMm: side } as const;

export interface SquareDiagonalInput {
  /** One side of the right angle, mm, 0 to 20 000. */
  readonly lengthMm: number;
  /** The other side, mm, 0 to 20 000. */
  readonly widthMm: number;
}

export interface SquareDiagonal {
  /** From the end of one side to the end of the other, mm. */
  readonly diagonalMm: number;
}

/**
 * The diagonal that makes a corner square: set it between the ends of the two sides and the angle is 90°.
 *
 * @returns The diagonal in mm.
 * @throws RangeError where an input is outside its limits.
 * Source: Euclid, Elements, I.47.
 * @example
 * ```ts
 * import { squareDiagonal } from '@scantling/grids';
 * squareDiagonal({ lengthMm: 1200, widthMm: 900 }).diagonalMm // => 1500
 * ```
 */
export function squareDiagonal(input: SquareDiagonalInput): SquareDiagonal {
  requireInputs('squareDiagonal', input, limits);
  const { lengthMm, widthMm } = input;
  // Not Math.hypot, which may miss a whole number: 45, 108, 117.
  return { diagonalMm: Math.sqrt(lengthMm * lengthMm + widthMm * widthMm) };
}

export const squareDiagonalRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/square-diagonal',
  title: 'The diagonal of a square corner',
  summary: 'How long the diagonal between the ends of two sides has to be for the corner to be square.',
  basis: 'derived',
  inputs: {
    lengthMm: { kind: 'number', label: 'One side', unit: 'mm', ...limits.lengthMm },
    widthMm: { kind: 'number', label: 'Other side', unit: 'mm', ...limits.widthMm },
  },
  outputs: { diagonalMm: { label: 'Diagonal', unit: 'mm' } },
  compute: squareDiagonal,
  formula: String.raw`d = \sqrt{a^2 + b^2}`,
  symbols: { d: 'diagonal', 'a, b': 'the two sides' },
  sources: [
    {
      source: euclidElements,
      at: 'Book I, Proposition 47: the square on the side opposite the right angle',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { lengthMm: 1200, widthMm: 900 },
      expect: { diagonalMm: '1500.0' },
      from: { workedByHand: '1200² = 1440000 and 900² = 810000; √(1440000 + 810000) = 1500 mm' },
    },
    {
      given: { lengthMm: 196 * 25.4, widthMm: 163 * 25.4 },
      expect: { diagonalMm: { printed: '254.92159', unit: 'in', times: 25.4 } },
      within: {
        value: 0.001,
        because: 'The last digit is misprinted: the root of 38416 + 26569 = 64985 is 254.92156 in.',
      },
      from: {
        source: foundationSquaringThread,
        at: 'first message: walls of 16 ft 4 in and 13 ft 7 in, 196 and 163 in',
        confirmed: 'text',
        erratum: 'The thread prints 254.92159 in for the root of 64985, which is 254.92156 in.',
      },
    },
  ],
  laws: [{ of: 'diagonalMm', by: { lengthMm: 'increasing', widthMm: 'increasing' } }],
  peers: [
    {
      name: 'the same by the angle at the end of the length',
      of: 'diagonalMm',
      compute: ({ lengthMm, widthMm }) => {
        const angle = Math.atan2(widthMm, lengthMm);
        return lengthMm * Math.cos(angle) + widthMm * Math.sin(angle);
      },
      relative: 1e-12,
    },
  ],
}));
