import { parseLength } from '@scantling/units';
import { csvParse } from 'd3-dsv';
import DxfParser, { type ICircleEntity, type ILwpolylineEntity } from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planDxf } from '../src/dxf.ts';
import { drillingProgram, holeTable, type Plan, type PlannedHole, planWorktop } from '../src/index.ts';
import { plainBench } from './plain-bench.ts';

const drilling = {
  ...{ safeHeightMm: 25, retractPlaneMm: 3, betweenHolesAt: 'safe height' as const, belowUndersideMm: 3 },
  ...{ feedMmPerMin: 300, speedRpm: 1500 },
};
const cables = {
  ...{ holeDiameterMm: 60, xMm: 1340, yMm: 600, mostFillPct: 40, heldBelowMm: 700 },
  ...{ cableLengthMm: 1500, slackPct: 10, bundle: [{ name: 'lamp', diameterMm: 7, count: 2 }] },
};
const full = planWorktop({ ...plainBench, drilling, cables });

/** Grids of every kind, in millimetres and inches, some holes left out. */
const grids = fc
  .record({
    diameterMm: fc.double({ min: 3, max: 30, noNaN: true }),
    gapMm: fc.double({ min: 0, max: 90, noNaN: true }),
    xMm: fc.double({ min: 0, max: 1400, noNaN: true }),
    yMm: fc.double({ min: 0, max: 600, noNaN: true }),
    columns: fc.integer({ min: 1, max: 20 }),
    rows: fc.integer({ min: 1, max: 12 }),
    unit: fc.constantFrom('mm', 'in'),
  })
  .map(({ diameterMm, gapMm, xMm, yMm, columns, rows, unit }): Plan => {
    const ticks = 25.4 / 64;
    const to = (mm: number) => (unit === 'in' ? Math.ceil(mm / ticks) * ticks : mm);
    const [d, pitch] = [to(diameterMm), to(diameterMm) + to(gapMm)];
    return {
      ...{ ...plainBench, drilling, cables },
      holes: {
        ...{ diameterMm: d, pitchXMm: pitch, pitchYMm: pitch, first: { xMm: to(xMm), yMm: to(yMm) } },
        ...{ columns, rows, edgeMarginMm: 10, blocked: 'leave out' },
      },
    };
  });

describe('the hole table', () => {
  test('reads back as the holes', () => {
    expect(full.holes).toHaveLength(65);
    fc.assert(
      fc.property(grids, (plan) => {
        const { holes } = planWorktop(plan);
        const rows = csvParse(holeTable(planWorktop(plan)));
        expect(rows).toHaveLength(holes.length);
        rows.forEach((row, i) => {
          const hole = holes[i] as PlannedHole;
          const { xMm, yMm } = hole;
          expect([Number(row.row), Number(row.column), row.nearest]).toEqual([
            hole.row,
            hole.column,
            hole.nearest,
          ]);
          // Hundredths of a millimetre; 64ths of an inch.
          expect(Math.abs(Number(row.x_mm) - xMm)).toBeLessThanOrEqual(0.005 + 1e-9);
          expect(Math.abs(Number(row.y_mm) - yMm)).toBeLessThanOrEqual(0.005 + 1e-9);
          expect(Math.abs(parseLength(row.x_in ?? '') - xMm)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
          expect(Math.abs(parseLength(row.y_in ?? '') - yMm)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
          expect(Math.abs(Number(row.diameter_mm) - plan.holes.diameterMm)).toBeLessThanOrEqual(
            0.0005 + 1e-9,
          );
          // Never more than there is.
          const spare = hole.clearanceMm - Number(row.clearance_mm);
          expect(spare).toBeGreaterThan(-1e-6);
          expect(spare).toBeLessThan(0.01 + 1e-6);
        });
      }),
      { examples: [[{ ...plainBench, drilling, cables }]] },
    );
  });
});

describe('the DXF drawing', () => {
  /** What a parser by other people finds. */
  const opened = (plan: Plan) => {
    const parsed = new DxfParser().parseSync(planDxf(planWorktop(plan)));
    return <Entity>(layer: string, type: string) =>
      (parsed?.entities ?? []).filter(
        (one) => one.layer === layer && one.type === type,
      ) as unknown as Entity[];
  };

  test('has every hole where the plan says, the passage for cables among them', () => {
    fc.assert(
      fc.property(grids, (plan) => {
        const { holes } = planWorktop(plan);
        const circles = opened(plan)<ICircleEntity>('HOLES', 'CIRCLE');
        const planned = [
          ...holes.map(({ xMm, yMm }) => [xMm, yMm, plan.holes.diameterMm / 2]),
          [cables.xMm, cables.yMm, 30],
        ];
        expect(circles).toHaveLength(planned.length);
        circles.forEach(({ center, radius }, i) => {
          const [x, y, r] = planned[i] as [number, number, number];
          for (const [drawn, meant] of [
            [center.x, x],
            [center.y, y],
            [radius, r],
          ] as const)
            expect(Math.abs(drawn - meant)).toBeLessThanOrEqual(1e-6);
        });
      }),
      { numRuns: 30 },
    );
  });

  test('has the outline of the top, the base, what is let in, and the screws', () => {
    const on = opened(plainBench);
    const [panel] = on<ILwpolylineEntity>('PANEL', 'LWPOLYLINE');
    expect(Math.max(...(panel?.vertices ?? []).map(({ x }) => x))).toBeCloseTo(1479.55, 6);
    expect(Math.max(...(panel?.vertices ?? []).map(({ y }) => y))).toBe(640);
    expect(on<ILwpolylineEntity>('KEEP_OUTS', 'LWPOLYLINE')).toHaveLength(5);
    expect(on<ICircleEntity>('KEEP_OUTS', 'CIRCLE').map(({ center }) => [center.x, center.y])).toEqual(
      plainBench.base.fixings.map(({ xMm, yMm }) => [xMm, yMm]),
    );
  });

  test('leaves out a passage that is not on the top', () => {
    const away = { ...plainBench, cables: { ...cables, xMm: 5000 } };
    expect(opened(away)<ICircleEntity>('HOLES', 'CIRCLE')).toHaveLength(65);
  });
});

describe('the drilling program', () => {
  const moves = (program: string) =>
    program
      .split('\n')
      .filter((line) => !line.startsWith('('))
      .flatMap((line) => {
        const found = /X([\d.]+) Y([\d.]+)/.exec(line);
        return found ? [[Number(found[1]), Number(found[2])] as const] : [];
      });

  test('drills each hole of the grid once, through the top and into the backing board', () => {
    fc.assert(
      fc.property(grids, (plan) => {
        const result = planWorktop(plan);
        const program = drillingProgram(result);
        expect(program === null).toBe(result.holes.length === 0);
        if (program === null) return;
        const drilled = moves(program);
        expect(drilled).toHaveLength(result.holes.length);
        for (const { xMm, yMm } of result.holes) {
          const there = drilled.filter(([x, y]) => Math.hypot(x - xMm, y - yMm) < 0.001);
          expect(there).toHaveLength(1);
        }
        // 1 3/4 in of wood and 3 mm of board: 44.45 + 3 = 47.45.
        expect(program).toContain(' Z-47.45 R3.0 F300.0');
      }),
      { numRuns: 50 },
    );
  });

  test('pecks and waits where it is told to', () => {
    const program = drillingProgram(
      planWorktop({ ...plainBench, drilling: { ...drilling, peckMm: 12, spindleStartMs: 2000 } }),
    );
    expect(program).toContain('G98 G83 X');
    expect(program).toContain(' Q12.0 ');
    expect(program).toContain('\nG4 P2.0\n');
  });

  // What the program refuses, the plan has to refuse first, by its own path.
  test('is written for every machine that a plan may name', () => {
    const machine = fc.record(
      {
        safeHeightMm: fc.double({ min: 0.1, max: 1000, noNaN: true }),
        retractPlaneMm: fc.double({ min: 0.1, max: 1000, noNaN: true }),
        betweenHolesAt: fc.constantFrom('safe height' as const, 'retract plane' as const),
        belowUndersideMm: fc.double({ min: 0, max: 100, noNaN: true }),
        peckMm: fc.double({ min: 0.1, max: 120, noNaN: true }),
        feedMmPerMin: fc.double({ min: 1, max: 20_000, noNaN: true }),
        speedRpm: fc.integer({ min: 1, max: 100_000 }),
        spindleStartMs: fc.double({ min: 1, max: 60_000, noNaN: true }),
      },
      {
        requiredKeys: [
          ...(['safeHeightMm', 'retractPlaneMm', 'betweenHolesAt'] as const),
          ...(['belowUndersideMm', 'feedMmPerMin', 'speedRpm'] as const),
        ],
      },
    );
    let written = 0;
    fc.assert(
      fc.property(machine, (drilling) => {
        const depthMm = plainBench.top.thicknessMm + drilling.belowUndersideMm;
        const possible =
          drilling.safeHeightMm >= drilling.retractPlaneMm &&
          (drilling.peckMm === undefined || drilling.peckMm <= depthMm);
        const plan = { ...plainBench, drilling };
        if (!possible) {
          expect(() => planWorktop(plan)).toThrow(/^planWorktop requires drilling\.(safeHeightMm|peckMm) /);
          return;
        }
        expect(moves(drillingProgram(planWorktop(plan)) ?? '')).toHaveLength(65);
        written += 1;
      }),
    );
    expect(written).toBeGreaterThan(10);
  });

  test('is none where the plan has no section for it', () => {
    expect(drillingProgram(planWorktop(plainBench))).toBe(null);
  });

  test.each([
    [
      { safeHeightMm: 2 },
      'planWorktop requires drilling.safeHeightMm to be at least drilling.retractPlaneMm, 3',
    ],
    [
      { peckMm: 60 },
      'planWorktop requires drilling.peckMm to be at most the depth drilled, 47.45 mm, got 60',
    ],
    [{ speedRpm: 1500.5 }, 'planWorktop requires drilling.speedRpm'],
  ])('refuses %j by its path in the plan', (change, message) => {
    expect(() => planWorktop({ ...plainBench, drilling: { ...drilling, ...change } })).toThrow(message);
  });
});
