import type { AnyRule, InputSpec } from '@scantling/rules';
import { inputSchema } from '@scantling/rules/zod';
import fc from 'fast-check';
import { type Input, inputArb, limitsArb } from './input-arbitrary.ts';
import { counterexamples, type Problems } from './problem.ts';

const beyond = (limit: number, away: 1 | -1) => limit + away * Math.max(1e-6, Math.abs(limit) * 1e-6);

const fill = (length: number, value: unknown) => Array.from({ length: Math.max(0, length) }, () => value);

/** Values on both sides of every limit, and values that are not numbers at all. */
function edgeValues(spec: InputSpec): unknown[] {
  if (spec.kind === 'choice') return ['', 'no such choice', 'toString', undefined, null, 1, []];
  const single: unknown[] = [
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    beyond(spec.min, -1),
    spec.min,
    spec.max,
    beyond(spec.max, 1),
    undefined,
    null,
    '1',
    [],
  ];
  if (spec.integer) single.push(spec.min + 0.5);
  if (spec.kind === 'number') return single;
  const { min, minItems, maxItems } = spec;
  const others = Math.min(Math.max(1, minItems), maxItems) - 1;
  return [
    ...single.map((value) => [...fill(others, min), value]),
    ...single.map((value) => [value, ...fill(others, min)]),
    ...(maxItems > 1 ? single.map((value) => [min, value, ...fill(others - 1, min)]) : []),
    fill(minItems - 1, min),
    fill(minItems, min),
    fill(maxItems, min),
    fill(maxItems + 1, min),
    undefined,
    null,
    min,
    'list',
    { length: minItems },
  ];
}

/** The input that a schema found fault with first. */
const faultyInput = (error: { issues: readonly { path: readonly PropertyKey[] }[] }) =>
  String(error.issues.find(({ path }) => path.length > 0)?.path[0]);

function refusalProblem(rule: AnyRule, input: Input): string | null {
  const { success: wanted, error } = inputSchema(rule).safeParse(input);
  try {
    rule.compute(input);
  } catch (thrown) {
    if (!(thrown instanceof RangeError)) return `throws ${String(thrown)}`;
    const { message } = thrown;
    if (wanted) return `refuses what its schema takes: ${message}`;
    const named = error.issues.every(({ path }) => path.length === 0) || message.includes(faultyInput(error));
    const clear = message.startsWith(`${rule.compute.name} requires `) && /, got /.test(message) && named;
    return clear ? null : `unclear: ${message}`;
  }
  return wanted ? null : 'takes what its schema refuses';
}

/** Throws RangeError exactly where the schema refuses: beyond each limit, for NaN, ±Infinity and other types. */
export function refusalProblems(rule: AnyRule): Problems {
  const starts = fc.sample(inputArb(rule), { numRuns: 4, seed: 1 });
  const atEdges = Object.entries<InputSpec>(rule.inputs).flatMap(([name, spec]) =>
    edgeValues(spec).flatMap((value) => {
      const problem = starts.map((start) => refusalProblem(rule, { ...start, [name]: value })).find(Boolean);
      return problem ? [`${name} = ${fc.stringify(value)}: ${problem}`] : [];
    }),
  );
  const inside = counterexamples(limitsArb(rule), (input) => {
    const problem = refusalProblem(rule, input);
    if (problem) throw new Error(problem);
  });
  return [...atEdges, ...inside];
}
