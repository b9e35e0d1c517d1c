type Row = readonly [x: number, y: number];

/**
 * The pairs of neighbouring rows of a printed table between which a figure lies: none beyond its ends, two at a row.
 *
 * @param rows - Pairs in ascending order of the first figure.
 */
export const rowsAround = (rows: readonly Row[], at: number) =>
  rows
    .slice(1)
    .map((after, i) => [rows[i] as Row, after] as const)
    .filter(([before, after]) => before[0] <= at && at <= after[0]);

/** What a printed table of two columns gives between its rows, on a straight line; `null` beyond its ends. */
export const betweenRows = (rows: readonly Row[], at: number): number | null =>
  rowsAround(rows, at).map(([[x1, y1], [x2, y2]]) => (y1 * (x2 - at) + y2 * (at - x1)) / (x2 - x1))[0] ??
  null;
