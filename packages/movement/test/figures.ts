/** Every number in a result, however deep. */
export function figuresIn(result: unknown): number[] {
  if (typeof result === 'number') return [result];
  return typeof result === 'object' && result !== null ? Object.values(result).flatMap(figuresIn) : [];
}

/** Whether a number may stand in a result: finite, and not −0. */
export const isPlain = (figure: number): boolean => Number.isFinite(figure) && !Object.is(figure, -0);
