import { describe, expect, test } from 'vitest';
import { type HoleGrid, type KeepOut, layoutHoles, type Shape } from '../src/index.ts';

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
        ...{
          shape: 'rectangle',
          id: 'middle rail',
          xMm: 180,
          yMm: 90,
          lengthMm: 40,
          widthMm: 120,
          clearanceMm: 15,
        },
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
      const rail = {
        shape: 'rectangle' as const,
        id: 'rail',
        xMm: 0,
        yMm: 200,
        lengthMm: 400,
        widthMm: 90,
        clearanceMm,
      };
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

  test('staggers every second row by half a pitch', () => {
    const staggered = layoutHoles({ ...bench, keepOuts: [], staggered: true });
    // Row 1 begins at 100: from there to 365 are 2 pitches, so 3 holes.
    const along = (row: number) => staggered.holes.filter((hole) => hole.row === row).map(({ xMm }) => xMm);
    expect([along(0), along(1), along(2)]).toEqual([
      [50, 150, 250, 350],
      [100, 200, 300],
      [50, 150, 250, 350],
    ]);
    // Rows of 20 mm holes at half of 24 mm may stand √(20² − 12²) = 16 mm apart, and no nearer.
    const near = { ...bench, keepOuts: [], staggered: true, pitchXMm: 24 };
    expect(layoutHoles({ ...near, pitchYMm: 16 }).dropped).toEqual([]);
    expect(() => layoutHoles({ ...near, pitchYMm: 15.9 })).toThrow('pitchYMm between 16 and 10000');
  });

  test('keeps away from every shape', () => {
    const clearanceTo = (shape: Shape) => {
      const keepOut: KeepOut = { ...shape, id: 'it', clearanceMm: 0, belongsTo: 'strip' };
      const grid = { ...bench, keepOuts: [keepOut], columns: 1, rows: 1, firstHole: { xMm: 150, yMm: 150 } };
      const [hole] = [...layoutHoles(grid).holes, ...layoutHoles(grid).dropped];
      return hole?.clearanceMm;
    };
    // 30 and 40 mm to the middle are 50 mm; less 8 and 10 for the radii.
    expect(clearanceTo({ shape: 'circle', xMm: 180, yMm: 190, diameterMm: 16 })).toBe(32);
    // 150 − 60 − 10 to the line, 60 mm from the back.
    expect(clearanceTo({ shape: 'band', edge: 'back edge', widthMm: 60 })).toBe(80);
    // A bar turned by 90° about (200, 100) lies to the left of it: its side is at 180, 30 − 10 away.
    const bar = { shape: 'rectangle' as const, xMm: 200, yMm: 100, lengthMm: 100, widthMm: 20 };
    expect(clearanceTo({ ...bar, angleDeg: 90 })).toBeCloseTo(20, 9);
    // The slanted side runs through (200, 150) and (150, 200), 50 / √2 away.
    const corners = [
      { xMm: 250, yMm: 100 },
      { xMm: 250, yMm: 200 },
      { xMm: 150, yMm: 200 },
    ];
    expect(clearanceTo({ shape: 'polygon', corners })).toBeCloseTo(50 / Math.SQRT2 - 10, 9);
    // An angle bracket open to the hole: 20 mm from its inner corner at (130, 130), both ways.
    const bracket = [
      [110, 110],
      [260, 110],
      [260, 130],
      [130, 130],
      [130, 260],
      [110, 260],
    ].map(([xMm = 0, yMm = 0]) => ({ xMm, yMm }));
    expect(clearanceTo({ shape: 'polygon', corners: bracket })).toBe(10);
  });

  test('keeps within the areas given, whole in one of them', () => {
    const area = (xMm: number) => ({
      shape: 'rectangle' as const,
      xMm,
      yMm: 100,
      lengthMm: 90,
      widthMm: 100,
    });
    const keepIn = { id: 'brass frame', clearanceMm: 5, areas: [area(110), area(200)] };
    const { holes, dropped } = layoutHoles({ ...bench, keepOuts: [], keepIn, rows: 2 });
    // (150, 150) is 40 − 10 inside the first; (250, 150) as far inside the second; (50, 150) is 60 + 10 out of both.
    expect(holes.map(({ xMm, yMm, clearanceMm }) => [xMm, yMm, clearanceMm])).toEqual([
      [150, 150, 30],
      [250, 150, 30],
    ]);
    const [, , , , outside] = dropped;
    expect(outside?.why).toBe('reaches out of brass frame by 70 mm, needs 5 mm');
    const across = layoutHoles({
      ...bench,
      keepOuts: [],
      keepIn,
      firstHole: { xMm: 200, yMm: 150 },
      columns: 1,
    });
    // On the line where both begin: in neither of them whole, for all that they touch.
    expect(across.dropped[0]?.why).toBe('reaches out of brass frame by 10 mm, needs 5 mm');
  });
});
