/** Width of a top in the drawing on the home page, whatever it measures. */
export const PX_PER_TOP = 380;
export const TOP_LEFT = 90;

/** The movement of tops is a hundredth of their width or so: it is drawn so many times larger, and at most so far. */
const ENLARGED = 5;
const MOST_PX = 45;

/** Where the edges of a top held in its middle lie after a change in width, in the drawing. */
export function movedEdges(widthMm: number, changeMm: number): { x: number; width: number } {
  const grown = widthMm > 0 ? (changeMm / widthMm) * PX_PER_TOP * ENLARGED : 0;
  const half = Math.max(-MOST_PX, Math.min(MOST_PX, grown / 2));
  return { x: TOP_LEFT - half, width: PX_PER_TOP + 2 * half };
}

/** The leader line from the moved edge to the figure of the change. */
export const leader = (edge: number): string => `M${edge} 134V192H${TOP_LEFT + PX_PER_TOP - 52}`;
