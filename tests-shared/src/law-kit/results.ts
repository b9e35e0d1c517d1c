import type { AnyRule } from '@scantling/rules';
import { inputSchema } from '@scantling/rules/zod';
import fc from 'fast-check';
import { inputArb, isLawful } from './input-arbitrary.ts';
import { counterexamples, type Problems } from './problem.ts';

const deepFreeze = <T>(value: T): T => {
  if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(deepFreeze);
  return value;
};

function figureProblem(name: string, figure: unknown): string | null {
  if (figure === null) return null;
  if (!Number.isFinite(figure)) return `${name} is ${fc.stringify(figure)}`;
  return Object.is(figure, -0) ? `${name} is −0` : null;
}

/** Finite numbers everywhere, no −0, exactly the outputs that the card names, inputs left alone. */
export function resultProblems(rule: AnyRule): Problems {
  const names = Object.keys(rule.outputs).sort().join();
  return counterexamples(inputArb(rule), (input) => {
    const before = fc.stringify(input);
    const result = rule.compute(deepFreeze(input)) as Record<string, unknown>;
    if (fc.stringify(input) !== before) throw new Error('changes its inputs');
    if (Object.getPrototypeOf(result) !== Object.prototype) throw new Error('does not give a plain object');
    if (Object.keys(result).sort().join() !== names) {
      throw new Error(`gives ${Object.keys(result).join()}, the card says ${names}`);
    }
    for (const [name, value] of Object.entries(result)) {
      if (Array.isArray(value) && Object.values(input).includes(value)) {
        throw new Error(`${name} is the list that was handed in, not a new one`);
      }
      const problem = [value].flat().map((figure) => figureProblem(name, figure));
      const first = problem.find((one) => one !== null);
      if (first) throw new Error(first);
    }
  });
}

/** The same question gets the same answer, whatever was asked in between. */
export const repeatProblems = (rule: AnyRule): Problems =>
  counterexamples(fc.tuple(inputArb(rule), inputArb(rule)), ([input, other]) => {
    const answer = fc.stringify(rule.compute({ ...input }));
    for (const name of Object.keys(rule.inputs)) {
      const between = { ...input, [name]: other[name] };
      if (isLawful(rule, between)) rule.compute(between);
    }
    const again = fc.stringify(rule.compute({ ...input }));
    if (again !== answer) throw new Error(`gives ${answer}, and then ${again}`);
  });

/** Each input matters: somewhere, changing it alone changes a result. */
export function idleInputProblems(rule: AnyRule): Problems {
  const pairs = fc.sample(fc.tuple(inputArb(rule), inputArb(rule)), { numRuns: 200, seed: 2 });
  return Object.keys(rule.inputs)
    .filter((name) =>
      pairs.every(([a, b]) => {
        const changed = { ...a, [name]: b[name] };
        if (!inputSchema(rule).safeParse(changed).success) return true;
        return fc.stringify(rule.compute(a)) === fc.stringify(rule.compute(changed));
      }),
    )
    .map((name) => `${name} changes nothing`);
}
