import { dimensionText } from '../lengths.ts';
import { slotRectangle } from '../parts/fixings.ts';
import type { Cables } from '../plan/load.ts';
import type { Point, Rectangle } from '../plan/place.ts';
import type { WorktopPlan } from '../result.ts';
import { dimensionShapes } from './dimension.ts';
import type { Shape, Spot } from './scene.ts';
import { fittingScale } from './sheet.ts';

/** Where the view may stand on the sheet, leaving room for its dimensions and the marks of the section. */
const ROOM = { left: 60, right: 384, top: 24, bottom: 154 };
/** From the top to its first dimension line, with room for the arrow of the section between. */
const FIRST_LINE = 14;

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

function cross([x, y]: Spot, reach: number, line: 'centre' | 'thin'): Shape[] {
  return [
    { kind: 'line', from: [x - reach, y], to: [x + reach, y], line },
    { kind: 'line', from: [x, y - reach], to: [x, y + reach], line },
  ];
}

/** Smaller on paper, a hole is drawn narrow and without centre lines, or it would be a blot. */
const LEAST_RADIUS = 1;

/** A hole; its centre lines pass its rim where that leaves them clear of the next hole's. */
function hole(centre: Spot, radius: number, apart: number): Shape[] {
  if (radius < LEAST_RADIUS) return [{ kind: 'circle', centre, radius, line: 'thin' }];
  const reach = apart > 2 * radius + 3 ? radius + 1 : radius;
  return [{ kind: 'circle', centre, radius, line: 'outline' }, ...cross(centre, reach, 'centre')];
}

interface Chain {
  readonly fromMm: number;
  readonly toMm: number;
  readonly text: string;
}

/** The first and the last hole along one direction, from the datum, and the whole side. */
function chain(places: readonly number[], count: number, pitchMm: number, sideMm: number): Chain[] {
  const whole = { fromMm: 0, toMm: sideMm, text: dimensionText(sideMm) };
  if (places.length === 0) return [whole];
  const [firstMm, lastMm] = [Math.min(...places), Math.max(...places)];
  const pitches = `${count} × ${dimensionText(pitchMm)} = ${dimensionText(lastMm - firstMm)}`;
  return [
    { fromMm: 0, toMm: firstMm, text: dimensionText(firstMm) },
    { fromMm: firstMm, toMm: lastMm, text: pitches },
    whole,
  ];
}

/** Lengths from the datum, along and across, outside of everything that is drawn. */
function dimensions({ plan, holes }: WorktopPlan, place: Place, low: Point): Shape[] {
  const { lengthMm, widthMm } = plan.top;
  const { pitchXMm, pitchYMm } = plan.holes;
  const [left, bottom] = place(0, 0);
  const [outerLeft, outerBottom] = place(low.xMm, low.yMm);
  const [columns, rows] = [unique(holes.map(({ column }) => column)), unique(holes.map(({ row }) => row))];
  const xs = unique(holes.map(({ xMm }) => xMm));
  const ys = unique(holes.map(({ yMm }) => yMm));
  const along = chain(xs, spread(columns), pitchXMm, lengthMm);
  const across = chain(ys, spread(rows), pitchYMm, widthMm);
  return [
    ...dimensionShapes(
      along.map(({ fromMm, toMm, text }) => ({ from: place(fromMm, 0)[0], to: place(toMm, 0)[0], text })),
      { reads: 'right', edge: bottom, firstLine: outerBottom + FIRST_LINE },
    ),
    ...dimensionShapes(
      across.map(({ fromMm, toMm, text }) => ({ from: -place(0, fromMm)[1], to: -place(0, toMm)[1], text })),
      { reads: 'upwards', edge: left, firstLine: outerLeft - 8 },
    ),
  ];
}

const unique = (values: readonly number[]) => [...new Set(values)];
const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

/** Where the top is cut, marked at both ends: a wide stroke, an arrow the way that one looks, and a letter (ISO 128-40). */
function sectionMarks([x, back]: Spot, front: number): Shape[] {
  return [
    [back, -1],
    [front, 1],
  ].flatMap(([edge = 0, away = 0]): Shape[] => {
    const [start, end] = [edge + away * 2, edge + away * 7];
    return [
      { kind: 'line', from: [x, start], to: [x, end], line: 'outline' },
      { kind: 'line', from: [x, end], to: [x - 6, end], line: 'thin' },
      { kind: 'arrowhead', tip: [x - 6, end], towards: [x, end] },
      { kind: 'text', at: [x + 3, end + 1.75], text: 'A', height: 3.5, anchor: 'middle' },
    ];
  });
}

const passage = ({ xMm, yMm, holeDiameterMm: mm }: Cables): Rectangle => ({
  ...{ xMm: xMm - mm / 2, yMm: yMm - mm / 2, lengthMm: mm, widthMm: mm },
});

/** The least rectangle that holds the top and everything under it. */
function extent({ plan, fixings }: WorktopPlan) {
  const { lengthMm, widthMm } = plan.top;
  const all = [
    { xMm: 0, yMm: 0, lengthMm, widthMm },
    ...plan.base.members,
    ...plan.top.inlays,
    ...fixings.map((fixing) => slotRectangle(plan, fixing)),
    { xMm: 0, yMm: plan.base.fixedLineMm, lengthMm, widthMm: 0 },
    ...(plan.cables ? [passage(plan.cables)] : []),
  ];
  const low = { xMm: Math.min(...all.map(({ xMm }) => xMm)), yMm: Math.min(...all.map(({ yMm }) => yMm)) };
  const high = {
    xMm: Math.max(...all.map((one) => one.xMm + one.lengthMm)),
    yMm: Math.max(...all.map((one) => one.yMm + one.widthMm)),
  };
  return { low, high };
}

/** The top seen from above at a standard scale, with what lies under it. */
export function planView(result: WorktopPlan, sectionXMm: number): { shapes: Shape[]; scale: number } {
  const { plan, holes, fixings, strip } = result;
  const { top, base, cables } = plan;
  const { low, high } = extent(result);
  const size: Spot = [high.xMm - low.xMm, high.yMm - low.yMm];
  const scale = fittingScale(size, [ROOM.right - ROOM.left, ROOM.bottom - ROOM.top]);
  const left = (ROOM.left + ROOM.right - size[0] / scale) / 2;
  const bottom = ROOM.bottom - (ROOM.bottom - ROOM.top - size[1] / scale) / 2;
  const place: Place = (xMm, yMm) => [left + (xMm - low.xMm) / scale, bottom - (yMm - low.yMm) / scale];
  const apart = Math.min(plan.holes.pitchXMm, plan.holes.pitchYMm) / scale;
  const at = ({ xMm, yMm }: Point) => place(xMm, yMm);
  const fixedY = place(0, base.fixedLineMm)[1];
  const right = place(high.xMm, 0)[0];
  const front = place(0, Math.min(0, low.yMm))[1];
  const back = place(sectionXMm, Math.max(top.widthMm, high.yMm));
  return {
    scale,
    shapes: [
      rectangleShape(place, { xMm: 0, yMm: 0, ...top }, 'outline'),
      ...base.members.map((member) => rectangleShape(place, member, 'hidden')),
      ...top.inlays.map((inlay) => rectangleShape(place, inlay, 'outline')),
      ...holes.flatMap((one) => hole(at(one), plan.holes.diameterMm / 2 / scale, apart)),
      ...(cables ? hole(at(cables), cables.holeDiameterMm / 2 / scale, Number.POSITIVE_INFINITY) : []),
      ...fixings.map((fixing) => rectangleShape(place, slotRectangle(plan, fixing), 'thin')),
      ...(strip?.screws ?? []).flatMap((screw) => cross(at(screw), 1, 'thin')),
      { kind: 'line', from: [place(low.xMm, 0)[0] - 4, fixedY], to: [right + 4, fixedY], line: 'centre' },
      ...['fixed', 'line'].map(
        (text, i): Shape => ({
          kind: 'text',
          at: [right + 6, fixedY - 0.6 + i * 3.8],
          text,
          height: 2.5,
          anchor: 'start',
        }),
      ),
      { kind: 'circle', centre: place(0, 0), radius: 1.2, line: 'thin' },
      ...dimensions(result, place, low),
      ...sectionMarks(back, front),
    ],
  };
}
