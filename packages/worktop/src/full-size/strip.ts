import { fitted } from '../drawing/lettering.ts';
import type { Lettering, Shape, Spot } from '../drawing/scene.ts';
import { STRIP_MM } from './tiling.ts';

/** Lengths that show whether a printer keeps to full size. */
const bars = [
  { lengthMm: 100, says: '100 mm', steps: 10 },
  { lengthMm: 4 * 25.4, says: '4 in', steps: 8 },
];
const LONGEST_BAR_MM = 4 * 25.4;
const CAPTION_MM = 14;
const GAP_MM = 4;
const LINE_MM = 3.9;

export const lettering = (
  [x, y]: Spot,
  text: string,
  height = 2.5,
  anchor: Lettering['anchor'] = 'start',
): Lettering => ({ kind: 'text', at: [x, y], text, height, anchor });

/** A bar that begins at a place, with a tick at each step and its length before it. */
function bar([x, y]: Spot, { lengthMm, says, steps }: (typeof bars)[number]): Shape[] {
  const ticks = Array.from({ length: steps + 1 }, (_, i): Shape => {
    const at = x + (i * lengthMm) / steps;
    const high = i === 0 || i === steps ? 4 : 2;
    return { kind: 'line', from: [at, y], to: [at, y - high], line: 'thin' };
  });
  return [
    { kind: 'line', from: [x, y], to: [x + lengthMm, y], line: 'thin' },
    ...ticks,
    lettering([x - 2, y], says, 2.5, 'end'),
  ];
}

/** The foot of a page, between two places from left to right: what the page is, and the bars to check it by. */
export function strip(left: number, right: number, top: number, lines: readonly string[]): Shape[] {
  const barLeft = right - LONGEST_BAR_MM;
  const room = barLeft - CAPTION_MM - GAP_MM - left;
  return [
    ...bars.flatMap((one, i) => bar([barLeft, top + (STRIP_MM * (i + 1)) / 2 - 2], one)),
    ...lines.map((line, i) => lettering([left, top + 3.9 + i * LINE_MM], fitted(line, 2.5, room))),
  ];
}
