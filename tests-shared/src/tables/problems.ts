import { unitOf } from '@scantling/rules';
import * as sources from '@scantling/rules/sources';
import type { Problems } from '../law-kit/problem.ts';
import { tierFits } from '../tiers.ts';
import { exportName } from './emit.ts';
import { staleFiles } from './generate.ts';
import { type Column, cell, rowKey, type Table } from './table.ts';

const CONFIRMATIONS = ['text', 'memory', 'computed'];

/** One problem for each row and column that a check objects to. */
const eachCell = (table: Table, check: (column: Column, text: string) => string | null): Problems =>
  table.rows.flatMap((row) =>
    Object.entries(table.meta.columns).flatMap(([heading, column]) => {
      const problem = check(column, cell(table, row, heading));
      return problem ? [`${rowKey(table, row)}: ${heading} ${problem}`] : [];
    }),
  );

function originProblems({ id, meta }: Table): Problems {
  const known = Object.values(sources).map((source) => source.id);
  return [
    ...(known.includes(meta.source) ? [] : [`there is no source card ${meta.source}`]),
    ...(id.startsWith(`${meta.source}--`) ? [] : [`the file is not named after its source ${meta.source}`]),
  ];
}

const freshnessProblems = ({ meta, rows, sha256 }: Table): Problems => [
  ...(meta.sha256 === sha256 ? [] : ['the checksum is not that of the table']),
  ...(meta.rowCount === rows.length ? [] : [`${meta.rowCount} rows are stated, there are ${rows.length}`]),
  ...(rows.length > 0 ? [] : ['the table has no rows']),
];

function shapeProblems(table: Table): Problems {
  const { header, rows, meta } = table;
  const headings = Object.keys(meta.columns);
  const keys = rows.map((row) => rowKey(table, row));
  return [
    ...(header.join() === headings.join() ? [] : [`the columns are ${header}, described are ${headings}`]),
    ...meta.key.filter((heading) => !headings.includes(heading)).map((heading) => `no key column ${heading}`),
    ...rows
      .filter((row) => row.length !== header.length)
      .map((row) => `${row} has ${row.length} cells, not ${header.length}`),
    ...keys.filter((key, i) => keys.indexOf(key) !== i).map((key) => `${key} stands twice`),
    ...meta.errata
      .flatMap((erratum) => erratum.rows)
      .filter((key) => !keys.includes(key))
      .map((key) => `an erratum names ${key}, which is not in the table`),
    ...meta.errata
      .flatMap(({ columns = [] }) => columns)
      .filter((heading) => !headings.includes(heading))
      .map((heading) => `an erratum names the column ${heading}, which is not in the table`),
  ];
}

const nameProblems = ({ meta }: Table): Problems =>
  Object.values(meta.columns).flatMap((column) =>
    column.kind === 'number' && unitOf(column.name) !== column.unit
      ? [`${column.name} reads as ${unitOf(column.name)}, the table prints ${column.unit}`]
      : [],
  );

function numberProblem(column: Column, text: string): string | null {
  if (column.kind !== 'number' || (text === '' && column.mayBeEmpty)) return null;
  if (!/^-?\d+(\.\d+)?$/.test(text)) return `is "${text}", not a number`;
  const decimals = text.split('.')[1]?.length ?? 0;
  if (decimals !== column.decimals) return `is ${text}, with ${decimals} decimals and not ${column.decimals}`;
  const [low, high] = column.range;
  return Number(text) >= low && Number(text) <= high ? null : `is ${text}, outside ${low} to ${high}`;
}

function wordProblem(column: Column, text: string): string | null {
  if (column.kind === 'text') return text.trim() === text && text !== '' ? null : `is "${text}"`;
  if (column.kind !== 'choice') return null;
  return column.oneOf.includes(text) ? null : `is "${text}", not one of ${column.oneOf.join(', ')}`;
}

/** Every row says how it was confirmed; what was seen says at which address, what was not seen says none. */
function confirmationProblems(table: Table): Problems {
  const addresses = Object.keys(table.meta.seenAt);
  return table.rows.flatMap((row) => {
    const confirmed = cell(table, row, 'confirmed');
    const tier = cell(table, row, 'tier');
    const seenAt = cell(table, row, 'seen_at');
    const problems = [
      CONFIRMATIONS.includes(confirmed) ? '' : `"${confirmed}" is not a mark`,
      tierFits(confirmed, tier) ? '' : `${confirmed}, yet of tier ${tier}`,
      (confirmed === 'text' ? addresses : ['']).includes(seenAt) ? '' : `${confirmed}, seen at "${seenAt}"`,
    ];
    return problems.filter(Boolean).map((problem) => `${rowKey(table, row)}: ${problem}`);
  });
}

const generatedProblems = ({ packageDir, id }: Table): Problems =>
  staleFiles(packageDir)
    .filter(({ path }) => path.includes(id))
    .map(({ path }) => `${path.slice(packageDir.length)} is not what the table gives: npm run tables`);

/** Everything that every table must satisfy. */
export const tableChecks: Readonly<Record<string, (table: Table) => Problems>> = {
  'comes from a known source': originProblems,
  'has the rows and the checksum that it states': freshnessProblems,
  'has the columns, the keys and the errata that it states': shapeProblems,
  'names its figures by their printed units': nameProblems,
  'holds numbers with the printed decimals, in the plausible range': (table) =>
    eachCell(table, numberProblem),
  'holds the words that it may': (table) => eachCell(table, wordProblem),
  'says of every row how it was confirmed': confirmationProblems,
  'is what the generated module was made from': generatedProblems,
};

/** A generated value printed again as the table prints it. */
function printed(column: Column, value: unknown): string {
  if (value === null) return '';
  return column.kind === 'number' && typeof value === 'number' ? value.toFixed(column.decimals) : `${value}`;
}

/** The rows that a generated module exports, printed again, are the cells. */
export function moduleProblems(table: Table, module: Readonly<Record<string, unknown>>): Problems {
  const rows = (module[exportName(table.id)] ?? []) as readonly Record<string, unknown>[];
  if (rows.length !== table.rows.length)
    return [`${rows.length} rows were generated from ${table.rows.length}`];
  return table.rows.flatMap((row, i) =>
    Object.entries(table.meta.columns).flatMap(([heading, column]) => {
      if (column.kind === 'address') return [];
      const [is, was] = [printed(column, rows[i]?.[column.name]), cell(table, row, heading)];
      return is === was ? [] : [`${rowKey(table, row)}: ${column.name} is ${is}, printed is ${was}`];
    }),
  );
}
