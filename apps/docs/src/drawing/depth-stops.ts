import type { StoppedHole, ThreadEngagement } from '@scantling/fastening';
import type { Drawing, Say } from '../calculator/calculation.ts';
import { type Piece, piece } from '../calculator/piece.ts';
import { dimension } from './dimension.ts';
import { hatching, label } from './marks.ts';
import { SHEET_WIDTH, short, through } from './sheet.ts';

export interface DrawnStops {
  readonly topThicknessMm: number;
  readonly railMm: number;
  readonly washerMm: number;
  readonly gapMm: number;
  readonly screwLengthMm: number;
  readonly threadLengthMm: number;
  readonly tipLengthMm: number;
  readonly leadBitTipLengthMm: number;
  readonly shankBitTipLengthMm: number;
  readonly stopLengthMm: number;
  readonly drilledThroughMm: number;
  readonly screw: ThreadEngagement;
  readonly leadHole: StoppedHole | null;
  readonly shankHole: StoppedHole | null;
  readonly say: Say;
}

const TOP = 34;
const HEIGHT = 270;
const LEFT = 12;
const RIGHT = SHEET_WIDTH - 12;
/** Where each of the three stands. */
const COLUMNS = { shank: 66, lead: 196, screw: 326 } as const;
/** Widths are not to scale: half of each, on the sheet. */
const HALF = { lead: 6, shank: 9, head: 16, stop: 15, washer: 26, rail: 46 } as const;

/** Section through top and rail, heights to scale: the two bits with their stops, and the screw in its place. */
export function drawDepthStops(drawn: DrawnStops): Drawing {
  const { topThicknessMm, railMm, washerMm, gapMm, drilledThroughMm, stopLengthMm, screw, say } = drawn;
  const fixtureMm = washerMm + railMm + gapMm;
  const highestMm = Math.max(topThicknessMm, drawn.screwLengthMm - fixtureMm);
  const lowestMm = -Math.max(fixtureMm + 6, drilledThroughMm + stopLengthMm + 4);
  const scale = HEIGHT / (highestMm - lowestMm);
  /** Height above the underside of the wood. */
  const y = (mm: number) => TOP + (highestMm - mm) * scale;
  const box = (x: number, half: number, fromMm: number, toMm: number, kind: string) =>
    piece('rect', {
      class: kind,
      x: short(x - half),
      y: short(y(toMm)),
      width: 2 * half,
      height: short((toMm - fromMm) * scale),
    });
  const rail = (x: number, lowMm: number, highMm: number): Piece[] =>
    highMm - lowMm > 1e-9
      ? [
          piece('rect', {
            class: 'outline',
            fill: 'url(#section)',
            x: x - HALF.rail,
            y: short(y(highMm)),
            width: 2 * HALF.rail,
            height: short((highMm - lowMm) * scale),
          }),
        ]
      : [];

  /** What stands in the wood, pointed, from below. */
  const pointed = (
    x: number,
    half: number,
    fromMm: number,
    shoulderMm: number,
    tipMm: number,
    kind: string,
  ) =>
    piece('path', {
      class: kind,
      d: through(
        [
          [x - half, y(fromMm)],
          [x - half, y(shoulderMm)],
          [x, y(tipMm)],
          [x + half, y(shoulderMm)],
          [x + half, y(fromMm)],
        ],
        true,
      ),
    });

  const bit = (x: number, half: number, name: string, tipLengthMm: number, hole: StoppedHole | null) => {
    if (!hole) return [label([x, y(topThicknessMm / 2)], `no hole ${name}`, 'middle', 'remark')];
    const tipMm = hole.holeDepthMm + tipLengthMm;
    return [
      ...(drilledThroughMm > 0 ? rail(x, -gapMm - railMm, -gapMm) : []),
      pointed(x, half, -drilledThroughMm - stopLengthMm - 3, hole.holeDepthMm, tipMm, 'outline paper'),
      box(x, HALF.stop, -drilledThroughMm - stopLengthMm, -drilledThroughMm, 'outline metal'),
      dimension([x + 30, y(-drilledThroughMm)], [x + 30, y(tipMm)], 12, say(hole.stopFromTipMm)),
      label([x, TOP - 14], `bit ${name}`),
    ];
  };

  const x = COLUMNS.screw;
  const headMm = -fixtureMm;
  const tipMm = headMm + drawn.screwLengthMm;
  const threadMm = tipMm - drawn.threadLengthMm;
  const conical = Math.min(drawn.tipLengthMm, drawn.threadLengthMm);
  const turns = Math.max(0, Math.min(40, Math.floor(((drawn.threadLengthMm - conical) * scale) / 6)));
  const thread = Array.from({ length: turns }, (_, i) => {
    const at = y(threadMm) - i * 6;
    return `M${x - HALF.lead - 3} ${short(at)}L${x + HALF.lead + 3} ${short(at - 4)}`;
  });
  const stock = screw.stockAboveTipMm;
  const stockEnds = [Math.min(tipMm, topThicknessMm), Math.max(tipMm, topThicknessMm)] as const;
  return {
    title: `Section of a top ${say(topThicknessMm)} thick with the bits, their stops and the screw, whose tip ends ${say(Math.abs(stock))} ${stock < 0 ? 'above' : 'below'} the face; widths not to scale`,
    box: [0, 0, SHEET_WIDTH, TOP + HEIGHT + 20],
    shapes: [
      piece('defs', {}, hatching('section')),
      piece('rect', {
        class: 'outline wood',
        x: LEFT,
        y: short(y(topThicknessMm)),
        width: RIGHT - LEFT,
        height: short(topThicknessMm * scale),
      }),
      ...bit(COLUMNS.shank, HALF.shank, 'for the shank', drawn.shankBitTipLengthMm, drawn.shankHole),
      ...bit(COLUMNS.lead, HALF.lead, 'for the thread', drawn.leadBitTipLengthMm, drawn.leadHole),
      ...rail(x, -gapMm - railMm, -gapMm),
      ...(washerMm > 0 ? [box(x, HALF.washer, headMm, headMm + washerMm, 'outline paper')] : []),
      pointed(x, HALF.lead, headMm, tipMm - conical, tipMm, 'outline paper'),
      piece('path', { class: 'thin', d: thread.join('') }),
      box(x, HALF.head, headMm - 4, headMm, 'outline metal'),
      ...(Math.abs(stock) * scale > 2
        ? [
            dimension([x + 34, y(stockEnds[0])], [x + 34, y(stockEnds[1])], 16, ''),
            label([x + 58, (y(stockEnds[0]) + y(stockEnds[1])) / 2 + 5], say(stock), 'start'),
          ]
        : []),
      label([x, TOP - 14], 'screw'),
      label(
        [SHEET_WIDTH / 2, TOP + HEIGHT + 14],
        'Heights are to scale, widths are not.',
        'middle',
        'remark',
      ),
    ],
  };
}
