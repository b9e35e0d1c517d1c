/**
 * What a printed table of two columns gives between its rows, on a straight line; `null` beyond its ends.
 *
 * @param rows - Pairs in ascending order of the first figure.
 */
export function betweenRows(rows: readonly (readonly [number, number])[], at: number): number | null {
  const next = rows.findIndex(([x]) => x >= at);
  const [x1, y1] = rows[next] ?? [Number.NaN, Number.NaN];
  const [x0, y0] = rows[next - 1] ?? [Number.NaN, Number.NaN];
  if (at === x1) return y1;
  return Number.isNaN(x0 - x1) ? null : y0 + ((at - x0) / (x1 - x0)) * (y1 - y0);
}
