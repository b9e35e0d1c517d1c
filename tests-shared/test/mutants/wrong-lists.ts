import { type AnyRule, defineRule, plusZero, requireChoice, requireInputs } from '@scantling/rules';
import {
  type MixByPartsInput,
  mixByParts,
  mixByPartsRule,
} from '../../../packages/finishing/src/rules/mix-by-parts.ts';
import { AGAIN, CARD, EXAMPLES, FINITE, LAWS, type Mutants, NEEDS, REFUSES, TOLERANCE } from './real-rule.ts';

/** A real rule that takes a list and gives one. */
export const listRule: AnyRule = mixByPartsRule;

const mixing = (compute: (input: MixByPartsInput) => unknown): AnyRule => ({
  ...listRule,
  compute: Object.defineProperty(compute, 'name', { value: 'mixByParts' }),
});

const shared = ({ parts, batchMl }: MixByPartsInput) => {
  const partMl = plusZero(batchMl / parts.reduce((sum, part) => sum + part));
  return { partMl, volumesMl: parts.map((part) => part * partMl) };
};

const stating = (volumesMl: readonly string[]): AnyRule => ({
  ...listRule,
  examples: [{ ...(listRule.examples[0] as AnyRule['examples'][0]), expect: { partMl: '4.00', volumesMl } }],
});

interface ShelfInput {
  readonly cut: 'flatsawn' | 'quartersawn';
  readonly count: number;
}

const perBoardMm = { flatsawn: 30, quartersawn: 20 };
const countLimits = { min: 0, max: 40, integer: true } as const;

function stackHeight(input: ShelfInput) {
  requireChoice('stackHeight', 'cut', input.cut, Object.keys(perBoardMm));
  requireInputs('stackHeight', input, { count: countLimits });
  return { heightMm: input.count * perBoardMm[input.cut] + 0 };
}

const stackHeightRule = defineRule(() => ({
  id: 'demo/stack-height',
  title: 'Height of a stack',
  summary: 'How high boards of one cut stand when they are stacked flat.',
  basis: 'convention',
  inputs: {
    cut: { kind: 'choice', label: 'Cut', options: { flatsawn: 'Flatsawn', quartersawn: 'Quartersawn' } },
    count: { kind: 'number', label: 'Boards', unit: '1', ...countLimits },
  },
  outputs: { heightMm: { label: 'Height', unit: 'mm' } },
  compute: stackHeight,
  formula: 'h = n t',
  sources: [],
  examples: [
    {
      given: { cut: 'flatsawn', count: 4 } as const,
      expect: { heightMm: '120.0' },
      from: { workedByHand: '4 × 30 = 120.0 mm' },
    },
  ],
  laws: [
    { of: 'heightMm', by: { count: 'proportional' } },
    { of: 'heightMm', by: { count: 'linear' } },
    { of: 'heightMm', by: { count: 'increasing' } },
  ],
}));

/** A made-up rule that takes a choice and a whole number, which no rule of the trade does together yet. */
export const choiceRule: AnyRule = stackHeightRule;

const stacking = (compute: (input: ShelfInput) => unknown): AnyRule => ({
  ...choiceRule,
  compute: Object.defineProperty(compute, 'name', { value: 'stackHeight' }),
});

const cuts = choiceRule.inputs.cut as { kind: 'choice'; label: string; options: object };
const withCuts = (options: object): AnyRule => ({
  ...choiceRule,
  inputs: { ...choiceRule.inputs, cut: { ...cuts, options: options as Record<string, string> } },
});

/** Faults that only lists, choices and whole numbers can have. */
export const wrongLists: Mutants = {
  'a list of which only the first number is checked': [
    mixing((input) => {
      mixByParts({ ...input, parts: [input.parts[0] ?? Number.NaN] });
      return shared(input);
    }),
    [REFUSES],
  ],
  'a list of any length': [
    mixing((input) => {
      for (const part of input.parts) mixByParts({ ...input, parts: [part] });
      return input.parts.length === 0 ? { partMl: 0, volumesMl: [] } : shared(input);
    }),
    [REFUSES],
  ],
  'a list that is handed back': [
    mixing((input) => ({ ...mixByParts(input), volumesMl: input.parts })),
    [EXAMPLES, FINITE],
  ],
  'a list with NaN in its last place': [
    mixing((input) => ({
      ...mixByParts(input),
      volumesMl: [...mixByParts(input).volumesMl.slice(1), Number.NaN],
    })),
    [EXAMPLES, FINITE],
  ],
  'a list out of order': [
    mixing((input) => ({ ...mixByParts(input), volumesMl: [...mixByParts(input).volumesMl].reverse() })),
    [EXAMPLES],
  ],
  'a list of which the example states a part': [stating(['20.0']), [EXAMPLES]],
  'a list that the example makes longer': [stating(['20.0', '240.0', '0']), [EXAMPLES]],
  'a list that the example leaves out': [
    { ...stating([]), examples: stating([]).examples.map((one) => ({ ...one, expect: { partMl: '4.00' } })) },
    [TOLERANCE],
  ],
  'a law about a list': [{ ...listRule, laws: [{ of: 'volumesMl', by: { batchMl: 'linear' } }] }, [LAWS]],
  'a law along a list': [{ ...listRule, laws: [{ of: 'partMl', by: { parts: 'linear' } }] }, [LAWS]],

  'a choice that is not checked': [
    stacking((input) => {
      requireInputs('stackHeight', input, { count: countLimits });
      return { heightMm: input.count * (perBoardMm[input.cut] ?? 0) + 0 };
    }),
    [REFUSES],
  ],
  'a choice that changes nothing': [
    stacking((input) => {
      stackHeight(input);
      return stackHeight({ ...input, cut: 'flatsawn' });
    }),
    [NEEDS],
  ],
  'a choice without a choice': [withCuts({ flatsawn: 'Flatsawn' }), [CARD, NEEDS]],
  'a choice without a label': [withCuts({ ...cuts.options, quartersawn: '' }), [CARD]],
  'a choice that the function does not know': [
    withCuts({ ...cuts.options, riftsawn: 'Riftsawn' }),
    [FINITE, AGAIN, REFUSES, NEEDS, LAWS],
  ],
  'a whole number that is not checked for being whole': [
    stacking((input) => {
      stackHeight({ ...input, count: Math.floor(input.count) });
      return { heightMm: input.count * perBoardMm[input.cut] + 0 };
    }),
    [REFUSES],
  ],
  'a staircase in whole numbers': [
    stacking((input) => {
      stackHeight(input);
      return stackHeight({ ...input, count: input.count - (input.count % 4) });
    }),
    [LAWS],
  ],
};
