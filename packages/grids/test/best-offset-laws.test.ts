import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { encountersOf } from '../src/encounters.ts';
import { bestOffset, type GridTerms } from '../src/index.ts';
import { latticeOf, seedsOf } from '../src/lattice.ts';
import { type OffsetFound, searchOffset } from '../src/offset-search.ts';
import { GAP_MM, gridArb, ridge, roomy } from './grid-arbitraries.ts';
import { asPolygon, halfTurned, mm } from './shapes.ts';

describe('bestOffset, laws', () => {
  test('one more keep-out never helps', () => {
    fc.assert(
      fc.property(gridArb, (grid) => {
        const [extra, ...rest] = grid.keepOuts;
        fc.pre(extra !== undefined);
        const [fewer, more] = [bestOffset({ ...grid, keepOuts: rest }), bestOffset(grid)];
        fc.pre(fewer.proven);
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
          ...(grid.keepIn && {
            keepIn: { ...grid.keepIn, areas: grid.keepIn.areas.map((area) => halfTurned(area, panel)) },
          }),
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
        fc.pre(best.proven && turned.proven && larger.proven);
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

  test('a rectangle given by its corners has the same answer', () => {
    fc.assert(
      fc.property(gridArb, (grid) => {
        const byCorners = bestOffset({
          ...grid,
          keepOuts: grid.keepOuts.map(asPolygon),
          ...(grid.keepIn && { keepIn: { ...grid.keepIn, areas: grid.keepIn.areas.map(asPolygon) } }),
        });
        const best = bestOffset(grid);
        fc.pre(best.proven && byCorners.proven);
        // What is kept with next to nothing to spare may be missed by either.
        if (byCorners.keptCount !== best.keptCount) {
          const more = byCorners.keptCount > best.keptCount ? byCorners : best;
          expect(more.spareMm).toBeLessThanOrEqual(GAP_MM + 1e-6);
          return;
        }
        expect(best.spareMm ?? 0).toBeLessThanOrEqual((byCorners.spareBoundMm ?? 0) + 1e-6);
        expect(byCorners.spareMm ?? 0).toBeLessThanOrEqual((best.spareBoundMm ?? 0) + 1e-6);
      }),
    );
  });

  test('the bound for ridges is a bound: with it from the first range on, no answer beats it', () => {
    fc.assert(
      fc.property(gridArb, (grid) => {
        const lattice = latticeOf(grid);
        const capMm = 1000;
        const terms = {
          range: lattice.range,
          holeCount: lattice.columns * lattice.rows,
          encounters: encountersOf('test', grid, lattice, capMm),
          ...{ capMm, gapMm: GAP_MM, mostRanges: 20_000 },
        };
        const [early, never] = [0, Number.POSITIVE_INFINITY].map((easyRanges) =>
          searchOffset({ ...terms, easyRanges }, seedsOf(grid)),
        ) as [OffsetFound, OffsetFound];
        if (early.kept !== never.kept) return;
        expect(early.boundMm).toBeGreaterThanOrEqual(never.spareMm - 1e-9);
        expect(never.boundMm).toBeGreaterThanOrEqual(early.spareMm - 1e-9);
      }),
      { examples: [[ridge]] },
    );
  });
});
