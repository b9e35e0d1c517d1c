import type { AnyRule } from '@scantling/rules';
import { functionName, rules } from '../registry.ts';
import { type AccuracySummary, type AccuracyTable, summaryOf } from './comparison.ts';

/** A piece of a title: words, or the name of a function with its rule where it has one. */
export interface TitlePart {
  readonly text: string;
  readonly code: boolean;
  readonly rule: AnyRule | undefined;
}

/** A comparison with a printed table, and what comes out of it today. */
export interface ComparedTable {
  readonly packageName: string;
  readonly table: AccuracyTable;
  readonly summary: AccuracySummary;
  /** What is compared with what. */
  readonly title: readonly TitlePart[];
}

const modules = import.meta.glob<readonly AccuracyTable[]>('../../../../packages/*/accuracy/*.accuracy.ts', {
  eager: true,
  import: 'default',
});

const ruleByFunction = new Map(rules.map((rule) => [functionName(rule), rule]));

/** A title with its code marked: "`equilibriumMoisture`: Wood Handbook, Table 4-2". */
const titleParts = (title: string): TitlePart[] =>
  title.split('`').map((text, i) => ({
    text,
    code: i % 2 === 1,
    rule: i % 2 === 1 ? ruleByFunction.get(text) : undefined,
  }));

/** Every comparison that `npm run accuracy` makes, made anew. */
export const comparedTables: readonly ComparedTable[] = Object.entries(modules).flatMap(([path, tables]) => {
  const [packageName = ''] = path.split('/packages/')[1]?.split('/') ?? [];
  return tables.map((table) => {
    const summary = summaryOf(table);
    if (summary.withinLastDigit < summary.count && !table.remark)
      throw new Error(`${path}: “${table.title}” has figures that differ, and no remark says why.`);
    return { packageName, table, summary, title: titleParts(table.title) };
  });
});

if (comparedTables.length === 0) throw new Error('No packages/*/accuracy/*.accuracy.ts was found.');
