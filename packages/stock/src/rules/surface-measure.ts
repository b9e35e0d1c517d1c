import { defineRule, requireInputs } from '@scantling/rules';
import { hardwoodMeasurementPage } from '@scantling/rules/sources';
import { askTheSeller } from '../cautions.ts';

const limits = {
  widthMm: { min: 1, max: 5000 },
  lengthMm: { min: 1, max: 30_000 },
} as const;

export interface SurfaceMeasureInput {
  /** Width, mm, 1 to 5000. */
  readonly widthMm: number;
  /** Length, mm, 1 to 30 000; what is over a whole foot does not count. */
  readonly lengthMm: number;
}

export interface SurfaceMeasure {
  /** Surface measure, ft², whole, a half taken up. */
  readonly surfaceFt2: number;
  /** The same with a half taken down: a tally takes halves up and down by turns. */
  readonly halfDownFt2: number;
}

/**
 * Surface measure of a hardwood board: what grading rules count by, and, times the thickness in inches, the board feet
 * that are paid for.
 *
 * @returns Square feet, whole, a half taken up and taken down.
 * @throws RangeError where an input is outside its limits.
 * Source: rules of the National Hardwood Lumber Association, as the American Hardwood Export Council states them.
 * @example
 * ```ts
 * import { surfaceMeasure } from '@scantling/stock';
 * // 6 1/4 in × 8 ft / 12 = 4 1/6
 * surfaceMeasure({ widthMm: 158.75, lengthMm: 2438.4 }) // => { surfaceFt2: 4, halfDownFt2: 4 }
 * ```
 */
export function surfaceMeasure(input: SurfaceMeasureInput): SurfaceMeasure {
  requireInputs('surfaceMeasure', input, limits);
  // Lengths come from inches and feet: what misses a whole or a half by less than rounding is one.
  const exactFt2 = (input.widthMm * Math.floor(input.lengthMm / 304.8 + 1e-9)) / 304.8;
  return { surfaceFt2: Math.round(exactFt2 + 1e-9), halfDownFt2: 0 - Math.round(1e-9 - exactFt2) };
}

export const surfaceMeasureRule = /* @__PURE__ */ defineRule(() => ({
  id: 'stock/surface-measure',
  title: 'Surface measure of a hardwood board',
  summary: 'The whole square feet that a hardwood board counts for when it is graded and sold.',
  basis: 'convention',
  inputs: {
    widthMm: { kind: 'number', label: 'Width', unit: 'mm', ...limits.widthMm },
    lengthMm: {
      kind: 'number',
      label: 'Length',
      unit: 'mm',
      ...limits.lengthMm,
      help: 'What is over a whole foot does not count.',
    },
  },
  outputs: {
    surfaceFt2: { label: 'Surface measure', unit: 'ft²' },
    halfDownFt2: {
      label: 'With a half taken down',
      unit: 'ft²',
      help: 'A tally takes halves up and down by turns.',
    },
  },
  compute: surfaceMeasure,
  formula: String.raw`M = \frac{W \lfloor L \rfloor}{12}, \qquad \mathit{SM} = \left\lfloor M + \tfrac{1}{2} \right\rfloor, \qquad H = \left\lceil M - \tfrac{1}{2} \right\rceil`,
  symbols: {
    M: 'before rounding, ft²',
    '\\mathit{SM}': 'surface measure',
    H: 'the same, halves taken down',
    W: 'width, in',
    L: 'length, ft, of which whole feet count',
  },
  inSymbols: (input, output) => {
    // Without what conversion leaves in the last digits, which would turn a whole foot into less.
    const tidy = (value: number) => Math.round(value * 1e9) / 1e9;
    const widthIn = tidy(input.widthMm / 25.4);
    const lengthFt = tidy(input.lengthMm / 304.8);
    return {
      M: tidy((widthIn * Math.floor(lengthFt)) / 12),
      '\\mathit{SM}': output.surfaceFt2,
      H: output.halfDownFt2,
      W: widthIn,
      L: lengthFt,
    };
  },
  sources: [
    {
      source: hardwoodMeasurementPage,
      at: 'surface measure; lengths rounded down to the whole foot',
      confirmed: 'text',
    },
    {
      source: hardwoodMeasurementPage,
      at: 'halves by turns: said there of widths, here from memory of surface measure',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { widthMm: 6.25 * 25.4, lengthMm: 8 * 304.8 },
      expect: { surfaceFt2: '4' },
      from: {
        source: hardwoodMeasurementPage,
        at: 'example: 6 1/4 in × 8 ft ÷ 12 = 4 1/6',
        confirmed: 'text',
      },
    },
    {
      given: { widthMm: 9 * 25.4, lengthMm: 10 * 304.8 },
      expect: { surfaceFt2: '8.0', halfDownFt2: '7.0' },
      from: { workedByHand: '9 × 10 / 12 = 7.5, a half; up it is 8, down 7' },
    },
  ],
  laws: [
    { of: 'surfaceFt2', by: { widthMm: 'increasing', lengthMm: 'increasing' } },
    { of: 'halfDownFt2', by: { widthMm: 'increasing', lengthMm: 'increasing' } },
  ],
  cautions: [askTheSeller],
}));
