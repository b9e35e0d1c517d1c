import { fitted } from './lettering.ts';
import { firstAngleSymbol } from './projection-symbol.ts';
import type { Lettering, Shape, Spot } from './scene.ts';

/** A3 lying (ISO 216), with the frame of ISO 5457: 20 mm at the filing edge, 10 mm elsewhere. */
export const SHEET: Spot = [420, 297];
export const FRAME = { left: 20, top: 10, right: 410, bottom: 287 };

/** Reduction scales of ISO 5455, largest first. */
const SCALES = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** The largest standard scale at which a size fits some room, as its divisor. */
export const fittingScale = ([length, width]: Spot, [roomLength, roomWidth]: Spot): number =>
  SCALES.find((scale) => length / scale <= roomLength && width / scale <= roomWidth) ?? 1000;

/** Width of the title block (ISO 7200: at most 180 mm), and of a quarter of it; height of one of its rows. */
const TITLE_WIDTH = 180;
const CELL_WIDTH = 45;
const ROW_HEIGHT = 9;

/** One field of the title block: a small caption over its entry, over so many quarters of the width. */
interface Field {
  readonly caption: string;
  readonly entry: string;
  readonly quarters: number;
}

/** What the title block says; what people have to enter by hand stays empty. */
export interface Title {
  readonly title: string;
  readonly documentType: string;
  readonly scale: string;
  readonly material: string;
}

const field = (caption: string, entry = '', quarters = 1): Field => ({ caption, entry, quarters });

const rowsOf = ({ title, documentType, scale, material }: Title): Field[][] => [
  [field('Title', title, 4)],
  [field('Document type', documentType, 2), field('Scale', scale), field('Sheet', '1 of 1, A3')],
  [field('Material', material, 2), field('Dimensions', 'mm'), field('Projection', 'first angle')],
  [field('Owner'), field('Made by'), field('Approved by'), field('Number, date')],
];

const label = (at: Spot, text: string, height: number): Lettering => ({
  kind: 'text',
  at,
  text,
  height,
  anchor: 'start',
});

const line = (from: Spot, to: Spot): Shape => ({ kind: 'line', from, to, line: 'thin' });

function rowShapes(fields: readonly Field[], left: number, top: number, first: boolean): Shape[] {
  let x = left;
  return fields.flatMap(({ caption, entry, quarters }) => {
    const at = x;
    x += quarters * CELL_WIDTH;
    const height = first ? 3.5 : 2.5;
    const room = quarters * CELL_WIDTH - 4;
    return [
      label([at + 2, top + 2.5], caption, 1.8),
      ...(entry ? [label([at + 2, top + 7.2], fitted(entry, height, room), height)] : []),
      ...(at > left ? [line([at, top], [at, top + ROW_HEIGHT])] : []),
    ];
  });
}

// Written out, for arithmetic at this level stays in every program that imports anything beside it.
/** Top edge of the title block: four rows above the foot of the frame. */
const TITLE_TOP = 251;
/** Its left edge: as far from the frame's right as it is wide. */
export const TITLE_LEFT = 230;

/** Frame and title block. */
export function sheetShapes(title: Title): Shape[] {
  const rows = rowsOf(title);
  const left = TITLE_LEFT;
  const top = TITLE_TOP;
  return [
    {
      kind: 'rectangle',
      corner: [FRAME.left, FRAME.top],
      size: [FRAME.right - FRAME.left, FRAME.bottom - FRAME.top],
      line: 'outline',
    },
    {
      kind: 'rectangle',
      corner: [left, top],
      size: [TITLE_WIDTH, rows.length * ROW_HEIGHT],
      line: 'outline',
    },
    ...rows.slice(1).map((_, i) => {
      const y = top + (i + 1) * ROW_HEIGHT;
      return line([left, y], [FRAME.right, y]);
    }),
    ...rows.flatMap((fields, i) => rowShapes(fields, left, top + i * ROW_HEIGHT, i === 0)),
    ...firstAngleSymbol([FRAME.right - 14, top + 2.5 * ROW_HEIGHT]),
  ];
}
