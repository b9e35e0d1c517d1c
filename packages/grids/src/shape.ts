import type { Box, Outline, Point } from './geometry.ts';

/** A rectangle, by its corner nearest to the datum before it is turned. */
export interface RectangleShape extends Point {
  readonly shape: 'rectangle';
  /** Along x before it is turned, mm, 0 to 20 000. */
  readonly lengthMm: number;
  /** Along y before it is turned, mm, 0 to 20 000. */
  readonly widthMm: number;
  /** Turned about its corner, anticlockwise seen from above, −180° to 180°; left out, it is square to the panel. */
  readonly angleDeg?: number;
}

/** A circle, by its centre. */
export interface CircleShape extends Point {
  readonly shape: 'circle';
  /** Across, mm, 0 to 20 000. */
  readonly diameterMm: number;
}

/** Straight sides from corner to corner and back to the first; sides may not cross. */
export interface PolygonShape {
  readonly shape: 'polygon';
  /** 3 to 100, either way round. */
  readonly corners: readonly Point[];
}

/** One of the panel's edges, seen from above with the datum at the front left. */
export type Edge = 'left edge' | 'right edge' | 'front edge' | 'back edge';

/** Everything nearer to an edge of the panel than its width. */
export interface BandShape {
  readonly shape: 'band';
  readonly edge: Edge;
  /** From the edge inwards, mm, 0 to 20 000. */
  readonly widthMm: number;
}

/** Where something is, mm from the datum on building day. */
export type Shape = RectangleShape | CircleShape | PolygonShape | BandShape;

/** A panel, its grain along x. */
export interface Panel {
  /** Along the grain, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** Across the grain, mm, 1 to 20 000. */
  readonly widthMm: number;
}

export const everywhere: Box = { x1: -Infinity, x2: Infinity, y1: -Infinity, y2: Infinity, radiusMm: 0 };

/** Everything beyond a line that is `inwardsMm` from an edge of the panel. */
export function beyondEdge(edge: Edge, { lengthMm, widthMm }: Panel, inwardsMm = 0): Box {
  if (edge === 'left edge') return { ...everywhere, x2: inwardsMm };
  if (edge === 'right edge') return { ...everywhere, x1: lengthMm - inwardsMm };
  if (edge === 'front edge') return { ...everywhere, y2: inwardsMm };
  return { ...everywhere, y1: widthMm - inwardsMm };
}

function turned({ xMm, yMm, lengthMm, widthMm }: RectangleShape, angleDeg: number): Point[] {
  const [cos, sin] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
  const sides: readonly (readonly [number, number])[] = [
    [0, 0],
    [lengthMm, 0],
    [lengthMm, widthMm],
    [0, widthMm],
  ];
  return sides.map(([x, y]) => ({ xMm: xMm + x * cos - y * sin, yMm: yMm + x * sin + y * cos }));
}

/** A shape as distances are measured to it. */
export function outlineOf(shape: Shape, panel: Panel): Outline {
  if (shape.shape === 'band') return beyondEdge(shape.edge, panel, shape.widthMm);
  if (shape.shape === 'polygon') return shape.corners;
  const { xMm: x1, yMm: y1 } = shape;
  if (shape.shape === 'circle') return { x1, x2: x1, y1, y2: y1, radiusMm: shape.diameterMm / 2 };
  const { lengthMm, widthMm, angleDeg = 0 } = shape;
  if (angleDeg !== 0) return turned(shape, angleDeg);
  return { x1, x2: x1 + lengthMm, y1, y2: y1 + widthMm, radiusMm: 0 };
}
