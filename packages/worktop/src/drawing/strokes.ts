import { DASHED_MM, LONG_DASH_DOT_MM, NARROW_MM, WIDE_MM } from '@scantling/grids/export';
import type { Line, Spot } from './scene.ts';

/** How a line is drawn. */
export interface Pen {
  readonly widthMm: number;
  /** Dashes and gaps by turns, mm; none for a line that runs through. */
  readonly dashesMm: readonly number[];
}

export const pens: Readonly<Record<Line, Pen>> = {
  outline: { widthMm: WIDE_MM, dashesMm: [] },
  hidden: { widthMm: NARROW_MM, dashesMm: DASHED_MM },
  centre: { widthMm: NARROW_MM, dashesMm: LONG_DASH_DOT_MM },
  thin: { widthMm: NARROW_MM, dashesMm: [] },
};

const ARROW_LENGTH = 3;
const ARROW_HALF_WIDTH = 0.4;

/** The three corners of an arrowhead that points from `towards` to its tip. */
export function arrowheadCorners(tip: Spot, towards: Spot): [Spot, Spot, Spot] {
  const [dx, dy] = [tip[0] - towards[0], tip[1] - towards[1]];
  const length = Math.hypot(dx, dy);
  const [ux, uy] = [dx / length, dy / length];
  const [bx, by] = [tip[0] - ux * ARROW_LENGTH, tip[1] - uy * ARROW_LENGTH];
  const [wx, wy] = [-uy * ARROW_HALF_WIDTH, ux * ARROW_HALF_WIDTH];
  return [tip, [bx + wx, by + wy], [bx - wx, by - wy]];
}
