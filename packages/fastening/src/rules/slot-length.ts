import { defineRule, requireInputs } from '@scantling/rules';
import { fasteningTabletops1987 } from '@scantling/rules/sources';
import { firmNotHard, notStructuralDesign, slotsInMetal } from '../cautions.ts';

const limits = {
  shankDiameterMm: { min: 0.5, max: 50 },
  swellMm: { min: 0, max: 4000 },
  shrinkMm: { min: 0, max: 4000 },
  clearanceMm: { min: 0, max: 50 },
} as const;

export interface SlotLengthInput {
  /** Diameter of the screw where it passes through the slot, mm, 0.5 to 50. */
  readonly shankDiameterMm: number;
  /** How far the screw travels away from the fixed line when the top swells, mm from building day, 0 to 4000. */
  readonly swellMm: number;
  /** How far it travels towards the fixed line when the top shrinks, mm from building day, 0 to 4000. */
  readonly shrinkMm: number;
  /** Room left at each end of the slot at the end of the travel, mm, 0 to 50. */
  readonly clearanceMm: number;
}

export interface SlotLength {
  /** Length of the slot across the grain, end to end, mm. */
  readonly slotLengthMm: number;
  /** From the end of the slot nearer to the fixed line to the screw's centre on building day, mm. */
  readonly screwFromInnerEndMm: number;
}

/**
 * The slot in a base that lets a screw fixed in a solid top travel with it through the seasons, and where in the
 * slot the screw sits on building day. The inner end of the slot is the one nearer to the line where the top is held.
 *
 * @returns Length of the slot and place of the screw in it, both in mm.
 * @throws RangeError where an input is outside its limits.
 * Source: slotted screw holes are common practice; the length is what has to fit in.
 * @example
 * ```ts
 * import { slotLength } from '@scantling/fastening';
 * // 5 mm shank, 3 mm out, 2 mm in, 1 mm to spare at each end
 * slotLength({ shankDiameterMm: 5, swellMm: 3, shrinkMm: 2, clearanceMm: 1 }) // => { slotLengthMm: 12, screwFromInnerEndMm: 5.5 }
 * ```
 */
export function slotLength(input: SlotLengthInput): SlotLength {
  requireInputs('slotLength', input, limits);
  const { shankDiameterMm, swellMm, shrinkMm, clearanceMm } = input;
  return {
    slotLengthMm: shankDiameterMm + swellMm + shrinkMm + 2 * clearanceMm,
    screwFromInnerEndMm: clearanceMm + shrinkMm + shankDiameterMm / 2,
  };
}

export const slotLengthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/slot-length',
  title: 'Slot for a screw that travels',
  summary:
    'How long a slot in the base has to be so that a screw in a solid top can travel with the seasons, and where in it the screw sits on building day.',
  basis: 'derived',
  inputs: {
    shankDiameterMm: {
      kind: 'number',
      label: 'Shank diameter',
      unit: 'mm',
      ...limits.shankDiameterMm,
      help: 'Of the screw, where it passes through the slot.',
    },
    swellMm: {
      kind: 'number',
      label: 'Travel when the top swells',
      unit: 'mm',
      ...limits.swellMm,
      help: 'Away from the fixed line, from building day.',
    },
    shrinkMm: {
      kind: 'number',
      label: 'Travel when the top shrinks',
      unit: 'mm',
      ...limits.shrinkMm,
      help: 'Towards the fixed line, from building day.',
    },
    clearanceMm: {
      kind: 'number',
      label: 'Room at each end',
      unit: 'mm',
      ...limits.clearanceMm,
      help: 'What is still free when the screw has travelled all the way.',
    },
  },
  outputs: {
    slotLengthMm: { label: 'Slot length', unit: 'mm', help: 'Across the grain, end to end.' },
    screwFromInnerEndMm: {
      label: 'Screw from the inner end',
      unit: 'mm',
      help: 'To the centre of the screw on building day, from the end of the slot nearer to the fixed line.',
    },
  },
  compute: slotLength,
  formula: String.raw`L = d + w + s + 2c, \qquad e = c + s + \tfrac{d}{2}`,
  symbols: {
    L: 'slot length',
    d: 'shank diameter',
    w: 'travel when the top swells',
    s: 'travel when the top shrinks',
    c: 'room at each end',
    e: 'screw from the inner end',
  },
  inSymbols: (input, output) => ({
    L: output.slotLengthMm,
    d: input.shankDiameterMm,
    w: input.swellMm,
    s: input.shrinkMm,
    c: input.clearanceMm,
    e: output.screwFromInnerEndMm,
  }),
  sources: [
    {
      source: fasteningTabletops1987,
      at: 'summary: slotted screw holes in the table rails',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { shankDiameterMm: 5, swellMm: 3, shrinkMm: 2, clearanceMm: 1 },
      expect: { slotLengthMm: '12.00', screwFromInnerEndMm: '5.50' },
      from: { workedByHand: '5 + 3 + 2 + 2 × 1 = 12 mm; 1 + 2 + 5 / 2 = 5.5 mm' },
    },
    {
      given: { shankDiameterMm: 4.5, swellMm: 0, shrinkMm: 6.2, clearanceMm: 0.5 },
      expect: { slotLengthMm: '11.70', screwFromInnerEndMm: '8.95' },
      from: { workedByHand: '4.5 + 0 + 6.2 + 2 × 0.5 = 11.7 mm; 0.5 + 6.2 + 4.5 / 2 = 8.95 mm' },
    },
  ],
  laws: [
    {
      of: 'slotLengthMm',
      by: { shankDiameterMm: 'linear', swellMm: 'linear', shrinkMm: 'linear', clearanceMm: 'linear' },
    },
    {
      of: 'screwFromInnerEndMm',
      by: { shankDiameterMm: 'linear', shrinkMm: 'linear', clearanceMm: 'linear' },
    },
  ],
  cautions: [notStructuralDesign, firmNotHard, slotsInMetal],
}));
