import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anchorGrid, type GridToAnchor, type HoleLayout } from '../src/index.ts';
import { laid, rowsOf } from './anchored.ts';
import { mm } from './shapes.ts';

/** Nearer than this is the same. */
const SAME_MM = 2e-6;
const HOLE_MM = 20;

type AnchorX = GridToAnchor['anchorX'];
type AnchorY = GridToAnchor['anchorY'];
/** Of an anchor that may stand between the margins, in one direction. */
const sketch = fc.record({
  sideMm: fc.oneof(mm(100, 900), numberArb({ min: 100, max: 900 })),
  pitchMm: fc.oneof(mm(HOLE_MM, 200), numberArb({ min: HOLE_MM, max: 200 })),
  kind: fc.nat(3),
  share: fc.oneof(fc.constantFrom(0, 0.5, 1), numberArb({ min: 0, max: 1 })),
  count: fc.option(fc.integer({ min: 1, max: 8 }), { nil: undefined, freq: 1 }),
  index: fc.nat(7),
});

const grids: fc.Arbitrary<GridToAnchor> = fc
  .record({ along: sketch, across: sketch, edgeMarginMm: mm(0, 40), staggered: fc.boolean() })
  .map(({ along, across, edgeMarginMm, staggered }) => {
    const awayMm = edgeMarginMm + HOLE_MM / 2;
    const [atX = 0, atY = 0] = [along, across].map(
      ({ sideMm, share }) => awayMm + share * (sideMm - 2 * awayMm),
    );
    const indexOf = ({ count, index }: typeof along) => (count ? { index: index % count } : {});
    const anchorsX: AnchorX[] = [
      { from: 'middle' },
      { from: 'left edge', distanceMm: atX },
      { from: 'right edge', distanceMm: atX },
      { from: 'hole', centreMm: atX, ...indexOf(along) },
    ];
    const anchorsY: AnchorY[] = [
      { from: 'middle' },
      { from: 'front edge', distanceMm: atY },
      { from: 'back edge', distanceMm: atY },
      { from: 'hole', centreMm: atY, ...indexOf(across) },
    ];
    return {
      panel: { lengthMm: along.sideMm, widthMm: across.sideMm },
      ...{ pitchXMm: along.pitchMm, pitchYMm: across.pitchMm, holeDiameterMm: HOLE_MM, edgeMarginMm },
      staggered,
      ...(along.count && { columns: along.count }),
      ...(across.count && { rows: across.count }),
      anchorX: anchorsX[along.kind] as AnchorX,
      anchorY: anchorsY[across.kind] as AnchorY,
    };
  });

/** The layout, or null where the grid is refused. */
function laidOrNot(grid: GridToAnchor): HoleLayout | null {
  try {
    return laid(grid);
  } catch (refusal) {
    expect(refusal).toBeInstanceOf(RangeError);
    expect(String(refusal)).toMatch(/^RangeError: anchorGrid requires (?:columns|rows|anchor[XY]|room)/);
    return null;
  }
}

/** Checks a law on every grid that is not refused, and that it was tried often enough. */
function forLaid(law: (layout: HoleLayout, grid: GridToAnchor) => void, numRuns = 300): void {
  let tried = 0;
  fc.assert(
    fc.property(grids, (grid) => {
      const layout = laidOrNot(grid);
      if (!layout) return;
      law(layout, grid);
      tried += 1;
    }),
    { numRuns },
  );
  expect(tried).toBeGreaterThan(numRuns / 4);
}

const near = (a: number | undefined, b: number) => Math.abs((a ?? Number.NaN) - b) <= SAME_MM;
const ends = (list: readonly number[]) => [Math.min(...list), Math.max(...list)] as const;
const awayOf = ({ edgeMarginMm, holeDiameterMm }: GridToAnchor) => edgeMarginMm + holeDiameterMm / 2;

/** Whether no centre at a pitch could be added at an end that no distance holds, or, from the middle, at both. */
function isFull(
  [first, last]: readonly [number, number],
  [low, high]: readonly [number, number],
  { from }: AnchorX | AnchorY,
  pitchMm: number,
): boolean {
  if (from === 'middle') return last - first + pitchMm > high - low - SAME_MM;
  const before = from === 'left edge' || from === 'front edge' || first - pitchMm < low + SAME_MM;
  return before && (from === 'right edge' || from === 'back edge' || last + pitchMm > high - SAME_MM);
}

describe('anchorGrid, laws', () => {
  test('no hole runs over a margin, every row has holes, and the counts are those asked for', () => {
    forLaid(({ dropped, columns, rows, holes }, grid) => {
      expect(dropped).toEqual([]);
      const byRow = rowsOf(holes);
      expect(byRow).toHaveLength(rows);
      for (const row of byRow) expect(row.length).toBeGreaterThan(0);
      expect([columns, rows]).toEqual([grid.columns ?? columns, grid.rows ?? rows]);
    });
  });

  test('stands where its anchors say', () => {
    const seen = new Set<string>();
    forLaid(({ holes }, { panel, anchorX, anchorY, staggered }) => {
      const [left, right] = ends(holes.map(({ xMm }) => xMm));
      const [front, back] = ends(holes.map(({ yMm }) => yMm));
      if (anchorX.from === 'middle') expect(near(left, panel.lengthMm - right)).toBe(true);
      if (anchorX.from === 'left edge') expect(near(left, anchorX.distanceMm)).toBe(true);
      if (anchorX.from === 'right edge') expect(near(panel.lengthMm - right, anchorX.distanceMm)).toBe(true);
      if (anchorY.from === 'middle') expect(near(front, panel.widthMm - back)).toBe(true);
      if (anchorY.from === 'front edge') expect(near(front, anchorY.distanceMm)).toBe(true);
      if (anchorY.from === 'back edge') expect(near(panel.widthMm - back, anchorY.distanceMm)).toBe(true);
      const asked = holes.filter(
        ({ row, column, xMm, yMm }) =>
          (anchorX.from !== 'hole' ||
            (near(xMm, anchorX.centreMm) && column === (anchorX.index ?? column))) &&
          (anchorY.from !== 'hole' || (near(yMm, anchorY.centreMm) && row === (anchorY.index ?? row))),
      );
      expect(asked.length).toBeGreaterThan(0);
      seen.add(`${anchorX.from}, ${anchorY.from}, ${staggered}`);
    }, 1000);
    expect(seen.size).toBe(4 * 4 * 2);
  });

  test('where it fills the panel, nothing could be added', () => {
    let full = 0;
    forLaid(({ holes }, grid) => {
      const { panel, pitchXMm, pitchYMm, anchorX, anchorY } = grid;
      const awayMm = awayOf(grid);
      const alongMm = [awayMm, panel.lengthMm - awayMm] as const;
      const acrossMm = [awayMm, panel.widthMm - awayMm] as const;
      if (!grid.rows) {
        expect(isFull(ends(holes.map(({ yMm }) => yMm)), acrossMm, anchorY, pitchYMm)).toBe(true);
        full += 1;
      }
      if (grid.columns) return;
      if (anchorGrid(grid).columns) {
        expect(isFull(ends(holes.map(({ xMm }) => xMm)), alongMm, anchorX, pitchXMm)).toBe(true);
      } else {
        // Staggered rows that differ: each is full by itself, at both ends.
        for (const row of rowsOf(holes)) {
          expect(isFull(ends(row), alongMm, { from: 'hole', centreMm: 0 }, pitchXMm)).toBe(true);
        }
      }
    });
    expect(full).toBeGreaterThan(30);
  });

  test('from the middle, every row that is filled or stands alone is its own mirror image', () => {
    let rows = 0;
    forLaid(({ holes, columns }, grid) => {
      if (grid.anchorX.from !== 'middle') return;
      // Staggered rows of one number of columns, a zigzag of single holes among them, are so only together.
      if (grid.staggered && (grid.columns || columns === 1)) return;
      for (const row of rowsOf(holes)) {
        for (const [i, xMm] of row.entries())
          expect(near(row.at(-1 - i), grid.panel.lengthMm - xMm)).toBe(true);
        rows += 1;
      }
    });
    expect(rows).toBeGreaterThan(30);
  });

  test('anchored at any of its own holes, it is the same grid', () => {
    fc.assert(
      fc.property(grids, fc.nat(), (grid, pick) => {
        const layout = laidOrNot(grid);
        if (!layout) return;
        const { columns: _columns, rows: _rows, ...terms } = grid;
        const { firstHole, ...counts } = anchorGrid(grid);
        const hole = layout.holes[pick % layout.holes.length];
        const { row = 0, column = 0, xMm = 0, yMm = 0 } = hole ?? {};
        const again = anchorGrid({
          ...{ ...terms, ...counts },
          anchorX: { from: 'hole', centreMm: xMm, ...(counts.columns && { index: column }) },
          anchorY: { from: 'hole', centreMm: yMm, index: row },
        });
        expect(again).toMatchObject(counts);
        expect(near(again.firstHole.xMm, firstHole.xMm)).toBe(true);
        expect(near(again.firstHole.yMm, firstHole.yMm)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  const otherEdge = { 'left edge': 'right edge', 'right edge': 'left edge' } as const;
  test('from the other edge it is the mirror image', () => {
    let mirrored = 0;
    forLaid((_layout, { anchorX, staggered: _staggered, ...terms }) => {
      if (anchorX.from !== 'left edge' && anchorX.from !== 'right edge') return;
      const { lengthMm } = terms.panel;
      const image = laid({ ...terms, anchorX: { ...anchorX, from: otherEdge[anchorX.from] } });
      const here = laid({ ...terms, anchorX });
      expect(image.holes).toHaveLength(here.holes.length);
      const [left, right] = ends(here.holes.map(({ xMm }) => xMm));
      const [imageLeft, imageRight] = ends(image.holes.map(({ xMm }) => xMm));
      expect(near(imageLeft, lengthMm - right) && near(imageRight, lengthMm - left)).toBe(true);
      mirrored += 1;
    });
    expect(mirrored).toBeGreaterThan(30);
  });

  test('is refused only where what was asked for runs over a margin', () => {
    let refused = 0;
    fc.assert(
      fc.property(grids, (grid) => {
        if (laidOrNot(grid)) return;
        refused += 1;
        const { panel, pitchXMm, pitchYMm, columns, rows, anchorX, anchorY, staggered } = grid;
        const awayMm = awayOf(grid);
        /** By how much a number of centres would run over, mm. */
        const over = (
          sideMm: number,
          pitchMm: number,
          count: number | undefined,
          anchor: AnchorX | AnchorY,
        ) => {
          if (!count) return Number.NEGATIVE_INFINITY;
          const spanMm = (count - 1) * pitchMm;
          const tooLong = spanMm - (sideMm - 2 * awayMm);
          if (anchor.from === 'middle') return tooLong;
          if (anchor.from !== 'hole') return anchor.distanceMm + spanMm - (sideMm - awayMm);
          const first = anchor.centreMm - (anchor.index ?? 0) * pitchMm;
          return Math.max(awayMm - first, first + spanMm - (sideMm - awayMm));
        };
        const overX = over(panel.lengthMm, pitchXMm, columns, anchorX);
        const overY = over(panel.widthMm, pitchYMm, rows, anchorY);
        // Staggered rows reach half a pitch further; where they fill, a whole pitch between the margins is room enough.
        const halfMm = pitchXMm / 2;
        const lacking =
          'distanceMm' in anchorX
            ? anchorX.distanceMm + halfMm - (panel.lengthMm - awayMm)
            : pitchXMm - (panel.lengthMm - 2 * awayMm);
        const tight = columns ? overX + halfMm : lacking;
        expect(Math.max(overX, overY, staggered ? tight : overX)).toBeGreaterThan(-SAME_MM);
      }),
      { numRuns: 1000 },
    );
    expect(refused).toBeGreaterThan(30);
  });
});
