import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { countersinkOptions2010, iso7721, iso10642 } from '@scantling/rules/sources';
import { drillingCare, measureTheHead, tryOnAnOffcut } from '../cautions.ts';

const diameter = { min: 0, max: 200 } as const;
const limits = {
  countersinkDiameterMm: diameter,
  holeDiameterMm: diameter,
  includedAngleDeg: { min: 30, max: 150 },
} as const;

export interface CountersinkDepthInput {
  /** Diameter of the countersink at the face, mm, 0 to 200. */
  readonly countersinkDiameterMm: number;
  /** Diameter of the hole that it meets, mm, 0 to the countersink's. */
  readonly holeDiameterMm: number;
  /** Angle of the whole cone, in degrees, 30 to 150: 82 for inch screws, 90 for metric ones. */
  readonly includedAngleDeg: number;
}

export interface CountersinkDepth {
  /** From the face to where the cone meets the hole, mm. */
  readonly coneDepthMm: number;
}

/**
 * How deep a countersink reaches below the face, from its diameter at the face down to the hole. With the diameters of a
 * head and its shank it is the height of the head.
 *
 * @returns Depth of the cone in mm.
 * @throws RangeError where an input is outside its limits, or the hole is wider than the countersink.
 * Source: the tangent in half of the cone; the head heights of ISO 10642 and ISO 7721 follow it.
 * @example
 * ```ts
 * import { countersinkDepth } from '@scantling/fastening';
 * // Head of an M6 screw by ISO 10642: (13.44 − 6) / 2
 * countersinkDepth({ countersinkDiameterMm: 13.44, holeDiameterMm: 6, includedAngleDeg: 90 }).coneDepthMm // => 3.72
 * ```
 */
export function countersinkDepth(input: CountersinkDepthInput): CountersinkDepth {
  const { countersinkDiameterMm, holeDiameterMm, includedAngleDeg } = input ?? {};
  const holeDiameter = { min: 0, max: countersinkDiameterMm };
  requireInputs('countersinkDepth', input, { ...limits, holeDiameterMm: holeDiameter });
  const slope = 2 * Math.tan((includedAngleDeg * Math.PI) / 360);
  return { coneDepthMm: plusZero((countersinkDiameterMm - holeDiameterMm) / slope) };
}

export const countersinkDepthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/countersink-depth',
  title: 'Depth of a countersink',
  summary: 'How deep a countersink reaches from its diameter at the face down to the hole that it meets.',
  basis: 'derived',
  inputs: {
    countersinkDiameterMm: {
      kind: 'number',
      label: 'Countersink at the face',
      unit: 'mm',
      ...diameter,
      help: 'Or the diameter of a head, to its sharp edge.',
    },
    holeDiameterMm: {
      kind: 'number',
      label: 'Hole',
      unit: 'mm',
      ...diameter,
      help: 'Or the diameter of the shank.',
    },
    includedAngleDeg: {
      kind: 'number',
      label: 'Angle of the cone',
      unit: '°',
      ...limits.includedAngleDeg,
      help: 'Of the whole cone: 82° for inch screws, 90° for metric ones.',
    },
  },
  outputs: { coneDepthMm: { label: 'Depth of the cone', unit: 'mm' } },
  compute: countersinkDepth,
  formula: String.raw`h = \frac{D - d}{2 \tan(\theta / 2)}`,
  symbols: {
    h: 'depth of the cone',
    D: 'countersink at the face',
    d: 'hole',
    '\\theta': 'angle of the cone',
  },
  inSymbols: (input, output) => ({
    h: output.coneDepthMm,
    D: input.countersinkDiameterMm,
    d: input.holeDiameterMm,
    '\\theta': input.includedAngleDeg,
  }),
  requires: [
    {
      says: 'The hole is no wider than the countersink.',
      holds: ({ countersinkDiameterMm, holeDiameterMm }) => holeDiameterMm <= countersinkDiameterMm,
    },
  ],
  sources: [
    { source: iso10642, at: 'head heights k of M3 to M20', confirmed: 'text', tier: 'reprint' },
    { source: iso7721, at: 'head heights k of M1.6 to M10', confirmed: 'text', tier: 'reprint' },
    {
      source: countersinkOptions2010,
      at: 'the usual angles: 82° for inch screws, 90° for those of ISO',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { countersinkDiameterMm: 13.44, holeDiameterMm: 6, includedAngleDeg: 90 },
      expect: { coneDepthMm: '3.72' },
      from: { source: iso10642, at: 'M6: dk 13.44, k 3.72', confirmed: 'text', tier: 'reprint' },
    },
    {
      given: { countersinkDiameterMm: 17.3, holeDiameterMm: 8, includedAngleDeg: 90 },
      expect: { coneDepthMm: '4.65' },
      from: { source: iso7721, at: 'M8: dk 17.3, k 4.65', confirmed: 'text', tier: 'reprint' },
    },
    {
      given: { countersinkDiameterMm: 8.4, holeDiameterMm: 4.2, includedAngleDeg: 82 },
      expect: { coneDepthMm: '2.416' },
      from: { workedByHand: 'half of 82° is 41°; (8.4 − 4.2) / 2 / tan(41°) = 2.416 mm' },
    },
    {
      given: { countersinkDiameterMm: 12, holeDiameterMm: 5, includedAngleDeg: 100 },
      expect: { coneDepthMm: '2.937' },
      from: { workedByHand: 'half of 100° is 50°; (12 − 5) / 2 / tan(50°) = 2.937 mm' },
    },
  ],
  laws: [
    { of: 'coneDepthMm', by: { countersinkDiameterMm: 'linear', holeDiameterMm: 'linear' } },
    {
      of: 'coneDepthMm',
      by: {
        countersinkDiameterMm: 'increasing',
        holeDiameterMm: 'decreasing',
        includedAngleDeg: 'decreasing',
      },
    },
  ],
  cautions: [measureTheHead, tryOnAnOffcut, drillingCare],
}));
