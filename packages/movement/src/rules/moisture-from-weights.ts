import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import {
  firewoodMoistureThread,
  moistureAnswerRedOak,
  moistureThread2006,
  moistureThreadWetAndDry,
  reebMilotaOvenDry,
} from '@scantling/rules/sources';

const limits = {
  wetG: { min: 0.1, max: 1_000_000 },
  ovendryG: { min: 0.1, max: 1_000_000 },
} as const;

export interface MoistureFromWeightsInput {
  /** Mass of the piece as it was found, g, 0.1 to 1 000 000. */
  readonly wetG: number;
  /** Mass of the same piece dried in an oven until it gets no lighter, g, 0.1 to 1 000 000; at most `wetG`. */
  readonly ovendryG: number;
}

export interface MoistureFromWeights {
  /** Moisture content before drying, % of the ovendry mass. */
  readonly moisturePct: number;
}

/**
 * The moisture content that a piece of wood had, from its mass then and after drying in an oven. It is the water
 * as a share of the dry wood, not of the whole, so fresh wood can hold more than 100 %.
 *
 * @returns The moisture content, % of the ovendry mass.
 * @throws RangeError where an input is outside its limits, or the piece got heavier in the oven.
 * Source: Reeb and Milota, Moisture Content by the Oven-Dry Method, equation 2.
 * @example
 * ```ts
 * import { moistureFromWeights } from '@scantling/movement';
 * // Red oak, 136 g, in the end 100 g: 36 g of water to 100 g of wood
 * moistureFromWeights({ wetG: 136, ovendryG: 100 }) // => { moisturePct: 36 }
 * moistureFromWeights({ wetG: 90, ovendryG: 100 }) // throws moistureFromWeights requires wetG of at least ovendryG, got 90 and 100
 * ```
 */
export function moistureFromWeights(input: MoistureFromWeightsInput): MoistureFromWeights {
  requireInputs('moistureFromWeights', input, limits);
  const { wetG, ovendryG } = input;
  requireThat(
    'moistureFromWeights',
    wetG >= ovendryG,
    `wetG of at least ovendryG, got ${wetG} and ${ovendryG}`,
  );
  return { moisturePct: ((wetG - ovendryG) / ovendryG) * 100 };
}

/** From the water as a share of the whole, which foresters and firewood sellers use. */
function byWetBasis({ wetG, ovendryG }: MoistureFromWeightsInput): number {
  const waterShare = 1 - ovendryG / wetG;
  return (100 * waterShare) / (1 - waterShare);
}

export const moistureFromWeightsRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/moisture-from-weights',
  title: 'Moisture content by weighing',
  summary:
    'How wet a piece of wood was, from its weight before and after drying in an oven: the check that moisture meters are set by.',
  basis: 'exact',
  inputs: {
    wetG: {
      kind: 'number',
      label: 'Weight as found',
      unit: 'g',
      ...limits.wetG,
      help: 'Weigh at once: an offcut dries while it lies on the bench.',
    },
    ovendryG: {
      kind: 'number',
      label: 'Weight ovendry',
      unit: 'g',
      ...limits.ovendryG,
      help: 'The same piece after an oven at 101 to 105 °C, when it gets no lighter from one weighing to the next.',
    },
  },
  outputs: {
    moisturePct: {
      label: 'Moisture content as found',
      unit: '%',
      help: 'Share of the ovendry weight; above 100 where a piece held more water than wood.',
    },
  },
  compute: moistureFromWeights,
  formula: String.raw`M = \frac{m_w - m_d}{m_d} \cdot 100`,
  symbols: { M: 'moisture content, %', m_w: 'weight as found', m_d: 'weight ovendry' },
  requires: [{ says: 'wetG of at least ovendryG', holds: ({ wetG, ovendryG }) => wetG >= ovendryG }],
  sources: [{ source: reebMilotaOvenDry, at: 'equation 2, after ASTM D4442', confirmed: 'text' }],
  examples: [
    {
      given: { wetG: 136, ovendryG: 100 },
      expect: { moisturePct: '36' },
      from: {
        source: moistureAnswerRedOak,
        at: 'example 1: red oak of 136 g green and 100 g ovendry',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { wetG: 187, ovendryG: 77 },
      expect: { moisturePct: '142' },
      from: { source: moistureThread2006, at: 'first post: 187 g, now 77 g', confirmed: 'text' },
      within: {
        value: 0.9,
        because: 'The post gives 142 % where 110 / 77 is 142.86 %: it cuts the decimals off.',
      },
    },
    {
      given: { wetG: 247, ovendryG: 183 },
      expect: { moisturePct: '34.97' },
      from: { source: moistureThreadWetAndDry, at: 'example: 247 g wet, 183 g ovendry', confirmed: 'text' },
    },
    {
      given: { wetG: 10 * 28.349523125, ovendryG: 6.9 * 28.349523125 },
      expect: { moisturePct: '45' },
      from: {
        source: firewoodMoistureThread,
        at: 'first post: 10 oz, after the oven 6.9 oz, on the dry basis',
        confirmed: 'text',
      },
    },
    {
      given: { wetG: 52.4, ovendryG: 48.5 },
      expect: { moisturePct: '8.041' },
      from: { workedByHand: '52.4 − 48.5 = 3.9 g of water; 3.9 / 48.5 × 100 = 8.041 %' },
    },
  ],
  laws: [
    { of: 'moisturePct', by: { wetG: 'linear', ovendryG: 'decreasing' } },
    { of: 'moisturePct', by: { wetG: 'increasing' } },
  ],
  peers: [
    {
      name: 'the water as a share of the whole, turned into one of the dry wood',
      of: 'moisturePct',
      compute: byWetBasis,
      relative: 1e-9,
      absolute: 1e-9,
    },
  ],
  cautions: [
    'Wood in an oven can smoke and catch fire. Stay by it, keep the heat at or below 105 °C, and do not dry finished or treated wood in a kitchen.',
  ],
}));
