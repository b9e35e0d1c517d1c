import { describe, expect, test } from 'vitest';
import { type BoardCutting, cutBoards } from '../src/index.ts';
import { expectSound } from './saw.ts';

const board = { id: 'a', lengthMm: 2000, widthMm: 200, boardPrice: 20, defects: [] };
const rail = { id: 'rail', lengthMm: 700, widthMm: 60, count: 2, grain: 'along the board' } as const;
const job: BoardCutting = {
  ...{ parts: [rail], boards: [board], kerfMm: 3, endTrimMm: 10, edgeTrimMm: 5, firstCut: 'across' },
};
const knot = { xMm: 100, yMm: 50, lengthMm: 30, widthMm: 20 };
const withPart = (change: object) => ({ parts: [{ ...rail, ...change }] });
const withBoard = (change: object) => ({ boards: [{ ...board, ...change }] });
const withKnot = (change: object) => withBoard({ defects: [{ ...knot, ...change }] });

describe('cutBoards refuses', () => {
  test.each<[string, object, string]>([
    ['a kerf that is not a number', { kerfMm: Number.NaN }, 'kerfMm between 0 and 50, got NaN'],
    ['a trim below 0', { endTrimMm: -1 }, 'endTrimMm between 0 and 1000, got -1'],
    ['an edge trim that is text', { edgeTrimMm: '5' }, 'edgeTrimMm between 0 and 1000, got "5"'],
    ['no first cut', { firstCut: undefined }, 'firstCut to be one of across, along, either, got undefined'],
    ['parts that are no list', { parts: 'rail' }, 'parts to be a list, got string'],
    ['no parts', { parts: [] }, '1 to 100 parts, got 0'],
    ['a part without a name', withPart({ id: ' ' }), 'parts[0].id to be a name unlike every other, got " "'],
    [
      'two parts of one name',
      { parts: [rail, rail] },
      'parts[1].id to be a name unlike every other, got "rail"',
    ],
    ['half a part', withPart({ count: 1.5 }), 'parts[0].count a whole number between 1 and 100, got 1.5'],
    ['a part without length', withPart({ lengthMm: 0 }), 'parts[0].lengthMm between 1 and 20000, got 0'],
    [
      'a part of no width',
      withPart({ widthMm: Number.NaN }),
      'parts[0].widthMm between 1 and 20000, got NaN',
    ],
    [
      'a grain that there is none of',
      withPart({ grain: 'across' }),
      'parts[0].grain to be one of along the board, either way, got "across"',
    ],
    ['a value of 0', withPart({ valuePrice: 0 }), 'parts[0].valuePrice between 0.01 and 1000000, got 0'],
    [
      'a value for some parts',
      { parts: [rail, { ...rail, id: 'leg', valuePrice: 4 }] },
      'a valuePrice for every part or for none, got one for parts[1] and none for parts[0]',
    ],
    [
      'a part longer than every board less its trims',
      withPart({ lengthMm: 1981 }),
      'parts[0] ("rail") to go into a board less its trims, got 1981 by 60 mm',
    ],
    [
      'sixty of one and fifty of another',
      {
        parts: [
          { ...rail, count: 60 },
          { ...rail, id: 'leg', count: 50 },
        ],
      },
      'at most 100 parts in all, got 110',
    ],
    ['no board', { boards: [] }, '1 to 40 boards, got 0'],
    [
      'an empty place in the list',
      { boards: [null] },
      'boards[0].id to be a name unlike every other, got undefined',
    ],
    [
      'a board that costs nothing',
      withBoard({ boardPrice: 0 }),
      'boards[0].boardPrice between 0.01 and 1000000, got 0',
    ],
    [
      'an endless board',
      withBoard({ lengthMm: Infinity }),
      'boards[0].lengthMm between 1 and 20000, got Infinity',
    ],
    [
      'a board that is all kerf',
      { ...withBoard({ widthMm: 13 }), kerfMm: 3 },
      'boards[0].widthMm above both trims and the kerf, got 13',
    ],
    [
      'defects that are no list',
      withBoard({ defects: undefined }),
      'boards[0].defects to be a list, got undefined',
    ],
    [
      'a defect nowhere',
      withKnot({ xMm: Number.NaN }),
      'boards[0].defects[0].xMm between 0 and 20000, got NaN',
    ],
    [
      'a defect before the board',
      withKnot({ yMm: -1 }),
      'boards[0].defects[0].yMm between 0 and 20000, got -1',
    ],
    [
      'a defect that reaches past the board',
      withKnot({ xMm: 1980 }),
      'boards[0].defects[0] to lie on the board, lengthMm 2000, got one that reaches to 2010',
    ],
    [
      'a defect beside the board',
      withKnot({ yMm: 200 }),
      'boards[0].defects[0] to lie on the board, widthMm 200, got one that reaches to 220',
    ],
    [
      'more defects than boards have',
      withBoard({ defects: Array(31).fill(knot) }),
      '0 to 30 boards[0].defects, got 31',
    ],
  ])('%s', (_, change, says) => {
    const asked = () => cutBoards({ ...job, ...change } as BoardCutting);
    expect(asked).toThrow(RangeError);
    expect(asked).toThrow(`cutBoards requires ${says}`);
  });

  test('nothing at all, and a hundred thousand parts, at once', () => {
    expect(() => cutBoards(undefined as unknown as BoardCutting)).toThrow(/^cutBoards requires kerfMm/);
    const started = performance.now();
    const parts = Array.from({ length: 100_000 }, (_, i) => ({ ...rail, id: `rail ${i}` }));
    expect(() => cutBoards({ ...job, parts })).toThrow('cutBoards requires 1 to 100 parts, got 100000');
    expect(() => cutBoards({ ...job, ...withPart({ count: 100_000 }) })).toThrow(
      'between 1 and 100, got 100000',
    );
    expect(performance.now() - started).toBeLessThan(1000);
  });
});

describe('cutBoards on all it takes', () => {
  /** Sizes that repeat only after long, so that nothing is alike. */
  const sizes = (i: number) => ({ lengthMm: 250 + ((i * 137) % 600), widthMm: 40 + ((i * 53) % 70) });
  const boardsOf = (count: number) =>
    Array.from({ length: count }, (_, i) => {
      const [lengthMm, widthMm] = [1500 + ((i * 311) % 1500), 120 + ((i * 71) % 150)];
      const defects = Array.from({ length: i % 4 }, (_, j) => ({
        ...{
          xMm: ((i + 1) * (j + 1) * 173) % (lengthMm - 60),
          yMm: ((i + 2) * (j + 1) * 37) % (widthMm - 30),
        },
        ...{ lengthMm: 50, widthMm: 25 },
      }));
      const boardPrice = Math.round((lengthMm * widthMm) / (9000 + ((i * 997) % 2500)));
      return { id: `board ${i}`, lengthMm, widthMm, boardPrice, defects };
    });
  const partsOf = (count: number) =>
    Array.from({ length: count }, (_, i) => {
      const grain = i % 7 === 3 ? ('either way' as const) : ('along the board' as const);
      return { id: `part ${i}`, ...sizes(i), count: 1, grain };
    });

  test.each([
    [30, 12],
    [100, 40],
  ])(
    '%i parts from %i boards: a plan that can be sawn, and an honest gap',
    (parts, boards) => {
      const large: BoardCutting = {
        ...job,
        parts: partsOf(parts),
        boards: boardsOf(boards),
        firstCut: 'either',
      };
      const plan = cutBoards(large);
      expectSound(large, plan);
      expect(plan.missing).toEqual([]);
      expect(plan.leastPrice).toBeGreaterThan(0.5 * plan.totalPrice);
      // A few seconds of work, many times that on a busy machine.
    },
    90_000,
  );
});
