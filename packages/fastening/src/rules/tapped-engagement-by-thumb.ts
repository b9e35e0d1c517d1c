import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { threadEngagementColumn, threadEngagementTutorial } from '@scantling/rules/sources';
import { makersDataFirst, notStructuralDesign } from '../cautions.ts';

const limits = { diameterMm: { min: 1, max: 64 } } as const;

const diameters = { steel: 1, castIron: 1.5, brass: 1.5, aluminium: 2 } as const;

export interface TappedEngagementByThumbInput {
  /** Diameter of the machine screw over its thread, mm, 1 to 64. */
  readonly diameterMm: number;
  /** What is tapped. */
  readonly metal: keyof typeof diameters;
}

export interface TappedEngagementByThumb {
  /** Least length of thread in the tapped metal, mm. */
  readonly leastEngagementMm: number;
}

/**
 * The engineer's rule of thumb for a machine screw in a tapped hole: as long as the screw is thick in steel, half as
 * long again in cast iron and brass, twice as long in aluminium. It asks for more than `tappedEngagement` computes for
 * metals of equal strength, and leaves room for worn taps and wide holes.
 *
 * @returns Least length of engagement, mm.
 * @throws RangeError where the diameter is outside its limits or the metal is none of the four.
 * Source: a column in a magazine for design engineers; brass from memory.
 * @example
 * ```ts
 * import { tappedEngagementByThumb } from '@scantling/fastening';
 * tappedEngagementByThumb({ diameterMm: 4, metal: 'brass' }).leastEngagementMm // => 6
 * ```
 */
export function tappedEngagementByThumb(input: TappedEngagementByThumbInput): TappedEngagementByThumb {
  requireInputs('tappedEngagementByThumb', input, limits);
  const { diameterMm, metal } = input;
  requireChoice('tappedEngagementByThumb', 'metal', metal, Object.keys(diameters));
  return { leastEngagementMm: diameters[metal] * diameterMm };
}

export const tappedEngagementByThumbRule = /* @__PURE__ */ defineRule<
  TappedEngagementByThumbInput,
  TappedEngagementByThumb
>(() => ({
  id: 'fastening/tapped-engagement-by-thumb',
  title: 'Engagement in tapped metal, by rule of thumb',
  summary: 'How much thread of a machine screw is to be in tapped metal, in diameters by the metal.',
  basis: 'convention',
  inputs: {
    diameterMm: { kind: 'number', label: 'Screw diameter', unit: 'mm', ...limits.diameterMm },
    metal: {
      kind: 'choice',
      label: 'Tapped metal',
      options: { steel: 'Steel', castIron: 'Cast iron', brass: 'Brass', aluminium: 'Aluminium' },
    },
  },
  outputs: { leastEngagementMm: { label: 'Least engagement', unit: 'mm' } },
  compute: tappedEngagementByThumb,
  formula: String.raw`L_e = k\,D`,
  symbols: {
    L_e: 'least engagement',
    D: 'screw diameter',
    k: '1 in steel, 1.5 in cast iron and brass, 2 in aluminium',
  },
  inSymbols: (input, output) => ({
    L_e: output.leastEngagementMm,
    D: input.diameterMm,
    k: diameters[input.metal],
  }),
  sources: [
    {
      source: threadEngagementColumn,
      at: 'rule of thumb: 1.0D for steel, 1.5D for cast iron and 2.0D for aluminium; or 1.5D for all',
      confirmed: 'text',
    },
    {
      source: threadEngagementTutorial,
      at: 'thumb rules: brass stands with cast iron',
      confirmed: 'text',
      tier: 'reprint',
      erratum:
        'The tutorial has 1.5 diameters in steel and 2 in cast iron and brass. That brass takes 1.5 is memory.',
    },
  ],
  examples: [
    {
      given: { diameterMm: 6, metal: 'steel' },
      expect: { leastEngagementMm: '6.00' },
      from: { workedByHand: '1.0 × 6 = 6.00 mm' },
    },
    {
      given: { diameterMm: 5, metal: 'castIron' },
      expect: { leastEngagementMm: '7.50' },
      from: { workedByHand: '1.5 × 5 = 7.50 mm' },
    },
    {
      given: { diameterMm: 4, metal: 'brass' },
      expect: { leastEngagementMm: '6.00' },
      from: { workedByHand: '1.5 × 4 = 6.00 mm' },
    },
    {
      given: { diameterMm: 8, metal: 'aluminium' },
      expect: { leastEngagementMm: '16.00' },
      from: { workedByHand: '2.0 × 8 = 16.00 mm' },
    },
  ],
  laws: [{ of: 'leastEngagementMm', by: { diameterMm: 'proportional' } }],
  cautions: [makersDataFirst, notStructuralDesign],
}));
