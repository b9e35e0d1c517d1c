import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  checkVapour,
  dilutionAir,
  exposureLimitTables,
  findExposureLimits,
  findSolvent,
  finishingHazards,
  massConcentration,
  mixtureExposure,
  purgeTime,
  shiftExposure,
  solventTable,
  vapourInRoom,
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

// Outside check: the pocket guide prints 1 ppm in mg/m³ for single substances (text seen).
test('the conversions of the pocket guide', () => {
  const printed = { 'Ethyl alcohol': 1.89, 'Isopropyl alcohol': 2.46, Toluene: 3.77, Turpentine: 5.56 };
  for (const [name, mgPerM3] of Object.entries(printed)) {
    const molarMassGPerMol = findSolvent(name)?.lowMolarMassGPerMol ?? Number.NaN;
    const ours = massConcentration({ concentrationPpm: 1, molarMassGPerMol }).concentrationMgPerM3;
    expect(Math.abs(ours - mgPerM3), name).toBeLessThanOrEqual(0.005);
  }
});

test('limits that are printed in both units agree by the molar mass, to the rounding of agencies', () => {
  const both = exposureLimitTables.flatMap(({ rows }) =>
    rows.flatMap(({ substance, limitPpm, limitMgPerM3 }) =>
      limitPpm !== null && limitMgPerM3 !== null ? [{ substance, limitPpm, limitMgPerM3 }] : [],
    ),
  );
  expect(both.length).toBeGreaterThan(35);
  for (const { substance, limitPpm, limitMgPerM3 } of both) {
    const molarMassGPerMol = findSolvent(substance)?.lowMolarMassGPerMol ?? Number.NaN;
    const ours = massConcentration({ concentrationPpm: limitPpm, molarMassGPerMol }).concentrationMgPerM3;
    // ACGIH reckons Stoddard solvent with another molar mass: 525 mg/m³ for 100 ppm.
    const within = substance === 'Stoddard solvent' ? 0.13 : 0.015;
    expect(Math.abs(ours / limitMgPerM3 - 1), `${substance} ${limitPpm}`).toBeLessThanOrEqual(within);
  }
});

test('every solvent is found by each of its names, and every limit has its citation', () => {
  expect(solventTable).toHaveLength(9);
  for (const { substance, alsoCalled } of solventTable) {
    for (const name of [substance, ...alsoCalled.split(';')]) {
      expect(findSolvent(name.toUpperCase())?.substance, name).toBe(substance);
    }
    const limits = findExposureLimits(substance);
    expect(limits.length, substance).toBeGreaterThan(0);
    for (const { citation, limitPpm, limitMgPerM3 } of limits) {
      expect(citation.at).toContain(substance);
      expect(limitPpm === null && limitMgPerM3 === null).toBe(false);
    }
  }
  const rows = exposureLimitTables.flatMap((table) => table.rows);
  const found = [...solventTable.map(({ substance }) => substance), 'Wood dust'].flatMap(findExposureLimits);
  expect(found).toHaveLength(rows.length);
  expect(findExposureLimits('mineral spirits').find(({ citation }) => citation.erratum)?.limitPpm).toBe(500);
  expect(findSolvent('wood dust')).toBeNull();
  expect(findSolvent('')).toBeNull();
  expect(() => findExposureLimits(3 as unknown as string)).toThrow('name to be text, got number');
});

const concentration = numberArb({ min: 0, max: 5000 });
const hours = numberArb({ min: 0, max: 12 });

test('a day of eight even hours is its concentration, and a part of the day may be told as two', () => {
  fc.assert(
    fc.property(concentration, concentration, hours, hours, (a, b, first, second) => {
      const even = shiftExposure({ concentrationsPpm: [a], durationsHours: [8] });
      close(even.exposurePpm, a);
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

test('every caution is a sentence with a source, but for the one that leads to the product', () => {
  const kinds = finishingHazards.map(({ kind }) => kind);
  expect(kinds).toEqual(['oily rags', 'waste', 'vapour', 'ignition', 'dust', 'product']);
  for (const { kind, says, citations } of finishingHazards) {
    expect(says, kind).toMatch(/^[A-Z].{30,}\.$/);
    expect(citations.length > 0, kind).toBe(kind !== 'product');
    for (const { confirmed, at } of citations) expect([confirmed, at.length > 10]).toEqual(['text', true]);
  }
});
