import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop, type Template } from '../src/index.ts';
import { usedBench } from './used-bench.ts';

const stepped = (change: Partial<Template>, plan = usedBench()) => {
  const result = planWorktop({ ...plan, template: { ...(plan.template as Template), ...change } });
  const check = result.checks.find(({ id }) => id === 'template');
  if (!result.template || !check) throw new Error('no template');
  return { ...result.template, check, planned: result.holes };
};

const key = ({ row, column }: { readonly row: number; readonly column: number }) => `${row}/${column}`;

describe('a template on the pitch of the holes', () => {
  test('as large as the grid it is put down once, and is off by its datum edges and the drill', () => {
    // Hole 13/5, 1344 mm along and 416 mm across from the first. The two contacts on the long side, 1344 mm apart, each
    // off by 0.2 mm either way, shift it and turn it: across by 0.2 mm; along by 0.2 mm at the short side, and by
    // 416 × 2 × 0.2 / 1344 = 0.12381 mm from the turn. The drill adds 0.1 mm, the pitch 12 × 0.02 and 4 × 0.02 mm:
    // along 0.2 + 0.12381 + 0.1 + 0.24 = 0.66381, across 0.2 + 0.1 + 0.08 = 0.38; together √(0.66381² + 0.38²) = 0.76488.
    const { steps, proven, unreached, farthestOff, check } = stepped({ columns: 13, rows: 5 });
    expect(steps).toHaveLength(1);
    expect(steps[0]).toMatchObject({ column: 1, row: 1, pins: [], pinSpanMm: null });
    expect([proven, unreached, check.status]).toEqual([true, [], 'pass']);
    expect(farthestOff).toMatchObject({ column: 13, row: 5 });
    expect(farthestOff?.worstCaseMm).toBeCloseTo(0.76488, 4);
  });

  test('five by three holes take six placements for thirteen by five', () => {
    // The first bores 15 of 65; two later ones stand on two finished holes each and bore at most 13 more, but it has to
    // reach across twelve gaps of four at a time, three times, in two rows of placements: 3 × 2 = 6.
    const { steps, leastStepCount, proven, check } = stepped({});
    expect([steps.length, leastStepCount, proven]).toEqual([6, 6, true]);
    expect(check.says).toMatch(
      /^6 placements of a template of 5 × 3 holes drill 65 of 65 holes; no plan has fewer\./,
    );
  });

  test('one line of holes never leaves its line: a failure, with the holes that are not reached', () => {
    const { unreached, check } = stepped({ columns: 5, rows: 1 });
    expect(unreached).toHaveLength(4 * 13);
    expect(check.status).toBe('fail');
    expect(check.says).toMatch(/drill 13 of 65 holes/);
    expect(check.says).toMatch(/template: 52 holes are not reached: .*one line never leaves its line/);
  });

  test('errors that eat the clearance are a warning, with the hole and what it may run into', () => {
    const { tightest, check } = stepped({ datumErrorMm: 10, playInHoleMm: 2 });
    expect(tightest?.leftMm).toBeLessThan(0);
    expect(check.status).toBe('warn');
    expect(check.says).toMatch(
      /template: row \d+, column \d+ may be off by \d+\.\d\d mm and then run \d+\.\d\d mm into (left|right|front|back|brass|screw)/,
    );
  });

  test('what it has to miss is counted from the hole’s own clearance', () => {
    const { tightest, planned } = stepped({});
    const hole = planned.find((one) => key(one) === key(tightest as { row: number; column: number }));
    expect(tightest?.leftMm).toBeCloseTo(
      (hole?.clearanceMm as number) - (tightest?.worstCaseMm as number),
      9,
    );
    expect(tightest?.nearest).toBe(hole?.nearest);
  });

  test('a pin span longer than its diagonal is refused', () => {
    // √((4 × 112)² + (2 × 104)²) = 493.93 mm
    expect(() => stepped({ leastPinSpanMm: 494 })).toThrow(
      /requires template\.leastPinSpanMm to be at most the diagonal of the template, 493\.931 mm, got 494/,
    );
  });
});

describe('laws', () => {
  const templates = fc.record({
    columns: fc.integer({ min: 2, max: 13 }),
    rows: fc.integer({ min: 2, max: 5 }),
  });
  const posts = fc.array(fc.tuple(fc.nat(12), fc.nat(4)), { maxLength: 6 });
  const withPosts = (places: readonly (readonly [number, number])[]): Plan => {
    const plan = usedBench();
    const members = places.map(([column, row], i) => ({
      ...{ name: `post ${i}`, xMm: 63 + 112 * column, yMm: 155 + 104 * row, lengthMm: 10, widthMm: 10 },
      clearanceMm: 1,
    }));
    return {
      ...plan,
      base: { ...plan.base, members: [...plan.base.members, ...members] },
      holes: { ...plan.holes, blocked: 'leave out' },
      accessories: [],
    };
  };

  test('each hole is drilled once or not reached, under the template, and pins stand in finished holes', () => {
    fc.assert(
      fc.property(templates, posts, ({ columns, rows }, places) => {
        const { steps, unreached, planned } = stepped(
          { columns, rows, leastPinSpanMm: 100 },
          withPosts(places),
        );
        const done = new Set<string>();
        for (const { column, row, pins, drilled } of steps) {
          for (const place of [...pins, ...drilled]) {
            expect(place.column - column).toBeGreaterThanOrEqual(0);
            expect(place.column - column).toBeLessThan(columns);
            expect(place.row - row).toBeGreaterThanOrEqual(0);
            expect(place.row - row).toBeLessThan(rows);
          }
          for (const pin of pins) expect(done).toContain(key(pin));
          for (const hole of drilled) {
            expect(done).not.toContain(key(hole));
            done.add(key(hole));
          }
        }
        expect([...done, ...unreached.map(key)].sort()).toEqual(planned.map(key).sort());
      }),
      { numRuns: 25 },
    );
  });

  test('more play never leaves more beside the tightest hole', () => {
    const play = numberArb({ min: 0, max: 3 });
    const names = ['playInTemplateMm', 'playInHoleMm', 'datumErrorMm', 'boringErrorMm'] as const;
    fc.assert(
      fc.property(play, play, fc.constantFrom(...names), (a, b, name) => {
        const left = (mm: number) => stepped({ [name]: mm }).tightest?.leftMm as number;
        expect(left(Math.max(a, b))).toBeLessThanOrEqual(left(Math.min(a, b)) + 1e-9);
      }),
      { numRuns: 25 },
    );
  });
});
