import type { AnyRule } from '@scantling/rules';
import { type WidthChangeInput, widthChange } from '../../../packages/movement/src/rules/width-change.ts';
import {
  AGAIN,
  ARITHMETIC,
  answering,
  byHand,
  computing,
  EXAMPLES,
  FINITE,
  LAWS,
  type Mutants,
  NEEDS,
  published,
  REFUSES,
  real,
  width,
  withExample,
} from './real-rule.ts';

const times = 25.4;
const rebaked: Partial<AnyRule> = {
  examples: [
    { ...published, expect: { changeMm: { printed: '-0.067', unit: 'in', times } } },
    {
      ...byHand,
      expect: { changeMm: '10.590' },
      from: { workedByHand: '600 × 0.00353 × (12 − 7) = 10.590 mm' },
    },
  ],
};

const unchecked = ({ widthMm, coefficientPerPct, fromMoisturePct, toMoisturePct }: WidthChangeInput) => ({
  changeMm: widthMm * coefficientPerPct * (toMoisturePct - fromMoisturePct) + 0,
});

const refusing = (refuse: (input: WidthChangeInput) => void) =>
  computing((input) => {
    refuse(input);
    return unchecked(input);
  });

let calls = 0;
let remembered = { widthMm: Number.NaN, changeMm: 0 };

/** Functions that compute something else than the card says. */
export const wrongAnswers: Mutants = {
  // The number is wrong.
  'a wrong factor': [answering((mm) => mm * 1.01), [EXAMPLES]],
  'a flipped sign': [answering((mm) => 0 - mm), [EXAMPLES, LAWS]],
  'a flipped sign with its examples re-baked': [answering((mm) => 0 - mm, rebaked), [LAWS]],
  'a flipped sign with only the figures re-baked': [
    answering((mm) => 0 - mm, withExample({ expect: { changeMm: '10.590' } })),
    [EXAMPLES, ARITHMETIC, LAWS],
  ],
  'NaN everywhere': [answering(() => Number.NaN), [EXAMPLES, FINITE, NEEDS, LAWS]],
  'NaN at the edge': [answering((mm, { widthMm }) => (mm / widthMm) * widthMm), [FINITE, LAWS]],
  'Infinity at the edge': [answering((mm, { widthMm }) => mm + 1e-9 / widthMm), [FINITE, LAWS]],
  'a negative zero': [answering((mm) => (mm === 0 ? -0 : mm)), [FINITE]],
  'a missing result': [computing(() => ({})), [EXAMPLES, FINITE, REFUSES, NEEDS, LAWS]],
  'a text for a result': [answering((mm) => String(mm)), [EXAMPLES, FINITE, LAWS]],
  'a list for a result': [answering((mm) => [mm, mm]), [EXAMPLES, LAWS]],
  'no answer where one is published': [
    answering(() => null, withExample({ expect: { changeMm: '0' } })),
    [EXAMPLES, NEEDS, LAWS],
  ],
  'an extra result': [computing((input) => ({ ...widthChange(input), alsoMm: 1 })), [FINITE]],
  'a result that is not a plain object': [
    computing((input) => Object.create(widthChange(input))),
    [FINITE, NEEDS],
  ],
  'a bend in a straight line': [answering((mm) => Math.min(mm, 100)), [LAWS]],
  'a silent clamp within the limits': [
    answering((_, input) => {
      const fromMoisturePct = Math.max(6, input.fromMoisturePct);
      return widthChange({ ...input, fromMoisturePct }).changeMm;
    }),
    [LAWS],
  ],
  'two inputs taken for each other': [
    computing((input) =>
      widthChange({ ...input, fromMoisturePct: input.toMoisturePct, toMoisturePct: input.fromMoisturePct }),
    ),
    [EXAMPLES, REFUSES, LAWS],
  ],
  'a staircase': [answering((mm) => Math.round(mm * 1e3) / 1e3 + 0), [LAWS]],

  // The function is not a function of its inputs.
  'a changed input': [
    computing((input) => {
      const result = widthChange(input);
      (input as { widthMm: number }).widthMm = 0;
      return result;
    }),
    [FINITE],
  ],
  'a result that counts calls': [answering((mm) => mm + 1e-12 * calls++), [AGAIN, LAWS]],
  'a result that remembers another question': [
    computing((input) => {
      if (input.widthMm !== remembered.widthMm)
        remembered = { widthMm: input.widthMm, ...widthChange(input) };
      return { changeMm: remembered.changeMm };
    }),
    [AGAIN, REFUSES, NEEDS, LAWS],
  ],

  // It takes what it should refuse, or refuses what it should take.
  'no range check': [computing(unchecked), [REFUSES]],
  'a range check that NaN slips through': [
    refusing(({ widthMm, coefficientPerPct, fromMoisturePct, toMoisturePct }) => {
      const within = {
        coefficientPerPct,
        fromMoisturePct,
        toMoisturePct,
        widthMm: widthMm < 0 || widthMm > 10_000 ? widthMm : 1,
      };
      widthChange(within);
    }),
    [REFUSES],
  ],
  'a silent clamp': [
    computing((input) => widthChange({ ...input, widthMm: Math.max(0, input.widthMm) })),
    [REFUSES],
  ],
  'a refused limit': [
    refusing((input) => {
      if (input.widthMm === 10_000)
        throw new RangeError('widthChange requires widthMm below 10000, got 10000');
      widthChange(input);
    }),
    [FINITE, AGAIN, REFUSES, LAWS],
  ],
  'another kind of error': [
    refusing((input) => {
      if (!(input.widthMm >= 0)) throw new TypeError('widthChange requires widthMm, got nothing');
      widthChange(input);
    }),
    [REFUSES],
  ],
  'an error that names nothing': [
    refusing((input) => {
      if (!(input.widthMm >= 0)) throw new RangeError('widthChange requires something better, got this');
      widthChange(input);
    }),
    [REFUSES],
  ],
  'limits wider on the card': [
    { ...real, inputs: { ...real.inputs, widthMm: { ...width, max: 20_000 } } },
    [FINITE, AGAIN, REFUSES, LAWS],
  ],
  'a condition that only the card has': [
    {
      ...real,
      requires: [{ says: 'it swells', holds: (input) => input.toMoisturePct >= input.fromMoisturePct }],
    },
    [REFUSES],
  ],
};
