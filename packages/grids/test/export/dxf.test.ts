import DxfParser, {
  type ICircleEntity,
  type ILineEntity,
  type ILwpolylineEntity,
  type IPointEntity,
} from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { holeDxf } from '../../src/export/dxf.ts';
import type { BoredPanel } from '../../src/export.ts';
import { boredPanels } from './bored-panel-arb.ts';
import { cornersOnPaper, bench as grid, sameOutline } from './outlines.ts';

interface Opened {
  readonly header: Record<string, unknown>;
  readonly layers: Record<string, { readonly name: string }>;
  readonly lineTypes: Record<string, { readonly pattern: unknown }>;
  readonly on: <Entity>(layer: string, type: string) => Entity[];
  readonly count: number;
}

/** What a parser by other people finds in a file. */
function open(dxf: string): Opened {
  const parsed = new DxfParser().parseSync(dxf);
  if (!parsed) throw new Error('the parser reads nothing');
  return {
    header: parsed.header,
    layers: parsed.tables.layer.layers,
    lineTypes: parsed.tables.lineType.lineTypes,
    count: parsed.entities.length,
    on: <Entity>(layer: string, type: string) =>
      parsed.entities.filter((one) => one.layer === layer && one.type === type) as unknown as Entity[],
  };
}

const MILLIMETRES = 4;
const SAME_MM = 1e-6;
const bench: BoredPanel = {
  panel: { lengthMm: 600, widthMm: 400 },
  holes: [
    { xMm: 60, yMm: 56.125, diameterMm: 20 },
    { xMm: 155.575, yMm: 344, diameterMm: 19.05 },
  ],
  keepOuts: [
    {
      ...{ id: 'rail', shape: 'polygon' },
      corners: [
        [0, 365],
        [600, 365],
        [600, 410],
      ].map(([xMm = 0, yMm = 0]) => ({ xMm, yMm })),
    },
  ],
};

/** Reaches as far to one side of the datum as to the other, but for a rounding. */
const middleNearTheDatum: BoredPanel = {
  panel: { lengthMm: 1.000484263524413, widthMm: 1.0001303786411881 },
  holes: [{ xMm: 3.758729860692256e-8, yMm: 0, diameterMm: 476.2668870751746 }],
};

describe('holeDxf', () => {
  // $INSUNITS 4 is millimetres, $MEASUREMENT 1 metric (DXF reference, header variables; the values of INSUNITS were
  // seen in its publisher's help, $MEASUREMENT comes from memory).
  test('is in millimetres, and says how far it reaches', () => {
    const { header } = open(holeDxf(bench));
    expect([header.$INSUNITS, header.$MEASUREMENT]).toEqual([MILLIMETRES, 1]);
    expect(header.$EXTMIN).toMatchObject({ x: 0, y: 0 });
    expect(header.$EXTMAX).toMatchObject({ x: 600, y: 410 });
  });

  test('has its layers, and dashes of ISO 128-2: 12 and 3, 24, 3, ½ and 3 widths of a line of 0.25 mm', () => {
    const { layers, lineTypes } = open(holeDxf(bench));
    expect(Object.keys(layers).sort()).toEqual(['0', 'CENTRE_MARKS', 'HOLES', 'KEEP_OUTS', 'PANEL']);
    expect(lineTypes.DASHED?.pattern).toEqual([3, -0.75]);
    expect(lineTypes.LONG_DASH_DOT?.pattern).toEqual([6, -0.75, 0.125, -0.75]);
    const dxf = holeDxf(bench);
    expect(dxf).toMatch(/\n2\nCENTRE_MARKS\n70\n0\n62\n7\n6\nLONG_DASH_DOT\n/);
    expect(dxf).toMatch(/\n2\nKEEP_OUTS\n70\n0\n62\n7\n6\nDASHED\n/);
  });

  test('holds every hole, its centre mark, the panel and the keep-outs, and nothing else', () => {
    fc.assert(
      fc.property(boredPanels, (input) => {
        const { panel, holes, keepOuts = [] } = input;
        const { header, on, count } = open(holeDxf(input));
        expect(header.$INSUNITS).toBe(MILLIMETRES);
        expect(count).toBe(1 + keepOuts.length + 3 * holes.length);

        const circles = on<ICircleEntity>('HOLES', 'CIRCLE');
        const marks = on<ILineEntity>('CENTRE_MARKS', 'LINE');
        expect([circles.length, marks.length]).toEqual([holes.length, 2 * holes.length]);
        for (const [i, { xMm, yMm, diameterMm }] of holes.entries()) {
          const circle = circles[i];
          expect(Math.abs((circle?.center.x ?? Number.NaN) - xMm)).toBeLessThanOrEqual(SAME_MM);
          expect(Math.abs((circle?.center.y ?? Number.NaN) - yMm)).toBeLessThanOrEqual(SAME_MM);
          expect(Math.abs((circle?.radius ?? Number.NaN) - diameterMm / 2)).toBeLessThanOrEqual(SAME_MM);
          for (const mark of marks.slice(2 * i, 2 * i + 2)) {
            const [from, to] = mark.vertices;
            expect(Math.abs(((from?.x ?? Number.NaN) + (to?.x ?? 0)) / 2 - xMm)).toBeLessThanOrEqual(SAME_MM);
            expect(Math.abs(((from?.y ?? Number.NaN) + (to?.y ?? 0)) / 2 - yMm)).toBeLessThanOrEqual(SAME_MM);
            const length = Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0));
            expect(length).toBeGreaterThan(diameterMm);
          }
        }

        const [outline] = on<ILwpolylineEntity>('PANEL', 'LWPOLYLINE');
        const corners = outline?.vertices.map(({ x, y }) => [x, y]) ?? [];
        expect(outline?.shape).toBe(true);
        expect(corners).toHaveLength(4);
        const [length, width] = [Number(panel.lengthMm.toFixed(6)), Number(panel.widthMm.toFixed(6))];
        for (const corner of [
          [0, 0],
          [length, 0],
          [length, width],
          [0, width],
        ])
          expect(corners).toContainEqual(corner);
        const outlines = on<ILwpolylineEntity>('KEEP_OUTS', 'LWPOLYLINE');
        const rounds = on<ICircleEntity>('KEEP_OUTS', 'CIRCLE');
        const points = on<IPointEntity>('KEEP_OUTS', 'POINT');
        expect(outlines.length + rounds.length + points.length).toBe(keepOuts.length);
        const same = (from: { x: number; y: number } | undefined, to: { xMm: number; yMm: number }) =>
          Math.hypot((from?.x ?? Number.NaN) - to.xMm, (from?.y ?? Number.NaN) - to.yMm) <= SAME_MM;
        for (const keepOut of keepOuts) {
          if (keepOut.shape === 'circle' && keepOut.diameterMm === 0) {
            expect(same(points.shift()?.position, keepOut)).toBe(true);
          } else if (keepOut.shape === 'circle') {
            const { center, radius = Number.NaN } = rounds.shift() ?? {};
            expect(same(center, keepOut)).toBe(true);
            expect(Math.abs(radius - keepOut.diameterMm / 2)).toBeLessThanOrEqual(SAME_MM);
          } else {
            const { shape: closed, vertices = [] } = outlines.shift() ?? {};
            expect(closed).toBe(true);
            const drawn = vertices.map(({ x, y }) => ({ xMm: x, yMm: y }));
            expect(sameOutline(drawn, cornersOnPaper(keepOut, panel), SAME_MM)).toBe(true);
          }
        }
      }),
    );
  });

  test('draws the keep-outs of a layout as they are', () => {
    const { on } = open(holeDxf({ panel: grid.panel, holes: [], keepOuts: grid.keepOuts }));
    const [screw, ...others] = on<ICircleEntity>('KEEP_OUTS', 'CIRCLE');
    expect(others).toEqual([]);
    expect([screw?.center.x, screw?.center.y, screw?.radius]).toEqual([300, 200, 15]);
    expect(on<IPointEntity>('KEEP_OUTS', 'POINT').map(({ position }) => [position.x, position.y])).toEqual([
      [100, 300],
    ]);
    const outlines = on<ILwpolylineEntity>('KEEP_OUTS', 'LWPOLYLINE');
    expect(outlines.every(({ shape }) => shape)).toBe(true);
    // Back rail, leg, strip, bracket; the leg is turned by 90° to the left about (500, 100).
    expect(outlines.map(({ vertices }) => vertices.map(({ x, y }) => [x, y]))).toEqual([
      [
        [0, 365],
        [600, 365],
        [600, 400],
        [0, 400],
      ],
      [
        [500, 100],
        [500, 140],
        [440, 140],
        [440, 100],
      ],
      [
        [0, 20],
        [250, 20],
        [250, 38],
        [0, 38],
      ],
      [
        [400, 300],
        [450, 300],
        [400, 350],
      ],
    ]);
  });

  test('is the same text each time, with plain numbers only', () => {
    fc.assert(
      fc.property(boredPanels, (input) => {
        const dxf = holeDxf(input);
        expect(holeDxf(structuredClone(input))).toBe(dxf);
        expect(dxf).not.toMatch(/\n(?:-0|NaN|undefined|-?Infinity)\n/);
        // The format allows exponents, and the library's middle of the view may have one; what we draw has none.
        const drawn = dxf.slice(dxf.indexOf('\nENTITIES\n'));
        expect(drawn.length).toBeGreaterThan(100);
        expect(drawn).not.toMatch(/\n-?[\d.]+e[+-]?\d+\n/);
      }),
      { examples: [[middleNearTheDatum]] },
    );
  });
});
