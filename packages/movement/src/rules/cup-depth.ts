import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { cuppingModel2016, woodHandbook2010 } from '@scantling/rules/sources';

const coefficient = { min: 0, max: 0.02 };
const moisture = { min: 0, max: 30 };
const limits = {
  widthMm: { min: 0, max: 2000 },
  pithDistanceMm: { min: 1, max: 2000 },
  radialPerPct: coefficient,
  tangentialPerPct: coefficient,
  fromMoisturePct: moisture,
  toMoisturePct: moisture,
} as const;

export interface CupDepthInput {
  /** Width of the board, mm, 0 to 2000; the pith lies below its middle. */
  readonly widthMm: number;
  /** Distance of the face from the pith, square to the face, mm, 1 to 2000. */
  readonly pithDistanceMm: number;
  /** Radial coefficient of the species, per 1 % of moisture content, 0 to 0.02. */
  readonly radialPerPct: number;
  /** Tangential coefficient of the species, per 1 % of moisture content, 0 to 0.02. */
  readonly tangentialPerPct: number;
  /** Moisture content when the face was flat, % of ovendry mass, 0 to 30. */
  readonly fromMoisturePct: number;
  /** Moisture content then, % of ovendry mass, 0 to 30. */
  readonly toMoisturePct: number;
}

export interface CupDepth {
  /** How far the edges of the face move away from the pith, beyond its middle, mm; negative towards the pith. */
  readonly cupMm: number;
}

/**
 * How deep a flatsawn board cups that is free to. Growth rings are taken as circles round a straight pith, and the
 * wood as moving alike everywhere: each ring grows or shrinks by the radial coefficient in its radius and by the
 * tangential one along its arc, which fits together without stress and so is exact for a board of even moisture.
 *
 * @returns The depth in mm: positive where the edges curl away from the pith, as in drying.
 * @throws RangeError where an input is outside its limits.
 * Source: derived here in the polar geometry of Mitchell, Modeling the cupping of lumber; coefficients of the Wood
 * Handbook (FPL-GTR-190), Eq. 13-2, claimed for 6 to 14 % moisture content.
 * @example
 * ```ts
 * import { cupDepth } from '@scantling/movement';
 * // Sugar maple, 160 mm wide, sawn 60 mm from the pith, from 12 % to 7 %
 * const board = { widthMm: 160, pithDistanceMm: 60, radialPerPct: 0.00165, tangentialPerPct: 0.00353 };
 * cupDepth({ ...board, fromMoisturePct: 12, toMoisturePct: 7 }).cupMm // => 0.695
 * cupDepth({ ...board, fromMoisturePct: 12, toMoisturePct: 31 }) // throws cupDepth requires toMoisturePct between 0 and 30, got 31
 * ```
 */
export function cupDepth(input: CupDepthInput): CupDepth {
  requireInputs('cupDepth', input, limits);
  const { widthMm, pithDistanceMm, radialPerPct, tangentialPerPct } = input;
  const risePct = input.toMoisturePct - input.fromMoisturePct;
  const radial = 1 + radialPerPct * risePct;
  const radiusMm = Math.hypot(pithDistanceMm, widthMm / 2);
  const angle = Math.atan(widthMm / 2 / pithDistanceMm);
  const turned = (angle * (1 + tangentialPerPct * risePct)) / radial;
  // The difference of the two cosines as a product, which keeps its digits where they are nearly the same.
  const cosines = 2 * Math.sin((angle + turned) / 2) * Math.sin((angle - turned) / 2);
  return { cupMm: plusZero(radial * radiusMm * cosines) };
}

/** The face as it would curl if the difference of the strains along it added up ring by ring, turning nothing else. */
function bySmallAngles(input: CupDepthInput): number {
  const { widthMm, pithDistanceMm, radialPerPct, tangentialPerPct, fromMoisturePct, toMoisturePct } = input;
  const difference = (radialPerPct - tangentialPerPct) * (toMoisturePct - fromMoisturePct);
  return difference * (widthMm / 2) * Math.atan(widthMm / 2 / pithDistanceMm);
}

export const cupDepthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/cup-depth',
  title: 'Cup of a flatsawn board',
  summary: 'How hollow a flatsawn board becomes when it dries, or how it bulges when it takes up moisture.',
  basis: 'derived',
  inputs: {
    widthMm: { kind: 'number', label: 'Width', unit: 'mm', ...limits.widthMm },
    pithDistanceMm: {
      kind: 'number',
      label: 'Face to pith',
      unit: 'mm',
      ...limits.pithDistanceMm,
      help: 'From the middle of the face down to the centre of the rings: lay out the curve of a ring at the end grain.',
    },
    radialPerPct: { kind: 'number', label: 'Radial coefficient', unit: '1/%', ...limits.radialPerPct },
    tangentialPerPct: {
      kind: 'number',
      label: 'Tangential coefficient',
      unit: '1/%',
      ...limits.tangentialPerPct,
    },
    fromMoisturePct: {
      kind: 'number',
      label: 'Moisture content when flat',
      unit: '%',
      ...limits.fromMoisturePct,
    },
    toMoisturePct: { kind: 'number', label: 'Moisture content then', unit: '%', ...limits.toMoisturePct },
  },
  outputs: {
    cupMm: {
      label: 'Depth of the cup',
      unit: 'mm',
      help: 'Positive where the edges curl away from the pith, negative where they curl towards it.',
    },
  },
  compute: cupDepth,
  formula: String.raw`\begin{aligned}
c &= (1 + e_R) \, (R \cos k\varphi - d) \\
R &= \sqrt{d^2 + (w/2)^2}, \quad \varphi = \arctan\frac{w/2}{d} \\
k &= \frac{1 + e_T}{1 + e_R}, \quad e_R = C_R (M_F - M_I), \quad e_T = C_T (M_F - M_I)
\end{aligned}`,
  symbols: {
    c: 'depth of the cup',
    w: 'width',
    d: 'distance of the face from the pith',
    'R, \\varphi': 'place of an edge: distance from the pith, and angle from the middle of the face',
    'C_R, C_T': 'radial and tangential coefficient',
    M_I: 'moisture content when flat',
    M_F: 'moisture content then',
  },
  valid: { fromMoisturePct: [6, 14], toMoisturePct: [6, 14] },
  sources: [
    {
      source: cuppingModel2016,
      at: 'abstract and keywords: cup from polar geometry, the two shrinkages, moisture contents and the place in the log',
      confirmed: 'text',
    },
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
        widthMm: 160,
        pithDistanceMm: 60,
        radialPerPct: 0.00165,
        tangentialPerPct: 0.00353,
        fromMoisturePct: 12,
        toMoisturePct: 7,
      },
      expect: { cupMm: '0.6950' },
      from: {
        workedByHand:
          'R = √(60² + 80²) = 100 mm, and the edge lies at the angle whose tangent is 80 / 60, which is 53.130102°; e_R: 0.00165 × (7 − 12) = −0.00825; e_T: 0.00353 × (7 − 12) = −0.01765; k: (1 − 0.01765) / (1 − 0.00825) = 0.9905218; 53.130102 × 0.9905218 = 52.626524; cos(52.626524°) = 0.6070080; 0.99175 × (100 × 0.6070080 − 60) = 0.6950 mm',
      },
    },
  ],
  peers: [
    {
      name: 'the difference of the strains times half the width and the angle to the edge',
      of: 'cupMm',
      compute: bySmallAngles,
      // What it leaves out is about half of the difference of the strains, 8 × 0.006, as a share.
      relative: 0.03,
      absolute: 1e-9,
      over: {
        radialPerPct: [0, 0.006],
        tangentialPerPct: [0, 0.006],
        fromMoisturePct: [6, 14],
        toMoisturePct: [6, 14],
      },
    },
  ],
  cautions: [
    'Thick boards, finish on one face only, and one face drying first make other cups than this. It is a guide to which way and about how much, not a tolerance.',
  ],
}));
