import { type AnyRule, type Citation, type OutputSpec, requireInputs } from '@scantling/rules';
import { type WidthChangeInput, widthChange } from '../../../packages/movement/src/rules/width-change.ts';
import {
  AGAIN,
  ARITHMETIC,
  answering,
  byHand,
  CARD,
  computing,
  EXAMPLES,
  FINITE,
  LAWS,
  type Mutants,
  NEEDS,
  PEERS,
  published,
  RANGE,
  REFUSES,
  real,
  TOLERANCE,
  width,
  withExample,
} from './real-rule.ts';

const without = <T extends object>(object: T, name: keyof T) => {
  const { [name]: _, ...rest } = object;
  return rest;
};

/** A citation without fault, from memory, which each mutant spoils in one way. */
const cited = published.from as Citation;
const change = real.outputs.changeMm as OutputSpec;
const renamed = { ...without(real.inputs, 'widthMm'), boardMm: width };

/** The real card with a peer that gives this share of the true change. */
export const withPeer = (share: number, agreement: object): AnyRule => ({
  ...real,
  peers: [
    {
      name: 'another form',
      of: 'changeMm',
      compute: (input) => share * widthChange(input).changeMm,
      ...agreement,
    },
  ],
});

/** Cards that say something else than the function does, or too little. */
export const wrongCards: Mutants = {
  // Names and inputs.
  'a renamed input': [{ ...real, inputs: renamed }, [FINITE, AGAIN, REFUSES, NEEDS, LAWS]],
  'an extra, idle input': [
    computing(
      (input: WidthChangeInput & { lengthMm?: number }) => {
        requireInputs('widthChange', input as { lengthMm: number }, { lengthMm: { min: 0, max: 9 } });
        return widthChange(input);
      },
      {
        inputs: { ...real.inputs, lengthMm: { kind: 'number', label: 'Length', unit: 'mm', min: 0, max: 9 } },
        examples: real.examples.map((example) => ({ ...example, given: { ...example.given, lengthMm: 1 } })),
      },
    ),
    [NEEDS],
  ],
  'a unit that its name does not carry': [
    { ...real, outputs: { changeMm: { ...change, unit: 'in' } } },
    [CARD],
  ],
  'a label left empty': [{ ...real, outputs: { changeMm: { label: ' ', unit: 'mm' } } }, [CARD]],
  'an id of another form': [{ ...real, id: 'Movement/width_change' }, [CARD]],
  'a card for another function': [{ ...real, id: 'movement/length-change' }, [CARD]],
  'no title': [{ ...real, title: '' }, [CARD]],
  'no summary': [{ ...real, summary: 'Width change' }, [CARD]],

  // Sources.
  'an empty locator': [{ ...real, sources: [{ ...cited, at: ' ' }] }, [CARD]],
  'an empty locator of an example': [
    { ...real, examples: [{ ...published, from: { ...cited, at: '' } }, byHand] },
    [CARD],
  ],
  'an empty locator of a peer': [withPeer(1, { relative: 1e-9, source: { ...cited, at: '' } }), [CARD]],
  'no source': [{ ...real, sources: [] }, [CARD]],
  'a source without an author': [
    {
      ...real,
      sources: [{ ...cited, source: { ...cited.source, author: '' } }],
    },
    [CARD],
  ],
  'a source from memory that was seen': [
    { ...real, sources: [{ ...cited, confirmed: 'memory', tier: 'publication' }] },
    [CARD],
  ],
  'a source seen in the text, yet of tier memory': [
    { ...real, sources: [{ ...cited, confirmed: 'text', tier: 'memory' }] },
    [CARD],
  ],
  'an example from memory that was seen in a reprint': [
    {
      ...real,
      examples: [{ ...published, from: { ...cited, confirmed: 'memory', tier: 'reprint' } }, byHand],
    },
    [CARD],
  ],
  'a range claimed beyond the limits': [
    { ...real, valid: { ...real.valid, widthMm: [-5, 100_000] } },
    [CARD],
  ],

  // Formula.
  'a formula that does not typeset': [{ ...real, formula: String.raw`\Delta D = \frac{D_I` }, [CARD]],
  'no formula': [{ ...real, formula: '', symbols: {} }, [CARD]],
  'a symbol that is not in the formula': [{ ...real, symbols: { ...real.symbols, Q: 'heat' } }, [CARD]],

  // Examples.
  'no example': [{ ...real, examples: [] }, [CARD, TOLERANCE]],
  'an example without figures': [{ ...real, ...withExample({ expect: {} }) }, [EXAMPLES]],
  'an example outside the claimed range': [
    {
      ...real,
      ...withExample({
        given: { ...byHand.given, toMoisturePct: 20 },
        expect: { changeMm: '16.944' },
        from: { workedByHand: '600 × 0.00353 × (20 − 12) = 16.944 mm' },
      }),
    },
    [RANGE],
  ],
  'a loosened tolerance': [
    {
      ...real,
      ...withExample({ within: { value: 1, because: 'The source rounds its intermediate values.' } }),
    },
    [TOLERANCE],
  ],
  'a tolerance of anything': [
    {
      ...real,
      ...withExample({ within: { value: Infinity, because: 'The source rounds its intermediate values.' } }),
    },
    [TOLERANCE],
  ],
  'a tolerance of NaN': [
    {
      ...real,
      ...withExample({ within: { value: NaN, because: 'The source rounds its intermediate values.' } }),
    },
    [EXAMPLES, TOLERANCE],
  ],
  'a tolerance nobody argues for': [
    {
      ...real,
      ...withExample({ expect: { changeMm: '-10.58' }, within: { value: 0.02, because: 'rounded' } }),
    },
    [TOLERANCE, ARITHMETIC],
  ],
  'figures with their digits dropped': [
    { ...real, examples: [{ ...byHand, expect: { changeMm: '-11' } }] },
    [TOLERANCE],
  ],
  'a figure of nought alone': [
    {
      ...real,
      examples: [
        {
          ...byHand,
          given: { ...byHand.given, toMoisturePct: 12 },
          expect: { changeMm: '0' },
          from: { workedByHand: '2.118 × (12 − 12) = 0 mm' },
        },
      ],
    },
    [TOLERANCE],
  ],
  'a figure in an endless unit': [
    {
      ...real,
      ...withExample({ expect: { changeMm: { printed: '-10.590', unit: 'mm', times: Infinity } } }),
    },
    [EXAMPLES, TOLERANCE],
  ],
  'a figure that is not a number': [
    { ...real, ...withExample({ expect: { changeMm: 'about 10' } }) },
    [EXAMPLES, TOLERANCE, ARITHMETIC],
  ],
  'a figure that we computed ourselves': [
    { ...real, ...withExample({ from: { ...cited, confirmed: 'computed' } }) },
    [CARD],
  ],
  'arithmetic that does not come out': [
    {
      ...real,
      ...withExample({ from: { workedByHand: '600 × 0.00353 × (7 − 12) = −10.59; 600 / 7 = 90' } }),
    },
    [ARITHMETIC],
  ],
  'arithmetic that never arrives': [
    { ...real, ...withExample({ from: { workedByHand: '600 × 0.00353 = 2.118 mm' } }) },
    [ARITHMETIC],
  ],
  'no arithmetic': [
    { ...real, ...withExample({ from: { workedByHand: 'as computed, −10.590' } }) },
    [ARITHMETIC],
  ],

  // Laws and peers.
  'no law': [{ ...real, laws: [] }, [LAWS]],
  'a law without inputs': [{ ...real, laws: [{ of: 'changeMm', by: {} }] }, [LAWS]],
  'a law of nothing': [{ ...real, laws: [{ of: 'swellMm', by: { widthMm: 'linear' } }] }, [LAWS]],
  'a law about nothing': [{ ...real, laws: [{ of: 'changeMm', by: { lengthMm: 'linear' } }] }, [LAWS]],
  'a law turned round': [
    { ...real, laws: [{ of: 'changeMm', by: { toMoisturePct: 'decreasing' } }] },
    [LAWS],
  ],
  'a curve that meets both examples': [
    answering(
      (mm, { widthMm }) => mm + 1e-4 * (widthMm - published.given.widthMm) * (widthMm - byHand.given.widthMm),
      {
        laws: [{ of: 'changeMm', by: { widthMm: 'linear' } }],
      },
    ),
    [LAWS],
  ],
  'a straight line taken for a proportion': [
    { ...real, laws: [{ of: 'changeMm', by: { toMoisturePct: 'proportional' } }] },
    [LAWS],
  ],
  'a law never seen at work': [
    computing((input) => ({ ...widthChange(input), kerfMm: 5 }), {
      outputs: { ...real.outputs, kerfMm: { label: 'Kerf', unit: 'mm' } },
      laws: [{ of: 'kerfMm', by: { widthMm: 'increasing' } }],
      ...withExample({
        expect: { changeMm: '-10.590', kerfMm: '5.00' },
        from: { workedByHand: '600 × 0.00353 × (7 − 12) = −10.590; 10 / 2 = 5.00' },
      }),
    }),
    [LAWS],
  ],
  'a peer that is off by 10 %': [withPeer(1.1, { relative: 0.02 }), [PEERS]],
  'a peer of the other sign': [withPeer(-1, { relative: 0.02 }), [PEERS]],
  'a peer that gives NaN': [withPeer(Number.NaN, { relative: 0.02 }), [PEERS]],
  'a peer that agrees with anything': [withPeer(1.1, { relative: 5 }), [PEERS]],
  'a peer that need not agree': [withPeer(1, {}), [PEERS]],
};
