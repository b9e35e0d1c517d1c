import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { fasteningTabletops1987 } from '@scantling/rules/sources';
import { firmNotHard, notStructuralDesign } from '../cautions.ts';

const limits = {
  slotLengthMm: { min: 0.5, max: 10_000 },
  screwFromInnerEndMm: { min: 0, max: 10_000 },
  shankDiameterMm: { min: 0.5, max: 50 },
  clearanceMm: { min: 0, max: 50 },
} as const;

export interface SlotTravelInput {
  /** Length of the slot across the grain, end to end, mm; of a round hole its diameter; 0.5 to 10 000. */
  readonly slotLengthMm: number;
  /** From the end of the slot nearer to the fixed line to the screw's centre on building day, mm, 0 to the length. */
  readonly screwFromInnerEndMm: number;
  /** Diameter of the screw where it passes through the slot, mm, 0.5 to 50. */
  readonly shankDiameterMm: number;
  /** Room left at each end of the slot at the end of the travel, mm, 0 to 50. */
  readonly clearanceMm: number;
}

export interface SlotTravel {
  /** How far the screw may travel away from the fixed line, mm; negative: the slot lacks that much there. */
  readonly roomToSwellMm: number;
  /** How far it may travel towards the fixed line, mm; negative: the slot lacks that much there. */
  readonly roomToShrinkMm: number;
}

/**
 * How far a slot, or a round hole, that is there already lets a screw travel from where it stands on building day. The
 * inner end of the slot is the one nearer to the line where the top is held.
 *
 * @returns The room for travel both ways, mm; negative where the screw stands too near to that end.
 * @throws RangeError where an input is outside its limits, or the screw's centre beyond the slot.
 * Source: slotted screw holes are common practice; the room is what the shank leaves.
 * @example
 * ```ts
 * import { slotTravel } from '@scantling/fastening';
 * // A 5 mm screw in the middle of a 9 mm hole, 0.5 mm to spare
 * slotTravel({ slotLengthMm: 9, screwFromInnerEndMm: 4.5, shankDiameterMm: 5, clearanceMm: 0.5 }) // => { roomToSwellMm: 1.5, roomToShrinkMm: 1.5 }
 * ```
 */
export function slotTravel(input: SlotTravelInput): SlotTravel {
  requireInputs('slotTravel', input, limits);
  const { slotLengthMm, screwFromInnerEndMm, shankDiameterMm, clearanceMm } = input;
  requireThat(
    'slotTravel',
    screwFromInnerEndMm <= slotLengthMm,
    `screwFromInnerEndMm at most slotLengthMm, got ${screwFromInnerEndMm} and ${slotLengthMm}`,
  );
  const takenMm = shankDiameterMm / 2 + clearanceMm;
  return {
    roomToSwellMm: plusZero(slotLengthMm - screwFromInnerEndMm - takenMm),
    roomToShrinkMm: plusZero(screwFromInnerEndMm - takenMm),
  };
}

export const slotTravelRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/slot-travel',
  title: 'Travel that a hole or slot allows',
  summary:
    'How far a hole or an elongated hole that is there already lets a screw in a solid top travel, from where it stands on building day.',
  basis: 'derived',
  inputs: {
    slotLengthMm: {
      kind: 'number',
      label: 'Length of the slot',
      unit: 'mm',
      ...limits.slotLengthMm,
      help: 'Across the grain, end to end; of a round hole, its diameter.',
    },
    screwFromInnerEndMm: {
      kind: 'number',
      label: 'Screw from the inner end',
      unit: 'mm',
      ...limits.screwFromInnerEndMm,
      help: 'To the centre of the screw on building day, from the end of the slot nearer to the fixed line.',
    },
    shankDiameterMm: {
      kind: 'number',
      label: 'Shank diameter',
      unit: 'mm',
      ...limits.shankDiameterMm,
      help: 'Of the screw, where it passes through the slot.',
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
    roomToSwellMm: {
      label: 'Room to swell',
      unit: 'mm',
      help: 'Away from the fixed line. Negative: the slot lacks that much at its outer end.',
    },
    roomToShrinkMm: {
      label: 'Room to shrink',
      unit: 'mm',
      help: 'Towards the fixed line. Negative: the slot lacks that much at its inner end.',
    },
  },
  compute: slotTravel,
  formula: String.raw`w = L - e - \tfrac{d}{2} - c, \qquad s = e - \tfrac{d}{2} - c`,
  symbols: {
    w: 'room to swell',
    s: 'room to shrink',
    L: 'length of the slot',
    e: 'screw from the inner end',
    d: 'shank diameter',
    c: 'room at each end',
  },
  inSymbols: (input, output) => ({
    w: output.roomToSwellMm,
    s: output.roomToShrinkMm,
    L: input.slotLengthMm,
    e: input.screwFromInnerEndMm,
    d: input.shankDiameterMm,
    c: input.clearanceMm,
  }),
  requires: [
    {
      says: 'the screw stands in the slot',
      holds: ({ screwFromInnerEndMm, slotLengthMm }) => screwFromInnerEndMm <= slotLengthMm,
    },
  ],
  sources: [
    {
      source: fasteningTabletops1987,
      at: 'summary: slotted screw holes in the table rails',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { slotLengthMm: 12, screwFromInnerEndMm: 5.5, shankDiameterMm: 5, clearanceMm: 1 },
      expect: { roomToSwellMm: '3.00', roomToShrinkMm: '2.00' },
      from: { workedByHand: '12 − 5.5 − 5 / 2 − 1 = 3 mm; 5.5 − 5 / 2 − 1 = 2 mm' },
    },
    {
      given: { slotLengthMm: 6, screwFromInnerEndMm: 3, shankDiameterMm: 5, clearanceMm: 1 },
      expect: { roomToSwellMm: '-0.50', roomToShrinkMm: '-0.50' },
      from: {
        workedByHand: 'In a hole of 6 mm: 6 − 3 − 5 / 2 − 1 = −0.5 mm; inwards 3 − 5 / 2 − 1 = −0.5 mm',
      },
    },
  ],
  laws: [
    {
      of: 'roomToSwellMm',
      by: {
        slotLengthMm: 'linear',
        screwFromInnerEndMm: 'linear',
        shankDiameterMm: 'linear',
        clearanceMm: 'linear',
      },
    },
    {
      of: 'roomToShrinkMm',
      by: { screwFromInnerEndMm: 'linear', shankDiameterMm: 'linear', clearanceMm: 'linear' },
    },
  ],
  cautions: [notStructuralDesign, firmNotHard],
}));
