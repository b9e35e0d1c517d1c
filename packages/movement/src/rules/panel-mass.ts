import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { lumberWeightAnswer2000, woodHandbook2010 } from '@scantling/rules/sources';
import { woodDensity } from './wood-density.ts';

const side = { min: 0, max: 20_000 };
const limits = {
  lengthMm: side,
  widthMm: side,
  thicknessMm: { min: 0, max: 1000 },
  specificGravityRatio: { min: 0.05, max: 1.5 },
  moisturePct: { min: 0, max: 300 },
} as const;

export interface PanelMassInput {
  /** Length, mm, 0 to 20 000. */
  readonly lengthMm: number;
  /** Width at this moisture content, mm, 0 to 20 000. */
  readonly widthMm: number;
  /** Thickness at this moisture content, mm, 0 to 1000. */
  readonly thicknessMm: number;
  /** Specific gravity, of the ovendry mass and the volume at this moisture content, 0.05 to 1.5. */
  readonly specificGravityRatio: number;
  /** Moisture content, % of ovendry mass, 0 to 300. */
  readonly moisturePct: number;
}

export interface PanelMass {
  /** Mass of the wood with its water, kg. */
  readonly massKg: number;
}

/**
 * What a board or a panel weighs with the water in it.
 *
 * @returns The mass, kg.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), ch. 4, density from specific gravity and moisture content.
 * @example
 * ```ts
 * import { panelMass } from '@scantling/movement';
 * // A sugar maple top of 1500 × 600 × 45 mm at 8 %: 0.0405 m³ × 680.4 kg/m³
 * panelMass({ lengthMm: 1500, widthMm: 600, thicknessMm: 45, specificGravityRatio: 0.63, moisturePct: 8 }).massKg // => 27.56
 * panelMass({ lengthMm: 1500, widthMm: -1, thicknessMm: 45, specificGravityRatio: 0.63, moisturePct: 8 }) // throws panelMass requires widthMm between 0 and 20000, got -1
 * ```
 */
export function panelMass(input: PanelMassInput): PanelMass {
  requireInputs('panelMass', input, limits);
  const { lengthMm, widthMm, thicknessMm, specificGravityRatio, moisturePct } = input;
  const litres = lengthMm * widthMm * thicknessMm * 1e-6;
  return { massKg: plusZero(litres * specificGravityRatio * (1 + moisturePct / 100)) };
}

/**
 * A thousand board feet are scaled as 12 ft by 1000 in by 1 in; a strip of them, 12 in wide, is 12 board feet. A function,
 * so that a bundler leaves it out with the card.
 */
const twelveBoardFeet = () => ({
  size: { lengthMm: (12 * 12 + 2) * 25.4, widthMm: 12 * 25.4, thicknessMm: 1.125 * 25.4 },
  lbPerThousand: { unit: 'lb/1000 board feet', times: 0.453_592_37 * 0.012 },
});

export const panelMassRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/panel-mass',
  title: 'Mass of a panel',
  summary:
    'What a board or a panel weighs with the water in it: for lifting it, and for what has to carry it.',
  basis: 'exact',
  inputs: {
    lengthMm: { kind: 'number', label: 'Length', unit: 'mm', ...limits.lengthMm },
    widthMm: { kind: 'number', label: 'Width', unit: 'mm', ...limits.widthMm },
    thicknessMm: { kind: 'number', label: 'Thickness', unit: 'mm', ...limits.thicknessMm },
    specificGravityRatio: {
      kind: 'number',
      label: 'Specific gravity',
      unit: '1',
      ...limits.specificGravityRatio,
      help: 'Of the ovendry mass and the volume at this moisture content: for indoor wood the table value at 12 %.',
    },
    moisturePct: { kind: 'number', label: 'Moisture content', unit: '%', ...limits.moisturePct },
  },
  outputs: { massKg: { label: 'Mass', unit: 'kg' } },
  compute: panelMass,
  formula: String.raw`m = l\,w\,t\,\rho_w\,G_M \left(1 + \frac{M}{100}\right)`,
  symbols: {
    m: 'mass',
    'l, w, t': 'length, width and thickness',
    '\\rho_w': 'density of water, 1000 kg/m³',
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
    {
      source: woodHandbook2010,
      at: 'ch. 4, Density and Specific Gravity: about 10 % of variation among boards of a species',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { ...twelveBoardFeet().size, specificGravityRatio: 0.56, moisturePct: 75 },
      expect: { massKg: { printed: '5821', ...twelveBoardFeet().lbPerThousand } },
      within: {
        value: 0.05,
        because:
          'The answer works from tables of weight that round on the way; the green specific gravity of northern red oak, 0.56, is recalled from the Wood Handbook.',
      },
      from: {
        source: lumberWeightAnswer2000,
        at: 'northern red oak at 75 %, 1 1/8 in thick, 12 ft 2 in long',
        confirmed: 'text',
      },
    },
    {
      given: { ...twelveBoardFeet().size, specificGravityRatio: 0.6, moisturePct: 65 },
      expect: { massKg: { printed: '5879', ...twelveBoardFeet().lbPerThousand } },
      within: {
        value: 0.03,
        because:
          'The answer works from tables of weight that round on the way; the green specific gravity of white oak, 0.60, is recalled from the Wood Handbook.',
      },
      from: {
        source: lumberWeightAnswer2000,
        at: 'white oak at 65 %, 1 1/8 in thick, 12 ft 2 in long',
        confirmed: 'text',
      },
    },
    {
      given: { ...twelveBoardFeet().size, specificGravityRatio: 0.51, moisturePct: 90 },
      expect: { massKg: { printed: '5753', ...twelveBoardFeet().lbPerThousand } },
      within: {
        value: 0.03,
        because:
          'The answer works from tables of weight that round on the way; the green specific gravity of black walnut, 0.51, is recalled from the Wood Handbook.',
      },
      from: {
        source: lumberWeightAnswer2000,
        at: 'black walnut at 90 %, 1 1/8 in thick, 12 ft 2 in long',
        confirmed: 'text',
      },
    },
    {
      given: { lengthMm: 1500, widthMm: 600, thicknessMm: 45, specificGravityRatio: 0.63, moisturePct: 8 },
      expect: { massKg: '27.5562' },
      from: {
        workedByHand:
          '1.5 × 0.6 × 0.045 = 0.0405 m³; 630 × (1 + 8 / 100) = 680.4 kg/m³; 0.0405 × 680.4 = 27.5562 kg',
      },
    },
  ],
  laws: [
    {
      of: 'massKg',
      by: {
        lengthMm: 'proportional',
        widthMm: 'proportional',
        thicknessMm: 'proportional',
        specificGravityRatio: 'proportional',
        moisturePct: 'linear',
      },
    },
    { of: 'massKg', by: { moisturePct: 'increasing' } },
  ],
  peers: [
    {
      name: 'the density of the wood times the volume in cubic metres',
      of: 'massKg',
      compute: (input) =>
        woodDensity(input).densityKgPerM3 *
        (input.lengthMm / 1000) *
        (input.widthMm / 1000) *
        (input.thicknessMm / 1000),
      relative: 1e-12,
    },
  ],
  cautions: [
    'Boards of one species differ by a tenth and more. Weigh one board where a lift, a base or a wall fixing depends on it, and lift a heavy top with two people.',
  ],
}));
