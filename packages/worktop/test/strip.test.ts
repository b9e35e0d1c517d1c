import { findSpecies } from '@scantling/species';
import { describe, expect, test } from 'vitest';
import { type PlannedStrip, planWorktop, type SettledPlan } from '../src/index.ts';
import { plannedStrip, stripMassKg } from '../src/parts/strip.ts';
import { basisOf } from '../src/season.ts';
import { builtBench, checkOf, letIn, stripOf } from './shop-sections.ts';

describe('the brass guide of the bench by hand', () => {
  const part = stripOf(letIn());
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
    expect(stripOf(thin).head.inWoodMm).toBeCloseTo(0.7, 9);
    expect(stripOf(thin).head.inWoodDiameterMm).toBeCloseTo(5.4, 9);
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
  const part = stripOf(plan);
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
    const { rabbet } = stripOf(letIn({}, { yMm: 0 }));
    expect(rabbet.yMm).toBe(0);
    expect(rabbet.widthMm).toBeCloseTo(25.8, 9);
    const back = stripOf(letIn({}, { yMm: 640 - 25.4 })).rabbet;
    expect(back.yMm + back.widthMm).toBeCloseTo(640, 9);
    // One wall: half of what the metal outgrows the wood across its width
    const needed = (part: PlannedStrip) => part.rabbet.neededAcrossMm - 25.4;
    expect(2 * needed(stripOf(letIn({}, { yMm: 0 })))).toBeCloseTo(needed(stripOf(letIn())), 9);
  });

  test('a strip from end to end has both ends open', () => {
    const { rabbet } = stripOf(letIn({}, { xMm: 0, lengthMm: 1479.55 }));
    expect([rabbet.xMm, rabbet.lengthMm]).toEqual([0, 1479.55]);
  });
});

test('a wood of unknown gravity is reckoned with the lightest and the heaviest that the source speaks of', () => {
  const plan = letIn();
  const known = stripOf(plan);
  const maple = findSpecies('sugar maple').species;
  if (!maple) throw new Error('no maple');
  const basis = basisOf(plan);
  const unknown = { ...maple, at12Pct: { ...maple.at12Pct, specificGravityRatio: null } };
  const part = plannedStrip(plan as SettledPlan, { ...basis, wood: unknown });
  expect(part?.rabbet.neededAcrossMm).toBeGreaterThanOrEqual(known.rabbet.neededAcrossMm);
  expect(part?.metalOutgrowsMm).toBe(known.metalOutgrowsMm);
});

describe('a strip from edge to edge', () => {
  const plan = letIn();
  const top = {
    ...plan.top,
    inlays: plan.top.inlays.map((one) => ({ ...one, xMm: 0, lengthMm: plan.top.lengthMm })),
  };

  test('stands out at both edges as the wood shrinks, and has no gap there', () => {
    const { start, metalOutgrowsMm } = stripOf({ ...plan, top });
    const { says } = checkOf({ ...plan, top }, 'strip-movement');
    const outMm = start.gapMm - (plan.strip?.endClearanceMm ?? 0);
    expect(outMm).toBeGreaterThan(0);
    expect(outMm).toBeLessThan(metalOutgrowsMm);
    expect(says).toContain(
      `at the left edge it stands out by up to ${(Math.ceil(outMm * 100) / 100).toFixed(2)} mm`,
    );
    expect(says).not.toContain('gap');
  });
});
