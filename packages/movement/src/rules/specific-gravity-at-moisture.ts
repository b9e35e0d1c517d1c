import { defineRule, requireInputs } from '@scantling/rules';
import {
  nds2018,
  specificGravityReport1993,
  woodFunctionsLibrary,
  woodHandbook2010,
} from '@scantling/rules/sources';

const limits = {
  basicSpecificGravityRatio: { min: 0.05, max: 1.2 },
  moisturePct: { min: 0, max: 300 },
} as const;

export interface SpecificGravityAtMoistureInput {
  /** Basic specific gravity, of the ovendry mass and the green volume, 0.05 to 1.2. */
  readonly basicSpecificGravityRatio: number;
  /** Moisture content, % of ovendry mass, 0 to 300; from 30 % on wood keeps its green volume. */
  readonly moisturePct: number;
}

export interface SpecificGravityAtMoisture {
  /** Specific gravity, of the ovendry mass and the volume at this moisture content. */
  readonly specificGravityRatio: number;
}

/**
 * The specific gravity of wood at a moisture content, from the one that tables print for green wood: dried wood
 * has the same mass of wood in a smaller volume. The volume is taken to shrink by 26.5 times the basic specific
 * gravity, in %, which holds for woods on average.
 *
 * @returns The specific gravity of ovendry mass and volume at the moisture content.
 * @throws RangeError where an input is outside its limits.
 * Source: Simpson 1993 (FPL-GTR-76) and Wood Handbook (FPL-GTR-190), ch. 4.
 * @example
 * ```ts
 * import { specificGravityAtMoisture, woodDensity } from '@scantling/movement';
 * // Sugar maple, 0.56 green: at 8 % it takes up 11 % less room
 * const { specificGravityRatio } = specificGravityAtMoisture({ basicSpecificGravityRatio: 0.56, moisturePct: 8 });
 * specificGravityRatio // => 0.628
 * woodDensity({ specificGravityRatio, moisturePct: 8 }).densityKgPerM3 // => 678.7
 * specificGravityAtMoisture({ basicSpecificGravityRatio: 56, moisturePct: 8 }) // throws specificGravityAtMoisture requires basicSpecificGravityRatio between 0.05 and 1.2, got 56
 * ```
 */
export function specificGravityAtMoisture(input: SpecificGravityAtMoistureInput): SpecificGravityAtMoisture {
  requireInputs('specificGravityAtMoisture', input, limits);
  const { basicSpecificGravityRatio, moisturePct } = input;
  const dried = Math.max(0, 1 - moisturePct / 30);
  return {
    specificGravityRatio: basicSpecificGravityRatio / (1 - 0.265 * dried * basicSpecificGravityRatio),
  };
}

/** By way of the ovendry volume, from which wood swells by 0.9 times the ovendry specific gravity for each 1 %. */
function bySwelling({ basicSpecificGravityRatio, moisturePct }: SpecificGravityAtMoistureInput): number {
  const ovendryRatio = basicSpecificGravityRatio / (1 - 0.265 * basicSpecificGravityRatio);
  return ovendryRatio / (1 + 0.009 * moisturePct * ovendryRatio);
}

export const specificGravityAtMoistureRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/specific-gravity-at-moisture',
  title: 'Specific gravity at a moisture content',
  summary:
    'What the specific gravity that tables print for green wood becomes when the wood dries and takes up less room.',
  basis: 'measured',
  inputs: {
    basicSpecificGravityRatio: {
      kind: 'number',
      label: 'Basic specific gravity',
      unit: '1',
      ...limits.basicSpecificGravityRatio,
      help: 'Of the ovendry mass and the green volume: the figure that tables print for green wood.',
    },
    moisturePct: { kind: 'number', label: 'Moisture content', unit: '%', ...limits.moisturePct },
  },
  outputs: {
    specificGravityRatio: {
      label: 'Specific gravity',
      unit: '1',
      help: 'Of the ovendry mass and the volume at this moisture content.',
    },
  },
  compute: specificGravityAtMoisture,
  formula: String.raw`G_M = \frac{G_b}{1 - 0.265\,a\,G_b}, \quad a = \max\left(0,\ \frac{30 - M}{30}\right)`,
  symbols: {
    G_M: 'specific gravity, of the ovendry mass and the volume at M',
    G_b: 'basic specific gravity',
    a: 'share of the drying from 30 % that is done',
    M: 'moisture content, %',
  },
  sources: [
    {
      source: specificGravityReport1993,
      at: 'the relation of basic specific gravity to that at a moisture content, its constant 0.265',
      confirmed: 'memory',
    },
    {
      source: woodHandbook2010,
      at: 'Table 4-5, ch. 4: what basic specific gravity is, and that at a moisture content',
      confirmed: 'text',
    },
    {
      source: woodHandbook2010,
      at: 'Eq. 4-7 and 4-9, ch. 4: its form, from the shrinkage in volume and 30 % fibre saturation, as a library for chemical engineering cites them',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { basicSpecificGravityRatio: 0.56, moisturePct: 12 },
      expect: { specificGravityRatio: '0.6147' },
      from: {
        workedByHand:
          'a: 18 / 30 = 0.6; 0.265 × 0.6 × 0.56 = 0.08904; 0.56 / (1 − 0.08904) = 0.6147. Tables print 0.63 for this wood, sugar maple, at 12 %',
      },
    },
    {
      given: { basicSpecificGravityRatio: 0.38, moisturePct: 0 },
      expect: { specificGravityRatio: '0.42255' },
      from: { workedByHand: '0.265 × 0.38 = 0.1007; 0.38 / (1 − 0.1007) = 0.42255' },
    },
    {
      given: { basicSpecificGravityRatio: 0.5, moisturePct: 80 },
      expect: { specificGravityRatio: '0.500' },
      from: { workedByHand: 'Above 30 % wood has its green volume, and a is 0: 0.5 / (1 − 0) = 0.500' },
    },
  ],
  laws: [
    {
      of: 'specificGravityRatio',
      by: { basicSpecificGravityRatio: 'increasing', moisturePct: 'decreasing' },
    },
  ],
  peers: [
    {
      name: 'the specific gravity of ovendry wood, swollen by 0.009 for each 1 % of moisture content',
      of: 'specificGravityRatio',
      compute: bySwelling,
      // Where one takes 0.265 / 30 = 0.00883 the other takes 0.009.
      relative: 0.005,
      over: { basicSpecificGravityRatio: [0.05, 0.9], moisturePct: [0, 30] },
      source: {
        source: nds2018,
        at: 'Supplement, the density of wood from its ovendry specific gravity and its moisture content',
        confirmed: 'memory',
      },
    },
    {
      name: 'the specific gravity from the shrinkage in volume, of 26.5 times the basic specific gravity',
      of: 'specificGravityRatio',
      compute: ({ basicSpecificGravityRatio, moisturePct }) => {
        const greenToOvendryPct = 26.5 * basicSpecificGravityRatio;
        const shrunkPct = moisturePct < 30 ? greenToOvendryPct * (1 - moisturePct / 30) : 0;
        return basicSpecificGravityRatio / (1 - shrunkPct / 100);
      },
      relative: 1e-12,
      source: {
        source: woodFunctionsLibrary,
        at: 'k_wood: specific gravity from the shrinkage in volume',
        confirmed: 'text',
      },
    },
  ],
  cautions: [
    'Boards of one species differ by a tenth and more, and some woods shrink much less in volume than the average that this rests on. Weigh a board where a load or a lift depends on it.',
  ],
}));
