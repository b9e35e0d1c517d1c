import type { Point } from '../geometry.ts';
import type { Panel } from '../shape.ts';
import type { BoredHole, BoredPanel, NamedShape } from './bored-panel.ts';
import { decimal as n } from './decimal.ts';
import { DASHED_MM, LONG_DASH_DOT_MM, NARROW_MM, PAST_RIM_MM, WIDE_MM } from './line-types.ts';
import { cornersOf, extentOf, requireDrawable } from './outlines.ts';
import { xmlText } from './xml-text.ts';

/** Room round what is drawn, for the datum's arrows. */
const MARGIN_MM = 18;
/** From one line of the notes to the next. */
const LINE_MM = 6;
/** Length of the bar that shows whether a print is at full size. */
const BAR_MM = 100;

/** Height of capitals (ISO 3098-1), which are about this share of a sans-serif face's font-size. */
const CAPITAL_MM = 2.5;
const CAPITAL_SHARE = 0.72;
const FONT_SIZE = CAPITAL_MM / CAPITAL_SHARE;
/** Width of a wide letter, as a share of the font-size. */
const LETTER_SHARE = 0.6;

/** From a point of the panel, y away from whoever stands at the front, to a place on the sheet, y downwards. */
type OnSheet = (point: Point) => readonly [x: number, y: number];

const count = (number: number, what: string) => `${number} ${what}${number === 1 ? '' : 's'}`;

function diameters({ holes }: BoredPanel): string {
  const all = holes.map(({ diameterMm }) => diameterMm);
  const least = all.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const most = all.reduce((a, b) => Math.max(a, b), 0);
  return least < most ? `${n(least)} to ${n(most)} mm` : `${n(most)} mm`;
}

/** What the drawing shows: the panel, the holes, and the keep-outs where there are any. */
function contents(input: BoredPanel): string[] {
  const { panel, holes, keepOuts = [] } = input;
  return [
    `Panel ${n(panel.lengthMm)} by ${n(panel.widthMm)} mm`,
    holes.length === 0 ? 'no holes' : `${count(holes.length, 'hole')}, diameter ${diameters(input)}`,
    ...(keepOuts.length === 0 ? [] : [`${count(keepOuts.length, 'keep-out')}, dashed`]),
  ];
}

/** For whoever cannot see the drawing. */
const description = (input: BoredPanel) =>
  `Full size, seen from above, datum at the front-left corner. ${contents(input).join('; ')}.`;

/** The title as far as there is room for it, and what stands beneath the drawing. */
function notes(input: BoredPanel, title: string, roomMm: number): string[] {
  const letters = [...title];
  const fit = Math.floor(roomMm / (LETTER_SHARE * FONT_SIZE));
  return [
    `The bar is ${BAR_MM} mm long where a print is full size.`,
    letters.length > fit ? `${letters.slice(0, fit - 1).join('')}…` : title,
    ...contents(input),
    'Seen from above. Datum: the circle at the front-left corner.',
  ];
}

const layer = (name: string, stroke: string, shapes: readonly string[]) =>
  shapes.length === 0 ? [] : [`<g data-layer="${name}" ${stroke}>`, ...shapes, '</g>'];

const narrow = `stroke-width="${NARROW_MM}"`;
const wide = `stroke-width="${WIDE_MM}"`;

/** A circle, and perhaps what stands inside its element. */
function circle(onSheet: OnSheet, { xMm, yMm, diameterMm }: BoredHole, inside = ''): string {
  const [x, y] = onSheet({ xMm, yMm }).map(n);
  const start = `<circle cx="${x}" cy="${y}" r="${n(diameterMm / 2)}"`;
  return inside ? `${start}>${inside}</circle>` : `${start}/>`;
}

/** What holes miss, with its name. A circle narrower than a line shows as a dot. */
function outline(onSheet: OnSheet, shape: NamedShape, panel: Panel): string {
  const title = `<title>${xmlText(shape.id)}</title>`;
  if (shape.shape === 'circle') {
    return circle(onSheet, { ...shape, diameterMm: Math.max(NARROW_MM, shape.diameterMm) }, title);
  }
  const corners = cornersOf(shape, panel).map((corner) => onSheet(corner).map(n).join(','));
  return `<polygon points="${corners.join(' ')}">${title}</polygon>`;
}

/** A cross whose long dashes meet in the centre of the hole: four strokes from there, each beginning in mid dash. */
function centreMark(onSheet: OnSheet, hole: BoredHole): string {
  const [x, y] = onSheet(hole).map(n);
  const reach = n(hole.diameterMm / 2 + PAST_RIM_MM);
  const strokes = [`h${reach}`, `h-${reach}`, `v${reach}`, `v-${reach}`];
  return `<path d="${strokes.map((stroke) => `M${x} ${y}${stroke}`).join('')}"/>`;
}

function arrow([x, y]: readonly [number, number], along: 'x' | 'y'): string[] {
  const lengthMm = 14;
  const [dx, dy] = along === 'x' ? [1, 0] : [0, -1];
  const tip = [x + lengthMm * dx, y + lengthMm * dy] as const;
  const back = (side: number) =>
    `${n(tip[0] - 3 * dx + side * 0.5 * dy)},${n(tip[1] - 3 * dy + side * 0.5 * dx)}`;
  return [
    `<line x1="${n(x)}" y1="${n(y)}" x2="${n(tip[0])}" y2="${n(tip[1])}"/>`,
    `<polygon points="${n(tip[0])},${n(tip[1])} ${back(1)} ${back(-1)}" fill="currentColor"/>`,
  ];
}

/** The datum: a circle round the corner (the origin of ISO 129-1), and beside it the ways that x and y count. */
function datumMark(onSheet: OnSheet): string[] {
  const [x, y] = onSheet({ xMm: 0, yMm: 0 });
  const away = 7;
  return [
    `<circle cx="${n(x)}" cy="${n(y)}" r="1.5"/>`,
    `<path d="M${n(x)} ${n(y + 2.5)}V${n(y + away + 2)}M${n(x - 2.5)} ${n(y)}H${n(x - away - 2)}"/>`,
    ...arrow([x, y + away], 'x'),
    ...arrow([x - away, y], 'y'),
  ];
}

/** A bar with an end stroke at both ends. */
function bar(x: number, y: number): string[] {
  return [`<path d="M${n(x)} ${n(y)}h${BAR_MM}M${n(x)} ${n(y - 2)}v4M${n(x + BAR_MM)} ${n(y - 2)}v4"/>`];
}

const text = (x: number, y: number, says: string) => `<text x="${n(x)}" y="${n(y)}">${xmlText(says)}</text>`;

/**
 * The panel drawn at full size, for paper or a screen: outline and holes in wide lines, centre marks in narrow
 * long-dashed dotted ones, keep-outs of every shape dashed (ISO 128-2; a band as far as the panel goes), the datum at the front-left corner, and a bar of 100 mm to
 * check a print by. Seen from above, the front at the bottom.
 *
 * @param input - The panel, its holes and what they miss, all in mm from the front-left corner seen from above.
 * @returns An SVG file whose user unit is one millimetre, with a title and a description for screen readers.
 * @throws RangeError where a field is missing or outside its limits, by its path: `holes[3].xMm`.
 * @example
 * ```ts
 * import { holeDrawing } from '@scantling/grids/export';
 * const panel = { lengthMm: 600, widthMm: 400 };
 * const keepOuts = [{ shape: 'band', id: 'back rail', edge: 'back edge', widthMm: 35 }];
 * const svg = holeDrawing({ title: 'Bindery bench', panel, holes: [{ xMm: 60, yMm: 56, diameterMm: 20 }], keepOuts });
 * svg.match(/<desc>(.*)<\/desc>/)[1] // => 'Full size, seen from above, datum at the front-left corner. Panel 600 by 400 mm; 1 hole, diameter 20 mm; 1 keep-out, dashed.'
 * svg.match(/<polygon points="([^"]*)"><title>back rail</)[1] // => '18,53 618,53 618,18 18,18'
 * ```
 */
export function holeDrawing(input: BoredPanel): string {
  requireDrawable('holeDrawing', input);
  const { title = 'Panel with holes', panel, holes, keepOuts = [] } = input;
  const { low, high } = extentOf(input);
  const onSheet: OnSheet = ({ xMm, yMm }) => [MARGIN_MM + xMm - low.xMm, MARGIN_MM + high.yMm - yMm];
  const drawn = { width: high.xMm - low.xMm, height: high.yMm - low.yMm };
  const roomMm = Math.max(drawn.width, BAR_MM);
  const beneath = MARGIN_MM + drawn.height + MARGIN_MM;
  const lines = notes(input, title, roomMm);
  const width = n(roomMm + 2 * MARGIN_MM);
  const height = n(beneath + (lines.length + 1) * LINE_MM);
  const [left, top] = onSheet({ xMm: 0, yMm: panel.widthMm });
  const [right, bottom] = onSheet({ xMm: panel.lengthMm, yMm: 0 });
  const circles = holes.map((hole) => circle(onSheet, hole));
  const outlines = keepOuts.map((keepOut) => outline(onSheet, keepOut, panel));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img">`,
    `<title>${xmlText(title)}</title>`,
    `<desc>${xmlText(description(input))}</desc>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    '<g fill="none" stroke="currentColor" color="#000">',
    ...layer('keep-outs', `${narrow} stroke-dasharray="${DASHED_MM.join(' ')}"`, outlines),
    ...layer('panel', wide, [
      `<rect x="${n(left)}" y="${n(top)}" width="${n(right - left)}" height="${n(bottom - top)}"/>`,
    ]),
    ...layer('holes', wide, circles),
    ...layer(
      'centre-marks',
      `${narrow} stroke-dasharray="${LONG_DASH_DOT_MM.join(' ')}" stroke-dashoffset="${(LONG_DASH_DOT_MM[0] ?? 0) / 2}"`,
      holes.map((hole) => centreMark(onSheet, hole)),
    ),
    ...layer('datum', narrow, datumMark(onSheet)),
    ...layer('bar', narrow, bar(MARGIN_MM, beneath)),
    '</g>',
    `<g fill="#000" font-family="Liberation Sans, Helvetica, Arial, sans-serif" font-size="${n(FONT_SIZE)}">`,
    text(left + 16, bottom + 8, 'x'),
    text(left - 8, bottom - 16, 'y'),
    ...lines.map((line, i) => text(MARGIN_MM, beneath + (i + 1) * LINE_MM + 1, line)),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}
