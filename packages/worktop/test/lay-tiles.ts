import { expect } from 'vitest';
import type { Plan, WorktopPlan } from '../src/index.ts';
import { type Paper, type PrintedTemplate, papers, printTemplate } from '../src/print.ts';
import { type ReadPage, readPdf, type Spot } from './read-pdf.ts';

/** A registration mark is a square of this side. */
const MARK_MM = 4;

interface Tile extends ReadPage {
  readonly column: number;
  readonly row: number;
  /** What of the page shows the plan. */
  readonly window: ReadPage['clips'][number];
  readonly marks: readonly Spot[];
}

function tileOf(page: ReadPage): Tile {
  const place = page.texts
    .map(({ text }) => /^Column (\d+) of \d+, row (\d+) of \d+$/.exec(text))
    .find(Boolean);
  const [window] = page.clips;
  if (!place || !window) throw new Error('a page that is no tile');
  const marks = page.rectangles
    .filter(
      (one) =>
        Math.abs(one.right - one.left - MARK_MM) < 0.01 && Math.abs(one.top - one.bottom - MARK_MM) < 0.01,
    )
    .map((one) => [(one.left + one.right) / 2, (one.bottom + one.top) / 2] as const);
  return { ...page, column: Number(place[1]), row: Number(place[2]), window, marks };
}

/** The tiles of a template, by column and row: `2/1`. */
export async function tilesOf({
  pdf,
  columns,
  rows,
  pageCount,
}: PrintedTemplate): Promise<Map<string, Tile>> {
  const pages = await readPdf(pdf);
  expect(pages).toHaveLength(pageCount);
  const tiles = pages.slice(1).map(tileOf);
  expect(tiles).toHaveLength(columns * rows);
  return new Map(tiles.map((tile) => [`${tile.column}/${tile.row}`, tile]));
}

/** The marks of a tile on the border that it shares with a neighbour, in order along it. */
function marksOn({ marks, window }: Tile, border: 'left' | 'right' | 'bottom' | 'top', overlapMm: number) {
  const across = border === 'left' || border === 'right' ? 0 : 1;
  const inwards = border === 'left' || border === 'bottom' ? 1 : -1;
  const seam = window[border] + (inwards * overlapMm) / 2;
  return marks
    .filter((mark) => Math.abs(mark[across] - seam) < 0.01)
    .sort((a, b) => (a[1 - across] ?? 0) - (b[1 - across] ?? 0));
}

const less = (a: Spot, b: Spot): Spot => [a[0] - b[0], a[1] - b[1]];

/**
 * Where the datum corner lies on every page, by the marks alone: on the first tile it is drawn, and each further tile is
 * laid on its neighbour so that their marks meet.
 */
export function datumOn(
  tiles: Map<string, Tile>,
  template: PrintedTemplate,
  { lengthMm, widthMm }: Plan['top'],
) {
  const { columns, rows, overlapMm } = template;
  const first = tiles.get('1/1') as Tile;
  const top = first.rectangles.find(
    (one) =>
      Math.abs(one.right - one.left - lengthMm) < 0.01 && Math.abs(one.top - one.bottom - widthMm) < 0.01,
  );
  expect(top?.left).toBeGreaterThan(first.window.left);
  expect(top?.bottom).toBeGreaterThan(first.window.bottom);
  const datum = new Map([['1/1', [top?.left ?? Number.NaN, top?.bottom ?? Number.NaN] as const]]);
  const follow = (from: string, to: string, leaving: 'right' | 'top', entering: 'left' | 'bottom') => {
    const [a, b] = [tiles.get(from) as Tile, tiles.get(to) as Tile];
    const [out, into] = [marksOn(a, leaving, overlapMm), marksOn(b, entering, overlapMm)];
    expect(out.length).toBeGreaterThanOrEqual(2);
    expect(into).toHaveLength(out.length);
    const shifts = out.map((mark, i) => less(into[i] as Spot, mark));
    const [first = [Number.NaN, Number.NaN]] = shifts;
    // All marks meet at once: the tiles need not be stretched.
    for (const shift of shifts) expect(Math.hypot(...less(first, shift))).toBeLessThan(0.001);
    const [x, y] = datum.get(from) as Spot;
    return [x + first[0], y + first[1]] as const;
  };
  for (let row = 1; row <= rows; row += 1) {
    if (row > 1) datum.set(`1/${row}`, follow(`1/${row - 1}`, `1/${row}`, 'top', 'bottom'));
    for (let column = 2; column <= columns; column += 1) {
      const here = `${column}/${row}`;
      const fromLeft = follow(`${column - 1}/${row}`, here, 'right', 'left');
      datum.set(here, fromLeft);
      if (row > 1) {
        const fromFront = follow(`${column}/${row - 1}`, here, 'top', 'bottom');
        expect(Math.hypot(...less(fromLeft, fromFront))).toBeLessThan(0.002);
      }
    }
  }
  return datum;
}

interface Bored {
  readonly xMm: number;
  readonly yMm: number;
  readonly diameterMm: number;
  readonly label: string;
}

/** Every hole through the top, with its label. */
export const bored = ({ plan, holes }: WorktopPlan): Bored[] => [
  ...holes.map(({ row, column, ...hole }) => ({
    ...hole,
    diameterMm: plan.holes.diameterMm,
    label: `${row}.${column}`,
  })),
  ...(plan.cables ? [{ ...plan.cables, diameterMm: plan.cables.holeDiameterMm, label: 'cables' }] : []),
];

/** Reads a template back and compares it with the plan; gives the farthest that any hole is off. */
export async function worstError(result: WorktopPlan, paper: Paper, marginMm: number): Promise<number> {
  const template = printTemplate(result, { paper, marginMm });
  const tiles = await tilesOf(template);
  const datum = datumOn(tiles, template, result.plan.top);
  const holes = bored(result);
  const whole = new Set<Bored>();
  let worst = 0;
  for (const [key, tile] of tiles) {
    const [datumX, datumY] = datum.get(key) as Spot;
    const sheet = [tile.widthMm, tile.heightMm].sort((a, b) => a - b);
    expect(sheet[0]).toBeCloseTo(papers[paper][0], 3);
    expect(sheet[1]).toBeCloseTo(papers[paper][1], 3);
    expect(tile.window.left).toBeCloseTo(marginMm, 3);
    expect(tile.heightMm - tile.window.top).toBeCloseTo(marginMm, 3);
    for (const circle of tile.circles) {
      const [xMm, yMm] = [circle.x - datumX, circle.y - datumY];
      const hole = holes.find((one) => Math.hypot(one.xMm - xMm, one.yMm - yMm) < 0.4);
      if (!hole) throw new Error(`a circle at ${xMm}, ${yMm}, where no hole is planned`);
      worst = Math.max(worst, Math.hypot(hole.xMm - xMm, hole.yMm - yMm));
      expect(2 * circle.radius).toBeCloseTo(hole.diameterMm, 2);
      const crossing = tile.lines.filter(
        ({ from, to }) =>
          Math.hypot((from[0] + to[0]) / 2 - circle.x, (from[1] + to[1]) / 2 - circle.y) < 0.001 &&
          Math.hypot(from[0] - to[0], from[1] - to[1]) > hole.diameterMm,
      );
      expect(crossing.length).toBeGreaterThanOrEqual(2);
      const { left, right, bottom, top } = tile.window;
      const inside =
        circle.x - circle.radius >= left &&
        circle.x + circle.radius <= right &&
        circle.y - circle.radius >= bottom &&
        circle.y + circle.radius <= top;
      if (inside) whole.add(hole);
    }
  }
  expect(whole.size).toBe(holes.length);
  return worst;
}
