import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  checkVapour,
  dilutionAir,
  dilutionAirRule,
  findExposureLimits,
  findSolvent,
  massConcentration,
  mixtureExposure,
  purgeTime,
  purgeTimeRule,
  shiftExposure,
  vapourInRoom,
  vapourInRoomRule,
  volumeConcentration,
} from '../src/index.ts';
import { printedPurgeTimes } from './printed-purge-times.ts';

const close = (a: number, b: number, relative = 1e-9) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.abs(b) + 1e-300);

const liquid = {
  specificGravityRatio: numberArb({ min: 0.5, max: 2 }),
  molarMassGPerMol: numberArb({ min: 15, max: 500 }),
};
const roomVolumeM3 = numberArb({ min: 1, max: 100_000 });

test('there and back between ppm and mg/m³', () => {
  fc.assert(
    fc.property(
      numberArb({ min: 0, max: 2000 }),
      numberArb({ min: 2, max: 500 }),
      (ppm, molarMassGPerMol) => {
        const { concentrationMgPerM3 } = massConcentration({ concentrationPpm: ppm, molarMassGPerMol });
        close(volumeConcentration({ concentrationMgPerM3, molarMassGPerMol }).concentrationPpm, ppm + 0);
      },
    ),
  );
});

const concentration = numberArb({ min: 0, max: 5000 });
const hours = numberArb({ min: 0, max: 12 });

test('a day of eight even hours is its concentration, and a part of the day may be told as two', () => {
  fc.assert(
    fc.property(concentration, concentration, hours, hours, (a, b, first, second) => {
      const even = shiftExposure({ concentrationsPpm: [a], durationsHours: [8] });
      close(even.exposurePpm, a);
      fc.pre(2 * first + second <= 24);
      const whole = shiftExposure({ concentrationsPpm: [a, b], durationsHours: [first + second, first] });
      const parts = shiftExposure({ concentrationsPpm: [b, a, a], durationsHours: [first, second, first] });
      close(parts.exposurePpm, whole.exposurePpm);
    }),
  );
});

test('a mixture is the sum of its vapours, in any order; one at its limit is 100 %', () => {
  const limit = numberArb({ min: 0.1, max: 10_000 });
  const mixture = fc.array(fc.tuple(concentration, limit), { minLength: 1, maxLength: 12 });
  const ofLimit = (pairs: readonly (readonly [number, number])[]) =>
    mixtureExposure({
      concentrationsPpm: pairs.map(([ppm]) => ppm),
      limitsPpm: pairs.map(([, most]) => most),
    }).ofLimitPct;
  fc.assert(
    fc.property(mixture, limit, (pairs, most) => {
      close(ofLimit(pairs.toReversed()), ofLimit(pairs));
      close(
        pairs.reduce((sum, pair) => sum + ofLimit([pair]), 0),
        ofLimit(pairs),
      );
      close(ofLimit([[most, most]]), 100);
    }),
  );
});

test('half the room, or twice the solvent, is twice the vapour; solvents add up', () => {
  const solvent = fc.record({
    ...liquid,
    solventMl: numberArb({ min: 0, max: 50_000 }),
    lowerFlammableLimitPct: numberArb({ min: 0.3, max: 20 }),
  });
  fc.assert(
    fc.property(
      fc.array(solvent, { minLength: 1, maxLength: 4 }),
      numberArb({ min: 2, max: 100_000 }),
      (solvents, room) => {
        const moles = solvents.reduce(
          (sum, one) => sum + (one.solventMl * one.specificGravityRatio) / one.molarMassGPerMol,
          0,
        );
        // In half the room there must still be room for the vapour.
        fc.pre(moles * 0.0245 < room / 2);
        const check = checkVapour({ roomVolumeM3: room, solvents });
        close(
          checkVapour({ roomVolumeM3: room / 2, solvents }).ofFlammableLimitPct,
          2 * check.ofFlammableLimitPct,
        );
        const twice = solvents.map((one) => ({ ...one, solventMl: 2 * one.solventMl }));
        close(
          checkVapour({ roomVolumeM3: room, solvents: twice }).ofFlammableLimitPct,
          2 * check.ofFlammableLimitPct,
        );
        const apart = solvents.map((one) => checkVapour({ roomVolumeM3: room, solvents: [one] }));
        close(
          apart.reduce((sum, { ofFlammableLimitPct }) => sum + ofFlammableLimitPct, 0),
          check.ofFlammableLimitPct,
        );
        expect(check.vapoursPct).toHaveLength(solvents.length);
        const inRoom = check.roomForQuarterM3;
        if (inRoom >= 1 && inRoom <= 100_000) {
          close(checkVapour({ roomVolumeM3: inRoom, solvents }).ofFlammableLimitPct, 25);
        }
        const percent = check.ofFlammableLimitPct;
        const level =
          percent < 10
            ? 'under a tenth'
            : percent < 25
              ? 'under a quarter'
              : percent < 100
                ? 'over a quarter'
                : 'over the limit';
        expect(check.level).toBe(level);
      },
    ),
  );
});

test('air far from burning may be far from fit to breathe, and the check says so', () => {
  const { lowMolarMassGPerMol, highSpecificGravityRatio, lowerFlammableLimitPct } =
    findSolvent('turpentine') ?? ({} as NonNullable<ReturnType<typeof findSolvent>>);
  const check = checkVapour({
    roomVolumeM3: 40,
    solvents: [
      {
        solventMl: 200,
        specificGravityRatio: highSpecificGravityRatio,
        molarMassGPerMol: lowMolarMassGPerMol,
        lowerFlammableLimitPct: lowerFlammableLimitPct ?? Number.NaN,
      },
    ],
  });
  const limitPpm = findExposureLimits('turpentine')[0]?.limitPpm ?? Number.NaN;
  expect(check.level).toBe('under a tenth');
  expect(((check.vapoursPct[0] ?? 0) * 10_000) / limitPpm).toBeGreaterThan(7);
  expect(check.cautions.join(' ')).toMatch(/many times what may be breathed/);
  for (const { cautions } of [check, purgeTimeRule, vapourInRoomRule]) {
    expect(cautions?.join(' ')).toMatch(/Solvent vapour burns and harms.*product’s own sheet/);
  }
  expect(dilutionAirRule.cautions?.join(' ')).toMatch(/add up the air that each one needs/);
  for (const { cautions } of [check, purgeTimeRule, dilutionAirRule]) {
    expect(cautions?.join(' ')).toMatch(/only measuring with a meter made for that vapour can tell/);
    expect(cautions?.join(' ')).not.toMatch(/proof/);
  }
});

test('a day has 24 hours, and a room holds no more vapour than it is large', () => {
  const day = (durationsHours: number[]) => () =>
    shiftExposure({ concentrationsPpm: durationsHours.map(() => 10), durationsHours });
  expect(day([24, 24])).toThrow('shiftExposure requires durationsHours together between 0 and 24, got 48');
  expect(day(Array.from({ length: 24 }, () => 1))().exposurePpm).toBe(30);
  const flood = { specificGravityRatio: 0.79, molarMassGPerMol: 32.1, solventMl: 100_000 };
  expect(() => vapourInRoom({ ...flood, roomVolumeM3: 1 })).toThrow(
    'vapourInRoom requires concentrationPpm between 0 and 1000000, got ',
  );
  expect(() => checkVapour({ roomVolumeM3: 1, solvents: [{ ...flood, lowerFlammableLimitPct: 6 }] })).toThrow(
    'checkVapour requires solvents that fill no more than the room with vapour',
  );
});

test('vapour at its limit is as much as its limit, and no solvent is refused', () => {
  const alcohol = { specificGravityRatio: 0.79, molarMassGPerMol: 46.1 };
  const { concentrationPpm } = vapourInRoom({ ...alcohol, solventMl: 1000, roomVolumeM3: 100 });
  const solvents = [{ ...alcohol, solventMl: 1000, lowerFlammableLimitPct: concentrationPpm / 1e4 }];
  close(checkVapour({ roomVolumeM3: 100, solvents }).ofFlammableLimitPct, 100);
  expect(() => checkVapour({ roomVolumeM3: 100, solvents: [] })).toThrow(
    'solvents to be a list of at least one solvent, got none',
  );
  const wrong = [{ ...solvents[0], lowerFlammableLimitPct: null }] as unknown as typeof solvents;
  expect(() => checkVapour({ roomVolumeM3: 100, solvents: wrong })).toThrow(
    'solvents[0].lowerFlammableLimitPct',
  );
});

/** The balance of vapour in a well-mixed room, stepped through time: what comes, less what the air carries off. */
function stepThrough(
  startM3: number,
  comesM3PerHour: number,
  flowM3PerHour: number,
  roomM3: number,
  hours: number,
) {
  const steps = 4000;
  const h = hours / steps;
  const rate = (vapourM3: number) => comesM3PerHour - (flowM3PerHour * vapourM3) / roomM3;
  let vapour = startM3;
  for (let step = 0; step < steps; step++) {
    const a = rate(vapour);
    const b = rate(vapour + (h * a) / 2);
    const c = rate(vapour + (h * b) / 2);
    vapour += (h / 6) * (a + 2 * b + 2 * c + rate(vapour + h * c));
  }
  return vapour;
}

test('the balance of vapour, stepped through time, comes to rest at the limit', () => {
  fc.assert(
    fc.property(
      fc.record({
        ...liquid,
        evaporationMlPerHour: numberArb({ min: 1, max: 2000 }),
        limitPpm: numberArb({ min: 10, max: 1000 }),
        roomVolumeM3,
      }),
      (input) => {
        const { airFlowM3PerHour, airChangesPerHour } = dilutionAir({ ...input, mixingFactor: 1 });
        const mlToM3 = vapourInRoom({ ...input, solventMl: 1, roomVolumeM3: 1 }).concentrationPpm / 1e6;
        const hours = 20 / airChangesPerHour;
        const rest = stepThrough(
          0,
          input.evaporationMlPerHour * mlToM3,
          airFlowM3PerHour,
          input.roomVolumeM3,
          hours,
        );
        close((1e6 * rest) / input.roomVolumeM3, input.limitPpm, 1e-6);
      },
    ),
    { numRuns: 40 },
  );
});

test('airing for the time that is given leaves what is given, stepped through time', () => {
  fc.assert(
    fc.property(
      numberArb({ min: 0.1, max: 50 }),
      numberArb({ min: 0.1, max: 99 }),
      (airChangesPerHour, remainingPct) => {
        const { purgeHours } = purgeTime({ airChangesPerHour, remainingPct, mixingFactor: 1 });
        close(stepThrough(100, 0, airChangesPerHour * 40, 40, purgeHours), remainingPct, 1e-6);
      },
    ),
    { numRuns: 40 },
  );
});

test('airing in two goes is airing in one', () => {
  const part = numberArb({ min: 1, max: 100 });
  fc.assert(
    fc.property(numberArb({ min: 0.1, max: 100 }), part, part, (airChangesPerHour, first, second) => {
      const hours = (remainingPct: number) =>
        purgeTime({ airChangesPerHour, remainingPct, mixingFactor: 1 }).purgeHours;
      expect(hours((first * second) / 100)).toBeCloseTo(hours(first) + hours(second), 9);
    }),
  );
});

// Outside check: every cell of Table S3-1 of the guidelines of 1994 (text seen as a copy).
test('the table of purging times, to half a minute', () => {
  expect(printedPurgeTimes).toHaveLength(78);
  const apart = printedPurgeTimes.filter(({ airChangesPerHour, remainingPct, printed }) => {
    const { purgeHours } = purgeTime({ airChangesPerHour, remainingPct, mixingFactor: 1 });
    return !(Math.abs(60 * purgeHours - printed) <= 0.5);
  });
  expect(apart).toEqual([]);
});
