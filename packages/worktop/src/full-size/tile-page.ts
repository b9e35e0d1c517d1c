import { PAST_RIM_MM } from '@scantling/grids/export';
import { textWidth } from '../drawing/lettering.ts';
import type { Lettering, Line, Shape, Spot, Stroke } from '../drawing/scene.ts';
import { dimensionText } from '../lengths.ts';
import type { Point } from '../plan/place.ts';
import { around, type Box, meets, within } from './box.ts';
import { type BoredMark, type Content, extentOf, SCREW_REACH_MM } from './content.ts';
import { lettering, strip } from './strip.ts';
import { MARK_REACH_MM, registrationMarks, seamsX, seamsY, type Tiling, tileBox } from './tiling.ts';

/** From a place on the top to a spot on the page. */
type Place = (point: Point) => Spot;

const line = (place: Place, from: Point, to: Point, type: Line): Stroke => ({
  kind: 'line',
  from: place(from),
  to: place(to),
  line: type,
});

const at = (xMm: number, yMm: number): Point => ({ xMm, yMm });

function rectangle(place: Place, { left, front, right, back }: Box, type: Line): Stroke {
  const [x, y] = place(at(left, back));
  return { kind: 'rectangle', corner: [x, y], size: [right - left, back - front], line: type };
}

function cross(place: Place, { xMm, yMm }: Point, reachMm: number): Stroke[] {
  return [
    line(place, at(xMm - reachMm, yMm), at(xMm + reachMm, yMm), 'thin'),
    line(place, at(xMm, yMm - reachMm), at(xMm, yMm + reachMm), 'thin'),
  ];
}

const hole = (place: Place, mark: BoredMark): Stroke[] => [
  { kind: 'circle', centre: place(mark), radius: mark.radiusMm, line: 'outline' },
  ...cross(place, mark, mark.radiusMm + PAST_RIM_MM),
];

/** A screw's place, two strokes aslant: nothing that looks like a hole to be drilled. */
const screw = (place: Place, { xMm, yMm }: Point): Stroke[] =>
  [SCREW_REACH_MM, -SCREW_REACH_MM].map((rise) =>
    line(place, at(xMm - SCREW_REACH_MM, yMm - rise), at(xMm + SCREW_REACH_MM, yMm + rise), 'thin'),
  );

/** A cross with a square round its middle. */
const registration = (place: Place, mark: Point): Stroke[] => [
  ...cross(place, mark, MARK_REACH_MM),
  rectangle(place, around(mark, MARK_REACH_MM / 2), 'thin'),
];

function labels(place: Place, { holes, screws }: Content, shown: Box): Lettering[] {
  return [...holes, ...screws].flatMap(({ label }) =>
    label && within(label.box, shown)
      ? [lettering(place(at(label.box.left, label.box.front)), label.text, label.heightMm)]
      : [],
  );
}

/** The name of what is let in, on each tile that has room for it inside. */
const inlayNames = (place: Place, { inlays }: Content, shown: Box): Lettering[] =>
  inlays.flatMap(({ name, box }) => {
    const left = Math.max(box.left, shown.left) + 2;
    const front = (box.front + box.back - 2.5) / 2;
    const text = { left, front, right: left + textWidth(name, 2.5), back: front + 2.5 };
    const inside =
      within(around(at(left, front + 1.25), 1.75), box) && within(text, box) && within(text, shown);
    return inside ? [lettering(place(at(left, front)), name)] : [];
  });

const EDGE_NAME_MM = 2.5;

/** The room for a name along an edge, outside of the wood, in the middle of what a tile shows of the edge. */
function edgeName(shown: Box, top: Box, text: string, edge: keyof Box): { box: Box; upwards: boolean } {
  const half = textWidth(text, EDGE_NAME_MM) / 2;
  const upwards = edge === 'left' || edge === 'right';
  const middle = upwards
    ? (Math.max(shown.front, top.front) + Math.min(shown.back, top.back)) / 2
    : (Math.max(shown.left, top.left) + Math.min(shown.right, top.right)) / 2;
  const inner = 1.5;
  const low = edge === 'left' || edge === 'front';
  const across = low ? top[edge] - inner - EDGE_NAME_MM : top[edge] + inner;
  const box = upwards
    ? { left: across, right: across + EDGE_NAME_MM, front: middle - half, back: middle + half }
    : { front: across, back: across + EDGE_NAME_MM, left: middle - half, right: middle + half };
  return { box, upwards };
}

const edges = [
  ['front', 'datum edge, front'],
  ['left', 'datum edge, left'],
  ['back', 'back edge'],
  ['right', 'right edge'],
] as const;

/** Names of the edges on each tile that has room for them. */
const edgeNames = (place: Place, { top }: Content, shown: Box): Lettering[] =>
  edges.flatMap(([edge, text]) => {
    const { box, upwards } = edgeName(shown, top, text, edge);
    if (!within(box, shown)) return [];
    const read = upwards
      ? { ...lettering(place(at(box.right, box.front)), text, EDGE_NAME_MM), upwards: true as const }
      : lettering(place(at(box.left, box.front)), text, EDGE_NAME_MM);
    return [read];
  });

const range = (fromMm: number, toMm: number) => `${dimensionText(fromMm)} to ${dimensionText(toMm)} mm`;

/** One tile at full size on its page, which is measured from its top left corner. */
export function tilePage(
  title: string,
  content: Content,
  tiling: Tiling,
  marginMm: number,
  [column, row]: readonly [column: number, row: number],
): Shape[] {
  const shown = tileBox(tiling, column, row);
  const place: Place = ({ xMm, yMm }) => [marginMm + xMm - shown.left, marginMm + shown.back - yMm];
  const seen = (box: Box) => meets(box, shown);
  const cuts = [
    ...seamsX(tiling).map((xMm) => line(place, at(xMm, shown.front), at(xMm, shown.back), 'hidden')),
    ...seamsY(tiling).map((yMm) => line(place, at(shown.left, yMm), at(shown.right, yMm), 'hidden')),
  ];
  const marks = registrationMarks(tiling).filter((mark) => within(around(mark, MARK_REACH_MM), shown));
  const size: Spot = [tiling.lengthMm, tiling.widthMm];
  const lines = [
    title,
    `Column ${column + 1} of ${tiling.columns}, row ${row + 1} of ${tiling.rows}`,
    `x ${range(shown.left, shown.right)}`,
    `y ${range(shown.front, shown.back)}`,
    'Measure the bars first.',
  ];
  return [
    {
      kind: 'window',
      corner: [marginMm, marginMm],
      size,
      shapes: [
        rectangle(place, content.top, 'outline'),
        ...content.inlays.map(({ box }) => rectangle(place, box, 'outline')),
        ...(content.rabbet ? [rectangle(place, content.rabbet, 'thin')] : []),
        ...content.stripScrews
          .filter((one) => within(around(one, 0), shown))
          .flatMap((one) => cross(place, one, SCREW_REACH_MM)),
        ...content.holes.filter((one) => seen(extentOf(one))).flatMap((one) => hole(place, one)),
        ...content.screws.filter((one) => seen(extentOf(one))).flatMap((one) => screw(place, one)),
        ...cuts,
        ...marks.flatMap((mark) => registration(place, mark)),
      ],
    },
    { kind: 'rectangle', corner: [marginMm, marginMm], size, line: 'thin' },
    ...labels(place, content, shown),
    ...inlayNames(place, content, shown),
    ...edgeNames(place, content, shown),
    ...strip(marginMm, marginMm + tiling.lengthMm, marginMm + tiling.widthMm, lines),
  ];
}
