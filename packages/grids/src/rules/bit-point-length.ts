import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { drillPointExercise } from '@scantling/rules/sources';

const limits = { diameterMm: { min: 0, max: 500 }, pointAngleDeg: { min: 30, max: 179 } } as const;

export interface BitPointLengthInput {
  /** Diameter of the bit, mm, 0 to 500. */
  readonly diameterMm: number;
  /** Angle of the whole point, in degrees, 30 to 179: 118 for common twist bits. */
  readonly pointAngleDeg: number;
}

export interface BitPointLength {
  /** From the tip to where the bit has its full diameter, mm. */
  readonly pointLengthMm: number;
}

/**
 * How far the cone of a twist bit reaches ahead of its full diameter.
 *
 * @returns The length of the point in mm.
 * @throws RangeError where an input is outside its limits.
 * Source: the tangent in half of the point, an exercise for machinists.
 * @example
 * ```ts
 * import { bitPointLength } from '@scantling/grids';
 * bitPointLength({ diameterMm: 20, pointAngleDeg: 118 }).pointLengthMm // => 6.009
 * ```
 */
export function bitPointLength(input: BitPointLengthInput): BitPointLength {
  requireInputs('bitPointLength', input, limits);
  return { pointLengthMm: plusZero(input.diameterMm / 2 / Math.tan((input.pointAngleDeg * Math.PI) / 360)) };
}

/** By the height of a triangle whose two equal sides are the edges of the point. */
function byTriangle({ diameterMm, pointAngleDeg }: BitPointLengthInput): number {
  const edgeMm = diameterMm / 2 / Math.sin((pointAngleDeg * Math.PI) / 360);
  return Math.sqrt((edgeMm - diameterMm / 2) * (edgeMm + diameterMm / 2));
}

export const bitPointLengthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/bit-point-length',
  title: 'Length of a bit’s point',
  summary: 'How far the cone of a twist bit reaches ahead of its full diameter, from the angle of the point.',
  basis: 'derived',
  inputs: {
    diameterMm: { kind: 'number', label: 'Bit diameter', unit: 'mm', ...limits.diameterMm },
    pointAngleDeg: {
      kind: 'number',
      label: 'Point angle',
      unit: '°',
      ...limits.pointAngleDeg,
      help: 'Of the whole point: 118° for common twist bits. For other bits measure the length of the point itself.',
    },
  },
  outputs: {
    pointLengthMm: { label: 'Point', unit: 'mm', help: 'From the tip to the full diameter.' },
  },
  compute: bitPointLength,
  formula: String.raw`h = \frac{d}{2 \tan(\theta / 2)}`,
  symbols: { h: 'length of the point', d: 'diameter of the bit', '\\theta': 'angle of the whole point' },
  sources: [{ source: drillPointExercise, at: 'steps 2 to 5: tan of half the angle', confirmed: 'text' }],
  examples: [
    {
      given: { diameterMm: (7 / 8) * 25.4, pointAngleDeg: 118 },
      expect: { pointLengthMm: { printed: '0.2629', unit: 'in', times: 25.4 } },
      from: { source: drillPointExercise, at: 'step 5: a drill of 7/8 in, 118°', confirmed: 'text' },
    },
    {
      given: { diameterMm: 20, pointAngleDeg: 90 },
      expect: { pointLengthMm: '10.000' },
      from: { workedByHand: 'half of 90° is 45°, whose tangent is 1; 20 / 2 / tan(45°) = 10.000 mm' },
    },
  ],
  laws: [{ of: 'pointLengthMm', by: { diameterMm: 'proportional', pointAngleDeg: 'decreasing' } }],
  peers: [
    {
      name: 'the height of the triangle between the edges of the point',
      of: 'pointLengthMm',
      compute: byTriangle,
      relative: 1e-9,
      over: { pointAngleDeg: [30, 170] },
    },
  ],
}));
