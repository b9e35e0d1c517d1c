import Fraction from 'fraction.js';
import Qty from 'js-quantities';
import { unit } from 'mathjs';
import type { Comparison } from '../../../scripts/bench.ts';
import { formatLength, parseLength } from '../src/index.ts';

const pairs = [
  ['18 7/8', '3 5/16'],
  ['31 7/16', '0.41'],
  ['5/8', '12'],
  ['7 23/64', '1/2'],
  ['96 1/8', '23 15/32'],
] as const;
const inches = { bareUnit: 'in' } as const;
const sixteenths = { unit: 'in', denominator: 16 } as const;
const sixteenth = new Fraction(1, 16);

const texts = ['18.875 in', '12.5 mm', '1.2 m', '5.25 ft', '96 in', '.73 in'];

const comparisons: readonly Comparison[] = [
  {
    name: 'two readings in inches: parse, add, round to 1/16, format',
    ours: () =>
      pairs.map(([a, b]) => formatLength(parseLength(a, inches) + parseLength(b, inches), sixteenths)),
    peers: [
      {
        name: 'fraction.js',
        atLeast: 10,
        run: () =>
          pairs.map(
            ([a, b]) => `${new Fraction(a).add(new Fraction(b)).roundTo(sixteenth).toFraction(true)} in`,
          ),
      },
    ],
  },
  {
    name: 'a length with its unit: parse to millimetres',
    ours: () => texts.map((text) => parseLength(text)),
    peers: [
      {
        name: 'js-quantities',
        atLeast: 20,
        run: () => texts.map((text) => new Qty(text).to('mm').scalar),
      },
      { name: 'mathjs', atLeast: 20, run: () => texts.map((text) => unit(text).toNumber('mm')) },
    ],
  },
];

export default comparisons;
