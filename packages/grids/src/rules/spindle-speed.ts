import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { machiningPressbook } from '@scantling/rules/sources';
import { drillingCare, largeBitsTurnSlowly } from '../cautions.ts';

const limits = {
  diameterMm: { min: 0.1, max: 1000 },
  surfaceSpeedMPerMin: { min: 0, max: 6000 },
} as const;

export interface SpindleSpeedInput {
  /** Diameter of the bit, mm, 0.1 to 1000. */
  readonly diameterMm: number;
  /** How fast its rim is to move, m/min, 0 to 6000: from the maker of the bit. */
  readonly surfaceSpeedMPerMin: number;
}

export interface SpindleSpeed {
  /** Revolutions in a minute. */
  readonly speedRpm: number;
}

/**
 * How fast a bit turns when its rim moves at a given speed. Twice the diameter, half the speed.
 *
 * @returns The speed in revolutions per minute.
 * @throws RangeError where an input is outside its limits.
 * Source: an open textbook on machining, chapter 8, part 5.
 * @example
 * ```ts
 * import { spindleSpeed } from '@scantling/grids';
 * spindleSpeed({ diameterMm: 20, surfaceSpeedMPerMin: 60 }).speedRpm // => 954.93
 * ```
 */
export function spindleSpeed(input: SpindleSpeedInput): SpindleSpeed {
  requireInputs('spindleSpeed', input, limits);
  return { speedRpm: plusZero((1000 * input.surfaceSpeedMPerMin) / (Math.PI * input.diameterMm)) };
}

/** The printed form, in feet per minute and inches. */
function byFeetAndInches({ diameterMm, surfaceSpeedMPerMin }: SpindleSpeedInput): number {
  const feetPerMinute = surfaceSpeedMPerMin / 0.3048;
  return (feetPerMinute * 12) / ((diameterMm / 25.4) * Math.PI);
}

export const spindleSpeedRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/spindle-speed',
  title: 'Spindle speed from surface speed',
  summary: 'How fast a bit of a given diameter turns when its rim moves at a given speed through the wood.',
  basis: 'derived',
  inputs: {
    diameterMm: { kind: 'number', label: 'Bit diameter', unit: 'mm', ...limits.diameterMm },
    surfaceSpeedMPerMin: {
      kind: 'number',
      label: 'Surface speed',
      unit: 'm/min',
      ...limits.surfaceSpeedMPerMin,
      help: 'At the rim of the bit: from its maker.',
    },
  },
  outputs: { speedRpm: { label: 'Spindle speed', unit: 'r/min' } },
  compute: spindleSpeed,
  formula: String.raw`n = \frac{v}{\pi d}`,
  symbols: { n: 'spindle speed', v: 'surface speed', d: 'diameter of the bit' },
  sources: [
    {
      source: machiningPressbook,
      at: 'spindle speed: RPM = (SFPM × 12) / (diameter × π), in feet per minute and inches',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { diameterMm: 20, surfaceSpeedMPerMin: 60 },
      expect: { speedRpm: '954.93' },
      from: { workedByHand: '60 m is 60000 mm; 60000 / (π × 20) = 954.93 turns in a minute' },
    },
  ],
  laws: [{ of: 'speedRpm', by: { surfaceSpeedMPerMin: 'proportional', diameterMm: 'decreasing' } }],
  peers: [
    {
      name: 'the same in feet per minute and inches',
      of: 'speedRpm',
      compute: byFeetAndInches,
      relative: 1e-12,
      source: {
        source: machiningPressbook,
        at: 'spindle speed: RPM = (SFPM × 12) / (diameter × π)',
        confirmed: 'text',
      },
    },
  ],
  cautions: [largeBitsTurnSlowly, drillingCare],
}));
