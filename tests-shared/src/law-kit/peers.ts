import type { AnyRule, Peer } from '@scantling/rules';
import { type Input, inputArb } from './input-arbitrary.ts';
import { agree, counterexamples, type Problems } from './problem.ts';

type AnyPeer = Peer<Input, Record<string, unknown>>;

/** An agreement this close needs no argument. */
const CLOSE = 1e-6;

/** Two numbers below this agree by being nought. */
const SMALLEST = 1e-9;

/** The same rule with limits no wider than a peer's claim. */
function narrowed(rule: AnyRule, over: AnyPeer['over']): AnyRule {
  const inputs = Object.entries(over ?? {}).map(([name, range]) => {
    const [min, max] = range as readonly [number, number];
    return [name, { ...rule.inputs[name], min, max }];
  });
  return { ...rule, inputs: { ...rule.inputs, ...Object.fromEntries(inputs) } };
}

function peerProblem(rule: AnyRule, peer: AnyPeer): Problems {
  const { name, of, relative, absolute } = peer;
  if (!(of in rule.outputs)) return [`${name} is about ${of}, which is not an output`];
  if (relative === undefined && absolute === undefined) return [`${name} states no agreement`];
  let compared = 0;
  let largestShare = 0;
  const problems = counterexamples(inputArb(narrowed(rule, peer.over)), (input) => {
    const ours = rule.compute(input)[of] as number | null;
    if (ours === null) return;
    const theirs = peer.compute(input);
    if (!agree(ours, theirs, { absolute: absolute ?? 0, relative: relative ?? 0 })) {
      throw new Error(`${ours}, ${name} gives ${theirs}`);
    }
    compared += 1;
    const size = Math.max(Math.abs(ours), Math.abs(theirs));
    if (size < SMALLEST) return;
    const asked = Math.max(absolute ?? 0, (relative ?? 0) * size);
    largestShare = Math.max(largestShare, asked <= CLOSE * size ? 1 : Math.abs(ours - theirs) / asked);
  });
  if (problems.length > 0) return problems;
  if (compared === 0) return [`${name} was never compared`];
  return largestShare >= 1 / 3
    ? []
    : [`${name}: the agreement asked for is looser than needed, ${largestShare.toFixed(3)} of it is used`];
}

/** Other published ways to the same number agree, and the agreement asked for is a real one. */
export const peerProblems = (rule: AnyRule): Problems =>
  ((rule.peers ?? []) as AnyPeer[]).flatMap((peer) => peerProblem(rule, peer));
