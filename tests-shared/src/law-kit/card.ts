import { type AnyRule, type Citation, type InputSpec, type OutputSpec, unitOf } from '@scantling/rules';
import katex from 'katex';
import { tierFits } from '../tiers.ts';
import type { Problems } from './problem.ts';

const camel = (kebab: string) => kebab.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

/** The function's and the card's export names follow from the id: `movement/width-change` is `widthChange`. */
export const functionName = (id: string) => camel(id.slice(id.indexOf('/') + 1));

const unless = (holds: boolean, problem: string): Problems => (holds ? [] : [problem]);

function formulaProblems({ formula, symbols = {} }: AnyRule): Problems {
  const bare = (tex: string) => tex.replace(/[\s{}]/g, '');
  const unused = Object.keys(symbols)
    .flatMap((key) => key.split(/,\s+/))
    .filter((symbol) => !bare(formula).includes(bare(symbol)));
  const problems = [
    ...unless(/[=<>]|\\(approx|le|ge|leq|geq|in)\b/.test(formula), 'formula states no relation'),
    ...unused.map((symbol) => `symbol ${symbol} does not stand in the formula`),
  ];
  try {
    katex.renderToString(formula, { output: 'mathml', throwOnError: true, strict: 'error' });
    return problems;
  } catch (error) {
    return [...problems, `formula does not typeset: ${(error as Error).message}`];
  }
}

const citationProblems = ({ source, at, confirmed, tier }: Citation): Problems => [
  ...unless(at.trim().length > 2, `${source.id} has no locator`),
  ...unless(
    tier === undefined || tierFits(confirmed, tier),
    `${source.id} is confirmed by ${confirmed}, yet of tier ${tier}`,
  ),
  ...unless(
    [source.id, source.title, source.author].every((text) => text.trim().length > 1) &&
      (source.year === undefined ? /^undated/i.test(source.note ?? '') : Number.isInteger(source.year)),
    `source ${source.id} lacks its title, its author, or its year without a note that says "undated"`,
  ),
];

function originProblems({ sources, basis, examples, peers = [] }: AnyRule): Problems {
  return [
    ...unless(sources.length > 0 || basis === 'convention', 'no source, and not marked as a convention'),
    ...sources.flatMap(citationProblems),
    ...peers.flatMap(({ source }) => (source ? citationProblems(source) : [])),
    ...unless(examples.length > 0, 'no worked example'),
    ...examples.flatMap(({ from }) => {
      if ('workedByHand' in from) return [];
      const computed = `an example from ${from.source.id} was computed here: show the arithmetic instead`;
      return [...citationProblems(from), ...unless(from.confirmed !== 'computed', computed)];
    }),
  ];
}

const nameProblems = (name: string, { unit, label }: { unit: string; label: string }): Problems => [
  ...unless(unitOf(name) === unit, `${name} reads as ${unitOf(name)}, the card says ${unit}`),
  ...unless(label.trim().length > 0, `${name} has no label`),
];

function inputProblems(name: string, spec: InputSpec): Problems {
  if (spec.kind === 'choice') {
    const labels: string[] = Object.values(spec.options);
    return [
      ...nameProblems(name, { ...spec, unit: '1' }),
      ...unless(labels.length > 1, `${name} leaves no choice`),
      ...unless(
        labels.every((label) => label.trim()),
        `a choice of ${name} has no label`,
      ),
    ];
  }
  const { min, max } = spec;
  return [
    ...nameProblems(name, spec),
    ...unless(Number.isFinite(min) && Number.isFinite(max), `${name} has no limits`),
    ...unless(min < max, `${name} allows nothing`),
  ];
}

function validProblems({ inputs, valid = {} }: AnyRule): Problems {
  return Object.entries(valid).flatMap(([name, range]) => {
    const [low, high] = range as readonly [number, number];
    const { min, max } = (inputs[name] ?? {}) as { min: number; max: number };
    return unless(
      low >= min && high <= max && low < high,
      `the range claimed for ${name} is not inside its limits`,
    );
  });
}

/** The card is whole: names, units, sources with their locators, examples, a formula that typesets. */
export function cardProblems(rule: AnyRule): Problems {
  return [
    ...unless(
      /^[a-z]+\/[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(rule.id),
      `id ${rule.id} is not package/file-name`,
    ),
    ...unless(rule.compute.name === functionName(rule.id), `${rule.id} computes with ${rule.compute.name}`),
    ...unless(rule.title.trim().length > 3, 'no title'),
    ...unless(/\w.{20,}\.$/s.test(rule.summary), 'summary is not a sentence'),
    ...originProblems(rule),
    ...unless(Object.keys(rule.inputs).length > 0, 'nothing goes in'),
    ...unless(Object.keys(rule.outputs).length > 0, 'nothing comes out'),
    ...Object.entries<InputSpec>(rule.inputs).flatMap(([name, spec]) => inputProblems(name, spec)),
    ...Object.entries<OutputSpec>(rule.outputs).flatMap(([name, spec]) => nameProblems(name, spec)),
    ...validProblems(rule),
    ...formulaProblems(rule),
    ...unless(
      (rule.cautions ?? []).every((caution) => caution.trim().endsWith('.')),
      'a caution is not a sentence',
    ),
  ];
}
