import { requireInputs, requireThat } from '@scantling/rules';
import { nearestMark } from '@scantling/units';
import { compatible, markedJar } from './cautions.ts';
import { jarHeight } from './rules/jar-height.ts';
import { mixByParts } from './rules/mix-by-parts.ts';

/** A jar, a batch, and the ruler that it is marked with. */
export type JarMarksInput = {
  /** By volume, one figure for each liquid in the order of pouring, 0.01 to 1000. */
  readonly parts: readonly number[];
  /** Volume of the whole mix, mL, 0 to 1 000 000. */
  readonly batchMl: number;
  /** Inner diameter of the jar, mm, 5 to 2000. */
  readonly innerDiameterMm: number;
} & (
  | {
      /** Marks to the inch: 2, 4, 8, 16, 32 or 64. */
      readonly denominator: 2 | 4 | 8 | 16 | 32 | 64;
    }
  | {
      /** Distance between marks, mm, 0.001 to 1000. */
      readonly stepMm: number;
    }
);

/** Where to stop pouring one of the liquids. */
export interface JarMark {
  /** True height above the flat bottom, mm. */
  readonly heightMm: number;
  /** The nearest mark of the ruler, mm. */
  readonly markMm: number;
  /** The same mark counted in steps from the bottom. */
  readonly ticks: number;
  /** What is poured of this liquid from mark to mark, mL. */
  readonly volumeMl: number;
}

export interface JarMarks {
  /** From the bottom up, one for each liquid. */
  readonly marks: readonly JarMark[];
  /** Height of one part, mm. */
  readonly partMm: number;
  /** The farthest that a liquid's share of the mix is off what its parts say, for the rounding of marks, % of the mix. */
  readonly offByPct: number;
  readonly cautions: readonly string[];
}

/**
 * Marks on a straight-sided jar to pour a mix to, each liquid on top of the last, and what rounding to the marks of a
 * ruler does to the mix. Heights are rounded from the bottom, so that errors do not add up.
 *
 * @throws RangeError where an input is outside its limits, or the batch does not come up to the first mark of the ruler.
 * Source: the volume of a cylinder; marking a jar is common practice, no source.
 * @example
 * ```ts
 * import { jarMarks } from '@scantling/finishing';
 * const { marks, partMm } = jarMarks({ parts: [2, 1], batchMl: 600, innerDiameterMm: 90, stepMm: 1 });
 * partMm // => 31.438
 * marks.map(({ heightMm, markMm }) => [heightMm, markMm]) // => [[62.876, 63], [94.314, 94]]
 * ```
 */
export function jarMarks(input: JarMarksInput): JarMarks {
  const { parts, batchMl, innerDiameterMm } = input ?? {};
  requireInputs('jarMarks', { innerDiameterMm }, { innerDiameterMm: { min: 5, max: 2000 } });
  const { partMl, volumesMl } = mixByParts({ parts, batchMl });
  const mmPerMl = jarHeight({ volumeMl: 1, innerDiameterMm }).heightMm;
  const marks: JarMark[] = [];
  let pouredMl = 0;
  let belowMm = 0;
  for (const volumeMl of volumesMl) {
    pouredMl += volumeMl;
    const heightMm = pouredMl * mmPerMl;
    const scale = 'denominator' in input ? { denominator: input.denominator } : { stepMm: input.stepMm };
    const { markMm, ticks } = nearestMark({ lengthMm: heightMm, ...scale });
    marks.push({ heightMm, markMm, ticks, volumeMl: (markMm - belowMm) / mmPerMl });
    belowMm = markMm;
  }
  requireThat('jarMarks', belowMm > 0, `batchMl high enough for a mark above the bottom, got ${batchMl}`);
  const shares = marks.map(({ volumeMl }, i) =>
    Math.abs((volumeMl * mmPerMl) / belowMm - (volumesMl[i] as number) / batchMl),
  );
  return {
    marks,
    partMm: partMl * mmPerMl,
    offByPct: 100 * Math.max(...shares),
    cautions: [markedJar, compatible],
  };
}
