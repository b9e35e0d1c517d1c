import { defineRule, requireInputs } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import { boardsDiffer } from '../cautions.ts';

const limits = {
  shrinkagePct: { min: 0, max: 30 },
  fibreSaturationPct: { min: 20, max: 40 },
} as const;

export interface CoefficientFromShrinkageInput {
  /** Shrinkage of the species and cut from green to ovendry, % of the green width, 0 to 30. */
  readonly shrinkagePct: number;
  /** Moisture content below which the species shrinks, % of ovendry mass, 20 to 40. */
  readonly fibreSaturationPct: number;
}

export interface CoefficientFromShrinkage {
  /** Dimensional change coefficient of the species and cut, per 1 % of moisture content. */
  readonly coefficientPerPct: number;
}

/**
 * The dimensional change coefficient of a wood whose shrinkage is known, as a share of its width at 10 % moisture
 * content. Most woods shrink from about 30 % moisture content; northern white-cedar, western redcedar and redwood
 * from about 22 %.
 *
 * @returns The coefficient, per 1 % of moisture content; give it to `widthChange`.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), footnote of Table 13-5.
 * @example
 * ```ts
 * import { coefficientFromShrinkage } from '@scantling/movement';
 * // Sugar maple, flatsawn: 1 / (3000 / 9.9 − 30 + 10)
 * coefficientFromShrinkage({ shrinkagePct: 9.9, fibreSaturationPct: 30 }).coefficientPerPct // => 0.003533
 * // Western redcedar, flatsawn: 1 / (2200 / 5.0 − 22 + 10)
 * coefficientFromShrinkage({ shrinkagePct: 5, fibreSaturationPct: 22 }).coefficientPerPct // => 0.002336
 * coefficientFromShrinkage({ shrinkagePct: 31, fibreSaturationPct: 30 }) // throws coefficientFromShrinkage requires shrinkagePct between 0 and 30, got 31
 * ```
 */
export function coefficientFromShrinkage(input: CoefficientFromShrinkageInput): CoefficientFromShrinkage {
  requireInputs('coefficientFromShrinkage', input, limits);
  const { shrinkagePct, fibreSaturationPct } = input;
  // The formula multiplied through by S: the same number, and 0 for a wood that does not shrink.
  const atTenPct = 100 * fibreSaturationPct - (fibreSaturationPct - 10) * shrinkagePct;
  return { coefficientPerPct: (shrinkagePct + 0) / atTenPct };
}

/** What a board of green width 1 shrinks for each 1 %, as a share of its width at 10 %. */
function byGreenWidth({ shrinkagePct, fibreSaturationPct }: CoefficientFromShrinkageInput): number {
  const perPct = shrinkagePct / 100 / fibreSaturationPct;
  return perPct / (1 - perPct * (fibreSaturationPct - 10));
}

export const coefficientFromShrinkageRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/coefficient-from-shrinkage',
  title: 'Movement coefficient from shrinkage',
  summary:
    'The share of its width that a board moves for each 1 % of moisture content, from the shrinkage that wood tables print.',
  basis: 'measured',
  inputs: {
    shrinkagePct: {
      kind: 'number',
      label: 'Shrinkage, green to ovendry',
      unit: '%',
      ...limits.shrinkagePct,
      help: 'Tangential for flatsawn boards, radial for quartersawn ones.',
    },
    fibreSaturationPct: {
      kind: 'number',
      label: 'Fibre saturation point',
      unit: '%',
      ...limits.fibreSaturationPct,
      help: '30 for most woods; 22 for northern white-cedar, western redcedar and redwood.',
    },
  },
  outputs: {
    coefficientPerPct: {
      label: 'Dimensional change coefficient',
      unit: '1/%',
      help: 'Share of the width for each 1 % of moisture content.',
    },
  },
  compute: coefficientFromShrinkage,
  formula: String.raw`C = \frac{1}{100\,M_{fs} / S - M_{fs} + 10}`,
  symbols: {
    C: 'dimensional change coefficient, of the width at 10 % moisture content',
    S: 'shrinkage from green to ovendry, %',
    'M_{fs}': 'fibre saturation point, %',
  },
  sources: [
    {
      source: woodHandbook2010,
      at: 'footnote of Table 13-5: the dimension at 10 %, a straight line from fibre saturation to ovendry, 30 % or 22 %',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { shrinkagePct: 9.9, fibreSaturationPct: 30 },
      expect: { coefficientPerPct: '0.00353' },
      from: {
        source: woodHandbook2010,
        at: 'Table 13-5, sugar maple, tangential; its shrinkage in Table 4-3',
        confirmed: 'text',
      },
    },
    {
      given: { shrinkagePct: 7, fibreSaturationPct: 30 },
      expect: { coefficientPerPct: '0.00245' },
      from: {
        source: woodHandbook2010,
        at: 'Table 13-5, white fir, tangential; its shrinkage in Table 4-3',
        confirmed: 'memory',
      },
    },
    {
      given: { shrinkagePct: 5, fibreSaturationPct: 22 },
      expect: { coefficientPerPct: '0.00234' },
      from: {
        source: woodHandbook2010,
        at: 'Table 13-5, western redcedar, tangential; its shrinkage in Table 4-3',
        confirmed: 'memory',
      },
    },
    {
      given: { shrinkagePct: 6, fibreSaturationPct: 30 },
      expect: { coefficientPerPct: '0.00208333' },
      from: { workedByHand: '3000 / 6 = 500; 500 − 30 + 10 = 480; 1 / 480 = 0.00208333 for each 1 %' },
    },
  ],
  laws: [{ of: 'coefficientPerPct', by: { shrinkagePct: 'increasing', fibreSaturationPct: 'decreasing' } }],
  peers: [
    {
      name: 'the shrinkage of each 1 %, as a share of what is left of the green width at 10 %',
      of: 'coefficientPerPct',
      compute: byGreenWidth,
      relative: 1e-12,
      source: { source: woodHandbook2010, at: 'Eq. 4-7, ch. 4', confirmed: 'memory' },
    },
  ],
  cautions: [boardsDiffer],
}));
