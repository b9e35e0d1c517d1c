import { defineRule, requireInputs } from '@scantling/rules';
import { iso7721 } from '@scantling/rules/sources';
import { drillingCare, measureTheHead, tryOnAnOffcut } from '../cautions.ts';

const length = { min: 0, max: 100 } as const;
const limits = {
  headDiameterMm: length,
  includedAngleDeg: { min: 30, max: 150 },
  stripThicknessMm: length,
  headBelowFaceMm: length,
} as const;

export interface HeadThroughStripInput {
  /** Diameter of the head to its sharp edge, mm, 0 to 100: `sharpHeadDiameter` where only the edge as made is known. */
  readonly headDiameterMm: number;
  /** Diameter where the head ends, mm: 0 to the head's. */
  readonly shankDiameterMm: number;
  /** Angle of head and countersink, in degrees, 30 to 150. */
  readonly includedAngleDeg: number;
  /** Thickness of the strip, mm, 0 to 100. */
  readonly stripThicknessMm: number;
  /** How far the head lies below the face of the strip, mm, 0 to 100: 0 is flush. */
  readonly headBelowFaceMm: number;
}

export interface HeadThroughStrip {
  /** From the face of the strip to the end of the head, mm. */
  readonly headReachMm: number;
  /** How deep to countersink the wood beneath the strip, mm; 0 where the head ends within the strip. */
  readonly belowStripMm: number;
  /** Diameter of the cone at the underside of the strip and of the countersink in the wood, mm; `null` where none is wanted. */
  readonly undersideDiameterMm: number | null;
}

/**
 * Whether a countersunk head finds room in a strip of metal or must be let into the wood beneath as well, and how: head
 * and countersink are one cone that goes on below a thin strip. How wide it is at the face says `countersinkDiameter`.
 *
 * @returns How deep the head reaches, how much of it is left for the wood, and how wide the cone is there, in mm. Where
 * something is left for the wood and is not countersunk the head stands proud or bends the strip.
 * @throws RangeError where an input is outside its limits, or the shank is wider than the head.
 * Source: the tangent in half of the cone; head heights by ISO 7721.
 * @example
 * ```ts
 * import { headThroughStrip } from '@scantling/fastening';
 * const screw = { headDiameterMm: 8, shankDiameterMm: 4, includedAngleDeg: 90, headBelowFaceMm: 0 };
 * headThroughStrip({ ...screw, stripThicknessMm: 3 }) // => { headReachMm: 2, belowStripMm: 0, undersideDiameterMm: null }
 * headThroughStrip({ ...screw, stripThicknessMm: 1.5 }) // => { headReachMm: 2, belowStripMm: 0.5, undersideDiameterMm: 5 }
 * ```
 */
export function headThroughStrip(input: HeadThroughStripInput): HeadThroughStrip {
  const { headDiameterMm, shankDiameterMm, includedAngleDeg, stripThicknessMm, headBelowFaceMm } =
    input ?? {};
  const shankDiameter = { min: 0, max: headDiameterMm };
  requireInputs('headThroughStrip', input, { ...limits, shankDiameterMm: shankDiameter });
  const slope = 2 * Math.tan((includedAngleDeg * Math.PI) / 360);
  const headReachMm = headBelowFaceMm + (headDiameterMm - shankDiameterMm) / slope;
  const beyondMm = headReachMm - stripThicknessMm;
  // A head that ends at the underside may, for rounding, seem to reach a hair further.
  const belowStripMm = beyondMm > 1e-9 ? beyondMm : 0;
  return {
    headReachMm,
    belowStripMm,
    undersideDiameterMm: belowStripMm ? shankDiameterMm + belowStripMm * slope : null,
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
      label: 'Head to its sharp edge',
      unit: 'mm',
      ...limits.headDiameterMm,
      help: 'To its sharp edge, where its cone would end; the edge as made is narrower, and would hide that the head reaches the wood.',
    },
    shankDiameterMm: {
      kind: 'number',
      label: 'Shank diameter',
      unit: 'mm',
      ...length,
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
    headBelowFaceMm: {
      kind: 'number',
      label: 'Head below the face',
      unit: 'mm',
      ...limits.headBelowFaceMm,
      help: 'Of the strip; 0 is flush.',
    },
  },
  outputs: {
    headReachMm: { label: 'End of the head', unit: 'mm', help: 'From the face of the strip.' },
    belowStripMm: {
      label: 'Countersink in the wood',
      unit: 'mm',
      help: 'Its depth; 0 where the head ends within the strip.',
    },
    undersideDiameterMm: {
      label: 'Cone at the underside of the strip',
      unit: 'mm',
      help: 'And of the countersink in the wood; nothing where the head ends within the strip.',
    },
  },
  compute: headThroughStrip,
  formula: String.raw`\begin{aligned}
r &= b + \frac{A - d}{2 \tan(\theta / 2)} \\
w &= \max(0,\ r - s) \\
u &= d + 2\,w \tan(\theta / 2)
\end{aligned}`,
  symbols: {
    A: 'head to its sharp edge',
    b: 'head below the face',
    '\\theta': 'angle of the cone',
    r: 'from the face to the end of the head',
    d: 'shank diameter',
    w: 'countersink in the wood, its depth',
    s: 'strip thickness',
    u: 'cone at the underside of the strip, where w is more than 0',
  },
  inSymbols: (input, output) => ({
    A: input.headDiameterMm,
    b: input.headBelowFaceMm,
    '\\theta': input.includedAngleDeg,
    r: output.headReachMm,
    d: input.shankDiameterMm,
    w: output.belowStripMm,
    s: input.stripThicknessMm,
    ...(output.undersideDiameterMm !== null && { u: output.undersideDiameterMm }),
  }),
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
        headBelowFaceMm: 0,
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
        headBelowFaceMm: 0.2,
      },
      expect: {
        headReachMm: '2.616',
        belowStripMm: '0.616',
        undersideDiameterMm: '5.271',
      },
      from: {
        workedByHand:
          'half of 82° is 41°; 0.2 + (8.4 − 4.2) / 2 / tan(41°) = 2.616 mm; 2.616 − 2 = 0.616 mm; 4.2 + 2 × 0.616 × tan(41°) = 5.271 mm',
      },
    },
    {
      given: {
        headDiameterMm: 8,
        shankDiameterMm: 4,
        includedAngleDeg: 90,
        stripThicknessMm: 3,
        headBelowFaceMm: 0.5,
      },
      expect: { headReachMm: '2.50', belowStripMm: '0' },
      from: {
        workedByHand:
          'half of 90° is 45°, whose tangent is 1; 0.5 + (8 − 4) / 2 / 1 = 2.50 mm, which is less than 3: 0 mm is left for the wood',
      },
    },
  ],
  laws: [
    {
      of: 'headReachMm',
      by: { headDiameterMm: 'linear', shankDiameterMm: 'linear', headBelowFaceMm: 'linear' },
    },
    {
      of: 'belowStripMm',
      by: {
        headDiameterMm: 'increasing',
        shankDiameterMm: 'decreasing',
        includedAngleDeg: 'decreasing',
        stripThicknessMm: 'decreasing',
        headBelowFaceMm: 'increasing',
      },
    },
    {
      of: 'undersideDiameterMm',
      by: { headDiameterMm: 'increasing', stripThicknessMm: 'decreasing', headBelowFaceMm: 'increasing' },
    },
  ],
  cautions: [measureTheHead, tryOnAnOffcut, drillingCare],
}));
