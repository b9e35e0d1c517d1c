import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Lift, type Plan, planWorktop } from '../src/index.ts';
import { usedBench } from './used-bench.ts';

const withLift = (change: Partial<Lift>, plan = usedBench()): Plan => ({
  ...plan,
  base: { ...plan.base, lift: { ...(plan.base.lift as Lift), ...change } },
});

const check = (plan: Plan, id: string) => {
  const found = planWorktop(plan).checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
};

/** Sugar maple at 12 % weighs 0.63 × 1.12 = 0.7056 kg/L (Wood Handbook, Table 5-3a); the air here keeps it below 12 %. */
const maple = (plan: Plan): Plan => ({ ...plan, top: { ...plan.top, moisturePct: 12 } });
const BOX_L = 1479.55 * 640 * 44.45e-6;
const HOLES_L = 65 * (Math.PI / 4) * 15.875 ** 2 * 44.45e-6;
const CABLE_HOLE_L = (Math.PI / 4) * 30 ** 2 * 44.45e-6;

describe('what a base lifts', () => {
  const part = (plan: Plan, name: string) =>
    planWorktop(plan).lift?.heaviestFirst.find((one) => one.name === name)?.massKg;

  test('is the top without its holes, the frame and all that is on it', () => {
    const woodKg = (BOX_L - HOLES_L - CABLE_HOLE_L) * 0.7056;
    expect(part(maple(usedBench()), 'wood of the top')).toBeCloseTo(woodKg, 9);
    expect(planWorktop(maple(usedBench())).lift?.liftedKg).toBeCloseTo(woodKg + 18 + 20 + 40, 9);
  });

  test('a strip weighs what it is, and the wood of its rabbet is gone', () => {
    // Brass of 8500 kg/m³, 1400 × 25.4 × 5 mm: 0.1778 L, 1.5113 kg. The rabbet, 26 × 5 mm, takes 0.182 L of maple.
    const strip = {
      ...{ inlay: 'brass cutting guide', thicknessMm: 5, rabbetWidthMm: 26, rabbetDepthMm: 5 },
      ...{ expansionUmPerMK: 19, densityKgPerM3: 8500, buildingDayC: 20, toleranceMm: 1 },
      ...{ endDistanceMm: 30, mostPitchMm: 300, fixedScrew: 'middle' as const, shankDiameterMm: 4 },
      ...{ headDiameterMm: 8, headHeightMm: 2.5, headBelowFaceMm: 0.2, screwLengthMm: 25 },
      ...{ slotClearanceMm: 0.3, endClearanceMm: 0.5 },
    };
    const plan = maple({ ...usedBench(), strip });
    expect(part(plan, 'strip')).toBeCloseTo(1.5113, 4);
    expect(part(plan, 'wood of the top')).toBeCloseTo((BOX_L - HOLES_L - CABLE_HOLE_L - 0.182) * 0.7056, 9);
  });

  test('is heavier in the damp season by the water that the wood takes up', () => {
    const { movement } = planWorktop(usedBench());
    const dry = usedBench();
    const sameAir = { ...dry.seasons, wettest: dry.seasons.driest };
    const before = part({ ...dry, seasons: sameAir }, 'wood of the top') as number;
    expect(part(dry, 'wood of the top')).toBeCloseTo((before * (100 + movement.wettestMoisturePct)) / 108, 9);
  });

  test('too much fails with the capacity that would do and the mass to take off', () => {
    // 80 % of 120 kg is 96 kg; what goes up is some 108 kg.
    const plan = maple(withLift({ capacityKg: 120 }));
    const kg = (BOX_L - HOLES_L - CABLE_HOLE_L) * 0.7056 + 78;
    const up = (x: number) => (Math.ceil(x * 10) / 10).toFixed(1).replace('.', '\\.');
    const { status, says } = check(plan, 'weight');
    expect(status).toBe('fail');
    expect(says).toMatch(
      new RegExp(`capacityKg is 120\\.0 kg; ${up(kg)} kg go up, .*at least ${up(kg / 0.8)} kg`),
    );
    expect(says).toMatch(new RegExp(`or put ${up(kg - 96)} kg less on it\n`));
    expect(check(maple(withLift({ capacityKg: kg / 0.8 + 1e-6 })), 'weight').status).toBe('pass');
  });

  test('a wood of unknown density is a warning, and is not guessed', () => {
    const plan = { ...usedBench(), top: { ...usedBench().top, species: 'teak' } };
    expect(check(plan, 'weight')).toMatchObject({
      status: 'warn',
      says: expect.stringMatching(/No table gives the density of teak/),
    });
    expect(part(plan, 'wood of the top')).toBeUndefined();
  });

  test('a base that does not rise is not asked', () => {
    const { base, ...plan } = usedBench();
    const { lift, ...fixed } = base;
    const result = planWorktop({ ...plan, base: fixed });
    expect(result.lift).toBeNull();
    expect(result.checks.filter(({ id }) => ['weight', 'height'].includes(id))).toEqual([]);
  });
});

describe('how high the face comes', () => {
  // 44.45 mm of top on 680 to 1080 mm: from 724.45 to 1124.45 mm.
  test.each<[string, Partial<Lift>, 'pass' | 'fail', RegExp]>([
    [
      'within',
      { lowestWorkMm: 724.45, highestWorkMm: 1124.45 },
      'pass',
      /^The face stands from 724\.5 mm to 1124\.4 mm/,
    ],
    [
      'not low enough',
      { lowestWorkMm: 700 },
      'fail',
      /^base\.lift\.lowestWork is 700\.0 mm; .* 724\.5 mm: leastHeight has to be 24\.5 mm less/,
    ],
    [
      'not high enough',
      { highestWorkMm: 1150 },
      'fail',
      /^base\.lift\.highestWork is 1150\.0 mm; .* 1124\.4 mm: mostHeight has to be 25\.6 mm more/,
    ],
  ])('%s', (_, change, status, says) => {
    expect(check(withLift(change), 'height')).toMatchObject({ status, says: expect.stringMatching(says) });
  });
});

describe('laws', () => {
  const mass = numberArb({ min: 0, max: 500 });

  test('a heavier frame never has more margin, a larger capacity never less', () => {
    const grave = { pass: 0, warn: 1, fail: 2 };
    fc.assert(
      fc.property(fc.tuple(mass, mass), numberArb({ min: 1, max: 900 }), ([a, b], capacityKg) => {
        const of = (frameMassKg: number, kg: number) => {
          const result = planWorktop(withLift({ frameMassKg, capacityKg: kg }));
          const weight = result.checks.find(({ id }) => id === 'weight');
          return { marginKg: result.lift?.marginKg as number, grave: grave[weight?.status ?? 'fail'] };
        };
        const [light, heavy] = [of(Math.min(a, b), capacityKg), of(Math.max(a, b), capacityKg)];
        expect(heavy.marginKg).toBeLessThanOrEqual(light.marginKg + 1e-9);
        expect(heavy.grave).toBeGreaterThanOrEqual(light.grave);
        expect(of(a, capacityKg + 50).grave).toBeLessThanOrEqual(of(a, capacityKg).grave);
      }),
      { numRuns: 40 },
    );
  });
});
