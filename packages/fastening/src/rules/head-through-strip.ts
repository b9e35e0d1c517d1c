import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { iso7721 } from '@scantling/rules/sources';
import { drillingCare, measureTheHead, tryOnAnOffcut } from '../cautions.ts';

const limits = {
  headDiameterMm: { min: 0, max: 100 },
  shankDiameterMm: { min: 0, max: 100 },
  includedAngleDeg: { min: 30, max: 150 },
  stripThicknessMm: { min: 0, max: 100 },
  belowFaceMm: { min: 0, max: 50 },
} as const;

export interface HeadThroughStripInput {
  /** Diameter of the head, mm, 0 to 100. */
  readonly headDiameterMm: number;
  /** Diameter where the head ends, mm: 0 to the head's. */
  readonly shankDiameterMm: number;
  /** Angle of head and countersink, in degrees, 30 to 150. */
  readonly includedAngleDeg: number;
  /** Thickness of the strip, mm, 0 to 100. */
  readonly stripThicknessMm: number;
  /** How far the head lies below the face of the strip, mm, 0 to 50: 0 is flush. */
  readonly belowFaceMm: number;
}

export interface HeadThroughStrip {
  /** Diameter of the countersink at the face of the strip, mm. */
  readonly countersinkDiameterMm: number;
  /** From the face of the strip to the end of the head, mm. */
  readonly headReachMm: number;
  /** How deep to countersink the wood beneath the strip, mm; 0 where the head ends within the strip. */
  readonly belowStripMm: number;
  /** Diameter of the hole at the underside of the strip, mm, and of the countersink in the wood where it wants one. */
  readonly undersideDiameterMm: number;
}

/**
 * Whether a countersunk head finds room in a strip of metal or must be let into the wood beneath as well, and how: head
 * and countersink are one cone that goes on below a thin strip.
 *
 * @returns Countersink at the face, how deep the head reaches, how much of it is left for the wood, and the hole at the
 * underside, in mm. Where something is left for the wood, drill it out or the strip lifts.
 * @throws RangeError where an input is outside its limits, or the shank is wider than the head.
 * Source: the tangent in half of the cone; head heights by ISO 7721.
 * @example
 * ```ts
 * import { headThroughStrip } from '@scantling/fastening';
 * const screw = { headDiameterMm: 8, shankDiameterMm: 4, includedAngleDeg: 90, belowFaceMm: 0 };
 * headThroughStrip({ ...screw, stripThicknessMm: 3 }) // => { countersinkDiameterMm: 8, headReachMm: 2, belowStripMm: 0, undersideDiameterMm: 4 }
 * headThroughStrip({ ...screw, stripThicknessMm: 1.5 }) // => { countersinkDiameterMm: 8, headReachMm: 2, belowStripMm: 0.5, undersideDiameterMm: 5 }
 * ```
 */
export function headThroughStrip(input: HeadThroughStripInput): HeadThroughStrip {
  requireInputs('headThroughStrip', input, limits);
  const { headDiameterMm, shankDiameterMm, includedAngleDeg, stripThicknessMm, belowFaceMm } = input;
  requireThat(
    'headThroughStrip',
    shankDiameterMm <= headDiameterMm,
    `shankDiameterMm up to headDiameterMm, got ${shankDiameterMm} and ${headDiameterMm}`,
  );
  const slope = 2 * Math.tan((includedAngleDeg * Math.PI) / 360);
  const countersinkDiameterMm = plusZero(headDiameterMm + belowFaceMm * slope);
  const headReachMm = plusZero((countersinkDiameterMm - shankDiameterMm) / slope);
  return {
    countersinkDiameterMm,
    headReachMm,
    belowStripMm: Math.max(0, headReachMm - stripThicknessMm),
    undersideDiameterMm: plusZero(
      Math.max(shankDiameterMm, countersinkDiameterMm - stripThicknessMm * slope),
    ),
  };
}

export const headThroughStripRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/head-through-strip',
  title: 'A countersunk head in a strip',
  summary:
    'Whether a countersunk head finds room in a strip or must be let into the wood beneath as well, how deep and how wide.',
  basis: 'derived',
  inputs: {
    headDiameterMm: {
      kind: 'number',
      label: 'Head diameter',
      unit: 'mm',
      ...limits.headDiameterMm,
      help: 'Over its edge as it is made; to a sharp edge to be sure.',
    },
    shankDiameterMm: {
      kind: 'number',
      label: 'Shank diameter',
      unit: 'mm',
      ...limits.shankDiameterMm,
      help: 'Where the head ends.',
    },
    includedAngleDeg: {
      kind: 'number',
      label: 'Angle of the cone',
      unit: '°',
      ...limits.includedAngleDeg,
      help: 'Of head and countersink: 82° for inch screws, 90° for metric ones.',
    },
    stripThicknessMm: { kind: 'number', label: 'Strip thickness', unit: 'mm', ...limits.stripThicknessMm },
    belowFaceMm: {
      kind: 'number',
      label: 'Head below the face',
      unit: 'mm',
      ...limits.belowFaceMm,
      help: 'Of the strip; 0 is flush.',
    },
  },
  outputs: {
    countersinkDiameterMm: { label: 'Countersink at the face', unit: 'mm' },
    headReachMm: { label: 'End of the head', unit: 'mm', help: 'From the face of the strip.' },
    belowStripMm: {
      label: 'Countersink in the wood',
      unit: 'mm',
      help: 'Its depth; 0 where the head ends within the strip.',
    },
    undersideDiameterMm: {
      label: 'Hole at the underside of the strip',
      unit: 'mm',
      help: 'And of the countersink in the wood, where it wants one.',
    },
  },
  compute: headThroughStrip,
  formula: String.raw`\begin{aligned}
D &= A + 2\,b \tan(\theta / 2), & r &= \frac{D - d}{2 \tan(\theta / 2)} \\
w &= \max(0,\ r - s), & u &= \max\bigl(d,\ D - 2\,s \tan(\theta / 2)\bigr)
\end{aligned}`,
  symbols: {
    D: 'countersink at the face',
    A: 'head diameter',
    b: 'head below the face',
    '\\theta': 'angle of the cone',
    r: 'from the face to the end of the head',
    d: 'shank diameter',
    w: 'countersink in the wood, its depth',
    s: 'strip thickness',
    u: 'hole at the underside of the strip',
  },
  requires: [
    {
      says: 'The shank is no wider than the head.',
      holds: ({ headDiameterMm, shankDiameterMm }) => shankDiameterMm <= headDiameterMm,
    },
  ],
  sources: [
    {
      source: iso7721,
      at: 'heads of 90°: a head is as high as half of what it is wider than its shank',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: {
        headDiameterMm: 10.4,
        shankDiameterMm: 5,
        includedAngleDeg: 90,
        stripThicknessMm: 3,
        belowFaceMm: 0,
      },
      expect: { headReachMm: '2.7' },
      from: { source: iso7721, at: 'M5: dk 10.4, k 2.7', confirmed: 'text', tier: 'reprint' },
    },
    {
      given: {
        headDiameterMm: 8.4,
        shankDiameterMm: 4.2,
        includedAngleDeg: 82,
        stripThicknessMm: 2,
        belowFaceMm: 0.2,
      },
      expect: {
        countersinkDiameterMm: '8.748',
        headReachMm: '2.616',
        belowStripMm: '0.616',
        undersideDiameterMm: '5.271',
      },
      from: {
        workedByHand:
          'half of 82° is 41°; 8.4 + 2 × 0.2 × tan(41°) = 8.748 mm; 0.2 + (8.4 − 4.2) / 2 / tan(41°) = 2.616 mm; 2.616 − 2 = 0.616 mm; 8.748 − 2 × 2 × tan(41°) = 5.271 mm',
      },
    },
    {
      given: {
        headDiameterMm: 8,
        shankDiameterMm: 4,
        includedAngleDeg: 90,
        stripThicknessMm: 3,
        belowFaceMm: 0.5,
      },
      expect: { headReachMm: '2.50', belowStripMm: '0', undersideDiameterMm: '4.00' },
      from: {
        workedByHand:
          'half of 90° is 45°, whose tangent is 1; 0.5 + (8 − 4) / 2 / 1 = 2.50 mm, which is less than 3: 0 mm is left for the wood, and the hole below the cone is 4.00 mm',
      },
    },
  ],
  laws: [
    { of: 'countersinkDiameterMm', by: { headDiameterMm: 'linear', belowFaceMm: 'linear' } },
    { of: 'headReachMm', by: { headDiameterMm: 'linear', shankDiameterMm: 'linear', belowFaceMm: 'linear' } },
    {
      of: 'belowStripMm',
      by: {
        headDiameterMm: 'increasing',
        shankDiameterMm: 'decreasing',
        includedAngleDeg: 'decreasing',
        stripThicknessMm: 'decreasing',
        belowFaceMm: 'increasing',
      },
    },
    {
      of: 'undersideDiameterMm',
      by: { headDiameterMm: 'increasing', stripThicknessMm: 'decreasing', belowFaceMm: 'increasing' },
    },
  ],
  cautions: [measureTheHead, tryOnAnOffcut, drillingCare],
}));
