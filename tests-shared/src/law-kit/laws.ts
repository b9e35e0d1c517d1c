import type { AnyRule, Law, LawShape, NumberInput, Peer } from '@scantling/rules';
import fc from 'fast-check';
import { type Input, inputArb } from './input-arbitrary.ts';
import { agree, counterexamples, type Problems, rounding } from './problem.ts';

type Line = (x: number) => number | null;

interface Trial {
  readonly at: Line;
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/** What each shape asks of one output along one input; `true` means that it was seen to change. */
const shapes: Record<LawShape, (trial: Trial) => boolean> = {
  increasing: ({ at, from, to }) => {
    const [low, high] = [at(Math.min(from, to)), at(Math.max(from, to))];
    if (low === null || high === null) return false;
    if (!(high >= low - rounding(low, high))) throw new Error(`falls from ${low} to ${high}`);
    return high > low;
  },
  decreasing: ({ at, from, to }) => {
    const [low, high] = [at(Math.min(from, to)), at(Math.max(from, to))];
    if (low === null || high === null) return false;
    if (!(high <= low + rounding(low, high))) throw new Error(`rises from ${low} to ${high}`);
    return high < low;
  },
  linear: ({ at, from, to, share }) => {
    const [a, b, between] = [at(from), at(to), at(from + share * (to - from))];
    if (a === null || b === null || between === null) return false;
    const expected = a + share * (b - a);
    if (!agree(between, expected, { absolute: rounding(a, b) }))
      throw new Error(`${between} is not ${expected}`);
    return a !== b;
  },
  proportional: ({ at, to, share }) => {
    const [whole, part] = [at(to), at(share * to)];
    if (whole === null || part === null) return false;
    if (!agree(part, share * whole, { absolute: rounding(whole) })) {
      throw new Error(`${part} is not ${share} of ${whole}`);
    }
    return whole !== 0;
  },
};

const lawful = (rule: AnyRule, input: Input) => (rule.requires ?? []).every(({ holds }) => holds(input));

function shapeProblems(rule: AnyRule, of: string, name: string, shape: LawShape): Problems {
  const { min, max } = rule.inputs[name] as NumberInput;
  const place = fc.double({ min, max, noNaN: true });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  let seen = 0;
  const problems = counterexamples(
    fc.tuple(inputArb(rule), place, place, share),
    ([input, from, to, share]) => {
      const at: Line = (x) => {
        const moved = { ...input, [name]: x };
        if (x < min || x > max || !lawful(rule, moved)) return null;
        return (rule.compute(moved)[of] as number | null) ?? null;
      };
      if (shapes[shape]({ at, from, to, share })) seen += 1;
    },
  );
  if (problems.length > 0) return problems.map((problem) => `${of} is not ${shape} in ${name}: ${problem}`);
  return seen > 0 ? [] : [`${of} was never seen to change with ${name}`];
}

/** Declared laws hold, and each was seen at work. */
export const lawProblems = (rule: AnyRule): Problems =>
  ((rule.laws ?? []) as Law<Record<string, unknown>, Record<string, unknown>>[]).flatMap(({ of, by }) =>
    Object.entries(by).flatMap(([name, shape]) => shapeProblems(rule, of, name, shape as LawShape)),
  );

/** The same rule with limits no wider than a peer's claim. */
function narrowed(rule: AnyRule, over: Peer<Input, unknown>['over']): AnyRule {
  const inputs = Object.entries(over ?? {}).map(([name, range]) => {
    const [min, max] = range as readonly [number, number];
    return [name, { ...rule.inputs[name], min, max }];
  });
  return { ...rule, inputs: { ...rule.inputs, ...Object.fromEntries(inputs) } };
}

/** Other published ways to the same number agree, and the agreement asked for is a real one. */
export const peerProblems = (rule: AnyRule): Problems =>
  ((rule.peers ?? []) as Peer<Input, Record<string, unknown>>[]).flatMap((peer) => {
    if (peer.relative === undefined && peer.absolute === undefined)
      return [`${peer.name} states no agreement`];
    return counterexamples(inputArb(narrowed(rule, peer.over)), (input) => {
      const ours = rule.compute(input)[peer.of] as number;
      const theirs = peer.compute(input);
      const allowed = { absolute: peer.absolute ?? rounding(ours, theirs), relative: peer.relative ?? 0 };
      if (!agree(ours, theirs, allowed)) throw new Error(`${ours}, ${peer.name} gives ${theirs}`);
    });
  });
