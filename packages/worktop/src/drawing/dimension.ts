import type { Lettering, Shape, Spot } from './scene.ts';

/** Extension lines start this far from the object and end this far past the dimension line (ISO 129-1). */
const GAP = 1;
const PAST = 2;
/** Shorter than this, the arrowheads point inwards from outside. */
const SHORTEST_WITH_ARROWS_INSIDE = 8;
const LETTER_HEIGHT = 2.5;

export interface Dimension {
  readonly from: Spot;
  readonly to: Spot;
  readonly text: string;
}

function arrows(from: Spot, to: Spot): Shape[] {
  const distance = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (distance >= SHORTEST_WITH_ARROWS_INSIDE) {
    return [
      { kind: 'line', from, to, line: 'thin' },
      { kind: 'arrowhead', tip: from, towards: to },
      { kind: 'arrowhead', tip: to, towards: from },
    ];
  }
  const [ux, uy] = [(to[0] - from[0]) / distance, (to[1] - from[1]) / distance];
  const before: Spot = [from[0] - 5 * ux, from[1] - 5 * uy];
  const after: Spot = [to[0] + 5 * ux, to[1] + 5 * uy];
  return [
    { kind: 'line', from: before, to: after, line: 'thin' },
    { kind: 'arrowhead', tip: from, towards: before },
    { kind: 'arrowhead', tip: to, towards: after },
  ];
}

const lettering = (at: Spot, text: string, upwards: boolean): Lettering => ({
  kind: 'text',
  at,
  text,
  height: LETTER_HEIGHT,
  anchor: 'middle',
  ...(upwards ? { upwards: true as const } : {}),
});

/** A horizontal dimension whose line runs at height `y` on the sheet, the figure above it; none of no length. */
export function horizontalDimension({ from, to, text }: Dimension, y: number): Shape[] {
  if (from[0] === to[0]) return [];
  const side = Math.sign(y - from[1]);
  const extension = ([x, start]: Spot): Shape => ({
    kind: 'line',
    from: [x, start + side * GAP],
    to: [x, y + side * PAST],
    line: 'thin',
  });
  return [
    extension(from),
    extension(to),
    ...arrows([from[0], y], [to[0], y]),
    lettering([(from[0] + to[0]) / 2, y - 0.8], text, false),
  ];
}

/** A vertical dimension whose line runs at `x` on the sheet, the figure left of it, read from the right; none of no length. */
export function verticalDimension({ from, to, text }: Dimension, x: number): Shape[] {
  if (from[1] === to[1]) return [];
  const side = Math.sign(x - from[0]);
  const extension = ([start, y]: Spot): Shape => ({
    kind: 'line',
    from: [start + side * GAP, y],
    to: [x + side * PAST, y],
    line: 'thin',
  });
  return [
    extension(from),
    extension(to),
    ...arrows([x, from[1]], [x, to[1]]),
    lettering([x - 0.8, (from[1] + to[1]) / 2], text, true),
  ];
}
