import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { countersinkOptions2010, iso7721 } from '@scantling/rules/sources';
import { drillingCare, measureTheHead, tryOnAnOffcut } from '../cautions.ts';

const limits = {
  headDiameterMm: { min: 0, max: 100 },
  headBelowFaceMm: { min: 0, max: 50 },
  includedAngleDeg: { min: 30, max: 150 },
} as const;

export interface CountersinkDiameterInput {
  /** Diameter of the head to its sharp edge, mm, 0 to 100: `sharpHeadDiameter` where only the edge as made is known. */
  readonly headDiameterMm: number;
  /** How far the head shall lie below the face, mm, 0 to 50: 0 is flush. */
  readonly headBelowFaceMm: number;
  /** Angle of the countersink, in degrees, 30 to 150: that of the head. */
  readonly includedAngleDeg: number;
}

export interface CountersinkDiameter {
  /** Diameter of the countersink at the face, mm. */
  readonly countersinkDiameterMm: number;
}

/**
 * How wide to countersink, at the face, so that a head of the same angle lies flush or so far below. Its diameter is the
 * one to a sharp edge: with the edge as made, which is blunt, the head would stand proud.
 *
 * @returns Diameter of the countersink in mm.
 * @throws RangeError where an input is outside its limits.
 * Source: the tangent in half of the cone.
 * @example
 * ```ts
 * import { countersinkDiameter } from '@scantling/fastening';
 * // An M6 head by ISO 7721, 12.6 mm to its sharp edge and 11.2 mm as made, half a millimetre below the face
 * countersinkDiameter({ headDiameterMm: 12.6, headBelowFaceMm: 0.5, includedAngleDeg: 90 }).countersinkDiameterMm // => 13.6
 * ```
 */
export function countersinkDiameter(input: CountersinkDiameterInput): CountersinkDiameter {
  requireInputs('countersinkDiameter', input, limits);
  const slope = 2 * Math.tan((input.includedAngleDeg * Math.PI) / 360);
  return { countersinkDiameterMm: plusZero(input.headDiameterMm + input.headBelowFaceMm * slope) };
}

export const countersinkDiameterRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/countersink-diameter',
  title: 'Countersink for a head',
  summary: 'How wide to countersink so that a screw’s head lies flush with the face, or so far below it.',
  basis: 'derived',
  inputs: {
    headDiameterMm: {
      kind: 'number',
      label: 'Head to its sharp edge',
      unit: 'mm',
      ...limits.headDiameterMm,
      help: 'To its sharp edge, where its cone would end; the edge as made is narrower, and would leave the head proud.',
    },
    headBelowFaceMm: {
      kind: 'number',
      label: 'Head below the face',
      unit: 'mm',
      ...limits.headBelowFaceMm,
      help: '0 is flush.',
    },
    includedAngleDeg: {
      kind: 'number',
      label: 'Angle of the cone',
      unit: '°',
      ...limits.includedAngleDeg,
      help: 'Of head and countersink: 82° for inch screws, 90° for metric ones.',
    },
  },
  outputs: { countersinkDiameterMm: { label: 'Countersink at the face', unit: 'mm' } },
  compute: countersinkDiameter,
  formula: String.raw`D = A + 2\,b \tan(\theta / 2)`,
  symbols: {
    D: 'countersink at the face',
    A: 'head to its sharp edge',
    b: 'head below the face',
    '\\theta': 'angle of the cone',
  },
  inSymbols: (input, output) => ({
    D: output.countersinkDiameterMm,
    A: input.headDiameterMm,
    b: input.headBelowFaceMm,
    '\\theta': input.includedAngleDeg,
  }),
  sources: [
    {
      source: iso7721,
      at: 'heads of 90°: a head is as high as half of what it is wider',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: countersinkOptions2010,
      at: 'a countersink of the angle of the head bears all of it',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { headDiameterMm: 8.4, headBelowFaceMm: 0.5, includedAngleDeg: 90 },
      expect: { countersinkDiameterMm: '9.400' },
      from: { workedByHand: 'half of 90° is 45°, whose tangent is 1; 8.4 + 2 × 0.5 × 1 = 9.400 mm' },
    },
    {
      given: { headDiameterMm: 8.4, headBelowFaceMm: 0.5, includedAngleDeg: 82 },
      expect: { countersinkDiameterMm: '9.269' },
      from: { workedByHand: 'half of 82° is 41°; 8.4 + 2 × 0.5 × tan(41°) = 9.269 mm' },
    },
  ],
  laws: [
    { of: 'countersinkDiameterMm', by: { headDiameterMm: 'linear', headBelowFaceMm: 'linear' } },
    {
      of: 'countersinkDiameterMm',
      by: { headDiameterMm: 'increasing', headBelowFaceMm: 'increasing', includedAngleDeg: 'increasing' },
    },
  ],
  cautions: [measureTheHead, tryOnAnOffcut, drillingCare],
}));
