import { dimensionText } from '../lengths.ts';
import type { WorktopPlan } from '../result.ts';
import { dimensionShapes } from './dimension.ts';
import { type Hatch, hatching } from './hatching.ts';
import { fitted, textWidth } from './lettering.ts';
import type { Line, Shape, Spot } from './scene.ts';
import type { Section, Stretch } from './section.ts';
import { fittingScale } from './sheet.ts';

/** Where the section may stand on the sheet. */
const ROOM = { left: 60, right: 384, label: 195, face: 208, thickness: 23 };
/** How much is shown of members, whose depth no plan says. */
const STUB = 8;

/** Narrower on paper, a hole has narrow walls and no centre line. */
const LEAST_HOLE = 2;

const wood: Hatch = { rises: 'right', spacing: 2 };
const base: Hatch = { rises: 'left', spacing: 1.4 };
const metal: Hatch = { rises: 'left', spacing: 0.8 };

/** From across the grain and above the face, mm, to a spot on the sheet. */
type Place = (yMm: number, zMm: number) => Spot;

const line = (from: Spot, to: Spot, type: Line = 'outline'): Shape => ({
  kind: 'line',
  from,
  to,
  line: type,
});

/** A cut rectangle without its outline. */
function cut(
  place: Place,
  { fromMm, toMm }: Stretch,
  aboveMm: number,
  belowMm: number,
  hatch: Hatch,
): Shape[] {
  const [left, top] = place(fromMm, aboveMm);
  const [right, bottom] = place(toMm, belowMm);
  return hatching([left, top], [right - left, bottom - top], hatch);
}

/** What is left of a stretch beside others that lie in order. */
function between(whole: Stretch, gaps: readonly Stretch[]): Stretch[] {
  const ordered = [...gaps].sort((a, b) => a.fromMm - b.fromMm);
  const starts = [whole.fromMm, ...ordered.map(({ toMm }) => toMm)];
  const ends = [...ordered.map(({ fromMm }) => fromMm), whole.toMm];
  return starts.flatMap((fromMm, i) => {
    const toMm = ends[i] as number;
    return toMm > fromMm ? [{ fromMm, toMm }] : [];
  });
}

const overlap = (a: Stretch, b: Stretch): Stretch[] => {
  const [fromMm, toMm] = [Math.max(a.fromMm, b.fromMm), Math.min(a.toMm, b.toMm)];
  return toMm > fromMm ? [{ fromMm, toMm }] : [];
};

/** The walls of a hole, and its centre line. */
function wallShapes(place: Place, { fromMm, toMm }: Stretch, thicknessMm: number): Shape[] {
  const [left, top] = place(fromMm, 0);
  const [right, bottom] = place(toMm, -thicknessMm);
  const narrow = right - left < LEAST_HOLE;
  const middle = (left + right) / 2;
  return [
    ...[left, right].map((x) => line([x, top], [x, bottom], narrow ? 'thin' : 'outline')),
    ...(narrow ? [] : [line([middle, top - 2], [middle, bottom + 2], 'centre')]),
  ];
}

/** The wood: hatched where it is cut, its outline, the walls of its holes with their centre lines, and its rabbet. */
function topShapes(place: Place, widthMm: number, thicknessMm: number, { holes, strip }: Section): Shape[] {
  const whole = { fromMm: 0, toMm: widthMm };
  const solid = between(whole, holes);
  const rabbet = strip?.rabbet;
  const beside = solid.flatMap((one) => (rabbet ? between(one, overlap(one, rabbet)) : [one]));
  const under = rabbet ? solid.flatMap((one) => overlap(one, rabbet)) : [];
  const face = rabbet ? between(whole, overlap(whole, rabbet)) : [whole];
  return [
    ...beside.flatMap((one) => cut(place, one, 0, -thicknessMm, wood)),
    ...under.flatMap((one) => cut(place, one, -(rabbet?.depthMm ?? 0), -thicknessMm, wood)),
    ...face.map(({ fromMm, toMm }) => line(place(fromMm, 0), place(toMm, 0))),
    line(place(0, -thicknessMm), place(widthMm, -thicknessMm)),
    ...[0, widthMm].map((yMm) => line(place(yMm, 0), place(yMm, -thicknessMm))),
    ...holes.flatMap((one) => wallShapes(place, one, thicknessMm)),
    ...(rabbet
      ? [
          line(place(rabbet.fromMm, 0), place(rabbet.fromMm, -rabbet.depthMm)),
          line(place(rabbet.fromMm, -rabbet.depthMm), place(rabbet.toMm, -rabbet.depthMm)),
          line(place(rabbet.toMm, -rabbet.depthMm), place(rabbet.toMm, 0)),
        ]
      : []),
  ];
}

/** A member, broken off where the plan says no more of it. */
function memberShapes(place: Place, member: Stretch, thicknessMm: number): Shape[] {
  const [left, top] = place(member.fromMm, -thicknessMm);
  const [right] = place(member.toMm, 0);
  const bottom = top + STUB;
  const middle = (left + right) / 2;
  const tooth = Math.min(1.5, (right - left) / 4);
  return [
    ...hatching([left, top], [right - left, STUB], base),
    line([left, top], [left, bottom]),
    line([right, top], [right, bottom]),
    // A straight line with a zigzag: broken off (ISO 128-2, line type 01.1).
    line([left - 1, bottom], [middle - tooth, bottom], 'thin'),
    line([middle - tooth, bottom], [middle - tooth / 2, bottom - 1.5], 'thin'),
    line([middle - tooth / 2, bottom - 1.5], [middle + tooth / 2, bottom + 1.5], 'thin'),
    line([middle + tooth / 2, bottom + 1.5], [middle + tooth, bottom], 'thin'),
    line([middle + tooth, bottom], [right + 1, bottom], 'thin'),
  ];
}

/** The strip with a leader to its sizes. */
function stripShapes(place: Place, section: Section): Shape[] {
  if (!section.strip) return [];
  const { strip, rabbet, name } = section.strip;
  const [left, top] = place(strip.fromMm, -strip.belowFaceMm);
  const [right, bottom] = place(strip.toMm, -strip.belowFaceMm - strip.thicknessMm);
  const says = `${dimensionText(strip.toMm - strip.fromMm)} × ${dimensionText(strip.thicknessMm)} in a rabbet ${dimensionText(rabbet.toMm - rabbet.fromMm)} × ${dimensionText(rabbet.depthMm)}`;
  const room = ROOM.right - ROOM.left - textWidth(says, 2.5) - 4;
  const text = `${fitted(name, 2.5, room)}: ${says}`;
  const [tip, textY]: [Spot, number] = [[(left + right) / 2, (top + bottom) / 2], ROOM.label + 6];
  const start = Math.min(tip[0] + 4, ROOM.right - textWidth(text, 2.5));
  return [
    ...hatching([left, top], [right - left, bottom - top], metal),
    { kind: 'rectangle', corner: [left, top], size: [right - left, bottom - top], line: 'outline' },
    line([start, textY + 1], [start + textWidth(text, 2.5), textY + 1], 'thin'),
    line([start, textY + 1], tip, 'thin'),
    { kind: 'text', at: [start, textY], text, height: 2.5, anchor: 'start' },
  ];
}

/** The sign for a view that is turned: an arc with an arrowhead. */
function turned([x, y]: Spot): Shape[] {
  return [
    {
      kind: 'window',
      corner: [x - 3, y - 3],
      size: [6, 3],
      shapes: [{ kind: 'circle', centre: [x, y], radius: 2.2, line: 'thin' }],
    },
    { kind: 'arrowhead', tip: [x + 2.2, y + 1.4], towards: [x + 2, y - 2] },
  ];
}

/** What is cut, seen from the right end: front edge at the left, face up. */
export function sectionView({ plan }: WorktopPlan, section: Section): { shapes: Shape[]; scale: number } {
  const { widthMm, thicknessMm } = plan.top;
  const lowMm = Math.min(0, ...section.members.map(({ fromMm }) => fromMm));
  const highMm = Math.max(widthMm, ...section.members.map(({ toMm }) => toMm));
  const scale = fittingScale([highMm - lowMm, thicknessMm], [ROOM.right - ROOM.left, ROOM.thickness]);
  const start = (ROOM.left + ROOM.right - (highMm - lowMm) / scale) / 2;
  const place: Place = (yMm, zMm) => [start + (yMm - lowMm) / scale, ROOM.face - zMm / scale];
  const [left, top] = place(0, 0);
  const [right, bottom] = place(widthMm, -thicknessMm);
  const title = `A–A (1:${scale})`;
  const middle = (ROOM.left + ROOM.right) / 2;
  const stub = section.members.length > 0 ? STUB : 0;
  return {
    scale,
    shapes: [
      { kind: 'text', at: [middle, ROOM.label], text: title, height: 3.5, anchor: 'middle' },
      ...turned([middle + textWidth(title, 3.5) / 2 + 5, ROOM.label]),
      ...topShapes(place, widthMm, thicknessMm, section),
      ...section.members.flatMap((member) => memberShapes(place, member, thicknessMm)),
      ...stripShapes(place, section),
      ...dimensionShapes([{ from: left, to: right, text: dimensionText(widthMm) }], {
        reads: 'right',
        edge: bottom,
        firstLine: bottom + stub + 7,
      }),
      ...dimensionShapes([{ from: -bottom, to: -top, text: dimensionText(thicknessMm) }], {
        reads: 'upwards',
        edge: left,
        firstLine: left - 8,
      }),
    ],
  };
}
