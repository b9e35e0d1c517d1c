/** What a planner answers, or `null` where it refuses: what the plan holds is checked, so that it asks the impossible. */
export function answerOf<T>(planner: string, compute: () => T): T | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof RangeError && error.message.startsWith(`${planner} requires `)) return null;
    throw error;
  }
}

/** A sum of prices without the noise of adding them, to a ten-thousandth. */
export const inMoney = (price: number): number => Math.round(price * 1e4) / 1e4;
