import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop, type WorktopPlan } from '../src/index.ts';
import { type Paper, type PrintedTemplate, papers, printTemplate } from '../src/print.ts';
import { plainBench } from './plain-bench.ts';
import { type ReadPage, readPdf, type Spot } from './read-pdf.ts';

/** What the issue asks for. */
const WITHIN_MM = 0.05;
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

async function tilesOf({ pdf, columns, rows, pageCount }: PrintedTemplate): Promise<Map<string, Tile>> {
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
function datumOn(tiles: Map<string, Tile>, template: PrintedTemplate, { lengthMm, widthMm }: Plan['top']) {
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

const bored = ({ plan, holes }: WorktopPlan): Bored[] => [
  ...holes.map(({ row, column, ...hole }) => ({
    ...hole,
    diameterMm: plan.holes.diameterMm,
    label: `${row}.${column}`,
  })),
  ...(plan.cables ? [{ ...plan.cables, diameterMm: plan.cables.holeDiameterMm, label: 'cables' }] : []),
];

/** Reads a template back and compares it with the plan; gives the farthest that any hole is off. */
async function worstError(result: WorktopPlan, paper: Paper, marginMm: number): Promise<number> {
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

/** Everything in inches: a drawing of a plan must not round them. */
const inches: Plan = {
  ...plainBench,
  top: { ...plainBench.top, lengthMm: 48 * 25.4, widthMm: 25.1875 * 25.4 },
  holes: {
    ...plainBench.holes,
    diameterMm: 0.75 * 25.4,
    pitchXMm: (4 + 11 / 32) * 25.4,
    pitchYMm: 3.9375 * 25.4,
    first: { xMm: 2.71875 * 25.4, yMm: 6.3125 * 25.4 },
    columns: 9,
    blocked: 'leave out',
  },
};
const withCables: Plan = {
  ...plainBench,
  cables: {
    ...{ holeDiameterMm: 80, xMm: 900, yMm: 590, mostFillPct: 40, heldBelowMm: 700 },
    ...{ cableLengthMm: 1500, slackPct: 10, bundle: [{ name: 'lamp', diameterMm: 7, count: 2 }] },
  },
};

describe('a template read back', () => {
  const sizes = Object.keys(papers) as Paper[];
  const plans = { plainBench, inches, withCables };
  test.each(
    sizes.flatMap((paper) => Object.entries(plans).map(([name, plan]) => [paper, name, plan] as const)),
  )('on %s, %s: every hole is where the plan says, and whole on some tile', async (paper, _, plan) => {
    const result = planWorktop(plan);
    expect(bored(result).length).toBeGreaterThan(20);
    expect(await worstError(result, paper, 10)).toBeLessThanOrEqual(WITHIN_MM);
  });

  test('any plan on any paper', async () => {
    const plans = fc.record({
      lengthMm: fc.double({ min: 60, max: 900, noNaN: true }),
      widthMm: fc.double({ min: 60, max: 700, noNaN: true }),
      diameterMm: fc.double({ min: 3, max: 40, noNaN: true }),
      gapX: fc.double({ min: 0, max: 60, noNaN: true }),
      gapY: fc.double({ min: 0, max: 60, noNaN: true }),
      shareX: fc.double({ min: 0, max: 1, noNaN: true }),
      shareY: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    const runs = { paper: fc.constantFrom(...sizes), marginMm: fc.double({ min: 0, max: 20, noNaN: true }) };
    await fc.assert(
      fc.asyncProperty(plans, fc.record(runs), async (top, { paper, marginMm }) => {
        const { lengthMm, widthMm, diameterMm, gapX, gapY, shareX, shareY } = top;
        const result = planWorktop({
          ...plainBench,
          top: { ...plainBench.top, lengthMm, widthMm, inlays: [] },
          holes: {
            ...plainBench.holes,
            ...{ diameterMm, pitchXMm: diameterMm + gapX, pitchYMm: diameterMm + gapY, columns: 6, rows: 5 },
            ...{
              first: { xMm: shareX * lengthMm, yMm: shareY * widthMm },
              edgeMarginMm: 0,
              blocked: 'leave out',
            },
          },
        });
        expect(await worstError(result, paper, marginMm)).toBeLessThanOrEqual(WITHIN_MM);
      }),
      { numRuns: 25 },
    );
  });

  test('has bars of 100 mm and of 4 in on every page', async () => {
    for (const paper of sizes) {
      const pages = await readPdf(printTemplate(planWorktop(plainBench), { paper, marginMm: 5 }).pdf);
      expect(pages.length).toBeGreaterThan(2);
      for (const { lines, texts, widthMm } of pages) {
        for (const [says, lengthMm] of [
          ['100 mm', 100],
          ['4 in', 101.6],
        ] as const) {
          const said = texts.find(({ text }) => text === says);
          const bar = lines.find(
            ({ from, to }) => from[1] === to[1] && Math.abs(from[1] - (said?.y ?? Number.NaN)) < 0.01,
          );
          expect((bar?.to[0] ?? 0) - (bar?.from[0] ?? 0)).toBeCloseTo(lengthMm, 3);
          expect(bar?.to[0]).toBeLessThanOrEqual(widthMm - 5 + 0.001);
        }
      }
    }
  });

  test('numbers each hole where there is room, on a tile that shows it', async () => {
    const result = planWorktop(inches);
    const tiles = await tilesOf(printTemplate(result, { paper: 'A4', marginMm: 10 }));
    const said = new Set([...tiles.values()].flatMap(({ texts }) => texts.map(({ text }) => text)));
    for (const { label } of bored(result)) expect(said).toContain(label);
    for (const edge of ['datum edge, front', 'datum edge, left', 'back edge', 'right edge', 'screw'])
      expect(said).toContain(edge);
    expect(said).toContain('brass cutting guide');
  });

  test('keeps all that is written on the paper, inside of the margin', async () => {
    const long = { ...plainBench, name: 'W'.repeat(60) };
    for (const plan of [plainBench, long]) {
      const pages = await readPdf(printTemplate(planWorktop(plan), { paper: 'Letter', marginMm: 12.7 }).pdf);
      for (const { texts, widthMm, heightMm } of pages) {
        expect(texts.length).toBeGreaterThan(3);
        for (const { x, y } of texts) {
          expect(x).toBeGreaterThanOrEqual(12.7 - 0.001);
          expect(x).toBeLessThanOrEqual(widthMm - 12.7);
          expect(y).toBeGreaterThanOrEqual(12.7 - 0.001);
          expect(y).toBeLessThanOrEqual(heightMm - 12.7);
        }
      }
    }
  });
});

describe('a template', () => {
  const result = planWorktop(plainBench);

  test('is the same bytes for the same plan', () => {
    const print = () =>
      printTemplate(planWorktop(structuredClone(plainBench)), { paper: 'A3', marginMm: 8 }).pdf;
    expect(Buffer.from(print()).equals(Buffer.from(print()))).toBe(true);
  });

  test('of one tile needs no marks', async () => {
    const small = planWorktop({
      ...plainBench,
      top: { ...plainBench.top, lengthMm: 150, widthMm: 120, inlays: [] },
      holes: {
        ...plainBench.holes,
        first: { xMm: 60, yMm: 60 },
        columns: 1,
        rows: 1,
        edgeMarginMm: 0,
        blocked: 'leave out',
      },
    });
    expect(small.holes).toHaveLength(1);
    const template = printTemplate(small, { paper: 'A4', marginMm: 10 });
    expect([template.columns, template.rows, template.pageCount]).toEqual([1, 1, 2]);
    expect((await tilesOf(template)).get('1/1')?.marks).toEqual([]);
    expect(await worstError(small, 'A4', 10)).toBeLessThanOrEqual(WITHIN_MM);
  });

  // 5 m by 1.2 m, tiles of 190 by 257 mm upright, or 277 by 170 mm lying, less the overlap.
  test('of a large top says how many pages it takes, and refuses a wallpaper', () => {
    const large = (lengthMm: number, widthMm: number) =>
      planWorktop({ ...plainBench, top: { ...plainBench.top, lengthMm, widthMm } });
    const { columns, rows, overlapMm, pageCount } = printTemplate(large(5000, 1200), {
      paper: 'A4',
      marginMm: 10,
    });
    const tiles = (long: number, wide: number) =>
      Math.ceil((5012 - overlapMm) / (long - overlapMm)) * Math.ceil((1212 - overlapMm) / (wide - overlapMm));
    expect(columns * rows).toBe(Math.min(tiles(190, 257), tiles(277, 170)));
    expect(pageCount).toBe(columns * rows + 1);
    expect(() => printTemplate(large(10_000, 10_000), { paper: 'A4', marginMm: 10 })).toThrow(
      /^printTemplate requires at most 600 pages, got \d+ of A4: print on larger paper/,
    );
  });

  test('refuses paper that a hole does not fit, and margins that are none', () => {
    const wide = planWorktop({
      ...plainBench,
      holes: {
        ...plainBench.holes,
        diameterMm: 190,
        pitchXMm: 200,
        pitchYMm: 200,
        blocked: 'leave out',
        edgeMarginMm: 0,
      },
      cables: { ...(withCables.cables as NonNullable<Plan['cables']>), holeDiameterMm: 190 },
    });
    expect(() => printTemplate(wide, { paper: 'A4', marginMm: 10 })).toThrow(
      /^printTemplate requires paper to have room for an overlap of .* got A4 with a margin of 10 mm/,
    );
    expect(printTemplate(wide, { paper: 'A3', marginMm: 10 }).pageCount).toBeGreaterThan(1);
    for (const marginMm of [-1, 21, Number.NaN])
      expect(() => printTemplate(result, { paper: 'A4', marginMm })).toThrow(
        'printTemplate requires marginMm between 0 and 20',
      );
    expect(() => printTemplate(result, { paper: 'A5' as Paper, marginMm: 10 })).toThrow(
      'printTemplate requires paper to be',
    );
  });
});
