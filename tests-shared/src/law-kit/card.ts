import { type AnyRule, type InputSpec, type OutputSpec, unitOf } from '@scantling/rules';
import katex from 'katex';
import type { Problems } from './problem.ts';

const camel = (kebab: string) => kebab.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

/** The function's and the card's export names follow from the id: `movement/width-change` is `widthChange`. */
export const functionName = (id: string) => camel(id.slice(id.indexOf('/') + 1));

function texProblems(formula: string): Problems {
  try {
    katex.renderToString(formula, { output: 'mathml', throwOnError: true, strict: 'error' });
    return [];
  } catch (error) {
    return [`formula does not typeset: ${(error as Error).message}`];
  }
}

const nameProblems = (name: string, { unit, label }: { unit: string; label: string }): Problems => [
  ...(unitOf(name) === unit ? [] : [`${name} reads as ${unitOf(name)}, the card says ${unit}`]),
  ...(label.trim() ? [] : [`${name} has no label`]),
];

/** The card is whole: names, units, sources with their locators, examples, a formula that typesets. */
export function cardProblems(rule: AnyRule): Problems {
  const problems: string[] = [];
  const say = (holds: boolean, problem: string) => holds || problems.push(problem);
  say(/^[a-z]+\/[a-z0-9]+(-[a-z0-9]+)*$/.test(rule.id), `id ${rule.id} is not package/file-name`);
  say(rule.compute.name === functionName(rule.id), `${rule.id} computes with ${rule.compute.name}`);
  say(rule.title.trim().length > 3, 'no title');
  say(/\w.{20,}\.$/s.test(rule.summary), 'summary is not a sentence');
  say(rule.sources.length > 0 || rule.basis === 'convention', 'no source, and not marked as a convention');
  say(rule.examples.length > 0, 'no worked example');
  for (const { at, source } of rule.sources) say(at.trim().length > 2, `${source.id} has no locator`);
  for (const { from } of rule.examples) {
    if ('workedByHand' in from) say(/\d.*=.*\d/s.test(from.workedByHand), 'an example shows no arithmetic');
    else say(from.at.trim().length > 2, `an example from ${from.source.id} has no locator`);
  }
  for (const [name, spec] of Object.entries<InputSpec>(rule.inputs)) {
    problems.push(...nameProblems(name, spec.kind === 'choice' ? { ...spec, unit: '1' } : spec));
    if (spec.kind !== 'choice') say(spec.min < spec.max, `${name} allows nothing`);
  }
  for (const [name, spec] of Object.entries<OutputSpec>(rule.outputs)) {
    problems.push(...nameProblems(name, spec));
  }
  for (const [name, range] of Object.entries(rule.valid ?? {})) {
    const [low, high] = range as readonly [number, number];
    const { min, max } = rule.inputs[name] as { min: number; max: number };
    say(low >= min && high <= max && low < high, `the range claimed for ${name} is not inside its limits`);
  }
  return [...problems, ...texProblems(rule.formula)];
}
