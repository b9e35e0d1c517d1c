import type { Drawing, Say } from '../calculator/calculation.ts';
import { type Piece, piece } from '../calculator/piece.ts';
import { dimension } from './dimension.ts';
import { centreMark, label } from './marks.ts';
import { SHEET_WIDTH, short, viewOf } from './sheet.ts';

export interface DrawnSlot {
  readonly yMm: number;
  readonly swellMm: number;
  readonly shrinkMm: number;
  readonly slotLengthMm: number;
  readonly screwFromInnerEndMm: number;
  readonly onLine: boolean;
}

export interface DrawnSlots {
  readonly widthMm: number;
  /** The fixed line, from the front edge. */
  readonly heldMm: number;
  readonly slots: readonly DrawnSlot[];
  /** The one that is drawn large. */
  readonly longest: DrawnSlot;
  readonly shankDiameterMm: number;
  readonly washerMm: number;
  readonly say: Say;
}

const TOP = 26;
const DEPTH = 56;
/** From the edge of the sheet to the washer drawn large, and room for words beside it. */
const LARGEST = 100;
const WIDEST = 150;

const round = (x: number, y: number, radius: number, kind: string): Piece =>
  piece('circle', { class: kind, cx: short(x), cy: short(y), r: short(radius) });

/** A slot from one place to another, its ends round. */
const opening = (from: number, to: number, y: number, width: number, kind: string): Piece =>
  piece('rect', {
    class: kind,
    x: short(from),
    y: short(y - width / 2),
    width: short(to - from),
    height: short(width),
    rx: short(width / 2),
  });

/** The top across the grain, its front on the left, with all rows; below it the longest slot with its screw, enlarged. */
export function drawSlots(drawn: DrawnSlots): Drawing {
  const { widthMm, heldMm, slots, longest, shankDiameterMm, washerMm, say } = drawn;
  const room = { left: 12, top: TOP, width: SHEET_WIDTH - 24, height: DEPTH };
  const view = viewOf(room, 0, 0, widthMm, 1e-3);
  const at = (yMm: number) => view.at(yMm, 0)[0];
  const middle = TOP + DEPTH / 2;
  const outwards = (slot: DrawnSlot) => (slot.yMm < heldMm ? -1 : 1);
  const rows = slots.map(({ yMm, onLine }) =>
    round(at(yMm), middle, 9, `paper ${onLine ? 'outline' : 'thin'}`),
  );
  const numbers = slots.map(({ yMm }, i) => label([at(yMm), middle + 5], `${i + 1}`));

  const away = outwards(longest);
  const inner = -longest.screwFromInnerEndMm;
  const outer = longest.slotLengthMm - longest.screwFromInnerEndMm;
  const [left, right] = away > 0 ? [inner, outer] : [-outer, -inner];
  const reach = Math.max(washerMm / 2, -left, right) + Math.max(longest.swellMm, longest.shrinkMm);
  const scale = Math.min(WIDEST / reach, LARGEST / Math.max(washerMm / 2, shankDiameterMm));
  const x = (mm: number) => SHEET_WIDTH / 2 + mm * scale;
  const radius = (shankDiameterMm / 2) * scale;
  const half = Math.max((washerMm / 2) * scale, radius);
  const detail = TOP + DEPTH + 30 + half;
  const screw = (mm: number, kind: string) => round(x(mm), detail, radius, kind);
  const positions: readonly (readonly [number, string])[] = [
    [away * longest.swellMm, 'then'],
    [-away * longest.shrinkMm, 'then'],
    [0, 'outline'],
  ];
  const ends = [x(left), x(right)] as const;
  const innerX = away > 0 ? ends[0] : ends[1];
  const fromInner: readonly [number, number] = innerX < x(0) ? [innerX, x(0)] : [x(0), innerX];
  const below = detail + radius + 4;
  return {
    title: `Rows of screws across a top ${say(widthMm)} wide, held ${say(heldMm)} from its front edge, and the longest slot: ${say(longest.slotLengthMm)} with the screw ${say(longest.screwFromInnerEndMm)} from its inner end`,
    box: [0, 0, SHEET_WIDTH, Math.max(below + 50, detail + half) + 12],
    shapes: [
      piece('rect', { class: 'outline wood', x: 12, y: TOP, width: SHEET_WIDTH - 24, height: DEPTH }),
      piece('path', { class: 'centre', d: `M${short(at(heldMm))} ${TOP - 8}v${DEPTH + 16}` }),
      label([at(heldMm), TOP - 12], 'fixed line'),
      label([14, TOP - 12], 'front', 'start', 'remark'),
      label([SHEET_WIDTH - 14, TOP - 12], 'back', 'end', 'remark'),
      ...rows,
      ...numbers,
      label([14, detail - half], `row ${slots.indexOf(longest) + 1}`, 'start'),
      longest.onLine ||
        label(
          [away > 0 ? 14 : SHEET_WIDTH - 14, detail + 5],
          away > 0 ? '← fixed line' : 'fixed line →',
          away > 0 ? 'start' : 'end',
          'remark',
        ),
      round(x(0), detail, half, 'behind'),
      opening(...ends, detail, 2 * radius, 'outline paper'),
      ...positions.map(([mm, kind]) => screw(mm, kind)),
      centreMark([x(0), detail], radius),
      dimension([fromInner[0], below], [fromInner[1], below], 16, say(longest.screwFromInnerEndMm)),
      dimension([ends[0], below], [ends[1], below], 42, say(longest.slotLengthMm)),
    ].filter((shape) => shape !== true),
  };
}
