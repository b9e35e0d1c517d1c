/**
 * What a printed table of two columns gives between its rows, on a straight line; `null` beyond its ends.
 *
 * @param rows - Pairs in ascending order of the first figure.
 */
export function betweenRows(rows: readonly (readonly [number, number])[], at: number): number | null {
  const next = rows.findIndex(([x]) => x >= at);
  const [after, before] = [rows[next], rows[next - 1]];
  if (after?.[0] === at) return after[1];
  return after && before
    ? before[1] + ((at - before[0]) / (after[0] - before[0])) * (after[1] - before[1])
    : null;
}
