// Source: `shellac-conversion-table`: parts of alcohol to one part of what there is, as text. Rows by what there is,
// columns by what is wanted, lb.
const wanted = [0.25, 0.5, 1, 1.5, 2, 3];
const printed: Readonly<Record<number, readonly number[]>> = {
  0.5: [1],
  1: [3, 7 / 8],
  1.5: [4.5, 5 / 3, 1 / 3],
  2: [5, 2, 2 / 3, 1 / 4],
  3: [8.75, 3.75, 1.5, 3 / 4, 1 / 3],
  4: [11, 5, 2, 1.25, 3 / 4, 1 / 4],
  5: [12.75, 5.75, 2.75, 1.5, 1, 7 / 8],
};
/** The cut there is and the cut wanted, lb, and parts of alcohol to one part of what there is, as printed. */
export const printedShellacThinning = Object.entries(printed).flatMap(([from, row]) =>
  row.map((parts, i) => [Number(from), wanted[i] ?? Number.NaN, parts] as const),
);
