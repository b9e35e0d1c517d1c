import fc from 'fast-check';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { type BoredPanel, holeDrawing } from '../../src/export.ts';
import { layoutHoles } from '../../src/index.ts';
import { boredPanels } from './bored-panel-arb.ts';
import { cornersOnPaper, bench as grid, sameOutline } from './outlines.ts';

type Attributes = Record<string, string>;
interface Layer extends Attributes {
  readonly [shape: string]: never;
}
interface Svg {
  readonly svg: Attributes & {
    readonly title: string;
    readonly desc: string;
    readonly g: readonly [{ readonly g: readonly Layer[] }, { readonly text: readonly Attributes[] }];
  };
}

const xml = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: '',
  parseTagValue: false,
  trimValues: false,
  isArray: (name) => ['circle', 'path', 'polygon', 'text', 'line'].includes(name),
});
const read = (drawing: string) => {
  const { svg } = xml.parse(drawing) as Svg;
  const layer = (name: string) => svg.g[0].g.find((one) => one['data-layer'] === name);
  return {
    svg,
    layer,
    shapes: (name: string, kind: string) => (layer(name)?.[kind] ?? []) as unknown as Attributes[],
    texts: svg.g[1].text,
  };
};

const number = (shape: Attributes | undefined, name: string) => Number(shape?.[name] ?? Number.NaN);
const HALF_DIGIT = 0.0005 + 1e-9;
/** Two coordinates on the sheet, each rounded, less one another. */
const near = (a: number, b: number) => Math.abs(a - b) <= 2 * HALF_DIGIT;

const bench: BoredPanel = {
  title: 'Bindery bench',
  panel: { lengthMm: 600, widthMm: 400 },
  holes: [
    { xMm: 60, yMm: 56, diameterMm: 20 },
    { xMm: 540, yMm: 344, diameterMm: 12 },
  ],
  keepOuts: [
    {
      ...{ id: 'leg', shape: 'polygon' },
      corners: [
        [500, 30],
        [560, 40],
        [540, 430],
      ].map(([xMm = 0, yMm = 0]) => ({ xMm, yMm })),
    },
  ],
};

describe('holeDrawing', () => {
  test('is full size: a unit of the drawing is a millimetre', () => {
    const { svg } = read(holeDrawing(bench));
    expect(svg.viewBox).toBe(`0 0 ${svg.width?.replace('mm', '')} ${svg.height?.replace('mm', '')}`);
    expect(svg.width).toMatch(/^[\d.]+mm$/);
    const { layer, shapes } = read(holeDrawing(bench));
    const outline = layer('panel')?.rect as unknown as Attributes;
    expect([outline.width, outline.height]).toEqual(['600', '400']);
    expect(shapes('bar', 'path')[0]?.d).toMatch(/h100M/);
  });

  test('tells whoever cannot see it', () => {
    const { svg } = read(holeDrawing(bench));
    expect(svg.role).toBe('img');
    expect(svg.title).toBe('Bindery bench');
    expect(svg.desc).toBe(
      'Full size, seen from above, datum at the front-left corner. ' +
        'Panel 600 by 400 mm; 2 holes, diameter 12 to 20 mm; 1 keep-out, dashed.',
    );
  });

  // ISO 128-2: wide and narrow lines 2 : 1; dashes 12 d, gaps 3 d, long dashes 24 d, dots at most 0.5 d (from memory).
  test('draws what is seen wide, the rest narrow, and dashes as long as the standard has them', () => {
    const { layer } = read(holeDrawing(bench));
    const [panel, holes, marks, keepOuts] = ['panel', 'holes', 'centre-marks', 'keep-outs'].map(layer);
    expect([panel?.['stroke-width'], holes?.['stroke-width']]).toEqual(['0.5', '0.5']);
    expect([marks?.['stroke-width'], keepOuts?.['stroke-width']]).toEqual(['0.25', '0.25']);
    expect([panel?.['stroke-dasharray'], holes?.['stroke-dasharray']]).toEqual([undefined, undefined]);
    expect(keepOuts?.['stroke-dasharray']).toBe('3 0.75');
    expect(marks?.['stroke-dasharray']).toBe('6 0.75 0.125 0.75');
    expect(marks?.['stroke-dashoffset']).toBe('3');
  });

  test('shows every hole, mark and keep-out where it is, y up from the front edge, all on the sheet', () => {
    fc.assert(
      fc.property(boredPanels, (input) => {
        const { panel, holes, keepOuts = [] } = input;
        const drawing = holeDrawing(input);
        expect(XMLValidator.validate(drawing)).toBe(true);
        expect(drawing).not.toMatch(/NaN|undefined|Infinity|"-0"|[\d.]e[+-]?\d/);
        const { svg, layer, shapes } = read(drawing);
        const outline = layer('panel')?.rect as unknown as Attributes;
        const left = number(outline, 'x');
        const front = number(outline, 'y') + number(outline, 'height');
        expect(near(number(outline, 'width'), panel.lengthMm)).toBe(true);
        expect(near(number(outline, 'height'), panel.widthMm)).toBe(true);
        const at = (x: number, y: number, { xMm, yMm }: { xMm: number; yMm: number }) =>
          near(x - left, xMm) && Math.abs(front - y - yMm) <= 3 * HALF_DIGIT;

        const [origin] = shapes('datum', 'circle');
        expect(at(number(origin, 'cx'), number(origin, 'cy'), { xMm: 0, yMm: 0 })).toBe(true);

        const circles = shapes('holes', 'circle');
        const marks = shapes('centre-marks', 'path');
        expect([circles.length, marks.length]).toEqual([holes.length, holes.length]);
        const [sheetWidth, sheetHeight] = [
          Number.parseFloat(svg.width ?? ''),
          Number.parseFloat(svg.height ?? ''),
        ];
        for (const [i, hole] of holes.entries()) {
          const [x, y, r] = ['cx', 'cy', 'r'].map((name) => number(circles[i], name)) as [
            number,
            number,
            number,
          ];
          expect(at(x, y, hole)).toBe(true);
          expect(Math.abs(r - hole.diameterMm / 2)).toBeLessThanOrEqual(HALF_DIGIT);
          expect(Math.min(x - r, y - r, sheetWidth - x - r, sheetHeight - y - r)).toBeGreaterThan(0);
          const starts = [...(marks[i]?.d ?? '').matchAll(/M([\d.]+) ([\d.]+)[hv]-?([\d.]+)/g)];
          expect(starts).toHaveLength(4);
          for (const [, markX, markY, reach] of starts) {
            expect([Number(markX), Number(markY)]).toEqual([x, y]);
            expect(Number(reach)).toBeGreaterThan(r);
          }
        }

        const [polygons, rounds] = [shapes('keep-outs', 'polygon'), shapes('keep-outs', 'circle')];
        expect(polygons.length + rounds.length).toBe(keepOuts.length);
        for (const keepOut of keepOuts) {
          if (keepOut.shape === 'circle') {
            const shape = rounds.shift();
            const [x, y, r] = [number(shape, 'cx'), number(shape, 'cy'), number(shape, 'r')];
            expect(at(x, y, keepOut)).toBe(true);
            // Half of the narrow line that it is drawn with, at least.
            expect(Math.abs(r - Math.max(0.125, keepOut.diameterMm / 2))).toBeLessThanOrEqual(HALF_DIGIT);
            expect(Math.min(x - r, y - r, sheetWidth - x - r, sheetHeight - y - r)).toBeGreaterThan(0);
            continue;
          }
          const shape = polygons.shift();
          const drawn = (shape?.points ?? '').split(' ').map((pair) => {
            const [x = Number.NaN, y = Number.NaN] = pair.split(',').map(Number);
            expect(Math.min(x, y, sheetWidth - x, sheetHeight - y)).toBeGreaterThan(0);
            return { xMm: x - left, yMm: front - y };
          });
          expect(sameOutline(drawn, cornersOnPaper(keepOut, panel), 3 * HALF_DIGIT)).toBe(true);
        }
      }),
    );
  });

  test('draws the keep-outs of a layout as they are, each by its name', () => {
    const { panel, keepOuts } = grid;
    const holes = layoutHoles(grid).holes.map((hole) => ({ ...hole, diameterMm: grid.holeDiameterMm }));
    const { shapes } = read(holeDrawing({ panel, holes, keepOuts }));
    expect(shapes('holes', 'circle')).toHaveLength(holes.length);
    // The sheet begins 18 mm left of the panel and 18 mm behind it, and counts downwards: (x, y) is at (18 + x, 418 − y).
    expect(shapes('keep-outs', 'circle')).toEqual([
      { title: 'clamp screw', cx: '318', cy: '218', r: '15' },
      { title: 'nail', cx: '118', cy: '118', r: '0.125' },
    ]);
    // Turned by 90° to the left, the leg's 40 mm go back from (500, 100) and its 60 mm to the left.
    expect(shapes('keep-outs', 'polygon')).toEqual([
      { title: 'back rail', points: '18,53 618,53 618,18 18,18' },
      { title: 'leg', points: '518,318 518,278 458,278 458,318' },
      { title: 'strip', points: '18,398 268,398 268,380 18,380' },
      { title: 'bracket', points: '418,118 468,118 418,68' },
    ]);
  });

  test('is the same text each time, and keeps text as text', () => {
    fc.assert(
      fc.property(boredPanels, (input) => {
        expect(holeDrawing(input)).toBe(holeDrawing(structuredClone(input)));
      }),
    );
    const hostile = '</title><script>alert("x")</script>\u0000 & Söhne';
    const [keepOut] = bench.keepOuts ?? [];
    const drawing = holeDrawing({
      ...bench,
      title: hostile,
      keepOuts: keepOut ? [{ ...keepOut, id: hostile }] : [],
    });
    expect(XMLValidator.validate(drawing)).toBe(true);
    expect(drawing).not.toContain('<script');
    expect(read(drawing).svg.title).toBe('</title><script>alert("x")</script> & Söhne');
  });

  test('cuts a title that would run off the sheet', () => {
    const title = '𝔅 long '.repeat(40);
    const panel = { lengthMm: 50, widthMm: 50 };
    const shown = read(holeDrawing({ panel, holes: [], title })).texts;
    const cut = shown.map((text) => text['#text'] ?? '').find((text) => text.endsWith('…')) ?? '';
    expect(title.startsWith(cut.slice(0, -1))).toBe(true);
    expect(cut.length).toBeGreaterThan(20);
    expect([...cut].length).toBeLessThan(60);
  });
});
