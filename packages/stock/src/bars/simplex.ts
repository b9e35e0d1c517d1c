/** A column of a linear programme: its cost, and its entries by row. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly entries: readonly number[];
}

const EPSILON = 1e-9;

/**
 * A linear programme that grows by columns: least cost of x ≥ 0 with A x = b ≥ 0. It begins with one unit column for
 * each row, which is its first basis. Revised simplex method with the inverse of the basis kept in full.
 */
export class Simplex {
  /** What one more unit of each row costs. */
  readonly duals: Float64Array;
  /** Which column stands in each row of the basis, and how much of it. */
  readonly basis: Int32Array;
  readonly amounts: Float64Array;
  readonly columns: Column[];
  private readonly size: number;
  private readonly inverse: Float64Array;
  private readonly direction: Float64Array;

  constructor(rightHandSide: readonly number[], unitCosts: readonly number[]) {
    const size = rightHandSide.length;
    this.size = size;
    this.amounts = Float64Array.from(rightHandSide);
    this.duals = Float64Array.from(unitCosts);
    this.basis = Int32Array.from(rightHandSide, (_, row) => row);
    this.columns = unitCosts.map((cost, row) => ({ cost, rows: [row], entries: [1] }));
    this.inverse = new Float64Array(size * size);
    for (let row = 0; row < size; row++) this.inverse[row * size + row] = 1;
    this.direction = new Float64Array(size);
  }

  /** By how much one unit of a column would change the cost. */
  reducedCost({ cost, rows, entries }: Column): number {
    let reduced = cost;
    for (let i = 0; i < rows.length; i++) {
      reduced -= (this.duals[rows[i] as number] as number) * (entries[i] as number);
    }
    return reduced;
  }

  /** Gives the columns in the basis, and all others, new costs. */
  reprice(cost: (column: number) => number): void {
    for (const [i, column] of this.columns.entries()) this.columns[i] = { ...column, cost: cost(i) };
    this.duals.fill(0);
    for (let row = 0; row < this.size; row++) {
      const price = (this.columns[this.basis[row] as number] as Column).cost;
      if (price === 0) continue;
      for (let i = 0; i < this.size; i++) {
        (this.duals[i] as number) += price * (this.inverse[row * this.size + i] as number);
      }
    }
  }

  /** Lets columns enter until none lowers the cost, or the pivots run out; returns how many pivots it took. */
  optimise(mostPivots: number): number {
    for (let pivots = 0; pivots < mostPivots; pivots++) {
      let entering = -1;
      let least = -EPSILON;
      for (let i = 0; i < this.columns.length; i++) {
        const reduced = this.reducedCost(this.columns[i] as Column);
        if (reduced < least) {
          least = reduced;
          entering = i;
        }
      }
      if (entering < 0 || !this.enter(entering, least)) return pivots;
    }
    return mostPivots;
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
      if (entry !== 0) (this.duals[i] as number) += (reduced / pivot) * entry;
    }
    for (let i = 0; i < size; i++) (inverse[pivotRow + i] as number) /= pivot;
    for (let row = 0; row < size; row++) {
      const along = direction[row] as number;
      if (row === leaving || along === 0) continue;
      (amounts[row] as number) -= along * step;
      for (let i = 0; i < size; i++) {
        (inverse[row * size + i] as number) -= along * (inverse[pivotRow + i] as number);
      }
    }
    amounts[leaving] = step;
    this.basis[leaving] = entering;
    return true;
  }
}
