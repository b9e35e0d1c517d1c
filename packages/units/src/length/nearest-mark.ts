import { requireInputs } from '@scantling/rules';
import {
  type Denominator,
  INCH_NM,
  lengthLimits,
  NM_PER_MM,
  nanometres,
  requireDenominator,
  toTicks,
} from './ticks.ts';

/** A length, and the tape it is to be found on: inches with a denominator, or metric with a step. */
export type NearestMarkInput = {
  /** The true length, mm, −1e9 to 1e9, taken to the nearest nanometre. */
  readonly lengthMm: number;
} & (
  | {
      /** Marks to the inch: 2, 4, 8, 16, 32 or 64. */
      readonly denominator: Denominator;
    }
  | {
      /** Distance between marks, mm, 0.001 to 1000, taken to the nearest nanometre. */
      readonly stepMm: number;
    }
);

/** A mark on a tape, and what it leaves over. */
export interface NearestMark {
  /** Which mark, counted from 0 at the end of the tape. */
  readonly ticks: number;
  /** Where that mark is, mm. */
  readonly markMm: number;
  /** True length less mark, mm: positive where the true length lies beyond the mark. At most half a step. */
  readonly offsetMm: number;
}

/**
 * The mark on a tape that is nearest to a length, and how far off the true length is. A length halfway between two
 * marks takes the one farther from zero.
 *
 * @throws RangeError where an input is outside its limits.
 * Source: common practice, no source.
 * @example
 * ```ts
 * import { nearestMark } from '@scantling/units';
 * nearestMark({ lengthMm: 100, denominator: 16 }) // => { ticks: 63, markMm: 100.0125, offsetMm: -0.0125 }
 * nearestMark({ lengthMm: 479.425, stepMm: 0.5 }) // => { ticks: 959, markMm: 479.5, offsetMm: -0.075 }
 * ```
 */
export function nearestMark(input: NearestMarkInput): NearestMark {
  requireInputs('nearestMark', { lengthMm: input?.lengthMm }, { lengthMm: lengthLimits });
  const tickNm = 'denominator' in input ? inchTick(input.denominator) : metricTick(input.stepMm);
  const ticks = toTicks(input.lengthMm, tickNm);
  const markNm = ticks * tickNm;
  const offsetNm = nanometres(input.lengthMm) - markNm;
  return { ticks, markMm: markNm / NM_PER_MM, offsetMm: offsetNm / NM_PER_MM + 0 };
}

function inchTick(denominator: number): number {
  requireDenominator('nearestMark', denominator);
  return INCH_NM / denominator;
}

function metricTick(stepMm: number): number {
  requireInputs('nearestMark', { stepMm }, { stepMm: { min: 0.001, max: 1000 } });
  return nanometres(stepMm);
}
