import type { Shape, Spot } from './scene.ts';

/** How cut faces are told apart: the way that the lines rise, and how far they stand from each other. */
export interface Hatch {
  readonly rises: 'right' | 'left';
  readonly spacing: number;
}

/**
 * Hatching of a rectangle: narrow lines at 45° (ISO 128-50). Lines of neighbouring rectangles of one part run on from one
 * to the next, since all count from the corner of the sheet.
 */
export function hatching([x, y]: Spot, [width, height]: Spot, { rises, spacing }: Hatch): Shape[] {
  const step = spacing * Math.SQRT2;
  // Rising to the right on a sheet whose y points down: x + y stays the same along a line. To the left: x − y.
  const flip = rises === 'right' ? 1 : -1;
  const [low, high] = rises === 'right' ? [y, y + height] : [-y - height, -y];
  const first = Math.floor((x + low) / step) + 1;
  const last = Math.ceil((x + width + high) / step) - 1;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i): Shape => {
    const sum = (first + i) * step;
    const [from, to] = [Math.max(x, sum - high), Math.min(x + width, sum - low)];
    return { kind: 'line', from: [from, flip * (sum - from)], to: [to, flip * (sum - to)], line: 'thin' };
  });
}
