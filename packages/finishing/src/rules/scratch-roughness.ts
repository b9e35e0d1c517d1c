import { defineRule, requireInputs } from '@scantling/rules';
import { beechSanding2019, mapleSanding2006 } from '@scantling/rules/sources';
import { oilDust, woodDust } from '../cautions.ts';

const size = { min: 0.1, max: 5000 };
const limits = {
  measuredRoughnessUm: { min: 0, max: 1000 },
  measuredAtUm: size,
  medianUm: size,
} as const;

export interface ScratchRoughnessInput {
  /** Roughness that was measured after sanding with some grade, µm, 0 to 1000. */
  readonly measuredRoughnessUm: number;
  /** Median size of the grains of that grade, µm, 0.1 to 5000. */
  readonly measuredAtUm: number;
  /** Median size of the grains of another grade, µm, 0.1 to 5000. */
  readonly medianUm: number;
}

export interface ScratchRoughness {
  /** Roughness to expect after that grade, µm. */
  readonly roughnessUm: number;
}

/**
 * The roughness that another grade leaves, from one that was measured: an estimate, in proportion to the size of the
 * grains. Published is a straight line over grain size, for beech and P60 to P150; that it runs through nought is
 * assumed here. Fine grades level off, because the wood has pores of its own.
 *
 * @returns The roughness in µm, of the same kind (Ra, Rz …) as the one measured.
 * @throws RangeError where an input is outside its limits.
 * Source: Gurau, Irle and Buchner, BioResources 14 (2019): roughness follows the mean grain diameter in a straight line.
 * @example
 * ```ts
 * import { findGrit, scratchRoughness } from '@scantling/finishing';
 * const measuredAtUm = findGrit('P100').medianUm;
 * const { medianUm } = findGrit('P150');
 * // 6 µm after P100: 6 × 100 / 162
 * scratchRoughness({ measuredRoughnessUm: 6, measuredAtUm, medianUm }).roughnessUm // => 3.7
 * ```
 */
export function scratchRoughness(input: ScratchRoughnessInput): ScratchRoughness {
  requireInputs('scratchRoughness', input, limits);
  return { roughnessUm: ((input.measuredRoughnessUm + 0) * input.medianUm) / input.measuredAtUm };
}

export const scratchRoughnessRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/scratch-roughness',
  title: 'Roughness after another grade',
  summary:
    'What a coarser or finer abrasive leaves, in proportion to the size of its grains: an estimate from one roughness that was measured. A straight line over grain size is measured; that it runs through nought is our assumption.',
  basis: 'measured',
  inputs: {
    measuredRoughnessUm: {
      kind: 'number',
      label: 'Roughness measured',
      unit: 'µm',
      ...limits.measuredRoughnessUm,
      help: 'Ra, Rz or another measure; the result is of the same kind.',
    },
    measuredAtUm: {
      kind: 'number',
      label: 'Grain size it was measured after',
      unit: 'µm',
      ...limits.measuredAtUm,
    },
    medianUm: { kind: 'number', label: 'Grain size of the other grade', unit: 'µm', ...limits.medianUm },
  },
  outputs: { roughnessUm: { label: 'Roughness to expect', unit: 'µm' } },
  compute: scratchRoughness,
  formula: String.raw`R = R_1 \, \frac{d}{d_1}`,
  symbols: {
    R: 'roughness to expect',
    R_1: 'roughness measured',
    d: 'median grain size of the other grade',
    d_1: 'median grain size it was measured after',
  },
  inSymbols: (input, output) => ({
    R: output.roughnessUm,
    R_1: input.measuredRoughnessUm,
    d: input.medianUm,
    d_1: input.measuredAtUm,
  }),
  valid: { measuredAtUm: [100, 269], medianUm: [100, 269] },
  sources: [
    {
      source: beechSanding2019,
      at: 'abstract: roughness grows with the mean grain diameter in a strong linear correlation, P60 to P150',
      confirmed: 'text',
    },
    {
      source: mapleSanding2006,
      at: 'abstract: less rough from 100 to 120 grit, no further with 150',
      confirmed: 'text',
      erratum:
        'On sugar maple the third grade made the surface no less rough, which a straight line does not give: take the finest grades for an upper bound.',
    },
  ],
  examples: [
    {
      given: { measuredRoughnessUm: 8, measuredAtUm: 200, medianUm: 125 },
      expect: { roughnessUm: '5.0' },
      from: { workedByHand: '125 / 200 = 0.625; 8 × 0.625 = 5.0 µm' },
    },
  ],
  laws: [
    {
      of: 'roughnessUm',
      by: { measuredRoughnessUm: 'proportional', medianUm: 'proportional', measuredAtUm: 'decreasing' },
    },
  ],
  cautions: [
    'An estimate: a worn abrasive, the sander, its pressure and the pores of the wood move it a good deal.',
    woodDust,
    oilDust,
  ],
}));
