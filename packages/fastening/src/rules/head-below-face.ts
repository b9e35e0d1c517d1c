import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { countersinkOptions2010 } from '@scantling/rules/sources';
import { drillingCare, measureTheHead, tryOnAnOffcut } from '../cautions.ts';

const diameter = { min: 0, max: 100 } as const;
const angle = { min: 30, max: 150 } as const;
const limits = {
  headDiameterMm: diameter,
  headAngleDeg: angle,
  countersinkDiameterMm: diameter,
  countersinkAngleDeg: angle,
  holeDiameterMm: diameter,
} as const;

export interface HeadBelowFaceInput {
  /** Diameter of the head to its sharp edge, mm, 0 to 100: `sharpHeadDiameter` where only the edge as made is known. */
  readonly headDiameterMm: number;
  /** Angle of the whole head, in degrees, 30 to 150. */
  readonly headAngleDeg: number;
  /** Diameter of the countersink at the face, mm, 0 to 100. */
  readonly countersinkDiameterMm: number;
  /** Angle of the whole countersink, in degrees, 30 to 150. */
  readonly countersinkAngleDeg: number;
  /** Diameter of the hole that the countersink meets, mm: up to that of head and countersink. */
  readonly holeDiameterMm: number;
}

export interface HeadBelowFace {
  /** From the face down to the top of the head, mm; negative where the head stands proud. */
  readonly headBelowFaceMm: number;
}

/**
 * How far a head lies below the face, or stands proud of it, in a countersink that may have another angle than the head.
 * A head of a narrower angle bears on the edge of the hole, one of a wider angle on its rim. The head is reckoned to its
 * sharp edge: one whose rim is blunt lies no higher than said, and in a narrower countersink a little lower.
 *
 * @returns Depth of the head's top in mm; negative where it stands proud.
 * @throws RangeError where an input is outside its limits, or the hole is wider than the head or the countersink.
 * Source: two cones that touch; the woodworking article that is cited says where they do.
 * @example
 * ```ts
 * import { headBelowFace } from '@scantling/fastening';
 * const hole = { countersinkDiameterMm: 10, countersinkAngleDeg: 90, holeDiameterMm: 5 };
 * headBelowFace({ ...hole, headDiameterMm: 9, headAngleDeg: 90 }).headBelowFaceMm // => 0.5
 * // An 82° head of the countersink's own diameter stands proud in 90°
 * headBelowFace({ ...hole, headDiameterMm: 10, headAngleDeg: 82 }).headBelowFaceMm // => -0.376
 * ```
 */
export function headBelowFace(input: HeadBelowFaceInput): HeadBelowFace {
  const { headDiameterMm, headAngleDeg, countersinkDiameterMm, countersinkAngleDeg, holeDiameterMm } =
    input ?? {};
  const rimMm = Math.min(headDiameterMm, countersinkDiameterMm);
  requireInputs('headBelowFace', input, { ...limits, holeDiameterMm: { min: 0, max: rimMm } });
  const height = (differenceMm: number, angleDeg: number) =>
    differenceMm / 2 / Math.tan((angleDeg * Math.PI) / 360);
  // If they touch where both are so wide; they do where that is highest, at one end of the cone that both have.
  const touchingAt = (diameterMm: number) =>
    height(countersinkDiameterMm - diameterMm, countersinkAngleDeg) -
    height(headDiameterMm - diameterMm, headAngleDeg);
  return { headBelowFaceMm: plusZero(Math.min(touchingAt(rimMm), touchingAt(holeDiameterMm))) };
}

export const headBelowFaceRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/head-below-face',
  title: 'Where a head comes to lie',
  summary:
    'How far a countersunk head lies below the face or stands proud of it, also in a countersink of another angle.',
  basis: 'derived',
  inputs: {
    headDiameterMm: {
      kind: 'number',
      label: 'Head to its sharp edge',
      unit: 'mm',
      ...diameter,
      help: 'To its sharp edge, where its cone would end; the edge as made is narrower.',
    },
    headAngleDeg: {
      kind: 'number',
      label: 'Angle of the head',
      unit: '°',
      ...angle,
      help: '82° for inch screws, 90° for metric ones.',
    },
    countersinkDiameterMm: { kind: 'number', label: 'Countersink at the face', unit: 'mm', ...diameter },
    countersinkAngleDeg: { kind: 'number', label: 'Angle of the countersink', unit: '°', ...angle },
    holeDiameterMm: {
      kind: 'number',
      label: 'Hole',
      unit: 'mm',
      ...diameter,
      help: 'That the countersink meets.',
    },
  },
  outputs: {
    headBelowFaceMm: {
      label: 'Head below the face',
      unit: 'mm',
      help: 'Negative where the head stands proud.',
    },
  },
  compute: headBelowFace,
  formula: String.raw`\begin{aligned}
b &= \min(b_m, b_d), \qquad m = \min(A, D) \\
b_m &= \frac{D - m}{2 \tan(\gamma / 2)} - \frac{A - m}{2 \tan(\alpha / 2)} \\
b_d &= \frac{D - d}{2 \tan(\gamma / 2)} - \frac{A - d}{2 \tan(\alpha / 2)}
\end{aligned}`,
  symbols: {
    b: 'head below the face',
    'b_m, b_d': 'the same, if head and countersink touch at the rim, or at the hole, mm',
    m: 'the rim: the smaller of head and countersink, mm',
    A: 'head to its sharp edge',
    '\\alpha': 'angle of the head',
    D: 'countersink at the face',
    '\\gamma': 'angle of the countersink',
    d: 'hole',
  },
  inSymbols: (input, output) => {
    const { headDiameterMm, headAngleDeg, countersinkDiameterMm, countersinkAngleDeg, holeDiameterMm } =
      input;
    const rimMm = Math.min(headDiameterMm, countersinkDiameterMm);
    const slope = (angleDeg: number) => 2 * Math.tan((angleDeg * Math.PI) / 360);
    const touchingAt = (diameterMm: number) =>
      (countersinkDiameterMm - diameterMm) / slope(countersinkAngleDeg) -
      (headDiameterMm - diameterMm) / slope(headAngleDeg);
    return {
      b: output.headBelowFaceMm,
      b_m: touchingAt(rimMm),
      b_d: touchingAt(holeDiameterMm),
      m: rimMm,
      A: headDiameterMm,
      '\\alpha': headAngleDeg,
      D: countersinkDiameterMm,
      '\\gamma': countersinkAngleDeg,
      d: holeDiameterMm,
    };
  },
  requires: [
    {
      says: 'The hole is no wider than the head and the countersink.',
      holds: ({ headDiameterMm, countersinkDiameterMm, holeDiameterMm }) =>
        holeDiameterMm <= headDiameterMm && holeDiameterMm <= countersinkDiameterMm,
    },
  ],
  sources: [
    {
      source: countersinkOptions2010,
      at: 'an 82° head in a 90° countersink bears at the very bottom of the head, and is not supported at its sides',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: {
        headDiameterMm: 9,
        headAngleDeg: 90,
        countersinkDiameterMm: 10,
        countersinkAngleDeg: 90,
        holeDiameterMm: 5,
      },
      expect: { headBelowFaceMm: '0.500' },
      from: { workedByHand: 'half of 90° is 45°, whose tangent is 1; (10 − 9) / 2 / 1 = 0.500 mm' },
    },
    {
      given: {
        headDiameterMm: 10,
        headAngleDeg: 82,
        countersinkDiameterMm: 10,
        countersinkAngleDeg: 90,
        holeDiameterMm: 5,
      },
      expect: { headBelowFaceMm: '-0.376' },
      from: {
        workedByHand:
          'it bears on the edge of the hole, (10 − 5) / 2 / tan(45°) = 2.500 mm deep; the head is (10 − 5) / 2 / tan(41°) = 2.876 mm high above it; 2.500 − 2.876 = −0.376 mm',
      },
    },
    {
      given: {
        headDiameterMm: 10,
        headAngleDeg: 90,
        countersinkDiameterMm: 11,
        countersinkAngleDeg: 82,
        holeDiameterMm: 5,
      },
      expect: { headBelowFaceMm: '0.575' },
      from: { workedByHand: 'it bears on its rim; (11 − 10) / 2 / tan(41°) = 0.575 mm' },
    },
    {
      given: {
        headDiameterMm: 10,
        headAngleDeg: 90,
        countersinkDiameterMm: 9,
        countersinkAngleDeg: 82,
        holeDiameterMm: 5,
      },
      expect: { headBelowFaceMm: '-0.500' },
      from: {
        workedByHand: 'it bears on the edge of the countersink; (9 − 10) / 2 / tan(45°) = −0.500 mm',
      },
    },
  ],
  laws: [
    {
      of: 'headBelowFaceMm',
      by: {
        headDiameterMm: 'decreasing',
        headAngleDeg: 'increasing',
        countersinkDiameterMm: 'increasing',
        countersinkAngleDeg: 'decreasing',
      },
    },
  ],
  cautions: [measureTheHead, tryOnAnOffcut, drillingCare],
}));
