import type { AnyRule, InputSpec } from '@scantling/rules';
import { inputSchema } from '@scantling/rules/zod';
import fc from 'fast-check';
import { type Input, inputArb, limitsArb } from './input-arbitrary.ts';
import { counterexamples, type Problems } from './problem.ts';

const deepFreeze = <T>(value: T): T => {
  if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(deepFreeze);
  return value;
};

/** Finite numbers everywhere, no −0, exactly the outputs that the card names, inputs left alone. */
export function resultProblems(rule: AnyRule): Problems {
  const names = Object.keys(rule.outputs).sort().join();
  return counterexamples(inputArb(rule), (input) => {
    const result = rule.compute(deepFreeze(input)) as Record<string, unknown>;
    if (Object.keys(result).sort().join() !== names)
      throw new Error(`gives ${Object.keys(result)}, not ${names}`);
    for (const [name, value] of Object.entries(result)) {
      for (const one of [value].flat()) {
        if (one === null) continue;
        if (!Number.isFinite(one)) throw new Error(`${name} is ${String(one)}`);
        if (Object.is(one, -0)) throw new Error(`${name} is −0`);
      }
    }
  });
}

const beyond = (limit: number, away: 1 | -1) => limit + away * Math.max(1e-6, Math.abs(limit) * 1e-6);

const badValues = (spec: InputSpec): unknown[] => {
  if (spec.kind === 'choice') return ['', 'no such choice', 'toString', undefined, 1];
  const bad: unknown[] = [
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    beyond(spec.min, -1),
    beyond(spec.max, 1),
    undefined,
    null,
    '1',
  ];
  if (spec.integer) bad.push(spec.min + 0.5);
  if (spec.kind === 'number') return bad;
  const fill = (length: number, value: unknown) => Array.from({ length }, () => value);
  return [
    ...bad.map((value) => fill(Math.max(1, spec.minItems), value)),
    fill(spec.minItems - 1, spec.min),
    fill(spec.maxItems + 1, spec.min),
    undefined,
    spec.min,
  ];
};

function refusalProblem(rule: AnyRule, input: Input): string | null {
  const wanted = inputSchema(rule).safeParse(input).success;
  try {
    rule.compute(input);
  } catch (error) {
    if (!(error instanceof RangeError)) return `throws ${String(error)}`;
    if (wanted) return `refuses what its schema takes: ${error.message}`;
    return error.message.startsWith(`${rule.compute.name} requires `) ? null : `unclear: ${error.message}`;
  }
  return wanted ? null : 'takes what its schema refuses';
}

/** Throws RangeError exactly where the schema refuses: beyond each limit, for NaN, ±Infinity and other types. */
export function refusalProblems(rule: AnyRule): Problems {
  const [start] = fc.sample(inputArb(rule), { numRuns: 1, seed: 1 });
  const atEdges = Object.entries<InputSpec>(rule.inputs).flatMap(([name, spec]) =>
    badValues(spec).flatMap((value) => {
      const problem = refusalProblem(rule, { ...start, [name]: value });
      return problem ? [`${name} = ${fc.stringify(value)}: ${problem}`] : [];
    }),
  );
  const inside = counterexamples(limitsArb(rule), (input) => {
    const problem = refusalProblem(rule, input);
    if (problem) throw new Error(problem);
  });
  return [...atEdges, ...inside];
}

/** Each input matters: somewhere, changing it alone changes a result. */
export function idleInputProblems(rule: AnyRule): Problems {
  const pairs = fc.sample(fc.tuple(inputArb(rule), inputArb(rule)), { numRuns: 200, seed: 2 });
  return Object.keys(rule.inputs)
    .filter((name) =>
      pairs.every(([a, b]) => {
        const changed = { ...a, [name]: b[name] };
        if (inputSchema(rule).safeParse(changed).success === false) return true;
        return fc.stringify(rule.compute(a)) === fc.stringify(rule.compute(changed));
      }),
    )
    .map((name) => `${name} changes nothing`);
}
