import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestOffset, type GridTerms, layoutHoles } from '../src/index.ts';
import { halfTurned, keepOutsArb, mm } from './shapes.ts';

const GAP_MM = 0.01;

const gridArb: fc.Arbitrary<GridTerms> = fc
  .record({
    panel: fc.record({ lengthMm: mm(150, 500), widthMm: mm(150, 400) }),
    pitchXMm: mm(40, 120),
    pitchYMm: mm(40, 120),
    holeDiameterMm: mm(1, 30),
    edgeMarginMm: mm(0, 30),
    keepOuts: keepOutsArb,
    counts: fc.option(
      fc.record({ columns: fc.integer({ min: 1, max: 4 }), rows: fc.integer({ min: 1, max: 4 }) }),
    ),
    staggered: fc.boolean(),
    movement: fc.option(
      fc.record({
        fixedLineYMm: mm(0, 400),
        shrinkPct: fc.double({ min: 0, max: 5, noNaN: true }),
        swellPct: fc.double({ min: 0, max: 5, noNaN: true }),
      }),
    ),
  })
  .map(({ counts, movement, ...grid }) => ({ ...grid, ...counts, ...(movement && { movement }) }));

/** What the layout itself gives for a first hole: how many holes, and what the tightest has to spare. */
function laidOut(grid: GridTerms, firstHole: { xMm: number; yMm: number }) {
  const { holes } = layoutHoles({ ...grid, firstHole });
  const needed = new Map(grid.keepOuts.map(({ id, clearanceMm }) => [id, clearanceMm]));
  // The nearest thing need not be the tightest: lay out once more with a bit more asked for, until a hole falls.
  let [low, high] = [0, 1000];
  const keeps = (spareMm: number) => {
    const asked = {
      ...grid,
      firstHole,
      edgeMarginMm: grid.edgeMarginMm + spareMm,
      keepOuts: grid.keepOuts.map((one) => ({ ...one, clearanceMm: (needed.get(one.id) ?? 0) + spareMm })),
    };
    const places = new Set(
      layoutHoles(asked).holes.map(({ xMm, yMm }) => `${xMm.toFixed(6)}/${yMm.toFixed(6)}`),
    );
    return holes.every(({ xMm, yMm }) => places.has(`${xMm.toFixed(6)}/${yMm.toFixed(6)}`));
  };
  while (high - low > 1e-7) {
    const middle = (low + high) / 2;
    if (keeps(middle)) low = middle;
    else high = middle;
  }
  return { count: holes.length, spareMm: low };
}

const tooMany: GridTerms = {
  panel: { lengthMm: 150, widthMm: 150 },
  ...{
    pitchXMm: 50.5,
    pitchYMm: 40,
    columns: 4,
    rows: 1,
    holeDiameterMm: 1,
    edgeMarginMm: 24.5,
    keepOuts: [],
  },
};

const narrow: GridTerms = {
  panel: { lengthMm: 150, widthMm: 150 },
  ...{ pitchXMm: 113, pitchYMm: 40, holeDiameterMm: 26, edgeMarginMm: 29, staggered: true },
  keepOuts: [
    {
      ...{ id: 'brace', shape: 'polygon', clearanceMm: 24.5, belongsTo: 'top' },
      corners: [
        { xMm: 150, yMm: 0 },
        { xMm: -77, yMm: 133.5 },
        { xMm: -2.5, yMm: -4.5 },
      ],
    },
  ],
};

const roomy: GridTerms = {
  panel: { lengthMm: 440, widthMm: 275.5 },
  ...{ pitchXMm: 88.5, pitchYMm: 48, columns: 3, rows: 4, holeDiameterMm: 27, edgeMarginMm: 0 },
  keepOuts: [],
};

/** Between a rail on the slant and the edges there is a ridge, along which nothing changes for long. */
const ridge: GridTerms = {
  panel: { lengthMm: 189.5, widthMm: 306 },
  ...{ pitchXMm: 40, pitchYMm: 40, columns: 2, rows: 3, staggered: true, holeDiameterMm: 1, edgeMarginMm: 0 },
  keepOuts: [
    {
      ...{ id: 'rail', shape: 'rectangle', clearanceMm: 1, belongsTo: 'top', angleDeg: -90 },
      ...{ xMm: 170.5, yMm: 211, lengthMm: 116, widthMm: 1 },
    },
  ],
};

describe('bestOffset beside every offset of a mesh', () => {
  test('none is better, and the best of the mesh is as near as the mesh is fine', () => {
    const MESH_MM = 1;
    const small = fc.record({
      panel: fc.record({ lengthMm: mm(60, 120), widthMm: mm(60, 120) }),
      ...{ pitchXMm: mm(20, 40), pitchYMm: mm(20, 40), holeDiameterMm: mm(1, 15), staggered: fc.boolean() },
      ...{ keepOuts: keepOutsArb, neededMm: mm(0, 8) },
    });
    let compared = 0;
    fc.assert(
      fc.property(small, ({ neededMm, ...terms }) => {
        // The same asked for everywhere, so that what is nearest is what is tightest.
        const keepOuts = terms.keepOuts.map((keepOut) => ({ ...keepOut, clearanceMm: neededMm }));
        const grid = { ...terms, keepOuts, edgeMarginMm: neededMm };
        const best = bestOffset(grid);
        expect(best.proven).toBe(true);
        let mesh = { kept: 0, spareMm: 0 };
        for (let xMm = 0; xMm <= Math.min(grid.pitchXMm, grid.panel.lengthMm); xMm += MESH_MM) {
          for (let yMm = 0; yMm <= Math.min(grid.pitchYMm, grid.panel.widthMm); yMm += MESH_MM) {
            const { holes } = layoutHoles({ ...grid, firstHole: { xMm, yMm } });
            const spareMm = Math.min(...holes.map(({ clearanceMm }) => clearanceMm - neededMm));
            // What has next to nothing to spare may be missed.
            if (spareMm <= GAP_MM || holes.length < mesh.kept) continue;
            if (holes.length > mesh.kept || spareMm > mesh.spareMm) mesh = { kept: holes.length, spareMm };
          }
        }
        expect(best.keptCount).toBeGreaterThanOrEqual(mesh.kept);
        if (best.keptCount > mesh.kept || mesh.kept === 0) return;
        compared += 1;
        expect(mesh.spareMm).toBeLessThanOrEqual((best.spareBoundMm ?? Number.NaN) + 1e-6);
        expect(mesh.spareMm).toBeGreaterThanOrEqual(
          (best.spareMm ?? Number.NaN) - MESH_MM * Math.SQRT1_2 - 1e-6,
        );
      }),
      { numRuns: 40 },
    );
    expect(compared).toBeGreaterThan(5);
  });

  test('none keeps more holes with something to spare, and none that keeps as many spares more', () => {
    let better = 0;
    fc.assert(
      fc.property(
        gridArb,
        fc.array(
          fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
          { minLength: 20, maxLength: 20 },
        ),
        (grid, shares) => {
          const best = bestOffset(grid);
          expect(best.proven).toBe(true);
          for (const [u, v] of shares) {
            const firstHole = {
              xMm: u * (grid.columns ? grid.panel.lengthMm : Math.min(grid.pitchXMm, grid.panel.lengthMm)),
              yMm: v * (grid.rows ? grid.panel.widthMm : Math.min(grid.pitchYMm, grid.panel.widthMm)),
            };
            const { count, spareMm } = laidOut(grid, firstHole);
            if (count > best.keptCount) {
              better += 1;
              expect(spareMm).toBeLessThanOrEqual(GAP_MM);
            }
            if (count === best.keptCount && count > 0)
              expect(spareMm).toBeLessThanOrEqual((best.spareBoundMm ?? 0) + 1e-6);
          }
        },
      ),
      { numRuns: 30 },
    );
    expect(better).toBeLessThan(5);
  });

  test('gives exactly what the layout of its first hole gives', () => {
    fc.assert(
      fc.property(gridArb, (grid) => {
        const { firstHole, keptCount, spareMm, spareBoundMm } = bestOffset(grid);
        if (!firstHole) return;
        const laid = laidOut(grid, firstHole);
        expect(laid.count).toBe(keptCount);
        expect(Math.abs(laid.spareMm - Math.max(0, spareMm ?? Number.NaN))).toBeLessThan(1e-5);
        expect(spareBoundMm).toBeGreaterThanOrEqual(spareMm ?? Number.NaN);
        expect((spareBoundMm ?? 0) - (spareMm ?? 0)).toBeLessThanOrEqual(GAP_MM);
      }),
      // More columns than the panel has room for, whose middle is no place to begin; only every second row with room.
      { examples: [[tooMany], [narrow], [ridge]] },
    );
  });
});

describe('bestOffset, laws', () => {
  test('one more keep-out never helps', () => {
    fc.assert(
      fc.property(gridArb, (grid) => {
        const [extra, ...rest] = grid.keepOuts;
        fc.pre(extra !== undefined);
        const [fewer, more] = [bestOffset({ ...grid, keepOuts: rest }), bestOffset(grid)];
        expect(more.keptCount).toBeLessThanOrEqual(fewer.keptCount);
        if (more.keptCount === fewer.keptCount)
          expect(more.spareMm ?? 0).toBeLessThanOrEqual((fewer.spareBoundMm ?? 0) + 1e-9);
      }),
    );
  });

  test('everything in the way a pitch further on has the same answer', () => {
    const inTheMiddle = fc.record({
      ...{ pitchXMm: mm(40, 80), pitchYMm: mm(40, 80), holeDiameterMm: mm(1, 20), edgeMarginMm: mm(0, 10) },
      rails: fc.array(
        fc.record({
          xMm: mm(0, 80),
          yMm: mm(0, 80),
          lengthMm: mm(1, 60),
          widthMm: mm(1, 60),
          angleDeg: mm(-90, 90),
        }),
        { minLength: 1, maxLength: 3 },
      ),
      on: fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 2 })),
    });
    fc.assert(
      fc.property(inTheMiddle, ({ rails, on: [columns, rows], ...terms }) => {
        const found = [0, 1].map((moved) => {
          const shiftedMm = { x: moved * columns * terms.pitchXMm, y: moved * rows * terms.pitchYMm };
          return bestOffset({
            ...terms,
            // So far from the edges that none of them is nearer than a rail is.
            panel: { lengthMm: 800, widthMm: 800 },
            keepOuts: rails.map((at, i) => ({
              ...{ ...at, shape: 'rectangle', id: `rail ${i}`, clearanceMm: 2, belongsTo: 'base' },
              ...{ xMm: 250 + at.xMm + shiftedMm.x, yMm: 250 + at.yMm + shiftedMm.y },
            })),
          });
        });
        const [here, there] = found as [ReturnType<typeof bestOffset>, ReturnType<typeof bestOffset>];
        expect(there.keptCount).toBe(here.keptCount);
        expect(Math.abs((there.spareMm ?? 0) - (here.spareMm ?? 0))).toBeLessThanOrEqual(GAP_MM + 1e-6);
      }),
      { numRuns: 50 },
    );
  });

  test('half a turn of everything, and any scale, have the same answer', () => {
    fc.assert(
      fc.property(gridArb, fc.constantFrom(0.5, 2, 10), ({ staggered: _, ...grid }, times) => {
        const { panel, movement } = grid;
        const best = bestOffset(grid);
        const turned = bestOffset({
          ...grid,
          ...(movement && { movement: { ...movement, fixedLineYMm: panel.widthMm - movement.fixedLineYMm } }),
          keepOuts: grid.keepOuts.map((one) => halfTurned(one, panel)),
        });
        const scaled = (value: unknown): unknown => {
          if (Array.isArray(value)) return value.map(scaled);
          if (typeof value !== 'object' || value === null) return value;
          const entries = Object.entries(value).map(([name, part]) => [
            name,
            name.endsWith('Mm') && typeof part === 'number' ? part * times : scaled(part),
          ]);
          return Object.fromEntries(entries);
        };
        fc.pre(times * grid.holeDiameterMm >= 0.1 && times * grid.pitchXMm >= 1);
        const larger = bestOffset(scaled(grid) as GridTerms);
        // A number of holes that needs less than the gap may be found in one and missed in the other.
        for (const [other, by] of [
          [turned, 1],
          [larger, times],
        ] as const) {
          const counts = [best, other].sort((a, b) => b.keptCount - a.keptCount);
          if (best.keptCount === other.keptCount) {
            expect(Math.abs((other.spareMm ?? 0) - by * (best.spareMm ?? 0))).toBeLessThanOrEqual(
              GAP_MM * (1 + by),
            );
          } else expect(counts[0]?.spareMm).toBeLessThanOrEqual(GAP_MM * Math.max(1, by));
        }
      }),
      // More to spare than half a pitch: what is further away binds.
      { examples: [[roomy, 0.5]] },
    );
  });
});
