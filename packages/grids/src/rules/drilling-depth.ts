import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { drillingCare, tryTheStop } from '../cautions.ts';

const limits = {
  thicknessMm: { min: 0, max: 1000 },
  depthMm: { min: 0, max: 1000 },
  pointLengthMm: { min: 0, max: 200 },
} as const;

export interface DrillingDepthInput {
  /** Thickness of the wood, mm, 0 to 1000. */
  readonly thicknessMm: number;
  /** How deep the hole has its full diameter, mm, 0 to 1000. */
  readonly depthMm: number;
  /** From the tip of the bit to its full diameter, mm, 0 to 200. */
  readonly pointLengthMm: number;
}

export interface DrillingDepth {
  /** How deep the tip goes, mm: a depth stop is set to this from the tip. */
  readonly tipDepthMm: number;
  /** Wood left ahead of the tip, mm; negative where it comes through, by so much into a backing board. */
  readonly leftMm: number;
}

/**
 * Where to set a depth stop, and what is left ahead of the tip: wood, or how far into a backing board it goes.
 *
 * @returns The depth of the tip and the wood left ahead of it, mm.
 * @throws RangeError where an input is outside its limits.
 * Common practice, no source.
 * @example
 * ```ts
 * import { drillingDepth } from '@scantling/grids';
 * // A hole for a 20 mm peg, 30 mm deep, in a 40 mm top, with a point of 6 mm
 * drillingDepth({ thicknessMm: 40, depthMm: 30, pointLengthMm: 6 }) // => { tipDepthMm: 36, leftMm: 4 }
 * // Through, its full diameter 2 mm past the face: the backing board has to be thicker than 8 mm
 * drillingDepth({ thicknessMm: 40, depthMm: 42, pointLengthMm: 6 }).leftMm // => -8
 * ```
 */
export function drillingDepth(input: DrillingDepthInput): DrillingDepth {
  requireInputs('drillingDepth', input, limits);
  const tipDepthMm = plusZero(input.depthMm + input.pointLengthMm);
  return { tipDepthMm, leftMm: plusZero(input.thicknessMm - tipDepthMm) };
}

export const drillingDepthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/drilling-depth',
  title: 'Depth stop and backing board',
  summary:
    'How deep the tip of a bit goes for a hole of a given depth, and how much wood, or how much backing board, is ahead of it.',
  basis: 'convention',
  inputs: {
    thicknessMm: { kind: 'number', label: 'Thickness of the wood', unit: 'mm', ...limits.thicknessMm },
    depthMm: {
      kind: 'number',
      label: 'Depth at full diameter',
      unit: 'mm',
      ...limits.depthMm,
      help: 'For a through hole a little more than the thickness.',
    },
    pointLengthMm: {
      kind: 'number',
      label: 'Point of the bit',
      unit: 'mm',
      ...limits.pointLengthMm,
      help: 'From the tip to the full diameter.',
    },
  },
  outputs: {
    tipDepthMm: { label: 'Depth of the tip', unit: 'mm', help: 'Set a depth stop to this, from the tip.' },
    leftMm: {
      label: 'Wood left ahead of the tip',
      unit: 'mm',
      help: 'Negative: how far the tip goes into a backing board, which has to be thicker than that.',
    },
  },
  compute: drillingDepth,
  formula: String.raw`t = b + h, \qquad r = T - t`,
  symbols: {
    t: 'depth of the tip',
    b: 'depth at full diameter',
    h: 'point of the bit',
    r: 'wood left',
    T: 'thickness of the wood',
  },
  sources: [],
  examples: [
    {
      given: { thicknessMm: 40, depthMm: 30, pointLengthMm: 6 },
      expect: { tipDepthMm: '36.0', leftMm: '4.0' },
      from: { workedByHand: '30 + 6 = 36.0; 40 − 36 = 4.0 mm' },
    },
    {
      given: { thicknessMm: 40, depthMm: 42, pointLengthMm: 6 },
      expect: { tipDepthMm: '48.0', leftMm: '-8.0' },
      from: { workedByHand: '42 + 6 = 48.0; 40 − 48 = −8.0 mm, into the backing board' },
    },
  ],
  laws: [
    { of: 'tipDepthMm', by: { depthMm: 'linear', pointLengthMm: 'linear' } },
    { of: 'leftMm', by: { thicknessMm: 'increasing', depthMm: 'decreasing', pointLengthMm: 'decreasing' } },
  ],
  cautions: [drillingCare, tryTheStop],
}));
