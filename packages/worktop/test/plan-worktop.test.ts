import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop } from '../src/index.ts';
import { parsePlan } from '../src/schema.ts';
import { bench, changed } from './bindery-bench.ts';

const check = (plan: Plan, id: string) => {
  const found = planWorktop(plan).checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
};
const planned = (path: string, value: unknown) => parsePlan(changed(path, value));

describe('the bindery bench', () => {
  const plan = bench();
  const result = planWorktop(plan);

  test('passes every check', () => {
    expect(result.checks.map(({ id, status }) => [id, status])).toEqual([
      ['moisture', 'pass'],
      ['holes', 'pass'],
      ['slots', 'pass'],
      ['cover', 'pass'],
      ['finish', 'pass'],
    ]);
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

describe('a plan that does not go together', () => {
  test('a hole over a rail fails and names the hole, the rail and the clearance asked for', () => {
    const { status, says } = check(planned('holes.first.x', 100), 'holes');
    expect(status).toBe('fail');
    expect(says).toMatch(/holes: row 1, column 11 at x 1220\.0 mm, y 160\.0 mm: .*right leg frame.*6/);
  });

  test('the same holes are left out where the plan says so', () => {
    const plan = planned('holes.first.x', 100);
    const result = planWorktop({ ...plan, holes: { ...plan.holes, blocked: 'leave out' } });
    expect(result.status).toBe('warn');
    expect(result.blockedHoles.length).toBeGreaterThan(0);
    expect(result.holes.length + result.blockedHoles.length).toBe(65);
  });

  test('a hole that only the dry season pulls towards a rail is found', () => {
    // The last row, at 576, stands 576 − 15.875 / 2 − 545 = 23.06 mm behind the back rail. Held there, it stays;
    // held at 320, it comes nearer by 256 / 640 of the top's shrinking: by more than a millimetre.
    const plan = bench();
    const rails = plan.base.members.map((member) =>
      member.name === 'back rail' ? { ...member, clearanceMm: 22.9 } : member,
    );
    const still = { ...plan, base: { ...plan.base, members: rails, fixedLineMm: 576 } };
    expect(check(still, 'holes').status).toBe('pass');
    expect(check({ ...still, base: { ...still.base, fixedLineMm: 320 } }, 'holes').status).toBe('fail');
  });

  test('a slot too short fails and says how long it must be', () => {
    const { status, says } = check(planned('base.fixings.2.slot', 8), 'slots');
    expect(status).toBe('fail');
    expect(says).toMatch(/^base\.fixings, left back: slot is 8\.0 mm, at least 1\d\.\d mm is needed/);
  });

  test('too little finish fails', () => {
    const { status, says } = check(planned('finish.product.onHandMl', 20), 'finish');
    expect(status).toBe('fail');
    expect(says).toMatch(/^finish, varnish: onHandMl is 20, at least 2\d\d mL is needed/);
  });

  test('a base that shows in the dry season is a warning', () => {
    expect(check(planned('base.members.0.y', 0.5), 'cover').status).toBe('warn');
  });

  test('wood wetter than the room will ever be is a warning', () => {
    expect(check(planned('top.moisturePct', 14), 'moisture').status).toBe('warn');
  });

  test('an unknown species is refused by its path', () => {
    expect(() => planWorktop(planned('top.species', 'moon cheese'))).toThrow(
      /^planWorktop requires top\.species .*got "moon cheese"$/,
    );
  });

  test('seasons the wrong way round are refused', () => {
    const { seasons, ...rest } = bench();
    const turned = { ...rest, seasons: { driest: seasons.wettest, wettest: seasons.driest } };
    expect(() => planWorktop(turned)).toThrow(/^planWorktop requires seasons\.driest to dry the wood more/);
  });
});

describe('laws', () => {
  const slack = 1e-9;

  test('no hole comes nearer to the base at any moment of the year than the plan says', () => {
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
            if (dx === 0 && dy === 0) continue;
            expect(Math.hypot(dx, dy) - plan.holes.diameterMm / 2).toBeGreaterThanOrEqual(
              clearanceMm - slack,
            );
          }
        }
      }),
      { numRuns: 60 },
    );
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
