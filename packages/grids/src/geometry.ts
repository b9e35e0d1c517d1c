/** Lengths nearer than this are the same length: sums of converted inches miss by rounding errors. */
export const SAME_MM = 1e-6;

/** A point on the panel, mm from the datum: the front-left corner seen from above. */
export interface Point {
  /** Along the grain, mm, −20 000 to 20 000. */
  readonly xMm: number;
  /** Across the grain, mm, −20 000 to 20 000. */
  readonly yMm: number;
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

/** A box square to the panel, grown all round: a rectangle is not grown, a circle is a point grown by its radius. */
export interface Box {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
  readonly radiusMm: number;
}

/** What a distance is measured to: a box, or the corners of a polygon. */
export type Outline = Box | readonly Point[];

/** From where to where across the grain a point goes over the seasons, mm: one and the same where it stays. */
export interface Way {
  readonly lowMm: number;
  readonly highMm: number;
}

/** The way over the seasons of a point that is at `yMm` on building day. */
export function wayOf(yMm: number, movement: Movement): Way {
  const armMm = (yMm - movement.fixedLineYMm) / 100;
  const shrunkMm = yMm - armMm * movement.shrinkPct;
  const swollenMm = yMm + armMm * movement.swellPct;
  return { lowMm: Math.min(shrunkMm, swollenMm), highMm: Math.max(shrunkMm, swollenMm) };
}

/** Distance from a box for a point that is `beyondX` and `beyondY` outside its sides, negative inside. */
export function fromSides(beyondX: number, beyondY: number): number {
  const outX = Math.max(0, beyondX);
  const outY = Math.max(0, beyondY);
  return Math.sqrt(outX * outX + outY * outY) + Math.min(0, Math.max(beyondX, beyondY));
}

/**
 * Least distance from a point on its way to a box, negative inside. For a round hole it is also the way to touching:
 * the distance less the radius is how far the hole may come nearer, or has to move away.
 */
export function distanceToBox(
  xMm: number,
  { lowMm, highMm }: Way,
  { x1, x2, y1, y2, radiusMm }: Box,
): number {
  // Along a straight line the distance never grows towards the middle of the box, so a way that passes it is nearest there.
  const beyondY = Math.max(y1 - highMm, lowMm - y2, (y1 - y2) / 2);
  return fromSides(Math.max(x1 - xMm, xMm - x2), beyondY) - radiusMm;
}

/** Places between `x1` and `x2`, `y1` and `y2`, mm. */
export interface Range {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
}
