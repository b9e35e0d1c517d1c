import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { routingCare, tryOnAnOffcut } from '../cautions.ts';

const tolerance = { min: 0, max: 5 };
const limits = {
  stripThicknessMm: { min: 0.5, max: 100 },
  stripWidthMm: { min: 1, max: 1000 },
  thicknessToleranceMm: tolerance,
  widthToleranceMm: tolerance,
  belowFaceMm: { min: 0, max: 20 },
  gapMm: { min: 0, max: 20 },
  wallCount: { min: 1, max: 2, integer: true },
} as const;

export interface StripRabbetInput {
  /** Nominal thickness of the strip, mm, 0.5 to 100. */
  readonly stripThicknessMm: number;
  /** Nominal width of the strip, mm, 1 to 1000. */
  readonly stripWidthMm: number;
  /** Most by which its thickness is off, either way, mm, 0 to 5. */
  readonly thicknessToleranceMm: number;
  /** Most by which its width is off, either way, mm, 0 to 5. */
  readonly widthToleranceMm: number;
  /** How far even the thickest strip lies below the face of the wood, mm, 0 (flush) to 20. */
  readonly belowFaceMm: number;
  /** Room between the widest strip and each wall on building day, mm, 0 to 20: see `fitStrip` of the movement package. */
  readonly gapMm: number;
  /** Walls beside the strip: 1 in a rabbet along an edge, 2 in a groove. */
  readonly wallCount: number;
}

export interface StripRabbet {
  /** Depth to cut, mm. */
  readonly depthMm: number;
  /** Width to cut, mm; in a rabbet even the widest strip then stays within the edge. */
  readonly widthMm: number;
  /** How far the thinnest strip lies below the face, mm: what is left to plane or scrape off the wood. */
  readonly mostBelowFaceMm: number;
  /** All the room beside the narrowest strip, mm. */
  readonly mostGapMm: number;
}

/**
 * How deep and how wide to cut the rabbet or groove for a strip that is let in, so that the thickest strip of its kind
 * does not stand proud and the widest still goes in.
 *
 * @returns Depth and width to cut, and how the thinnest and narrowest strip then lies, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: common practice, no source; the sizes are what has to go in.
 * @example
 * ```ts
 * import { stripRabbet } from '@scantling/fastening';
 * // A brass strip of 20 × 5 mm, each within 0.1 mm, flush, 0.2 mm to its one wall
 * const strip = { stripThicknessMm: 5, stripWidthMm: 20, thicknessToleranceMm: 0.1, widthToleranceMm: 0.1 };
 * stripRabbet({ ...strip, belowFaceMm: 0, gapMm: 0.2, wallCount: 1 }) // => { depthMm: 5.1, widthMm: 20.3, mostBelowFaceMm: 0.2, mostGapMm: 0.4 }
 * ```
 */
export function stripRabbet(input: StripRabbetInput): StripRabbet {
  requireInputs('stripRabbet', input, limits);
  const { thicknessToleranceMm, widthToleranceMm, belowFaceMm } = input;
  const gapsMm = input.gapMm * input.wallCount;
  return {
    depthMm: input.stripThicknessMm + thicknessToleranceMm + belowFaceMm,
    widthMm: input.stripWidthMm + widthToleranceMm + gapsMm,
    mostBelowFaceMm: plusZero(belowFaceMm + 2 * thicknessToleranceMm),
    mostGapMm: plusZero(gapsMm + 2 * widthToleranceMm),
  };
}

export const stripRabbetRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/strip-rabbet',
  title: 'Rabbet or groove for a strip',
  summary:
    'How deep and how wide to cut the recess for a strip that is let into wood, from the size of the strip and how far it may be off.',
  basis: 'convention',
  inputs: {
    stripThicknessMm: {
      kind: 'number',
      label: 'Thickness of the strip',
      unit: 'mm',
      ...limits.stripThicknessMm,
    },
    stripWidthMm: { kind: 'number', label: 'Width of the strip', unit: 'mm', ...limits.stripWidthMm },
    thicknessToleranceMm: {
      kind: 'number',
      label: 'Tolerance of its thickness',
      unit: 'mm',
      ...limits.thicknessToleranceMm,
      help: 'Most by which it is off, either way.',
    },
    widthToleranceMm: {
      kind: 'number',
      label: 'Tolerance of its width',
      unit: 'mm',
      ...limits.widthToleranceMm,
      help: 'Most by which it is off, either way.',
    },
    belowFaceMm: {
      kind: 'number',
      label: 'Below the face',
      unit: 'mm',
      ...limits.belowFaceMm,
      help: 'How far even the thickest strip lies below the face; 0 for flush.',
    },
    gapMm: {
      kind: 'number',
      label: 'Gap at each wall',
      unit: 'mm',
      ...limits.gapMm,
      help: 'On building day, beside the widest strip: at least what the metal outgrows the wood across its width.',
    },
    wallCount: {
      kind: 'number',
      label: 'Walls',
      unit: '1',
      ...limits.wallCount,
      help: '1 in a rabbet along an edge, 2 in a groove.',
    },
  },
  outputs: {
    depthMm: { label: 'Depth', unit: 'mm' },
    widthMm: { label: 'Width', unit: 'mm' },
    mostBelowFaceMm: {
      label: 'Thinnest strip below the face',
      unit: 'mm',
      help: 'To be planed or scraped off the wood, or packed up beneath the strip.',
    },
    mostGapMm: { label: 'Room beside the narrowest strip', unit: 'mm', help: 'All gaps together.' },
  },
  compute: stripRabbet,
  formula: String.raw`\begin{aligned}
D &= t + \delta_t + f, \qquad W = b + \delta_b + n g \\
f_{\mathrm{max}} &= f + 2\delta_t, \qquad g_{\mathrm{max}} = n g + 2\delta_b
\end{aligned}`,
  symbols: {
    'D, W': 'depth and width',
    't, b': 'thickness and width of the strip',
    '\\delta_t, \\delta_b': 'their tolerances',
    f: 'below the face',
    g: 'gap at each wall',
    n: 'walls: 1 in a rabbet, 2 in a groove',
    'f_{\\mathrm{max}}, g_{\\mathrm{max}}': 'thinnest strip below the face, and room beside the narrowest',
  },
  inSymbols: (input, output) => ({
    D: output.depthMm,
    W: output.widthMm,
    t: input.stripThicknessMm,
    b: input.stripWidthMm,
    '\\delta_t': input.thicknessToleranceMm,
    '\\delta_b': input.widthToleranceMm,
    f: input.belowFaceMm,
    g: input.gapMm,
    n: input.wallCount,
    'f_{\\mathrm{max}}': output.mostBelowFaceMm,
    'g_{\\mathrm{max}}': output.mostGapMm,
  }),
  sources: [],
  examples: [
    {
      given: {
        stripThicknessMm: 5,
        stripWidthMm: 20,
        thicknessToleranceMm: 0.1,
        widthToleranceMm: 0.15,
        belowFaceMm: 0.2,
        gapMm: 0.3,
        wallCount: 1,
      },
      expect: { depthMm: '5.30', widthMm: '20.45', mostBelowFaceMm: '0.40', mostGapMm: '0.60' },
      from: {
        workedByHand:
          '5 + 0.1 + 0.2 = 5.30 mm; 20 + 0.15 + 0.3 = 20.45 mm; 0.2 + 2 × 0.1 = 0.40 mm; 1 × 0.3 + 2 × 0.15 = 0.60 mm',
      },
    },
    {
      given: {
        stripThicknessMm: 3,
        stripWidthMm: 12,
        thicknessToleranceMm: 0.05,
        widthToleranceMm: 0.1,
        belowFaceMm: 0,
        gapMm: 0.25,
        wallCount: 2,
      },
      expect: { depthMm: '3.05', widthMm: '12.60', mostBelowFaceMm: '0.10', mostGapMm: '0.70' },
      from: {
        workedByHand:
          'Flush is 0 below the face: 3 + 0.05 = 3.05 mm; 12 + 0.1 + 2 × 0.25 = 12.60 mm; 2 × 0.05 = 0.10 mm; 2 × 0.25 + 2 × 0.1 = 0.70 mm',
      },
    },
  ],
  laws: [
    {
      of: 'depthMm',
      by: { stripThicknessMm: 'linear', thicknessToleranceMm: 'linear', belowFaceMm: 'linear' },
    },
    { of: 'widthMm', by: { stripWidthMm: 'linear', widthToleranceMm: 'linear', gapMm: 'linear' } },
    { of: 'mostBelowFaceMm', by: { thicknessToleranceMm: 'linear', belowFaceMm: 'linear' } },
    { of: 'mostGapMm', by: { widthToleranceMm: 'linear', gapMm: 'linear' } },
  ],
  cautions: [tryOnAnOffcut, routingCare],
}));
