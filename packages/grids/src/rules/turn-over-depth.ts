import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { tearOutMessage } from '@scantling/rules/sources';
import { drillingCare, slowlyFromTheSecondFace } from '../cautions.ts';

const limits = {
  thicknessMm: { min: 0, max: 1000 },
  pointLengthMm: { min: 0, max: 200 },
  showingMm: { min: 0, max: 200 },
} as const;

export interface TurnOverDepthInput {
  /** Thickness of the wood, mm, 0 to 1000. */
  readonly thicknessMm: number;
  /** From the tip of the bit to its full diameter, mm, 0 to 200, no more than thicknessMm and showingMm together. */
  readonly pointLengthMm: number;
  /** How much of the point comes out at the far face, mm, 0 to pointLengthMm. */
  readonly showingMm: number;
}

export interface TurnOverDepth {
  /** How deep the hole has its full diameter when the work is turned over, mm. */
  readonly firstDepthMm: number;
  /** What is left to bore from the other face, mm. */
  readonly secondDepthMm: number;
}

const pointFits = ({ thicknessMm, pointLengthMm, showingMm }: TurnOverDepthInput) =>
  showingMm <= pointLengthMm && pointLengthMm <= thicknessMm + showingMm;

/**
 * How deep to bore a through hole before turning the work over, so that neither face tears out: until the point just
 * comes through, which then leads the bit from the other face.
 *
 * @returns The depths at full diameter from the first face and from the second, mm; together they are the thickness.
 * @throws RangeError where an input is outside its limits or the point cannot be where it is said to be.
 * Source: a woodworking tip on preventing tear-out; the subtraction is ours.
 * @example
 * ```ts
 * import { turnOverDepth } from '@scantling/grids';
 * // A point of 6 mm that comes 1 mm out of a 40 mm top
 * turnOverDepth({ thicknessMm: 40, pointLengthMm: 6, showingMm: 1 }) // => { firstDepthMm: 35, secondDepthMm: 5 }
 * turnOverDepth({ thicknessMm: 40, pointLengthMm: 6, showingMm: 7 }) // throws turnOverDepth requires showingMm from
 * ```
 */
export function turnOverDepth(input: TurnOverDepthInput): TurnOverDepth {
  requireInputs('turnOverDepth', input, limits);
  const { thicknessMm, pointLengthMm, showingMm } = input;
  requireThat(
    'turnOverDepth',
    pointFits(input),
    `showingMm from ${Math.max(0, pointLengthMm - thicknessMm)} to pointLengthMm ${pointLengthMm}, got ${showingMm}`,
  );
  const secondDepthMm = plusZero(pointLengthMm - showingMm);
  return { firstDepthMm: plusZero(thicknessMm - secondDepthMm), secondDepthMm };
}

export const turnOverDepthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/turn-over-depth',
  title: 'When to turn the work over',
  summary:
    'How deep to bore before finishing a through hole from the other face, so that the bit does not tear it out.',
  basis: 'convention',
  inputs: {
    thicknessMm: { kind: 'number', label: 'Thickness of the wood', unit: 'mm', ...limits.thicknessMm },
    pointLengthMm: {
      kind: 'number',
      label: 'Point of the bit',
      unit: 'mm',
      ...limits.pointLengthMm,
      help: 'From the tip to the full diameter, or to the spurs.',
    },
    showingMm: {
      kind: 'number',
      label: 'Point that shows',
      unit: 'mm',
      ...limits.showingMm,
      help: 'At the far face: just enough to find it again.',
    },
  },
  outputs: {
    firstDepthMm: { label: 'From the first face', unit: 'mm', help: 'At full diameter.' },
    secondDepthMm: { label: 'From the second face', unit: 'mm', help: 'At full diameter.' },
  },
  compute: turnOverDepth,
  formula: String.raw`b_2 = h - s, \qquad b_1 = T - b_2`,
  symbols: {
    b_1: 'depth from the first face',
    b_2: 'depth from the second face',
    h: 'point of the bit',
    s: 'point that shows',
    T: 'thickness of the wood',
  },
  requires: [
    { says: 'the point reaches no farther than from the first face to what shows', holds: pointFits },
  ],
  sources: [
    {
      source: tearOutMessage,
      at: 'second method: bore until the pilot just comes through, then from the other side; first method: a clamped block',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { thicknessMm: 40, pointLengthMm: 6, showingMm: 1 },
      expect: { firstDepthMm: '35.0', secondDepthMm: '5.0' },
      from: { workedByHand: '6 − 1 = 5.0; 40 − 5 = 35.0 mm' },
    },
  ],
  laws: [
    { of: 'firstDepthMm', by: { thicknessMm: 'linear', pointLengthMm: 'linear', showingMm: 'linear' } },
    { of: 'secondDepthMm', by: { pointLengthMm: 'increasing', showingMm: 'decreasing' } },
  ],
  cautions: [drillingCare, slowlyFromTheSecondFace],
}));
