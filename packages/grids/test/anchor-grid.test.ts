import { describe, expect, test } from 'vitest';
import { anchorGrid, type GridToAnchor } from '../src/index.ts';
import { laid, rowsOf } from './anchored.ts';

/** Layouts reckoned with pencil and paper (common practice, no source). */
describe('anchorGrid, worked by hand', () => {
  const bench = {
    panel: { lengthMm: 600, widthMm: 400 },
    ...{ pitchXMm: 100, pitchYMm: 100, holeDiameterMm: 20, edgeMarginMm: 30 },
    ...{ anchorX: { from: 'middle' }, anchorY: { from: 'middle' } },
  } satisfies GridToAnchor;

  test('from the middle, both ends are left the same', () => {
    // Between 40 and 560: 5 pitches, 600 − 500 = 100, 50 at each end. Across, between 40 and 360: 3, 50 at each.
    expect(anchorGrid(bench)).toEqual({ firstHole: { xMm: 50, yMm: 50 }, columns: 6, rows: 4 });
    // 3 columns span 200: (600 − 200) / 2. One row stands at 400 / 2.
    const few = { ...bench, columns: 3, rows: 1 };
    expect(anchorGrid(few)).toEqual({ firstHole: { xMm: 200, yMm: 200 }, columns: 3, rows: 1 });
  });

  test('from an edge, the nearest centres are as far from it as asked for', () => {
    const left = anchorGrid({ ...bench, anchorX: { from: 'left edge', distanceMm: 75 } });
    // 75, 175 … 475; 575 would leave 25.
    expect([left.firstHole.xMm, left.columns]).toEqual([75, 5]);
    const right = anchorGrid({ ...bench, anchorX: { from: 'right edge', distanceMm: 75 } });
    // 525, 425 … 125; 25 would be too near to the left edge.
    expect([right.firstHole.xMm, right.columns]).toEqual([125, 5]);
    const back = anchorGrid({ ...bench, anchorY: { from: 'back edge', distanceMm: 250 }, rows: 2 });
    // 400 − 250 = 150, and one row before it.
    expect([back.firstHole.yMm, back.rows]).toEqual([50, 2]);
    const front = anchorGrid({ ...bench, anchorY: { from: 'front edge', distanceMm: 250 } });
    expect([front.firstHole.yMm, front.rows]).toEqual([250, 2]);
  });

  test('from a hole, the grid goes on both ways as far as the margin lets it', () => {
    const anchorX = { from: 'hole', centreMm: 263 } as const;
    // 263, 163, 63 to the left; 363, 463 to the right; 563 would leave 37.
    expect(anchorGrid({ ...bench, anchorX })).toMatchObject({ firstHole: { xMm: 63 }, columns: 5 });
    const third = { ...bench, columns: 4, anchorX: { ...anchorX, index: 2 } };
    expect(anchorGrid(third)).toMatchObject({ firstHole: { xMm: 63 }, columns: 4 });
  });

  test('in inches: 48 by 24 in, every 4 in, 4 in from the right and the front', () => {
    const inches = {
      panel: { lengthMm: 48 * 25.4, widthMm: 24 * 25.4 },
      ...{ pitchXMm: 4 * 25.4, pitchYMm: 4 * 25.4, holeDiameterMm: 0.75 * 25.4, edgeMarginMm: 25.4 },
      anchorX: { from: 'right edge', distanceMm: 4 * 25.4 },
      anchorY: { from: 'front edge', distanceMm: 4 * 25.4 },
    } satisfies GridToAnchor;
    // From 44 in down to 4 in; 0 in is the edge. From 4 in up to 20 in.
    const { firstHole, columns, rows } = anchorGrid(inches);
    expect([columns, rows]).toEqual([11, 5]);
    expect(firstHole.xMm / 25.4).toBeCloseTo(4, 9);
    expect(firstHole.yMm / 25.4).toBe(4);
  });

  test('staggered from the middle, every row is centred', () => {
    const { holes, dropped } = laid({ ...bench, staggered: true, pitchYMm: 140 });
    // Across, 2 pitches of 140 leave 60 at each end: 3 rows.
    expect(rowsOf(holes)).toEqual([
      [50, 150, 250, 350, 450, 550],
      [100, 200, 300, 400, 500],
      [50, 150, 250, 350, 450, 550],
    ]);
    expect(dropped).toEqual([]);
  });

  test('staggered with a number of columns, the rows together are centred', () => {
    const { holes } = laid({ ...bench, staggered: true, columns: 4, rows: 2 });
    // 3½ pitches: (600 − 350) / 2 = 125 before the first row and behind the second.
    expect(rowsOf(holes)).toEqual([
      [125, 225, 325, 425],
      [175, 275, 375, 475],
    ]);
    // A single row has nothing beside it.
    const one = anchorGrid({ ...bench, staggered: true, columns: 4, rows: 1 });
    expect(one.firstHole.xMm).toBe(150);
  });

  test('staggered where there is room for one hole in a row: a zigzag in the middle', () => {
    const panel = { lengthMm: 150, widthMm: 400 };
    // 150 − 80 = 70 between the margins; half a pitch is 50, and 10 are left on both sides.
    expect(rowsOf(laid({ ...bench, panel, staggered: true }).holes)).toEqual([[50], [100], [50], [100]]);
  });

  test('staggered from an edge, no row is nearer to it than asked for', () => {
    const far = { ...bench, staggered: true, rows: 2 };
    const left = laid({ ...far, anchorX: { from: 'left edge', distanceMm: 95 } });
    expect(rowsOf(left.holes)).toEqual([
      [95, 195, 295, 395, 495],
      [145, 245, 345, 445, 545],
    ]);
    const right = laid({ ...far, anchorX: { from: 'right edge', distanceMm: 95 } });
    expect(rowsOf(right.holes)).toEqual([
      [55, 155, 255, 355, 455],
      [105, 205, 305, 405, 505],
    ]);
    // From 60, half a pitch before would leave 10: the second row begins half a pitch after, and both fill.
    const near = laid({ ...far, anchorX: { from: 'right edge', distanceMm: 60 } });
    expect(rowsOf(near.holes)).toEqual([
      [40, 140, 240, 340, 440, 540],
      [90, 190, 290, 390, 490],
    ]);
  });

  test('staggered from a hole of the second row, the first row stands half a pitch beside it', () => {
    const { holes } = laid({
      ...{ ...bench, staggered: true, rows: 3 },
      anchorX: { from: 'hole', centreMm: 300 },
      anchorY: { from: 'hole', centreMm: 200, index: 1 },
    });
    expect(rowsOf(holes)).toEqual([
      [50, 150, 250, 350, 450, 550],
      [100, 200, 300, 400, 500],
      [50, 150, 250, 350, 450, 550],
    ]);
    expect([...new Set(holes.map(({ yMm }) => yMm))]).toEqual([100, 200, 300]);
  });
});

describe('anchorGrid refuses', () => {
  const good = {
    panel: { lengthMm: 600, widthMm: 400 },
    ...{ pitchXMm: 100, pitchYMm: 100, holeDiameterMm: 20, edgeMarginMm: 30 },
    ...{ anchorX: { from: 'middle' }, anchorY: { from: 'middle' } },
  } satisfies GridToAnchor;
  const hole = { from: 'hole', centreMm: 300 };

  test.each<[string, object, string]>([
    ['no panel', { panel: undefined }, 'panel.lengthMm between 1 and 20000, got undefined'],
    ['a pitch below the diameter', { pitchXMm: 19 }, 'pitchXMm between 20 and 10000, got 19'],
    ['half a column', { columns: 2.5 }, 'columns a whole number between 1 and 20000, got 2.5'],
    ['no rows', { rows: 0 }, 'rows a whole number between 1 and 20000, got 0'],
    [
      'a panel that is all margin',
      { panel: { lengthMm: 600, widthMm: 79 } },
      'panel.widthMm at least 80 for a hole and its edge margins, got 79',
    ],
    [
      'a million holes',
      { panel: { lengthMm: 20_000, widthMm: 20_000 }, pitchXMm: 20, pitchYMm: 20 },
      'at most 20000 holes, got columns 997 by rows 997',
    ],
    ['no anchor', { anchorX: undefined }, 'anchorX.from to be one of middle, left edge, right edge, hole'],
    [
      'an edge of the other direction',
      { anchorX: { from: 'front edge', distanceMm: 50 } },
      'anchorX.from to be one of middle, left edge, right edge, hole, got "front edge"',
    ],
    [
      'a distance that is none',
      { anchorY: { from: 'back edge', distanceMm: Number.NaN } },
      'anchorY.distanceMm between 0 and 400, got NaN',
    ],
    [
      'a distance as text',
      { anchorY: { from: 'back edge', distanceMm: '56' } },
      'anchorY.distanceMm between 0 and 400, got "56"',
    ],
    [
      'a distance below the margin',
      { anchorY: { from: 'back edge', distanceMm: 39 } },
      'anchorY.distanceMm between 40 and 360 to keep the edge margin, got 39',
    ],
    [
      'a hole off the panel',
      { anchorX: { from: 'hole', centreMm: 601 } },
      'anchorX.centreMm between 0 and 600, got 601',
    ],
    [
      'a hole too near to an edge',
      { anchorX: { from: 'hole', centreMm: 570 } },
      'anchorX.centreMm between 40 and 560 to keep the edge margin, got 570',
    ],
    [
      'more columns than there is room for',
      { columns: 7 },
      'columns that span at most 520 mm between the margins, got 7 that span 600 mm',
    ],
    [
      'more rows than there is room for behind the first',
      { rows: 3, anchorY: { from: 'front edge', distanceMm: 200 } },
      'anchorY with rows between 40 and 360, got 3 from 200 to 400',
    ],
    [
      'a third column with no room for two before it',
      { columns: 3, anchorX: { from: 'hole', centreMm: 150, index: 2 } },
      'anchorX with columns between 40 and 560, got 3 from -50 to 150',
    ],
    [
      'a hole of a number of columns, but not which',
      { columns: 3, anchorX: hole },
      'anchorX.index a whole number between 0 and 2, got undefined',
    ],
    [
      'a fourth column of three',
      { columns: 3, anchorX: { ...hole, index: 3 } },
      'anchorX.index a whole number between 0 and 2, got 3',
    ],
    [
      'which column it is where as many as fit are asked for',
      { anchorX: { ...hole, index: 3 } },
      'no anchorX.index where the grid fills the panel, got 3',
    ],
    [
      'a hole of the second row with no room for the first row before it',
      {
        ...{ staggered: true, columns: 2, anchorX: { from: 'hole', centreMm: 60, index: 0 } },
        anchorY: { from: 'hole', centreMm: 200 },
      },
      'anchorX with columns between 40 and 560, got 2 from 10 to 160',
    ],
    [
      'staggered rows of which every second one has no room',
      {
        staggered: true,
        anchorX: { from: 'left edge', distanceMm: 60 },
        panel: { lengthMm: 140, widthMm: 400 },
      },
      'room between the margins for a row 50 mm before or after the first, got one from 40 to 100 with the first hole at 60',
    ],
    [
      'staggered rows in a panel narrower than they',
      { staggered: true, panel: { lengthMm: 129, widthMm: 400 } },
      'columns that span at most 49 mm between the margins, got 1 that span 50 mm',
    ],
  ])('%s', (_, change, says) => {
    const asked = () => anchorGrid({ ...good, ...change } as GridToAnchor);
    expect(asked).toThrow(RangeError);
    expect(asked).toThrow(`anchorGrid requires ${says}`);
  });

  test('nothing at all', () => {
    expect(() => anchorGrid(undefined as never)).toThrow(RangeError);
  });

  test('nothing of what is all right, and changes nothing of it', () => {
    const before = structuredClone(good);
    expect(anchorGrid(good).rows).toBe(4);
    expect(good).toEqual(before);
  });
});
