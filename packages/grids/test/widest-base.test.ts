import { describe, expect, test } from 'vitest';
import { type SlidingBase, type SlidingPart, widestBase } from '../src/index.ts';

const leg = {
  ...({ shape: 'rectangle', id: 'leg', belongsTo: 'base', clearanceMm: 5 } as const),
  ...{ xMm: 270, yMm: 0, lengthMm: 40, widthMm: 100 },
};

/** Holes at 50, 150 … 450 mm: the margin leaves no other place for them. */
const bench: SlidingBase = {
  panel: { lengthMm: 500, widthMm: 100 },
  ...{ pitchXMm: 100, pitchYMm: 100, columns: 5, rows: 1, holeDiameterMm: 20, edgeMarginMm: 40 },
  keepOuts: [leg],
  parts: [
    { id: 'right frame', keepOutIds: ['leg'], widensTowards: 'right', leastSlideMm: 0, mostSlideMm: 80 },
  ],
  mostDroppedCount: 0,
};

const [right] = bench.parts as [SlidingPart];

describe('widestBase, worked by hand', () => {
  test('a leg goes on to the next hole, and past it where that hole is dropped', () => {
    // Between the holes at 250 and 350 its edge goes to 350 − 10 − 5 = 335, 25 mm on. Past 350 it may go to 435.
    const { settings, proven } = widestBase({ ...bench, mostDroppedCount: 2 });
    expect(proven).toBe(true);
    expect(settings.map(({ droppedCount }) => droppedCount)).toEqual([0, 1]);
    expect(settings[0]?.spreadMm).toBeCloseTo(25, 6);
    expect(settings[1]).toMatchObject({ spreadMm: 80, slides: [{ id: 'right frame', slideMm: 80 }] });
    expect(settings[1]?.keepOuts).toMatchObject([{ id: 'leg', xMm: 350, yMm: 0 }]);
  });

  test('two legs share what the grid can shift', () => {
    // Holes at x, x + 100 … x + 500 with x from 30 to 50: a leg 40 wide stands between two of them with 15 to each centre.
    // The left one begins at x + 115 at least, 65 − x on; the right one at x + 445 at most, x + 115 on: 180 for every x.
    const two: SlidingBase = {
      ...{ ...bench, panel: { lengthMm: 580, widthMm: 100 }, edgeMarginMm: 20, columns: 6 },
      keepOuts: [
        { ...leg, id: 'left leg', xMm: 180 },
        { ...leg, id: 'right leg', xMm: 330 },
      ],
      parts: [
        { id: 'left', keepOutIds: ['left leg'], widensTowards: 'left', leastSlideMm: 0, mostSlideMm: 40 },
        { id: 'right', keepOutIds: ['right leg'], widensTowards: 'right', leastSlideMm: 0, mostSlideMm: 200 },
      ],
    };
    const { settings, proven } = widestBase(two);
    expect(proven).toBe(true);
    expect(settings.map(({ droppedCount }) => droppedCount)).toEqual([0]);
    expect(settings[0]?.spreadMm).toBeCloseTo(180, 6);
  });

  test('a rail goes back until a swollen top brings the next row over it', () => {
    // Rows at 50 and 150, held at the front; 2 % of swelling never takes a hole towards the rail in front of it, 2 % of
    // shrinking takes the second row to 147. The rail's back edge at 100 goes to 147 − 10 − 5 = 132.
    const rail = { ...leg, id: 'rail', xMm: 0, yMm: 80, lengthMm: 500, widthMm: 20 };
    const { settings, proven } = widestBase({
      ...{ ...bench, rows: 2, panel: { lengthMm: 500, widthMm: 200 }, keepOuts: [rail] },
      parts: [{ id: 'rail', keepOutIds: ['rail'], widensTowards: 'back', leastSlideMm: 0, mostSlideMm: 50 }],
      movement: { fixedLineYMm: 0, swellPct: 2, shrinkPct: 2 },
    });
    expect(proven).toBe(true);
    expect(settings[0]?.spreadMm).toBeCloseTo(32, 6);
  });

  test('a leg that cannot go far enough has no setting', () => {
    // It covers the hole at 250 from the start; clear of that one it stands at 265 or beyond, 15 mm on.
    const leg1 = { ...leg, xMm: 250 };
    const only = (mostSlideMm: number) =>
      widestBase({ ...bench, keepOuts: [leg1], parts: [{ ...right, mostSlideMm }] }).settings;
    expect(only(14.9)).toEqual([]);
    expect(only(15.1)).toMatchObject([{ droppedCount: 0, spreadMm: 15.1 }]);
  });

  test('a rail that stays counts where only a swollen top brings a hole to it', () => {
    // One row at 50, held at y = −950: 1 % of swelling takes it 10 mm to the back. A rail from 74 on is 24 − 10 = 14 mm
    // from the rim on building day, and 4 in summer.
    const rail = { ...leg, id: 'rail', xMm: 0, yMm: 74, lengthMm: 500, widthMm: 20 };
    const swelling = { fixedLineYMm: -950, swellPct: 1, shrinkPct: 0 };
    const moving = { ...bench, keepOuts: [leg, rail], movement: swelling };
    expect(widestBase({ ...moving, mostDroppedCount: 4 }).settings).toEqual([]);
    const nearer = { ...rail, clearanceMm: 4 };
    expect(widestBase({ ...moving, keepOuts: [leg, nearer] }).settings).toHaveLength(1);
  });

  test.each(['its sides', 'its corners'])('a leg given by %s that only summer brings the holes to', (by) => {
    // The same row; the leg begins at y = 70. In summer the centres stand at 60, 10 in front of it: 15 away from its
    // corner at 350 − √(15² − 10²) = 338.82, and the leg ends at 310.
    const back = { ...leg, yMm: 70, widthMm: 30 };
    const corners = [
      { xMm: 270, yMm: 70 },
      { xMm: 310, yMm: 70 },
      { xMm: 310, yMm: 100 },
      { xMm: 270, yMm: 100 },
    ];
    const { xMm: _, yMm: __, lengthMm: ___, widthMm: ____, ...terms } = back;
    const keepOut = by === 'its sides' ? back : { ...terms, shape: 'polygon' as const, corners };
    const swelling = { fixedLineYMm: -950, swellPct: 1, shrinkPct: 0 };
    const { settings } = widestBase({ ...bench, keepOuts: [keepOut], movement: swelling });
    expect(settings[0]?.spreadMm).toBeCloseTo(40 - Math.sqrt(125), 2);
    expect(widestBase({ ...bench, keepOuts: [keepOut] }).settings[0]?.spreadMm).toBe(80);
  });

  test('a grid whose first hole is given leaves only the slides to find', () => {
    // A wider panel would let the grid shift; from 47 on, holes at 247 and 347: the leg's edge goes to 347 − 15 = 332.
    const wide = { ...bench, panel: { lengthMm: 560, widthMm: 100 }, edgeMarginMm: 20 };
    const firstHole = { xMm: 47, yMm: 50 };
    const { settings, proven } = widestBase({ ...wide, firstHole });
    expect(proven).toBe(true);
    expect(settings).toMatchObject([{ droppedCount: 0, firstHole }]);
    expect(settings[0]?.spreadMm).toBeCloseTo(22, 6);
    expect(widestBase(wide).settings[0]?.spreadMm).toBeGreaterThan(25);
  });

  test('where too many holes would be lost there is no setting', () => {
    const plate = { ...leg, id: 'plate', xMm: 0, yMm: 0, lengthMm: 250, widthMm: 100 };
    const covered = { ...bench, keepOuts: [...bench.keepOuts, plate] };
    expect(widestBase({ ...covered, mostDroppedCount: 2 })).toEqual({ settings: [], proven: true });
    expect(widestBase({ ...covered, mostDroppedCount: 3 }).settings[0]?.droppedCount).toBe(3);
  });
});

describe('widestBase refuses', () => {
  const part = right;
  const withPart = (change: object) => ({ ...bench, parts: [{ ...part, ...change }] }) as SlidingBase;

  test.each([
    [{ ...bench, parts: [] }, '1 to 8 parts, got 0'],
    [withPart({ id: ' ' }), 'parts[0].id to be a name unlike every other, got " "'],
    [{ ...bench, parts: [part, part] }, 'parts[1].id to be a name unlike every other, got "right frame"'],
    [withPart({ widensTowards: 'up' }), 'parts[0].widensTowards'],
    [withPart({ leastSlideMm: Number.NaN }), 'parts[0].leastSlideMm between -20000 and 20000, got NaN'],
    [withPart({ mostSlideMm: -1 }), 'parts[0].mostSlideMm between 0 and 20000, got -1'],
    [
      withPart({ keepOutIds: ['leg', 'foot'] }),
      'parts[0].keepOutIds[1] to be the id of a keep-out, got "foot"',
    ],
    [
      { ...bench, parts: [part, { ...part, id: 'second' }] },
      'parts[1].keepOutIds[0] to be named once, got "leg", which slides with "right frame" already',
    ],
    [
      { ...bench, keepOuts: [{ ...leg, belongsTo: 'top' as const }] },
      'parts[0].keepOutIds[0] to belong to the base and to be no band, got "leg"',
    ],
    [{ ...bench, firstHole: { xMm: 501, yMm: 50 } }, 'firstHole.xMm between 0 and 500, got 501'],
    [{ ...bench, firstHole: { xMm: 50 } }, 'firstHole.yMm'],
    [{ ...bench, mostDroppedCount: 11 }, 'mostDroppedCount'],
    [{ ...bench, columns: 1000, rows: 1000 }, 'at most 20000 holes'],
    [{ ...bench, columns: Number.NaN }, 'columns'],
  ])('%#', (base, message) => {
    expect(() => widestBase(base as SlidingBase)).toThrow(`widestBase requires ${message}`);
  });
});
