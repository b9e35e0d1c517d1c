import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Cables, type Plan, planWorktop } from '../src/index.ts';
import { usedBench } from './used-bench.ts';

const withCables = (change: Partial<Cables>, plan = usedBench()): Plan => ({
  ...plan,
  cables: { ...(plan.cables as Cables), ...change },
});

const check = (plan: Plan, id: string) => {
  const found = planWorktop(plan).checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
};

const alike = (count: number, diameterMm: number) => [{ name: 'cord', diameterMm, count }];

describe('the hole for cables', () => {
  test('is wide enough for the share, by areas worked by hand', () => {
    // 2 × 7² = 98; 98 / 30² = 10.89 %. At 31 % it takes 10 √(98 / 31) = 17.780 mm.
    const { cables } = planWorktop(usedBench());
    expect(cables?.fillPct).toBeCloseTo(10.889, 3);
    expect(cables?.neededHoleMm).toBeCloseTo(17.78, 3);
    expect(check(usedBench(), 'cable-hole').status).toBe('pass');
  });

  test('too narrow fails with what is needed', () => {
    expect(check(withCables({ holeDiameterMm: 17.7 }), 'cable-hole')).toMatchObject({
      status: 'fail',
      says: expect.stringMatching(/^cables\.holeDiameter is 17\.7 mm, at least 17\.8 mm is needed/),
    });
  });

  test('whole in use, equal cables are judged by how close circles lie', () => {
    // Seven of 8 mm: six around one, 24 mm (proved to be least), where the areas alone would ask for 8 √7 = 21.17 mm.
    const packed = withCables({ bundle: alike(7, 8), mostFillPct: 100, holeDiameterMm: 24 });
    expect(planWorktop(packed).cables?.neededHoleMm).toBeCloseTo(24, 9);
    expect(check(packed, 'cable-hole').status).toBe('pass');
    expect(check(withCables({ ...packed.cables, holeDiameterMm: 23.9 }), 'cable-hole').status).toBe('fail');
  });

  test('two kinds that are equally thick are one bundle, others are judged by their share', () => {
    const two = [...alike(3, 8), { name: 'lead', diameterMm: 8, count: 4 }];
    expect(planWorktop(withCables({ bundle: two })).cables?.bundleDiameterMm).toBeCloseTo(24, 9);
    const mixed = [...alike(1, 12), { name: 'lead', diameterMm: 7, count: 2 }];
    const { cables } = planWorktop(withCables({ bundle: mixed, mostFillPct: 100 }));
    // The two thickest side by side, 12 + 7 = 19 mm, where the areas would ask for √242 = 15.6 mm.
    expect([cables?.bundleDiameterMm, cables?.neededHoleMm]).toEqual([null, 19]);
  });

  test.each<[string, Partial<Cables>, 'pass' | 'fail', RegExp]>([
    // 68 + 11 × 112 = 1300, 160 + 4 × 104 = 576: √(50² + 16²) − 15.875 / 2 − 30 / 2 = 29.56 mm.
    [
      'between a hole and the end',
      {},
      'pass',
      /^It stays 29\.5 mm clear of the hole in row 5, column 12, all year/,
    ],
    ['on a hole', { xMm: 1300, yMm: 576 }, 'fail', /: runs into the hole in row 5, column 12\. Move/],
    ['over a rail', { xMm: 700, yMm: 520 }, 'fail', /overlaps back rail/],
    ['in the brass', { xMm: 700, yMm: 40 }, 'fail', /overlaps brass cutting guide/],
    ['at the edge', { xMm: 1455, yMm: 200 }, 'fail', /from right edge, needs 40 mm/],
    [
      'beyond the top',
      { xMm: 1500 },
      'fail',
      /^cables: the hole at x 1500\.0 mm, y 560\.0 mm: is not on the top/,
    ],
  ])('%s', (_, change, status, says) => {
    expect(check(withCables(change), 'cable-place')).toMatchObject({
      status,
      says: expect.stringMatching(says),
    });
  });

  test('is looked at through the year: the dry season pulls it towards the rail', () => {
    // Held at 320, a hole at 590 is 270 / 640 of the top's shrinking nearer to the rail that ends at 545.
    const near = withCables({ xMm: 740, yMm: 600, holeDiameterMm: 20, bundle: alike(1, 5) });
    const { cables, movement } = planWorktop({
      ...near,
      holes: { ...near.holes, rows: 3, edgeMarginMm: 20 },
      template: undefined,
    });
    const nearer = (-movement.driestChangeMm * 280) / 640;
    expect(cables?.clearanceMm).toBeCloseTo(Math.min(600 - nearer - 10 - 545, 640 - 600 - 10), 6);
  });
});

describe('the length of the cables', () => {
  test('is the way to where they are held at the highest, and the slack', () => {
    // 700 + (1080 − 680) = 1100 mm; 1100 × 1.2 = 1320 mm.
    const { cables } = planWorktop(usedBench());
    expect(cables?.farthestMm).toBe(1100);
    expect(cables?.neededLengthMm).toBeCloseTo(1320, 9);
    expect(check(withCables({ cableLengthMm: 1320 }), 'cable-length').status).toBe('pass');
    expect(check(withCables({ cableLengthMm: 1319.9 }), 'cable-length')).toMatchObject({
      status: 'fail',
      says: expect.stringMatching(
        /^cables\.cableLength is 1319\.9 mm, at least 1320\.0 mm is needed: 1100\.0 mm from/,
      ),
    });
  });

  test('a base that does not rise asks for no more than the way there is', () => {
    const { base, ...plan } = usedBench();
    const { lift, ...fixed } = base;
    expect(planWorktop({ ...plan, base: fixed }).cables?.neededLengthMm).toBeCloseTo(840, 9);
  });

  test('stands beside cautions: strain relief, no pinching, licensed practice', () => {
    const { says } = check(usedBench(), 'cable-length');
    expect(says).toMatch(/strain relief/);
    expect(says).toMatch(/pinched/);
    expect(says).toMatch(/licensed practice/);
  });
});

describe('laws', () => {
  const grave = { pass: 0, warn: 1, fail: 2 };
  const length = numberArb({ min: 0, max: 5000 });
  const hole = numberArb({ min: 1, max: 300 });

  test('a longer cable or a wider hole never fails where a shorter or narrower one passes', () => {
    const bundles = fc.array(
      fc.record({
        name: fc.constant('cord'),
        diameterMm: numberArb({ min: 0.5, max: 100 }),
        count: fc.integer({ min: 1, max: 30 }),
      }),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(bundles, fc.tuple(length, length), fc.tuple(hole, hole), (bundle, lengths, holes) => {
        const of = (pick: (...numbers: number[]) => number) => {
          const plan = withCables({
            bundle,
            cableLengthMm: pick(...lengths),
            holeDiameterMm: pick(...holes),
          });
          return (['cable-hole', 'cable-length'] as const).map((id) => grave[check(plan, id).status]);
        };
        const [small, large] = [of(Math.min), of(Math.max)];
        for (const [i, one] of large.entries()) expect(one).toBeLessThanOrEqual(small[i] as number);
      }),
      { numRuns: 40 },
    );
  });

  test('at the needed width and length they go through and are long enough', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        numberArb({ min: 0.5, max: 14 }),
        length,
        (count, diameterMm, held) => {
          const bundle = alike(count, diameterMm);
          const asked = withCables({ bundle, heldBelowMm: held });
          const { cables } = planWorktop(asked);
          const holeDiameterMm = cables?.neededHoleMm as number;
          fc.pre(holeDiameterMm >= 1);
          const plan = withCables({
            bundle,
            heldBelowMm: held,
            holeDiameterMm,
            cableLengthMm: cables?.neededLengthMm as number,
          });
          expect([check(plan, 'cable-hole').status, check(plan, 'cable-length').status]).toEqual([
            'pass',
            'pass',
          ]);
          // Circles that fit side by side never cover more than the hole, nor more than is allowed.
          expect(planWorktop(plan).cables?.fillPct).toBeLessThanOrEqual(31 + 1e-6);
        },
      ),
      { numRuns: 40 },
    );
  });
});
