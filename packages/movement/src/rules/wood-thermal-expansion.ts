import { defineRule, requireInputs } from '@scantling/rules';
import { moistWoodExpansion1973, woodHandbook2010 } from '@scantling/rules/sources';

const limits = { ovendrySpecificGravityRatio: { min: 0.05, max: 1.5 } } as const;

export interface WoodThermalExpansionInput {
  /** Specific gravity of ovendry mass and ovendry volume, 0.05 to 1.5. */
  readonly ovendrySpecificGravityRatio: number;
}

export interface WoodThermalExpansion {
  /** Thermal expansion across the growth rings, µm per metre and kelvin. */
  readonly radialUmPerMK: number;
  /** Thermal expansion along the growth rings, µm per metre and kelvin. */
  readonly tangentialUmPerMK: number;
}

/**
 * How much wood swells with warmth across the grain, from its ovendry specific gravity. Along the grain it is 3.1 to
 * 4.5 µm/(m·K) for every wood: see `thermalExpansionTable`.
 *
 * @returns Both coefficients, µm/(m·K), which is millionths per kelvin.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), ch. 4, for ovendry wood of specific gravity 0.1 to 0.8.
 * @example
 * ```ts
 * import { woodThermalExpansion } from '@scantling/movement';
 * woodThermalExpansion({ ovendrySpecificGravityRatio: 0.66 }) // => { radialUmPerMK: 31.284, tangentialUmPerMK: 39.784 }
 * woodThermalExpansion({ ovendrySpecificGravityRatio: 2 }) // throws woodThermalExpansion requires ovendrySpecificGravityRatio between 0.05 and 1.5, got 2
 * ```
 */
export function woodThermalExpansion(input: WoodThermalExpansionInput): WoodThermalExpansion {
  requireInputs('woodThermalExpansion', input, limits);
  const byGravity = 32.4 * input.ovendrySpecificGravityRatio;
  return { radialUmPerMK: byGravity + 9.9, tangentialUmPerMK: byGravity + 18.4 };
}

const FAHRENHEIT_PER_KELVIN = 1.8;

export const woodThermalExpansionRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/wood-thermal-expansion',
  title: 'Thermal expansion of wood across the grain',
  summary: 'The coefficients by which dry wood swells with warmth, across the growth rings and along them.',
  basis: 'measured',
  inputs: {
    ovendrySpecificGravityRatio: {
      kind: 'number',
      label: 'Ovendry specific gravity',
      unit: '1',
      ...limits.ovendrySpecificGravityRatio,
      help: 'Of the ovendry mass and the ovendry volume: a little more than the table value at 12 %.',
    },
  },
  outputs: {
    radialUmPerMK: { label: 'Thermal expansion, radial', unit: 'µm/(m·K)' },
    tangentialUmPerMK: { label: 'Thermal expansion, tangential', unit: 'µm/(m·K)' },
  },
  compute: woodThermalExpansion,
  formula: String.raw`\begin{aligned}
\alpha_r &= (32.4\,G_0 + 9.9) \times 10^{-6} \\
\alpha_t &= (32.4\,G_0 + 18.4) \times 10^{-6}
\end{aligned}`,
  symbols: {
    '\\alpha_r, \\alpha_t': 'radial and tangential coefficient, per kelvin',
    G_0: 'ovendry specific gravity',
  },
  valid: { ovendrySpecificGravityRatio: [0.1, 0.8] },
  sources: [
    {
      source: woodHandbook2010,
      at: 'ch. 4, Coefficient of Thermal Expansion, the equations for kelvin',
      confirmed: 'memory',
    },
    {
      source: moistWoodExpansion1973,
      at: 'abstract: coefficients of wood that holds moisture',
      confirmed: 'text',
      erratum:
        'At 12 % moisture content it measured more than these equations for ovendry wood give: tangentially 38 µm/(m·K) for yellow birch and for Douglas-fir, yet 53 for redwood and 70 for northern red oak.',
    },
  ],
  examples: [
    {
      given: { ovendrySpecificGravityRatio: 0.66 },
      expect: { radialUmPerMK: '31.284', tangentialUmPerMK: '39.784' },
      from: {
        workedByHand: '32.4 × 0.66 = 21.384; 21.384 + 9.9 = 31.284; 21.384 + 18.4 = 39.784',
      },
    },
  ],
  laws: [
    { of: 'radialUmPerMK', by: { ovendrySpecificGravityRatio: 'linear' } },
    { of: 'tangentialUmPerMK', by: { ovendrySpecificGravityRatio: 'linear' } },
    { of: 'radialUmPerMK', by: { ovendrySpecificGravityRatio: 'increasing' } },
    { of: 'tangentialUmPerMK', by: { ovendrySpecificGravityRatio: 'increasing' } },
  ],
  peers: [
    {
      name: 'the radial equation for degrees Fahrenheit',
      of: 'radialUmPerMK',
      compute: ({ ovendrySpecificGravityRatio }) =>
        (18 * ovendrySpecificGravityRatio + 5.5) * FAHRENHEIT_PER_KELVIN,
      relative: 1e-12,
      source: { source: woodHandbook2010, at: 'ch. 4, the equation for °F', confirmed: 'memory' },
    },
    {
      name: 'the tangential equation for degrees Fahrenheit',
      of: 'tangentialUmPerMK',
      compute: ({ ovendrySpecificGravityRatio }) =>
        (18 * ovendrySpecificGravityRatio + 10.2) * FAHRENHEIT_PER_KELVIN,
      // 10.2 × 1.8 is 18.36, which the equation for kelvin rounds.
      absolute: 0.05,
      source: { source: woodHandbook2010, at: 'ch. 4, the equation for °F', confirmed: 'memory' },
    },
  ],
  cautions: [
    'Wood that holds moisture swells more with warmth than these figures for dry wood say, and as it is warmed it dries and shrinks. In a room the moisture decides.',
  ],
}));
