import { defineRule, plusZero } from '@scantling/rules';
import { airContaminantsRule, toledoVentilationFormulae } from '@scantling/rules/sources';
import { productSheet, roomAirIsAnEstimate } from '../cautions.ts';
import { requirePairs } from '../paired-lists.ts';

const limits = {
  concentrationsPpm: { min: 0, max: 1e6, minItems: 1, maxItems: 12 },
  limitsPpm: { min: 0.1, max: 10_000, minItems: 1, maxItems: 12 },
} as const;

export interface MixtureExposureInput {
  /** Average of each substance over the day, ppm, 1 to 12 of them, 0 to 1 000 000. */
  readonly concentrationsPpm: readonly number[];
  /** Exposure limit of each, ppm, 0.1 to 10 000, in the same order. */
  readonly limitsPpm: readonly number[];
}

export interface MixtureExposure {
  /** All of them together as a part of what is allowed, %: over 100 is too much. */
  readonly ofLimitPct: number;
}

/**
 * Several vapours at once, each as a part of its own limit, added up: thinners are mixtures, and each of them may be
 * under its limit while all together are over.
 *
 * @returns The sum of the parts, %.
 * @throws RangeError where the lists differ in length or a number is outside its limits.
 * Source: 29 CFR 1910.1000(d)(2), mixture of air contaminants.
 * @example
 * ```ts
 * import { mixtureExposure } from '@scantling/finishing';
 * // 40 ppm of toluene with a limit of 100, 120 ppm of butyl acetate with one of 150
 * mixtureExposure({ concentrationsPpm: [40, 120], limitsPpm: [100, 150] }).ofLimitPct // => 120
 * mixtureExposure({ concentrationsPpm: [40], limitsPpm: [] }) // throws mixtureExposure requires limitsPpm to have 1 to 12 numbers, got 0
 * ```
 */
export function mixtureExposure(input: MixtureExposureInput): MixtureExposure {
  requirePairs('mixtureExposure', input, ['concentrationsPpm', 'limitsPpm'], limits);
  const { concentrationsPpm, limitsPpm } = input;
  const parts = concentrationsPpm.map((ppm, i) => (100 * ppm) / (limitsPpm[i] as number));
  return { ofLimitPct: plusZero(parts.reduce((sum, part) => sum + part)) };
}

export const mixtureExposureRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/mixture-exposure',
  title: 'Exposure to several vapours',
  summary:
    'Several vapours in one air, each as a part of its own exposure limit, added up: over 100 % is too much.',
  basis: 'convention',
  inputs: {
    concentrationsPpm: {
      kind: 'numbers',
      label: 'Concentrations',
      unit: 'ppm',
      ...limits.concentrationsPpm,
      help: 'One figure for each substance, averaged over the day.',
    },
    limitsPpm: {
      kind: 'numbers',
      label: 'Limits',
      unit: 'ppm',
      ...limits.limitsPpm,
      help: 'The limit of each, in the same order: those in force where you work.',
    },
  },
  outputs: { ofLimitPct: { label: 'Of what is allowed', unit: '%' } },
  compute: mixtureExposure,
  formula: String.raw`E_m = \frac{C_1}{L_1} + \frac{C_2}{L_2} + \dots + \frac{C_n}{L_n}`,
  symbols: {
    E_m: 'part of what is allowed, as a fraction',
    'C_1, C_2': 'concentrations, ppm',
    'L_1, L_2': 'limits, ppm',
  },
  inSymbols: (_, output) => ({ E_m: output.ofLimitPct / 100 }),
  requires: [
    {
      says: 'as many limitsPpm as concentrationsPpm',
      holds: ({ concentrationsPpm, limitsPpm }) => concentrationsPpm.length === limitsPpm.length,
    },
  ],
  sources: [
    { source: airContaminantsRule, at: '1910.1000(d)(2)(i)', confirmed: 'text', tier: 'reprint' },
    {
      source: toledoVentilationFormulae,
      at: 'formula 3: two or more hazardous substances',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { concentrationsPpm: [500, 45, 40], limitsPpm: [1000, 200, 200] },
      expect: { ofLimitPct: { printed: '0.925', unit: '1', times: 100 } },
      from: { source: airContaminantsRule, at: '1910.1000(d)(2)(ii)', confirmed: 'text', tier: 'reprint' },
    },
  ],
  cautions: [roomAirIsAnEstimate, productSheet],
}));
