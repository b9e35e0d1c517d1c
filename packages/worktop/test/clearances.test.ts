import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop } from '../src/index.ts';
import { plainBench } from './plain-bench.ts';
import { plans } from './settle-plans.ts';

const checkOf = (plan: Plan, id: string) => {
  const found = planWorktop(plan).checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
};

const figuresOf = (plan: Plan, id: string) =>
  new Map(checkOf(plan, id).figures.map(({ name, value }) => [name, value]));

describe('least clearances by kind, worked by hand', () => {
  // Holes of 15.875 at x 68, 180, 292 … 1412 and y 160, 264 … 576; radius 7.9375.
  const figures = figuresOf(plainBench, 'holes');

  test('to members: the hole at 292 beside the leg frame that ends at 270', () => {
    // Along the grain no season moves it: 292 − 270 − 7.9375.
    expect(figures.get('least clearance to base members')).toBeCloseTo(14.0625, 9);
  });

  test('to inlays: the first row beside brass that ends at 28 + 25.4', () => {
    // 160 − 53.4 − 7.9375
    expect(figures.get('least clearance to inlays')).toBeCloseTo(98.6625, 9);
  });

  test('to screws: the hole at 292, 576 beside the one at 250, 570', () => {
    // √(42² + 6²) = 42.4264, less 7.9375 and 3
    expect(figures.get('least clearance to screws')).toBeCloseTo(31.4889, 4);
  });

  test('to edges: the last row before the back', () => {
    // 640 − 576 − 7.9375
    expect(figures.get('least clearance to edges')).toBeCloseTo(56.0625, 9);
  });

  test('the verdict turns on the hole with least beyond what is asked for', () => {
    // 14.0625 − 6 at the members, 21.5 at the screws, 16.1 at the edges
    expect(checkOf(plainBench, 'holes').margin).toEqual({
      given: expect.closeTo(14.0625, 9),
      min: 6,
      unit: 'mm',
    });
  });

  test('and where a hole is blocked, on the one that is worst off', () => {
    // The hole at 100 + 10 × 112 = 1220 lies 10 within the leg frame from 1210 on: −10 − 7.9375.
    const plan = { ...plainBench, holes: { ...plainBench.holes, first: { xMm: 100, yMm: 160 } } };
    expect(checkOf(plan, 'holes').margin).toMatchObject({ given: expect.closeTo(-17.9375, 9), min: 6 });
  });
});

test('the least of all kinds is the least that the layout finds', () => {
  let compared = 0;
  fc.assert(
    fc.property(plans(['left', 'right'], 1), (plan) => {
      const { holes, checks } = planWorktop(plan);
      fc.pre(holes.length > 0);
      const figures = checks.find(({ id }) => id === 'holes')?.figures ?? [];
      const kinds = figures.filter(({ name }) => name.startsWith('least clearance'));
      const least = Math.min(...kinds.map(({ value }) => value));
      expect(least).toBeCloseTo(Math.min(...holes.map(({ clearanceMm }) => clearanceMm)), 6);
      compared += 1;
    }),
    { numRuns: 60 },
  );
  expect(compared).toBeGreaterThan(20);
});

describe('slots and the metal around them, worked by hand', () => {
  test('the least metal beyond a slot', () => {
    const { fixings, swing } = planWorktop(plainBench);
    const front = fixings.find(({ name }) => name === 'left front');
    // At 70, 250 in front of the line, in a leg frame that begins at 40: the slot of 14 with the screw midway in its room.
    const least = 3 + 0.5 + 2.5 * swing.shrinkPct;
    const outer = 14 - (least + (14 - (7 + 2.5 * (swing.shrinkPct + swing.swellPct))) / 2);
    expect(front?.leftInMemberMm).toBeCloseTo(70 - outer - 40, 9);
  });

  test('a round hole holds the top on the line, and within what it leaves around the screw', () => {
    // 0.5 mm around: 0.4 mm from the line the screw still touches before the top has left it, 0.6 mm from it it does not.
    const heldAt = (fixedLineMm: number) => {
      const { checks } = planWorktop({ ...plainBench, base: { ...plainBench.base, fixedLineMm } });
      return checks.find(({ id }) => id === 'screws')?.figures[1]?.value;
    };
    expect([heldAt(320), heldAt(320.4), heldAt(320.6)]).toEqual([2, 2, 0]);
  });

  test('a washer has to reach past the far end of the slot at either end of the year', () => {
    const { fixings, swing } = planWorktop(plainBench);
    const middle = fixings.find(({ name }) => name === 'left middle');
    const front = fixings.find(({ name }) => name === 'left front');
    // On the line a hole of 7 is covered by a washer of 7. In front, midway in its room the screw keeps as far from either end
    // at the extremes: half of 14 and half of its travel.
    expect(middle?.coveringWasherMm).toBeCloseTo(7, 9);
    expect(front?.coveringWasherMm).toBeCloseTo(14 + 2.5 * (swing.shrinkPct + swing.swellPct), 9);
  });
});
