/** A point on the top, mm from the datum: the front-left corner seen from above; x along the grain, y across it. */
export interface Point {
  readonly xMm: number;
  readonly yMm: number;
}

/** A rectangle seen from above, by its corner nearest the datum. */
export interface Rectangle extends Point {
  /** Along x, mm. */
  readonly lengthMm: number;
  /** Along y, mm. */
  readonly widthMm: number;
}

/** Something that holes must miss. */
export interface Obstacle extends Rectangle {
  readonly name: string;
  /**
   * Least distance that a hole's rim keeps from it in every season, mm. It has to cover what no plan knows: the error of
   * marking out and drilling, and the play of the screws in their slots.
   */
  readonly clearanceMm: number;
}

/** Left to the planner, which says what it chose and why. */
export type Open = 'choose';
