type Row = readonly [number, number];

/**
 * The two neighbouring rows of a printed table between which a figure lies; `null` beyond its ends.
 *
 * @param rows - Pairs in ascending order of the first figure.
 */
export function rowsAround(rows: readonly Row[], at: number): readonly [Row, Row] | null {
  const next = rows.findIndex(([x], i) => i > 0 && x >= at);
  const [before, after] = [rows[next - 1], rows[next]];
  return before && after && at >= before[0] ? [before, after] : null;
}

/** What a printed table of two columns gives between its rows, on a straight line; `null` beyond its ends. */
export function betweenRows(rows: readonly Row[], at: number): number | null {
  const around = rowsAround(rows, at);
  if (!around) return null;
  const [before, after] = around;
  const share = (at - before[0]) / (after[0] - before[0]);
  // So weighed, a row of the table gives its own figure to the last digit.
  return before[1] * (1 - share) + after[1] * share;
}
