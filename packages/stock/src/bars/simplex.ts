/** A column of a linear programme: its entries by row. */
export interface Column {
  readonly rows: readonly number[];
  readonly entries: readonly number[];
}

const EPSILON = 1e-9;

/** Stands in the basis where less than nothing of a column would be needed: the column's negative, to be driven out. */
export const NEGATIVE = -1;

/**
 * A linear programme that grows by columns: least cost of x ≥ 0 with A x = b ≥ 0. It begins with one unit column for
 * each row, which is its first basis, and goes on from any basis when b or the costs change. Revised simplex method
 * with the inverse of the basis kept in full.
 */
export class Simplex {
  /** What one more unit of each row costs. */
  readonly duals: Float64Array;
  /** Which column stands in each row of the basis, or `NEGATIVE`, and how much of it. */
  readonly basis: Int32Array;
  readonly amounts: Float64Array;
  readonly columns: Column[];
  /** Cost of each column. */
  readonly costs: number[];
  /** Pivots since the beginning. */
  pivots = 0;
  private readonly size: number;
  private readonly inverse: Float64Array;
  private readonly direction: Float64Array;

  constructor(size: number) {
    this.size = size;
    this.amounts = new Float64Array(size);
    this.duals = new Float64Array(size);
    this.basis = Int32Array.from({ length: size }, (_, row) => row);
    this.columns = Array.from(this.basis, (row) => ({ rows: [row], entries: [1] }));
    this.costs = this.columns.map(() => 0);
    this.inverse = new Float64Array(size * size);
    for (let row = 0; row < size; row++) this.inverse[row * size + row] = 1;
    this.direction = new Float64Array(size);
  }

  add(column: Column, cost: number): void {
    this.columns.push(column);
    this.costs.push(cost);
  }

  /** Takes b anew, and the costs as they are now, and goes on from the basis there is. */
  restart(rightHandSide: ArrayLike<number>, negativeCost: number): void {
    const { size, inverse, duals, amounts, basis } = this;
    duals.fill(0);
    for (let row = 0; row < size; row++) {
      const start = row * size;
      let amount = 0;
      for (let i = 0; i < size; i++) {
        amount += (inverse[start + i] as number) * (rightHandSide[i] as number);
      }
      if (amount < -EPSILON) {
        for (let i = 0; i < size; i++) (inverse[start + i] as number) *= -1;
        basis[row] = NEGATIVE;
      }
      amounts[row] = Math.abs(amount);
      const cost = this.costs[basis[row] as number] ?? negativeCost;
      if (cost === 0) continue;
      for (let i = 0; i < size; i++) (duals[i] as number) += cost * (inverse[start + i] as number);
    }
  }

  /** Lets columns enter until none lowers the cost, or the pivots run out. */
  optimise(mostPivots: number): void {
    const all = this.columns.map((_, column) => column);
    // Columns that lowered the cost when all were last looked at: most of them still do after a pivot.
    let hopeful: readonly number[] = all;
    for (let left = mostPivots; left > 0; ) {
      const { entering, least, lowering } = this.cheapest(hopeful);
      if (entering >= 0) {
        if (!this.enter(entering, least)) return;
        left -= 1;
      } else if (hopeful === all) return;
      hopeful = entering >= 0 ? lowering : all;
    }
  }

  /** Of some columns those of which one unit lowers the cost, and the one that lowers it most. */
  private cheapest(among: readonly number[]) {
    const { columns, costs, duals } = this;
    const lowering: number[] = [];
    let entering = -1;
    let least = -EPSILON;
    for (let i = 0; i < among.length; i++) {
      const column = among[i] as number;
      const { rows, entries } = columns[column] as Column;
      let reduced = costs[column] as number;
      for (let at = 0; at < rows.length; at++) {
        reduced -= (duals[rows[at] as number] as number) * (entries[at] as number);
      }
      if (reduced >= -EPSILON) continue;
      lowering.push(column);
      if (reduced >= least) continue;
      least = reduced;
      entering = column;
    }
    return { entering, least, lowering };
  }

  private enter(entering: number, reduced: number): boolean {
    const { size, inverse, direction, amounts } = this;
    const { rows, entries } = this.columns[entering] as Column;
    direction.fill(0);
    for (let i = 0; i < rows.length; i++) {
      const column = rows[i] as number;
      const entry = entries[i] as number;
      for (let row = 0; row < size; row++) {
        (direction[row] as number) += (inverse[row * size + column] as number) * entry;
      }
    }
    let leaving = -1;
    let step = Number.POSITIVE_INFINITY;
    for (let row = 0; row < size; row++) {
      const along = direction[row] as number;
      if (along < EPSILON) continue;
      const ratio = Math.max(0, amounts[row] as number) / along;
      // Among rows that tie, the largest pivot keeps the inverse accurate.
      const ties = leaving >= 0 && Math.abs(ratio - step) <= EPSILON;
      if (ties ? along > (direction[leaving] as number) : ratio < step) {
        leaving = row;
        step = ratio;
      }
    }
    if (leaving < 0) return false;
    const pivot = direction[leaving] as number;
    const pivotRow = leaving * size;
    for (let i = 0; i < size; i++) {
      const entry = inverse[pivotRow + i] as number;
      if (entry === 0) continue;
      (this.duals[i] as number) += (reduced / pivot) * entry;
      inverse[pivotRow + i] = entry / pivot;
    }
    for (let row = 0; row < size; row++) {
      const along = direction[row] as number;
      if (row === leaving || along === 0) continue;
      (amounts[row] as number) -= along * step;
      const start = row * size;
      for (let i = 0; i < size; i++) {
        (inverse[start + i] as number) -= along * (inverse[pivotRow + i] as number);
      }
    }
    amounts[leaving] = step;
    this.basis[leaving] = entering;
    this.pivots += 1;
    return true;
  }
}
