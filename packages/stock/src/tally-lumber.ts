import { requireFields, requireThat } from '@scantling/rules';
import { convert, cubicMetre, cubicMillimetre } from '@scantling/units';
import { boardFeet } from './rules/board-feet.ts';
import { surfaceMeasure } from './rules/surface-measure.ts';

const limits = {
  thicknessMm: { min: 1, max: 1000 },
  widthMm: { min: 1, max: 5000 },
  lengthMm: { min: 1, max: 30_000 },
  count: { min: 1, max: 10_000, integer: true },
} as const;

/** Boards of one size. */
export interface TalliedBoard {
  /** Nominal or rough, mm, 1 to 1000. */
  readonly thicknessMm: number;
  /** mm, 1 to 5000. */
  readonly widthMm: number;
  /** mm, 1 to 30 000. */
  readonly lengthMm: number;
  /** 1 to 10 000. */
  readonly count: number;
}

/** What boards of one size come to, all of them together. */
export interface TallyLine extends TalliedBoard {
  /** Whole square feet, halves up and down by turns, ft². */
  readonly surfaceFt2: number;
  /** Surface measure times thickness in inches: what hardwood is sold by, bd ft. */
  readonly soldBoardFt: number;
  /** By nominal sizes, not rounded, bd ft. */
  readonly nominalBoardFt: number;
  /** Wood that is there, m³. */
  readonly volumeM3: number;
}

export interface TallyInput {
  /** 1 to 1000 sizes, in the order in which they are counted. */
  readonly boards: readonly TalliedBoard[];
}

export interface LumberTally {
  readonly lines: readonly TallyLine[];
  readonly surfaceFt2: number;
  readonly soldBoardFt: number;
  readonly nominalBoardFt: number;
  readonly volumeM3: number;
}

/**
 * What a stack of lumber comes to, by each way of counting: as hardwood is sold, by nominal sizes, and in cubic metres.
 * The first half foot of surface goes up, the next down, and so on through the tally.
 *
 * @throws RangeError where an input is outside its limits.
 * Source: `boardFeet` and `surfaceMeasure`. Thickness below an inch counts as an inch in board feet, not in m³.
 * @example
 * ```ts
 * import { tallyLumber } from '@scantling/stock';
 * // Two boards of 9 in by 10 ft by 2 in: 7 1/2 ft² each, one taken as 8 and one as 7
 * const { surfaceFt2, soldBoardFt, volumeM3 } = tallyLumber({ boards: [{ thicknessMm: 50.8, widthMm: 228.6, lengthMm: 3048, count: 2 }] });
 * [surfaceFt2, soldBoardFt, volumeM3] // => [15, 30, 0.070792]
 * ```
 */
export function tallyLumber(input: TallyInput): LumberTally {
  const boards = input?.boards;
  const fits = Array.isArray(boards) && boards.length >= 1 && boards.length <= 1000;
  requireThat('tallyLumber', fits, `boards to be a list of 1 to 1000, got ${boards?.length}`);
  let halves = 0;
  const lines = boards.map((board, i): TallyLine => {
    requireFields('tallyLumber', `boards[${i}]`, board, limits);
    const { thicknessMm, widthMm, lengthMm, count } = board;
    const { surfaceFt2: up, halfDownFt2: down } = surfaceMeasure({ widthMm, lengthMm });
    // Of boards that come to a half foot every second one is taken down, whichever line it stands in.
    const takenDown = up === down ? 0 : Math.floor((count + (halves % 2)) / 2);
    if (up !== down) halves += count;
    const surfaceFt2 = count * up - takenDown;
    const volumeMm3 = thicknessMm * widthMm * lengthMm * count;
    return {
      thicknessMm,
      widthMm,
      lengthMm,
      count,
      surfaceFt2,
      soldBoardFt: (surfaceFt2 * Math.max(thicknessMm, 25.4)) / 25.4,
      nominalBoardFt: count * boardFeet({ thicknessMm, widthMm, lengthMm }).volumeBoardFt,
      volumeM3: convert(volumeMm3, cubicMillimetre, cubicMetre),
    };
  });
  const sum = (of: 'surfaceFt2' | 'soldBoardFt' | 'nominalBoardFt' | 'volumeM3') =>
    lines.reduce((total, line) => total + line[of], 0);
  return {
    lines,
    surfaceFt2: sum('surfaceFt2'),
    soldBoardFt: sum('soldBoardFt'),
    nominalBoardFt: sum('nominalBoardFt'),
    volumeM3: sum('volumeM3'),
  };
}
