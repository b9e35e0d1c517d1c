import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { coverageAnswer2003 } from '@scantling/rules/sources';
import { oilyRags, productSheet, solvents } from '../cautions.ts';

const limits = {
  areaM2: { min: 0, max: 10_000 },
  coatCount: { min: 1, max: 50, integer: true },
  spreadingRateM2PerL: { min: 0.1, max: 1000 },
  lossPct: { min: 0, max: 95 },
} as const;

export interface FinishVolumeInput {
  /** Area of all faces that get finish, m², 0 to 10 000. */
  readonly areaM2: number;
  /** Number of coats, 1 to 50. */
  readonly coatCount: number;
  /** Area that one litre covers in one coat, m²/L, 0.1 to 1000. */
  readonly spreadingRateM2PerL: number;
  /** Share of the liquid that never becomes film, %, 0 to 95. */
  readonly lossPct: number;
}

export interface FinishVolume {
  /** Finish needed for all coats, mL. */
  readonly volumeMl: number;
}

/**
 * How much finish all coats take, with what is lost on the way.
 *
 * @returns The volume in mL.
 * @throws RangeError where an input is outside its limits.
 * Source: consumption is area over spreading rate and over what is not lost, as in a worked answer of a resource
 * centre for coatings.
 * @example
 * ```ts
 * import { finishVolume } from '@scantling/finishing';
 * // 4 m² × 3 coats / 10 m²/L = 1.2 L on the wood; a fifth is lost: 1.2 / 0.8 = 1.5 L
 * finishVolume({ areaM2: 4, coatCount: 3, spreadingRateM2PerL: 10, lossPct: 20 }).volumeMl // => 1500
 * ```
 */
export function finishVolume(input: FinishVolumeInput): FinishVolume {
  requireInputs('finishVolume', input, limits);
  const { areaM2, coatCount, spreadingRateM2PerL, lossPct } = input;
  const onTheWoodMl = ((areaM2 * coatCount) / spreadingRateM2PerL) * 1000;
  return { volumeMl: plusZero((onTheWoodMl * 100) / (100 - lossPct)) };
}

export const finishVolumeRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/finish-volume',
  title: 'How much finish',
  summary: 'How much finish all coats take on an area, with what stays in rags, pads and jars.',
  basis: 'derived',
  inputs: {
    areaM2: {
      kind: 'number',
      label: 'Area',
      unit: 'm²',
      ...limits.areaM2,
      help: 'All faces that get finish: both sides and the edges.',
    },
    coatCount: { kind: 'number', label: 'Coats', unit: '1', ...limits.coatCount },
    spreadingRateM2PerL: {
      kind: 'number',
      label: 'Spreading rate',
      unit: 'm²/L',
      ...limits.spreadingRateM2PerL,
      help: 'Area that one litre covers in one coat: from the label, or from solids and film.',
    },
    lossPct: {
      kind: 'number',
      label: 'Lost',
      unit: '%',
      ...limits.lossPct,
      help: 'Share of the liquid that stays in rags, pads and jars, is sprayed past, or soaks in.',
    },
  },
  outputs: { volumeMl: { label: 'Finish needed', unit: 'mL', help: 'For all coats together.' } },
  compute: finishVolume,
  formula: String.raw`V = \frac{A \, n}{R \, (1 - \ell)}`,
  symbols: {
    V: 'finish needed, L',
    A: 'area, m²',
    n: 'coats',
    R: 'spreading rate, m²/L',
    '\\ell': 'lost, as a fraction',
  },
  inSymbols: (input, output) => ({
    V: output.volumeMl / 1000,
    A: input.areaM2,
    n: input.coatCount,
    R: input.spreadingRateM2PerL,
    '\\ell': input.lossPct / 100,
  }),
  sources: [
    {
      source: coverageAnswer2003,
      at: 'coverage = 1604 × gallons × volume solids × transfer efficiency / film thickness (mils)',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { areaM2: 4, coatCount: 3, spreadingRateM2PerL: 10, lossPct: 20 },
      expect: { volumeMl: '1500.0' },
      from: { workedByHand: '4 × 3 / 10 = 1.2 L on the wood; 80 % gets there: 1.2 / 0.80 = 1.5 L = 1500 mL' },
    },
    {
      // 52 % solids at 1.5 mils by 1604 ft²/gal; 30 % gets to the face.
      given: {
        areaM2: 167 * 0.09290304,
        coatCount: 1,
        spreadingRateM2PerL: ((1604 * 0.52) / 1.5) * (0.09290304 / 3.785411784),
        lossPct: 70,
      },
      expect: { volumeMl: { printed: '1', unit: 'gal', times: 3785.411784 } },
      from: { source: coverageAnswer2003, at: 'example: a gallon covers 167 ft²', confirmed: 'text' },
    },
  ],
  laws: [
    {
      of: 'volumeMl',
      by: { areaM2: 'proportional', spreadingRateM2PerL: 'decreasing', lossPct: 'increasing' },
    },
  ],
  cautions: [oilyRags, solvents, productSheet],
}));
