import { describe, expect, test } from 'vitest';
import { codeFences, saysResults } from '../src/documentation/code-fences.ts';
import { differenceFrom } from '../src/documentation/literal.ts';
import { runCode } from '../src/documentation/run-code.ts';

describe('code in documentation', () => {
  test('is found in comments and pages, with its line', () => {
    const source =
      '/**\n * Half.\n * @example\n * ```ts\n * half(3) // => 1.5\n *\n * half(4) // => 2\n * ```\n */\n';
    expect(codeFences('half.ts', source)).toEqual([
      { file: 'half.ts', line: 5, code: 'half(3) // => 1.5\n\nhalf(4) // => 2' },
    ]);
    const page = '# Half\n\n```sh\nnpm ci\n```\n\n```ts\nhalf(3)\n```\n';
    const found = codeFences('README.md', page);
    expect(found).toEqual([{ file: 'README.md', line: 8, code: 'half(3)' }]);
    expect(found.filter(saysResults)).toEqual([]);
  });

  test('ends its fences', () => {
    expect(() => codeFences('README.md', '```ts\nhalf(3)\n')).toThrow('README.md:2');
  });

  test('runs, from the sources of the packages', async () => {
    const code = `
import { unitOf, requireThat as check } from '@scantling/rules';
import * as rules from '@scantling/rules';
const name = 'width' + 'Mm';
unitOf(name) // => 'mm'
rules.expectedValue('7.0'); // => { value: 7, tolerance: 0.05 }
check('gap', false, 'room') // throws gap requires room
await Promise.resolve([1, null]) // => [1, null]`;
    expect(await runCode(code)).toBe(4);
  });

  test.each([
    ['6.354 // => 6.36', 'it is 6.354, documented 6.36'],
    ['(() => { throw new Error("no") })() // => 1', 'no'],
    ['(() => { throw new Error("no") })() // throws yes', 'throws "no", documented "yes"'],
    ['1 + 1 // throws no', 'gives 2, documented to throw "no"'],
    ['1 + 1', 'says no result'],
    ['const two = 2 // => 2', 'no expression'],
    ['1 + 1\n// => 2\n2 // => 2', '2 results are stated, 1 stand after an expression'],
    ['1 + 1 // => two', 'two cannot be read as a value'],
    ["import { x } from 'node:fs'; x // => 1", 'an example imports node:fs'],
    ["import x from '@scantling/rules'; x // => 1", 'in braces'],
    ["import { gone } from '@scantling/rules'; gone(1) // => 1", 'gone is not a function'],
    ['undeclared = 1 // => 1', 'undeclared is not defined'],
  ])('fails where it does not do what it says: %s', async (code, message) => {
    await expect(runCode(code)).rejects.toThrow(message);
  });
});

describe('a documented value', () => {
  test.each<[literal: string, value: unknown]>([
    ['6.35', 6.354],
    ['-10.6', -10.59],
    ['1.2e-5', 0.0000124],
    ['152', 152],
    ['1_200', 1200],
    ["'mm'", 'mm'],
    ['null', null],
    ['false', false],
    ['[]', []],
    ['{ a: [1, { b: 2.0 }], "c": "d" }', { a: [1, { b: 2.04 }], c: 'd' }],
  ])('%s is matched', (literal, value) => {
    expect(differenceFrom(literal, value)).toBeNull();
  });

  test.each<[literal: string, value: unknown]>([
    ['6.35', 6.356],
    ['6.35', Number.NaN],
    ['6.35', '6.35'],
    ['6.35', null],
    ['0', -0],
    ['152', 152.4],
    ['152', 152n],
    ["'mm'", 'mm²'],
    ['null', undefined],
    ['false', 0],
    ['[]', [1]],
    ['[1, 2]', [1]],
    ['[]', {}],
    ['{}', []],
    ['{}', null],
    ['{ a: 1 }', { a: 1, b: 2 }],
    ['{ a: 1, b: 2 }', { a: 1 }],
    ['{ a: { b: 1 } }', { a: { b: 2 } }],
    ['undefined', undefined],
    ['NaN', Number.NaN],
    ['1 + 1', 2],
    ['1) // (', 1],
  ])('%s is missed', (literal, value) => {
    expect(differenceFrom(literal, value)).toBeTypeOf('string');
  });
});
