import { defineRule, requireInputs } from '@scantling/rules';
import { forestryFunctions2020, woodHandbook2010 } from '@scantling/rules/sources';

const limits = {
  specificGravityRatio: { min: 0.05, max: 1.5 },
  moisturePct: { min: 0, max: 300 },
} as const;

export interface WoodDensityInput {
  /** Ovendry mass over the mass of water that fills the volume at this moisture content, 0.05 to 1.5. */
  readonly specificGravityRatio: number;
  /** Moisture content, % of ovendry mass, 0 to 300. */
  readonly moisturePct: number;
}

export interface WoodDensity {
  /** Mass of the wood with its water, kg to the cubic metre. */
  readonly densityKgPerM3: number;
}

/**
 * The density of wood with the water in it. The specific gravity has to be the one for its volume at this moisture
 * content: tables print it green and at 12 %; from 12 % to another indoor moisture content it changes by 1 or 2 %.
 *
 * @returns The density, kg/m³.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), ch. 4.
 * @example
 * ```ts
 * import { woodDensity } from '@scantling/movement';
 * woodDensity({ specificGravityRatio: 0.4, moisturePct: 12 }).densityKgPerM3 // => 448.0
 * woodDensity({ specificGravityRatio: 0.4, moisturePct: 301 }) // throws woodDensity requires moisturePct between 0 and 300, got 301
 * ```
 */
export function woodDensity(input: WoodDensityInput): WoodDensity {
  requireInputs('woodDensity', input, limits);
  return { densityKgPerM3: 1000 * input.specificGravityRatio * (1 + input.moisturePct / 100) };
}

export const woodDensityRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/wood-density',
  title: 'Density of wood',
  summary:
    'What a cubic metre of wood weighs with the water in it, from the specific gravity that tables print.',
  basis: 'exact',
  inputs: {
    specificGravityRatio: {
      kind: 'number',
      label: 'Specific gravity',
      unit: '1',
      ...limits.specificGravityRatio,
      help: 'Of the ovendry mass and the volume at this moisture content: for indoor wood the table value at 12 %.',
    },
    moisturePct: { kind: 'number', label: 'Moisture content', unit: '%', ...limits.moisturePct },
  },
  outputs: {
    densityKgPerM3: { label: 'Density', unit: 'kg/m³', help: 'Of the wood with its water.' },
  },
  compute: woodDensity,
  formula: String.raw`\rho = 1000\,G_M \left(1 + \frac{M}{100}\right)`,
  symbols: {
    '\\rho': 'density, kg/m³',
    G_M: 'specific gravity, of the ovendry mass and the volume at M',
    M: 'moisture content, %',
  },
  sources: [
    {
      source: woodHandbook2010,
      at: 'ch. 4, density from specific gravity and moisture content, as a forestry library cites it',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { specificGravityRatio: 0.4, moisturePct: 12 },
      expect: { densityKgPerM3: '448' },
      from: { source: forestryFunctions2020, at: 'example: 0.4 at 12 %, in kg/m³', confirmed: 'text' },
    },
    {
      given: { specificGravityRatio: 0.4, moisturePct: 12 },
      // The page takes water at 62.43 lb/ft³, which it gives for 1000 kg/m³.
      expect: { densityKgPerM3: { printed: '27.968', unit: 'lb/ft³', times: 1000 / 62.43 } },
      within: {
        value: 0.03,
        because:
          'The page prints 27.968 where its own 62.43 × 0.4 × 1.12 is 27.9686, cut off rather than rounded.',
      },
      from: { source: forestryFunctions2020, at: 'example: 0.4 at 12 %, in lb/ft³', confirmed: 'text' },
    },
    {
      given: { specificGravityRatio: 0.63, moisturePct: 8 },
      expect: { densityKgPerM3: '680.4' },
      from: { workedByHand: '1000 × 0.63 = 630 kg of dry wood; 630 × (1 + 8 / 100) = 680.4 kg/m³' },
    },
  ],
  laws: [
    { of: 'densityKgPerM3', by: { specificGravityRatio: 'proportional', moisturePct: 'linear' } },
    { of: 'densityKgPerM3', by: { moisturePct: 'increasing' } },
  ],
  cautions: [
    'Boards of one species differ by a tenth and more. Weigh a board where a load or a lift depends on it.',
  ],
}));
