import { defineRule, requireInputs } from '@scantling/rules';
import { woodHandbook2010, woodHandbook2021 } from '@scantling/rules/sources';
import { betweenRows, rowsAround } from '../between-rows.ts';
import { notStructuralDesign } from '../cautions.ts';
import { shankInput } from '../withdrawal-terms.ts';

const limits = { shankDiameterMm: { min: 1, max: 50 } } as const;

/** Diameter of the shank in mm, and its factor. */
const factors = [
  [4.8, 1],
  [6.4, 0.97],
  [7.9, 0.85],
  [9.5, 0.76],
  [11.1, 0.7],
  [12.7, 0.65],
  [15.9, 0.6],
  [19, 0.55],
  [22.2, 0.52],
  [25.4, 0.5],
] as const;

export interface LagScrewAcrossGrainFactorInput {
  /** Diameter of the shank, mm, 1 to 50. */
  readonly shankDiameterMm: number;
}

export interface LagScrewAcrossGrainFactor {
  /** What the test value along the grain is multiplied by; `null` where the table has no such diameter. */
  readonly factorRatio: number | null;
}

/**
 * What the sideways test value of a lag screw in side grain is multiplied by where the force goes across the grain.
 * Between the rows of the table a straight line is taken.
 *
 * @returns The factor; `null` below 4.8 mm and above 25.4 mm.
 * @throws RangeError where the diameter is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Table 8-11.
 * @example
 * ```ts
 * import { lagScrewAcrossGrainFactor } from '@scantling/fastening';
 * lagScrewAcrossGrainFactor({ shankDiameterMm: 9.5 }) // => { factorRatio: 0.76 }
 * lagScrewAcrossGrainFactor({ shankDiameterMm: 30 }) // => { factorRatio: null }
 * ```
 */
export function lagScrewAcrossGrainFactor(input: LagScrewAcrossGrainFactorInput): LagScrewAcrossGrainFactor {
  requireInputs('lagScrewAcrossGrainFactor', input, limits);
  return { factorRatio: betweenRows(factors, input.shankDiameterMm) };
}

export const lagScrewAcrossGrainFactorRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/lag-screw-across-grain-factor',
  title: 'Lag screw pushed sideways: across the grain',
  summary:
    'What the sideways test value of a lag screw is multiplied by where the force goes across the grain.',
  basis: 'measured',
  inputs: { shankDiameterMm: shankInput(limits.shankDiameterMm) },
  outputs: { factorRatio: { label: 'Factor', unit: '1' } },
  compute: lagScrewAcrossGrainFactor,
  formula: String.raw`c = c_1 + (c_2 - c_1) \, \frac{D - D_1}{D_2 - D_1}`,
  symbols: {
    c: 'factor: 1 at 4.8 mm, 0.5 at 25.4 mm',
    D: 'shank diameter, mm',
    'D_1, D_2': 'diameters of the rows of the table around it, mm',
    'c_1, c_2': 'their factors',
  },
  inSymbols: ({ shankDiameterMm }, { factorRatio }) => {
    const [rows] = rowsAround(factors, shankDiameterMm);
    if (!rows || factorRatio === null) return { D: shankDiameterMm };
    const [before, after] = rows;
    return {
      c: factorRatio,
      D: shankDiameterMm,
      D_1: before[0],
      D_2: after[0],
      c_1: before[1],
      c_2: after[1],
    };
  },
  valid: { shankDiameterMm: [4.8, 25.4] },
  sources: [
    { source: woodHandbook2010, at: 'Table 8-11 up to 5/8 in', confirmed: 'text' },
    {
      source: woodHandbook2021,
      at: 'Table 8-11, p. 8-13: the same, and up to 25.4 mm',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: (
    [
      [4.8, '1.00'],
      [6.4, '0.97'],
      [7.9, '0.85'],
      [9.5, '0.76'],
      [11.1, '0.70'],
      [12.7, '0.65'],
      [15.9, '0.60'],
      [19, '0.55'],
      [22.2, '0.52'],
      [25.4, '0.50'],
    ] as const
  ).map(([shankDiameterMm, printed]) => ({
    given: { shankDiameterMm },
    expect: { factorRatio: printed },
    from: {
      source: woodHandbook2021,
      at: `Table 8-11, ${shankDiameterMm} mm`,
      confirmed: 'text' as const,
      tier: 'reprint' as const,
    },
  })),
  laws: [{ of: 'factorRatio', by: { shankDiameterMm: 'decreasing' } }],
  cautions: [notStructuralDesign],
}));
