import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { planWorktop } from '../src/index.ts';
import { PlanFileError, parsePlan } from '../src/schema.ts';

/** A file as it was written when version 1 was the current one. */
const ofVersion1 = (): Record<string, unknown> =>
  JSON.parse(readFileSync(new URL('fixtures/plan-of-version-1.json', import.meta.url), 'utf8'));

test('a file of version 1 is read as a plan of version 2, and left as it is', () => {
  const content = ofVersion1();
  const plan = parsePlan(content);
  expect(plan.version).toBe(2);
  expect(content).toEqual(ofVersion1());
  expect(plan).toEqual(parsePlan({ ...content, version: 2 }));
  // 58 1/4 in = 58.25 × 25.4 = 1479.55
  expect(plan.top.lengthMm).toBeCloseTo(1479.55, 10);
  const { status, holes } = planWorktop(plan);
  expect([status, holes.length]).toEqual(['pass', 65]);
});

test('what is wrong in a file of version 1 is told by its path', () => {
  const content = { ...ofVersion1(), name: '' };
  expect(() => parsePlan(content)).toThrow(/^name: expected text of 1 to 60 characters/);
});

test.each<[unknown, RegExp]>([
  [3, /^version: expected at most 2, the newest version .* this release knows; .*, got 3$/m],
  [1e308, /^version: expected at most 2, .* got 1e\+308$/m],
  [0, /^version: expected 2, or a version before it, from 1, got 0$/m],
  [-1, /^version: expected 2, .* got -1$/m],
  [1.5, /^version: expected 2, .* got 1\.5$/m],
  ['1', /^version: expected 2, .* got "1"$/m],
  [undefined, /^version: expected 2, .* got nothing$/m],
  [null, /^version: expected 2, .* got null$/m],
  [[1], /^version: expected 2, .* got a list of 1$/m],
])('version %j is no version that can be read', (version, message) => {
  expect(() => parsePlan({ ...ofVersion1(), version })).toThrow(PlanFileError);
  expect(() => parsePlan({ ...ofVersion1(), version })).toThrow(message);
});
