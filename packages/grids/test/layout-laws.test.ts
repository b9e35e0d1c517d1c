import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Hole, type HoleGrid, layoutHoles, type Shape } from '../src/index.ts';
import { byLibrary, halfTurned, keepInArb, keepOutsArb, mm, shapeArb } from './shapes.ts';

/** Nearer than this is the same. */
const SAME_MM = 1e-6;

const grids: fc.Arbitrary<HoleGrid & { columns: number; rows: number }> = fc
  .record({
    panel: fc.record({ lengthMm: mm(300, 900), widthMm: mm(200, 600) }),
    firstHole: fc.record({ xMm: mm(0, 200), yMm: mm(0, 200) }),
    pitchXMm: mm(40, 200),
    pitchYMm: mm(40, 200),
    columns: fc.integer({ min: 1, max: 6 }),
    rows: fc.integer({ min: 1, max: 6 }),
    holeDiameterMm: mm(1, 40),
    edgeMarginMm: mm(0, 40),
    keepOuts: keepOutsArb,
    keepIn: fc.option(keepInArb),
  })
  .map(({ keepIn, ...grid }) => ({ ...grid, ...(keepIn && { keepIn }) }))
  // A grid that reaches beyond the panel is dropped there, but has no mirror image that begins on the panel.
  .filter(
    ({ panel, firstHole, pitchXMm, pitchYMm, columns, rows }) =>
      firstHole.xMm + (columns - 1) * pitchXMm <= panel.lengthMm &&
      firstHole.yMm + (rows - 1) * pitchYMm <= panel.widthMm,
  );

const movements = fc.record({
  fixedLineYMm: mm(0, 600),
  shrinkPct: fc.double({ min: 0, max: 5, noNaN: true }),
  swellPct: fc.double({ min: 0, max: 5, noNaN: true }),
});

const all = (grid: HoleGrid) => {
  const { holes, dropped } = layoutHoles(grid);
  const kept = new Map<string, Hole & { kept: boolean }>();
  for (const hole of holes) kept.set(`${hole.row}/${hole.column}`, { ...hole, kept: true });
  for (const hole of dropped) kept.set(`${hole.row}/${hole.column}`, { ...hole, kept: false });
  expect(kept.size).toBe(holes.length + dropped.length);
  return kept;
};

/** A rail so small that it lies whole within the clearance round a hole: its rim touches nothing. */
const inItsClearance = {
  panel: { lengthMm: 300, widthMm: 200 },
  firstHole: { xMm: 0, yMm: 0.5 },
  ...{ pitchXMm: 40, pitchYMm: 40, columns: 2, rows: 1, holeDiameterMm: 1, edgeMarginMm: 0 },
  keepOuts: [
    {
      ...{ shape: 'rectangle' as const, id: 'rail 1', belongsTo: 'top' as const, clearanceMm: 20.5 },
      ...{ xMm: 19.5, yMm: 0, lengthMm: 1, widthMm: 1 },
    },
  ],
};

describe('layoutHoles, laws', () => {
  test('keeps exactly the holes that a geometry library finds clear', () => {
    let dropped = 0;
    fc.assert(
      fc.property(grids, (grid) => {
        const { panel, edgeMarginMm, holeDiameterMm, firstHole, pitchXMm, pitchYMm, keepIn } = grid;
        const radius = holeDiameterMm / 2;
        for (const hole of all(grid).values()) {
          const { row, column, xMm, yMm } = hole;
          expect([xMm, yMm]).toEqual([firstHole.xMm + column * pitchXMm, firstHole.yMm + row * pitchYMm]);
          const edgeMm = Math.min(xMm, yMm, panel.lengthMm - xMm, panel.widthMm - yMm) - radius;
          const rimFrom = (shape: Shape) => byLibrary(xMm, yMm, shape, panel) - radius;
          const blocked = grid.keepOuts.some((one) => rimFrom(one) < one.clearanceMm - SAME_MM);
          const inside = keepIn?.areas.some(
            (one) => -rimFrom(one) - 2 * radius >= keepIn.clearanceMm - SAME_MM,
          );
          expect(hole.kept).toBe(!blocked && inside !== false && edgeMm >= edgeMarginMm);
          expect(hole.clearanceMm).toBeLessThanOrEqual(edgeMm);
          if (!hole.kept) dropped += 1;
        }
      }),
      { examples: [[inItsClearance]] },
    );
    expect(dropped).toBeGreaterThan(100);
  });

  test('one more keep-out never raises a clearance or gives a hole back', () => {
    fc.assert(
      fc.property(grids, movements, (grid, movement) => {
        const [extra, ...rest] = grid.keepOuts;
        fc.pre(extra !== undefined);
        const fewer = all({ ...grid, movement, keepOuts: rest });
        for (const [place, hole] of all({ ...grid, movement })) {
          const before = fewer.get(place);
          expect(hole.clearanceMm).toBeLessThanOrEqual(before?.clearanceMm ?? Number.NaN);
          expect(hole.kept && !before?.kept).toBe(false);
        }
      }),
    );
  });

  test('over a season it is the least of every place on the way, by the geometry library', () => {
    fc.assert(
      fc.property(shapeArb, mm(0, 800), mm(0, 600), movements, (shape, xMm, yMm, movement) => {
        const panel = { lengthMm: 800, widthMm: 600 };
        const terms = { id: 'it', clearanceMm: 0, belongsTo: 'base' as const };
        const [hole] = all({
          ...{ panel, movement, firstHole: { xMm, yMm }, columns: 1, rows: 1, pitchXMm: 50, pitchYMm: 50 },
          ...{ holeDiameterMm: 0.1, edgeMarginMm: 0, keepOuts: [{ ...shape, ...terms }] },
        }).values();
        const arm = yMm - movement.fixedLineYMm;
        const [from, to] = [-movement.shrinkPct, movement.swellPct];
        const STEPS = 50;
        const onTheWay = Array.from({ length: STEPS + 1 }, (_, i) => {
          const percent = from + ((to - from) * i) / STEPS;
          return byLibrary(xMm, yMm + (arm * percent) / 100, shape, panel);
        });
        const edgeMm = Math.min(xMm, yMm, panel.lengthMm - xMm, panel.widthMm - yMm);
        const least = Math.min(...onTheWay, edgeMm) - 0.05;
        // Between two steps it may come nearer by half a step.
        const step = (Math.abs(arm) * (to - from)) / 100 / STEPS;
        expect(hole?.clearanceMm).toBeLessThanOrEqual(least + 1e-6 + step / 20);
        expect(hole?.clearanceMm).toBeGreaterThanOrEqual(least - step / 2 - 1e-6);
      }),
    );
  });

  test('a season never raises a clearance', () => {
    fc.assert(
      fc.property(grids, movements, (grid, movement) => {
        const still = all(grid);
        for (const [place, hole] of all({ ...grid, movement })) {
          expect(hole.clearanceMm).toBeLessThanOrEqual(still.get(place)?.clearanceMm ?? Number.NaN);
        }
      }),
    );
  });

  test('the mirror image of everything has the mirror image of the holes', () => {
    fc.assert(
      fc.property(grids, movements, (grid, movement) => {
        const { panel, firstHole, pitchXMm, pitchYMm, columns, rows, keepIn } = grid;
        const mirrored = all({
          ...grid,
          movement: { ...movement, fixedLineYMm: panel.widthMm - movement.fixedLineYMm },
          firstHole: {
            xMm: panel.lengthMm - firstHole.xMm - (columns - 1) * pitchXMm,
            yMm: panel.widthMm - firstHole.yMm - (rows - 1) * pitchYMm,
          },
          keepOuts: grid.keepOuts.map((one) => halfTurned(one, panel)),
          ...(keepIn && {
            keepIn: { ...keepIn, areas: keepIn.areas.map((one) => halfTurned(one, panel)) },
          }),
        });
        for (const { row, column, clearanceMm, kept } of all({ ...grid, movement }).values()) {
          const image = mirrored.get(`${rows - 1 - row}/${columns - 1 - column}`);
          // How deep a moving hole gets into a polygon is found to a thousandth of its way.
          const same = clearanceMm < -grid.holeDiameterMm / 2 ? 0.03 : 1e-9;
          expect(Math.abs((image?.clearanceMm ?? Number.NaN) - clearanceMm)).toBeLessThanOrEqual(same);
          expect(image?.kept).toBe(kept);
        }
      }),
    );
  });

  test('scales with everything', () => {
    fc.assert(
      fc.property(grids, fc.constantFrom(0.5, 2, 10), (grid, times) => {
        const scaled = (value: unknown): unknown => {
          if (Array.isArray(value)) return value.map(scaled);
          if (typeof value !== 'object' || value === null) return value;
          return Object.fromEntries(
            Object.entries(value).map(([name, part]) => [
              name,
              name.endsWith('Mm') && typeof part === 'number' ? part * times : scaled(part),
            ]),
          );
        };
        const before = all({ ...grid, pitchXMm: grid.pitchXMm * 2 });
        for (const [place, hole] of all(scaled({ ...grid, pitchXMm: grid.pitchXMm * 2 }) as HoleGrid)) {
          expect(hole.clearanceMm).toBeCloseTo(times * (before.get(place)?.clearanceMm ?? Number.NaN), 9);
          expect(hole.kept).toBe(before.get(place)?.kept);
        }
      }),
    );
  });

  test('fills as far as the edge margin lets it, and no further', () => {
    fc.assert(
      fc.property(grids, ({ columns: _c, rows: _r, keepOuts: _k, keepIn: _i, ...grid }) => {
        const { panel, firstHole, pitchXMm, pitchYMm, holeDiameterMm, edgeMarginMm } = grid;
        const away = edgeMarginMm + holeDiameterMm / 2;
        const counted = (sideMm: number, firstMm: number, pitchMm: number) => {
          let count = 1;
          while (firstMm + count * pitchMm <= sideMm - away) count += 1;
          return count;
        };
        const { columns, rows, holes, dropped } = layoutHoles({ ...grid, keepOuts: [] });
        expect(columns).toBe(counted(panel.lengthMm, firstHole.xMm, pitchXMm));
        expect(rows).toBe(counted(panel.widthMm, firstHole.yMm, pitchYMm));
        expect(holes.length + dropped.length).toBe(columns * rows);
      }),
    );
  });
});
