import { requireInputs, requireList, requireThat } from '@scantling/rules';
import { compatible, oilyRags, productSheet, solvents } from './cautions.ts';
import { batchLimits } from './mixing.ts';
import { inSteps, lowestTerms } from './whole-numbers.ts';

const percent = { min: 0, max: 100 } as const;

export interface BlendLiquidsInput {
  /** The liquids, 1 to 8: of each what it holds of every substance that counts, % by volume, two decimals at most. */
  readonly contentsPct: readonly (readonly number[])[];
  /** What the mix is to hold of each of these, 1 to 3 substances, %, two decimals at most. */
  readonly targetPct: readonly number[];
  /** Volume of the whole mix, mL, 0 to 1 000 000. */
  readonly batchMl: number;
}

/** A mix that hits the target with as few liquids as any: a corner of all that do. */
export interface CornerMix {
  /** Whole numbers in lowest terms, one for each liquid, 0 for one that stays in its can. */
  readonly parts: readonly number[];
  /** mL of each liquid. */
  readonly volumesMl: readonly number[];
}

export interface BlendLiquids {
  /**
   * Every mix that hits the target is some blend of these, and every blend of these hits it. One corner: there is one
   * way. None: these liquids cannot make it.
   */
  readonly corners: readonly CornerMix[];
  /** The least of each liquid in any mix that hits the target, mL; empty where none does. */
  readonly leastMl: readonly number[];
  /** The most of each liquid, mL; empty where none does. */
  readonly mostMl: readonly number[];
  readonly cautions: readonly string[];
}

/** Determinant by its first row: of whole numbers exact, as long as they are small. */
function determinant(matrix: readonly (readonly number[])[]): number {
  const [first, ...rest] = matrix;
  if (!first) return 1;
  return first.reduce((sum, value, column) => {
    const minor = rest.map((row) => row.filter((_, i) => i !== column));
    return value === 0 ? sum : sum + (column % 2 === 0 ? value : -value) * determinant(minor);
  }, 0);
}

/** Every choice of so many out of a list. */
function choices<T>(items: readonly T[], count: number): T[][] {
  if (count === 0) return [[]];
  return items.flatMap((item, i) => choices(items.slice(i + 1), count - 1).map((rest) => [item, ...rest]));
}

/** Hundredths of a percent, whole. */
function hundredths(path: string, values: readonly number[]): number[] {
  return values.map((value, i) => {
    const steps = inSteps(value, 2);
    requireThat('blendLiquids', steps !== null, `${path}[${i}] of at most two decimals, got ${value}`);
    return steps as number;
  });
}

/**
 * Parts of the chosen liquids, by Cramer's rule on whole numbers below 24 × 10¹², so exact; `null` where they cannot
 * make the target with parts above nought, or not in one way only.
 */
function solve(chosen: readonly (readonly number[])[], target: readonly number[]): number[] | null {
  // One equation says that shares add up to 1, one for each substance that it is there as wanted.
  const equations = [
    chosen.map(() => 1),
    ...target.map((_, row) => chosen.map((liquid) => liquid[row] as number)),
  ];
  const wanted = [1, ...target];
  for (const rows of choices([...equations.keys()], chosen.length)) {
    const square = rows.map((row) => equations[row] as number[]);
    const whole = determinant(square);
    if (whole === 0) continue;
    const parts = chosen.map((_, column) =>
      determinant(
        square.map((row, i) =>
          row.map((value, j) => (j === column ? (wanted[rows[i] as number] as number) : value)),
        ),
      ),
    );
    const positive = parts.every((part) => part * whole > 0);
    const holds = equations.every((row, i) => {
      const sum = row.reduce((total, value, j) => total + BigInt(value) * BigInt(parts[j] as number), 0n);
      return sum === BigInt(whole) * BigInt(wanted[i] as number);
    });
    return positive && holds ? lowestTerms(parts.map(Math.abs)) : null;
  }
  return null;
}

/**
 * Several liquids blended to a target: all the ways there are. The conditions are linear, so the ways are the blends of
 * a few corner mixes, found with exact whole numbers. With two liquids and one substance this is alligation.
 *
 * @throws RangeError where an input is outside its limits, has more than two decimals, or lists differ in length.
 * Source: linear equations; with three strengths as taught in pharmacy arithmetic.
 * @example
 * ```ts
 * import { blendLiquids } from '@scantling/finishing';
 * // Solids of 60, 50 and 0 %, for 30 %
 * const { corners, mostMl } = blendLiquids({ contentsPct: [[60], [50], [0]], targetPct: [30], batchMl: 500 });
 * corners.map(({ parts }) => parts) // => [[1, 0, 1], [0, 3, 2]]
 * mostMl // => [250, 300, 250]
 * blendLiquids({ contentsPct: [[60], [50]], targetPct: [30], batchMl: 500 }).corners // => []
 * ```
 */
export function blendLiquids(input: BlendLiquidsInput): BlendLiquids {
  requireInputs('blendLiquids', input, { batchMl: batchLimits });
  const { contentsPct, targetPct, batchMl } = input;
  requireList('blendLiquids', 'targetPct', targetPct, { ...percent, minItems: 1, maxItems: 3 });
  requireThat(
    'blendLiquids',
    Array.isArray(contentsPct) && contentsPct.length >= 1 && contentsPct.length <= 8,
    `contentsPct to be a list of 1 to 8 liquids, got ${contentsPct?.length}`,
  );
  const liquids = contentsPct.map((contents, i) => {
    const each = { ...percent, minItems: targetPct.length, maxItems: targetPct.length };
    requireList('blendLiquids', `contentsPct[${i}]`, contents, each);
    return hundredths(`contentsPct[${i}]`, contents);
  });
  const target = hundredths('targetPct', targetPct);
  const corners: CornerMix[] = [];
  for (let count = 1; count <= Math.min(liquids.length, target.length + 1); count++) {
    for (const chosen of choices([...liquids.keys()], count)) {
      const solved = solve(
        chosen.map((i) => liquids[i] as number[]),
        target,
      );
      if (!solved) continue;
      const parts = liquids.map((_, i) => (chosen.includes(i) ? (solved[chosen.indexOf(i)] as number) : 0));
      const total = parts.reduce((sum, part) => sum + part);
      corners.push({ parts, volumesMl: parts.map((part) => (batchMl * part) / total + 0) });
    }
  }
  const over = (pick: (...values: number[]) => number) =>
    corners.length === 0
      ? []
      : liquids.map((_, i) => pick(...corners.map(({ volumesMl }) => volumesMl[i] as number)));
  return {
    corners,
    leastMl: over(Math.min),
    mostMl: over(Math.max),
    cautions: [compatible, oilyRags, solvents, productSheet],
  };
}
