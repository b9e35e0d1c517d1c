import { topSag } from '@scantling/stock';
import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop } from '../src/index.ts';
import { usedBench } from './used-bench.ts';

type Load = NonNullable<Plan['load']>;

/** Sugar maple 1200 × 600 × 40 mm at 12 %, one hole of 1 mm, on members whose middles are where they are asked for. */
function plainTop(leftMm: number, rightMm: number, load: Partial<Load>): Plan {
  const { template, accessories, cables, strip, ...plan } = usedBench();
  const member = (name: string, xMm: number) => ({
    ...{ name, xMm: xMm - 20, yMm: 40, lengthMm: 40, widthMm: 520, clearanceMm: 0 },
  });
  return {
    ...plan,
    top: { ...plan.top, lengthMm: 1200, widthMm: 600, thicknessMm: 40, moisturePct: 12, inlays: [] },
    base: {
      ...plan.base,
      members: [member('left', leftMm), member('right', rightMm)],
      fixings: [{ name: 'middle', xMm: leftMm, yMm: 320, slotMm: 7 }],
    },
    holes: { ...plan.holes, diameterMm: 1, columns: 1, rows: 1, first: { xMm: 600, yMm: 300 } },
    load: {
      leftSupport: 'left',
      rightSupport: 'right',
      spreadKg: 0,
      heavyThings: [],
      mostSagMm: 5,
      ...load,
    },
  };
}

const press = (xMm: number, massKg = 40) => ({ name: 'standing press', xMm, massKg });

const sagOf = (plan: Plan) => {
  const { sag } = planWorktop(plan).sag ?? {};
  if (!sag) throw new Error('no sag');
  return sag;
};

const check = (plan: Plan, id: string) => {
  const found = planWorktop(plan).checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
};

describe('a top on two supports', () => {
  // Wood Handbook, Table 5-3a: sugar maple at 12 %, 12 600 MPa and a specific gravity of 0.63, so 705.6 kg/m³ with its
  // water; 0.0288 m³ of it weigh 20.321 kg. With 100 kg spread, w = 120.321 × 9.80665 / 1200 = 0.98330 N/mm.
  // I = 600 × 40³ / 12 = 3 200 000 mm⁴, A′ = 5/6 × 600 × 40 = 20 000 mm², G = 12 600 / 16 = 787.5 MPa.
  // Bending 5 w L⁴ / (384 E I) = 0.65846 mm, shear w L² / (8 G A′) = 0.01124 mm; together 0.66970 mm at once.
  const spread = plainTop(0, 1200, { spreadKg: 100 });
  // 40 kg in the middle, P = 392.27 N: P L³ / (48 E I) = 0.35024 mm, P L / (4 G A′) = 0.00747 mm; together 0.35771 mm.
  const withPress = plainTop(0, 1200, { spreadKg: 100, heavyThings: [press(600)] });

  test('sags by Wood Handbook Eq. 9-2, and half as much again after years under what stays', () => {
    const { atOnceMm, afterYearsMm, atMm, under } = sagOf(spread);
    expect(atOnceMm).toBeCloseTo(0.6697, 4);
    expect(afterYearsMm).toBeCloseTo(1.5 * 0.6697, 4);
    expect(atMm).toBeCloseTo(600, 0);
    expect(under).toEqual([]);
  });

  test('under what comes and goes it sags more, and that does not grow', () => {
    const { atOnceMm, afterYearsMm, under } = sagOf(withPress);
    expect(atOnceMm).toBeCloseTo(0.6697 + 0.35771, 4);
    expect(afterYearsMm).toBeCloseTo(1.5 * 0.6697 + 0.35771, 4);
    expect(under).toEqual(['standing press']);
  });

  test('holes weaken it', () => {
    const drilled = { ...withPress, holes: { ...withPress.holes, diameterMm: 16, rows: 5, pitchYMm: 60 } };
    const first = { xMm: 600, yMm: 100 };
    const { afterYearsMm } = sagOf({ ...drilled, holes: { ...drilled.holes, first } });
    expect(afterYearsMm).toBeGreaterThan(sagOf(withPress).afterYearsMm);
  });

  test('passes at what it sags by and fails below, naming the place in the plan', () => {
    const { afterYearsMm } = sagOf(withPress);
    const allowed = (mostSagMm: number) =>
      check({ ...withPress, load: { ...(withPress.load as Load), mostSagMm } }, 'sag');
    expect(allowed(afterYearsMm).status).toBe('pass');
    expect(allowed(afterYearsMm - 0.001)).toMatchObject({
      status: 'fail',
      says: expect.stringMatching(
        /^load\.mostSag is 1\.36 mm; after years the top sags by 1\.37 mm at x 600\.0 mm with standing press on it, at once by at most 1\.03 mm/,
      ),
    });
  });

  test('a press on its end lifts it off the other support, which says how it is to be held', () => {
    // Supports at 300 and 900 mm. The top alone, 20.321 kg, rests on each with 99.6 N; 100 kg at 1200 mm take
    // 980.7 × 300 / 600 = 490.3 N off the left one: 99.64 − 490.33 = −390.69 N.
    const tipping = plainTop(300, 900, { heavyThings: [press(1200, 100)] });
    const { left } = sagOf(tipping);
    expect(left.lastingReactionN).toBeCloseTo(99.64, 2);
    expect(left.leastReactionN).toBeCloseTo(-390.69, 2);
    expect(check(tipping, 'lift-off')).toMatchObject({
      status: 'warn',
      says: expect.stringMatching(
        /^load, left: the top lifts off it under standing press\. Screws .* 391 N at least/,
      ),
    });
  });

  test('supports on one side of the middle are no supports', () => {
    // 20.321 kg in the middle, at 600 mm: on the left, at 100, 199.284 × (400 − 600) / 300 = −132.86 N.
    const oneSided = plainTop(100, 400, {});
    expect(sagOf(oneSided).left.lastingReactionN).toBeCloseTo(-132.86, 2);
    expect(check(oneSided, 'lift-off').status).toBe('fail');
  });

  test.each<[string, number, number]>([
    ['crossed', 900, 300],
    ['one beyond the end', 300, 1300],
    ['in one place', 600, 600.5],
  ])('supports %s are a fault of the plan', (_, leftMm, rightMm) => {
    const { status, says } = check(plainTop(leftMm, rightMm, {}), 'sag');
    expect(status).toBe('fail');
    expect(says).toMatch(/^load: the middle of leftSupport \(left\) is at x \d/);
  });

  test('a wood whose stiffness no table gives is a warning, without a figure', () => {
    const teak = { ...withPress, top: { ...withPress.top, species: 'teak' } };
    const { status, says, figures } = check(teak, 'sag');
    expect([status, figures]).toEqual(['warn', []]);
    expect(says).toMatch(/^No table gives stiffness and density of teak: load a board/);
    expect(planWorktop(teak).checks.map(({ id }) => id)).not.toContain('lift-off');
  });

  test('holes that touch all the way across leave nothing to stand on', () => {
    const { holes } = withPress;
    const row = {
      ...holes,
      diameterMm: 100,
      rows: 6,
      pitchYMm: 100,
      first: { xMm: 600, yMm: 50 },
      edgeMarginMm: 0,
    };
    const hole = { holeDiameterMm: 50, xMm: 640, yMm: 300, heldBelowMm: 0, cableLengthMm: 0, slackPct: 0 };
    const cables = { ...hole, mostFillPct: 50, bundle: [{ name: 'lamp', diameterMm: 5, count: 1 }] };
    const bare = {
      ...withPress,
      base: { ...withPress.base, fixings: [{ name: 'middle', xMm: 20, yMm: 320, slotMm: 7 }] },
    };
    expect(check({ ...bare, holes: row, cables }, 'sag')).toMatchObject({
      status: 'fail',
      says: expect.stringMatching(/^holes: they leave no wood across the top at x \d+\.\d/),
    });
  });
});

describe('laws', () => {
  const thing = (i: number) =>
    fc.record({
      name: fc.constant(`thing ${i}`),
      xMm: numberArb({ min: 0, max: 1200 }),
      massKg: numberArb({ min: 0, max: 300 }),
    });
  const things = fc.nat(4).chain((many) => fc.tuple(...Array.from({ length: many }, (_, i) => thing(i))));
  const supports = fc.tuple(numberArb({ min: 0, max: 500 }), numberArb({ min: 700, max: 1200 }));

  test('no choice of what stands on it sags it more, or lifts it more, than is said', () => {
    fc.assert(
      fc.property(
        supports,
        things,
        numberArb({ min: 0, max: 200 }),
        ([leftMm, rightMm], heavyThings, spreadKg) => {
          const plan = plainTop(leftMm, rightMm, { heavyThings, spreadKg });
          const { afterYearsMm, atOnceMm, left, right } = sagOf(plan);
          const spreadLoadNPerMm = ((spreadKg + 0.0288 * 705.6) * 9.80665) / 1200;
          for (let some = 0; some < 2 ** heavyThings.length; some++) {
            const standing = heavyThings.filter((_, i) => some & (1 << i));
            const under = (factor: number) =>
              topSag({
                ...{
                  lengthMm: 1200,
                  leftSupportMm: leftMm,
                  rightSupportMm: rightMm,
                  widthMm: 600,
                  depthMm: 40,
                },
                ...{ modulusOfElasticityMPa: 12_600, shearModulusMPa: 787.5, holeRows: [] },
                spreadLoadNPerMm: factor * spreadLoadNPerMm,
                pointLoads: standing.map(({ xMm, massKg }) => ({ atMm: xMm, forceN: 9.80665 * massKg })),
              });
            // The hole of 1 mm weakens and lightens by less than a hundred-thousandth.
            const room = 1e-4 * (1 + Math.abs(afterYearsMm));
            expect(under(1.5).lowestSagMm).toBeLessThanOrEqual(afterYearsMm + room);
            const { leftReactionN, rightReactionN, lowestSagMm } = under(1);
            expect(lowestSagMm).toBeLessThanOrEqual(atOnceMm + room);
            expect(leftReactionN).toBeGreaterThanOrEqual(left.leastReactionN - 0.01);
            expect(leftReactionN).toBeLessThanOrEqual(left.mostReactionN + 0.01);
            expect(rightReactionN).toBeGreaterThanOrEqual(right.leastReactionN - 0.01);
            expect(rightReactionN).toBeLessThanOrEqual(right.mostReactionN + 0.01);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  test('the supports carry what stays, no more and no less', () => {
    fc.assert(
      fc.property(
        supports,
        things,
        numberArb({ min: 0, max: 2000 }),
        ([leftMm, rightMm], heavyThings, spreadKg) => {
          const { left, right } = sagOf(plainTop(leftMm, rightMm, { heavyThings, spreadKg }));
          const holeKg = (Math.PI / 4) * 40 * 1e-9 * 705.6;
          const weightN = (spreadKg + 0.0288 * 705.6 - holeKg) * 9.80665;
          expect(left.lastingReactionN + right.lastingReactionN).toBeCloseTo(weightN, 6);
        },
      ),
    );
  });

  const two = (limits: { min: number; max: number }) =>
    fc.tuple(numberArb(limits), numberArb(limits)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);

  test('more on it never sags it less: anywhere, or spread where nothing reaches beyond the supports', () => {
    fc.assert(
      fc.property(
        supports,
        things,
        two({ min: 0, max: 500 }),
        numberArb({ min: 0, max: 1200 }),
        ([leftMm, rightMm], some, [light, heavy], xMm) => {
          const sag = (load: Partial<Load>, left = leftMm, right = rightMm) =>
            sagOf(plainTop(left, right, load)).afterYearsMm;
          const here = (massKg: number) => sag({ heavyThings: [...some, press(xMm, massKg)], spreadKg: 50 });
          expect(here(heavy)).toBeGreaterThanOrEqual(here(light) - 1e-9);
          const everywhere = (spreadKg: number) => sag({ heavyThings: some, spreadKg }, 0, 1200);
          expect(everywhere(heavy)).toBeGreaterThanOrEqual(everywhere(light) - 1e-9);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('spread load holds down the end of an overhang that something heavy bends', () => {
    // The property above once asked for more sag under more spread load everywhere; this top says why that is no law.
    const end = (spreadKg: number) =>
      sagOf(plainTop(0, 1000, { spreadKg, heavyThings: [press(1200, 131)] })).afterYearsMm;
    expect(end(20)).toBeLessThan(end(0));
  });

  test('what stays holds such an end down the more for years: the first day counts then', () => {
    const plan = plainTop(0, 1000, { spreadKg: 20, heavyThings: [press(1200, 131)] });
    const { afterYearsMm, atOnceMm } = sagOf(plan);
    expect(atOnceMm).toBeGreaterThan(afterYearsMm);
    const between = { ...(plan.load as Load), mostSagMm: (afterYearsMm + atOnceMm) / 2 };
    expect(check({ ...plan, load: between }, 'sag').status).toBe('fail');
  });

  test('a thicker top never sags more', () => {
    fc.assert(
      fc.property(supports, things, two({ min: 20, max: 100 }), ([leftMm, rightMm], heavyThings, sides) => {
        const [thin, thick] = sides.map((thicknessMm) => {
          const plan = plainTop(leftMm, rightMm, { heavyThings, spreadKg: 80 });
          return sagOf({ ...plan, top: { ...plan.top, thicknessMm } }).afterYearsMm;
        });
        expect(thick).toBeLessThanOrEqual((thin as number) + 1e-9);
      }),
      { numRuns: 40 },
    );
  });
});
