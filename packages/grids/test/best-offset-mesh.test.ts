import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestOffset, type GridTerms, layoutHoles } from '../src/index.ts';
import { GAP_MM, gridArb, narrow, ridge, tooMany } from './grid-arbitraries.ts';
import { keepOutsArb, mm } from './shapes.ts';

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
      ...(grid.keepIn && { keepIn: { ...grid.keepIn, clearanceMm: grid.keepIn.clearanceMm + spareMm } }),
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
          // Areas to keep within that are round or on the slant have ridges that take long.
          if (!grid.keepIn) expect(best.proven).toBe(true);
          fc.pre(best.proven);
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
        const { firstHole, keptCount, spareMm, spareBoundMm, proven } = bestOffset(grid);
        if (!grid.keepIn) expect(proven).toBe(true);
        if (!firstHole) return;
        const laid = laidOut(grid, firstHole);
        expect(laid.count).toBe(keptCount);
        expect(Math.abs(laid.spareMm - Math.max(0, spareMm ?? Number.NaN))).toBeLessThan(1e-5);
        expect(spareBoundMm).toBeGreaterThanOrEqual(spareMm ?? Number.NaN);
        if (proven) expect((spareBoundMm ?? 0) - (spareMm ?? 0)).toBeLessThanOrEqual(GAP_MM);
      }),
      // More columns than the panel has room for, whose middle is no place to begin; only every second row with room.
      { examples: [[tooMany], [narrow], [ridge]] },
    );
  });
});
