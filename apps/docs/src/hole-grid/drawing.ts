import type { Drawing, Say } from '../calculator/calculation.ts';
import { type Piece, piece } from '../calculator/piece.ts';
import { dimension } from '../drawing/dimension.ts';
import { datumMark, label } from '../drawing/marks.ts';
import { SHEET_WIDTH, short, viewOf } from '../drawing/sheet.ts';
import type { Grid, GridHole, Place } from './layout.ts';

const LEFT = 64;
const RIGHT = 44;
const TOP = 38;
const BELOW = 88;
const MOST_HEIGHT = 460;
/** A finger finds a first hole of this radius on the sheet. */
const FINGER = 14;

/** What stands on the drawing for a member. */
export const letterOf = (i: number): string => String.fromCharCode(65 + i);

const circles = (holes: readonly Place[], radius: number) =>
  holes
    .map(({ xMm, yMm }) => {
      const turn = `a${short(radius)} ${short(radius)} 0 0 1`;
      return `M${short(xMm - radius)} ${short(yMm)}${turn} ${short(2 * radius)} 0${turn} ${short(-2 * radius)} 0`;
    })
    .join('');

const crosses = (holes: readonly Place[], radius: number) => {
  const half = short(radius * 0.7);
  const side = short(radius * 1.4);
  return holes
    .map(
      ({ xMm, yMm }) =>
        `M${short(xMm)} ${short(yMm)}m-${half} -${half}l${side} ${side}m0 -${side}l-${side} ${side}`,
    )
    .join('');
};

/** The top from above with the base beneath it; what is in millimetres lies in one group that can be dragged in. */
export function drawGrid(
  { lengthMm, widthMm, holeDiameterMm, pitchXMm, pitchYMm, members }: Grid,
  { columns, rows, holes }: { columns: number; rows: number; holes: readonly GridHole[] },
  tightest: GridHole | undefined,
  draggable: boolean,
  say: Say,
): Drawing {
  const first = holes[0] as Place;
  const kept = holes.filter(({ conflicts }) => conflicts.length === 0);
  const lost = holes.filter(({ conflicts }) => conflicts.length > 0);
  const width = SHEET_WIDTH - LEFT - RIGHT;
  const height = Math.min(MOST_HEIGHT, (width * widthMm) / lengthMm);
  const { at, scale, transform } = viewOf({ left: LEFT, top: TOP, width, height }, 0, 0, lengthMm, widthMm);
  const radius = holeDiameterMm / 2;
  const lastX = first.xMm + (columns - 1) * pitchXMm;
  const lastY = first.yMm + (rows - 1) * pitchYMm;
  const past = radius + 6 / scale;
  const columnLines = Array.from(
    { length: columns },
    (_, i) => `M${short(first.xMm + i * pitchXMm)} ${short(first.yMm - past)}V${short(lastY + past)}`,
  );
  const rowLines = Array.from(
    { length: rows },
    (_, i) => `M${short(first.xMm - past)} ${short(first.yMm + i * pitchYMm)}H${short(lastX + past)}`,
  );
  const memberPieces = members.map(({ xMm, yMm, lengthMm, widthMm, clearanceMm }, i): Piece[] => [
    piece('rect', {
      class: 'zone',
      x: short(xMm - clearanceMm),
      y: short(yMm - clearanceMm),
      width: short(lengthMm + 2 * clearanceMm),
      height: short(widthMm + 2 * clearanceMm),
      rx: short(clearanceMm),
    }),
    piece('rect', {
      class: 'behind member',
      x: short(xMm),
      y: short(yMm),
      width: short(lengthMm),
      height: short(widthMm),
      'data-drag-x': `members.${i}.xMm`,
      'data-drag-y': `members.${i}.yMm`,
    }),
  ]);
  const letters = members.map(({ xMm, yMm, lengthMm, widthMm }, i) => {
    const [x, y] = at(xMm + lengthMm / 2, yMm + widthMm / 2);
    return label([x, y + 5], letterOf(i), 'middle', 'over');
  });
  const beside = ([x, y]: readonly [number, number]) => [x + 8 + radius * scale, y - 6] as const;
  const chain = (many: number, pitchMm: number) => `${many - 1} × ${say(pitchMm)}`;
  return {
    title: `The top from above, front edge below: ${columns} by ${rows} holes, ${kept.length} of them clear of ${members.length} members of the base${lost.length > 0 ? `, ${lost.length} crossed out` : ''}.`,
    box: [0, 0, SHEET_WIDTH, TOP + height + BELOW],
    shapes: [
      piece(
        'g',
        { transform },
        piece('rect', { class: 'wood outline', width: short(lengthMm), height: short(widthMm) }),
        memberPieces.flat(),
        piece('path', { class: 'centre', d: [...columnLines, ...rowLines].join('') }),
        piece('path', { class: 'hole', d: circles(kept, radius) }),
        piece('path', { class: 'lost', d: circles(lost, radius) + crosses(lost, radius) }),
        tightest && piece('path', { class: 'tightest', d: circles([tightest], radius + 4 / scale) }),
        draggable &&
          piece('circle', {
            class: 'first',
            cx: short(first.xMm),
            cy: short(first.yMm),
            r: short(Math.max(radius, FINGER / scale)),
            'data-drag-x': 'firstXMm',
            'data-drag-y': 'firstYMm',
          }),
      ),
      ...letters,
      tightest &&
        label(
          beside(at(tightest.xMm, tightest.yMm)),
          say(tightest.nearest.clearanceMm),
          'start',
          'over alarm',
        ),
      columns > 1 && dimension(at(first.xMm, widthMm), at(lastX, widthMm), -20, chain(columns, pitchXMm)),
      rows > 1 && dimension(at(lengthMm, first.yMm), at(lengthMm, lastY), 24, chain(rows, pitchYMm)),
      dimension(at(0, 0), at(first.xMm, 0), 26, say(first.xMm)),
      dimension(at(0, 0), at(lengthMm, 0), 54, say(lengthMm)),
      dimension(at(0, 0), at(0, first.yMm), -24, say(first.yMm)),
      dimension(at(0, 0), at(0, widthMm), -50, say(widthMm)),
      datumMark(at(0, 0)),
      label(
        [SHEET_WIDTH - RIGHT, TOP + height + 78],
        'from above, front edge below, grain ↔',
        'end',
        'remark',
      ),
    ].filter((shape) => typeof shape === 'object'),
  };
}
