import type { Lettering, Shape, Spot } from './scene.ts';

/** A3 lying (ISO 216), with the frame of ISO 5457: 20 mm at the filing edge, 10 mm elsewhere. */
export const SHEET: Spot = [420, 297];
const FRAME = { left: 20, top: 10, right: 410, bottom: 287 };

/** Width of the title block (ISO 7200: at most 180 mm), and height of one of its rows. */
const TITLE_WIDTH = 180;
const ROW_HEIGHT = 9;

/** Reduction scales of ISO 5455, largest first. */
const SCALES = [1, 2, 5, 10, 20, 50, 100];

/** Where a view may stand inside the frame, leaving room for its dimensions and the title block. */
export const VIEW = { left: 60, top: 40, right: 388, bottom: 225 };

/** The largest standard scale at which a top fits the view, as its divisor; 1:100 takes any that a plan allows. */
export const fittingScale = (lengthMm: number, widthMm: number): number =>
  SCALES.find((s) => lengthMm / s <= VIEW.right - VIEW.left && widthMm / s <= VIEW.bottom - VIEW.top) ?? 100;

const label = (at: Spot, text: string, height = 2.5): Lettering => ({
  kind: 'text',
  at,
  text,
  height,
  anchor: 'start',
});

/** Frame and title block. Each field is a small caption over its entry. */
export function sheetShapes(fields: readonly (readonly [caption: string, entry: string])[]): Shape[] {
  const [heading, ...others] = fields;
  const rows = 1 + Math.ceil(others.length / 2);
  const top = FRAME.bottom - rows * ROW_HEIGHT;
  const left = FRAME.right - TITLE_WIDTH;
  const cell = ([caption, entry]: readonly [string, string], x: number, row: number): Shape[] => [
    label([x + 2, top + row * ROW_HEIGHT + 2.8], caption, 1.8),
    label([x + 2, top + row * ROW_HEIGHT + 7.2], entry, row === 0 ? 3.5 : 2.5),
  ];
  return [
    {
      kind: 'rectangle',
      corner: [FRAME.left, FRAME.top],
      size: [FRAME.right - FRAME.left, FRAME.bottom - FRAME.top],
      line: 'outline',
    },
    { kind: 'rectangle', corner: [left, top], size: [TITLE_WIDTH, rows * ROW_HEIGHT], line: 'outline' },
    ...Array.from({ length: rows - 1 }, (_, i): Shape => {
      const y = top + (i + 1) * ROW_HEIGHT;
      return { kind: 'line', from: [left, y], to: [FRAME.right, y], line: 'thin' };
    }),
    {
      kind: 'line',
      from: [left + TITLE_WIDTH / 2, top + ROW_HEIGHT],
      to: [left + TITLE_WIDTH / 2, FRAME.bottom],
      line: 'thin',
    },
    ...(heading ? cell(heading, left, 0) : []),
    ...others.flatMap((field, i) => cell(field, left + (i % 2) * (TITLE_WIDTH / 2), 1 + Math.floor(i / 2))),
  ];
}
