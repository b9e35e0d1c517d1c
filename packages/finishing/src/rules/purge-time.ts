import { defineRule, requireInputs } from '@scantling/rules';
import { tuberculosisGuidelines1994 } from '@scantling/rules/sources';
import { productSheet, roomAirIsAnEstimate, solvents } from '../cautions.ts';

const limits = {
  airChangesPerHour: { min: 0.1, max: 100 },
  remainingPct: { min: 0.01, max: 100 },
  mixingFactor: { min: 1, max: 10 },
} as const;

export interface PurgeTimeInput {
  /** How often outdoor air fills the room in an hour, 0.1 to 100. */
  readonly airChangesPerHour: number;
  /** What may be left of the vapour, % of what was there, 0.01 to 100. */
  readonly remainingPct: number;
  /** How many times the air of perfect mixing is needed, 1 to 10. */
  readonly mixingFactor: number;
}

export interface PurgeTime {
  /** Time of airing, h. */
  readonly purgeHours: number;
}

/**
 * How long a room must be aired until its vapour has thinned out, once nothing evaporates any more: an estimate.
 *
 * @returns The time in hours.
 * @throws RangeError where an input is outside its limits.
 * Source: Guidelines for Preventing the Transmission of Mycobacterium tuberculosis (CDC, 1994), Table S3-1.
 * @example
 * ```ts
 * import { purgeTime } from '@scantling/finishing';
 * // Six air changes an hour, down to a hundredth, as if the air mixed perfectly: 46 minutes
 * purgeTime({ airChangesPerHour: 6, remainingPct: 1, mixingFactor: 1 }).purgeHours // => 0.7675
 * ```
 */
export function purgeTime(input: PurgeTimeInput): PurgeTime {
  requireInputs('purgeTime', input, limits);
  return {
    purgeHours: (input.mixingFactor * Math.log(100 / input.remainingPct)) / input.airChangesPerHour,
  };
}

export const purgeTimeRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/purge-time',
  title: 'Time to air a room out',
  summary:
    'How long airing takes until a given part of the vapour is left, once nothing evaporates any more.',
  basis: 'derived',
  inputs: {
    airChangesPerHour: { kind: 'number', label: 'Air changes', unit: '1/h', ...limits.airChangesPerHour },
    remainingPct: {
      kind: 'number',
      label: 'Vapour that may be left',
      unit: '%',
      ...limits.remainingPct,
      help: 'Of what was there at the start.',
    },
    mixingFactor: {
      kind: 'number',
      label: 'Mixing factor',
      unit: '1',
      ...limits.mixingFactor,
      help: '1 is perfect mixing, which no room has; up to 10 where air enters and leaves badly.',
    },
  },
  outputs: { purgeHours: { label: 'Time of airing', unit: 'h' } },
  compute: purgeTime,
  formula: String.raw`t = \frac{K}{N} \ln\frac{C_1}{C_2}`,
  symbols: {
    t: 'time, h',
    K: 'mixing factor',
    N: 'air changes an hour',
    'C_1, C_2': 'vapour at the start, and what is left of it, %',
  },
  inSymbols: (input, output) => ({
    t: output.purgeHours,
    K: input.mixingFactor,
    N: input.airChangesPerHour,
    C_1: 100,
    C_2: input.remainingPct,
  }),
  sources: [
    {
      source: tuberculosisGuidelines1994,
      at: 'Table S3-1, p. 72, its footnote: the formula, and the mixing factor up to 10',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { airChangesPerHour: 2, remainingPct: 0.1, mixingFactor: 1 },
      expect: { purgeHours: { printed: '207', unit: 'min', times: 1 / 60 } },
      from: {
        source: tuberculosisGuidelines1994,
        at: 'Table S3-1, p. 72: 2 air changes, 99.9 %',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { airChangesPerHour: 6, remainingPct: 1, mixingFactor: 4 },
      expect: { purgeHours: '3.070' },
      from: { workedByHand: 'ln(100 / 1) = 4.60517; 4 × 4.60517 / 6 = 3.070 h' },
    },
  ],
  laws: [
    {
      of: 'purgeHours',
      by: { mixingFactor: 'proportional', airChangesPerHour: 'decreasing', remainingPct: 'decreasing' },
    },
  ],
  cautions: [roomAirIsAnEstimate, solvents, productSheet],
}));
