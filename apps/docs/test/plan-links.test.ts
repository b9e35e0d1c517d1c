import { planWorktop } from '@scantling/worktop';
import { binderyBench } from '@scantling/worktop/examples';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyPlan } from '../../../packages/worktop/test/any-plan.ts';
import { FileRefused, MOST_FILE_BYTES, sheetInFile } from '../src/plan/file.ts';
import { LINK_BROKEN, linkOf, sheetInLink } from '../src/plan/link.ts';
import { fileName } from '../src/plan/outputs.ts';
import {
  filledIn,
  inUnit,
  outcome as outcomeWith,
  planContent,
  type Sheet,
  sheetOf,
} from '../src/plan/work.ts';

const outcome = (sheet: Sheet) => outcomeWith(sheet, planWorktop);
const bench = sheetOf(binderyBench);
const fileOf = (text: string) => ({ size: text.length, text: async () => text });
const refusal = (file: Parameters<typeof sheetInFile>[0]) =>
  sheetInFile(file).then(
    () => 'opened',
    (error: unknown) => (error instanceof FileRefused ? error.lines.join('\n') : `${error}`),
  );

async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const packed = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return Buffer.from(await new Response(packed).arrayBuffer()).toString('base64url');
}

const broken: readonly (readonly [string, string])[] = [
  ['nothing', ''],
  ['signs of another alphabet', '<script>alert(1)</script>'],
  ['noise', 'AAAA_-'],
  ['too much', 'A'.repeat(5_000_000)],
  ['JSON that is no plan', await deflated(new TextEncoder().encode('[1]'))],
  ['a prototype', await deflated(new TextEncoder().encode('{"__proto__":{"top":{}}}'))],
  ['half a plan', (await linkOf(bench)).slice(4, 600)],
  ['a gigabyte of zeros, packed', await deflated(new Uint8Array(50_000_000))],
  ['no text', await deflated(Uint8Array.of(0xff, 0xfe, 0x00))],
];

describe('a link', () => {
  test('brings any sheet back as it was typed', async () => {
    await fc.assert(
      fc.asyncProperty(anyPlan, fc.constantFrom('mm', 'in'), fc.string(), async (plan, unit, text) => {
        const sheet = filledIn(inUnit(sheetOf(plan), unit as 'mm'), ['top', 'widthMm'], text.slice(0, 90));
        const link = await linkOf(sheet);
        expect(link).toMatch(/^#(mm|in)=[\w-]+$/);
        expect(await sheetInLink(link)).toEqual(JSON.parse(JSON.stringify(sheet)));
      }),
      { numRuns: 40 },
    );
  });

  test('of the longest example is short enough to be sent', async () => {
    expect((await linkOf(bench)).length).toBeLessThan(4000);
  });

  test.each(['', '#', '#top.widthMm', '#check-holes', '#cubits=AAAA'])('“%s” holds no plan', async (hash) => {
    expect(await sheetInLink(hash)).toBeNull();
  });

  test.each(broken)('with %s is broken', async (_, packed) => {
    await expect(sheetInLink(`#mm=${packed}`)).rejects.toThrow(LINK_BROKEN);
  });
});

describe('a plan file', () => {
  test('comes back from what was saved', async () => {
    const saved = JSON.stringify(planContent(bench));
    expect(planContent(await sheetInFile(fileOf(saved)))).toEqual(planContent(bench));
    expect(outcome(await sheetInFile(fileOf(`\ufeff${saved}`))).result).toEqual(outcome(bench).result);
  });

  const spoilt = (change: (content: Record<string, never>) => unknown) => {
    const content = structuredClone(binderyBench) as Record<string, never>;
    return JSON.stringify(change(content) ?? content);
  };

  test.each([
    ['no JSON', '{', 'not JSON'],
    ['an empty file', '', 'not JSON'],
    ['a list', '[]', 'the plan: expected an object'],
    ['nothing', 'null', 'the plan: expected an object'],
    ['a later version', spoilt((plan) => ({ ...plan, version: 7 })), 'version: expected at most 2'],
    ['no version', spoilt(({ version: _, ...plan }) => plan), 'version'],
    ['an impossible number', spoilt((plan) => plan).replace('640', '1e309'), 'top.width'],
    ['a script for a length', spoilt((plan) => plan).replace('640', '"<script>x()</script>"'), 'top.width'],
    ['a script for a key', spoilt((plan) => ({ ...plan, '<img src=x>': 1 })), '<img src=x>'],
    ['keys of prototypes', spoilt((plan) => plan).replace('{', '{"__proto__":{"a":1},'), '__proto__'],
    ['depth without end', '['.repeat(300_000), ''],
  ])('with %s is refused with the place', async (_, text, says) => {
    const lines = await refusal(fileOf(text));
    expect(lines).not.toBe('opened');
    expect(lines).toContain(says);
    expect(lines.split('\n').length).toBeLessThan(15);
    expect(({} as { a?: number }).a).toBeUndefined();
  });

  test('of 5 MB is refused before it is read', async () => {
    const file = { size: 5 * MOST_FILE_BYTES, text: () => Promise.reject(new Error('read')) };
    expect(await refusal(file)).toContain('at most 1000000 are allowed');
  });
});

test('files are called after the plan', () => {
  expect(fileName('Bindery bench', 'plan.json')).toBe('bindery-bench-plan.json');
  expect(fileName('../../Établi “é”', 'holes.csv')).toBe('e-tabli-e-holes.csv');
  expect(fileName('作業台', 'plan.json')).toBe('plan-plan.json');
});
