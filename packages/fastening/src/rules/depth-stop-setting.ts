import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { drillingCare, measureTheTop, stopAgainstTheChuck } from '../cautions.ts';

const limits = {
  drilledThroughMm: { min: 0, max: 500 },
  holeDepthMm: { min: 0, max: 500 },
  bitTipLengthMm: { min: 0, max: 100 },
  stopLengthMm: { min: 0, max: 200 },
  topThicknessMm: { min: 1, max: 500 },
} as const;

export interface DepthStopSettingInput {
  /** What the bit passes before it meets the wood, mm, 0 to 500: the bracket or the strip, if drilled in place. */
  readonly drilledThroughMm: number;
  /** How deep the hole is to have its full diameter in the wood, mm, 0 to 500. */
  readonly holeDepthMm: number;
  /** From the tip of the bit to its full diameter, mm, 0 to 100: a brad point or the cone of a twist bit. */
  readonly bitTipLengthMm: number;
  /** Length of the stop along the bit, mm, 0 to 200. */
  readonly stopLengthMm: number;
  /** Thickness of the top, mm, 1 to 500. */
  readonly topThicknessMm: number;
}

export interface DepthStopSetting {
  /** From the tip of the bit to the face of the stop, mm. */
  readonly stopFromTipMm: number;
  /** How far the bit stands out of the chuck when the stop bears against the chuck, mm. */
  readonly bitOutOfChuckMm: number;
  /** Wood left above the tip of the bit, mm; negative where it comes through the face. */
  readonly stockAboveTipMm: number;
}

/**
 * Where to set the depth stop on a bit, how far to let the bit out of the chuck so that the stop bears against it, and
 * what is left above the bit's tip. The tip counts: a stop set to the depth of the hole alone bores too deep by it.
 *
 * @returns Setting of the stop, reach of the bit and stock above its tip, mm.
 * @throws RangeError where an input is outside its limits.
 * Common practice, no source.
 * @example
 * ```ts
 * import { depthStopSetting } from '@scantling/fastening';
 * // A hole 30 mm deep through a 3 mm bracket into a 45 mm top; a twist bit with a tip of 1 mm, a stop of 12 mm
 * depthStopSetting({ drilledThroughMm: 3, holeDepthMm: 30, bitTipLengthMm: 1, stopLengthMm: 12, topThicknessMm: 45 }) // => { stopFromTipMm: 34, bitOutOfChuckMm: 46, stockAboveTipMm: 14 }
 * ```
 */
export function depthStopSetting(input: DepthStopSettingInput): DepthStopSetting {
  requireInputs('depthStopSetting', input, limits);
  const { drilledThroughMm, holeDepthMm, bitTipLengthMm, stopLengthMm, topThicknessMm } = input;
  const stopFromTipMm = plusZero(drilledThroughMm + holeDepthMm + bitTipLengthMm);
  return {
    stopFromTipMm,
    bitOutOfChuckMm: plusZero(stopFromTipMm + stopLengthMm),
    stockAboveTipMm: topThicknessMm - holeDepthMm - bitTipLengthMm,
  };
}

export const depthStopSettingRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/depth-stop-setting',
  title: 'Depth stop on a bit',
  summary:
    'How far from the tip of a bit its depth stop goes, how far the bit stands out of the chuck, and what is left above its tip.',
  basis: 'convention',
  inputs: {
    drilledThroughMm: {
      kind: 'number',
      label: 'Drilled through first',
      unit: 'mm',
      ...limits.drilledThroughMm,
      help: 'The bracket or strip that lies on the wood while you drill; nothing, if you drill without it.',
    },
    holeDepthMm: {
      kind: 'number',
      label: 'Depth at full diameter',
      unit: 'mm',
      ...limits.holeDepthMm,
      help: 'In the wood.',
    },
    bitTipLengthMm: {
      kind: 'number',
      label: 'Tip of the bit',
      unit: 'mm',
      ...limits.bitTipLengthMm,
      help: 'From its point to its full diameter: 0.3 of the diameter for a 118° twist bit; measure a brad point.',
    },
    stopLengthMm: {
      kind: 'number',
      label: 'Length of the stop',
      unit: 'mm',
      ...limits.stopLengthMm,
      help: 'Along the bit: a collar, or a piece of wood bored through.',
    },
    topThicknessMm: { kind: 'number', label: 'Thickness of the top', unit: 'mm', ...limits.topThicknessMm },
  },
  outputs: {
    stopFromTipMm: { label: 'Stop from the tip', unit: 'mm', help: 'To the face of the stop that lands.' },
    bitOutOfChuckMm: { label: 'Bit out of the chuck', unit: 'mm', help: 'The stop then bears against it.' },
    stockAboveTipMm: {
      label: 'Stock above the tip',
      unit: 'mm',
      help: 'Negative where the bit comes through the face.',
    },
  },
  compute: depthStopSetting,
  formula: String.raw`s = t + b + h, \qquad c = s + l, \qquad r = T - b - h`,
  symbols: {
    s: 'stop from the tip',
    t: 'drilled through first',
    b: 'depth at full diameter',
    h: 'tip of the bit',
    c: 'bit out of the chuck',
    l: 'length of the stop',
    r: 'stock above the tip',
    T: 'thickness of the top',
  },
  inSymbols: (input, output) => ({
    s: output.stopFromTipMm,
    t: input.drilledThroughMm,
    b: input.holeDepthMm,
    h: input.bitTipLengthMm,
    c: output.bitOutOfChuckMm,
    l: input.stopLengthMm,
    r: output.stockAboveTipMm,
    T: input.topThicknessMm,
  }),
  sources: [],
  examples: [
    {
      given: {
        drilledThroughMm: 3,
        holeDepthMm: 30,
        bitTipLengthMm: 1,
        stopLengthMm: 12,
        topThicknessMm: 45,
      },
      expect: { stopFromTipMm: '34.00', bitOutOfChuckMm: '46.00', stockAboveTipMm: '14.00' },
      from: { workedByHand: '3 + 30 + 1 = 34.00 mm; 34 + 12 = 46.00 mm; 45 − 30 − 1 = 14.00 mm' },
    },
    {
      given: {
        drilledThroughMm: 0,
        holeDepthMm: 20,
        bitTipLengthMm: 3.5,
        stopLengthMm: 10,
        topThicknessMm: 22,
      },
      expect: { stopFromTipMm: '23.50', bitOutOfChuckMm: '33.50', stockAboveTipMm: '-1.50' },
      from: {
        workedByHand:
          '0 + 20 + 3.5 = 23.50 mm; 23.5 + 10 = 33.50 mm; 22 − 20 − 3.5 = −1.50 mm, through the face',
      },
    },
  ],
  laws: [
    {
      of: 'stopFromTipMm',
      by: { drilledThroughMm: 'linear', holeDepthMm: 'linear', bitTipLengthMm: 'linear' },
    },
    { of: 'bitOutOfChuckMm', by: { stopLengthMm: 'linear', drilledThroughMm: 'increasing' } },
    {
      of: 'stockAboveTipMm',
      by: { topThicknessMm: 'linear', holeDepthMm: 'linear', bitTipLengthMm: 'decreasing' },
    },
  ],
  cautions: [stopAgainstTheChuck, measureTheTop, drillingCare],
}));
