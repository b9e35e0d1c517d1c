import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { creepAnswer, deflectionAnswer } from '@scantling/rules/sources';
import { notStructural, stiffnessVaries } from '../cautions.ts';

const limits = {
  lastingSagMm: { min: 0, max: 1000 },
  passingSagMm: { min: 0, max: 1000 },
} as const;

/** How dry the wood was when it was loaded. */
export type Seasoning = 'seasoned' | 'unseasoned';

export interface LongTermSagInput {
  /** Sag at once under what stays on it, its own weight as well, mm, 0 to 1000. */
  readonly lastingSagMm: number;
  /** Sag at once under what comes and goes, mm, 0 to 1000. */
  readonly passingSagMm: number;
  /** How dry the wood was when it was loaded. */
  readonly seasoning: Seasoning;
}

export interface LongTermSag {
  /** Sag after years, with both loads on it, mm. */
  readonly sagMm: number;
  /** What it has grown by, mm. */
  readonly creepMm: number;
}

/**
 * How far wood has sagged after years: under a load that stays it goes on sinking. The figures are for the expected,
 * average board.
 *
 * @returns The sag after years, mm, and its growth.
 * @throws RangeError where an input is outside its limits or the seasoning is none of the two.
 * Source: National Design Specification, section 3.5.2, as the American Wood Council explains it.
 * @example
 * ```ts
 * import { longTermSag } from '@scantling/stock';
 * longTermSag({ lastingSagMm: 0.8, passingSagMm: 0.4, seasoning: 'seasoned' }) // => { sagMm: 1.6, creepMm: 0.4 }
 * ```
 */
export function longTermSag(input: LongTermSagInput): LongTermSag {
  requireInputs('longTermSag', input, limits);
  const { lastingSagMm, passingSagMm, seasoning } = input;
  requireChoice('longTermSag', 'seasoning', seasoning, ['seasoned', 'unseasoned']);
  const creepMm = (seasoning === 'seasoned' ? 0.5 : 1) * lastingSagMm + 0;
  return { sagMm: lastingSagMm + creepMm + passingSagMm, creepMm };
}

export const longTermSagRule = /* @__PURE__ */ defineRule<LongTermSagInput, LongTermSag>(() => ({
  id: 'stock/long-term-sag',
  title: 'Sag after years',
  summary: 'How far a top or shelf has sagged after years under a load that stays on it.',
  basis: 'measured',
  inputs: {
    lastingSagMm: {
      kind: 'number',
      label: 'Sag at once, of what stays',
      unit: 'mm',
      ...limits.lastingSagMm,
      help: 'Its own weight as well.',
    },
    passingSagMm: {
      kind: 'number',
      label: 'Sag at once, of what comes and goes',
      unit: 'mm',
      ...limits.passingSagMm,
    },
    seasoning: {
      kind: 'choice',
      label: 'The wood was',
      options: { seasoned: 'dry when it was loaded', unseasoned: 'green when it was loaded' },
    },
  },
  outputs: {
    sagMm: { label: 'Sag after years', unit: 'mm' },
    creepMm: { label: 'Grown by', unit: 'mm' },
  },
  compute: longTermSag,
  formula: String.raw`\Delta_T = K_{cr} \, \Delta_{LT} + \Delta_{ST}, \qquad \Delta_c = (K_{cr} - 1) \, \Delta_{LT}`,
  symbols: {
    '\\Delta_T': 'sag after years',
    'K_{cr}': 'creep factor: 1.5 for seasoned wood, 2 for unseasoned',
    '\\Delta_{LT}': 'sag at once of what stays',
    '\\Delta_{ST}': 'sag at once of what comes and goes',
    '\\Delta_c': 'what the years add',
  },
  inSymbols: (input, output) => ({
    '\\Delta_T': output.sagMm,
    'K_{cr}': input.seasoning === 'seasoned' ? 1.5 : 2,
    '\\Delta_{LT}': input.lastingSagMm,
    '\\Delta_{ST}': input.passingSagMm,
    '\\Delta_c': output.creepMm,
  }),
  sources: [
    {
      source: creepAnswer,
      at: '1.5 times the initial deflection for seasoned, 2.0 for unseasoned lumber',
      confirmed: 'text',
    },
    {
      source: deflectionAnswer,
      at: 'that the creep factor goes with the load that stays, the rest is added',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { lastingSagMm: 2, passingSagMm: 0, seasoning: 'seasoned' },
      expect: { sagMm: '3.0' },
      from: { workedByHand: '1.5 × 2 + 0 = 3.0 mm' },
    },
    {
      given: { lastingSagMm: 2, passingSagMm: 0, seasoning: 'unseasoned' },
      expect: { sagMm: '4.0' },
      from: { workedByHand: '2.0 × 2 + 0 = 4.0 mm' },
    },
    {
      given: { lastingSagMm: 0.8, passingSagMm: 0.5, seasoning: 'seasoned' },
      expect: { sagMm: '1.70', creepMm: '0.40' },
      from: { workedByHand: '0.5 × 0.8 = 0.40 mm; 1.5 × 0.8 + 0.5 = 1.70 mm' },
    },
  ],
  laws: [
    { of: 'sagMm', by: { lastingSagMm: 'linear', passingSagMm: 'linear' } },
    { of: 'creepMm', by: { lastingSagMm: 'proportional' } },
  ],
  cautions: [notStructural, stiffnessVaries],
}));
