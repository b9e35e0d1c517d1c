/** A point on the panel, mm from the datum: the front-left corner seen from above. */
export interface Point {
  /** Along the grain, mm, −20 000 to 20 000. */
  readonly xMm: number;
  /** Across the grain, mm, −20 000 to 20 000. */
  readonly yMm: number;
}

/** A rectangle square to the panel, by its corner nearest to the datum. */
export interface Rectangle extends Point {
  /** Along x, mm, 0 to 20 000. */
  readonly lengthMm: number;
  /** Along y, mm, 0 to 20 000. */
  readonly widthMm: number;
}

/** How the panel moves across the grain over the seasons, seen from a base that stays. */
export interface Movement {
  /** Where the panel is held, mm from the datum, −20 000 to 20 000: it moves away from there on both sides. */
  readonly fixedLineYMm: number;
  /** Most that it shrinks from its size on building day, % of that size, 0 to 20. */
  readonly shrinkPct: number;
  /** Most that it swells from its size on building day, % of that size, 0 to 20. */
  readonly swellPct: number;
}

/**
 * Distance from a point to a rectangle's outline, negative inside. For a round hole it is also the way to touching:
 * the distance less the radius is how far the hole may come nearer, or has to move away.
 */
export function distanceToRectangle(xMm: number, yMm: number, rectangle: Rectangle): number {
  const beyondX = Math.max(rectangle.xMm - xMm, xMm - rectangle.xMm - rectangle.lengthMm);
  const beyondY = Math.max(rectangle.yMm - yMm, yMm - rectangle.yMm - rectangle.widthMm);
  return Math.hypot(Math.max(0, beyondX), Math.max(0, beyondY)) + Math.min(0, Math.max(beyondX, beyondY));
}

/**
 * The y at which a point of the panel, on its way over the seasons, comes nearest to a rectangle of the base. Along a
 * line in y the distance never grows towards the rectangle's middle, so it is the y of the way nearest to the middle.
 */
export function nearestOnTheWay(yMm: number, rectangle: Rectangle, movement: Movement): number {
  const armMm = (yMm - movement.fixedLineYMm) / 100;
  const shrunkMm = yMm - armMm * movement.shrinkPct;
  const swollenMm = yMm + armMm * movement.swellPct;
  const middleMm = rectangle.yMm + rectangle.widthMm / 2;
  return Math.max(Math.min(shrunkMm, swollenMm), Math.min(Math.max(shrunkMm, swollenMm), middleMm));
}
