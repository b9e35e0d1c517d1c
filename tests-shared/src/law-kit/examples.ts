import { type AnyRule, checkRange, type Expected, expectedValue } from '@scantling/rules';
import type { Problems } from './problem.ts';

/** A looser agreement than this says nothing about a factor. */
const LOOSEST_SHARE = 0.02;

type AnyExample = AnyRule['examples'][number];

/** One published figure beside ours. */
export interface Comparison {
  readonly output: string;
  readonly ours: number;
  readonly published: number;
  readonly tolerance: number;
}

/** Every figure that an example states, beside what the rule computes. */
export function compareExample(rule: AnyRule, { given, expect, within }: AnyExample): Comparison[] {
  const result = rule.compute(given);
  return Object.entries(expect).flatMap(([output, stated]) =>
    [stated].flat().map((figure, i) => {
      const { value, tolerance } = expectedValue(figure as Expected);
      const ours = [result[output]].flat()[i] as number;
      return { output, ours, published: value, tolerance: within?.value ?? tolerance };
    }),
  );
}

const reproduced = ({ ours, published, tolerance }: Comparison) =>
  Math.abs(ours - published) <= tolerance + 1e-12 * Math.abs(published);

/** Published examples are reproduced to half of their last digit, or to what a sentence argues for. */
export function exampleProblems(rule: AnyRule): Problems {
  return rule.examples.flatMap((example, i) => {
    const compared = compareExample(rule, example);
    if (compared.length === 0) return [`example ${i + 1} states no figure`];
    return compared
      .filter((one) => !reproduced(one))
      .map(
        (one) =>
          `example ${i + 1}: ${one.output} is ${one.ours}, published ${one.published} ± ${one.tolerance}`,
      );
  });
}

/** A wider tolerance is argued for, needed, and every output is pinned closely by some example. */
export function toleranceProblems(rule: AnyRule): Problems {
  const problems: string[] = [];
  const pinned = new Set<string>();
  for (const [i, example] of rule.examples.entries()) {
    const compared = compareExample(rule, example);
    for (const { output, published, tolerance } of compared) {
      if (tolerance <= LOOSEST_SHARE * Math.abs(published) || published === 0) pinned.add(output);
    }
    if (!example.within) continue;
    if (!/^\w.{20,}\.$/s.test(example.within.because))
      problems.push(`example ${i + 1}: no sentence says why`);
    const worst = Math.max(...compared.map(({ ours, published }) => Math.abs(ours - published)));
    if (example.within.value > 3 * worst) {
      problems.push(
        `example ${i + 1}: ± ${example.within.value} is looser than the deviation of ${worst} needs`,
      );
    }
  }
  for (const output of Object.keys(rule.outputs)) {
    if (!pinned.has(output)) problems.push(`no example pins ${output} to within ${100 * LOOSEST_SHARE} %`);
  }
  return problems;
}

/** Examples lie inside the range that the source claims. */
export const exampleRangeProblems = (rule: AnyRule): Problems =>
  rule.examples.flatMap((example, i) =>
    checkRange(rule, example.given).map(({ message }) => `example ${i + 1}: ${message}`),
  );
