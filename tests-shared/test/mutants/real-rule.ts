import type { AnyRule, NumberInput } from '@scantling/rules';
import {
  type WidthChangeInput,
  widthChange,
  widthChangeRule,
} from '../../../packages/movement/src/rules/width-change.ts';
import type { ruleChecks } from '../../src/index.ts';

/** A rule with a fault in it, and exactly the checks that it must turn red. */
export type Mutants = Readonly<Record<string, readonly [rule: AnyRule, red: readonly Check[]]>>;

type Check = keyof typeof ruleChecks;

export const CARD = 'its card is whole';
export const EXAMPLES = 'reproduces its published examples';
export const TOLERANCE = 'asks its examples for a close agreement';
export const RANGE = 'takes its examples from inside the claimed range';
export const ARITHMETIC = 'shows arithmetic that comes out';
export const FINITE = 'gives finite numbers and leaves its inputs alone';
export const AGAIN = 'gives the same answer again';
export const REFUSES = 'refuses exactly what its schema refuses';
export const NEEDS = 'needs each of its inputs';
export const LAWS = 'obeys its laws';
export const PEERS = 'agrees with its peers';

/** The real rule without its peers, so that each mutant shows what the other checks see by themselves. */
const exampleFrom = (origin: 'source' | 'workedByHand') =>
  widthChangeRule.examples.find(({ from }) => origin in from) as Example;
export const published = exampleFrom('source');
export const byHand = exampleFrom('workedByHand');

export const real: AnyRule = { ...widthChangeRule, peers: [], examples: [published, byHand] };

/** The real card's width. */
export const width = real.inputs.widthMm as NumberInput;

/** The real card around another function. */
export const computing = (
  compute: (input: WidthChangeInput) => unknown,
  card: Partial<AnyRule> = {},
): AnyRule => ({
  ...real,
  ...card,
  compute: Object.defineProperty(compute, 'name', { value: 'widthChange' }),
});

/** The real function with its answer worked over. */
export const answering = (
  mutate: (changeMm: number, input: WidthChangeInput) => unknown,
  card?: Partial<AnyRule>,
) => computing((input) => ({ changeMm: mutate(widthChange(input).changeMm, input) }), card);

type Example = AnyRule['examples'][number];
/** The real card with its example worked by hand changed. */
export const withExample = (change: object): Partial<AnyRule> => ({
  examples: [published, { ...byHand, ...change }],
});
