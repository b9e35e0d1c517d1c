/** Wider lines go on in the next. */
const LINE_WIDTH = 120;

/** Blanks at which text may go on in the next line: a figure and its unit stay together. */
export const BREAKS: RegExp = / (?!(?:mm|in|kg|g|mL|N|kN|MPa|µm|°C|K|%|×)(?![\p{L}\p{N}]))/gu;

/** A line broken at blanks, what follows set in further. */
function wrapped(line: string): string[] {
  if (line.length <= LINE_WIDTH) return [line];
  const indent = line.search(/\S/);
  const breaks = [...line.matchAll(BREAKS)].map(({ index }) => index);
  const at = breaks.findLast((index) => index <= LINE_WIDTH) ?? -1;
  if (at <= indent + 2) return [line];
  const rest = `${' '.repeat(indent)}  ${line.slice(at).trim()}`;
  return [line.slice(0, at), ...wrapped(rest).map((more, i) => (i === 0 ? more : more.replace(/^ {2}/, '')))];
}

/** A heading with its lines beneath, set in. */
export const section = (heading: string, lines: readonly string[]): string =>
  [heading, ...lines.flatMap((line) => line.split('\n')).flatMap((line) => wrapped(`  ${line}`))].join('\n');

/** Rows as text, each column as wide as its widest cell. */
export function columns(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  return rows.map((row) =>
    row
      .map((cell, i) => cell.padEnd(widths[i] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

/** For a table whose heading names the unit. */
export const bare = (text: string): string => text.replace(' mm', '');
