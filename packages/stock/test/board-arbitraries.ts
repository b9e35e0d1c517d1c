import fc from 'fast-check';
import type { BoardCutting } from '../src/index.ts';

const firstCut = fc.constantFrom('across', 'along', 'either');
const grain = fc.constantFrom('along the board', 'along the board', 'either way');

interface Sizes {
  readonly boards: {
    readonly most: number;
    readonly length: [number, number];
    readonly width: [number, number];
  };
  readonly parts: {
    readonly most: number;
    readonly length: [number, number];
    readonly width: [number, number];
  };
  readonly pieces: number;
  readonly defects: number;
  readonly largestDefect: number;
  readonly kerf: number[];
  readonly trim: number[];
  /** Lengths are whole multiples of this, mm. */
  readonly gridMm: number;
}

/** Jobs on a grid of lengths, with parts that all go into some board. */
function jobsOf(sizes: Sizes): fc.Arbitrary<BoardCutting> {
  const on = ([min, max]: [number, number]) => fc.integer({ min, max }).map((n) => n * sizes.gridMm);
  const places = fc.tuple(...[0, 1].map(() => fc.integer({ min: 0, max: 1000 })));
  // Of no length or width it is a line, as a split.
  const size = fc.integer({ min: 0, max: sizes.largestDefect });
  const boardArb = fc
    .record({
      lengthMm: on(sizes.boards.length),
      widthMm: on(sizes.boards.width),
      boardPrice: fc.integer({ min: 1, max: 40 }),
      spots: fc.array(fc.tuple(places, size, size), { maxLength: sizes.defects }),
    })
    .map(({ spots, ...board }) => ({
      ...board,
      defects: spots.map(([[x = 0, y = 0], length, width]) => {
        const grid = sizes.gridMm;
        const at = (share: number, side: number) =>
          grid * Math.floor((share / 1001) * Math.round(side / grid));
        const [xMm, yMm] = [at(x, board.lengthMm), at(y, board.widthMm)];
        return {
          ...{ xMm, yMm, lengthMm: Math.min(length * grid, board.lengthMm - xMm) },
          widthMm: Math.min(width * grid, board.widthMm - yMm),
        };
      }),
    }));
  const partArb = fc.record({
    ...{ lengthMm: on(sizes.parts.length), widthMm: on(sizes.parts.width), grain },
    ...{ count: fc.integer({ min: 1, max: 3 }), worth: fc.integer({ min: 1, max: 60 }) },
  });
  return fc
    .record({
      boards: fc.array(boardArb, { minLength: 1, maxLength: sizes.boards.most }),
      parts: fc.array(partArb, { minLength: 1, maxLength: sizes.parts.most }),
      kerfMm: fc.constantFrom(...sizes.kerf),
      endTrimMm: fc.constantFrom(...sizes.trim),
      edgeTrimMm: fc.constantFrom(...sizes.trim),
      ...{ firstCut, priced: fc.boolean() },
    })
    .map(({ boards, parts, priced, ...rest }) => {
      let room = sizes.pieces;
      const fitting = parts
        .filter(({ lengthMm: l, widthMm: w, grain }) =>
          boards.some(({ lengthMm, widthMm }) => {
            const [length, width] = [lengthMm - 2 * rest.endTrimMm, widthMm - 2 * rest.edgeTrimMm];
            return (l <= length && w <= width) || (grain === 'either way' && w <= length && l <= width);
          }),
        )
        .map(({ worth, count, ...part }, i) => {
          const some = Math.min(count, room);
          room -= some;
          return { id: `part ${i}`, ...part, count: some, ...(priced && { valuePrice: worth }) };
        })
        .filter(({ count }) => count > 0);
      return {
        ...rest,
        parts: fitting,
        boards: boards.map((board, i) => ({ id: `board ${i}`, ...board })),
      } as BoardCutting;
    })
    .filter(
      ({ parts, boards, kerfMm, endTrimMm, edgeTrimMm }) =>
        parts.length > 0 &&
        boards.every((one) => one.lengthMm - 2 * endTrimMm > kerfMm && one.widthMm - 2 * edgeTrimMm > kerfMm),
    );
}

/** So small that every way to cut can be tried. */
export const tinyJobs = jobsOf({
  boards: { most: 3, length: [3, 9], width: [2, 6] },
  parts: { most: 4, length: [1, 6], width: [1, 4] },
  ...{ pieces: 5, defects: 2, largestDefect: 2, kerf: [0, 1, 2], trim: [0, 0, 1], gridMm: 1 },
});

/** As a small shop has them, in odd fractions of a millimetre. */
export const shopJobs = jobsOf({
  boards: { most: 5, length: [150, 400], width: [12, 30] },
  parts: { most: 5, length: [20, 160], width: [4, 14] },
  ...{ pieces: 9, defects: 3, largestDefect: 8, kerf: [0, 1.6, 3.2], trim: [0, 6.4, 15] },
  gridMm: 9.525,
});
