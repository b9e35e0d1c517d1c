import { textWidth } from '../drawing/lettering.ts';
import type { Holes } from '../plan/holes.ts';
import type { Point } from '../plan/place.ts';
import { type Box, distanceTo, meets } from './box.ts';

/** Text beside a mark, and the room that it takes. */
export interface Label {
  readonly text: string;
  readonly heightMm: number;
  readonly box: Box;
}

interface Rim extends Point {
  readonly radiusMm: number;
}

/** Between a label and a rim. */
const GAP_MM = 0.7;

const quadrants = [
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
] as const;

function boxBeside(
  { xMm, yMm, radiusMm }: Rim,
  text: string,
  heightMm: number,
  [sx, sy]: readonly [number, number],
): Box {
  const awayMm = radiusMm * Math.SQRT1_2 + GAP_MM;
  const widthMm = textWidth(text, heightMm);
  const left = xMm + (sx > 0 ? awayMm : -awayMm - widthMm);
  const front = yMm + (sy > 0 ? awayMm : -awayMm - heightMm);
  return { left, front, right: left + widthMm, back: front + heightMm };
}

/** Where the holes next to one are, or would be if none were left out. */
export const neighbours = (
  { xMm, yMm }: Point,
  { pitchXMm, pitchYMm, diameterMm }: Pick<Holes, 'pitchXMm' | 'pitchYMm' | 'diameterMm'>,
): Rim[] =>
  [-2, -1, 0, 1, 2].flatMap((along) =>
    [-1, 0, 1].flatMap((across) =>
      along === 0 && across === 0
        ? []
        : [{ xMm: xMm + along * pitchXMm, yMm: yMm + across * pitchYMm, radiusMm: diameterMm / 2 }],
    ),
  );

/** A label in one of the four corners beside a hole, as high as there is room for clear of everything else. */
export function labelBeside({
  hole,
  radiusMm,
  text,
  heights,
  near,
  taken,
}: {
  readonly hole: Point;
  readonly radiusMm: number;
  readonly text: string;
  readonly heights: readonly number[];
  readonly near: readonly Rim[];
  readonly taken: readonly Box[];
}): Label | null {
  for (const heightMm of heights) {
    for (const quadrant of quadrants) {
      const box = boxBeside({ ...hole, radiusMm }, text, heightMm, quadrant);
      const clear =
        near.every((rim) => distanceTo(box, rim) >= rim.radiusMm + GAP_MM) &&
        taken.every((other) => !meets(box, other));
      if (clear) return { text, heightMm, box };
    }
  }
  return null;
}
