import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { instructorTrainingDrawing, iso2862, toleranceGradeFormulas } from '@scantling/rules/sources';
import { iso2862LimitDeviations } from '../data/iso-286-2--limit-deviations.generated.ts';
import type { HoleClass, ShaftClass } from '../rows.ts';
import { standardTolerance, type ToleranceGrade } from './standard-tolerance.ts';

const limits = { nominalMm: { min: 0, max: 500 } } as const;

export interface LimitsOfSizeInput {
  /** Nominal size, mm, 0 to 500. The table has over 3 to 30. */
  readonly nominalMm: number;
  /** Tolerance class: a capital letter for a hole, a small one for a shaft. */
  readonly toleranceClass: HoleClass | ShaftClass;
}

export interface LimitsOfSize {
  /** Smallest size allowed, mm; `null` where the table has no row. */
  readonly lowerLimitMm: number | null;
  /** Largest size allowed, mm; `null` where the table has no row. */
  readonly upperLimitMm: number | null;
}

/**
 * The smallest and the largest size that a tolerance class allows: 20 H7 is a hole of 20.000 to 20.021 mm. Only what
 * the table holds is known; any other nominal size gives `null`.
 *
 * @returns Both limits, mm.
 * @throws RangeError where an input is outside its limits, or the class is none of the table's.
 * Source: ISO 286-2, limit deviations, as reprinted; the rows of g6 are recalled.
 * @example
 * ```ts
 * import { limitsOfSize } from '@scantling/grids';
 * limitsOfSize({ nominalMm: 20, toleranceClass: 'H7' }) // => { lowerLimitMm: 20, upperLimitMm: 20.021 }
 * limitsOfSize({ nominalMm: 20, toleranceClass: 'g6' }) // => { lowerLimitMm: 19.98, upperLimitMm: 19.993 }
 * limitsOfSize({ nominalMm: 31, toleranceClass: 'H7' }) // => { lowerLimitMm: null, upperLimitMm: null }
 * ```
 */
export function limitsOfSize(input: LimitsOfSizeInput): LimitsOfSize {
  requireInputs('limitsOfSize', input, limits);
  const { nominalMm, toleranceClass } = input;
  requireChoice(
    'limitsOfSize',
    'toleranceClass',
    toleranceClass,
    iso2862LimitDeviations.map((row) => row.toleranceClass),
  );
  const row = iso2862LimitDeviations.find(
    (one) => one.toleranceClass === toleranceClass && nominalMm > one.overMm && nominalMm <= one.upToMm,
  );
  if (!row) return { lowerLimitMm: null, upperLimitMm: null };
  return {
    lowerLimitMm: nominalMm + row.lowerDeviationUm / 1000,
    upperLimitMm: nominalMm + row.upperDeviationUm / 1000,
  };
}

/** The upper limit as the lower one and the width that the formula gives for the grade. */
function upperByFormula(input: LimitsOfSizeInput): number {
  const step = iso2862LimitDeviations.find(
    ({ overMm, upToMm }) => input.nominalMm > overMm && input.nominalMm <= upToMm,
  );
  const { lowerLimitMm } = limitsOfSize(input);
  if (!step || lowerLimitMm === null) return Number.NaN;
  const grade = `IT${input.toleranceClass.slice(1)}` as ToleranceGrade;
  return lowerLimitMm + standardTolerance({ ...step, grade }).toleranceUm / 1000;
}

export const limitsOfSizeRule = /* @__PURE__ */ defineRule<LimitsOfSizeInput, LimitsOfSize>(() => ({
  id: 'grids/limits-of-size',
  title: 'Limits of size',
  summary: 'The smallest and the largest hole or pin that a tolerance class of ISO 286 allows.',
  basis: 'convention',
  inputs: {
    nominalMm: {
      kind: 'number',
      label: 'Nominal size',
      unit: 'mm',
      ...limits.nominalMm,
      help: 'The table has sizes over 3, up to 30 mm.',
    },
    toleranceClass: {
      kind: 'choice',
      label: 'Tolerance class',
      options: {
        H7: 'hole H7',
        H8: 'hole H8',
        H11: 'hole H11',
        H13: 'hole H13',
        h6: 'shaft h6',
        g6: 'shaft g6',
      },
    },
  },
  outputs: {
    lowerLimitMm: { label: 'Lower limit of size', unit: 'mm' },
    upperLimitMm: { label: 'Upper limit of size', unit: 'mm' },
  },
  compute: limitsOfSize,
  formula: String.raw`D_{\min} = D + EI \qquad D_{\max} = D + ES`,
  symbols: { D: 'nominal size', EI: 'lower limit deviation', ES: 'upper limit deviation' },
  sources: [
    {
      source: iso2862,
      at: 'limit deviations of H7, H8, H11, H13 and h6, over 3 to 30 mm',
      confirmed: 'text',
      tier: 'reprint',
      erratum: 'For h6 over 18 to 30 mm one reprint gives −30 µm, taken for a misprint of −13 µm.',
    },
    { source: iso2862, at: 'limit deviations of g6, over 3 to 30 mm', confirmed: 'memory' },
  ],
  examples: [
    {
      given: { nominalMm: 20, toleranceClass: 'H7' },
      expect: { lowerLimitMm: '20.000', upperLimitMm: '20.021' },
      from: { source: instructorTrainingDrawing, at: 'p. 218: limits of the hole 20 H7', confirmed: 'text' },
    },
    {
      given: { nominalMm: 20, toleranceClass: 'g6' },
      expect: { lowerLimitMm: '19.980', upperLimitMm: '19.993' },
      from: { source: instructorTrainingDrawing, at: 'p. 219: limits of the shaft 20 g6', confirmed: 'text' },
    },
    {
      given: { nominalMm: 25, toleranceClass: 'H7' },
      expect: { lowerLimitMm: '25.000', upperLimitMm: '25.021' },
      from: { source: instructorTrainingDrawing, at: 'p. 220: limits of the hole 25 H7', confirmed: 'text' },
    },
  ],
  peers: [
    {
      name: 'the lower limit and the width by formula',
      of: 'upperLimitMm',
      compute: upperByFormula,
      // The table prints 220 µm for H13 over 6 to 10 mm, where the formula gives 224.5.
      absolute: 0.0046,
      over: { nominalMm: [3, 30] },
      source: {
        source: toleranceGradeFormulas,
        at: 'formula for grades IT5 to IT18',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
  ],
}));
