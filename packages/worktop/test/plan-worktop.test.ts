import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planWorktop } from '../src/index.ts';

import { bench, planned } from './bindery-bench.ts';

describe('the bindery bench', () => {
  const plan = bench();
  const result = planWorktop(plan);

  test('passes every check', () => {
    const verdicts = Object.fromEntries(result.checks.map(({ id, status }) => [id, status]));
    expect(verdicts).toEqual({
      species: 'pass',
      moisture: 'pass',
      inlays: 'pass',
      holes: 'pass',
      slots: 'pass',
      screws: 'pass',
      cover: 'pass',
      finish: 'pass',
    });
    expect(result.status).toBe('pass');
  });

  test('its moisture lies between the neighbouring cells of Wood Handbook Table 4-2 (from memory)', () => {
    // 70 °F (21.1 °C): 6.2 at 30 %, 6.9 at 35 %; 70 and 80 °F: 11.0 and 10.8 at 60 %, 12.0 and 11.7 at 65 %.
    expect(result.movement.driestMoisturePct).toBeGreaterThan(6.2);
    expect(result.movement.driestMoisturePct).toBeLessThan(6.9);
    expect(result.movement.wettestMoisturePct).toBeGreaterThan(10.8);
    expect(result.movement.wettestMoisturePct).toBeLessThan(12.0);
  });

  test('its width follows Wood Handbook Eq. 13-2 with the printed coefficient of sugar maple', () => {
    // Table 13-5: sugar maple, tangential, 0.00353 (seen in the text).
    const { driestMoisturePct, wettestMoisturePct, driestChangeMm, wettestChangeMm } = result.movement;
    expect(driestChangeMm).toBeCloseTo(640 * 0.00353 * (driestMoisturePct - 8), 9);
    expect(wettestChangeMm).toBeCloseTo(640 * 0.00353 * (wettestMoisturePct - 8), 9);
  });

  test('drills 13 × 5 holes, each at the first plus whole pitches', () => {
    expect(result.holes).toHaveLength(65);
    for (const { row, column, xMm, yMm } of result.holes) {
      expect(xMm).toBeCloseTo(68 + (column - 1) * 112, 9);
      expect(yMm).toBeCloseTo(160 + (row - 1) * 104, 9);
    }
  });

  test('gives each slot the shank, both travels and the clearance twice', () => {
    // 250 mm from the fixed line of a 640 mm top: 250/640 of its whole change, on top of 6 mm and 2 × 0.5 mm.
    const share = 250 / 640;
    const { driestChangeMm, wettestChangeMm } = result.movement;
    for (const { yMm, neededSlotMm } of result.fixings) {
      const travel = yMm === 320 ? 0 : share * (wettestChangeMm - driestChangeMm);
      expect(neededSlotMm).toBeCloseTo(7 + travel, 9);
    }
  });

  test('finishes its surface: box plus hole walls less hole mouths, and mixes exactly that much', () => {
    const [l, w, t, d] = [1.47955, 0.64, 0.04445, 0.015875];
    const area = 2 * (l * w + l * t + w * t) + 65 * (Math.PI * d * t - 2 * Math.PI * (d / 2) ** 2);
    expect(result.finish.areaM2).toBeCloseTo(area, 9);
    expect(result.finish.mix.reduce((sum, { volumeMl }) => sum + volumeMl, 0)).toBeCloseTo(
      result.finish.volumeMl,
      9,
    );
  });
});

test('a finish used as it is sold is all product, and spreads further for its solids', () => {
  const { finish } = planWorktop(planned('finish.thinner', undefined));
  expect(finish.mix).toHaveLength(1);
  // 44 % solids, 12 µm: 440 / 12 = 36.67 m²/L, twice what the half-and-half mix does.
  expect(finish.spreadingRateM2PerL).toBeCloseTo(36.667, 3);
  expect(finish.mix[0]?.volumeMl).toBeCloseTo(finish.volumeMl, 9);
});

describe('laws', () => {
  const slack = 1e-9;

  test('no hole comes nearer to the base at any moment of the year than the plan says', () => {
    let compared = 0;
    const moment = fc.double({ min: 0, max: 1, noNaN: true });
    const line = fc.double({ min: -200, max: 840, noNaN: true });
    fc.assert(
      fc.property(line, moment, (fixedLineMm, share) => {
        const plan = bench();
        const { movement, holes, blockedHoles } = planWorktop({
          ...plan,
          base: { ...plan.base, fixedLineMm },
        });
        const change = movement.driestChangeMm + share * (movement.wettestChangeMm - movement.driestChangeMm);
        for (const { xMm, yMm, clearanceMm } of [...holes, ...blockedHoles]) {
          const y = fixedLineMm + (yMm - fixedLineMm) * (1 + change / plan.top.widthMm);
          for (const { xMm: x0, yMm: y0, lengthMm, widthMm } of plan.base.members) {
            const dx = Math.max(x0 - xMm, 0, xMm - x0 - lengthMm);
            const dy = Math.max(y0 - y, 0, y - y0 - widthMm);
            if (dx === 0 && dy === 0) {
              expect(clearanceMm).toBeLessThan(0);
              continue;
            }
            compared += 1;
            expect(Math.hypot(dx, dy) - plan.holes.diameterMm / 2).toBeGreaterThanOrEqual(
              clearanceMm - slack,
            );
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(60 * 65);
  });

  test('a drier winter never calls for a shorter slot', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 5, max: 60 }), (a, b) => {
        const slots = (relativeHumidityPct: number) => {
          const plan = bench();
          const driest = { ...plan.seasons.driest, relativeHumidityPct };
          return planWorktop({ ...plan, seasons: { ...plan.seasons, driest } }).fixings.map(
            (one) => one.neededSlotMm,
          );
        };
        const [drier, damper] = [slots(Math.min(a, b)), slots(Math.max(a, b))];
        for (const [i, slot] of drier.entries())
          expect(slot).toBeGreaterThanOrEqual((damper[i] as number) - slack);
      }),
      { numRuns: 40 },
    );
  });

  test('the plan handed in is left as it was, and gives the same answer again', () => {
    const plan = bench();
    const before = structuredClone(plan);
    const first = JSON.stringify(planWorktop(plan));
    expect(plan).toEqual(before);
    expect(JSON.stringify(planWorktop(plan))).toBe(first);
  });
});
