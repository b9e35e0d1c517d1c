import type { AnyRule, InputSpec, Law, LawShape, NumberInput } from '@scantling/rules';
import fc from 'fast-check';
import { type Input, inputArb, isLawful, numberArb } from './input-arbitrary.ts';
import { agree, counterexamples, type Problems, rounding } from './problem.ts';

/** A law seen at work less often than this was hardly tried. */
const LEAST_SEEN = 10;

type AnyLaw = Law<Record<string, unknown>, Record<string, unknown>>;

/** Two places along one input, a third between them, and the output at each. */
interface Trial {
  readonly at: (x: number) => number | null;
  readonly from: number;
  readonly to: number;
  readonly between: number;
}

/** Whether two results differ by more than the rounding of arithmetic. */
const differ = (a: number, b: number) => Math.abs(a - b) > rounding(a, b);

const ordered = ({ at, from, to }: Trial) => [at(Math.min(from, to)), at(Math.max(from, to))] as const;

/** What each shape asks of one output along one input; `true` means that it was seen to change. */
const shapes: Record<LawShape, (trial: Trial) => boolean> = {
  increasing: (trial) => {
    const [low, high] = ordered(trial);
    if (low === null || high === null) return false;
    if (!(high >= low - rounding(low, high))) throw new Error(`falls from ${low} to ${high}`);
    return differ(low, high);
  },
  decreasing: (trial) => {
    const [low, high] = ordered(trial);
    if (low === null || high === null) return false;
    if (!(high <= low + rounding(low, high))) throw new Error(`rises from ${low} to ${high}`);
    return differ(low, high);
  },
  linear: ({ at, from, to, between }) => {
    const [a, b, middle] = [at(from), at(to), at(between)];
    if (a === null || b === null || middle === null || from === to) return false;
    const expected = a + ((between - from) / (to - from)) * (b - a);
    if (!(Math.abs(middle - expected) <= rounding(a, b))) {
      throw new Error(`${middle} is not ${expected}`);
    }
    return differ(a, b) && between !== from && between !== to;
  },
  proportional: ({ at, to, between }) => {
    const [whole, part] = [at(to), at(between)];
    if (whole === null || part === null || to === 0) return false;
    const expected = (between / to) * whole;
    if (!agree(part, expected)) {
      throw new Error(`${part} is not ${between / to} of ${whole}`);
    }
    return differ(whole, part);
  },
};

/** The place on the way from one value of an input to another that its other conditions still allow. */
function reach(rule: AnyRule, input: Input, name: string, goal: number): number {
  const { integer } = rule.inputs[name] as NumberInput;
  const from = input[name] as number;
  let to = goal;
  for (let halvings = 0; halvings < 40 && !isLawful(rule, { ...input, [name]: to }); halvings++) {
    const half = (to - from) / 2;
    to = from + (integer ? Math.trunc(half) : half);
  }
  return to;
}

function shapeProblems(rule: AnyRule, of: string, name: string, shape: LawShape): Problems {
  const { min, max, integer } = rule.inputs[name] as NumberInput;
  const place = numberArb(rule.inputs[name] as NumberInput);
  const share = numberArb({ min: 0, max: 1 });
  let seen = 0;
  const problems = counterexamples(fc.tuple(inputArb(rule), place, share), ([input, goal, part]) => {
    const from = input[name] as number;
    const to = reach(rule, input, name, goal);
    // A proportion is seen from nought, or as near to it as the limits go; other shapes between any two places.
    const start = shape === 'proportional' ? Math.max(0, min) : from;
    const exact = start + part * (to - start);
    const between = integer ? Math.round(exact) : exact;
    const at = (x: number) => {
      const moved = { ...input, [name]: x };
      if (!(x >= min && x <= max) || !isLawful(rule, moved)) return null;
      const result = rule.compute(moved)[of];
      if (typeof result !== 'number' && result !== null) throw new Error('it is not a single number');
      return result;
    };
    if (shapes[shape]({ at, from, to, between })) seen += 1;
  });
  if (problems.length > 0) return problems.map((problem) => `${of} is not ${shape} in ${name}: ${problem}`);
  return seen >= LEAST_SEEN ? [] : [`${of} was seen to change with ${name} only ${seen} times`];
}

function lawProblem(rule: AnyRule, { of, by }: AnyLaw): Problems {
  if (!(of in rule.outputs)) return [`a law is about ${of}, which is not an output`];
  if (Object.keys(by).length === 0) return [`the law of ${of} says nothing`];
  return Object.entries(by).flatMap(([name, shape]) =>
    (rule.inputs as Record<string, InputSpec>)[name]?.kind === 'number'
      ? shapeProblems(rule, of, name, shape as LawShape)
      : [`the law of ${of} is about ${name}, which is not a number that goes in`],
  );
}

/** Declared laws hold, and each was seen at work. A rule that numbers go into has a law, or a peer. */
export function lawProblems(rule: AnyRule): Problems {
  const laws = (rule.laws ?? []) as AnyLaw[];
  const answersToNumbers = Object.values<InputSpec>(rule.inputs).some(({ kind }) => kind === 'number');
  if (laws.length === 0 && (rule.peers ?? []).length === 0 && answersToNumbers) {
    return ['declares no law and no peer'];
  }
  return laws.flatMap((law) => lawProblem(rule, law));
}
