import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../src/calculator/answer.ts';
import type { AnyCalculation } from '../src/calculator/calculation.ts';
import { fieldTexts, readField } from '../src/calculator/field.ts';
import { LENGTH_UNIT, printLength, printOtherwise, restateLength } from '../src/calculator/lengths.ts';
import { printNumber, printResult, readNumber } from '../src/calculator/numbers.ts';
import { calculationOf } from '../src/calculator/of-rule.ts';
import { rules } from '../src/registry.ts';
import { compareExample } from '../src/worked.ts';

const numberOf = (text: string) => {
  const reading = readNumber(text);
  return 'value' in reading ? reading.value : reading.problem;
};

describe('reading a number', () => {
  test.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['0,125', 0.125],
    [' −3 ', -3],
    ['.5', 0.5],
    ['1e3', 1000],
  ])('takes %s', (text, value) => {
    expect(numberOf(text)).toBe(value);
  });

  test.each([
    '',
    ' ',
    '1,000',
    '1.2.3',
    '1e309',
    'NaN',
    'Infinity',
    '0x10',
    '1 2',
    '--1',
    '٣',
    `1${'0'.repeat(64)}`,
  ])('refuses %j', (text) => {
    expect(numberOf(text)).toEqual(expect.stringMatching(/\.$/));
  });

  test('reads what is printed, as the language does', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e300, max: 1e300, noNaN: true }), (x) => {
        expect(numberOf(printNumber(x, 15))).toBe(Number(x.toPrecision(15)));
      }),
      { examples: [[-5e-324], [1e-9], [1e15], [0.1 + 0.2], [-0], [-0.00002185830843670705]] },
    );
  });
});

describe('printing a result', () => {
  test.each([
    [1234567, '1234567'],
    [12345.6, '12346'],
    [10.594, '10.59'],
    [0.000123456, '0.0001235'],
    [-2.5, '−2.5'],
    [0, '0'],
  ])('%d is %s', (value, text) => {
    expect(printResult(value, false)).toBe(text);
  });

  test('is never further from the number than its fourth digit allows', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e12, max: 1e12, noNaN: true }), (x) => {
        const printed = Number(printResult(x, false).replaceAll('−', '-'));
        expect(Math.abs(printed - x)).toBeLessThanOrEqual(5.001e-4 * Math.abs(x) + 5e-324);
      }),
    );
  });
});

describe('lengths', () => {
  // 1 in = 25.4 mm exactly (NIST SP 811, Appendix B.8): 5 3/8 in = 5.375 × 25.4 = 136.525 mm.
  test('are said in both units, with the mark on an inch tape', () => {
    expect(printLength(136.525, 'in')).toBe('5.375 in');
    expect(printOtherwise(136.525, 'mm')).toBe('5.375 in, 5 3/8 in');
    expect(printOtherwise(136.525, 'in')).toBe('136.53 mm, 5 3/8 in');
    expect(printOtherwise(137, 'mm')).toBe('5.394 in, about 5 25/64 in');
    expect(printOtherwise(254, 'mm')).toBe('10 in');
    expect(printOtherwise(0.1, 'mm')).toBe('0.00394 in');
    expect(printLength(-1e-16, 'mm')).toBe('0 mm');
  });

  test('typed without a unit are said again in the other; typed with one they stay', () => {
    expect(restateLength('5 3/8', 'in', 'mm')).toBe('136.525');
    expect(restateLength('5 3/8 in', 'in', 'mm')).toBe('5 3/8 in');
    expect(restateLength('1/', 'in', 'mm')).toBe('1/');
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1e5, noNaN: true }), (mm) => {
        const there = restateLength(printNumber(mm, 7), 'mm', 'in');
        const back = Number(restateLength(there, 'in', 'mm'));
        expect(Math.abs(back - mm)).toBeLessThanOrEqual(2e-6 * mm);
      }),
    );
  });

  test('in a list are split at semicolons before commas before spaces', () => {
    const spec = {
      kind: 'numbers',
      label: 'Readings',
      unit: 'mm',
      min: 0,
      max: 1000,
      minItems: 1,
      maxItems: 5,
    } as const;
    expect(readField(spec, '5 3/8; 6', 'in')).toEqual({ value: [136.525, 152.4] });
    expect(readField(spec, '12,5; 13', 'mm')).toEqual({ value: [12.5, 13] });
    expect(readField(spec, '1, 2, 3 mm', 'mm')).toEqual({ value: [1, 2, 3] });
    expect(readField(spec, '1 2 3', 'mm')).toEqual({ value: [1, 2, 3] });
    expect(readField(spec, '1; 2000', 'mm')).toEqual({ problem: 'Number 2: Must be 0 to 1000 mm.' });
    expect(readField(spec, ' ', 'mm')).toEqual({ problem: 'Give 1 to 5 numbers, not 0.' });
  });
});

describe('every rule', () => {
  test('answers its worked examples, within the agreement they ask for', () => {
    const compared = rules.flatMap((rule) =>
      rule.examples.flatMap((example) => compareExample(rule, example)),
    );
    expect(compared.length).toBeGreaterThan(0);
    expect(compared.filter(({ agrees }) => !agrees)).toEqual([]);
  });

  test('gives results, or says what is wrong, whatever its fields say', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.double().map(String),
      fc.constantFrom('1e309', '<b>', '__proto__', 'constructor', '5 3/8', '12 mm', '-0', '9'.repeat(3000)),
    );
    let answered = 0;
    for (const rule of rules) {
      const first = fieldTexts(rule, rule.examples[0]?.given);
      const calculation = calculationOf(rule);
      const names = [LENGTH_UNIT, ...Object.keys(rule.inputs)];
      fc.assert(
        fc.property(fc.constantFrom(...names), text, (name, typed) => {
          const { results, problems, notes } = answer(calculation, { ...first, [name]: typed });
          if (results.length === 0) {
            expect(Object.keys(problems).length + notes.length).toBeGreaterThan(0);
            return;
          }
          answered += 1;
          expect(results.length).toBe(Object.keys(rule.outputs).length);
          expect(results.map((result) => result.text).join()).not.toMatch(
            /NaN|Infinity|undefined|[-−]0\b(?!\.)/,
          );
        }),
      );
    }
    expect(answered).toBeGreaterThan(0);
  });
});

test('a refusal by the function itself is said in the words of the form', () => {
  const refusing: AnyCalculation = {
    fields: { gapMm: { kind: 'number', label: 'Gap', unit: 'mm', min: 0, max: 9 } },
    first: { gapMm: '3' },
    compute: () => {
      throw new RangeError('wedge requires gapMm below the thickness, got 3');
    },
  };
  expect(answer(refusing, { gapMm: '3' }).notes).toEqual(['This requires Gap below the thickness, got 3.']);
});
