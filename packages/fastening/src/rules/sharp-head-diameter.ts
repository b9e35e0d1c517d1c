import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { iso7721, iso10642 } from '@scantling/rules/sources';
import { measureTheHead } from '../cautions.ts';

const limits = {
  shankDiameterMm: { min: 0, max: 100 },
  headHeightMm: { min: 0, max: 50 },
  includedAngleDeg: { min: 30, max: 150 },
} as const;

export interface SharpHeadDiameterInput {
  /** Diameter where the head ends, mm, 0 to 100. */
  readonly shankDiameterMm: number;
  /** Height of the head, mm, 0 to 50: from its top to where its cone meets the shank, a blunt rim included. */
  readonly headHeightMm: number;
  /** Angle of the whole cone, in degrees, 30 to 150: 82 for inch screws, 90 for metric ones. */
  readonly includedAngleDeg: number;
}

export interface SharpHeadDiameter {
  /** Diameter of the head to its sharp edge, mm. */
  readonly headDiameterMm: number;
}

/**
 * How wide a countersunk head would be if its cone went on to its top: the diameter to a sharp edge, which the rules of
 * the countersink ask for. The edge of a head as made is blunt and narrower; its height tells the sharp one.
 *
 * @returns Diameter of the head in mm.
 * @throws RangeError where an input is outside its limits.
 * Source: the tangent in half of the cone; the heads of ISO 7721 and ISO 10642 follow it.
 * @example
 * ```ts
 * import { sharpHeadDiameter } from '@scantling/fastening';
 * // Head of an M6 screw by ISO 7721, 11.2 mm over its edge as made and 3.3 mm high
 * sharpHeadDiameter({ shankDiameterMm: 6, headHeightMm: 3.3, includedAngleDeg: 90 }).headDiameterMm // => 12.6
 * ```
 */
export function sharpHeadDiameter(input: SharpHeadDiameterInput): SharpHeadDiameter {
  requireInputs('sharpHeadDiameter', input, limits);
  const slope = 2 * Math.tan((input.includedAngleDeg * Math.PI) / 360);
  return { headDiameterMm: plusZero(input.shankDiameterMm + input.headHeightMm * slope) };
}

export const sharpHeadDiameterRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/sharp-head-diameter',
  title: 'Head to its sharp edge',
  summary: 'How wide a countersunk head is to the sharp edge where its cone would end, from its height.',
  basis: 'derived',
  inputs: {
    shankDiameterMm: {
      kind: 'number',
      label: 'Shank diameter',
      unit: 'mm',
      ...limits.shankDiameterMm,
      help: 'Where the head ends.',
    },
    headHeightMm: {
      kind: 'number',
      label: 'Height of the head',
      unit: 'mm',
      ...limits.headHeightMm,
      help: 'From its top to where its cone meets the shank, a blunt rim included.',
    },
    includedAngleDeg: {
      kind: 'number',
      label: 'Angle of the cone',
      unit: '°',
      ...limits.includedAngleDeg,
      help: 'Of the whole cone: 82° for inch screws, 90° for metric ones.',
    },
  },
  outputs: { headDiameterMm: { label: 'Head to its sharp edge', unit: 'mm' } },
  compute: sharpHeadDiameter,
  formula: String.raw`A = d + 2\,k \tan(\theta / 2)`,
  symbols: {
    A: 'head to its sharp edge',
    d: 'shank diameter',
    k: 'height of the head',
    '\\theta': 'angle of the cone',
  },
  inSymbols: (input, output) => ({
    A: output.headDiameterMm,
    d: input.shankDiameterMm,
    k: input.headHeightMm,
    '\\theta': input.includedAngleDeg,
  }),
  sources: [
    { source: iso7721, at: 'head heights k of M1.6 to M10', confirmed: 'text', tier: 'reprint' },
    { source: iso10642, at: 'head heights k of M3 to M20', confirmed: 'text', tier: 'reprint' },
  ],
  examples: [
    {
      given: { shankDiameterMm: 6, headHeightMm: 3.3, includedAngleDeg: 90 },
      expect: { headDiameterMm: '12.6' },
      from: { source: iso7721, at: 'M6: dk 12.6, k 3.30', confirmed: 'text', tier: 'reprint' },
    },
    {
      given: { shankDiameterMm: 8, headHeightMm: 4.96, includedAngleDeg: 90 },
      expect: { headDiameterMm: '17.92' },
      from: { source: iso10642, at: 'M8: dk 17.92, k 4.96', confirmed: 'text', tier: 'reprint' },
    },
    {
      given: { shankDiameterMm: 4.2, headHeightMm: 2.5, includedAngleDeg: 82 },
      expect: { headDiameterMm: '8.546' },
      from: { workedByHand: 'half of 82° is 41°; 4.2 + 2 × 2.5 × tan(41°) = 8.546 mm' },
    },
  ],
  laws: [
    { of: 'headDiameterMm', by: { shankDiameterMm: 'linear', headHeightMm: 'linear' } },
    {
      of: 'headDiameterMm',
      by: { shankDiameterMm: 'increasing', headHeightMm: 'increasing', includedAngleDeg: 'increasing' },
    },
  ],
  cautions: [measureTheHead],
}));
