import { requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { oilDust, woodDust } from './cautions.ts';
import { type FoundGrit, type GritList, gritNamed, gritTables } from './grits.ts';

/** When to wipe the wood with a damp cloth and let it dry: it shows scratches and raises the grain. */
export type DampWipe = 'never' | 'beforeLastGrade' | 'betweenGrades';

export interface SandingSequenceInput {
  /** The coarsest grade, that takes out what is there: planer marks, glue. As `findGrit` reads it. */
  readonly from: string;
  /** The grade to end with. */
  readonly to: string;
  /** Grades to choose from besides these two, in any order and of any lists. */
  readonly onHand: readonly string[];
  /** How many times the size of one grade's grains may be that of the next, 1.05 to 10; 1.5 to 2 is usual. */
  readonly largestSizeRatio: number;
  readonly dampWipe: DampWipe;
}

/** One grade to sand with. */
export interface SandingPass {
  readonly grade: string;
  /** Median size of its grains, µm. */
  readonly medianUm: number;
  /** How many times as large the grains of the pass before are; `null` for the first. */
  readonly sizeRatio: number | null;
  /**
   * An estimate of the scratches it leaves, % of those of the first pass: in proportion to grain size, which was measured
   * from P60 to P150 only. Finer grades leave more than this, because the wood has pores of its own.
   */
  readonly scratchesPct: number;
  /** Wipe the wood with a damp cloth and let it dry before this pass. */
  readonly wipeBefore: boolean;
}

/** Two grades next to each other among those on hand that are too far apart. */
export interface SandingGap {
  readonly fromGrade: string;
  readonly toGrade: string;
  readonly sizeRatio: number;
  /** Grades that close it, as few as the list of the coarser one has them; `null` where the list cannot. */
  readonly buy: readonly string[] | null;
}

export interface SandingSequence {
  /** Coarse to fine, as few as can be; `null` where a gap is too wide. */
  readonly passes: readonly SandingPass[] | null;
  /** What stands in the way; none where there is a sequence. */
  readonly gaps: readonly SandingGap[];
  readonly cautions: readonly string[];
}

const limits = { largestSizeRatio: { min: 1.05, max: 10 } } as const;

const named = (caller: string, path: string, grade: string): FoundGrit => {
  const found = gritNamed(caller, path, grade);
  requireThat(caller, found !== null, `${path} to be a grade of its list, got "${`${grade}`.slice(0, 40)}"`);
  return found as FoundGrit;
};

const reaches = (from: FoundGrit, to: FoundGrit, ratio: number) =>
  from.medianUm / to.medianUm <= ratio * (1 + 1e-9);

/**
 * From the first of a list that gets finer to its last in as few steps as can be: from each the finest that the ratio
 * allows. Whoever steps less far has the same grades before them, and further to go.
 */
function fewest(sorted: readonly FoundGrit[], ratio: number): FoundGrit[] | null {
  const chain = sorted.slice(0, 1);
  while (chain.at(-1) !== sorted.at(-1)) {
    const at = chain.at(-1) as FoundGrit;
    const next = sorted.findLast((one) => one.medianUm < at.medianUm && reaches(at, one, ratio));
    if (!next) return null;
    chain.push(next);
  }
  return chain;
}

/** Coarse to fine, between two grades, each size once. */
function between(from: FoundGrit, to: FoundGrit, others: readonly FoundGrit[]): FoundGrit[] {
  const inside = others
    .filter(({ medianUm }) => medianUm < from.medianUm && medianUm > to.medianUm)
    .sort((a, b) => b.medianUm - a.medianUm)
    .filter((one, i, all) => one.medianUm !== all[i - 1]?.medianUm);
  return from.medianUm === to.medianUm ? [from] : [from, ...inside, to];
}

const ofList = (list: GritList): FoundGrit[] =>
  gritTables[list].rows.map((row) => gritNamed('sandingSequence', 'onHand', row.grade) as FoundGrit);

function gapsIn(sorted: readonly FoundGrit[], ratio: number): SandingGap[] {
  return sorted.slice(1).flatMap((to, i) => {
    const from = sorted[i] as FoundGrit;
    if (reaches(from, to, ratio)) return [];
    const grades = ofList(from.list === 'micron' ? 'FEPA P' : from.list);
    const closed = fewest(between(from, to, grades), ratio);
    return [
      {
        fromGrade: from.grade,
        toGrade: to.grade,
        sizeRatio: from.medianUm / to.medianUm,
        buy: closed?.slice(1, -1).map(({ grade }) => grade) ?? null,
      },
    ];
  });
}

function passesOf(chain: readonly FoundGrit[], dampWipe: DampWipe): SandingPass[] {
  return chain.map(({ grade, medianUm }, i) => {
    const before = chain[i - 1];
    return {
      grade,
      medianUm,
      sizeRatio: before ? before.medianUm / medianUm : null,
      scratchesPct: (100 * medianUm) / (chain[0]?.medianUm ?? medianUm),
      wipeBefore:
        i > 0 && (dampWipe === 'betweenGrades' || (dampWipe === 'beforeLastGrade' && i === chain.length - 1)),
    };
  });
}

/**
 * The grades to sand with, from the coarsest to the last, as few as can be with no step too large. Where the grades on
 * hand leave too wide a gap it names each gap, and what to buy for it. A wipe with a damp cloth, common practice,
 * shows scratches that are left and raises fibres that the next pass takes off; the wood must be dry again before it.
 *
 * @returns The passes, or the gaps.
 * @throws RangeError where a name is no grade or does not say its list, the last grade is coarser than the first, or
 * the ratio is outside its limits.
 * @example
 * ```ts
 * import { sandingSequence } from '@scantling/finishing';
 * const top = { from: 'P80', to: 'P220', largestSizeRatio: 1.7, dampWipe: 'beforeLastGrade' };
 * const { passes } = sandingSequence({ ...top, onHand: ['P100', 'P120', 'P150', 'P180'] });
 * passes.map(({ grade }) => grade) // => ['P80', 'P120', 'P180', 'P220']
 * passes.map(({ wipeBefore }) => wipeBefore) // => [false, false, false, true]
 * passes.at(-1).scratchesPct // => 33.83
 * sandingSequence({ ...top, onHand: ['P180'] }).gaps // => [{ fromGrade: 'P80', toGrade: 'P180', sizeRatio: 2.451, buy: ['P120'] }]
 * ```
 */
export function sandingSequence(input: SandingSequenceInput): SandingSequence {
  const caller = 'sandingSequence';
  requireInputs(caller, input, limits);
  const { largestSizeRatio, dampWipe } = input;
  requireChoice(caller, 'dampWipe', dampWipe, ['never', 'beforeLastGrade', 'betweenGrades']);
  const from = named(caller, 'from', input.from);
  const to = named(caller, 'to', input.to);
  requireThat(
    caller,
    from.medianUm >= to.medianUm,
    `to no coarser than from, got ${to.grade} (${to.medianUm} µm) after ${from.grade} (${from.medianUm} µm)`,
  );
  requireThat(caller, Array.isArray(input.onHand), `onHand to be a list, got ${typeof input.onHand}`);
  const sorted = between(
    from,
    to,
    input.onHand.map((grade, i) => named(caller, `onHand[${i}]`, grade)),
  );
  const chain = fewest(sorted, largestSizeRatio);
  return {
    passes: chain ? passesOf(chain, dampWipe) : null,
    gaps: gapsIn(sorted, largestSizeRatio),
    cautions: [woodDust, oilDust],
  };
}

export interface SandingCheckInput {
  /** The grades in the order they are to be used. */
  readonly grades: readonly string[];
  /** More grades that could be used instead, in any order. */
  readonly onHand: readonly string[];
  /** How many times the size of one grade's grains may be that of the next, 1.05 to 10. */
  readonly largestSizeRatio: number;
}

/** A step that is too large. */
export interface LargeStep {
  readonly fromGrade: string;
  readonly toGrade: string;
  readonly sizeRatio: number;
  /** The fewest of the grades on hand that make it a walk of allowed steps; `null` where they cannot. */
  readonly missedCount: number | null;
}

export interface SandingCheck {
  readonly passCount: number;
  /** The fewest passes between the same two grades with no step too large; `null` where there is no such sequence. */
  readonly leastPassCount: number | null;
  /** Passes that could be saved between the steps that are too large, with no step made too large. */
  readonly savedCount: number;
  /** Grades that the steps that are too large need; `null` where those on hand cannot mend one of them. */
  readonly missedCount: number | null;
  /** The steps that are too large, each with the grades that it needs. */
  readonly largeSteps: readonly LargeStep[];
  readonly cautions: readonly string[];
}

/** The given grades cut at every step that is too large: within each piece no step is. */
function runsOf(given: readonly FoundGrit[], ratio: number): FoundGrit[][] {
  const runs: FoundGrit[][] = [];
  for (const grit of given) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && reaches(last, grit, ratio)) run.push(grit);
    else runs.push([grit]);
  }
  return runs;
}

/**
 * A sequence of grades by two counts that do not cancel each other: passes that could be saved where its steps are
 * small, and grades that it misses where a step is too large.
 *
 * @returns The counts, and the large steps.
 * @throws RangeError where a name is no grade or does not say its list, a grade is not finer than the one before, or
 * the ratio is outside its limits.
 * @example
 * ```ts
 * import { checkSandingSequence } from '@scantling/finishing';
 * const onHand = ['P100', 'P150', 'P180'];
 * checkSandingSequence({ grades: ['P80', 'P100', 'P120', 'P150', 'P180', 'P220'], onHand, largestSizeRatio: 1.7 }).savedCount // => 2
 * const uneven = checkSandingSequence({ grades: ['P80', 'P100', 'P120', 'P240'], onHand, largestSizeRatio: 1.7 });
 * [uneven.savedCount, uneven.missedCount] // => [1, 1]
 * uneven.largeSteps // => [{ fromGrade: 'P120', toGrade: 'P240', sizeRatio: 2.137, missedCount: 1 }]
 * checkSandingSequence({ grades: ['P80', 'P220'], onHand: [], largestSizeRatio: 1.7 }).missedCount // => null
 * ```
 */
export function checkSandingSequence(input: SandingCheckInput): SandingCheck {
  const caller = 'checkSandingSequence';
  requireInputs(caller, input, limits);
  const { grades, onHand, largestSizeRatio } = input;
  requireThat(
    caller,
    Array.isArray(grades) && grades.length > 0,
    `grades to be a list of at least one grade, got ${Array.isArray(grades) ? 'none' : typeof grades}`,
  );
  requireThat(caller, Array.isArray(onHand), `onHand to be a list, got ${typeof onHand}`);
  const given = grades.map((grade, i) => named(caller, `grades[${i}]`, grade));
  given.slice(1).forEach((to, i) => {
    const from = given[i] as FoundGrit;
    requireThat(
      caller,
      from.medianUm > to.medianUm,
      `grades[${i + 1}] finer than the one before, got ${to.grade} (${to.medianUm} µm) after ${from.grade} (${from.medianUm} µm)`,
    );
  });
  const all = [...given, ...onHand.map((grade, i) => named(caller, `onHand[${i}]`, grade))];
  /** Passes of the shortest walk between two grades. */
  const least = (from: FoundGrit, to: FoundGrit) =>
    fewest(between(from, to, all), largestSizeRatio)?.length ?? null;
  const runs = runsOf(given, largestSizeRatio).map((run) => ({
    first: run[0] as FoundGrit,
    last: run.at(-1) as FoundGrit,
    passes: run.length,
  }));
  const largeSteps = runs.slice(1).map(({ first: to }, i) => {
    const from = (runs[i] as (typeof runs)[number]).last;
    const passes = least(from, to);
    return {
      fromGrade: from.grade,
      toGrade: to.grade,
      sizeRatio: from.medianUm / to.medianUm,
      missedCount: passes && passes - 2,
    };
  });
  return {
    passCount: given.length,
    leastPassCount: least(given[0] as FoundGrit, given.at(-1) as FoundGrit),
    savedCount: runs.reduce(
      (sum, { first, last, passes }) => sum + passes - (least(first, last) as number),
      0,
    ),
    missedCount: largeSteps.reduce<number | null>(
      (sum, { missedCount }) => (sum === null || missedCount === null ? null : sum + missedCount),
      0,
    ),
    largeSteps,
    cautions: [woodDust, oilDust],
  };
}
