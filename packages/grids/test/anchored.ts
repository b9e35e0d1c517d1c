import { anchorGrid, type GridToAnchor, type Hole, type HoleLayout, layoutHoles } from '../src/index.ts';

/** What `layoutHoles` makes of an anchored grid: every hole, and those that run over a margin. */
export function laid({ anchorX, anchorY, ...terms }: GridToAnchor): HoleLayout {
  const anchored = anchorGrid({ ...terms, anchorX, anchorY });
  const { columns: _columns, rows: _rows, ...free } = terms;
  return layoutHoles({ ...free, ...anchored, keepOuts: [] });
}

/** Centres along x, row by row. */
export const rowsOf = (holes: readonly Hole[]): number[][] => {
  const count = Math.max(0, ...holes.map(({ row }) => row + 1));
  return Array.from({ length: count }, (_, i) => holes.filter(({ row }) => row === i).map(({ xMm }) => xMm));
};
