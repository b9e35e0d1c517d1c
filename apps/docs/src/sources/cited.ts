import type { AnyRule, Citation, Source } from '@scantling/rules';
import * as everySource from '@scantling/rules/sources';
import { type Factor, factors } from '@scantling/units';
import { countsInWords, howKnown, type Known } from '../confirmation.ts';
import { type WorkedExample, workedExamples } from '../examples/worked-examples.ts';
import { rules } from '../registry.ts';
import { type CodeCitation, codeCitations } from './code-citations.ts';
import { type PrintedTable, printedTables } from './tables.ts';

/** What a rule cites of one source. */
export interface RestingRule {
  readonly rule: AnyRule;
  /** For its statement. */
  readonly statement: readonly Citation[];
  /** For other ways to the same number, by what each is called. */
  readonly peers: readonly { readonly name: string; readonly citation: Citation }[];
}

/** Everything in the packages that rests on one source. */
export interface CitedSource {
  readonly source: Source;
  readonly rules: readonly RestingRule[];
  readonly examples: readonly WorkedExample[];
  readonly tables: readonly PrintedTable[];
  readonly factors: readonly { readonly factor: Factor; readonly citation: Citation }[];
  /** Planners, cautions and lists of values. */
  readonly inCode: readonly CodeCitation[];
  /** How each citation is known, and each row of a table. */
  readonly known: readonly Known[];
  readonly rows: readonly Known[];
}

/** A title as lists are ordered by it: without the article that it begins with. */
const inOrder = ({ title }: Source) => title.replace(/^(The|An?) /, '');

const restingOn = (source: Source): RestingRule[] =>
  rules
    .map((rule) => ({
      rule,
      statement: rule.sources.filter((citation) => citation.source.id === source.id),
      peers: (rule.peers ?? []).flatMap(({ name, source: citation }) =>
        citation?.source.id === source.id ? [{ name, citation }] : [],
      ),
    }))
    .filter(({ statement, peers }) => statement.length + peers.length > 0);

function cited(source: Source): CitedSource {
  const resting = restingOn(source);
  const examples = workedExamples.filter(({ from }) => 'source' in from && from.source.id === source.id);
  const tables = printedTables.filter((table) => table.source === source.id);
  const ofFactors = factors.flatMap((factor) =>
    factor.sources
      .filter((citation) => citation.source.id === source.id)
      .map((citation) => ({ factor, citation })),
  );
  const inCode = codeCitations.filter(
    (citation) => citation.source.id === source.id && !citation.file.endsWith('quantity/factors'),
  );
  const known = [
    ...resting.flatMap(({ statement, peers }) => [...statement, ...peers.map(({ citation }) => citation)]),
    ...examples.flatMap(({ from }) => ('source' in from ? [from] : [])),
    ...ofFactors.map(({ citation }) => citation),
    ...inCode.flatMap((citation) => citation.known ?? []),
  ].map(howKnown);
  const rows = tables.flatMap((table) =>
    table.known.flatMap((ways) => Array<Known>(ways.rows).fill(howKnown(ways))),
  );
  return { source, rules: resting, examples, tables, factors: ofFactors, inCode, known, rows };
}

/** Every source that anything in the packages rests on, in the order of its title. */
export const citedSources: readonly CitedSource[] = Object.values<Source>(everySource)
  .map(cited)
  .filter(({ rules, examples, tables, factors, inCode }) =>
    [rules, examples, tables, factors, inCode].some((list) => list.length > 0),
  )
  .sort((a, b) => inOrder(a.source).localeCompare(inOrder(b.source), 'en'));

/** How the citations of a source are known, and the rows of its tables. */
export function knownOfSource({ known, rows }: CitedSource): string {
  const ofRows = rows.length > 0 ? [`rows of tables ${countsInWords(rows)}`] : [];
  return [...(known.length > 0 ? [countsInWords(known)] : []), ...ofRows].join('; ');
}

/** How much rests on a source: `3 rules, 12 worked examples, a table`. */
export function restingInWords({ rules, examples, tables, factors, inCode }: CitedSource): string {
  const count = (n: number, one: string, several: string) =>
    n === 0 ? [] : [n === 1 ? one : `${n} ${several}`];
  const places = new Set(inCode.map(({ packageName, file }) => `${packageName}/${file}`));
  return [
    ...count(rules.length, 'a rule', 'rules'),
    ...count(examples.length, 'a worked example', 'worked examples'),
    ...count(tables.length, 'a table', 'tables'),
    ...count(factors.length, 'a unit', 'units'),
    ...count(places.size, 'a planner or caution', 'planners and cautions'),
  ].join(', ');
}
