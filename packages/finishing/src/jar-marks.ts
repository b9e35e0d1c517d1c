import { requireInputs, requireList, requireThat } from '@scantling/rules';
import { nearestMark } from '@scantling/units';
import { compatible, markedJar } from './cautions.ts';
import { batchLimits, partsLimits } from './mixing.ts';
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
      readonly stepMm?: undefined;
    }
  | {
      /** Distance between marks, mm, 0.001 to 1000. */
      readonly stepMm: number;
      readonly denominator?: undefined;
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

function requireJar(input: JarMarksInput): void {
  const { parts, batchMl, innerDiameterMm, denominator, stepMm } = input ?? {};
  requireInputs(
    'jarMarks',
    { batchMl, innerDiameterMm },
    { batchMl: batchLimits, innerDiameterMm: { min: 5, max: 2000 } },
  );
  requireList('jarMarks', 'parts', parts, partsLimits);
  requireThat(
    'jarMarks',
    denominator === undefined || stepMm === undefined,
    `denominator or stepMm, got ${denominator} and ${stepMm}`,
  );
  if (denominator === undefined) {
    requireInputs('jarMarks', { stepMm }, { stepMm: { min: 0.001, max: 1000 } });
  } else {
    requireThat(
      'jarMarks',
      [2, 4, 8, 16, 32, 64].includes(denominator),
      `denominator to be one of 2, 4, 8, 16, 32, 64, got ${denominator}`,
    );
  }
}

/**
 * Marks on a straight-sided jar to pour a mix to, each liquid on top of the last, and what rounding to the marks of a
 * ruler does to the mix. Heights are rounded from the bottom, so that errors do not add up.
 *
 * @throws RangeError where an input is outside its limits, both rulers are given, or two liquids would share a mark of the
 * ruler, so that one of them would be left out.
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
  requireJar(input);
  const { parts, batchMl, innerDiameterMm } = input;
  const { partMl, volumesMl } = mixByParts({ parts, batchMl });
  const mmPerMl = jarHeight({ volumeMl: 1, innerDiameterMm }).heightMm;
  const marks: JarMark[] = [];
  let pouredMl = 0;
  let belowMm = 0;
  for (const [i, volumeMl] of volumesMl.entries()) {
    pouredMl += volumeMl;
    const heightMm = pouredMl * mmPerMl;
    const { markMm, ticks } =
      input.denominator === undefined
        ? nearestMark({ lengthMm: heightMm, stepMm: input.stepMm })
        : nearestMark({ lengthMm: heightMm, denominator: input.denominator });
    requireThat(
      'jarMarks',
      markMm > belowMm,
      `a finer ruler or a larger batchMl to mark parts[${i}], got ${markMm} mm again`,
    );
    marks.push({ heightMm, markMm, ticks, volumeMl: (markMm - belowMm) / mmPerMl });
    belowMm = markMm;
  }
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
