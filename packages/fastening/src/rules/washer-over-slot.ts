import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import { firmNotHard, notStructuralDesign } from '../cautions.ts';

const travel = { min: 0, max: 4000 };
const limits = {
  slotLengthMm: { min: 0.5, max: 10_000 },
  screwFromInnerEndMm: { min: 0, max: 10_000 },
  swellMm: travel,
  shrinkMm: travel,
  lapMm: { min: 0, max: 50 },
} as const;

export interface WasherOverSlotInput {
  /** Length of the slot across the grain, end to end, mm, 0.5 to 10 000. */
  readonly slotLengthMm: number;
  /** From the end of the slot nearer to the fixed line to the screw's centre on building day, mm, 0 to the length. */
  readonly screwFromInnerEndMm: number;
  /** How far the screw travels away from the fixed line when the top swells, mm from building day, 0 to 4000. */
  readonly swellMm: number;
  /** How far it travels towards the fixed line when the top shrinks, mm from building day, 0 to 4000. */
  readonly shrinkMm: number;
  /** Least that the washer reaches past either end of the slot, mm, 0 to 50. */
  readonly lapMm: number;
}

export interface WasherOverSlot {
  /** Least diameter of a washer, or length of a plate with its hole in the middle, mm. */
  readonly washerDiameterMm: number;
}

/**
 * The washer that covers a slot all year: it travels with the screw, so at either end of the season it still has to
 * reach past the far end of the slot.
 *
 * @returns Least diameter of a washer, or length of a plate with its hole in the middle, mm.
 * @throws RangeError where an input is outside its limits, or the screw's centre beyond the slot.
 * Source: common practice, no source; the diameter is what has to be covered.
 * @example
 * ```ts
 * import { washerOverSlot } from '@scantling/fastening';
 * // A 12 mm slot, 3 mm out and 2 mm in, the screw 5.5 mm from the inner end
 * washerOverSlot({ slotLengthMm: 12, screwFromInnerEndMm: 5.5, swellMm: 3, shrinkMm: 2, lapMm: 1 }).washerDiameterMm // => 19
 * ```
 */
export function washerOverSlot(input: WasherOverSlotInput): WasherOverSlot {
  requireInputs('washerOverSlot', input, limits);
  const { slotLengthMm, screwFromInnerEndMm, swellMm, shrinkMm, lapMm } = input;
  requireThat(
    'washerOverSlot',
    screwFromInnerEndMm <= slotLengthMm,
    `screwFromInnerEndMm at most slotLengthMm, got ${screwFromInnerEndMm} and ${slotLengthMm}`,
  );
  const toInnerEndMm = screwFromInnerEndMm + swellMm;
  const toOuterEndMm = slotLengthMm - screwFromInnerEndMm + shrinkMm;
  return { washerDiameterMm: 2 * (Math.max(toInnerEndMm, toOuterEndMm) + lapMm) };
}

export const washerOverSlotRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/washer-over-slot',
  title: 'Washer that covers a slot all year',
  summary:
    'The least diameter of a washer that still covers the whole slot when its screw has travelled to either end.',
  basis: 'convention',
  inputs: {
    slotLengthMm: {
      kind: 'number',
      label: 'Length of the slot',
      unit: 'mm',
      ...limits.slotLengthMm,
      help: 'Across the grain, end to end.',
    },
    screwFromInnerEndMm: {
      kind: 'number',
      label: 'Screw from the inner end',
      unit: 'mm',
      ...limits.screwFromInnerEndMm,
      help: 'To the centre of the screw on building day, from the end of the slot nearer to the fixed line.',
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
    lapMm: {
      kind: 'number',
      label: 'Least lap',
      unit: 'mm',
      ...limits.lapMm,
      help: 'How far the washer reaches past either end of the slot.',
    },
  },
  outputs: {
    washerDiameterMm: {
      label: 'Least washer',
      unit: 'mm',
      help: 'Its diameter, or the length of a plate with its hole in the middle.',
    },
  },
  compute: washerOverSlot,
  formula: String.raw`D = 2\,\bigl(\max(e + w,\; L - e + s) + l\bigr)`,
  symbols: {
    D: 'least washer',
    L: 'length of the slot',
    e: 'screw from the inner end',
    w: 'travel when the top swells',
    s: 'travel when the top shrinks',
    l: 'least lap',
  },
  inSymbols: (input, output) => ({
    D: output.washerDiameterMm,
    L: input.slotLengthMm,
    e: input.screwFromInnerEndMm,
    w: input.swellMm,
    s: input.shrinkMm,
    l: input.lapMm,
  }),
  requires: [
    {
      says: 'the screw stands in the slot',
      holds: ({ screwFromInnerEndMm, slotLengthMm }) => screwFromInnerEndMm <= slotLengthMm,
    },
  ],
  sources: [],
  examples: [
    {
      given: { slotLengthMm: 12, screwFromInnerEndMm: 5.5, swellMm: 3, shrinkMm: 2, lapMm: 1 },
      expect: { washerDiameterMm: '19.0' },
      from: {
        workedByHand:
          'Swollen, the inner end is 5.5 + 3 = 8.5 mm away; shrunk, the outer end is 12 − 5.5 + 2 = 8.5 mm away; 2 × (8.5 + 1) = 19 mm',
      },
    },
    {
      given: { slotLengthMm: 20, screwFromInnerEndMm: 6, swellMm: 4, shrinkMm: 3, lapMm: 0 },
      expect: { washerDiameterMm: '34.0' },
      from: {
        workedByHand:
          'In a slot longer than it has to be, lap 0: 6 + 4 = 10 mm to the inner end; 20 − 6 + 3 = 17 mm to the outer one; 2 × 17 = 34 mm',
      },
    },
  ],
  laws: [
    {
      of: 'washerDiameterMm',
      by: { slotLengthMm: 'increasing', swellMm: 'increasing', shrinkMm: 'increasing', lapMm: 'linear' },
    },
  ],
  cautions: [notStructuralDesign, firmNotHard],
}));
