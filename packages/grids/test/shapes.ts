import { Box, Polygon, point, circle as roundOf } from '@flatten-js/core';
import fc from 'fast-check';
import type { KeepIn, KeepOut, Panel, RectangleShape, Shape } from '../src/index.ts';

// Keep-outs of every shape, and the same to a general geometry library.

/** Whole and half millimetres, so that touching happens. */
export const mm = (min: number, max: number) =>
  fc.integer({ min: min * 2, max: max * 2 }).map((halves) => halves / 2);

const place = { xMm: mm(-100, 800), yMm: mm(-100, 600) };

const rectangle = fc.record({
  shape: fc.constant('rectangle' as const),
  ...place,
  lengthMm: mm(1, 600),
  widthMm: mm(1, 300),
});

const turned = fc
  .tuple(rectangle, fc.integer({ min: -180, max: 180 }))
  .map(([one, angleDeg]) => ({ ...one, angleDeg }));

const circle = fc.record({ shape: fc.constant('circle' as const), ...place, diameterMm: mm(0, 200) });

/** Corners in the order of their direction from a middle: sides never cross, and many are not convex. */
const polygon = fc
  .record({ ...place, reaches: fc.array(mm(5, 200), { minLength: 3, maxLength: 8 }) })
  .map(({ xMm, yMm, reaches }) => ({
    shape: 'polygon' as const,
    corners: reaches.map((reach, i) => ({
      xMm: xMm + reach * Math.cos((2 * Math.PI * i) / reaches.length),
      yMm: yMm + reach * Math.sin((2 * Math.PI * i) / reaches.length),
    })),
  }));

const band = fc.record({
  shape: fc.constant('band' as const),
  edge: fc.constantFrom('left edge', 'right edge', 'front edge', 'back edge'),
  widthMm: mm(0, 150),
});

export const shapeArb: fc.Arbitrary<Shape> = fc.oneof(rectangle, turned, circle, polygon, band);

export const keepOutsArb: fc.Arbitrary<KeepOut[]> = fc
  .array(
    fc.record({
      shape: shapeArb,
      clearanceMm: mm(0, 30),
      belongsTo: fc.constantFrom('top' as const, 'strip' as const, 'base' as const),
    }),
    { maxLength: 5 },
  )
  .map((list) => list.map(({ shape, ...terms }, i) => ({ ...shape, ...terms, id: `keep-out ${i + 1}` })));

export const keepInArb: fc.Arbitrary<KeepIn> = fc.record({
  id: fc.constant('where holes may be'),
  clearanceMm: mm(0, 10),
  areas: fc.array(shapeArb, { minLength: 1, maxLength: 3 }),
});

/** A rectangle by its corners, reckoned by the geometry library; any other shape as it is. */
export function asPolygon<S extends Shape>(shape: S): S {
  if (shape.shape !== 'rectangle') return shape;
  const { vertices } = area(shape, { lengthMm: 1, widthMm: 1 });
  const {
    xMm: _,
    yMm: __,
    lengthMm: ___,
    widthMm: ____,
    angleDeg: _____,
    ...terms
  } = shape as S & RectangleShape;
  return {
    ...terms,
    shape: 'polygon',
    corners: vertices.map(({ x, y }) => ({ xMm: x, yMm: y })),
  } as unknown as S;
}

const FAR = 1e5;

/** The area of a shape in the library, a band as a very long box. */
export function area(shape: Exclude<Shape, { shape: 'circle' }>, { lengthMm, widthMm }: Panel): Polygon {
  if (shape.shape === 'polygon') return new Polygon(shape.corners.map(({ xMm, yMm }) => point(xMm, yMm)));
  if (shape.shape === 'rectangle') {
    const { xMm, yMm, angleDeg = 0 } = shape;
    const box = new Polygon(new Box(xMm, yMm, xMm + shape.lengthMm, yMm + shape.widthMm));
    return box.rotate((angleDeg * Math.PI) / 180, point(xMm, yMm));
  }
  const inwards = shape.widthMm;
  const boxes = {
    'left edge': new Box(-FAR, -FAR, inwards, FAR),
    'right edge': new Box(lengthMm - inwards, -FAR, FAR, FAR),
    'front edge': new Box(-FAR, -FAR, FAR, inwards),
    'back edge': new Box(-FAR, widthMm - inwards, FAR, FAR),
  };
  return new Polygon(boxes[shape.edge]);
}

/** Signed distance of a point by the library: to the outline, negative inside. */
export function byLibrary(xMm: number, yMm: number, shape: Shape, panel: Panel): number {
  const from = point(xMm, yMm);
  if (shape.shape === 'circle') {
    const [toMiddle] = from.distanceTo(roundOf(point(shape.xMm, shape.yMm), 0).center);
    return toMiddle - shape.diameterMm / 2;
  }
  const outline = area(shape, panel);
  const [away] = from.distanceTo(outline);
  return outline.contains(from) ? -away : away;
}

const opposite = {
  'left edge': 'right edge',
  'right edge': 'left edge',
  'front edge': 'back edge',
  'back edge': 'front edge',
} as const;

/** A shape turned by half a turn about the middle of the panel. */
export function halfTurned<S extends Shape>(shape: S, { lengthMm, widthMm }: Panel): S {
  if (shape.shape === 'band') return { ...shape, edge: opposite[shape.edge] };
  if (shape.shape === 'polygon') {
    const corners = shape.corners.map(({ xMm, yMm }) => ({ xMm: lengthMm - xMm, yMm: widthMm - yMm }));
    return { ...shape, corners };
  }
  const corner = { xMm: lengthMm - shape.xMm, yMm: widthMm - shape.yMm };
  if (shape.shape === 'circle') return { ...shape, ...corner };
  const { angleDeg } = shape;
  if (angleDeg) return { ...shape, ...corner, angleDeg: angleDeg > 0 ? angleDeg - 180 : angleDeg + 180 };
  return { ...shape, xMm: corner.xMm - shape.lengthMm, yMm: corner.yMm - shape.widthMm };
}
