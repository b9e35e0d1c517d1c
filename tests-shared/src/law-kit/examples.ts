import { type AnyRule, checkRange, type Expected, expectedValue } from '@scantling/rules';
import { workingProblems } from './hand-working.ts';
import type { Problems } from './problem.ts';

/** A looser agreement than this says nothing about a factor. */
const LOOSEST_SHARE = 0.02;

type AnyExample = AnyRule['examples'][number];

/** One published figure beside ours. */
export interface Comparison {
  readonly output: string;
  /** What the rule gives: a number, or anything else where it gives none. */
  readonly ours: unknown;
  readonly published: number;
  readonly tolerance: number;
}

/** Every figure that an example states, beside what the rule computes. */
export function compareExample(rule: AnyRule, { given, expect, within }: AnyExample): Comparison[] {
  const result = rule.compute(structuredClone(given));
  return Object.entries(expect).flatMap(([output, stated]) => {
    const figures = [stated].flat();
    const values: unknown[] = [result[output]].flat();
    // Every item of a list is compared, those that only one side has as well.
    return Array.from({ length: Math.max(figures.length, values.length) }, (_, i) => {
      const figure = figures[i] as Expected | undefined;
      const { value, tolerance } =
        figure === undefined ? { value: Number.NaN, tolerance: 0 } : expectedValue(figure);
      return { output, ours: values[i], published: value, tolerance: within?.value ?? tolerance };
    });
  });
}

const off = ({ ours, published }: Comparison) =>
  typeof ours === 'number' ? Math.abs(ours - published) : Number.NaN;

const reproduced = (one: Comparison) => off(one) <= one.tolerance + 1e-12 * Math.abs(one.published);

/** What a check of each example finds, with the example's number; a figure that cannot be read is a finding. */
const eachExample = (rule: AnyRule, check: (example: AnyExample) => Problems): Problems =>
  rule.examples.flatMap((example, i) => {
    try {
      return check(example).map((problem) => `example ${i + 1}: ${problem}`);
    } catch (error) {
      return [`example ${i + 1}: ${(error as Error).message}`];
    }
  });

/** Published examples are reproduced to half of their last digit, or to what a sentence argues for. */
export const exampleProblems = (rule: AnyRule): Problems =>
  eachExample(rule, (example) => {
    const compared = compareExample(rule, example);
    if (compared.length === 0) return ['states no figure'];
    return compared
      .filter((one) => !reproduced(one))
      .map(({ output, ours, published, tolerance }) =>
        Number.isNaN(published)
          ? `${output} has a different number of items`
          : `${output} is ${String(ours)}, published ${published} ± ${tolerance}`,
      );
  });

/** A wider tolerance is argued for, needed, and every output is pinned closely by some example. */
export function toleranceProblems(rule: AnyRule): Problems {
  const pinned = new Set<string>();
  const problems = eachExample(rule, (example) => {
    const compared = compareExample(rule, example);
    for (const { output, published, tolerance } of compared) {
      if (published !== 0 && tolerance <= LOOSEST_SHARE * Math.abs(published)) pinned.add(output);
    }
    const { within } = example;
    if (!within) return [];
    const worst = Math.max(...compared.map(off));
    return [
      ...(/^\w.{20,}\.$/s.test(within.because) ? [] : ['no sentence says why']),
      ...(within.value <= 3 * worst
        ? []
        : [`± ${within.value} is looser than the deviation of ${worst} needs`]),
    ];
  });
  const loose = Object.keys(rule.outputs).filter((output) => !pinned.has(output));
  return [
    ...problems,
    ...loose.map((output) => `no example pins ${output} to within ${100 * LOOSEST_SHARE} %`),
  ];
}

/** Examples lie inside the range that the source claims. */
export const exampleRangeProblems = (rule: AnyRule): Problems =>
  eachExample(rule, ({ given }) => checkRange(rule, given).map(({ message }) => message));

const printed = (figure: Expected) => (typeof figure === 'string' ? figure : figure.printed);

/** An example worked by hand shows arithmetic that comes out, and its figures stand in it. */
export const handWorkingProblems = (rule: AnyRule): Problems =>
  eachExample(rule, ({ from, expect }) => {
    if (!('workedByHand' in from)) return [];
    const figures = (Object.values(expect) as (Expected | readonly Expected[])[]).flat().map(printed);
    return workingProblems(from.workedByHand, figures);
  });
