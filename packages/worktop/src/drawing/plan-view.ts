import { dimensionText, inches } from '../lengths.ts';
import { slotRectangle } from '../parts/fixings.ts';
import type { Rectangle } from '../plan/place.ts';
import type { WorktopPlan } from '../result.ts';
import { horizontalDimension, verticalDimension } from './dimension.ts';
import type { Scene, Shape, Spot } from './scene.ts';
import { fittingScale, SHEET, sheetShapes, VIEW } from './sheet.ts';

/** Room between one dimension line and the next. */
const STEP = 8;

/** From a place on the top (y away from whoever stands at the front) to a spot on the sheet. */
type Place = (xMm: number, yMm: number) => Spot;

const rectangleShape = (
  place: Place,
  { xMm, yMm, lengthMm, widthMm }: Rectangle,
  line: 'outline' | 'hidden' | 'thin',
): Shape => {
  const [left, bottom] = place(xMm, yMm);
  const [right, top] = place(xMm + lengthMm, yMm + widthMm);
  return { kind: 'rectangle', corner: [left, top], size: [right - left, bottom - top], line };
};

function crossedCircle(centre: Spot, radius: number): Shape[] {
  const reach = radius + 1;
  return [
    { kind: 'circle', centre, radius, line: 'outline' },
    {
      kind: 'line',
      from: [centre[0] - reach, centre[1]],
      to: [centre[0] + reach, centre[1]],
      line: 'centre',
    },
    {
      kind: 'line',
      from: [centre[0], centre[1] - reach],
      to: [centre[0], centre[1] + reach],
      line: 'centre',
    },
  ];
}

function dimensions({ plan }: WorktopPlan, place: Place): Shape[] {
  const { lengthMm, widthMm } = plan.top;
  const { first, pitchXMm, pitchYMm, columns, rows } = plan.holes;
  const [left, bottom] = place(0, 0);
  const lastX = first.xMm + (columns - 1) * pitchXMm;
  const lastY = first.yMm + (rows - 1) * pitchYMm;
  const horizontal = (fromMm: number, toMm: number, text: string, line: number) =>
    horizontalDimension({ from: place(fromMm, 0), to: place(toMm, 0), text }, bottom + line * STEP);
  const vertical = (fromMm: number, toMm: number, text: string, line: number) =>
    verticalDimension({ from: place(0, fromMm), to: place(0, toMm), text }, left - line * STEP);
  const pitches = (count: number, pitchMm: number) =>
    `${count} × ${dimensionText(pitchMm)} = ${dimensionText(count * pitchMm)}`;
  return [
    ...horizontal(0, first.xMm, dimensionText(first.xMm), 1),
    ...horizontal(first.xMm, lastX, pitches(columns - 1, pitchXMm), 1),
    ...horizontal(0, lengthMm, dimensionText(lengthMm), 2),
    ...vertical(0, first.yMm, dimensionText(first.yMm), 1),
    ...vertical(first.yMm, lastY, pitches(rows - 1, pitchYMm), 1),
    ...vertical(0, widthMm, dimensionText(widthMm), 2),
  ];
}

function notes({ plan, holes }: WorktopPlan, [x, y]: Spot): Shape[] {
  const { diameterMm } = plan.holes;
  const lines = [
    `${holes.length} holes ⌀ ${dimensionText(diameterMm)} mm (${inches(diameterMm)}), through`,
    'Positions from the datum: front-left corner, seen from above. x along the grain.',
    'Dashed: the base under the top. Narrow: the slots for the screws in it.',
    'Do not measure from the drawing.',
  ];
  return lines.map((text, i) => ({ kind: 'text', at: [x, y + i * 5], text, height: 2.5, anchor: 'start' }));
}

/** The top seen from above at a standard scale, with what lies under it, on one sheet. */
export function planView(result: WorktopPlan): Scene {
  const { plan } = result;
  const { lengthMm, widthMm, thicknessMm } = plan.top;
  const scale = fittingScale(lengthMm, widthMm);
  const left = (VIEW.left + VIEW.right - lengthMm / scale) / 2;
  const bottom = (VIEW.top + VIEW.bottom + widthMm / scale) / 2;
  const place: Place = (xMm, yMm) => [left + xMm / scale, bottom - yMm / scale];
  const datum = place(0, 0);
  const fixedLineY = place(0, plan.base.fixedLineMm)[1];
  const right = place(lengthMm, 0)[0];
  return {
    size: SHEET,
    title: plan.name,
    description: `Plan view, 1:${scale}: the top with its holes, and the base under it.`,
    shapes: [
      rectangleShape(place, { xMm: 0, yMm: 0, lengthMm, widthMm }, 'outline'),
      ...plan.base.members.map((member) => rectangleShape(place, member, 'hidden')),
      ...plan.top.inlays.map((inlay) => rectangleShape(place, inlay, 'outline')),
      ...result.holes.flatMap(({ xMm, yMm }) =>
        crossedCircle(place(xMm, yMm), plan.holes.diameterMm / 2 / scale),
      ),
      ...result.fixings.map((fixing) => rectangleShape(place, slotRectangle(plan, fixing), 'thin')),
      { kind: 'line', from: [left - 4, fixedLineY], to: [right + 4, fixedLineY], line: 'centre' },
      { kind: 'text', at: [right + 6, fixedLineY + 1], text: 'fixed line', height: 2.5, anchor: 'start' },
      { kind: 'circle', centre: datum, radius: 1.2, line: 'thin' },
      ...dimensions(result, place),
      ...notes(result, [30, 262]),
      ...sheetShapes([
        ['Title', plan.name],
        ['Drawing', 'Plan view from above'],
        ['Scale', `1:${scale}`],
        ['Material', `${result.movement.species}, ${dimensionText(thicknessMm)} mm thick`],
        ['Dimensions', 'mm'],
      ]),
    ],
  };
}
