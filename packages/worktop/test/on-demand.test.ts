import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asItStands, isOpen } from '../src/as-it-stands.ts';
import * as examples from '../src/examples.ts';
import { type Plan, planWorktop } from '../src/index.ts';
import { planOnDemand } from '../src/on-demand.ts';
import { parsePlan } from '../src/schema.ts';
import { basisOf } from '../src/season.ts';
import { sections } from '../src/sections.ts';
import { settle } from '../src/settle.ts';
import { anyPlan } from './any-plan.ts';
import { plainBench } from './plain-bench.ts';
import { asChosen } from './settle-plans.ts';
import { usedBench } from './used-bench.ts';
import { wholeBench } from './whole-bench.ts';

/** What a computation gives, or the message with which it refuses. */
async function outcome<T>(compute: () => T | Promise<T>): Promise<T | string> {
  try {
    return await compute();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return error.message;
  }
}

const bench: Plan = plainBench;
const plans: Plan[] = [
  ...Object.values(examples).map((example) => parsePlan(example)),
  bench,
  usedBench(),
  wholeBench(),
];

test('parts that are loaded on demand plan as the whole does', async () => {
  expect(plans.length).toBeGreaterThan(3);
  for (const plan of plans) expect(await planOnDemand(plan)).toEqual(planWorktop(plan));
});

test('whatever sections are put together, and with each of them alone', async () => {
  let planned = 0;
  await fc.assert(
    fc.asyncProperty(anyPlan, async (plan) => {
      const whole = await outcome(() => planWorktop(plan));
      expect(await outcome(() => planOnDemand(plan))).toEqual(whole);
      if (typeof whole !== 'string') planned += 1;
    }),
    { numRuns: 40 },
  );
  expect(planned).toBeGreaterThan(20);
});

test('a plan that leaves nothing open stands as the search for choices leaves it', () => {
  const closed = plans.map((plan) => asChosen(planWorktop(plan))).filter((plan) => !isOpen(plan));
  expect(closed.length).toBeGreaterThan(3);
  for (const plan of closed) expect(asItStands(plan)).toEqual(settle(plan, basisOf(plan), sections));
});

test('an impossible plan is refused before anything is loaded, in the same words', async () => {
  const impossible = { ...bench, top: { ...bench.top, widthMm: -1 } };
  expect(await outcome(() => planOnDemand(impossible))).toMatch(/^planWorktop requires top\.widthMm/);
  expect(await outcome(() => planOnDemand(null as never))).toMatch(/^planWorktop requires version/);
});
