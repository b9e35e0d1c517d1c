import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { euclidElements } from '@scantling/rules/sources';

const limits = {
  startMm: { min: -1e6, max: 1e6 },
  lengthMm: { min: 0, max: 1e6 },
  spaces: { min: 1, max: 1000, integer: true },
} as const;

export interface EqualSpacingInput {
  /** Where the length begins, mm from the datum, −1e6 to 1e6. */
  readonly startMm: number;
  /** The length that is divided, mm, 0 to 1e6. */
  readonly lengthMm: number;
  /** How many equal spaces, 1 to 1000. */
  readonly spaces: number;
  /** Whether the ends are marked too. */
  readonly ends: 'marked' | 'open';
}

export interface EqualSpacing {
  /** From one mark to the next, mm. */
  readonly pitchMm: number;
  /** Every mark, mm from the datum, in order. With open ends a single space has none. */
  readonly positionsMm: readonly number[];
}

/**
 * Divides a length into equal spaces. Every position is worked out from the start, `start + i × pitch`, never from the
 * mark before it, so no error adds up.
 *
 * @returns The pitch, and the positions of `spaces + 1` marks, or of `spaces − 1` where the ends are open; mm.
 * @throws RangeError where an input is outside its limits.
 * Source: Euclid, Elements, VI.9.
 * @example
 * ```ts
 * import { equalSpacing } from '@scantling/units';
 * equalSpacing({ startMm: 50, lengthMm: 600, spaces: 4, ends: 'open' }) // => { pitchMm: 150, positionsMm: [200, 350, 500] }
 * ```
 */
export function equalSpacing(input: EqualSpacingInput): EqualSpacing {
  requireInputs('equalSpacing', input, limits);
  requireChoice('equalSpacing', 'ends', input.ends, ['marked', 'open']);
  const { startMm, lengthMm, spaces } = input;
  const pitchMm = lengthMm / spaces + 0;
  const positionsMm: number[] = [];
  const inset = input.ends === 'marked' ? 0 : 1;
  for (let i = inset; i <= spaces - inset; i++) positionsMm.push(startMm + i * pitchMm);
  return { pitchMm, positionsMm };
}

export const equalSpacingRule = /* @__PURE__ */ defineRule<EqualSpacingInput, EqualSpacing>(() => ({
  id: 'units/equal-spacing',
  title: 'Equal spaces along a length',
  summary: 'Divides a length into equal spaces and gives every mark from one datum.',
  basis: 'derived',
  inputs: {
    startMm: {
      kind: 'number',
      label: 'Start',
      unit: 'mm',
      ...limits.startMm,
      help: 'Where the length begins, from the datum.',
    },
    lengthMm: { kind: 'number', label: 'Length', unit: 'mm', ...limits.lengthMm },
    spaces: { kind: 'number', label: 'Spaces', unit: '1', ...limits.spaces },
    ends: {
      kind: 'choice',
      label: 'Ends',
      options: { marked: 'A mark at both ends', open: 'No mark at either end' },
    },
  },
  outputs: {
    pitchMm: { label: 'Pitch', unit: 'mm' },
    positionsMm: { label: 'Marks, from the datum', unit: 'mm' },
  },
  compute: equalSpacing,
  formula: String.raw`p = \frac{L}{n}, \qquad x_i = x_0 + i\,p`,
  symbols: { p: 'pitch', L: 'length', n: 'spaces', x_0: 'start', x_i: 'mark i' },
  sources: [
    {
      source: euclidElements,
      at: 'Book VI, Proposition 9: to cut off a prescribed part',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { startMm: 0, lengthMm: 900, spaces: 3, ends: 'marked' },
      expect: { pitchMm: '300', positionsMm: ['0', '300', '600', '900'] },
      from: {
        workedByHand:
          'a third part, as in Proposition 9: 900 / 3 = 300; 0 × 300 = 0, 1 × 300 = 300, 2 × 300 = 600, 3 × 300 = 900',
      },
    },
    {
      given: { startMm: 12.7, lengthMm: 1016, spaces: 7, ends: 'open' },
      expect: {
        pitchMm: '145.142857',
        positionsMm: ['157.842857', '302.985714', '448.128571', '593.271429', '738.414286', '883.557143'],
      },
      from: {
        workedByHand:
          '1016 / 7 = 145.142857…; 12.7 + 145.142857 = 157.842857, + 290.285714 = 302.985714, + 435.428571 = 448.128571, + 580.571429 = 593.271429, + 725.714286 = 738.414286, + 870.857143 = 883.557143',
      },
    },
  ],
  laws: [{ of: 'pitchMm', by: { lengthMm: 'proportional' } }],
}));
