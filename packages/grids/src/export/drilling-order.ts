import type { Point } from '../geometry.ts';

/**
 * The holes row by row from the front, the first row from the left, each next one back the other way. Holes whose
 * centres lie within `sameRowMm` across of the row's foremost belong to one row. The order they come in does not matter.
 */
export function drillingOrder<Hole extends Point>(holes: readonly Hole[], sameRowMm: number): Hole[] {
  const rows: [Hole, ...Hole[]][] = [];
  for (const hole of [...holes].sort((a, b) => a.yMm - b.yMm || a.xMm - b.xMm)) {
    const row = rows.at(-1);
    if (row && hole.yMm - row[0].yMm <= sameRowMm) row.push(hole);
    else rows.push([hole]);
  }
  return rows.flatMap((row, i) => {
    const fromLeft = row.sort((a, b) => a.xMm - b.xMm || a.yMm - b.yMm);
    return i % 2 === 0 ? fromLeft : fromLeft.reverse();
  });
}
