import { describe, expect, test } from 'vitest';
import * as examples from '../src/examples.ts';
import { planWorktop, whatIf } from '../src/index.ts';
import { parsePlan } from '../src/schema.ts';
import { spareOf } from '../src/what-if.ts';
import { bench } from './bindery-bench.ts';

const steps = { moisturePct: 1, pitchMm: 1, spreadMm: 5 };

describe('what happens where things turn out a little different', () => {
  const result = planWorktop(bench());
  const { tightest, changes, notTried } = whatIf(result, steps);
  const slots = (by: number) =>
    changes
      .find((change) => change.what === 'moisture on building day' && change.by.value === by)
      ?.checks.find(({ id }) => id === 'slots');

  test('slots need as much as before: what wood shrinks more it swells less', () => {
    // Wetter by 1 % on building day, the wood shrinks 1 % further and swells 1 % less: slots stay as long.
    expect(slots(1)?.gain?.value).toBeCloseTo(0, 9);
    expect(slots(-1)?.gain?.value).toBeCloseTo(0, 9);
  });

  test('a pitch a millimetre wider moves the last column by twelve', () => {
    // From 68 mm, 13 columns of 112 mm end at 1412; of 113 mm at 1424. The right edge is at 1479.55 mm.
    const wider = changes.find((change) => change.what === 'pitch' && change.by.value === 1);
    expect(wider?.status).toBe('fail');
    expect(wider?.checks.find(({ id }) => id === 'holes')).toMatchObject({ status: 'fail' });
  });

  test('the tightest are the checks with least to spare, and are three', () => {
    const shares = result.checks.flatMap(({ margin }) => {
      const limit = Math.abs(margin?.min ?? margin?.max ?? 0);
      return margin && limit > 0 ? [(100 * spareOf(margin)) / limit] : [];
    });
    expect(tightest.map(({ sparePct }) => sparePct)).toEqual(shares.sort((a, b) => a - b).slice(0, 3));
  });

  test('a limit of nothing that is broken comes before all that are kept', () => {
    // A rail that shows 5 mm beyond the front edge: an overhang of 0 is wanted, and there are no percents of it.
    const { base } = bench();
    const members = base.members.map((one, i) => (i === 2 ? { ...one, yMm: -5 } : one));
    const proud = planWorktop({ ...bench(), base: { ...base, members } });
    const [first] = whatIf(proud, steps).tightest;
    expect(first).toMatchObject({ id: 'cover', sparePct: null });
    expect(first?.margin.given).toBeLessThan(-5);
  });

  test('a base 5 mm wider has 5 mm less to spare beyond its outermost member, and a narrower one more', () => {
    const { base } = bench();
    const [frame] = base.members;
    if (!frame) throw new Error('there is a frame');
    const part = { name: 'frame', members: [frame.name], fixings: [], widensTowards: 'left' as const };
    const sliding = [{ ...part, leastSlideMm: 0, mostSlideMm: 0, slideMm: 0 }];
    const members = [{ ...frame, xMm: 20 }, ...base.members.slice(1)];
    const slides = planWorktop({ ...bench(), base: { ...base, members, sliding } });
    const gains = whatIf(slides, steps)
      .changes.filter(({ what }) => what === 'base spread')
      .map(({ by, checks }) => [by.value, checks.find(({ id }) => id === 'cover')?.gain?.value]);
    expect(gains).toEqual([
      [-5, 5],
      [5, -5],
    ]);
  });

  test('a base that does not slide is not spread, and says so', () => {
    expect(notTried).toEqual(['base spread: no part of this base slides']);
    expect(changes).toHaveLength(4);
  });

  test('steps out of their limits are refused', () => {
    expect(() => whatIf(result, { ...steps, pitchMm: 0 })).toThrow(
      /^whatIf requires pitchMm between 0\.01 and 100, got 0/,
    );
  });

  test('what can’t be tried is said, not thrown', () => {
    const bone = planWorktop({ ...bench(), top: { ...bench().top, moisturePct: 0.5 } });
    expect(whatIf(bone, steps).notTried).toContain(
      'moisture on building day by -1 %: planWorktop requires top.moisturePct between 0 and 30, got -0.5',
    );
  });
});

test.each(Object.entries(examples))('%s: a change by a hair changes hardly anything', (_, content) => {
  const result = planWorktop(parsePlan(content));
  const { changes } = whatIf(result, { moisturePct: 0.01, pitchMm: 0.01, spreadMm: 0.01 });
  const before = new Map(result.checks.map(({ id, status }) => [id, status]));
  // Where a verdict tips, a hole is lost, and what rests on the holes jumps.
  const steady = changes.filter(({ checks }) => checks.every(({ id, status }) => before.get(id) === status));
  const gains = steady.flatMap(({ checks }) => checks.flatMap(({ gain }) => gain?.value ?? []));
  expect(gains.length).toBeGreaterThan(10);
  for (const gain of gains) expect(Math.abs(gain)).toBeLessThan(1);
});
