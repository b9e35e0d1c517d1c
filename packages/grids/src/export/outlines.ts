import { checkShape } from '../check-shape.ts';
import type { Point } from '../geometry.ts';
import { MOST_KEEP_OUTS } from '../limits.ts';
import { type CircleShape, outlineOf, type Panel, type Shape } from '../shape.ts';
import { type BoredPanel, requireBoredPanel, requireItems, requireText } from './bored-panel.ts';

/** Throws unless a panel, its holes and its keep-outs can be drawn. */
export function requireDrawable(caller: string, input: BoredPanel): void {
  requireBoredPanel(caller, input);
  const { keepOuts } = input;
  if (keepOuts === undefined) return;
  requireItems(caller, 'keepOuts', keepOuts, 0, MOST_KEEP_OUTS);
  for (const [i, keepOut] of keepOuts.entries()) {
    requireText(caller, `keepOuts[${i}].id`, keepOut?.id);
    checkShape(caller, `keepOuts[${i}]`, keepOut);
  }
}

/** The corners of what there is to draw of a shape; a band ends where the panel does. */
export function cornersOf(shape: Exclude<Shape, CircleShape>, panel: Panel): readonly Point[] {
  const outline = outlineOf(shape, panel);
  if (!('x1' in outline)) return outline;
  const drawn = (mm: number, sideMm: number) =>
    shape.shape === 'band' ? Math.min(sideMm, Math.max(0, mm)) : mm;
  const [x1, x2] = [drawn(outline.x1, panel.lengthMm), drawn(outline.x2, panel.lengthMm)];
  const [y1, y2] = [drawn(outline.y1, panel.widthMm), drawn(outline.y2, panel.widthMm)];
  return [
    { xMm: x1, yMm: y1 },
    { xMm: x2, yMm: y1 },
    { xMm: x2, yMm: y2 },
    { xMm: x1, yMm: y2 },
  ];
}

/** The least upright rectangle that holds the panel, every hole and every keep-out. */
export function extentOf({ panel, holes, keepOuts = [] }: BoredPanel): {
  readonly low: Point;
  readonly high: Point;
} {
  const low = { xMm: 0, yMm: 0 };
  const high = { xMm: panel.lengthMm, yMm: panel.widthMm };
  const take = ({ xMm, yMm }: Point, radiusMm: number) => {
    low.xMm = Math.min(low.xMm, xMm - radiusMm);
    low.yMm = Math.min(low.yMm, yMm - radiusMm);
    high.xMm = Math.max(high.xMm, xMm + radiusMm);
    high.yMm = Math.max(high.yMm, yMm + radiusMm);
  };
  for (const hole of holes) take(hole, hole.diameterMm / 2);
  for (const keepOut of keepOuts) {
    if (keepOut.shape === 'circle') take(keepOut, keepOut.diameterMm / 2);
    else for (const corner of cornersOf(keepOut, panel)) take(corner, 0);
  }
  return { low, high };
}
