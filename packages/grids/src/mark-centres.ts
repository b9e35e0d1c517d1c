import { plusZero, requireList } from '@scantling/rules';
import { type Denominator, formatLength, nearestMark } from '@scantling/units';

/** Centres along one edge, and the tape that they are marked with: inches with a denominator, or metric with a step. */
export type CentresToMark = {
  /** Centres of the holes, mm from the datum, −20 000 to 20 000, 1 to 20 000 of them, taken to the nanometre. */
  readonly centresMm: readonly number[];
} & (
  | {
      /** Marks to the inch: 2, 4, 8, 16, 32 or 64. */
      readonly denominator: Denominator;
    }
  | {
      /** Least division of the tape, mm, 0.001 to 1000, taken to the nanometre. */
      readonly stepMm: number;
    }
);

/** The mark of one centre. */
export interface CentreMark {
  /** Where the centre should be, mm from the datum. */
  readonly centreMm: number;
  /** Where the mark is, mm from the datum. */
  readonly markMm: number;
  /** The mark as it is read off the tape. */
  readonly text: string;
  /** Mark less centre, mm: positive where the mark lies too far out. At most half a division, either way. */
  readonly errorMm: number;
}

/** The marks of a row of centres. */
export interface CentreMarks {
  /** In the order of the centres. */
  readonly marks: readonly CentreMark[];
  /** Which of them is off by the most, counted from 0; the first of those that are off alike. */
  readonly worstIndex: number;
  /** How far that one is off, mm, without its sign. */
  readonly worstErrorMm: number;
  /** How many centres fall on a mark to the nanometre. */
  readonly onMarkCount: number;
}

/** As many decimals as the step has, five at the most. */
const decimalsOf = (stepMm: number) =>
  [0, 1, 2, 3, 4].find((decimals) => Math.round(stepMm * 1e6) % 10 ** (6 - decimals) === 0) ?? 5;

/**
 * Where to mark hole centres with a tape: for each centre the nearest mark, read from one datum. No error is carried on
 * from one hole to the next, so none is more than half a division; marks stepped off with dividers drift
 * (`steppingError` of @scantling/units sets the two side by side).
 *
 * With a step of 32 and centres counted from the first hole, `onMarkCount` tells how many fall on the 32 mm pitch of
 * cabinet hardware (common practice, no source).
 *
 * @param input - Centres and tape.
 * @returns The mark of every centre, the largest error and the centre that has it.
 * @throws RangeError where an input is outside its limits; of the tape in the words of `nearestMark`.
 * Source: common practice, no source.
 * @example
 * ```ts
 * import { markCentres } from '@scantling/grids';
 * const { marks, worstIndex, worstErrorMm } = markCentres({ centresMm: [78, 174, 270], denominator: 16 });
 * marks.map(({ text }) => text) // => ['3 1/16 in', '6 7/8 in', '10 5/8 in']
 * marks[0] // => { centreMm: 78, markMm: 77.7875, text: '3 1/16 in', errorMm: -0.2125 }
 * worstIndex // => 1
 * worstErrorMm // => 0.625
 * markCentres({ centresMm: [0, 96, 200], stepMm: 32 }).onMarkCount // => 2
 * ```
 */
export function markCentres(input: CentresToMark): CentreMarks {
  requireList('markCentres', 'centresMm', input?.centresMm, {
    min: -20_000,
    max: 20_000,
    minItems: 1,
    maxItems: 20_000,
  });
  const tape = 'denominator' in input ? { denominator: input.denominator } : { stepMm: input.stepMm };
  const format =
    'denominator' in tape
      ? ({ unit: 'in', denominator: tape.denominator } as const)
      : ({ unit: 'mm', decimals: decimalsOf(tape.stepMm) } as const);
  const marks = input.centresMm.map((centreMm): CentreMark => {
    const { markMm, offsetMm } = nearestMark({ lengthMm: centreMm, ...tape });
    return {
      centreMm: plusZero(centreMm),
      markMm,
      text: formatLength(markMm, format),
      errorMm: plusZero(-offsetMm),
    };
  });
  const errorsMm = marks.map(({ errorMm }) => Math.abs(errorMm));
  const worstErrorMm = errorsMm.reduce((worst, errorMm) => Math.max(worst, errorMm));
  return {
    marks,
    worstIndex: errorsMm.indexOf(worstErrorMm),
    worstErrorMm,
    onMarkCount: errorsMm.filter((errorMm) => errorMm === 0).length,
  };
}
