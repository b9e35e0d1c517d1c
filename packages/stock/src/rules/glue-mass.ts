import { defineRule, requireInputs } from '@scantling/rules';
import { glueSpreaderNote1952 } from '@scantling/rules/sources';
import { glueLabel } from '../cautions.ts';

const limits = {
  lengthMm: { min: 1, max: 20_000 },
  thicknessMm: { min: 1, max: 1000 },
  jointCount: { min: 0, max: 1000, integer: true },
  spreadGPerM2: { min: 0, max: 5000 },
  lossPct: { min: 0, max: 90 },
} as const;

export interface GlueMassInput {
  /** Length of each joint, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** Thickness of the boards, mm, 1 to 1000. */
  readonly thicknessMm: number;
  /** How many joints, 0 to 1000. */
  readonly jointCount: number;
  /** Glue to the square metre of glue line, both faces together, g/m², 0 to 5000. */
  readonly spreadGPerM2: number;
  /** Share of what is taken that stays in brush, roller and pot, %, 0 to 90. */
  readonly lossPct: number;
}

export interface GlueMass {
  /** g. */
  readonly massG: number;
}

/**
 * How much glue the edge joints of a panel take.
 *
 * @returns The mass of glue to have ready, g.
 * @throws RangeError where an input is outside its limits.
 * Source: a spread times an area, as Technical Note 255 of the Forest Products Laboratory reckons it.
 * @example
 * ```ts
 * import { glueMass } from '@scantling/stock';
 * // Four joints of 1.8 m, 45 mm thick, 200 g/m², a fifth lost
 * glueMass({ lengthMm: 1800, thicknessMm: 45, jointCount: 4, spreadGPerM2: 200, lossPct: 20 }).massG // => 81
 * ```
 */
export function glueMass(input: GlueMassInput): GlueMass {
  requireInputs('glueMass', input, limits);
  const areaMm2 = input.lengthMm * input.thicknessMm * input.jointCount;
  return { massG: (areaMm2 * input.spreadGPerM2) / (10_000 * (100 - input.lossPct)) + 0 };
}

export const glueMassRule = /* @__PURE__ */ defineRule(() => ({
  id: 'stock/glue-mass',
  title: 'How much glue',
  summary: 'How much glue the edge joints of a panel take, by the spread that its sheet asks for.',
  basis: 'derived',
  inputs: {
    lengthMm: { kind: 'number', label: 'Length of each joint', unit: 'mm', ...limits.lengthMm },
    thicknessMm: { kind: 'number', label: 'Thickness', unit: 'mm', ...limits.thicknessMm },
    jointCount: { kind: 'number', label: 'Joints', unit: '1', ...limits.jointCount },
    spreadGPerM2: {
      kind: 'number',
      label: 'Spread',
      unit: 'g/m²',
      ...limits.spreadGPerM2,
      help: 'For the glue line, both faces together, as the glue’s sheet states it.',
    },
    lossPct: {
      kind: 'number',
      label: 'Lost',
      unit: '%',
      ...limits.lossPct,
      help: 'In brush, roller and pot.',
    },
  },
  outputs: { massG: { label: 'Glue to have ready', unit: 'g' } },
  compute: glueMass,
  formula: String.raw`m = \frac{n \, L \, T \, s}{1 - p}`,
  symbols: {
    m: 'glue',
    n: 'joints',
    L: 'length, m',
    T: 'thickness, m',
    s: 'spread',
    p: 'share lost',
  },
  inSymbols: (input, output) => ({
    m: output.massG,
    n: input.jointCount,
    L: input.lengthMm / 1000,
    T: input.thicknessMm / 1000,
    s: input.spreadGPerM2,
    p: input.lossPct / 100,
  }),
  sources: [
    {
      source: glueSpreaderNote1952,
      at: 'a spreading rate of 50 pounds of glue per 1,000 square feet of area',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { lengthMm: 1800, thicknessMm: 45, jointCount: 4, spreadGPerM2: 200, lossPct: 20 },
      expect: { massG: '81.0' },
      from: { workedByHand: '1.8 × 0.045 × 4 = 0.324 m²; 0.324 × 200 = 64.8 g; 64.8 / 0.8 = 81.0 g' },
    },
  ],
  laws: [
    {
      of: 'massG',
      by: {
        lengthMm: 'proportional',
        thicknessMm: 'proportional',
        jointCount: 'proportional',
        spreadGPerM2: 'proportional',
        lossPct: 'increasing',
      },
    },
  ],
  cautions: [glueLabel],
}));
