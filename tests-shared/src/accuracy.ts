import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Citation } from '@scantling/rules';

/** A printed figure beside ours. */
export interface Deviation {
  readonly printed: number;
  readonly ours: number;
  /** Half of its last printed digit, or what else it is known to. */
  readonly known: number;
  readonly confirmed: Citation['confirmed'];
  /** Where it stands, for tables that are laid out as a surface. */
  readonly at?: { readonly row: number; readonly column: number };
}

/** What is computed, beside one table of a source. */
export interface AccuracyTable {
  /** What is compared with what: `Equilibrium moisture content: Wood Handbook, Table 4-2`. */
  readonly title: string;
  readonly unit: string;
  /** Digits that deviations are shown to. */
  readonly decimals: number;
  /** Names of the two directions, where the deviations make a surface. */
  readonly surface?: { readonly row: string; readonly column: string };
  /** Why some figures differ; a page that shows the table asks for it where some do. */
  readonly remark?: string;
  readonly deviations: readonly Deviation[];
}

const START = '<!-- accuracy: written by npm run accuracy -->';
const END = '<!-- end of accuracy -->';

const away = ({ printed, ours }: Deviation) => Math.abs(ours - printed);

function requireFigures({ title, deviations }: AccuracyTable): void {
  if (deviations.length === 0) throw new Error(`${title}: nothing was compared`);
  const broken = deviations.find((one) => !(Number.isFinite(away(one)) && one.known > 0));
  if (broken) throw new Error(`${title}: ${broken.printed} beside ${broken.ours} is no comparison`);
}

/** What comes out of a comparison, for a reader. */
export interface AccuracySummary {
  readonly count: number;
  /** How many of the figures were confirmed in which way. */
  readonly confirmed: readonly { readonly how: Citation['confirmed']; readonly count: number }[];
  /** Deviations with their unit. */
  readonly worst: string;
  readonly mean: string;
  readonly withinLastDigit: number;
}

/** Sums a table up: how many figures, where from, the worst and the mean deviation. */
export function summaryOf(table: AccuracyTable): AccuracySummary {
  requireFigures(table);
  const { unit, decimals, deviations } = table;
  const off = deviations.map(away);
  const shown = (figure: number) => `${figure.toFixed(decimals)} ${unit}`.trimEnd();
  return {
    count: off.length,
    confirmed: (['text', 'memory', 'computed'] as const)
      .map((how) => ({ how, count: deviations.filter((one) => one.confirmed === how).length }))
      .filter(({ count }) => count > 0),
    worst: shown(Math.max(...off)),
    mean: shown(off.reduce((sum, one) => sum + one, 0) / off.length),
    withinLastDigit: deviations.filter((one) => away(one) <= one.known * (1 + 1e-9)).length,
  };
}

function rowOf(table: AccuracyTable): string[] {
  const { count, confirmed, worst, mean, withinLastDigit } = summaryOf(table);
  const origins = confirmed.map((one) => `${one.count} ${one.how}`).join(', ');
  return [table.title, String(count), origins, worst, mean, String(withinLastDigit)];
}

const HEAD = ['checked against', 'n', 'confirmed', 'worst', 'mean', 'within its last digit'];

/** The tables as one Markdown table: how many figures, where from, the worst and the mean deviation. */
export function accuracyMarkdown(tables: readonly AccuracyTable[]): string {
  if (tables.length === 0) throw new Error('There is no table to compare.');
  const rows = [HEAD, ...tables.map(rowOf)];
  const widths = HEAD.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(' | ')} |`;
  const rule = line(widths.map((width) => '-'.repeat(width)));
  return [line(rows[0] ?? []), rule, ...rows.slice(1).map(line)].join('\n');
}

/** A page with the table between its two marks. */
export function withAccuracy(page: string, tables: readonly AccuracyTable[]): string {
  const from = page.indexOf(START);
  const to = page.indexOf(END);
  if (from < 0 || to < from) throw new Error(`The page has no ${START} with ${END} after it.`);
  return `${page.slice(0, from + START.length)}\n\n${accuracyMarkdown(tables)}\n\n${page.slice(to)}`;
}

/** Every deviation of a table that is laid out as a surface, signed, in units of its last shown digit. */
export function deviationSurface(table: AccuracyTable): string | null {
  requireFigures(table);
  const { title, unit, decimals, surface, deviations } = table;
  if (!surface) return null;
  const labels = (pick: 'row' | 'column') =>
    [...new Set(deviations.map(({ at }) => at?.[pick] ?? Number.NaN))].sort((a, b) => a - b);
  const columns = labels('column');
  const cells = new Map(
    deviations.map((one) => [`${one.at?.row}/${one.at?.column}`, one.ours - one.printed]),
  );
  const lines = labels('row').map((row) => {
    const figures = columns.map((column) => {
      const figure = cells.get(`${row}/${column}`);
      return (figure === undefined ? '' : String(Math.round(figure * 10 ** decimals) + 0)).padStart(4);
    });
    return `${String(row).padStart(6)} ${figures.join('')}`;
  });
  const scale = `ours less printed, in ${(10 ** -decimals).toFixed(decimals)} ${unit}`;
  const head = `${' '.repeat(7)}${columns.map((column) => String(column).padStart(4)).join('')}`;
  return [`${title}: ${scale}; down ${surface.row}, across ${surface.column}`, head, ...lines].join('\n');
}

/** The folder of each package that has accuracy files, with their tables. */
export async function accuracyOf(root: string): Promise<Map<string, AccuracyTable[]>> {
  const found = new Map<string, AccuracyTable[]>();
  for (const file of globSync('packages/*/accuracy/*.accuracy.ts', { cwd: root }).sort()) {
    const folder = join(root, file, '..', '..');
    const { default: tables } = (await import(join(root, file))) as { default: readonly AccuracyTable[] };
    found.set(folder, [...(found.get(folder) ?? []), ...tables]);
  }
  if (found.size === 0) throw new Error('No packages/*/accuracy/*.accuracy.ts was found.');
  return found;
}

/** The README of a package as it stands, and as it ought to. */
export function readmeOf(folder: string, tables: readonly AccuracyTable[]) {
  const path = join(folder, 'README.md');
  const stands = readFileSync(path, 'utf8');
  return { path, stands, ought: withAccuracy(stands, tables) };
}
