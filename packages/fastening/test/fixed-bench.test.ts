import { expectWithin } from '@scantling/tests-shared';
import { describe, expect, test } from 'vitest';
import { type FixingsInput, planFixings } from '../src/index.ts';

const bench: FixingsInput = {
  top: { frontYMm: 0, backYMm: 600 },
  base: { frontYMm: 50, backYMm: 550 },
  fixings: [
    { name: 'front', xMm: 100, yMm: 75, by: { kind: 'screw', holeMm: 9 } },
    {
      name: 'back',
      xMm: 100,
      yMm: 475,
      by: { kind: 'screw', holeMm: 9 },
      member: { frontYMm: 455, backYMm: 495 },
    },
  ],
  fixedLine: 'front row',
  swellPct: 1,
  shrinkPct: 0.5,
  shankDiameterMm: 6,
  clearanceMm: 0.5,
  washerDiameterMm: 18,
};

describe('a bench worked by hand', () => {
  test('held at the front row, the back holes become slots that reach mostly to the back', () => {
    // 475 − 75 = 400 mm: 400 × 1 % = 4 mm out, 400 × 0.5 % = 2 mm in. Outwards the shank needs 3 + 4 + 0.5 = 7.5 mm,
    // inwards 3 + 2 + 0.5 = 5.5 mm; the hole gives 4.5 mm. The washer: 2 × (5.5 + 4) = 2 × (7.5 + 2) = 19 mm.
    const plan = planFixings(bench);
    const back = plan.fixings[1];
    expect(back).toMatchObject({ outwards: 'back', distanceMm: 400, swellMm: 4, shrinkMm: 2 });
    expect(back?.fit).toMatchObject({
      work: 'make it a slot',
      neededMm: 13,
      lengthMm: 13,
      longerTowardsMm: 1,
      longerAwayMm: 3,
      coveringWasherMm: 19,
    });
    expect(back?.opening).toEqual({ frontYMm: 469.5, backYMm: 482.5 });
    expect(back?.leftInMemberMm).toBe(12.5);
    expect(back?.washerCovers).toBe(false);
    expect(plan.becomeSlots).toEqual(['back']);
    expect(plan.stay).toEqual(['front']);
  });

  test('a hole wider than the screw needs at the fixed line stays, yet holds nothing', () => {
    expect(planFixings(bench).holding).toEqual([]);
    const snug = bench.fixings.map((point) => ({ ...point, by: { kind: 'screw' as const, holeMm: 6.5 } }));
    expect(planFixings({ ...bench, fixings: snug }).holding).toEqual(['front']);
  });

  test('100 mm from the line a hole that is too short for the clearance stays too short for more', () => {
    // 100 × 1 % = 1 mm out, 100 × 0.5 % = 0.5 mm in. The slot: 6 + 1 + 0.5 + 2 × 0.9 = 9.3 mm, with 2 mm 11.5 mm.
    const near = (clearanceMm: number) => {
      const [point] = bench.fixings;
      if (!point) throw new Error('no point');
      const by = { kind: 'screw' as const, holeMm: 7.6 };
      return planFixings({
        ...bench,
        fixings: [{ ...point, by }],
        fixedLine: { yMm: point.yMm - 100 },
        clearanceMm,
      }).fixings[0]?.fit;
    };
    for (const [clearanceMm, neededMm] of [
      [0.9, 9.3],
      [1, 9.5],
      [2, 11.5],
    ] as const) {
      expect(near(clearanceMm)).toMatchObject({ work: 'make it a slot' });
      expect((near(clearanceMm) as { neededMm: number }).neededMm).toBeCloseTo(neededMm, 9);
    }
  });

  test('200 mm from the line a new opening is a slot however much clearance is asked for', () => {
    // 200 × 1 % = 2 mm out, 200 × 0.5 % = 1 mm in: 6 + 2 + 1 + 2 × 2 = 13 mm.
    const plan = planFixings({
      ...bench,
      fixings: [{ name: 'off the line', xMm: 0, yMm: 275, by: { kind: 'screw' } }],
      fixedLine: { yMm: 75 },
      clearanceMm: 2,
    });
    expect(plan.fixings[0]?.fit).toMatchObject({ work: 'cut a slot', lengthMm: 13 });
    expect(plan.holding).toEqual([]);
  });

  test('a plate that turns keeps the clearance that is asked for', () => {
    // 13 mm between its screws and 1 mm of play let it travel √(13² − 12²) = 5 mm either way; 400 mm from the line it
    // travels 4 mm out and 2 mm in.
    const by = { kind: 'plate that turns', reachMm: 13, angleDeg: 0, mostAngleDeg: 45, playMm: 1 } as const;
    const lets = (clearanceMm: number) =>
      planFixings({
        ...bench,
        fixings: [{ name: 'plate', xMm: 0, yMm: 475, by }],
        fixedLine: { yMm: 75 },
        clearanceMm,
      }).fixings[0]?.letsTravel;
    expect([0, 1, 1.1].map(lets)).toEqual([true, true, false]);
  });

  test('a hole so small that the screw does not pass is drilled larger at the fixed line', () => {
    const small = bench.fixings.map((point) => ({ ...point, by: { kind: 'screw' as const, holeMm: 5 } }));
    const { fit } = planFixings({ ...bench, fixings: small }).fixings[0] ?? {};
    expect(fit).toMatchObject({ work: 'drill it larger', lengthMm: 7, longerTowardsMm: 1, longerAwayMm: 1 });
  });

  test('a hole that is wide enough only off its middle stays, and says where the screw has to stand', () => {
    // The hole gives 6.4 − 3 − 0.5 = 2.9 mm either way; 4 mm out asks for a screw set back: (402.9) / 1.01 − 400 =
    // −1.0891 mm at most, and (400 − 2.9) / 0.995 − 400 = −0.9045 mm at least would be too far out: so it is a slot.
    const wide = (holeMm: number) =>
      planFixings({
        ...bench,
        fixings: bench.fixings.map((point) => ({ ...point, by: { kind: 'screw' as const, holeMm } })),
      });
    expect(wide(12.8).becomeSlots).toEqual(['back']);
    // With 13.2 mm: 6.6 − 3.5 = 3.1 mm either way; 403.1 / 1.01 − 400 = −0.8911 and 396.9 / 0.995 − 400 = −1.1055 mm.
    const { fit } = wide(13.2).fixings[1] ?? {};
    if (fit?.kind !== 'opening') throw new Error('a screw without an opening');
    expect(fit.work).toBe('leave it as it is');
    expect(fit.screwOffset.mostMm).toBeCloseTo(-0.8911, 4);
    expect(fit.screwOffset.leastMm).toBeCloseTo(-1.1055, 4);
  });
});

describe('what is published about holding a top', () => {
  const inch = 25.4;
  const table = (fixedLine: FixingsInput['fixedLine'], pct: number) =>
    planFixings({
      ...bench,
      top: { frontYMm: 0, backYMm: 42 * inch },
      base: { frontYMm: 2 * inch, backYMm: 40 * inch },
      fixings: [3, 39].map((inches) => ({
        name: `${inches} in`,
        xMm: 0,
        yMm: inches * inch,
        by: { kind: 'screw' as const },
      })),
      fixedLine,
      swellPct: pct,
      shrinkPct: 0,
    });
  const change = ({ swollenMm, buildingDayMm }: { swollenMm: number; buildingDayMm: number }) =>
    (swollenMm - buildingDayMm) / inch;

  // Attaching Tabletops (2007), p. 39: 1/8 to 3/16 in. for every 12 in.; a 42 in. wide top moves about 1/2 in. overall.
  test('a top of 42 in. moves about 1/2 in. at 1/8 to 3/16 in. for every 12 in.', () => {
    const [least = 0, most = 0] = [1 / 8, 3 / 16].map((inches) => {
      const { front, back } = table('middle', (100 * inches) / 12).overhangs;
      return change(front) + change(back);
    });
    expect(least).toBeLessThanOrEqual(1 / 2);
    expect(most).toBeGreaterThanOrEqual(1 / 2);
    expectWithin((least + most) / 2, 1 / 2, 1 / 16, 'Attaching Tabletops (2007), p. 39');
  });

  // The same, p. 38–39: held in the middle it moves evenly to both sides, held at one edge all of it goes to the other.
  test('held in the middle both overhangs move alike, at the back edge only the front moves', () => {
    const middle = table('middle', 1).overhangs;
    expect(change(middle.front)).toBeCloseTo(change(middle.back), 9);
    const atWall = table({ yMm: 42 * inch }, 1).overhangs;
    expect(change(atWall.back)).toBeCloseTo(0, 9);
    expect(change(atWall.front)).toBeCloseTo(0.42, 9);
    const desk = table({ yMm: 0 }, 1).overhangs;
    expect(change(desk.front)).toBeCloseTo(0, 9);
    expect(change(desk.back)).toBeCloseTo(0.42, 9);
  });
});

describe('refusals name what is wrong', () => {
  const [front, back] = bench.fixings as [FixingsInput['fixings'][0], FixingsInput['fixings'][0]];
  const cases: [string, object, string][] = [
    ['no fixings', { fixings: [] }, 'planFixings requires fixings to be a list of 1 to 500, got 0'],
    ['a text', { fixings: 'two' }, 'planFixings requires fixings to be a list of 1 to 500, got string'],
    ['a top of no width', { top: { frontYMm: 5, backYMm: 5 } }, 'planFixings requires top.frontYMm below'],
    [
      'no base',
      { base: undefined },
      'planFixings requires base.frontYMm between -5000 and 10000, got undefined',
    ],
    [
      'no shank',
      { shankDiameterMm: Number.NaN },
      'planFixings requires shankDiameterMm between 0.5 and 50, got NaN',
    ],
    ['a washer of no size', { washerDiameterMm: 0 }, 'planFixings requires washerDiameterMm between'],
    [
      'a name twice',
      { fixings: [front, front] },
      'planFixings requires fixings[1].name to be a name of its own',
    ],
    [
      'no such kind',
      { fixings: [front, { ...back, by: { kind: 'glue' } }] },
      'planFixings requires fixings[1].by.kind',
    ],
    [
      'a hole of no size',
      { fixings: [{ ...front, by: { kind: 'screw', holeMm: 0 } }] },
      'planFixings requires fixings[0].by.holeMm between 0.5 and 1000, got 0',
    ],
    [
      'a plate beyond its recess',
      {
        fixings: [
          {
            ...front,
            by: { kind: 'plate that turns', reachMm: 20, mostAngleDeg: 10, angleDeg: 20, playMm: 1 },
          },
        ],
      },
      'planFixings requires fixings[0].by.angleDeg between -10 and 10, got 20',
    ],
    ['no such line', { fixedLine: 'left' }, "planFixings requires fixedLine to be 'front row'"],
    ['no such fixing', { fixedLine: { fixing: 'x' } }, "planFixings requires fixedLine to be 'front row'"],
    ['a line nowhere', { fixedLine: { yMm: Number.NaN } }, 'planFixings requires fixedLine.yMm between'],
    [
      'a member turned round',
      { fixings: [{ ...front, member: { frontYMm: 90, backYMm: 60 } }] },
      'planFixings requires fixings[0].member.frontYMm below',
    ],
  ];
  test.each(cases)('%s', (_, change, message) => {
    const input = { ...bench, ...change } as FixingsInput;
    expect(() => planFixings(input)).toThrow(RangeError);
    expect(() => planFixings(input)).toThrow(message);
  });
});
