import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { measureTheTop, tryOnAnOffcut } from '../cautions.ts';

const limits = { pieceThicknessMm: { min: 0, max: 300 } } as const;

export interface ScrewLengthByThirdsInput {
  /** Thickness of the wooden piece under the head, mm, 0 to 300: a cleat, a button, a batten. */
  readonly pieceThicknessMm: number;
}

export interface ScrewLengthByThirds {
  /** Length of the screw, mm. */
  readonly screwLengthMm: number;
  /** How much of it goes into the other piece, mm. */
  readonly intoOtherMm: number;
}

/**
 * The workshop's rule for one piece of wood screwed to another: a third of the screw in the piece under its head, two
 * thirds in the other. It knows nothing of brackets, of density or of the face that the screw must not reach:
 * `chooseScrewLength` does.
 *
 * @returns Length of the screw, and what of it goes into the other piece, mm.
 * @throws RangeError where the thickness is outside its limits.
 * Common practice, no source.
 * @example
 * ```ts
 * import { screwLengthByThirds } from '@scantling/fastening';
 * screwLengthByThirds({ pieceThicknessMm: 18 }) // => { screwLengthMm: 54, intoOtherMm: 36 }
 * ```
 */
export function screwLengthByThirds(input: ScrewLengthByThirdsInput): ScrewLengthByThirds {
  requireInputs('screwLengthByThirds', input, limits);
  const { pieceThicknessMm } = input;
  return { screwLengthMm: plusZero(3 * pieceThicknessMm), intoOtherMm: plusZero(2 * pieceThicknessMm) };
}

export const screwLengthByThirdsRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/screw-length-by-thirds',
  title: 'Screw length by thirds',
  summary:
    'The workshop’s rule for one piece of wood screwed to another: a third of the screw under its head, two thirds in the piece that holds it.',
  basis: 'convention',
  inputs: {
    pieceThicknessMm: {
      kind: 'number',
      label: 'Piece under the head',
      unit: 'mm',
      ...limits.pieceThicknessMm,
      help: 'A cleat, a button or a batten of wood, where the head bears.',
    },
  },
  outputs: {
    screwLengthMm: { label: 'Screw length', unit: 'mm' },
    intoOtherMm: {
      label: 'Into the other piece',
      unit: 'mm',
      help: 'Less than its thickness, with stock to spare.',
    },
  },
  compute: screwLengthByThirds,
  formula: String.raw`L = 3t, \qquad p = 2t`,
  symbols: { L: 'screw length', t: 'piece under the head', p: 'into the other piece' },
  inSymbols: (input, output) => ({
    L: output.screwLengthMm,
    t: input.pieceThicknessMm,
    p: output.intoOtherMm,
  }),
  sources: [],
  examples: [
    {
      given: { pieceThicknessMm: 18 },
      expect: { screwLengthMm: '54.00', intoOtherMm: '36.00' },
      from: { workedByHand: '3 × 18 = 54.00 mm; 2 × 18 = 36.00 mm' },
    },
  ],
  laws: [
    { of: 'screwLengthMm', by: { pieceThicknessMm: 'proportional' } },
    { of: 'intoOtherMm', by: { pieceThicknessMm: 'proportional' } },
  ],
  cautions: [measureTheTop, tryOnAnOffcut],
}));
