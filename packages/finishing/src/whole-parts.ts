import { requireInputs, requireList, requireThat } from '@scantling/rules';
import { inSteps, lowestTerms } from './whole-numbers.ts';

const limits = {
  volumesMl: { min: 0.01, max: 1_000_000, minItems: 1, maxItems: 12 },
  withinPct: { min: 0, max: 10 },
} as const;

export interface WholePartsInput {
  /** Volume of each liquid, mL, 0.01 to 1 000 000. */
  readonly volumesMl: readonly number[];
  /** How far a volume may be off what its parts say, %: 0 for exact, or 0.01 to 10. */
  readonly withinPct: number;
}

export interface WholeParts {
  /** Whole numbers, as small as they can be. */
  readonly parts: readonly number[];
  /** The farthest that a volume is off what its parts say, beside the smallest of the volumes, %. */
  readonly offByPct: number;
}

/** The exact ratio, where no volume has more than six decimals. */
function exactly(volumesMl: readonly number[]): WholeParts {
  const millionths = volumesMl.map((volume) => inSteps(volume, 6));
  const coarse = millionths.indexOf(null);
  requireThat(
    'wholeParts',
    coarse < 0,
    `volumesMl[${coarse}] of at most six decimals where withinPct is 0, got ${volumesMl[coarse]}`,
  );
  return { parts: lowestTerms(millionths as number[]), offByPct: 0 };
}

/**
 * Parts from volumes: the smallest whole numbers that say what was mixed, exactly or to within so much. The smallest of
 * the volumes is taken as it is and the others are counted in parts of it.
 *
 * @throws RangeError where an input is outside its limits, or a volume has more than six decimals and is to be exact.
 * Source: arithmetic; mixing by parts is common practice, no source.
 * @example
 * ```ts
 * import { wholeParts } from '@scantling/finishing';
 * wholeParts({ volumesMl: [450, 300, 150], withinPct: 0 }) // => { parts: [3, 2, 1], offByPct: 0 }
 * // A pint of varnish and a cup of oil, as read off a metric jar: exactly 475 to 235, which is nearly two to one
 * wholeParts({ volumesMl: [475, 235], withinPct: 2 }) // => { parts: [2, 1], offByPct: 1.0638 }
 * ```
 */
export function wholeParts(input: WholePartsInput): WholeParts {
  requireList('wholeParts', 'volumesMl', input?.volumesMl, limits.volumesMl);
  requireInputs('wholeParts', input, { withinPct: limits.withinPct });
  const { volumesMl, withinPct } = input;
  requireThat(
    'wholeParts',
    withinPct === 0 || withinPct >= 0.01,
    `withinPct to be 0 or at least 0.01, got ${withinPct}`,
  );
  if (withinPct === 0) return exactly(volumesMl);
  const smallest = Math.min(...volumesMl);
  // Rounding is off by half a part at most, so the search ends once half a part is within the allowance.
  for (let ofSmallest = 1; ; ofSmallest++) {
    const wanted = volumesMl.map((volume) => (volume / smallest) * ofSmallest);
    const parts = wanted.map(Math.round);
    const offByPct = Math.max(...wanted.map((exact, i) => 100 * Math.abs(exact / (parts[i] as number) - 1)));
    if (offByPct <= withinPct) return { parts, offByPct };
  }
}
