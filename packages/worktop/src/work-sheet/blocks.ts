import type { Shape, Spot } from '../drawing/scene.ts';
import type { Setting, WorkSheet, WorkStep } from './model.ts';
import { linesOf } from './paragraph.ts';

/** Something that stands on one page as a whole, drawn from its top left corner. */
export interface Block {
  readonly heightMm: number;
  readonly shapes: (corner: Spot) => readonly Shape[];
  /** It stands on the page of the next block: a heading, and what belongs before the tasks. */
  readonly keepsWithNext: boolean;
}

/** Heights of capitals, mm. To be read at arm's length: 2.8 mm are type of 11 points. */
const BODY = 2.8;
const SMALL = 2;
const HEADING = 4;
const TITLE = 5.5;
/** From line to line, in heights of capitals. */
const LEADING = 1.75;
/** Of a box to tick. */
const BOX = 4.2;
const INSET = 8;
const CELLS = 3;
const PAD = 1.8;

const write = (at: Spot, text: string, height: number): Shape => ({
  kind: 'text',
  ...{ at, text, height },
  anchor: 'start',
});

/** Lines of text from a corner downwards. */
const paragraph = ([x, y]: Spot, lines: readonly string[], height: number): Shape[] =>
  lines.map((line, i) => write([x, y + height + i * height * LEADING], line, height));

const tall = (lines: readonly string[], height: number) => ((lines.length - 1) * LEADING + 1) * height;

const box = ([x, y]: Spot, size: Spot, line: 'outline' | 'thin'): Shape => ({
  kind: 'rectangle',
  corner: [x, y],
  size,
  line,
});

const rule = ([x, y]: Spot, widthMm: number, line: 'outline' | 'thin'): Shape => ({
  kind: 'line',
  from: [x, y],
  to: [x + widthMm, y],
  line,
});

/** A mark in the margin with text beside it. */
function marked(text: string, widthMm: number, mark: (corner: Spot) => Shape[], below = 0): Block {
  const lines = linesOf(text, BODY, widthMm - INSET);
  return {
    heightMm: Math.max(BOX, tall(lines, BODY) + (BOX - BODY) / 2) + below + 2.6,
    shapes: ([x, y]) => [
      ...mark([x, y]),
      ...paragraph([x + INSET, y + (BOX - BODY) / 2], lines, BODY),
      ...(below > 0
        ? [rule([x + INSET, y + tall(lines, BODY) + (BOX - BODY) / 2 + below], widthMm - INSET, 'thin')]
        : []),
    ],
    keepsWithNext: false,
  };
}

const task = (text: string, widthMm: number): Block =>
  marked(text, widthMm, (corner) => [box(corner, [BOX, BOX], 'outline')]);

/** An exclamation mark in a triangle, as on signs that warn (ISO 7010). */
const caution = (text: string, widthMm: number): Block =>
  marked(text, widthMm, ([x, y]) => {
    const corners: [Spot, Spot, Spot] = [
      [x + BOX / 2, y],
      [x + BOX, y + BOX],
      [x, y + BOX],
    ];
    return [
      ...corners.map(
        (from, i): Shape => ({ kind: 'line', from, to: corners[(i + 1) % 3] as Spot, line: 'thin' }),
      ),
      {
        ...(write([x + BOX / 2, y + BOX - 0.6], '!', 2) as Extract<Shape, { kind: 'text' }>),
        anchor: 'middle',
      },
    ];
  });

/** A question with a line to write on. */
const decision = (text: string, widthMm: number): Block =>
  marked(`To decide: ${text}`, widthMm, ([x, y]) => [write([x + 0.8, y + BOX - 0.5], '?', 3.5)], 9);

/** Settings as fields of a table, a small caption over each entry. */
function settingRow(settings: readonly Setting[], widthMm: number): Block {
  const cell = widthMm / settings.length;
  const entries = settings.map(({ name, value }) => ({
    caption: linesOf(name, SMALL, cell - 2 * PAD),
    entry: linesOf(value, BODY, cell - 2 * PAD),
  }));
  const captions = Math.max(...entries.map(({ caption }) => tall(caption, SMALL)));
  const heightMm = PAD + captions + 1.6 + Math.max(...entries.map(({ entry }) => tall(entry, BODY))) + PAD;
  return {
    heightMm,
    shapes: ([x, y]) =>
      entries.flatMap(({ caption, entry }, i) => {
        const left = x + i * cell;
        return [
          box([left, y], [cell, heightMm], 'thin'),
          ...paragraph([left + PAD, y + PAD], caption, SMALL),
          ...paragraph([left + PAD, y + PAD + captions + 1.6], entry, BODY),
        ];
      }),
    keepsWithNext: true,
  };
}

const rows = (settings: readonly Setting[]) =>
  Array.from({ length: Math.ceil(settings.length / CELLS) }, (_, i) =>
    settings.slice(i * CELLS, (i + 1) * CELLS),
  );

const gap = (heightMm: number): Block => ({ heightMm, shapes: () => [], keepsWithNext: true });

function heading(text: string, widthMm: number): Block {
  const lines = linesOf(text, HEADING, widthMm - 20);
  return {
    heightMm: 7 + tall(lines, HEADING) + 4.5,
    shapes: ([x, y]) => [
      ...paragraph([x, y + 7], lines, HEADING),
      write([x + widthMm - 16, y + 7 + HEADING], 'done', BODY),
      box([x + widthMm - BOX, y + 7 - 0.1], [BOX, BOX], 'outline'),
      rule([x, y + 7 + tall(lines, HEADING) + 1.8], widthMm, 'outline'),
    ],
    keepsWithNext: true,
  };
}

function stepBlocks(step: WorkStep, number: number, widthMm: number): Block[] {
  const { title, settings, cautions, decisions, tasks } = step;
  return [
    heading(`${number}  ${title}`, widthMm),
    ...cautions.map((text) => ({ ...caution(text, widthMm), keepsWithNext: true })),
    ...rows(settings).map((row) => settingRow(row, widthMm)),
    ...(settings.length ? [gap(3)] : []),
    ...decisions.map((text) => decision(text, widthMm)),
    ...tasks.map((text) => task(text, widthMm)),
  ];
}

/** Name of the plan, and fields to fill in by hand. */
function titleBlock(name: string, widthMm: number): Block {
  const lines = linesOf(name, TITLE, widthMm - 2 * PAD);
  const top = PAD + SMALL + 2.2 + tall(lines, TITLE) + 3;
  const fields = ['built by', 'begun on', 'done on', 'moisture of the wood, %'];
  const cell = widthMm / fields.length;
  return {
    heightMm: top + 13 + 4,
    shapes: ([x, y]) => [
      box([x, y], [widthMm, top + 13], 'outline'),
      write([x + PAD, y + PAD + SMALL], 'work sheet', SMALL),
      ...paragraph([x + PAD, y + PAD + SMALL + 2.2], lines, TITLE),
      ...fields.flatMap((field, i) => [
        box([x + i * cell, y + top], [cell, 13], 'thin'),
        write([x + i * cell + PAD, y + top + PAD + SMALL], field, SMALL),
      ]),
    ],
    keepsWithNext: false,
  };
}

function plain(text: string, widthMm: number): Block {
  const lines = linesOf(text, BODY, widthMm);
  return {
    heightMm: tall(lines, BODY) + 3,
    shapes: (corner) => paragraph(corner, lines, BODY),
    keepsWithNext: false,
  };
}

/** Everything on the sheet, from top to bottom. */
export const blocksOf = (sheet: WorkSheet, widthMm: number): Block[] => [
  titleBlock(sheet.name, widthMm),
  plain(sheet.says, widthMm),
  ...[...sheet.warnings, ...sheet.cautions].map((text) => caution(text, widthMm)),
  ...sheet.steps.flatMap((step, i) => stepBlocks(step, i + 1, widthMm)),
];
