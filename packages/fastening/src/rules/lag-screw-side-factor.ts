import { defineRule, requireInputs } from '@scantling/rules';
import { woodHandbook2010, woodHandbook2021 } from '@scantling/rules/sources';
import { betweenRows, rowsAround } from '../between-rows.ts';
import { notStructuralDesign } from '../cautions.ts';
import { shankInput } from '../withdrawal-terms.ts';

const limits = {
  sideMm: { min: 0, max: 200 },
  shankDiameterMm: { min: 4, max: 30 },
} as const;

/** Wood under the head in diameters of the shank, and its factor. */
const factors = [
  [2, 0.62],
  [2.5, 0.77],
  [3, 0.93],
  [3.5, 1],
  [4, 1.07],
  [4.5, 1.13],
  [5, 1.18],
  [5.5, 1.21],
  [6, 1.22],
  [6.5, 1.22],
] as const;

export interface LagScrewSideFactorInput {
  /** Thickness of the wood under the head, mm, 0 to 200. */
  readonly sideMm: number;
  /** Diameter of the shank, mm, 4 to 30. */
  readonly shankDiameterMm: number;
}

export interface LagScrewSideFactor {
  /** What the test value of a lag screw is multiplied by; `null` where the table has no such thickness. */
  readonly factorRatio: number | null;
}

/**
 * What the sideways test value of a lag screw is multiplied by where the wood under its head is thinner or thicker than
 * three and a half diameters. Between the rows of the table a straight line is taken.
 *
 * @returns The factor; `null` for less than 2 or more than 6.5 diameters.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Table 8-10.
 * @example
 * ```ts
 * import { lagScrewSideFactor } from '@scantling/fastening';
 * lagScrewSideFactor({ sideMm: 20, shankDiameterMm: 8 }) // => { factorRatio: 0.77 }
 * lagScrewSideFactor({ sideMm: 10, shankDiameterMm: 8 }) // => { factorRatio: null }
 * ```
 */
export function lagScrewSideFactor(input: LagScrewSideFactorInput): LagScrewSideFactor {
  requireInputs('lagScrewSideFactor', input, limits);
  return { factorRatio: betweenRows(factors, input.sideMm / input.shankDiameterMm) };
}

export const lagScrewSideFactorRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/lag-screw-side-factor',
  title: 'Lag screw pushed sideways: thickness under the head',
  summary:
    'What the sideways test value of a lag screw is multiplied by where the wood under its head is not three and a half diameters thick.',
  basis: 'measured',
  inputs: {
    sideMm: { kind: 'number', label: 'Wood under the head', unit: 'mm', ...limits.sideMm },
    shankDiameterMm: shankInput(limits.shankDiameterMm),
  },
  outputs: { factorRatio: { label: 'Factor', unit: '1' } },
  compute: lagScrewSideFactor,
  formula: String.raw`c = c_1 + (c_2 - c_1) \, \frac{x - x_1}{x_2 - x_1}, \qquad x = \frac{t}{D}`,
  symbols: {
    c: 'factor: 0.62 where x is 2, 1 where it is 3.5, 1.22 from 6 on',
    x: 'wood under the head in diameters',
    t: 'wood under the head',
    D: 'shank diameter',
    'x_1, x_2': 'the rows of the table around x',
    'c_1, c_2': 'their factors',
  },
  inSymbols: ({ sideMm, shankDiameterMm }, { factorRatio }) => {
    const given = { t: sideMm, D: shankDiameterMm, x: sideMm / shankDiameterMm };
    const [rows] = rowsAround(factors, given.x);
    if (!rows || factorRatio === null) return given;
    const [before, after] = rows;
    return { ...given, c: factorRatio, x_1: before[0], x_2: after[0], c_1: before[1], c_2: after[1] };
  },
  sources: [
    { source: woodHandbook2010, at: 'Table 8-10', confirmed: 'text' },
    { source: woodHandbook2021, at: 'Table 8-10, p. 8-13: the same', confirmed: 'text', tier: 'reprint' },
  ],
  examples: (
    [
      [2, '0.62'],
      [2.5, '0.77'],
      [3, '0.93'],
      [3.5, '1.00'],
      [4, '1.07'],
      [4.5, '1.13'],
      [5, '1.18'],
      [5.5, '1.21'],
      [6, '1.22'],
      [6.5, '1.22'],
    ] as const
  ).map(([ratio, printed]) => ({
    given: { sideMm: 8 * ratio, shankDiameterMm: 8 },
    expect: { factorRatio: printed },
    from: { source: woodHandbook2010, at: `Table 8-10, ratio ${ratio}`, confirmed: 'text' as const },
  })),
  laws: [{ of: 'factorRatio', by: { sideMm: 'increasing', shankDiameterMm: 'decreasing' } }],
  cautions: [notStructuralDesign],
}));
