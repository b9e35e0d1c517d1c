import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { materialsTextbook, physicsClassExpansion } from '@scantling/rules/sources';

const temperature = { min: -60, max: 150 };
const limits = {
  lengthMm: { min: 0, max: 1_000_000 },
  expansionUmPerMK: { min: 0, max: 200 },
  fromTemperatureC: temperature,
  toTemperatureC: temperature,
} as const;

export interface ThermalChangeInput {
  /** Length now, mm, 0 to 1 000 000. */
  readonly lengthMm: number;
  /** Coefficient of linear thermal expansion, µm per metre and kelvin (10⁻⁶/K), 0 to 200. */
  readonly expansionUmPerMK: number;
  /** Temperature now, °C, −60 to 150. */
  readonly fromTemperatureC: number;
  /** Temperature then, °C, −60 to 150. */
  readonly toTemperatureC: number;
}

export interface ThermalChange {
  /** Change in length, mm: positive where it gets longer. */
  readonly changeMm: number;
}

/**
 * How much a length of metal, or of wood that keeps its moisture, changes with the temperature.
 *
 * @returns The change in mm: positive where it gets longer, negative where it gets shorter.
 * @throws RangeError where an input is outside its limits.
 * Source: textbooks of physics and of materials science.
 * @example
 * ```ts
 * import { thermalChange } from '@scantling/movement';
 * // A brass strip of 1500 mm, from 16 °C to 26 °C: 1500 × 0.000019 × 10
 * thermalChange({ lengthMm: 1500, expansionUmPerMK: 19, fromTemperatureC: 16, toTemperatureC: 26 }).changeMm // => 0.285
 * thermalChange({ lengthMm: 1500, expansionUmPerMK: 19, fromTemperatureC: 16, toTemperatureC: 500 }) // throws thermalChange requires toTemperatureC between -60 and 150, got 500
 * ```
 */
export function thermalChange(input: ThermalChangeInput): ThermalChange {
  requireInputs('thermalChange', input, limits);
  const { lengthMm, expansionUmPerMK, fromTemperatureC, toTemperatureC } = input;
  return { changeMm: plusZero(lengthMm * expansionUmPerMK * 1e-6 * (toTemperatureC - fromTemperatureC)) };
}

/** Degree by degree, each taking its share of the length that the last one left. */
function compounded({
  lengthMm,
  expansionUmPerMK,
  fromTemperatureC,
  toTemperatureC,
}: ThermalChangeInput): number {
  return lengthMm * Math.expm1(expansionUmPerMK * 1e-6 * (toTemperatureC - fromTemperatureC));
}

export const thermalChangeRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/thermal-change',
  title: 'Change in length with temperature',
  summary: 'How much a metal strip, or wood that keeps its moisture, gets longer when it warms up.',
  basis: 'measured',
  inputs: {
    lengthMm: { kind: 'number', label: 'Length', unit: 'mm', ...limits.lengthMm },
    expansionUmPerMK: {
      kind: 'number',
      label: 'Thermal expansion',
      unit: 'µm/(m·K)',
      ...limits.expansionUmPerMK,
      help: 'Tables print it in millionths per kelvin (10⁻⁶/K): about 19 for brass, 12 for steel, 4 for wood along the grain.',
    },
    fromTemperatureC: { kind: 'number', label: 'Temperature now', unit: '°C', ...limits.fromTemperatureC },
    toTemperatureC: { kind: 'number', label: 'Temperature then', unit: '°C', ...limits.toTemperatureC },
  },
  outputs: { changeMm: { label: 'Change in length', unit: 'mm', help: 'Positive where it gets longer.' } },
  compute: thermalChange,
  formula: String.raw`\Delta L = \alpha \, L \, (T_2 - T_1)`,
  symbols: {
    '\\Delta L': 'change in length',
    '\\alpha': 'coefficient of linear thermal expansion',
    L: 'length now',
    T_1: 'temperature now',
    T_2: 'temperature then',
  },
  sources: [
    {
      source: materialsTextbook,
      at: 'Eq. 19.3b, as a page that works out its problem 19.8 uses it',
      confirmed: 'text',
      tier: 'reprint',
    },
    { source: physicsClassExpansion, at: 'Example 3, its equation', confirmed: 'text' },
  ],
  examples: [
    {
      given: { lengthMm: 400, expansionUmPerMK: 15, fromTemperatureC: 20, toTemperatureC: 100 },
      expect: { changeMm: '0.48' },
      from: {
        source: materialsTextbook,
        at: 'problem 19.8, worked out: 0.4 m of metal, 0.48 mm longer, 1.5 × 10⁻⁵ per °C',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { lengthMm: 200_000, expansionUmPerMK: 12, fromTemperatureC: 20, toTemperatureC: -30 },
      expect: { changeMm: { printed: '-12.0', unit: 'cm', times: 10 } },
      from: { source: physicsClassExpansion, at: 'Example 3, at −30 °C', confirmed: 'text' },
    },
    {
      given: { lengthMm: 200_000, expansionUmPerMK: 12, fromTemperatureC: 20, toTemperatureC: 40 },
      expect: { changeMm: { printed: '4.8', unit: 'cm', times: 10 } },
      from: { source: physicsClassExpansion, at: 'Example 3, at 40 °C', confirmed: 'text' },
    },
    {
      given: { lengthMm: 1500, expansionUmPerMK: 19, fromTemperatureC: 26, toTemperatureC: 16 },
      expect: { changeMm: '-0.2850' },
      from: { workedByHand: '1.5 m × 19 µm is 28.5 µm for each kelvin; 0.0285 × (16 − 26) = −0.2850 mm' },
    },
  ],
  laws: [
    {
      of: 'changeMm',
      by: {
        lengthMm: 'proportional',
        expansionUmPerMK: 'proportional',
        fromTemperatureC: 'linear',
        toTemperatureC: 'linear',
      },
    },
    { of: 'changeMm', by: { fromTemperatureC: 'decreasing', toTemperatureC: 'increasing' } },
  ],
  peers: [
    {
      name: 'the change that compounds degree by degree',
      of: 'changeMm',
      compute: compounded,
      // Half of the strain, 30 × 10⁻⁶ × 100, is what it leaves out.
      relative: 0.002,
      over: { expansionUmPerMK: [0, 30], fromTemperatureC: [-20, 80], toTemperatureC: [-20, 80] },
    },
  ],
  cautions: [
    'Wood that is warmed also dries, and then shrinks more than the warmth swells it. Reckon its moisture as well.',
  ],
}));
