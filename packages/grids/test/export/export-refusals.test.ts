import { describe, expect, test } from 'vitest';
import { holeDxf } from '../../src/export/dxf.ts';
import { type DrillingInput, drillingProgram, holeDrawing, holeTable } from '../../src/export.ts';

const hole = { xMm: 60, yMm: 56, diameterMm: 20 };
const corner = { xMm: 0, yMm: 0 };
const good: DrillingInput & { resolutionMm: number } = {
  panel: { lengthMm: 600, widthMm: 400 },
  holes: [hole, { ...hole, xMm: 156 }],
  ...{ safeHeightMm: 25, retractPlaneMm: 3, betweenHolesAt: 'safe height' },
  ...{ depthMm: 42, peckMm: 14, feedMmPerMin: 300, speedRpm: 1500, spindleStartMs: 500, resolutionMm: 0.1 },
};
const writers = { holeTable, holeDrawing, holeDxf, drillingProgram } as Record<
  string,
  (input: never) => string
>;
const refused = (name: string, change: unknown, says: string) => {
  const asked = () => writers[name]?.((change && { ...good, ...(change as object) }) as never);
  expect(asked).toThrow(RangeError);
  expect(asked).toThrow(`${name} requires ${says}`);
};
const third = (change: object) => ({ holes: [hole, hole, hole, { ...hole, ...change }] });

test('what is asked below is all right otherwise', () => {
  const before = structuredClone(good);
  for (const write of Object.values(writers)) expect(write(good as never).length).toBeGreaterThan(20);
  expect(good).toEqual(before);
});

describe.each(Object.keys(writers))('%s refuses', (name) => {
  test.each<[string, object, string]>([
    ['no list', { holes: 'six' }, 'holes to be a list, got string'],
    ['a gap', { holes: [hole, null] }, 'holes[1].xMm between'],
    ['a hole nowhere', third({ xMm: Number.NaN }), 'holes[3].xMm between'],
    ['a hole at infinity', third({ yMm: Number.POSITIVE_INFINITY }), 'holes[3].yMm between'],
    ['a hole that is text', third({ xMm: '60' }), 'holes[3].xMm between'],
    ['a hole without size', third({ diameterMm: 0 }), 'holes[3].diameterMm between 0.1 and 1000, got 0'],
    ['half a row', third({ row: 1.5 }), 'holes[3].row a whole number between 0 and 1000000, got 1.5'],
    [
      'a column below 0',
      third({ column: -1 }),
      'holes[3].column a whole number between 0 and 1000000, got -1',
    ],
    [
      'no clearance',
      third({ clearanceMm: Number.NaN }),
      'holes[3].clearanceMm between -20000 and 20000, got NaN',
    ],
    ['a number for a name', third({ nearest: 7 }), 'holes[3].nearest to be a text, got number'],
    [
      'too many',
      { holes: new Array(20_001).fill(hole) },
      `holes to have ${name === 'drillingProgram' ? 1 : 0} to 20000 items, got 20001`,
    ],
  ])('%s', (_, change, says) => refused(name, change, says));

  test('nothing at all', () => {
    expect(() => writers[name]?.(undefined as never)).toThrow(RangeError);
  });
});

describe.each(['holeDrawing', 'holeDxf', 'drillingProgram'])('%s refuses', (name) => {
  test.each<[string, object, string]>([
    ['no panel', { panel: null }, 'panel.lengthMm between 1 and 20000, got undefined'],
    [
      'a panel of no width',
      { panel: { lengthMm: 5, widthMm: 0 } },
      'panel.widthMm between 1 and 20000, got 0',
    ],
    ['a hole off the panel', third({ yMm: 400.001 }), 'holes[3].yMm between 0 and 400, got 400.001'],
    ['a hole before the datum', third({ xMm: -1 }), 'holes[3].xMm between 0 and 600, got -1'],
    ['a title that is no text', { title: 7 }, 'title to be a text, got number'],
  ])('%s', (_, change, says) => refused(name, change, says));
});

describe.each(['holeDrawing', 'holeDxf'])('%s refuses', (name) => {
  const circle = { id: 'a', shape: 'circle', xMm: 0, yMm: 0, diameterMm: 5 };
  const polygon = (...corners: object[]) => ({ keepOuts: [{ id: 'a', shape: 'polygon', corners }] });
  test.each<[string, object, string]>([
    ['keep-outs that are no list', { keepOuts: {} }, 'keepOuts to be a list, got object'],
    ['too many', { keepOuts: new Array(1001).fill(circle) }, 'keepOuts to have 0 to 1000 items, got 1001'],
    ['a keep-out that is none', { keepOuts: [null] }, 'keepOuts[0].id to be a text, got undefined'],
    [
      'a keep-out without shape',
      { keepOuts: [circle, { id: 'a' }] },
      'keepOuts[1].shape to be one of rectangle, circle, polygon, band, got undefined',
    ],
    [
      'a circle without size',
      { keepOuts: [{ ...circle, diameterMm: undefined }] },
      'keepOuts[0].diameterMm between 0 and 20000, got undefined',
    ],
    [
      'a polygon of two corners',
      polygon(corner, corner),
      'keepOuts[0].corners to hold 3 to 100 corners, got 2',
    ],
    [
      'a corner nowhere',
      polygon(corner, corner, { xMm: 0, yMm: Number.NaN }),
      'keepOuts[0].corners[2].yMm between -20000 and 20000, got NaN',
    ],
  ])('%s', (_, change, says) => refused(name, change, says));
});

describe('holeTable refuses', () => {
  test.each<[string, object, string]>([
    ['no resolution', { resolutionMm: 0 }, 'resolutionMm between 0.001 and 10, got 0'],
    [
      'a resolution of a third',
      { resolutionMm: 1 / 3 },
      'resolutionMm to be a whole number of thousandths, got 0.333',
    ],
    ['a unit without symbol', { alsoIn: null }, 'alsoIn.unit to be a text, got undefined'],
    ['a unit that nobody writes', { alsoIn: { unit: 'in' } }, 'alsoIn.write to be a function, got undefined'],
  ])('%s', (_, change, says) => refused('holeTable', change, says));
});

describe('drillingProgram refuses', () => {
  test.each<[string, object, string]>([
    ['no hole', { holes: [] }, 'holes to have 1 to 20000 items, got 0'],
    [
      'holes for two drills',
      third({ diameterMm: 25 }),
      'holes[3].diameterMm to be 20 as that of holes[0], got 25: one program, one drill',
    ],
    ['a retract plane in the work', { retractPlaneMm: -1 }, 'retractPlaneMm between 0.1 and 1000, got -1'],
    ['a safe height below it', { safeHeightMm: 2 }, 'safeHeightMm between 3 and 1000, got 2'],
    ['no safe height', { safeHeightMm: undefined }, 'safeHeightMm between 3 and 1000, got undefined'],
    [
      'no way between holes',
      { betweenHolesAt: undefined },
      'betweenHolesAt to be one of safe height, retract plane',
    ],
    ['no depth', { depthMm: Number.NaN }, 'depthMm between 0.1 and 1000, got NaN'],
    ['a peck beyond the depth', { peckMm: 43 }, 'peckMm between 0.1 and 42, got 43'],
    ['a peck of nothing', { peckMm: 0 }, 'peckMm between 0.1 and 42, got 0'],
    ['no feed', { feedMmPerMin: 0 }, 'feedMmPerMin between 1 and 20000, got 0'],
    ['half a turn', { speedRpm: 1500.5 }, 'speedRpm a whole number between 1 and 100000, got 1500.5'],
    [
      'a start without end',
      { spindleStartMs: Number.POSITIVE_INFINITY },
      'spindleStartMs between 1 and 60000, got Inf',
    ],
  ])('%s', (_, change, says) => refused('drillingProgram', change, says));
});
