import type { AccuracyTable } from './comparison.ts';

/** A cell of a printed table: its printed figure, how far ours is from it, and whether that changes its last digit. */
export interface SurfaceCell {
  readonly printed: number;
  readonly off: number;
  readonly same: boolean;
}

/** The deviations from a table that has two directions, as it is laid out; `null` where it prints nothing. */
export interface Surface {
  readonly rowName: string;
  readonly columnName: string;
  readonly columns: readonly number[];
  readonly rows: readonly { readonly label: number; readonly cells: readonly (SurfaceCell | null)[] }[];
}

const inOrder = (labels: readonly number[]) => [...new Set(labels)].sort((a, b) => a - b);

export function surfaceOf({ surface, deviations }: AccuracyTable): Surface | null {
  if (!surface) return null;
  const cells = new Map<string, SurfaceCell>();
  for (const { at, printed, ours, known } of deviations) {
    if (!at) continue;
    const off = ours - printed;
    cells.set(`${at.row}/${at.column}`, { printed, off, same: Math.abs(off) <= known * (1 + 1e-9) });
  }
  const columns = inOrder(deviations.flatMap(({ at }) => at?.column ?? []));
  const rows = inOrder(deviations.flatMap(({ at }) => at?.row ?? []));
  return {
    rowName: surface.row,
    columnName: surface.column,
    columns,
    rows: rows.map((label) => ({
      label,
      cells: columns.map((column) => cells.get(`${label}/${column}`) ?? null),
    })),
  };
}
