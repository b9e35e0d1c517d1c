import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import { euclidElements, framingReferenceLines } from '@scantling/rules/sources';

const side = { min: 0, max: 20_000 };
const limits = { lengthMm: side, widthMm: side, stepMm: { min: 0.1, max: 1000 } } as const;

export interface ThreeFourFiveInput {
  /** Room along one side of the corner, mm, 0 to 20 000. */
  readonly lengthMm: number;
  /** Room along the other side, mm, 0 to 20 000. */
  readonly widthMm: number;
  /** The unit that is counted in, mm, 0.1 to 1000: 25.4 for whole inches, 304.8 for feet, 10 for centimetres. */
  readonly stepMm: number;
}

export interface ThreeFourFive {
  /** How many units make one of the three, four and five parts. */
  readonly times: number;
  /** Three parts, mm, on the side with less room. */
  readonly shortLegMm: number;
  /** Four parts, mm, on the side with more room. */
  readonly longLegMm: number;
  /** Five parts, mm, from the end of one leg to the end of the other. */
  readonly diagonalMm: number;
}

/** As a share of a unit: 12 in may come out a rounding error short of 12 times 25.4 mm. */
const ROUNDING = 1e-9;

const timesThatFit = ({ lengthMm, widthMm, stepMm }: ThreeFourFiveInput) =>
  Math.floor(Math.min(lengthMm / 3, widthMm / 3, Math.max(lengthMm, widthMm) / 4) / stepMm + ROUNDING);

/**
 * The largest 3-4-5 triangle in whole units that fits along the two sides of a corner. The larger it is, the less an
 * error of reading turns the corner.
 *
 * @returns The two legs and the diagonal in mm, and how many units make one part.
 * @throws RangeError where an input is outside its limits or three by four units do not fit.
 * Source: Euclid, Elements, I.47, of which 3, 4 and 5 are the smallest whole numbers.
 * @example
 * ```ts
 * import { threeFourFive } from '@scantling/grids';
 * // In whole decimetres on a top of 1500 by 650 mm
 * threeFourFive({ lengthMm: 1500, widthMm: 650, stepMm: 100 }) // => { times: 2, shortLegMm: 600, longLegMm: 800, diagonalMm: 1000 }
 * threeFourFive({ lengthMm: 1500, widthMm: 650, stepMm: 304.8 }) // throws threeFourFive requires stepMm to fit 3 by 4, got 304.8
 * ```
 */
export function threeFourFive(input: ThreeFourFiveInput): ThreeFourFive {
  requireInputs('threeFourFive', input, limits);
  const { stepMm } = input;
  const times = timesThatFit(input);
  requireThat('threeFourFive', times > 0, `stepMm to fit 3 by 4, got ${stepMm}`);
  const partMm = times * stepMm;
  return { times, shortLegMm: 3 * partMm, longLegMm: 4 * partMm, diagonalMm: 5 * partMm };
}

export const threeFourFiveRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/three-four-five',
  title: 'Squaring a corner by 3, 4 and 5',
  summary: 'The largest triangle of 3, 4 and 5 parts, in whole units, that fits along the sides of a corner.',
  basis: 'derived',
  inputs: {
    lengthMm: { kind: 'number', label: 'Room along one side', unit: 'mm', ...limits.lengthMm },
    widthMm: { kind: 'number', label: 'Room along the other side', unit: 'mm', ...limits.widthMm },
    stepMm: {
      kind: 'number',
      label: 'Unit to count in',
      unit: 'mm',
      ...limits.stepMm,
      help: '25.4 for whole inches, 304.8 for whole feet, 10 for whole centimetres.',
    },
  },
  outputs: {
    times: { label: 'Units in one part', unit: '1' },
    shortLegMm: { label: 'Three parts', unit: 'mm', help: 'On the side with less room.' },
    longLegMm: { label: 'Four parts', unit: 'mm', help: 'On the side with more room.' },
    diagonalMm: { label: 'Five parts', unit: 'mm', help: 'Between the ends of the legs.' },
  },
  compute: threeFourFive,
  formula: String.raw`k = \left\lfloor \frac{1}{u} \min\!\left(\frac{L}{3}, \frac{W}{3}, \frac{\max(L, W)}{4}\right) \right\rfloor, \qquad (3ku)^2 + (4ku)^2 = (5ku)^2`,
  symbols: { k: 'units in one part', u: 'unit to count in', 'L, W': 'room along the two sides' },
  requires: [{ says: 'three by four units fit', holds: (input) => timesThatFit(input) > 0 }],
  sources: [
    {
      source: euclidElements,
      at: 'Book I, Proposition 47, with 9 + 16 = 25',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: framingReferenceLines,
      at: 'multiples of 3, 4 and 5; the longer the length, the better the accuracy',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { lengthMm: 1500, widthMm: 620, stepMm: 25.4 },
      expect: { times: '8.0', shortLegMm: '609.60', longLegMm: '812.80', diagonalMm: '1016.00' },
      from: {
        workedByHand:
          'a third of the shorter side is 620 / 3 = 206.667, less than 1500 / 4 = 375; 206.667 / 25.4 = 8.136, so 8 in to a part: ' +
          '3 × 8 × 25.4 = 609.60; 4 × 8 × 25.4 = 812.80; 5 × 8 × 25.4 = 1016.00 mm',
      },
    },
    {
      given: { lengthMm: 20 * 304.8, widthMm: 15 * 304.8, stepMm: 304.8 },
      expect: {
        shortLegMm: { printed: '15', unit: 'ft', times: 304.8 },
        longLegMm: { printed: '20', unit: 'ft', times: 304.8 },
        diagonalMm: { printed: '25', unit: 'ft', times: 304.8 },
      },
      from: {
        source: framingReferenceLines,
        at: 'for a 25 ft tape: 20 ft on one side, 15 ft on the other, 25 ft across',
        confirmed: 'text',
      },
    },
  ],
  laws: [
    { of: 'diagonalMm', by: { lengthMm: 'increasing', widthMm: 'increasing' } },
    { of: 'times', by: { stepMm: 'decreasing' } },
  ],
}));
