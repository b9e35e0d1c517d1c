import { textWidth } from './lettering.ts';
import type { Lettering, Shape, Spot } from './scene.ts';

/** Extension lines start this far from the object and end this far past the dimension line (ISO 129-1). */
const GAP = 1;
const PAST = 2;
/** Room that two arrowheads need between them; with less, they point inwards from outside. */
const LEAST_FOR_ARROWS = 8;
const OUTSIDE_ARROW = 5;
const LETTER_HEIGHT = 2.5;
/** From a text to what stands beside it. */
const SPACE = 1;
/** Nothing reaches higher on the sheet, counted upwards from its upper edge: the frame is there. */
const HIGHEST = -12;
/** From one dimension line to the next. */
const STEP = 8;

/** A length along one direction of the sheet, between two places that ascend, and its figure. */
export interface Dimension {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Where dimensions run: the edge of the object that their extension lines leave, and the first dimension line. */
export interface DimensionSide {
  /** Along: to the right under the object, or upwards on its left. */
  readonly reads: 'right' | 'upwards';
  /** Height on the sheet where it reads to the right, distance from its left where it reads upwards. */
  readonly edge: number;
  readonly firstLine: number;
}

/** How a dimension is drawn where it has the room that it has. */
function laidOut({ from, to, text }: Dimension, reads: DimensionSide['reads']) {
  const width = textWidth(text, LETTER_HEIGHT);
  const arrowsInside = to - from >= LEAST_FOR_ARROWS;
  const textInside = to - from >= width + 2 * SPACE;
  const start = arrowsInside ? from : from - OUTSIDE_ARROW;
  const end = arrowsInside ? to : to + OUTSIDE_ARROW;
  // Away from the datum's corner on one side, towards it on the other: the two never meet there.
  const before = start - SPACE - width;
  const after = end + SPACE;
  const textOutside = reads === 'right' || after + width > HIGHEST ? before : after;
  const textStart = textInside ? (from + to - width) / 2 : textOutside;
  const line = [Math.min(start, textStart), Math.max(end, textStart + width)] as const;
  return { arrowsInside, textStart, line };
}

/**
 * Dimensions on one side of an object, each on the nearest line to it where no other is in the way: shorter ones first,
 * so that longer ones pass outside of them. One of no length is left out.
 */
export function dimensionShapes(dimensions: readonly Dimension[], side: DimensionSide): Shape[] {
  const lines: (readonly [number, number])[][] = [];
  return dimensions
    .filter(({ from, to }) => to > from)
    .sort((a, b) => a.to - a.from - (b.to - b.from))
    .flatMap((dimension) => {
      const { line: taken } = laidOut(dimension, side.reads);
      const free = lines.findIndex((others) =>
        others.every(([start, end]) => taken[0] >= end || taken[1] <= start),
      );
      const level = free < 0 ? lines.length : free;
      lines[level] = [...(lines[level] ?? []), taken];
      return oneDimension(dimension, side, level);
    });
}

function oneDimension(
  dimension: Dimension,
  { reads, edge, firstLine }: DimensionSide,
  level: number,
): Shape[] {
  const { from, to, text } = dimension;
  const { arrowsInside, textStart, line: drawn } = laidOut(dimension, reads);
  const away = Math.sign(firstLine - edge);
  const line = firstLine + away * level * STEP;
  // Upwards on the sheet is where y shrinks.
  const spot = (along: number, across: number): Spot =>
    reads === 'right' ? [along, across] : [across, -along];
  const extension = (along: number): Shape => ({
    kind: 'line',
    from: spot(along, edge + away * GAP),
    to: spot(along, line + away * PAST),
    line: 'thin',
  });
  const arrow = (tip: number, towards: number): Shape => ({
    kind: 'arrowhead',
    tip: spot(tip, line),
    towards: spot(towards, line),
  });
  const lettering: Lettering = {
    kind: 'text',
    at: spot(textStart, line - 0.8),
    text,
    height: LETTER_HEIGHT,
    anchor: 'start',
    ...(reads === 'upwards' ? { upwards: true as const } : {}),
  };
  return [
    extension(from),
    extension(to),
    { kind: 'line', from: spot(drawn[0], line), to: spot(drawn[1], line), line: 'thin' },
    arrow(from, arrowsInside ? to : from - 1),
    arrow(to, arrowsInside ? from : to + 1),
    lettering,
  ];
}
