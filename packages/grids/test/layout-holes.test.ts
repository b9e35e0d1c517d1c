import { Box, Polygon, point } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Hole, type HoleGrid, type KeepOut, layoutHoles } from '../src/index.ts';

const mm = (min: number, max: number) =>
  fc.integer({ min: min * 2, max: max * 2 }).map((halves) => halves / 2);

const keepOuts = fc
  .array(
    fc.record({
      xMm: mm(-100, 800),
      yMm: mm(-100, 600),
      lengthMm: mm(1, 600),
      widthMm: mm(1, 300),
      clearanceMm: mm(0, 30),
      belongsTo: fc.constantFrom('top' as const, 'base' as const),
    }),
    { maxLength: 5 },
  )
  .map((list): KeepOut[] => list.map((one, i) => ({ ...one, id: `rail ${i + 1}` })));

const grids: fc.Arbitrary<HoleGrid & { columns: number; rows: number }> = fc
  .record({
    panel: fc.record({ lengthMm: mm(300, 900), widthMm: mm(200, 600) }),
    firstHole: fc.record({ xMm: mm(0, 200), yMm: mm(0, 200) }),
    pitchXMm: mm(40, 200),
    pitchYMm: mm(40, 200),
    columns: fc.integer({ min: 1, max: 6 }),
    rows: fc.integer({ min: 1, max: 6 }),
    holeDiameterMm: mm(1, 40),
    edgeMarginMm: mm(0, 40),
    keepOuts,
  })
  // A grid that reaches beyond the panel is dropped there, but has no mirror image that begins on the panel.
  .filter(
    ({ panel, firstHole, pitchXMm, pitchYMm, columns, rows }) =>
      firstHole.xMm + (columns - 1) * pitchXMm <= panel.lengthMm &&
      firstHole.yMm + (rows - 1) * pitchYMm <= panel.widthMm,
  );

const movements = fc.record({
  fixedLineYMm: mm(0, 600),
  shrinkPct: fc.double({ min: 0, max: 5, noNaN: true }),
  swellPct: fc.double({ min: 0, max: 5, noNaN: true }),
});

const all = (grid: HoleGrid) => {
  const { holes, dropped } = layoutHoles(grid);
  const kept = new Map<string, Hole & { kept: boolean }>();
  for (const hole of holes) kept.set(`${hole.row}/${hole.column}`, { ...hole, kept: true });
  for (const hole of dropped) kept.set(`${hole.row}/${hole.column}`, { ...hole, kept: false });
  expect(kept.size).toBe(holes.length + dropped.length);
  return kept;
};

describe('layoutHoles, worked by hand', () => {
  const bench: HoleGrid = {
    panel: { lengthMm: 400, widthMm: 300 },
    firstHole: { xMm: 50, yMm: 50 },
    pitchXMm: 100,
    pitchYMm: 100,
    holeDiameterMm: 20,
    edgeMarginMm: 25,
    keepOuts: [
      {
        ...{ id: 'middle rail', xMm: 180, yMm: 90, lengthMm: 40, widthMm: 120, clearanceMm: 15 },
        reason: 'steel tube',
        belongsTo: 'base',
      },
    ],
  };

  test('fills the panel, and drops the middle row beside the rail', () => {
    const { columns, rows, holes, dropped } = layoutHoles(bench);
    // From 50 to 400 − 25 − 10 = 365: 315 / 100 = 3 pitches; from 50 to 300 − 35 = 265: 2 pitches.
    expect([columns, rows, holes.length]).toEqual([4, 3, 12]);
    // At 150 and 250 the rim is 180 − 150 − 10 = 20 mm from the rail: enough for 15.
    expect(holes.find(({ row, column }) => row === 1 && column === 1)).toEqual({
      ...{ row: 1, column: 1, xMm: 150, yMm: 150 },
      ...{ clearanceMm: 20, nearest: 'middle rail' },
    });
    // At (150, 50) the corner is 30 and 40 mm away: 50 less 10. The front edge is as near: 50 less 10.
    expect(holes.find(({ row, column }) => row === 0 && column === 1)?.clearanceMm).toBe(40);
    expect(dropped).toEqual([]);
  });

  test('a season that takes holes nearer to the rail drops them', () => {
    const keepOuts = bench.keepOuts.map((rail) => ({ ...rail, xMm: 130, yMm: 175 }));
    // (150, 150) lies 25 in front of the rail: 15 to the rim, just enough. Held at the front, 1 % is 1.5 mm nearer.
    const movement = { fixedLineYMm: 0, shrinkPct: 0, swellPct: 1 };
    const still = layoutHoles({ ...bench, keepOuts });
    const moving = layoutHoles({ ...bench, keepOuts, movement });
    expect(still.holes.some(({ xMm, yMm }) => xMm === 150 && yMm === 150)).toBe(true);
    const lost = moving.dropped.find(({ xMm, yMm }) => xMm === 150 && yMm === 150);
    expect(lost?.conflicts).toEqual([{ with: 'middle rail', clearanceMm: 13.5, neededMm: 15 }]);
    expect(lost?.why).toBe('13.5 mm from middle rail (steel tube), needs 15 mm');
    const inlaid = keepOuts.map((rail) => ({ ...rail, belongsTo: 'top' as const }));
    expect(layoutHoles({ ...bench, keepOuts: inlaid, movement })).toEqual(
      layoutHoles({ ...bench, keepOuts: inlaid }),
    );
  });

  test('says how deep a hole overlaps, and names every conflict', () => {
    const { dropped } = layoutHoles({ ...bench, firstHole: { xMm: 30, yMm: 152 }, columns: 3, rows: 1 });
    // (30, 152): 30 − 10 = 20 mm to the left edge, not 25. (230, 152): 230 − 220 − 10 touches the rail.
    expect(
      dropped.map(({ column, clearanceMm, nearest, why }) => [column, clearanceMm, nearest, why]),
    ).toEqual([
      [0, 20, 'left edge', '20 mm from left edge, needs 25 mm'],
      [2, 0, 'middle rail', '0 mm from middle rail (steel tube), needs 15 mm'],
    ]);
    const inside = layoutHoles({ ...bench, firstHole: { xMm: 190, yMm: 295 }, columns: 1, rows: 1 });
    // 300 − 295 − 10 = −5 at the back edge.
    expect(inside.dropped[0]?.why).toBe('overlaps back edge by 5 mm, needs 25 mm');
  });

  test('a lack shows in the sentence, however small', () => {
    const why = (clearanceMm: number, yMm: number) => {
      const rail = { id: 'rail', xMm: 0, yMm: 200, lengthMm: 400, widthMm: 90, clearanceMm };
      const keepOuts: KeepOut[] = [{ ...rail, belongsTo: 'base' }];
      const grid = { ...bench, keepOuts, columns: 1, rows: 1, firstHole: { xMm: 50, yMm } };
      return layoutHoles(grid).dropped.map((hole) => hole.why);
    };
    // 200 − 183.003 − 10 = 6.997, and 200 − 194.003 − 10 = −4.003.
    expect(why(7, 183.003)).toEqual(['6.99 mm from rail, needs 7 mm']);
    expect(why(6.998, 183.003)).toEqual(['6.99 mm from rail, needs 7 mm']);
    expect(why(8.2, 194.003)).toEqual(['overlaps rail by 4.01 mm, needs 8.2 mm']);
    expect(why(6.997, 183.003)).toEqual([]);
  });

  test('a hundred pitches of an inch end where a hundred inches end', () => {
    const { columns, holes } = layoutHoles({
      panel: { lengthMm: 102 * 25.4, widthMm: 50.8 },
      firstHole: { xMm: 25.4, yMm: 25.4 },
      ...{ pitchXMm: 25.4, pitchYMm: 25.4, holeDiameterMm: 10, edgeMarginMm: 20.4, keepOuts: [] },
    });
    expect(columns).toBe(101);
    expect(holes).toHaveLength(101);
  });
});

/** A rail so small that it lies whole within the clearance round a hole: its rim touches nothing. */
const inItsClearance = {
  panel: { lengthMm: 300, widthMm: 200 },
  firstHole: { xMm: 0, yMm: 0.5 },
  ...{ pitchXMm: 40, pitchYMm: 40, columns: 2, rows: 1, holeDiameterMm: 1, edgeMarginMm: 0 },
  keepOuts: [
    {
      ...{ id: 'rail 1', belongsTo: 'top' as const, clearanceMm: 20.5 },
      ...{ xMm: 19.5, yMm: 0, lengthMm: 1, widthMm: 1 },
    },
  ],
};

describe('layoutHoles, laws', () => {
  test('keeps exactly the holes that a geometry library finds clear', () => {
    let dropped = 0;
    fc.assert(
      fc.property(grids, (grid) => {
        const { panel, edgeMarginMm, holeDiameterMm, firstHole, pitchXMm, pitchYMm } = grid;
        const radius = holeDiameterMm / 2;
        for (const hole of all(grid).values()) {
          const { row, column, xMm, yMm } = hole;
          expect([xMm, yMm]).toEqual([firstHole.xMm + column * pitchXMm, firstHole.yMm + row * pitchYMm]);
          const edgeMm = Math.min(xMm, yMm, panel.lengthMm - xMm, panel.widthMm - yMm) - radius;
          const blocked = grid.keepOuts.some((one) => {
            const rail = new Polygon(
              new Box(one.xMm, one.yMm, one.xMm + one.lengthMm, one.yMm + one.widthMm),
            );
            if (rail.contains(point(xMm, yMm))) return true;
            return point(xMm, yMm).distanceTo(rail)[0] < radius + one.clearanceMm - 1e-6;
          });
          expect(hole.kept).toBe(!blocked && edgeMm >= edgeMarginMm);
          expect(hole.clearanceMm).toBeLessThanOrEqual(edgeMm);
          if (!hole.kept) dropped += 1;
        }
      }),
      { examples: [[inItsClearance]] },
    );
    expect(dropped).toBeGreaterThan(100);
  });

  test('one more keep-out never raises a clearance or gives a hole back', () => {
    fc.assert(
      fc.property(grids, movements, (grid, movement) => {
        const [extra, ...rest] = grid.keepOuts;
        fc.pre(extra !== undefined);
        const fewer = all({ ...grid, movement, keepOuts: rest });
        for (const [place, hole] of all({ ...grid, movement })) {
          const before = fewer.get(place);
          expect(hole.clearanceMm).toBeLessThanOrEqual(before?.clearanceMm ?? Number.NaN);
          expect(hole.kept && !before?.kept).toBe(false);
        }
      }),
    );
  });

  test('a season never raises a clearance', () => {
    fc.assert(
      fc.property(grids, movements, (grid, movement) => {
        const still = all(grid);
        for (const [place, hole] of all({ ...grid, movement })) {
          expect(hole.clearanceMm).toBeLessThanOrEqual(still.get(place)?.clearanceMm ?? Number.NaN);
        }
      }),
    );
  });

  test('the mirror image of everything has the mirror image of the holes', () => {
    fc.assert(
      fc.property(grids, movements, (grid, movement) => {
        const { panel, firstHole, pitchXMm, pitchYMm, columns, rows } = grid;
        const mirrored = all({
          ...grid,
          movement: { ...movement, fixedLineYMm: panel.widthMm - movement.fixedLineYMm },
          firstHole: {
            xMm: panel.lengthMm - firstHole.xMm - (columns - 1) * pitchXMm,
            yMm: panel.widthMm - firstHole.yMm - (rows - 1) * pitchYMm,
          },
          keepOuts: grid.keepOuts.map((one) => ({
            ...one,
            xMm: panel.lengthMm - one.xMm - one.lengthMm,
            yMm: panel.widthMm - one.yMm - one.widthMm,
          })),
        });
        for (const { row, column, clearanceMm, kept } of all({ ...grid, movement }).values()) {
          const image = mirrored.get(`${rows - 1 - row}/${columns - 1 - column}`);
          expect(image?.clearanceMm).toBeCloseTo(clearanceMm, 9);
          expect(image?.kept).toBe(kept);
        }
      }),
    );
  });

  test('scales with everything', () => {
    fc.assert(
      fc.property(grids, fc.constantFrom(0.5, 2, 10), (grid, times) => {
        const scaled = (value: unknown): unknown => {
          if (Array.isArray(value)) return value.map(scaled);
          if (typeof value !== 'object' || value === null) return value;
          return Object.fromEntries(
            Object.entries(value).map(([name, part]) => [
              name,
              name.endsWith('Mm') && typeof part === 'number' ? part * times : scaled(part),
            ]),
          );
        };
        const before = all({ ...grid, pitchXMm: grid.pitchXMm * 2 });
        for (const [place, hole] of all(scaled({ ...grid, pitchXMm: grid.pitchXMm * 2 }) as HoleGrid)) {
          expect(hole.clearanceMm).toBeCloseTo(times * (before.get(place)?.clearanceMm ?? Number.NaN), 9);
          expect(hole.kept).toBe(before.get(place)?.kept);
        }
      }),
    );
  });

  test('fills as far as the edge margin lets it, and no further', () => {
    fc.assert(
      fc.property(grids, ({ columns: _c, rows: _r, keepOuts: _k, ...grid }) => {
        const { panel, firstHole, pitchXMm, pitchYMm, holeDiameterMm, edgeMarginMm } = grid;
        const away = edgeMarginMm + holeDiameterMm / 2;
        const counted = (sideMm: number, firstMm: number, pitchMm: number) => {
          let count = 1;
          while (firstMm + count * pitchMm <= sideMm - away) count += 1;
          return count;
        };
        const { columns, rows, holes, dropped } = layoutHoles({ ...grid, keepOuts: [] });
        expect(columns).toBe(counted(panel.lengthMm, firstHole.xMm, pitchXMm));
        expect(rows).toBe(counted(panel.widthMm, firstHole.yMm, pitchYMm));
        expect(holes.length + dropped.length).toBe(columns * rows);
      }),
    );
  });
});
