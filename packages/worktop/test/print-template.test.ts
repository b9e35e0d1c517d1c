import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop } from '../src/index.ts';
import { type Paper, papers, printTemplate } from '../src/print.ts';
import { bored, datumOn, tilesOf, worstError } from './lay-tiles.ts';
import { plainBench } from './plain-bench.ts';
import { readPdf } from './read-pdf.ts';

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

/** How far a hole may be off, read back from the paper. */
const WITHIN_MM = 0.05;

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
        // The standard fonts have no minus; a hyphen would read like a range.
        expect(texts.filter(({ text }) => /(^| )-\d/.test(text))).toEqual([]);
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

  test('shows the screws of the strip where the plan has them, as small crosses', async () => {
    const strip = {
      ...{ inlay: 'brass cutting guide', thicknessMm: 6, rabbetWidthMm: 26.4, rabbetDepthMm: 6.5 },
      ...{ expansionUmPerMK: 19, densityKgPerM3: 8500, buildingDayC: 20, toleranceMm: 2, endDistanceMm: 30 },
      ...{ mostPitchMm: 350, fixedScrew: 'middle' as const, shankDiameterMm: 4, headDiameterMm: 8 },
      ...{ headHeightMm: 2.4, headBelowFaceMm: 0.2, screwLengthMm: 25 },
      ...{ slotClearanceMm: 0.3, endClearanceMm: 0.5 },
    };
    const result = planWorktop({ ...plainBench, strip });
    const template = printTemplate(result, { paper: 'A3', marginMm: 10 });
    const tiles = await tilesOf(template);
    const datum = datumOn(tiles, template, result.plan.top);
    const short = [...tiles].flatMap(([key, { lines }]) => {
      const [datumX, datumY] = datum.get(key) ?? [Number.NaN, Number.NaN];
      return lines
        .filter(({ from, to }) => from[1] === to[1] && Math.abs(to[0] - from[0] - 4) < 0.001)
        .map(({ from, to }) => [(from[0] + to[0]) / 2 - datumX, from[1] - datumY] as const);
    });
    expect(result.strip?.screws.length).toBeGreaterThan(3);
    for (const { xMm, yMm } of result.strip?.screws ?? []) {
      expect(short.some(([x, y]) => Math.hypot(x - xMm, y - yMm) <= WITHIN_MM)).toBe(true);
    }
  });

  test('keeps all that is written on the paper, inside of the margin', async () => {
    const names = ['W'.repeat(60), '≥'.repeat(60), '机'.repeat(60)];
    for (const plan of [plainBench, ...names.map((name) => ({ ...plainBench, name }))]) {
      const pages = await readPdf(printTemplate(planWorktop(plan), { paper: 'Letter', marginMm: 12.7 }).pdf);
      for (const { texts, widthMm, heightMm } of pages) {
        expect(texts.length).toBeGreaterThan(3);
        for (const { text, x, y, width } of texts) {
          const along = /, left$|^right edge/.test(text) ? 0 : width;
          expect(x).toBeGreaterThanOrEqual(12.7 - 0.001);
          expect(x + along).toBeLessThanOrEqual(widthMm - 12.7 + 0.001);
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
