import type { Range } from './geometry.ts';

/** No side is more times as long as the other: the middle of a sliver says little about its ends. */
const SLIVER = 32;

/** A range halved along the grain and across it, the longer side first; a sliver only across its length. */
export function halvings({ x1, x2, y1, y2 }: Range): readonly (readonly [Range, Range])[] {
  const [x, y] = [(x1 + x2) / 2, (y1 + y2) / 2];
  const along = [
    { x1, x2: x, y1, y2 },
    { x1: x, x2, y1, y2 },
  ] as const;
  const across = [
    { x1, x2, y1, y2: y },
    { x1, x2, y1: y, y2 },
  ] as const;
  const [longer, shorter] = x2 - x1 >= y2 - y1 ? [along, across] : [across, along];
  const sliver = Math.max(x2 - x1, y2 - y1) > SLIVER * Math.min(x2 - x1, y2 - y1);
  return sliver ? [longer] : [longer, shorter];
}
