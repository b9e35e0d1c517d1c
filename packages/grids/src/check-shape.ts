import { requireChoice, requireFields, requireThat } from '@scantling/rules';
import type { Point } from './geometry.ts';
import { distance, place } from './limits.ts';
import { edges } from './obstacles.ts';
import { sidesOf } from './outline-distances.ts';
import type { Shape } from './shape.ts';

const MOST_CORNERS = 100;

/** Twice the area of a triangle: positive where its corners turn left. */
const turn = (a: Point, b: Point, c: Point) =>
  (b.xMm - a.xMm) * (c.yMm - a.yMm) - (b.yMm - a.yMm) * (c.xMm - a.xMm);

/** Whether two sides run through each other. */
const cross = ([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]) =>
  turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;

function checkCorners(caller: string, path: string, corners: readonly Point[]): void {
  requireThat(caller, Array.isArray(corners), `${path} to be a list, got ${typeof corners}`);
  const { length } = corners;
  const counted = length >= 3 && length <= MOST_CORNERS;
  requireThat(caller, counted, `${path} to hold 3 to ${MOST_CORNERS} corners, got ${length}`);
  for (const [i, corner] of corners.entries()) {
    requireFields(caller, `${path}[${i}]`, corner, { xMm: place, yMm: place });
  }
  const sides = sidesOf(corners);
  const crossing = sides.findIndex((side, i) => sides.slice(0, i).some((other) => cross(side, other)));
  requireThat(
    caller,
    crossing < 0,
    `${path} with sides that do not cross, got one that does before corner ${crossing}`,
  );
}

/** Throws where a shape is none, naming the field. */
export function checkShape(caller: string, path: string, shape: Shape): void {
  requireChoice(caller, `${path}.shape`, shape?.shape, ['rectangle', 'circle', 'polygon', 'band']);
  if (shape.shape === 'polygon') checkCorners(caller, `${path}.corners`, shape.corners);
  if (shape.shape === 'band') {
    requireChoice(caller, `${path}.edge`, shape.edge, edges);
    requireFields(caller, path, shape, { widthMm: distance });
  }
  if (shape.shape === 'circle') {
    requireFields(caller, path, shape, { xMm: place, yMm: place, diameterMm: distance });
  }
  if (shape.shape === 'rectangle') {
    const turned = shape.angleDeg === undefined ? {} : { angleDeg: { min: -180, max: 180 } };
    requireFields(caller, path, shape, {
      xMm: place,
      yMm: place,
      lengthMm: distance,
      widthMm: distance,
      ...turned,
    });
  }
}
