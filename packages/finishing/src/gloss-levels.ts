import { type Citation, requireInputs, rowCitation } from '@scantling/rules';
import {
  glossAndSheenStandardLevels,
  glossAndSheenStandardLevelsProvenance,
} from './data/gloss-and-sheen-standard--levels.generated.ts';
import type { GlossLevelRow } from './rows.ts';

const gloss = { min: 0, max: 200 } as const;

export interface GlossLevelsInput {
  /** What a gloss meter reads at 60°, gloss units, 0 to 200; black glass reads 100. */
  readonly at60Gu: number;
  /** What it reads at 85°, along the surface, gloss units, 0 to 200. */
  readonly at85Gu: number;
}

/** A level of gloss that a reading belongs to. */
export interface GlossLevel {
  /** Its number in the standard. */
  readonly level: string;
  /** What it is like. */
  readonly likeness: string;
  readonly citation: Citation;
}

const within = (value: number, least: number | null, most: number | null) =>
  value >= (least ?? 0) && value <= (most ?? gloss.max);

const belongs = (row: GlossLevelRow, { at60Gu, at85Gu }: GlossLevelsInput) =>
  within(at60Gu, row.leastAt60Gu, row.mostAt60Gu) &&
  within(at85Gu, row.leastAt85Gu, row.mostAt85Gu) &&
  // The glossiest level is what reads more than its figure.
  !(row.mostAt60Gu === null && at60Gu === row.leastAt60Gu);

/**
 * Levels of gloss that readings of a gloss meter belong to: what satin or semi-gloss means in figures. Ranges overlap,
 * and some readings belong to none.
 *
 * @returns The levels, the dullest first; none where the two readings fit no level together.
 * @throws RangeError where a reading is outside its limits.
 * Source: gloss and sheen standard of the Master Painters Institute, made for paints.
 * @example
 * ```ts
 * import { glossLevels } from '@scantling/finishing';
 * glossLevels({ at60Gu: 30, at85Gu: 50 }).map(({ level, likeness }) => `${level}, ${likeness}`) // => ['4, a satin-like finish']
 * glossLevels({ at60Gu: 15, at85Gu: 60 }) // => []
 * ```
 */
export function glossLevels(input: GlossLevelsInput): GlossLevel[] {
  requireInputs('glossLevels', input, { at60Gu: gloss, at85Gu: gloss });
  return glossAndSheenStandardLevels
    .filter((row) => belongs(row, input))
    .map((row) => ({
      level: row.level,
      likeness: row.likeness,
      citation: rowCitation(glossAndSheenStandardLevelsProvenance, row, row.level),
    }));
}
