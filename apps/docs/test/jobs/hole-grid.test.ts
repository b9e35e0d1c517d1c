import { layoutHoles } from '@scantling/grids';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/calculator/answer.ts';
import type { Outcome } from '../../src/calculator/calculation.ts';
import { flatTexts } from '../../src/calculator/form.ts';
import { type Grid, layOut } from '../../src/hole-grid/layout.ts';
import job from '../../src/jobs/hole-grid.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyMember = fc.record({
  name: fc.constant(''),
  xMm: mm(-100, 1000),
  yMm: mm(-100, 700),
  lengthMm: mm(0, 900),
  widthMm: mm(0, 600),
  clearanceMm: mm(0, 60),
});

const anyGrid: fc.Arbitrary<Grid> = fc.record({
  lengthMm: mm(200, 1200),
  widthMm: mm(200, 800),
  holeDiameterMm: mm(1, 40),
  edgeMarginMm: mm(0, 60),
  pitchXMm: mm(45, 300),
  pitchYMm: mm(45, 300),
  columns: fc.option(fc.integer({ min: 1, max: 6 })),
  rows: fc.option(fc.integer({ min: 1, max: 6 })),
  fixedLineYMm: mm(-100, 900),
  swellPct: mm(0, 5),
  shrinkPct: mm(0, 5),
  members: fc.array(anyMember, { maxLength: 5 }),
});

describe('the holes of a grid', () => {
  test('are those that the planner lays out, with the same clearance and the same conflicts', () => {
    fc.assert(
      fc.property(anyGrid, mm(0, 1), mm(0, 1), (grid, shareX, shareY) => {
        const first = { xMm: shareX * grid.lengthMm, yMm: shareY * grid.widthMm };
        const { columns, rows, members, lengthMm, widthMm, ...terms } = grid;
        const planned = layoutHoles({
          ...terms,
          panel: { lengthMm, widthMm },
          firstHole: first,
          ...(columns !== null && { columns }),
          ...(rows !== null && { rows }),
          keepOuts: members.map((member, i) => ({
            ...member,
            ...{ shape: 'rectangle', id: `${i}`, belongsTo: 'base' },
          })),
          movement: terms,
        });
        const laidOut = layOut(grid, first);
        expect([laidOut.columns, laidOut.rows]).toEqual([planned.columns, planned.rows]);
        const all = [...planned.holes.map((hole) => ({ ...hole, conflicts: [] })), ...planned.dropped];
        expect(laidOut.holes.length).toBe(all.length);
        for (const hole of all) {
          const ours = laidOut.holes.find(
            ({ column, row }) => column === hole.column + 1 && row === hole.row + 1,
          );
          expect(ours?.xMm).toBeCloseTo(hole.xMm, 6);
          expect(ours?.yMm).toBeCloseTo(hole.yMm, 6);
          expect(ours?.nearest.clearanceMm).toBeCloseTo(hole.clearanceMm, 6);
          expect(ours?.conflicts.map(({ to }) => `${to}`)).toEqual(
            hole.conflicts.map((conflict) => conflict.with),
          );
        }
      }),
    );
  });
});

const first = flatTexts(job.first);
const figure = (outcome: Outcome, name: string) => {
  const found = outcome.figures.find((one) => one.name === name);
  return found && 'value' in found ? found.value : undefined;
};

describe('a grid of two rows over one rail', () => {
  // A top of 600 × 300 mm, held in its middle at 150 mm, swells by 3 mm (1 %) and shrinks not at all. Holes of 20 mm at
  // 100, 200 … 500 mm along, 60 and 240 mm across; 250 to 350 mm along stands a post, 100 mm wide, from 80 to 220 mm.
  const texts = {
    ...Object.fromEntries(Object.entries(first).filter(([name]) => !name.startsWith('members.'))),
    ...{ lengthMm: '600', widthMm: '300', holeDiameterMm: '20', edgeMarginMm: '30' },
    ...{ pitchXMm: '100', pitchYMm: '180', firstXMm: '100', firstYMm: '60' },
    ...{ swellMm: '3', shrinkMm: '0', heldAtMm: '150' },
    ...{ 'members.0.name': 'post', 'members.0.xMm': '250', 'members.0.yMm': '80' },
    ...{ 'members.0.lengthMm': '100', 'members.0.widthMm': '140', 'members.0.clearanceMm': '9' },
  };
  const outcomeOf = (changed: Record<string, string>) => {
    const { computed, notes, problems } = answer(job, { ...texts, ...changed });
    if (!computed) throw new Error([...notes, ...Object.values(problems)].join());
    return computed.outcome;
  };

  test('is worked by hand', () => {
    // Hole 3 of each row stands over 300 mm, 20 mm from the post's side: 20 − 10 = 10 mm to its rim, on building day and
    // when swollen it is farther off. That is the least: it asks for 9 mm.
    const outcome = outcomeOf({});
    expect(figure(outcome, 'kept')).toBe(10);
    expect(figure(outcome, 'clearanceMm')).toBeCloseTo(10, 9);
    expect(outcome.verdict?.good).toBe(true);

    // Shrunk by 3 mm, each row is 90 × 1 % = 0.9 mm nearer to the middle: 10 − 0.9 = 9.1 mm are left.
    expect(figure(outcomeOf({ shrinkMm: '3' }), 'clearanceMm')).toBeCloseTo(9.1, 9);
    // By 6 mm, 1.8 mm nearer: 8.2 mm, and both are lost. Next come the holes at 200 and 400 mm: 50 mm to the side of the
    // post and 18.2 mm in front of it, so √(50² + 18.2²) − 10 = 43.21 mm from it; the edges are 50 mm off.
    const lost = outcomeOf({ shrinkMm: '6' });
    expect(figure(lost, 'kept')).toBe(8);
    expect(figure(lost, 'clearanceMm')).toBeCloseTo(Math.hypot(50, 18.2) - 10, 9);
    expect(lost.verdict?.says).toBe('2 of 5 × 2 holes are lost.');
    expect(lost.tables?.find(({ caption }) => caption === 'Holes lost')?.rows).toHaveLength(2);
  });

  test('is put at the best place, with the proof, after what was typed was shown', async () => {
    const typed = outcomeOf({ place: 'best', shrinkMm: '6', columns: '5', rows: '2' });
    expect(typed.notes?.join()).toContain('best place');
    const best = await typed.later?.();
    if (!best) throw new Error('It does not come later.');
    // The rows are 180 mm apart, 176.4 mm when shrunk by 2 %; past 140 mm of post both would need 2 × 19 = 38 mm. But one
    // row can be clear.
    expect(figure(best, 'kept')).toBe(9);
    expect(best.later).toBeUndefined();
    expect(best.reasons?.some((reason) => reason.startsWith('Proven:'))).toBe(true);
    const [firstXMm, firstYMm] = [figure(best, 'bestXMm'), figure(best, 'bestYMm')];
    const again = outcomeOf({
      shrinkMm: '6',
      columns: '5',
      rows: '2',
      firstXMm: `${firstXMm}`,
      firstYMm: `${firstYMm}`,
    });
    expect(figure(again, 'kept')).toBe(9);
  });

  test('says so where no place is clear', async () => {
    const blocked = outcomeOf({
      ...{ place: 'best', 'members.0.xMm': '-100', 'members.0.yMm': '-100' },
      ...{ 'members.0.lengthMm': '2000', 'members.0.widthMm': '2000' },
    });
    const best = await blocked.later?.();
    expect(best?.notes?.join()).toContain('no hole is clear');
  });
});
