import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { elasticityTextbook2005, growthRingDirection1945, woodHandbook2010 } from '@scantling/rules/sources';
import { boardsDiffer } from '../cautions.ts';

const coefficient = { min: 0, max: 0.02 };
const moisture = { min: 0, max: 30 };
const limits = {
  widthMm: { min: 0, max: 10_000 },
  thicknessMm: { min: 0, max: 1000 },
  ringAngleDeg: { min: 0, max: 90 },
  radialPerPct: coefficient,
  tangentialPerPct: coefficient,
  fromMoisturePct: moisture,
  toMoisturePct: moisture,
} as const;

export interface ChangeAtRingAngleInput {
  /** Width of the board now, mm, 0 to 10 000. */
  readonly widthMm: number;
  /** Thickness of the board now, mm, 0 to 1000. */
  readonly thicknessMm: number;
  /** Angle at the end grain between the growth rings and the wide face, 0° (flatsawn) to 90° (quartersawn). */
  readonly ringAngleDeg: number;
  /** Radial coefficient of the species, per 1 % of moisture content, 0 to 0.02. */
  readonly radialPerPct: number;
  /** Tangential coefficient of the species, per 1 % of moisture content, 0 to 0.02. */
  readonly tangentialPerPct: number;
  /** Moisture content now, % of ovendry mass, 0 to 30. */
  readonly fromMoisturePct: number;
  /** Moisture content then, % of ovendry mass, 0 to 30. */
  readonly toMoisturePct: number;
}

export interface ChangeAtRingAngle {
  /** Change in width, mm: positive where the wood swells. */
  readonly widthChangeMm: number;
  /** Change in thickness, mm: positive where the wood swells. */
  readonly thicknessChangeMm: number;
}

/**
 * How much a board changes in width and thickness when its growth rings meet the wide face at any angle. The
 * rings are taken as straight across the board; that its corners leave the right angle is left out.
 *
 * @returns Both changes in mm: positive where the wood swells, negative where it shrinks.
 * @throws RangeError where an input is outside its limits.
 * Source: the strain of a turned axis (elasticity textbook, Eq. 2.3.5) with the coefficients of the Wood Handbook
 * (FPL-GTR-190), Eq. 13-2, claimed for 6 to 14 % moisture content.
 * @example
 * ```ts
 * import { changeAtRingAngle } from '@scantling/movement';
 * // Sugar maple with rings at 45°: halfway between 0.00165 and 0.00353 both ways
 * const board = { widthMm: 200, thicknessMm: 40, radialPerPct: 0.00165, tangentialPerPct: 0.00353 };
 * changeAtRingAngle({ ...board, ringAngleDeg: 45, fromMoisturePct: 8, toMoisturePct: 11 }) // => { widthChangeMm: 1.554, thicknessChangeMm: 0.3108 }
 * changeAtRingAngle({ ...board, ringAngleDeg: 91, fromMoisturePct: 8, toMoisturePct: 11 }) // throws changeAtRingAngle requires ringAngleDeg between 0 and 90, got 91
 * ```
 */
export function changeAtRingAngle(input: ChangeAtRingAngleInput): ChangeAtRingAngle {
  requireInputs('changeAtRingAngle', input, limits);
  const { widthMm, thicknessMm, ringAngleDeg, radialPerPct, tangentialPerPct } = input;
  const risePct = input.toMoisturePct - input.fromMoisturePct;
  const acrossRings = Math.sin((ringAngleDeg * Math.PI) / 180) ** 2;
  const alongRings = 1 - acrossRings;
  return {
    widthChangeMm: plusZero(widthMm * risePct * (tangentialPerPct * alongRings + radialPerPct * acrossRings)),
    thicknessChangeMm: plusZero(
      thicknessMm * risePct * (radialPerPct * alongRings + tangentialPerPct * acrossRings),
    ),
  };
}

/** The edge of the board along its width as a line of points that move along and across the rings, and its length. */
function byEdgeLength(input: ChangeAtRingAngleInput): number {
  const { widthMm, ringAngleDeg, radialPerPct, tangentialPerPct, fromMoisturePct, toMoisturePct } = input;
  const risePct = toMoisturePct - fromMoisturePct;
  const angle = (ringAngleDeg * Math.PI) / 180;
  const along = widthMm * Math.cos(angle) * (1 + tangentialPerPct * risePct);
  const across = widthMm * Math.sin(angle) * (1 + radialPerPct * risePct);
  return Math.hypot(along, across) - widthMm;
}

export const changeAtRingAngleRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/change-at-ring-angle',
  title: 'Change in width and thickness, at any ring angle',
  summary:
    'How much a board that is neither flatsawn nor quartersawn swells or shrinks, in width and in thickness.',
  basis: 'derived',
  inputs: {
    widthMm: { kind: 'number', label: 'Width', unit: 'mm', ...limits.widthMm },
    thicknessMm: { kind: 'number', label: 'Thickness', unit: 'mm', ...limits.thicknessMm },
    ringAngleDeg: {
      kind: 'number',
      label: 'Ring angle',
      unit: '°',
      ...limits.ringAngleDeg,
      help: 'At the end grain, between the growth rings and the wide face: 0 is flatsawn, 90 quartersawn.',
    },
    radialPerPct: { kind: 'number', label: 'Radial coefficient', unit: '1/%', ...limits.radialPerPct },
    tangentialPerPct: {
      kind: 'number',
      label: 'Tangential coefficient',
      unit: '1/%',
      ...limits.tangentialPerPct,
    },
    fromMoisturePct: { kind: 'number', label: 'Moisture content now', unit: '%', ...limits.fromMoisturePct },
    toMoisturePct: { kind: 'number', label: 'Moisture content then', unit: '%', ...limits.toMoisturePct },
  },
  outputs: {
    widthChangeMm: { label: 'Change in width', unit: 'mm', help: 'Positive where the wood swells.' },
    thicknessChangeMm: { label: 'Change in thickness', unit: 'mm', help: 'Positive where the wood swells.' },
  },
  compute: changeAtRingAngle,
  formula: String.raw`\begin{aligned}
\Delta B &= B \, (C_T \cos^2\theta + C_R \sin^2\theta) \, (M_F - M_I) \\
\Delta T &= T \, (C_R \cos^2\theta + C_T \sin^2\theta) \, (M_F - M_I)
\end{aligned}`,
  symbols: {
    'B, T': 'width and thickness now',
    '\\theta': 'angle between growth rings and wide face',
    'C_R, C_T': 'radial and tangential coefficient',
    M_I: 'moisture content now',
    M_F: 'moisture content then',
  },
  valid: { fromMoisturePct: [6, 14], toMoisturePct: [6, 14] },
  sources: [
    {
      source: growthRingDirection1945,
      at: 'introduction: that width and thickness follow from radial and tangential shrinkage and the angle of the rings',
      confirmed: 'text',
    },
    { source: elasticityTextbook2005, at: 'Eq. 2.3.5: strain along a turned axis', confirmed: 'text' },
    {
      source: woodHandbook2010,
      at: 'ch. 13, the equation that goes with Table 13-5, for 6 to 14 %, as an extension service reprints it',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: {
        widthMm: 200,
        thicknessMm: 40,
        ringAngleDeg: 30,
        radialPerPct: 0.00165,
        tangentialPerPct: 0.00353,
        fromMoisturePct: 12,
        toMoisturePct: 7,
      },
      expect: { widthChangeMm: '-3.060', thicknessChangeMm: '-0.4240' },
      from: {
        workedByHand:
          'cos² 30° is 0.75 and sin² 30° is 0.25; ' +
          '0.00353 × 0.75 + 0.00165 × 0.25 = 0.00306; 200 × 0.00306 × (7 − 12) = −3.060 mm; ' +
          '0.00165 × 0.75 + 0.00353 × 0.25 = 0.00212; 40 × 0.00212 × (7 − 12) = −0.4240 mm',
      },
    },
    {
      given: {
        widthMm: 9.15 * 25.4,
        thicknessMm: 25.4,
        ringAngleDeg: 0,
        radialPerPct: 0.00112,
        tangentialPerPct: 0.00245,
        fromMoisturePct: 8,
        toMoisturePct: 11,
      },
      expect: { widthChangeMm: { printed: '0.067', unit: 'in', times: 25.4 } },
      from: {
        source: woodHandbook2010,
        at: 'ch. 13, worked example: flat-grained white fir board, 9.15 in, 8 to 11 %',
        confirmed: 'memory',
      },
    },
  ],
  laws: [
    {
      of: 'widthChangeMm',
      by: {
        widthMm: 'proportional',
        radialPerPct: 'linear',
        tangentialPerPct: 'linear',
        toMoisturePct: 'linear',
      },
    },
    {
      of: 'thicknessChangeMm',
      by: {
        thicknessMm: 'proportional',
        radialPerPct: 'linear',
        tangentialPerPct: 'linear',
        toMoisturePct: 'linear',
      },
    },
    { of: 'widthChangeMm', by: { fromMoisturePct: 'decreasing', toMoisturePct: 'increasing' } },
    { of: 'thicknessChangeMm', by: { fromMoisturePct: 'decreasing', toMoisturePct: 'increasing' } },
  ],
  peers: [
    {
      name: 'the length of the edge, its points moved along and across the rings',
      of: 'widthChangeMm',
      compute: byEdgeLength,
      // The edge also turns a little, which the strain leaves out: at most half of the larger strain, 8 × 0.006.
      relative: 0.025,
      absolute: 1e-9,
      over: {
        widthMm: [10, 10_000],
        radialPerPct: [0, 0.006],
        tangentialPerPct: [0, 0.006],
        fromMoisturePct: [6, 14],
        toMoisturePct: [6, 14],
      },
    },
  ],
  cautions: [boardsDiffer],
}));
