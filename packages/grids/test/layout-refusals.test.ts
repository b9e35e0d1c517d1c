import { describe, expect, test } from 'vitest';
import { type HoleGrid, type KeepOut, layoutHoles } from '../src/index.ts';

describe('layoutHoles refuses', () => {
  const rail: KeepOut = {
    ...{ shape: 'rectangle', id: 'rail', xMm: 0, yMm: 100, lengthMm: 500, widthMm: 40, clearanceMm: 5 },
    belongsTo: 'base',
  };
  const grid = {
    panel: { lengthMm: 500, widthMm: 300 },
    firstHole: { xMm: 50, yMm: 50 },
    ...{ pitchXMm: 100, pitchYMm: 100, holeDiameterMm: 20, edgeMarginMm: 25 },
    keepOuts: [rail],
  } satisfies HoleGrid;
  /** Of a square, as many as asked for. */
  const corners = (count: number) =>
    [
      { xMm: 0, yMm: 0 },
      { xMm: 100, yMm: 0 },
      { xMm: 100, yMm: 100 },
      { xMm: 0, yMm: 100 },
    ].slice(0, count);
  const [a, b, c, d] = corners(4);
  const movement = { fixedLineYMm: 0, shrinkPct: 1, swellPct: 1 };

  test.each<[string, object, string]>([
    ['a pitch of 0', { pitchXMm: 0 }, 'pitchXMm between 20 and 10000, got 0'],
    ['a pitch below the diameter', { pitchYMm: 19.9 }, 'pitchYMm between 20 and 10000, got 19.9'],
    ['a pitch that is not a number', { pitchXMm: Number.NaN }, 'pitchXMm between 20 and 10000, got NaN'],
    ['a pitch that is text', { pitchXMm: '96' }, 'pitchXMm between 20 and 10000, got "96"'],
    ['no panel', { panel: undefined }, 'panel.lengthMm between 1 and 20000, got undefined'],
    [
      'an endless panel',
      { panel: { lengthMm: Infinity, widthMm: 300 } },
      'panel.lengthMm between 1 and 20000, got Inf',
    ],
    ['a hole without size', { holeDiameterMm: 0 }, 'holeDiameterMm between 0.1 and 1000, got 0'],
    ['a margin below 0', { edgeMarginMm: -1 }, 'edgeMarginMm between 0 and 20000, got -1'],
    [
      'a first hole off the panel',
      { firstHole: { xMm: 501, yMm: 50 } },
      'firstHole.xMm between 0 and 500, got 501',
    ],
    [
      'a first hole before the datum',
      { firstHole: { xMm: 50, yMm: -1 } },
      'firstHole.yMm between 0 and 300, got -1',
    ],
    ['half a column', { columns: 2.5 }, 'columns a whole number between 1 and 20000, got 2.5'],
    ['a stagger that is no yes or no', { staggered: 1 }, 'staggered to be true or false, got number'],
    [
      'a shape that there is none of',
      { keepOuts: [{ ...rail, shape: 'oval' }] },
      'keepOuts[0].shape to be one of rectangle, circle, polygon, band, got "oval"',
    ],
    [
      'a circle without size',
      { keepOuts: [{ ...rail, shape: 'circle' }] },
      'keepOuts[0].diameterMm between 0 and 20000, got undefined',
    ],
    [
      'a turn by more than half a turn',
      { keepOuts: [{ ...rail, angleDeg: 181 }] },
      'keepOuts[0].angleDeg between -180 and 180, got 181',
    ],
    [
      'a band along no edge',
      { keepOuts: [{ ...rail, shape: 'band', edge: 'top' }] },
      'keepOuts[0].edge to be one of left edge, right edge, front edge, back edge, got "top"',
    ],
    [
      'a polygon of two corners',
      { keepOuts: [{ ...rail, shape: 'polygon', corners: corners(2) }] },
      'keepOuts[0].corners to hold 3 to 100 corners, got 2',
    ],
    [
      'a polygon without corners',
      { keepOuts: [{ ...rail, shape: 'polygon' }] },
      'keepOuts[0].corners to be a list, got undefined',
    ],
    [
      'a corner that is nowhere',
      { keepOuts: [{ ...rail, shape: 'polygon', corners: [...corners(3), {}] }] },
      'keepOuts[0].corners[3].xMm between -20000 and 20000, got undefined',
    ],
    [
      'sides that cross',
      { keepOuts: [{ ...rail, shape: 'polygon', corners: [a, c, b, d] }] },
      'keepOuts[0].corners with sides that do not cross',
    ],
    [
      'a keep-in without areas',
      { keepIn: { id: 'frame', clearanceMm: 0, areas: [] } },
      'keepIn.areas to hold an area, got none',
    ],
    [
      'a keep-in with the name of a keep-out',
      { keepIn: { id: 'rail', clearanceMm: 0, areas: [rail] } },
      'keepIn.id unlike every other, got "rail", the name of keepOuts[0]',
    ],
    ['no row', { rows: 0 }, 'rows a whole number between 1 and 20000, got 0'],
    ['a million holes', { columns: 1000, rows: 1000 }, 'at most 20000 holes, got columns 1000 by rows 1000'],
    ['keep-outs that are no list', { keepOuts: 'rail' }, 'keepOuts to be a list, got string'],
    ['an empty place in the list', { keepOuts: [null] }, 'keepOuts[0].id to be a name, got undefined'],
    [
      'a keep-out without a name',
      { keepOuts: [{ ...rail, id: ' ' }] },
      'keepOuts[0].id to be a name, got " "',
    ],
    [
      'two of one name',
      { keepOuts: [rail, rail] },
      'keepOuts[1].id unlike every other, got "rail", the name of keepOuts[0]',
    ],
    [
      'the name of an edge',
      { keepOuts: [{ ...rail, id: 'left edge' }] },
      'keepOuts[0].id unlike every other, got "left edge"',
    ],
    [
      'a keep-out of no width',
      { keepOuts: [{ ...rail, widthMm: -4 }] },
      'keepOuts[0].widthMm between 0 and 20000, got -4',
    ],
    [
      'a keep-out nowhere',
      { keepOuts: [{ ...rail, xMm: Number.NaN }] },
      'keepOuts[0].xMm between -20000 and 20000, got NaN',
    ],
    [
      'a keep-out of nobody',
      { keepOuts: [{ ...rail, belongsTo: 'floor' }] },
      'keepOuts[0].belongsTo to be one of top, strip, base, got "floor"',
    ],
    [
      'shrinking below 0',
      { movement: { ...movement, shrinkPct: -1 } },
      'movement.shrinkPct between 0 and 20, got -1',
    ],
    [
      'a movement about nothing',
      { movement: { shrinkPct: 1, swellPct: 1 } },
      'movement.fixedLineYMm between -20000 and 20000, got undefined',
    ],
  ])('%s', (_, change, says) => {
    const asked = () => layoutHoles({ ...grid, ...change } as HoleGrid);
    expect(asked).toThrow(RangeError);
    expect(asked).toThrow(`layoutHoles requires ${says}`);
  });

  test('nothing at all, and a thousand and one keep-outs', () => {
    expect(() => layoutHoles(undefined as unknown as HoleGrid)).toThrow(
      /^layoutHoles requires panel.lengthMm/,
    );
    const keepOuts = Array.from({ length: 1001 }, (_, i) => ({ ...rail, id: `rail ${i}` }));
    expect(() => layoutHoles({ ...grid, keepOuts })).toThrow('at most 1000 keepOuts, got 1001');
  });

  test('and leaves what it was given alone', () => {
    const given = structuredClone({ ...grid, movement });
    layoutHoles(given);
    expect(given).toEqual({ ...grid, movement });
  });
});
