import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { drillingCare, makersDataFirst, tryOnAnOffcut } from '../cautions.ts';

const limits = {
  holeDiameterMm: { min: 1, max: 60 },
  insertLengthMm: { min: 1, max: 150 },
  recessMm: { min: 0, max: 50 },
  roomBelowMm: { min: 0, max: 100 },
  bitTipLengthMm: { min: 0, max: 50 },
  topThicknessMm: { min: 1, max: 500 },
  edgeDistanceMm: { min: 0, max: 2000 },
} as const;

export interface InsertHoleInput {
  /** Hole that the maker of the insert gives for the wood, mm, 1 to 60. */
  readonly holeDiameterMm: number;
  /** Length of the insert, mm, 1 to 150. */
  readonly insertLengthMm: number;
  /** How far below the surface the insert is driven, mm, 0 to 50. */
  readonly recessMm: number;
  /** How much deeper the hole is, for chips and for the end of the screw, mm, 0 to 100. */
  readonly roomBelowMm: number;
  /** From the tip of the bit to its full diameter, mm, 0 to 50. */
  readonly bitTipLengthMm: number;
  /** Thickness of the top, mm, 1 to 500. */
  readonly topThicknessMm: number;
  /** From the middle of the hole to the nearest edge, mm, 0 to 2000. */
  readonly edgeDistanceMm: number;
}

export interface InsertHole {
  /** How deep to bore at full diameter, mm. */
  readonly holeDepthMm: number;
  /** Wood left above the tip of the bit, mm; negative where it comes through the face. */
  readonly stockAboveTipMm: number;
  /** Wood left between the hole and the edge, mm; negative where the hole breaks out. */
  readonly wallMm: number;
}

/**
 * The hole for a threaded insert, from its maker's figures: how deep to bore, what is left above the bit's tip and
 * what wall is left beside the hole. The diameter has no published rule: it is the maker's.
 *
 * @returns Depth of the hole, stock above it and wall beside it, mm.
 * @throws RangeError where an input is outside its limits.
 * Common practice, no source.
 * @example
 * ```ts
 * import { insertHole } from '@scantling/fastening';
 * insertHole({ holeDiameterMm: 9, insertLengthMm: 15, recessMm: 1, roomBelowMm: 3, bitTipLengthMm: 2.5, topThicknessMm: 45, edgeDistanceMm: 30 }) // => { holeDepthMm: 19, stockAboveTipMm: 23.5, wallMm: 25.5 }
 * ```
 */
export function insertHole(input: InsertHoleInput): InsertHole {
  requireInputs('insertHole', input, limits);
  const holeDepthMm = input.recessMm + input.insertLengthMm + input.roomBelowMm;
  return {
    holeDepthMm,
    stockAboveTipMm: input.topThicknessMm - holeDepthMm - input.bitTipLengthMm,
    wallMm: plusZero(input.edgeDistanceMm - input.holeDiameterMm / 2),
  };
}

export const insertHoleRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/insert-hole',
  title: 'Hole for a threaded insert',
  summary:
    'How deep to bore for a threaded insert whose maker gives the diameter, and what wood is left above the hole and beside it.',
  basis: 'convention',
  inputs: {
    holeDiameterMm: {
      kind: 'number',
      label: 'Hole diameter',
      unit: 'mm',
      ...limits.holeDiameterMm,
      help: 'From the maker of the insert, for your wood: hardwood takes a larger one.',
    },
    insertLengthMm: { kind: 'number', label: 'Insert length', unit: 'mm', ...limits.insertLengthMm },
    recessMm: {
      kind: 'number',
      label: 'Driven below the surface',
      unit: 'mm',
      ...limits.recessMm,
      help: 'So that the parts close tight.',
    },
    roomBelowMm: {
      kind: 'number',
      label: 'Room below the insert',
      unit: 'mm',
      ...limits.roomBelowMm,
      help: 'For chips and for the end of the screw, which must not reach the bottom.',
    },
    bitTipLengthMm: {
      kind: 'number',
      label: 'Tip of the bit',
      unit: 'mm',
      ...limits.bitTipLengthMm,
      help: 'From its point to its full diameter.',
    },
    topThicknessMm: { kind: 'number', label: 'Thickness of the top', unit: 'mm', ...limits.topThicknessMm },
    edgeDistanceMm: {
      kind: 'number',
      label: 'Hole to the nearest edge',
      unit: 'mm',
      ...limits.edgeDistanceMm,
      help: 'From the middle of the hole.',
    },
  },
  outputs: {
    holeDepthMm: { label: 'Depth at full diameter', unit: 'mm' },
    stockAboveTipMm: {
      label: 'Stock above the bit’s tip',
      unit: 'mm',
      help: 'Negative where it comes through the face.',
    },
    wallMm: { label: 'Wall beside the hole', unit: 'mm', help: 'Negative where the hole breaks out.' },
  },
  compute: insertHole,
  formula: String.raw`h = c + \ell + q, \qquad r = T - h - p, \qquad w = e - \tfrac{d}{2}`,
  symbols: {
    h: 'depth at full diameter',
    c: 'driven below the surface',
    '\\ell': 'insert length',
    q: 'room below the insert',
    r: 'stock above the bit’s tip',
    T: 'thickness of the top',
    p: 'tip of the bit',
    w: 'wall beside the hole',
    e: 'hole to the nearest edge',
    d: 'hole diameter',
  },
  inSymbols: (input, output) => ({
    h: output.holeDepthMm,
    c: input.recessMm,
    '\\ell': input.insertLengthMm,
    q: input.roomBelowMm,
    r: output.stockAboveTipMm,
    T: input.topThicknessMm,
    p: input.bitTipLengthMm,
    w: output.wallMm,
    e: input.edgeDistanceMm,
    d: input.holeDiameterMm,
  }),
  sources: [],
  examples: [
    {
      given: {
        holeDiameterMm: 9,
        insertLengthMm: 15,
        recessMm: 1,
        roomBelowMm: 3,
        bitTipLengthMm: 2.5,
        topThicknessMm: 45,
        edgeDistanceMm: 30,
      },
      expect: { holeDepthMm: '19.00', stockAboveTipMm: '23.50', wallMm: '25.50' },
      from: {
        workedByHand: '1 + 15 + 3 = 19.00 mm; 45 − 19 − 2.5 = 23.50 mm; 30 − 9 / 2 = 25.50 mm',
      },
    },
  ],
  laws: [
    { of: 'holeDepthMm', by: { insertLengthMm: 'linear', recessMm: 'linear', roomBelowMm: 'linear' } },
    {
      of: 'stockAboveTipMm',
      by: { topThicknessMm: 'linear', bitTipLengthMm: 'linear', recessMm: 'decreasing' },
    },
    { of: 'wallMm', by: { edgeDistanceMm: 'linear', holeDiameterMm: 'linear' } },
  ],
  cautions: [makersDataFirst, tryOnAnOffcut, drillingCare],
}));
