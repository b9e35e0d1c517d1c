import { defineRule, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { iso2861, toleranceGradeFormulas, toleranceGradeTable2007 } from '@scantling/rules/sources';

const size = { min: 1, max: 500 } as const;
const limits = { overMm: size, upToMm: size } as const;

/** How many times the factor each grade is. */
const factors = {
  IT6: 10,
  IT7: 16,
  IT8: 25,
  IT9: 40,
  IT10: 64,
  IT11: 100,
  IT12: 160,
  IT13: 250,
  IT14: 400,
  IT15: 640,
  IT16: 1000,
  IT17: 1600,
  IT18: 2500,
} as const;

/** A grade of standard tolerances, as ISO 286 writes it. */
export type ToleranceGrade = keyof typeof factors;

export interface StandardToleranceInput {
  /** Where the step of nominal sizes begins, mm, 1 to 500; for sizes up to 3 mm the standard takes 1. */
  readonly overMm: number;
  /** Where the step of nominal sizes ends, mm, 1 to 500. */
  readonly upToMm: number;
  /** Grade, `'IT6'` to `'IT18'`: H7 is a hole of IT7. */
  readonly grade: ToleranceGrade;
}

export interface StandardTolerance {
  /** Standard tolerance factor *i*, µm. */
  readonly factorUm: number;
  /** Width of the tolerance, µm, before the rounding that a table shows. */
  readonly toleranceUm: number;
}

/**
 * How wide a tolerance of a given grade is for a step of nominal sizes, by the formula behind the tables of ISO 286.
 * A table rounds: to 1 µm where the tolerance is small, to 5 or 10 µm where it is large, and in a few cells upwards.
 *
 * @returns Factor and width, µm.
 * @throws RangeError where an input is outside its limits, or the step has no size.
 * Source: ISO 286-1:1988, annex A.3 (identical with IS 919), as an engineering reference site quotes it.
 * @example
 * ```ts
 * import { standardTolerance } from '@scantling/grids';
 * // IT7 for 18 to 30 mm: the tables print 21 µm
 * standardTolerance({ overMm: 18, upToMm: 30, grade: 'IT7' }) // => { factorUm: 1.307, toleranceUm: 20.92 }
 * standardTolerance({ overMm: 30, upToMm: 18, grade: 'IT7' }) // throws standardTolerance requires upToMm above overMm, got 18 and 30
 * ```
 */
export function standardTolerance(input: StandardToleranceInput): StandardTolerance {
  requireInputs('standardTolerance', input, limits);
  const { overMm, upToMm, grade } = input;
  requireChoice('standardTolerance', 'grade', grade, Object.keys(factors));
  requireThat('standardTolerance', upToMm > overMm, `upToMm above overMm, got ${upToMm} and ${overMm}`);
  const meanMm = Math.sqrt(overMm * upToMm);
  const factorUm = 0.45 * Math.cbrt(meanMm) + 0.001 * meanMm;
  return { factorUm, toleranceUm: factorUm * factors[grade] };
}

export const standardToleranceRule = /* @__PURE__ */ defineRule<StandardToleranceInput, StandardTolerance>(
  () => ({
    id: 'grids/standard-tolerance',
    title: 'Width of a standard tolerance',
    summary:
      'How wide a tolerance of an ISO 286 grade is for a step of nominal sizes, by the formula behind the tables.',
    basis: 'convention',
    inputs: {
      overMm: {
        kind: 'number',
        label: 'Step of sizes, over',
        unit: 'mm',
        ...limits.overMm,
        help: 'For sizes up to 3 mm the standard takes 1 mm.',
      },
      upToMm: { kind: 'number', label: 'Step of sizes, up to', unit: 'mm', ...limits.upToMm },
      grade: {
        kind: 'choice',
        label: 'Tolerance grade',
        options: Object.fromEntries(Object.keys(factors).map((grade) => [grade, grade])) as Record<
          ToleranceGrade,
          string
        >,
        help: 'H7 is a hole of IT7.',
      },
    },
    outputs: {
      factorUm: { label: 'Standard tolerance factor', unit: 'µm' },
      toleranceUm: {
        label: 'Width of the tolerance',
        unit: 'µm',
        help: 'Before the rounding that a table shows.',
      },
    },
    compute: standardTolerance,
    formula: String.raw`D = \sqrt{D_1 D_2} \qquad i = 0.45 \sqrt[3]{D} + 0.001 \, D \qquad T = k \, i`,
    symbols: {
      'D_1, D_2': 'ends of the step of nominal sizes, mm',
      i: 'standard tolerance factor, µm',
      k: '10, 16, 25, 40, 64 for IT6 to IT10, and ten times as much five grades on',
      T: 'width of the tolerance',
    },
    requires: [
      { says: 'The step ends above its beginning.', holds: ({ overMm, upToMm }) => upToMm > overMm },
    ],
    sources: [
      {
        source: toleranceGradeFormulas,
        at: 'formula for grades IT5 to IT18, and that it is multiplied by 10 at each fifth grade',
        confirmed: 'text',
        tier: 'reprint',
      },
      {
        source: iso2861,
        at: 'annex A.3.2: the geometrical mean of a step, 1 to 3 mm for the first',
        confirmed: 'text',
      },
    ],
    examples: [
      {
        given: { overMm: 30, upToMm: 50, grade: 'IT9' },
        expect: { toleranceUm: '62' },
        from: { source: toleranceGradeTable2007, at: 'IT9, over 30 to 50 mm', confirmed: 'text' },
      },
      {
        given: { overMm: 18, upToMm: 30, grade: 'IT10' },
        expect: { toleranceUm: '84' },
        from: { source: toleranceGradeTable2007, at: 'IT10, over 18 to 30 mm', confirmed: 'text' },
      },
      {
        given: { overMm: 18, upToMm: 30, grade: 'IT12' },
        expect: { factorUm: '1.3074', toleranceUm: '209.18' },
        from: {
          workedByHand:
            '√(18 × 30) = 23.2379; 23.2379^(1/3) = 2.85364; 0.45 × 2.85364 + 0.001 × 23.2379 = 1.30738, ' +
            'to four decimals 1.3074; 160 × 1.30738 = 209.18',
        },
      },
    ],
    laws: [
      { of: 'toleranceUm', by: { overMm: 'increasing', upToMm: 'increasing' } },
      { of: 'factorUm', by: { overMm: 'increasing', upToMm: 'increasing' } },
    ],
  }),
);
