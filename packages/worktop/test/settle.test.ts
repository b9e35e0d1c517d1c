import { compareFixedLines } from '@scantling/fastening';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop, type SlidingPart } from '../src/index.ts';
import { plainBench } from './plain-bench.ts';
import { chosenOf } from './settle-plans.ts';

const { top, base, holes } = plainBench;
const screw = (name: string, xMm: number, yMm: number, slotMm: number) => ({ name, xMm, yMm, slotMm });

/** One row of holes over a leg across the whole top, with a screw in the leg. */
const overLeg = (lengthMm: number, leg: { xMm: number; lengthMm: number }): Plan => ({
  ...plainBench,
  top: { ...top, lengthMm, widthMm: 100, inlays: [] },
  base: {
    ...base,
    members: [{ name: 'leg', yMm: 0, widthMm: 100, clearanceMm: 5, ...leg }],
    fixedLineMm: 50,
    screwClearanceMm: 0,
    fixings: [screw('in the leg', leg.xMm + leg.lengthMm / 2, 50, 7)],
  },
  holes: { ...holes, diameterMm: 20, pitchYMm: 100, rows: 1, first: 'choose' },
});

describe('where the grid begins, worked by hand', () => {
  // Holes at x, x + 96 … over a leg from 190 to 230: midway between two of them, either has 48 − 20 − 10 − 5 = 13 mm to spare.
  const plan = overLeg(400, { xMm: 190, lengthMm: 40 });
  const four = { ...plan, holes: { ...plan.holes, pitchXMm: 96, columns: 4, edgeMarginMm: 10 } };

  test('where the way across is free they stand in the middle of it', () => {
    // Rows between 10 + 10 and 100 − 20 mm keep their margin; half of 100 is 50.
    expect(chosenOf(four, 'holes.first').value).toMatchObject({ yMm: 50 });
  });

  test('holes stand as far from the leg on either side', () => {
    const { value, says, proven } = chosenOf(four, 'holes.first');
    // The second stands at 190 − 5 − 10 − 13 = 162.
    expect(value).toMatchObject({ xMm: expect.closeTo(162 - 96, 1) });
    expect(says).toMatch(
      /All 4 holes are kept, each with 1[23]\.\d mm or more beyond the clearance asked for/,
    );
    expect(proven).toBe(true);
  });

  test('a grid that fits nowhere is still planned, and fails', () => {
    const covered = overLeg(400, { xMm: 0, lengthMm: 400 });
    const result = planWorktop(covered);
    expect(result.status).toBe('fail');
    expect(result.chosen).toMatchObject([
      { path: 'holes.first', says: expect.stringMatching(/Nothing fits: of 13 holes 0 can be kept/) },
    ]);
    expect(result.checks.find(({ id }) => id === 'holes')?.says).toMatch(/overlaps leg by/);
  });

  test('where holes may be left out, most are kept, and it is said how many', () => {
    // 4 holes over 300 mm: 3 × 96 + 20 + 2 × 10 = 328 do not go in, 3 do.
    const short = { ...four, top: { ...four.top, lengthMm: 300 }, base: { ...four.base } };
    const leaving: Plan = { ...short, holes: { ...short.holes, blocked: 'leave out' } };
    expect(planWorktop(leaving).holes.length).toBeGreaterThan(1);
    expect(chosenOf(leaving, 'holes.first').says).toMatch(/Of 4 holes \d can be kept/);
    expect(planWorktop(leaving).status).toBe('warn');
    expect(chosenOf(short, 'holes.first').says).toMatch(/Nothing fits: of 4 holes/);
  });
});

describe('how far a part slides, worked by hand', () => {
  // Holes at 50, 150 … 450: the margin leaves no other place. A leg 40 wide from 270 on goes right until its edge is
  // 350 − 10 − 5 = 335: 25 mm.
  const plan = overLeg(500, { xMm: 270, lengthMm: 40 });
  const part: SlidingPart = {
    ...{ name: 'right frame', members: ['leg'], fixings: ['in the leg'], widensTowards: 'right' },
    ...{ leastSlideMm: 0, mostSlideMm: 80, slideMm: 'choose' },
  };
  const sliding: Plan = {
    ...plan,
    base: { ...plan.base, sliding: [part] },
    holes: { ...plan.holes, pitchXMm: 100, columns: 5, edgeMarginMm: 40 },
  };

  test('a leg goes on to the next hole, its screw with it', () => {
    const { plan: settled, chosen } = planWorktop(sliding);
    expect(chosen.find(({ path }) => path === 'base.sliding[0].slide')).toMatchObject({
      value: expect.closeTo(25, 6),
      says: expect.stringMatching(
        /right frame: 25\.0 mm to the right\. All 5 holes are kept\. No setting .* by more than 25\.\d mm\.$/,
      ),
      proven: true,
    });
    expect(settled.base.members[0]?.xMm).toBeCloseTo(295, 6);
    expect(settled.base.fixings[0]?.xMm).toBeCloseTo(315, 6);
  });

  test('with the grid given, only the slide is chosen', () => {
    const given: Plan = { ...sliding, holes: { ...sliding.holes, first: { xMm: 50, yMm: 50 } } };
    expect(planWorktop(given).chosen).toMatchObject([
      { path: 'base.sliding[0].slide', value: expect.closeTo(25, 6) },
    ]);
  });

  test('a slide that is given moves the part before all else', () => {
    const given: Plan = { ...sliding, base: { ...sliding.base, sliding: [{ ...part, slideMm: 70 }] } };
    const result = planWorktop(given);
    // Its edges are 340 and 380 then: over the hole at 350, which no other place of the grid frees.
    expect(result.chosen.map(({ path }) => path)).toEqual(['holes.first']);
    expect(result.plan.base.members[0]?.xMm).toBe(340);
    expect(result.plan.base.fixings[0]?.xMm).toBe(360);
    expect(result.holes).toHaveLength(4);
    expect(result.status).toBe('fail');
  });

  test('a part is not slid to where a hole is lost, whether holes may be left out or not', () => {
    const leaving: Plan = { ...sliding, holes: { ...sliding.holes, blocked: 'leave out' } };
    expect(planWorktop(leaving).holes).toHaveLength(5);
  });

  test('where a great many holes are lost, as few as possible, and as wide as that allows', () => {
    // A plate takes the front row of 12; the leg takes one hole more of the back row, unless it keeps away.
    const wide: Plan = {
      ...sliding,
      top: { ...sliding.top, lengthMm: 1200, widthMm: 200 },
      base: {
        ...sliding.base,
        members: [
          { name: 'plate', xMm: 0, yMm: 0, lengthMm: 1200, widthMm: 90, clearanceMm: 5 },
          { name: 'leg', xMm: 270, yMm: 110, lengthMm: 40, widthMm: 80, clearanceMm: 5 },
        ],
      },
      holes: { ...sliding.holes, columns: 12, rows: 2, first: { xMm: 50, yMm: 50 }, blocked: 'leave out' },
    };
    const result = planWorktop(wide);
    expect(result.holes).toHaveLength(12);
    // Tried in steps of 2 mm: 24 of 25.
    expect(result.plan.base.sliding?.[0]?.slideMm).toBe(24);
    expect(chosenOf(wide, 'base.sliding[0].slide').proven).toBe(false);
  });
});

describe('where the top is held', () => {
  const open: Plan = { ...plainBench, base: { ...base, fixedLineMm: 'choose' } };

  test('the row in the middle that holds, where every hole is kept', () => {
    const { value, says } = chosenOf(open, 'base.fixedLine');
    expect(value).toBe(320);
    expect(says).toMatch(/^320\.0 mm from the front: left middle, right middle hold the top/);
    expect(says).toMatch(
      /Held elsewhere: at 70\.0 mm no screw holds the top .* slots \d+\.\d mm too short in all/,
    );
  });

  test('a row that holds goes before one that lets the top travel less', () => {
    const fixings = base.fixings.map((fixing) => ({
      ...fixing,
      slotMm: fixing.yMm === 70 ? 7 : 16,
    }));
    expect(chosenOf({ ...open, base: { ...open.base, fixings } }, 'base.fixedLine').value).toBe(70);
  });

  test('it is the line with the least swing that another comparison finds', () => {
    const { swing } = planWorktop(plainBench);
    for (const middleMm of [100, 250, 320, 400, 540]) {
      const fixings = [screw('a', 250, 70, 7), screw('b', 250, middleMm, 7), screw('c', 250, 570, 7)];
      const { leastSwing } = compareFixedLines({
        top: { frontYMm: 0, backYMm: top.widthMm },
        base: { frontYMm: 40, backYMm: 600 },
        fixings: fixings.map(({ slotMm: holeMm, ...one }) => ({ ...one, by: { kind: 'screw', holeMm } })),
        ...swing,
        ...{ shankDiameterMm: base.shankDiameterMm, clearanceMm: base.slotClearanceMm },
      });
      const { value } = chosenOf({ ...open, base: { ...open.base, fixings } }, 'base.fixedLine');
      expect(value).toBe(leastSwing?.plan.fixedLineYMm);
      expect(fixings.map(({ yMm }) => yMm)).toContain(value);
    }
  });

  test('a row further off, where only that keeps a hole clear of a rail all year', () => {
    // Holes at y 290, 10 mm in radius; a rail behind them at 290 + 10 + 2 + some swelling: enough for an arm of 40 mm, held
    // at 250, too little for 140 mm, held at 150, where screws would travel less.
    const { swellPct } = planWorktop(plainBench).swing;
    const railMm = 302 + (80 * swellPct) / 100;
    const plan: Plan = {
      ...plainBench,
      top: { ...top, widthMm: 400, inlays: [] },
      base: {
        ...base,
        members: [
          { name: 'leg', xMm: 700, yMm: 20, lengthMm: 40, widthMm: 260, clearanceMm: 6 },
          { name: 'rail', xMm: 0, yMm: railMm, lengthMm: 1400, widthMm: 40, clearanceMm: 2 },
        ],
        fixedLineMm: 'choose',
        fixings: [screw('a', 720, 50, 12), screw('b', 720, 150, 7), screw('c', 720, 250, 7)],
      },
      holes: { ...holes, diameterMm: 20, columns: 5, rows: 1, first: { xMm: 100, yMm: 290 } },
    };
    expect(chosenOf(plan, 'base.fixedLine').value).toBe(250);
    const nearer = plan.base.members.map((member) => ({
      ...member,
      yMm: member.yMm + (member.name === 'rail' ? 5 : 0),
    }));
    expect(chosenOf({ ...plan, base: { ...plan.base, members: nearer } }, 'base.fixedLine').value).toBe(150);
  });

  test('a row that slides takes the line along', () => {
    // The only screws stand in a rail that goes back until it is 6 mm from the rims of the holes at 300.
    const plan: Plan = {
      ...plainBench,
      top: { ...top, widthMm: 400, inlays: [] },
      base: {
        ...base,
        members: [{ name: 'rail', xMm: 100, yMm: 200, lengthMm: 1200, widthMm: 40, clearanceMm: 6 }],
        fixedLineMm: 'choose',
        fixings: [screw('a', 300, 220, 7), screw('b', 1000, 220, 7)],
        sliding: [
          {
            ...{ name: 'rail', members: ['rail'], fixings: ['a', 'b'], widensTowards: 'back' },
            ...{ leastSlideMm: 0, mostSlideMm: 90, slideMm: 'choose' },
          },
        ],
      },
      holes: { ...holes, diameterMm: 20, columns: 5, rows: 1, first: { xMm: 100, yMm: 300 } },
    };
    const { plan: settled, swing } = planWorktop(plan);
    const [rail] = settled.base.members;
    // Shrunk, the hole at 300 stands nearer to the line at y by its share of the way: 300 − (300 − y) s, and the rail's back
    // edge, 20 behind the line, keeps 16 from it: y + 36 = 300 − (300 − y) s, so y = 300 − 36 / (1 − s).
    const lineMm = 300 - 36 / (1 - swing.shrinkPct / 100);
    expect(settled.base.fixedLineMm).toBeCloseTo(lineMm, 2);
    expect(rail?.yMm).toBeCloseTo(lineMm - 20, 2);
    expect(settled.base.fixings.map(({ yMm }) => yMm)).toEqual([
      settled.base.fixedLineMm,
      settled.base.fixedLineMm,
    ]);
  });
});

describe('parts that have to slide back', () => {
  const plan = overLeg(400, { xMm: 100, lengthMm: 40 });
  const [leg] = plan.base.members;
  if (!leg) throw new Error('there is a leg');
  const part = (widensTowards: SlidingPart['widensTowards'], member: string): SlidingPart => ({
    ...{ name: `to the ${widensTowards}`, members: [member], fixings: [], widensTowards },
    ...{ leastSlideMm: -20, mostSlideMm: -5, slideMm: 'choose' },
  });
  const narrowed: Plan = {
    ...plan,
    base: {
      ...plan.base,
      members: [leg, { ...leg, name: 'other leg', xMm: 300 }],
      sliding: [part('left', 'leg'), part('right', 'other leg')],
    },
    holes: { ...plan.holes, columns: 1, edgeMarginMm: 10, first: { xMm: 30, yMm: 50 } },
  };

  test('are said to narrow the base, by as little as they may', () => {
    const { value, says } = chosenOf(narrowed, 'base.sliding[1].slide');
    expect(value).toBe(-5);
    expect(says).toMatch(/5\.0 mm away from the right, .*together narrow the base by 10\.0 mm\./);
    expect(says).toMatch(/No setting that keeps as many narrows the base by less than 10\.0 mm\.$/);
  });
});
