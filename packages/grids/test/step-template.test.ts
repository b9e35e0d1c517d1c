import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stepTemplate, type TemplateSteppingInput } from '../src/index.ts';

const none = {
  pitchXMm: 96,
  pitchYMm: 96,
  leastPinSpanMm: 0,
  playInTemplateMm: 0,
  playInHoleMm: 0,
  datumErrorMm: 0,
  boringErrorMm: 0,
  templatePitchErrorMm: 0,
};
const grid = (columns: number, rows: number, m: number, n: number): TemplateSteppingInput => ({
  ...none,
  columns,
  rows,
  template: { columns: m, rows: n },
});

/** Breadth-first over sets of finished holes as whole numbers: the fewest placements to the largest set. */
function byBreadth({ columns, rows, template, dropped = [] }: TemplateSteppingInput) {
  const gone = new Set(dropped.map(({ column, row }) => row * columns + column));
  const windows: bigint[] = [];
  for (let y = 0; y + template.rows <= rows; y++) {
    for (let x = 0; x + template.columns <= columns; x++) {
      let mask = 0n;
      for (let j = 0; j < template.rows; j++) {
        for (let i = 0; i < template.columns; i++) {
          const place = (y + j) * columns + x + i;
          if (!gone.has(place)) mask |= 1n << BigInt(place);
        }
      }
      windows.push(mask);
    }
  }
  const atLeastTwo = (set: bigint) => (set & (set - 1n)) !== 0n;
  let all = windows[0] ?? 0n;
  for (let before = -1n; before !== all; ) {
    before = all;
    for (const window of windows) if (atLeastTwo(window & all)) all |= window;
  }
  if (all === 0n) return { count: 0, holes: 0 };
  let layer = new Set([windows[0] ?? 0n]);
  let count = 1;
  for (; !layer.has(all); count++) {
    const next = new Set<bigint>();
    for (const done of layer) {
      for (const window of windows) {
        if (atLeastTwo(window & done) && (window | done) !== done) next.add(window | done);
      }
    }
    layer = next;
  }
  return { count, holes: all.toString(2).replaceAll('0', '').length };
}

const smallGrids = fc
  .record({
    columns: fc.integer({ min: 2, max: 6 }),
    rows: fc.integer({ min: 2, max: 6 }),
    m: fc.integer({ min: 1, max: 4 }),
    n: fc.integer({ min: 1, max: 4 }),
    dropped: fc.array(fc.record({ column: fc.nat(5), row: fc.nat(5) }), { maxLength: 6 }),
  })
  .filter(({ columns, rows, m, n }) => m <= columns && n <= rows && m * n > 1)
  .filter(({ columns, rows, m, n }) => (columns - m + 1) * (rows - n + 1) <= 12)
  .map(({ columns, rows, m, n, dropped }) => ({
    ...grid(columns, rows, m, n),
    dropped: dropped.filter((one) => one.column < columns && one.row < rows),
  }));

describe('stepTemplate, the number of placements', () => {
  test('is that of a breadth-first search on every small grid', () => {
    let looked = 0;
    for (let columns = 1; columns <= 6; columns++) {
      for (let rows = 1; rows <= 6; rows++) {
        for (let m = 1; m <= Math.min(4, columns); m++) {
          for (let n = 1; n <= Math.min(4, rows); n++) {
            if (m * n < 2 || (columns - m + 1) * (rows - n + 1) > 12) continue;
            const input = grid(columns, rows, m, n);
            const { placements, proven, holes } = stepTemplate(input);
            expect([columns, rows, m, n, placements.length, holes.length, proven]).toEqual([
              ...[columns, rows, m, n, byBreadth(input).count, byBreadth(input).holes, true],
            ]);
            looked += 1;
          }
        }
      }
    }
    expect(looked).toBeGreaterThan(150);
  });

  test('is that of a breadth-first search where places are dropped', () => {
    fc.assert(
      fc.property(smallGrids, (input) => {
        const { placements, proven, leastPlacementCount, holes } = stepTemplate(input);
        const peer = byBreadth(input);
        expect(holes.length).toBe(peer.holes);
        expect(leastPlacementCount).toBeLessThanOrEqual(peer.count);
        if (proven) expect(placements.length).toBe(peer.count);
      }),
    );
  });
});

describe('stepTemplate, the plan', () => {
  test('bores every hole once and finds its pins in finished holes under the template', () => {
    fc.assert(
      fc.property(smallGrids, (input) => {
        const { placements, unreached, why, holes } = stepTemplate(input);
        const key = ({ column, row }: { column: number; row: number }) => `${column}/${row}`;
        const gone = new Set(input.dropped.map(key));
        const done = new Set<string>();
        for (const [i, { column, row, pins, bores }] of placements.entries()) {
          expect(new Set(pins.map(key)).size).toBe(i === 0 ? 0 : 2);
          for (const pin of pins) expect(done.has(key(pin))).toBe(true);
          for (const at of [...pins, ...bores]) {
            expect(at.column - column).toBeGreaterThanOrEqual(0);
            expect(at.column - column).toBeLessThan(input.template.columns);
            expect(at.row - row).toBeGreaterThanOrEqual(0);
            expect(at.row - row).toBeLessThan(input.template.rows);
          }
          for (const at of bores) {
            expect(done.has(key(at)) || gone.has(key(at))).toBe(false);
            done.add(key(at));
          }
        }
        expect(done.size).toBe(holes.length);
        expect(done.size + unreached.length).toBe(input.columns * input.rows - gone.size);
        expect(why === null).toBe(unreached.length === 0 && holes.length > 0);
      }),
    );
  });
});

describe('stepTemplate, errors worked by hand', () => {
  // Pins in column 3, 96 mm apart, each free by 0.1 mm; a hole 288 mm along moves across by 288/96 = 3 times what a pin
  // moves along, and by half of what it moves across: 2 × 0.1 × √(3² + 0.5²).
  test('play turns the template by play over span', () => {
    const { holes } = stepTemplate({ ...grid(7, 2, 4, 2), playInHoleMm: 0.2 });
    const far = holes.find(({ column, row }) => column === 6 && row === 0);
    expect(far?.worstCase.yMm).toBeCloseTo(2 * 0.1 * Math.hypot(0.5, 3), 9);
    expect(holes[0]?.worstCase.distanceMm).toBe(0);
  });

  test('a pitch that is off adds up over the whole grid', () => {
    const { worstHole } = stepTemplate({ ...grid(7, 3, 4, 3), templatePitchErrorMm: 0.1 });
    expect(worstHole?.worstCase).toMatchObject({ xMm: expect.closeTo(0.6, 9), yMm: expect.closeTo(0.2, 9) });
  });
});

test.each<[object, string]>([
  [{ columns: 1e6 }, 'columns a whole number between 1 and 1600, got 1000000'],
  [{ columns: 41, rows: 40 }, 'at most 1600 places in the grid, got 1640'],
  [{ template: { columns: 8, rows: 1 } }, 'template.columns a whole number between 1 and 7, got 8'],
  [{ template: { columns: 1, rows: 1 } }, 'a template of at least two holes, got 1'],
  [{ boringErrorMm: Number.NaN }, 'boringErrorMm between 0 and 10, got NaN'],
  [{ dropped: [{ column: 9, row: 0 }] }, 'dropped[0].column a whole number between 0 and 6, got 9'],
])('stepTemplate refuses %j', (change, says) => {
  expect(() => stepTemplate({ ...grid(7, 3, 4, 3), ...change })).toThrow(`stepTemplate requires ${says}`);
});
