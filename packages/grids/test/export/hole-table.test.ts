import { numberArb } from '@scantling/tests-shared';
import { csvParse, csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { holeTable } from '../../src/export.ts';
import { layoutHoles } from '../../src/index.ts';
import { boredPanels } from './bored-panel-arb.ts';

const resolutions = fc.oneof(
  fc.integer({ min: 1, max: 10_000 }).map((thousandths) => thousandths / 1000),
  fc.constantFrom(1, 0.5, 0.1, 0.05, 0.01, 0.001),
);

describe('holeTable', () => {
  test('says back every hole that it was given', () => {
    fc.assert(
      fc.property(boredPanels, resolutions, ({ holes }, resolutionMm) => {
        const csv = holeTable({ holes, resolutionMm });
        const rows = csvParse(csv);
        expect(rows).toHaveLength(holes.length);
        for (const [i, hole] of holes.entries()) {
          const row = rows[i];
          for (const [heading, exact] of [
            ['x_mm', hole.xMm],
            ['y_mm', hole.yMm],
          ] as const) {
            const printed = Number(row?.[heading]);
            expect(row?.[heading]).toMatch(/^\d+(?:\.\d{1,3})?$/);
            expect(Math.abs(printed - exact)).toBeLessThanOrEqual(resolutionMm / 2 + 1e-9);
            expect(Math.abs(printed / resolutionMm - Math.round(printed / resolutionMm))).toBeLessThan(1e-6);
          }
          expect(Math.abs(Number(row?.diameter_mm) - hole.diameterMm)).toBeLessThanOrEqual(0.0005 + 1e-9);
          expect(row?.row || undefined).toBe(hole.row?.toString());
          expect(row?.column || undefined).toBe(hole.column?.toString());
          expect(row?.nearest || undefined).toBe(hole.nearest || undefined);
          if (hole.clearanceMm === undefined) expect(row?.clearance_mm || undefined).toBe(undefined);
          else {
            // Rounded down: never more than there is.
            const below = hole.clearanceMm - Number(row?.clearance_mm);
            expect(below).toBeGreaterThanOrEqual(-1e-6 * resolutionMm - 1e-9);
            expect(below).toBeLessThan(resolutionMm + 1e-9);
            expect(row?.clearance_mm).not.toMatch(/^-0(?:\.0*)?$/);
          }
        }
      }),
    );
  });

  // RFC 4180, section 2: records end in CR LF (1), a heading first (3), as many fields everywhere (4), quotes (5 to 7).
  test('is what RFC 4180 defines', () => {
    const hole = { xMm: 1, yMm: 2, diameterMm: 3 };
    const holes = ['aaa', 'b\r\nbb', 'c"c', 'd,d'].map((nearest) => ({ ...hole, nearest }));
    expect(holeTable({ holes, resolutionMm: 1 })).toBe(
      'x_mm,y_mm,diameter_mm,nearest\r\n1,2,3,aaa\r\n1,2,3,"b\r\nbb"\r\n1,2,3,"c""c"\r\n1,2,3,"d,d"\r\n',
    );
    fc.assert(
      fc.property(boredPanels, ({ holes: any }) => {
        const records = csvParseRows(holeTable({ holes: any, resolutionMm: 0.1 }));
        expect(records).toHaveLength(any.length + 1);
        expect(new Set(records.map((record) => record.length)).size).toBe(1);
      }),
    );
  });

  test('never drifts: a hundred pitches of 25.4 mm end where a hundred inches end', () => {
    const holes = Array.from({ length: 101 }, (_, i) => ({ xMm: i * 25.4, yMm: 0, diameterMm: 10 }));
    const rows = csvParse(holeTable({ holes, resolutionMm: 1 }));
    // 1 inch is 25.4 mm exactly: 25, 51 (50.8), 76 (76.2), 102 (101.6), 127; the hundredth is 2540.
    expect(rows.slice(1, 6).map(({ x_mm }) => x_mm)).toEqual(['25', '51', '76', '102', '127']);
    expect(rows.at(-1)?.x_mm).toBe('2540');
    fc.assert(
      fc.property(numberArb({ min: 1, max: 150 }), resolutions, (pitchMm, resolutionMm) => {
        const row = holes.map((hole, i) => ({ ...hole, xMm: i * pitchMm }));
        for (const [i, { x_mm }] of csvParse(holeTable({ holes: row, resolutionMm })).entries())
          expect(Math.abs(Number(x_mm) - i * pitchMm)).toBeLessThanOrEqual(resolutionMm / 2 + 1e-9);
      }),
    );
  });

  test('takes the holes of a layout as they are, and a second unit', () => {
    const { holes } = layoutHoles({
      panel: { lengthMm: 300, widthMm: 200 },
      firstHole: { xMm: 50.8, yMm: 63.5 },
      ...{ pitchXMm: 101.6, pitchYMm: 101.6, columns: 2, rows: 1, holeDiameterMm: 19.05, edgeMarginMm: 20 },
      keepOuts: [],
    });
    const alsoIn = { unit: 'in', write: (lengthMm: number) => (lengthMm / 25.4).toFixed(3) };
    const bored = holes.map((hole) => ({ ...hole, diameterMm: 19.05 }));
    expect(csvParseRows(holeTable({ holes: bored, resolutionMm: 0.05, alsoIn }))).toEqual([
      ['row', 'column', 'x_mm', 'y_mm', 'x_in', 'y_in', 'diameter_mm', 'clearance_mm', 'nearest'],
      // 50.8 − 9.525 = 41.275, down to 41.25; 152.4 is 6 in, and 63.5 − 9.525 = 53.975, down to 53.95.
      ['0', '0', '50.80', '63.50', '2.000', '2.500', '19.05', '41.25', 'left edge'],
      ['0', '1', '152.40', '63.50', '6.000', '2.500', '19.05', '53.95', 'front edge'],
    ]);
  });

  test('says nothing about what no hole says, and heads a table without holes', () => {
    expect(holeTable({ holes: [], resolutionMm: 0.1 })).toBe('x_mm,y_mm,diameter_mm\r\n');
    const holes = [
      { xMm: -0.001, yMm: 0, diameterMm: 5, row: 3 },
      { xMm: 1, yMm: 1, diameterMm: 5 },
    ];
    expect(holeTable({ holes, resolutionMm: 0.5 })).toBe(
      'row,x_mm,y_mm,diameter_mm\r\n3,0.0,0.0,5\r\n,1.0,1.0,5\r\n',
    );
  });
});
