/** Whether every figure is larger than the one before it. */
export const isRising = (figures: readonly number[]): boolean =>
  figures.every((figure, i) => figure > (figures[i - 1] ?? Number.NEGATIVE_INFINITY));
