import type { HoleGrid, KeepOut, Panel, Point, Shape } from '../../src/index.ts';
import { area } from '../shapes.ts';

/** The corners of a shape that is not round: turned by a geometry library, a band as the part that lies on the panel. */
export function cornersOnPaper(shape: Exclude<Shape, { shape: 'circle' }>, panel: Panel): Point[] {
  if (shape.shape === 'polygon') return [...shape.corners];
  if (shape.shape === 'rectangle') {
    return area(shape, panel).vertices.map(({ x, y }) => ({ xMm: x, yMm: y }));
  }
  const { lengthMm, widthMm } = panel;
  const along = Math.min(shape.widthMm, lengthMm);
  const across = Math.min(shape.widthMm, widthMm);
  const [x1, y1, x2, y2] = {
    'left edge': [0, 0, along, widthMm],
    'right edge': [lengthMm - along, 0, lengthMm, widthMm],
    'front edge': [0, 0, lengthMm, across],
    'back edge': [0, widthMm - across, lengthMm, widthMm],
  }[shape.edge] as [number, number, number, number];
  return [
    { xMm: x1, yMm: y1 },
    { xMm: x2, yMm: y1 },
    { xMm: x2, yMm: y2 },
    { xMm: x1, yMm: y2 },
  ];
}

/** Whether two closed outlines are the same, wherever each begins and whichever way round it goes. */
export function sameOutline(a: readonly Point[], b: readonly Point[], toleranceMm: number): boolean {
  const near = (p: Point | undefined, q: Point | undefined) =>
    p !== undefined &&
    q !== undefined &&
    Math.abs(p.xMm - q.xMm) <= toleranceMm &&
    Math.abs(p.yMm - q.yMm) <= toleranceMm;
  const matches = (other: readonly Point[]) =>
    other.some((_, start) => a.every((corner, i) => near(corner, other[(start + i) % other.length])));
  return a.length === b.length && a.length >= 3 && (matches(b) || matches([...b].reverse()));
}

/** The bindery bench, its keep-outs as they go into a layout; all coordinates are easily reckoned. */
export const bench = {
  panel: { lengthMm: 600, widthMm: 400 },
  ...{ pitchXMm: 96, pitchYMm: 96, firstHole: { xMm: 60, yMm: 56 }, holeDiameterMm: 20, edgeMarginMm: 30 },
  keepOuts: [
    { shape: 'circle', id: 'clamp screw', xMm: 300, yMm: 200, diameterMm: 30 },
    { shape: 'band', id: 'back rail', edge: 'back edge', widthMm: 35 },
    { shape: 'rectangle', id: 'leg', xMm: 500, yMm: 100, lengthMm: 40, widthMm: 60, angleDeg: 90 },
    { shape: 'rectangle', id: 'strip', xMm: 0, yMm: 20, lengthMm: 250, widthMm: 18 },
    {
      ...{ shape: 'polygon', id: 'bracket' },
      corners: [
        { xMm: 400, yMm: 300 },
        { xMm: 450, yMm: 300 },
        { xMm: 400, yMm: 350 },
      ],
    },
    { shape: 'circle', id: 'nail', xMm: 100, yMm: 300, diameterMm: 0 },
  ].map((shape) => ({ ...shape, clearanceMm: 10, belongsTo: 'base' }) as KeepOut),
} satisfies HoleGrid;
