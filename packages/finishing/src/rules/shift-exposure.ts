import { defineRule, plusZero, requireNumber } from '@scantling/rules';
import { airContaminantsRule } from '@scantling/rules/sources';
import { productSheet, roomAirIsAnEstimate } from '../cautions.ts';
import { requirePairs } from '../paired-lists.ts';

const limits = {
  concentrationsPpm: { min: 0, max: 1e6, minItems: 1, maxItems: 24 },
  durationsHours: { min: 0, max: 24, minItems: 1, maxItems: 24 },
} as const;

export interface ShiftExposureInput {
  /** Concentrations of one substance through the day, ppm, 1 to 24 of them, 0 to 1 000 000. */
  readonly concentrationsPpm: readonly number[];
  /** How long each lasted, h, 0 to 24 and no more than that together, in the same order; the rest of the day was in clean air. */
  readonly durationsHours: readonly number[];
}

export interface ShiftExposure {
  /** What it comes to as an average over 8 hours, ppm. */
  readonly exposurePpm: number;
}

/**
 * What the hours of a day in vapour come to as an average over 8 hours, as limits marked TWA are set for. Short limits
 * and ceilings hold besides.
 *
 * @returns The average over 8 hours, ppm: compare it with the limit.
 * @throws RangeError where the lists differ in length, a number is outside its limits, or the day has more than 24 hours.
 * Source: 29 CFR 1910.1000(d)(1), cumulative exposure for an 8-hour shift.
 * @example
 * ```ts
 * import { shiftExposure } from '@scantling/finishing';
 * // Two hours of laying a coat, four beside it while it dries
 * shiftExposure({ concentrationsPpm: [90, 20], durationsHours: [2, 4] }).exposurePpm // => 32.5
 * shiftExposure({ concentrationsPpm: [90, 20], durationsHours: [2] }) // throws shiftExposure requires as many durationsHours as concentrationsPpm, got 1 and 2
 * ```
 */
export function shiftExposure(input: ShiftExposureInput): ShiftExposure {
  requirePairs('shiftExposure', input, ['concentrationsPpm', 'durationsHours'], limits);
  const { concentrationsPpm, durationsHours } = input;
  requireNumber('shiftExposure', 'durationsHours together', together(durationsHours), wholeDay);
  const ppmHours = concentrationsPpm.reduce((sum, ppm, i) => sum + ppm * (durationsHours[i] as number), 0);
  return { exposurePpm: plusZero(ppmHours / 8) };
}

const wholeDay = { min: 0, max: 24 } as const;

/** The sum of some hours, without the last digits that a rounding may have left. */
const together = (hours: readonly number[]) =>
  Math.round(hours.reduce((sum, one) => sum + one, 0) * 1e9) / 1e9;

export const shiftExposureRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/shift-exposure',
  title: 'Exposure over a working day',
  summary: 'What some hours in vapour come to as the average over 8 hours that exposure limits are set for.',
  basis: 'convention',
  inputs: {
    concentrationsPpm: {
      kind: 'numbers',
      label: 'Concentrations',
      unit: 'ppm',
      ...limits.concentrationsPpm,
      help: 'Of one substance, one figure for each part of the day.',
    },
    durationsHours: {
      kind: 'numbers',
      label: 'How long each lasted',
      unit: 'h',
      ...limits.durationsHours,
      help: 'In the same order; the rest of the day in clean air.',
    },
  },
  outputs: { exposurePpm: { label: 'Average over 8 hours', unit: 'ppm' } },
  compute: shiftExposure,
  formula: String.raw`E = \frac{S}{8}, \qquad S = C_a T_a + C_b T_b + \dots + C_n T_n`,
  symbols: {
    E: 'average over 8 hours, ppm',
    S: 'sum over the day, ppm h',
    'C_a, C_b': 'concentrations, ppm',
    'T_a, T_b': 'how long each lasted, h',
  },
  inSymbols: ({ concentrationsPpm, durationsHours }, output) => ({
    E: output.exposurePpm,
    S: concentrationsPpm.reduce((sum, ppm, i) => sum + ppm * (durationsHours[i] as number), 0),
  }),
  requires: [
    {
      says: 'as many durationsHours as concentrationsPpm',
      holds: ({ concentrationsPpm, durationsHours }) => concentrationsPpm.length === durationsHours.length,
    },
    {
      says: 'durationsHours together between 0 and 24',
      holds: ({ durationsHours }) => together(durationsHours) <= wholeDay.max,
    },
  ],
  sources: [{ source: airContaminantsRule, at: '1910.1000(d)(1)(i)', confirmed: 'text', tier: 'reprint' }],
  examples: [
    {
      given: { concentrationsPpm: [150, 75, 50], durationsHours: [2, 2, 4] },
      expect: { exposurePpm: '81.25' },
      from: { source: airContaminantsRule, at: '1910.1000(d)(1)(ii)', confirmed: 'text', tier: 'reprint' },
    },
  ],
  cautions: [roomAirIsAnEstimate, productSheet],
}));
