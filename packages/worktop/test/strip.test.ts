import { findSpecies } from '@scantling/species';
import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, type PlannedStrip, planWorktop, type SettledPlan, type Strip } from '../src/index.ts';
import { plannedStrip, stripMassKg } from '../src/parts/strip.ts';
import type { Obstacle } from '../src/plan/place.ts';
import { basisOf } from '../src/season.ts';
import { builtBench, checkOf, strip } from './shop-sections.ts';

/** The bench with its strip, or the inlay that it is, changed. */
const letIn = (changes: Partial<Strip> = {}, inlay: Partial<Obstacle> = {}, plan = builtBench()): Plan => ({
  ...plan,
  top: { ...plan.top, inlays: plan.top.inlays.map((one) => ({ ...one, ...inlay })) },
  strip: { ...strip, ...changes },
});

const partOf = (plan: Plan): PlannedStrip => {
  const part = plannedStrip(plan as SettledPlan, basisOf(plan));
  if (!part) throw new Error('no strip');
  return part;
};

const failsWith = (plan: Plan, id: string) => {
  const { status, says } = checkOf(plan, id);
  return [status, says.split('\n')[0]];
};

describe('the brass guide of the bench by hand', () => {
  const part = partOf(letIn());
  const { movement } = planWorktop(letIn());
  const drying = 8 - movement.driestMoisturePct;
  const wetting = movement.wettestMoisturePct - 8;
  // Along the grain wood shrinks at most 0.2 % from green: 0.2 / (100 × 30 − 20 × 0.2) = 0.2 / 2996 for each 1 %.
  const along = 0.2 / 2996;

  test('metal and wood over 1400 mm', () => {
    // Warmest, 4 K above building day, brass grows by 19 − 3.1 µm/(m·K) more than wood, which shrinks as it dries.
    // Products of both are left out here: a millionth of the length.
    expect(part.metalOutgrowsMm).toBeCloseTo(1400 * (4 * 15.9e-6 + along * drying), 3);
    // It is never colder than on building day: the wood outgrows the metal by what it swells.
    expect(part.woodOutgrowsMm).toBeCloseTo(1400 * along * wetting, 3);
    expect(part.runs).toBe('along the grain');
  });

  test('its screws, slots and gaps', () => {
    // 1400 − 2 × 30 = 1340 mm in 6 spaces of at most 250 mm: 223.33
    expect(part.pitchMm).toBeCloseTo(223.33, 2);
    expect(part.screws).toHaveLength(7);
    expect(part.screws[0]).toMatchObject({ atMm: 30, xMm: 70, slot: null });
    expect(part.screws.every(({ yMm }) => Math.abs(yMm - 40.7) < 1e-9)).toBe(true);
    const last = part.screws[6];
    const [out, inwards] = [part.woodOutgrowsMm, part.metalOutgrowsMm].map((mm) => (mm * 1340) / 1400);
    // Shank 4 and 0.2 mm at each end
    expect(last?.slot?.lengthMm).toBeCloseTo(4.4 + (out as number) + (inwards as number), 9);
    // 0.1 mm, and what the metal outgrows the wood from the first screw, 30 and 1370 mm away
    expect(part.start.gapMm).toBeCloseTo(0.1 + (part.metalOutgrowsMm * 30) / 1400, 9);
    expect(part.end.gapMm).toBeCloseTo(0.1 + (part.metalOutgrowsMm * 1370) / 1400, 9);
    expect(part.end.mostGapMm - part.end.gapMm).toBeCloseTo((part.woodOutgrowsMm * 1370) / 1400, 9);
  });

  test('its rabbet, with the gaps at both ends and the spare room at both sides', () => {
    const { rabbet } = part;
    expect(rabbet.xMm).toBeCloseTo(40 - part.start.gapMm, 9);
    expect(rabbet.lengthMm).toBeCloseTo(part.start.gapMm + 1400 + part.end.gapMm, 9);
    expect(rabbet.yMm).toBeCloseTo(28 - 0.2, 9);
    expect(rabbet.widthMm).toBeCloseTo(25.8, 9);
    // Across, dry wood leaves 25.4 × 0.00353 for each 1 % less room; warm brass grows less than warm maple there.
    expect(rabbet.neededAcrossMm).toBeCloseTo(25.4 * (1 + 0.00353 * drying), 3);
  });

  test('its face, its heads and its weight', () => {
    // 5 mm of maple, radial 0.00165 for each 1 %
    expect(part.belowFaceMm).toBe(0);
    expect(part.belowFaceDriestMm).toBeCloseTo(-5 * 0.00165 * drying, 9);
    expect(part.belowFaceWettestMm).toBeCloseTo(5 * 0.00165 * wetting, 9);
    // Heads 8 mm wide on shanks of 4 mm, 2 mm high: 90°; 0.2 mm below the face the cone is 8.4 mm wide there
    expect(part.head.coneAngleDeg).toBeCloseTo(90, 9);
    expect(part.head.countersinkDiameterMm).toBeCloseTo(8.4, 9);
    expect(part.head.inWoodMm).toBe(0);
    // 1.4 × 0.0254 × 0.005 m × 8500 kg/m³
    expect(part.massKg).toBeCloseTo(1.5113, 9);
    expect(stripMassKg(letIn())).toBe(part.massKg);
    for (const id of ['strip-rabbet', 'strip-movement', 'strip-screws']) {
      expect([id, checkOf(letIn(), id).status]).toEqual([id, 'pass']);
    }
  });

  test('a thin strip lets its heads into the wood', () => {
    // 0.2 + 2 − 1.5 = 0.7 mm left for the wood, where the cone is 4 + 2 × 0.7 = 5.4 mm wide
    const thin = letIn({ thicknessMm: 1.5, rabbetDepthMm: 1.5 });
    expect(partOf(thin).head.inWoodMm).toBeCloseTo(0.7, 9);
    expect(partOf(thin).head.inWoodDiameterMm).toBeCloseTo(5.4, 9);
    expect(checkOf(thin, 'strip-screws').says).toMatch(
      /countersink the wood too, 0\.70 mm deep, 5\.40 mm wide/,
    );
  });

  test('without the section there is no strip', () => {
    const { strip: _, ...plan } = builtBench();
    expect(planWorktop(plan).strip).toBeNull();
    expect(stripMassKg(plan as SettledPlan)).toBe(0);
    expect(planWorktop(plan).checks.filter(({ id }) => id.startsWith('strip'))).toEqual([]);
  });
});

test('across the grain the wood moves farther than the metal: maple by its tangential coefficient', () => {
  const plan = letIn({}, { xMm: 700, yMm: 20, lengthMm: 25, widthMm: 600 });
  const part = partOf(plan);
  const { movement } = planWorktop(plan);
  expect(part.runs).toBe('across the grain');
  // 600 × 0.00353 for each 1 %; brass and maple also grow with warmth, unlike by 20 µm/(m·K): 0.05 mm
  expect(part.woodOutgrowsMm).toBeGreaterThanOrEqual(
    600 * 0.00353 * (movement.wettestMoisturePct - 8) - 0.001,
  );
  expect(part.woodOutgrowsMm).toBeLessThan(600 * 0.00353 * (movement.wettestMoisturePct - 8) + 0.06);
  expect(part.screws.every(({ xMm }) => Math.abs(xMm - 712.5) < 1e-9)).toBe(true);
  expect(part.screws[0]?.yMm).toBe(50);
});

describe('along an edge', () => {
  test('the rabbet is open there, and all its room is at the one wall', () => {
    const { rabbet } = partOf(letIn({}, { yMm: 0 }));
    expect(rabbet.yMm).toBe(0);
    expect(rabbet.widthMm).toBeCloseTo(25.8, 9);
    const back = partOf(letIn({}, { yMm: 640 - 25.4 })).rabbet;
    expect(back.yMm + back.widthMm).toBeCloseTo(640, 9);
    // One wall: half of what the metal outgrows the wood across its width
    const needed = (part: PlannedStrip) => part.rabbet.neededAcrossMm - 25.4;
    expect(2 * needed(partOf(letIn({}, { yMm: 0 })))).toBeCloseTo(needed(partOf(letIn())), 9);
  });

  test('a strip from end to end has both ends open', () => {
    const { rabbet } = partOf(letIn({}, { xMm: 0, lengthMm: 1479.55 }));
    expect([rabbet.xMm, rabbet.lengthMm]).toEqual([0, 1479.55]);
  });
});

test('a wood of unknown gravity is reckoned with the lightest and the heaviest that the source speaks of', () => {
  const plan = letIn();
  const known = partOf(plan);
  const maple = findSpecies('sugar maple').species;
  if (!maple) throw new Error('no maple');
  const basis = basisOf(plan);
  const unknown = { ...maple, at12Pct: { ...maple.at12Pct, specificGravityRatio: null } };
  const part = plannedStrip(plan as SettledPlan, { ...basis, wood: unknown });
  expect(part?.rabbet.neededAcrossMm).toBeGreaterThanOrEqual(known.rabbet.neededAcrossMm);
  expect(part?.metalOutgrowsMm).toBe(known.metalOutgrowsMm);
});

describe('a strip that does not go', () => {
  test.each<[string, Partial<Strip>, Partial<Obstacle>, string, string, RegExp]>([
    [
      'a narrow rabbet',
      { rabbetWidthMm: 25.5 },
      {},
      'strip-rabbet',
      'fail',
      /^strip\.rabbetWidth is 25\.50 mm, at least 25\.54 mm is needed/,
    ],
    [
      'a rabbet that breaks out',
      { rabbetWidthMm: 30 },
      { yMm: 2 },
      'strip-rabbet',
      'fail',
      /its rabbet comes out of the front edge by 0\.3 mm/,
    ],
    [
      'a thin wall',
      {},
      { yMm: 4 },
      'strip-rabbet',
      'warn',
      /3\.8 mm of wood is left towards the front edge, less than the rabbet is deep/,
    ],
    [
      'a proud strip',
      { rabbetDepthMm: 4.8 },
      {},
      'strip-rabbet',
      'warn',
      /^strip\.rabbetDepth is 4\.8 mm: the strip stands up to 0\.22 mm proud, strip\.tolerance is 0\.1 mm/,
    ],
    [
      'screws through the underside',
      { screwLengthMm: 45 },
      {},
      'strip-screws',
      'fail',
      /^strip\.screwLength is 45\.0 mm: the tips come through the underside by 0\.8 mm/,
    ],
    [
      'screws that do not reach the wood',
      { screwLengthMm: 4.8 },
      {},
      'strip-screws',
      'fail',
      /do not reach the wood, more than 4\.8 mm is needed/,
    ],
    [
      'heads that fall through',
      { headBelowFaceMm: 5 },
      {},
      'strip-screws',
      'fail',
      /^strip\.headBelowFace is 5\.0 mm: the heads lie below a strip of 5\.0 mm/,
    ],
    [
      'heads wider than the strip',
      {},
      { widthMm: 8 },
      'strip-screws',
      'fail',
      /^strip\.headDiameter: the countersink is 8\.4 mm wide at the face, the strip 8\.0 mm/,
    ],
    [
      'countersinks that run together',
      { mostPitchMm: 8 },
      {},
      'strip-movement',
      'fail',
      /the countersinks run out of the strip or into each other/,
    ],
    [
      'countersinks that run out of the end',
      { endDistanceMm: 4 },
      {},
      'strip-movement',
      'fail',
      /^strip: before the first screw .* by 0\.2 mm/,
    ],
  ])('%s', (_, changes, inlay, id, status, says) => {
    expect(failsWith(letIn(changes, inlay), id)).toEqual([status, expect.stringMatching(says)]);
  });

  test('a hole that breaks into the rabbet, though it keeps clear of the strip', () => {
    // Holes of the first row reach down to 160 − 7.9375 = 152.06; a strip up to 152, its rabbet 1 mm wider each way
    const plan = letIn({ rabbetWidthMm: 27.4 }, { yMm: 152 - 25.4, clearanceMm: 0 });
    expect(planWorktop(plan).blockedHoles.filter(({ row }) => row === 1).length).toBeLessThan(13);
    expect(checkOf(plan, 'strip-rabbet').says).toMatch(
      /^holes: row 1, column \d+ breaks into the rabbet by 1\.0 mm/,
    );
  });

  test('a screw that meets one from below, and not where they pass each other', () => {
    // A guide over the front screws at y = 70, its screw at x = 250: 40 + 210
    const over = { yMm: 70 - 12.7 };
    const first = { endDistanceMm: 210 };
    // From below 40 − 5.5 = 34.5 mm deep, from above 0.2 + 20: more than 44.45 together
    const { status, says } = checkOf(letIn(first, over), 'strip-screws');
    expect([status, says]).toEqual([
      'fail',
      expect.stringMatching(/^strip: its screw 1 meets the screw from below, left front/),
    ]);
    // From above 0.2 + 9.6: 44.3 together
    expect(checkOf(letIn({ ...first, screwLengthMm: 9.6 }, over), 'strip-screws').status).toBe('pass');
    // How deep a screw goes that the plan says nothing of is not known.
    const { screws: _, ...plan } = letIn({ ...first, screwLengthMm: 9.6 }, over);
    expect(checkOf(plan, 'strip-screws').status).toBe('fail');
  });

  test.each<[string, Partial<Strip>, Partial<Obstacle>, RegExp]>([
    [
      'no inlay of that name',
      { inlay: 'guide' },
      {},
      /strip\.inlay to be the name of one of top\.inlays: "brass cutting guide", got guide/,
    ],
    ['a rabbet through the top', { rabbetDepthMm: 44 }, {}, /strip\.rabbetDepthMm to be at most 43\.45 mm/],
    [
      'a plate',
      {},
      { widthMm: 300 },
      /strip\.inlay to be an inlay that is 10 mm long or more, and at most 200 mm wide/,
    ],
    [
      'ends longer than the strip',
      { endDistanceMm: 700 },
      {},
      /strip\.endDistanceMm to be less than half of the strip, 700 mm/,
    ],
    [
      'a head no wider than its shank',
      { headDiameterMm: 4 },
      {},
      /strip\.headDiameterMm to be more than strip\.shankDiameterMm, 4, got 4/,
    ],
    // (8 − 4) / 2 / tan 75° = 0.54, / tan 15° = 7.46
    [
      'a head that is no cone',
      { headHeightMm: 0.5 },
      {},
      /strip\.headHeightMm to be from 0\.54 mm to 7\.46 mm/,
    ],
  ])('%s is a contradiction', (_, changes, inlay, message) => {
    expect(() => planWorktop(letIn(changes, inlay))).toThrow(message);
  });
});

describe('laws of a strip', () => {
  const some = fc.record({
    rabbetWidthMm: numberArb({ min: 20, max: 40 }),
    rabbetDepthMm: numberArb({ min: 0.5, max: 20 }),
    thicknessMm: numberArb({ min: 0.5, max: 20 }),
    expansionUmPerMK: numberArb({ min: 0, max: 200 }),
    buildingDayC: numberArb({ min: -10, max: 60 }),
    toleranceMm: numberArb({ min: 0, max: 1 }),
    endDistanceMm: numberArb({ min: 0, max: 200 }),
    mostPitchMm: numberArb({ min: 20, max: 1000 }),
  });

  test('turned end for end it is the same strip, its ends exchanged', () => {
    fc.assert(
      fc.property(some, numberArb({ min: 1, max: 60 }), (changes, xMm) => {
        const there = partOf(letIn({ ...changes, fixedScrew: 'first' }, { xMm }));
        const mirrored = 1479.55 - 1400 - xMm;
        const back = partOf(letIn({ ...changes, fixedScrew: 'last' }, { xMm: mirrored }));
        expect(back.start.gapMm).toBeCloseTo(there.end.gapMm, 6);
        expect(back.end.mostGapMm).toBeCloseTo(there.start.mostGapMm, 6);
        expect(back.rabbet.xMm).toBeCloseTo(1479.55 - there.rabbet.xMm - there.rabbet.lengthMm, 6);
        const lengths = there.screws.map(({ slot }) => slot?.lengthMm ?? 0);
        back.screws.forEach(({ slot }, i) => {
          expect(slot?.lengthMm ?? 0).toBeCloseTo(lengths.at(-1 - i) as number, 6);
        });
      }),
    );
  });

  test('rabbet and strip: the strip lies in it, and its gaps are its length beyond the strip', () => {
    fc.assert(
      fc.property(
        some,
        numberArb({ min: 0, max: 79.55 }),
        numberArb({ min: 0, max: 614.6 }),
        (changes, xMm, yMm) => {
          const part = partOf(letIn({ ...changes, rabbetWidthMm: changes.rabbetWidthMm + 6 }, { xMm, yMm }));
          const { rabbet } = part;
          expect(rabbet.xMm).toBeLessThanOrEqual(xMm);
          expect(rabbet.yMm).toBeLessThanOrEqual(yMm);
          expect(rabbet.xMm + rabbet.lengthMm).toBeGreaterThanOrEqual(xMm + 1400 - 1e-6);
          expect(rabbet.yMm + rabbet.widthMm).toBeGreaterThanOrEqual(yMm + 25.4 - 1e-6);
          const gaps = part.start.gapMm + part.end.gapMm;
          if (xMm > 1e-5 && xMm < 79.54) expect(rabbet.lengthMm - 1400).toBeCloseTo(gaps, 6);
          expect(part.metalOutgrowsMm).toBeGreaterThanOrEqual(0);
          expect(part.woodOutgrowsMm).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  test('what is more patient never needs more slots, and a wider year never a smaller gap', () => {
    fc.assert(
      fc.property(
        some,
        numberArb({ min: 0, max: 2 }),
        numberArb({ min: 0, max: 5 }),
        (changes, more, warmer) => {
          const slots = (part: PlannedStrip) => part.screws.filter(({ slot }) => slot).length;
          const before = partOf(letIn(changes));
          const patient = partOf(letIn({ ...changes, toleranceMm: changes.toleranceMm + more }));
          expect(slots(patient)).toBeLessThanOrEqual(slots(before));
          const plan = letIn(changes);
          const { driest, wettest } = plan.seasons;
          const drier = {
            temperatureC: driest.temperatureC,
            relativeHumidityPct: driest.relativeHumidityPct - warmer,
          };
          const wider = partOf({ ...plan, seasons: { driest: drier, wettest } });
          expect(wider.metalOutgrowsMm).toBeGreaterThanOrEqual(before.metalOutgrowsMm - 1e-9);
          expect(wider.end.gapMm).toBeGreaterThanOrEqual(before.end.gapMm - 1e-9);
        },
      ),
    );
  });

  test('a wider rabbet never fails for its width where a narrower passes', () => {
    fc.assert(
      fc.property(some, numberArb({ min: 0, max: 5 }), (changes, more) => {
        const narrow = (rabbetWidthMm: number) =>
          checkOf(letIn({ ...changes, rabbetWidthMm }, { yMm: 60 }), 'strip-rabbet').says.startsWith(
            'strip.rabbetWidth',
          );
        if (!narrow(changes.rabbetWidthMm)) expect(narrow(changes.rabbetWidthMm + more)).toBe(false);
      }),
      { numRuns: 40 },
    );
  });
});
