import { fitted, textWidth } from '../drawing/lettering.ts';
import type { Lettering, Shape, Spot } from '../drawing/scene.ts';
import { dimensionText } from '../lengths.ts';
import type { Paper } from '../pdf.ts';
import { linesOf } from '../work-sheet/paragraph.ts';
import type { Content } from './content.ts';
import { lettering, strip } from './strip.ts';
import { seamsX, seamsY, type Tiling, tileBox } from './tiling.ts';

/** Room for the numbers of columns and rows beside the map. */
const NUMBERS_MM = 8;
const LINE_MM = 5;
/** Under the map: numbers of columns, and what it shows. */
const CAPTION_MM = 14;
const TITLE_MM = 12;

/** Between numbers that stand in line. */
const NUMBER_GAP_MM = 1;

function instructions(content: Content, tiling: Tiling): string[] {
  const { columns, rows } = tiling;
  const lone = columns * rows === 1;
  const unnumbered = content.holes.some(({ label }) => label === null);
  return [
    'Print every page at full size, 100 %, not fitted to the page. Measure both bars on each: 100 mm and 4 in. Where they are off, do not drill.',
    ...(lone
      ? []
      : [
          'Cut each tile along its dashed lines at the left and at the front. Lay it on its neighbours so that the halves of the marks on the border meet, and tape it.',
        ]),
    'Lay it on the face of the top, datum edges on the front edge and on the left end. Check length and width over all with a tape: paper stretches in damp air.',
    'Prick the middle of each cross through the paper and compare the farthest pricks with the table of holes before you drill.',
    `Numbers: row and column of a hole, as in the table of holes.${unnumbered ? ' They are left out where there is no room.' : ''} Strokes aslant: screws from below, to keep the drill from.${content.stripScrews.length > 0 ? ' Small crosses: screws of the strip.' : ''}`,
    'Clamp a backing board under each hole before the drill comes through, keep hands clear of the exit, protect eyes, ears and lungs. The instructions of your machine hold.',
  ];
}

/** Numbers from 1 along a side, as many as there is room for. */
function numbers(centres: readonly number[], at: (centre: number) => Spot): Lettering[] {
  const widest = textWidth(String(centres.length), 1.8) + NUMBER_GAP_MM;
  const apart = Math.abs((centres[1] ?? 0) - (centres[0] ?? 0)) || widest;
  const every = Math.ceil(widest / apart);
  return centres.flatMap((centre, i) =>
    i % every === 0 ? [lettering(at(centre), String(i + 1), 1.8, 'middle')] : [],
  );
}

/** The first page: how the tiles lie, and what to do with them. */
export function overview(
  title: string,
  content: Content,
  tiling: Tiling,
  paper: Paper,
  marginMm: number,
): Shape[] {
  const { lengthMm, widthMm, columns, rows } = tiling;
  const first = tileBox(tiling, 0, 0);
  const last = tileBox(tiling, columns - 1, rows - 1);
  const steps = instructions(content, tiling).flatMap((step, i) => [
    ...linesOf(step, 2.5, lengthMm - 6).map((line, j) => [j === 0 ? `${i + 1}` : '', line] as const),
  ]);
  const used = TITLE_MM + CAPTION_MM + steps.length * LINE_MM;
  const room: Spot = [lengthMm - NUMBERS_MM, widthMm - used];
  const scale = Math.max((last.right - first.left) / room[0], (last.back - first.front) / room[1]);
  const left = marginMm + NUMBERS_MM;
  const bottom = marginMm + TITLE_MM + (last.back - first.front) / scale;
  const below = bottom + CAPTION_MM;
  const x = (xMm: number) => left + (xMm - first.left) / scale;
  const y = (yMm: number) => bottom - (yMm - first.front) / scale;
  const rectangle = (box: typeof first, line: 'outline' | 'thin'): Shape => ({
    kind: 'rectangle',
    corner: [x(box.left), y(box.back)],
    size: [(box.right - box.left) / scale, (box.back - box.front) / scale],
    line,
  });
  const between = (from: number, lines: readonly number[], to: number) =>
    [...lines, to].map((line, i) => (line + (i === 0 ? from : (lines[i - 1] as number))) / 2);
  const [cutsX, cutsY] = [seamsX(tiling), seamsY(tiling)];
  const pages = columns * rows;
  const name = `${columns} × ${rows} tiles on ${paper}, ${pages} ${pages === 1 ? 'page' : 'pages'} besides this one, overlap ${dimensionText(tiling.overlapMm)} mm`;
  return [
    lettering([marginMm, marginMm + 4], fitted(title, 3.5, lengthMm), 3.5),
    lettering([marginMm, marginMm + 9], fitted(`Drilling template at full size. ${name}.`, 2.5, lengthMm)),
    rectangle({ ...first, right: last.right, back: last.back }, 'thin'),
    rectangle(content.top, 'outline'),
    ...content.holes.map(
      (hole): Shape => ({
        kind: 'circle',
        centre: [x(hole.xMm), y(hole.yMm)],
        radius: hole.radiusMm / scale,
        line: 'thin',
      }),
    ),
    ...cutsX.map(
      (xMm): Shape => ({
        kind: 'line',
        from: [x(xMm), y(first.front)],
        to: [x(xMm), y(last.back)],
        line: 'hidden',
      }),
    ),
    ...cutsY.map(
      (yMm): Shape => ({
        kind: 'line',
        from: [x(first.left), y(yMm)],
        to: [x(last.right), y(yMm)],
        line: 'hidden',
      }),
    ),
    ...numbers(between(first.left, cutsX, last.right), (xMm) => [x(xMm), bottom + 4]),
    ...numbers(between(first.front, cutsY, last.back), (yMm) => [left - 4, y(yMm) + 0.9]),
    lettering(
      [left, bottom + 8],
      'Columns from the left, rows from the front, seen from above. Not to scale.',
      1.8,
    ),
    ...steps.flatMap(([number, line], i) => [
      lettering([marginMm, below + (i + 1) * LINE_MM - 1], number),
      lettering([marginMm + 6, below + (i + 1) * LINE_MM - 1], line),
    ]),
    ...strip(marginMm, marginMm + lengthMm, marginMm + widthMm, [
      title,
      'Overview',
      `Page 1 of ${pages + 1}`,
    ]),
  ];
}
