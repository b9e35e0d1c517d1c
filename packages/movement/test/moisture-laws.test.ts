import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MoistureOverTimeInput, moistureOverTime } from '../src/index.ts';

const moisture = numberArb({ min: 0, max: 30 });
const resistance = fc.oneof(numberArb({ min: 0, max: 5 }), numberArb({ min: 0, max: 1e6 }));
const input: fc.Arbitrary<MoistureOverTimeInput> = fc.record({
  thicknessMm: fc.oneof(numberArb({ min: 1, max: 100 }), numberArb({ min: 1, max: 1000 })),
  diffusionMm2PerDay: fc.oneof(numberArb({ min: 0.01, max: 20 }), numberArb({ min: 0.01, max: 1000 })),
  topResistanceDaysPerMm: resistance,
  undersideResistanceDaysPerMm: resistance,
  startMoisturePct: moisture,
  equilibriumMoisturePct: fc.array(moisture, { minLength: 1, maxLength: 365 }),
  runDays: fc.integer({ min: 1, max: 400 }),
});

/** Up to 3200 steps, each rounding figures of up to 30 % a few times, most often the same way. */
const ROUNDING = 1e-10;

const readings = ['meanPct', 'topPct', 'corePct', 'undersidePct'] as const;

describe('whatever the panel and its climate', () => {
  test('nothing leaves the range of start and climate, and every figure is finite', () => {
    fc.assert(
      fc.property(input, (given) => {
        const { daily, run, lastYear, swingRatio } = moistureOverTime(given);
        const allowed = [given.startMoisturePct, ...given.equilibriumMoisturePct];
        const [low, high] = [Math.min(...allowed) - ROUNDING, Math.max(...allowed) + ROUNDING];
        expect(daily).toHaveLength(given.runDays + 1);
        for (const [i, day] of daily.entries()) {
          expect(day.timeDays).toBe(i);
          expect(readings.every((name) => day[name] >= low && day[name] <= high)).toBe(true);
          expect(Object.values(day).some((value) => Object.is(value, -0))).toBe(false);
          expect(day.gradientPct).toBe((day.topPct + day.undersidePct) / 2 - day.corePct);
        }
        expect(run.driestMoisturePct).toBe(Math.min(...daily.map(({ meanPct }) => meanPct)));
        expect(run.wettestMoisturePct).toBe(Math.max(...daily.map(({ meanPct }) => meanPct)));
        expect(run.driestDays).toBe(daily.findIndex(({ meanPct }) => meanPct === run.driestMoisturePct));
        expect(run.wettestDays).toBe(daily.findIndex(({ meanPct }) => meanPct === run.wettestMoisturePct));
        expect(daily[lastYear.driestDays]?.meanPct).toBe(lastYear.driestMoisturePct);
        expect(daily[lastYear.wettestDays]?.meanPct).toBe(lastYear.wettestMoisturePct);
        expect(Math.min(lastYear.driestDays, lastYear.wettestDays)).toBeGreaterThan(given.runDays - 365);
        expect(swingRatio === null).toBe(
          new Set(given.equilibriumMoisturePct.map((one) => one + 0)).size === 1,
        );
      }),
    );
  });

  test('a panel turned over is the same panel', () => {
    fc.assert(
      fc.property(input, (given) => {
        const turned = moistureOverTime({
          ...given,
          topResistanceDaysPerMm: given.undersideResistanceDaysPerMm,
          undersideResistanceDaysPerMm: given.topResistanceDaysPerMm,
        }).daily;
        for (const [i, day] of moistureOverTime(given).daily.entries()) {
          const other = turned[i] ?? { ...day, meanPct: Number.NaN };
          expect(Math.abs(day.meanPct - other.meanPct)).toBeLessThan(ROUNDING);
          expect(Math.abs(day.topPct - other.undersidePct)).toBeLessThan(ROUNDING);
          expect(Math.abs(day.corePct - other.corePct)).toBeLessThan(ROUNDING);
        }
      }),
    );
  });

  test('a panel of twice the thickness goes the same way where water moves four times as fast', () => {
    fc.assert(
      fc.property(input, numberArb({ min: 0.2, max: 3 }), (given, times) => {
        const scaled = {
          ...given,
          thicknessMm: Math.max(1, Math.min(1000, given.thicknessMm * times)),
          topResistanceDaysPerMm: given.topResistanceDaysPerMm / 10,
          undersideResistanceDaysPerMm: given.undersideResistanceDaysPerMm / 10,
        };
        const scale = scaled.thicknessMm / given.thicknessMm;
        const diffusionMm2PerDay = given.diffusionMm2PerDay * scale ** 2;
        fc.pre(diffusionMm2PerDay >= 0.01 && diffusionMm2PerDay <= 1000);
        const there = moistureOverTime({ ...scaled, diffusionMm2PerDay }).daily;
        const here = moistureOverTime({
          ...given,
          topResistanceDaysPerMm: scaled.topResistanceDaysPerMm * scale,
          undersideResistanceDaysPerMm: scaled.undersideResistanceDaysPerMm * scale,
        }).daily;
        for (const [i, day] of here.entries()) {
          for (const name of readings) {
            expect(Math.abs(day[name] - (there[i]?.[name] ?? Number.NaN))).toBeLessThan(1e-9);
          }
        }
      }),
    );
  });

  test('start and climate twice as far from dry: so is everything', () => {
    fc.assert(
      fc.property(input, (given) => {
        const half = moistureOverTime({
          ...given,
          startMoisturePct: given.startMoisturePct / 2,
          equilibriumMoisturePct: given.equilibriumMoisturePct.map((one) => one / 2),
        }).daily;
        for (const [i, day] of moistureOverTime(given).daily.entries()) {
          expect(Math.abs(day.meanPct - 2 * (half[i]?.meanPct ?? Number.NaN))).toBeLessThan(ROUNDING);
        }
      }),
    );
  });

  test('damper air never makes drier wood', () => {
    fc.assert(
      fc.property(input, moisture, fc.nat(364), (given, damper, place) => {
        const i = place % given.equilibriumMoisturePct.length;
        const changed = given.equilibriumMoisturePct.map((one, j) => (i === j ? Math.max(one, damper) : one));
        const wetter = moistureOverTime({ ...given, equilibriumMoisturePct: changed }).daily;
        for (const [j, day] of moistureOverTime(given).daily.entries()) {
          for (const name of readings) {
            expect(wetter[j]?.[name]).toBeGreaterThanOrEqual(day[name] - ROUNDING);
          }
        }
      }),
    );
  });

  test('a year that begins elsewhere in its list is the list turned round', () => {
    fc.assert(
      fc.property(input, fc.nat(364), (given, place) => {
        const climate = given.equilibriumMoisturePct;
        const firstIndex = place % climate.length;
        const turned = [...climate.slice(firstIndex), ...climate.slice(0, firstIndex)];
        const { daily } = moistureOverTime({ ...given, firstIndex });
        expect(daily).toEqual(moistureOverTime({ ...given, equilibriumMoisturePct: turned }).daily);
      }),
    );
  });
});

describe('a top of 45 mm in a year from 6 to 11 %', () => {
  const months = [6, 6, 6.5, 7, 8, 9.5, 10.5, 11, 10, 9, 7.5, 6.5];
  const swing = (thicknessMm: number, resistanceDaysPerMm: number) =>
    moistureOverTime({
      thicknessMm,
      diffusionMm2PerDay: 2.5,
      topResistanceDaysPerMm: resistanceDaysPerMm,
      undersideResistanceDaysPerMm: resistanceDaysPerMm,
      startMoisturePct: 8,
      equilibriumMoisturePct: months,
      runDays: 3650,
    }).swingRatio ?? Number.NaN;

  test('goes through less of it the tighter its finish, and through none when sealed', () => {
    const swings = [0, 0.1, 0.5, 2, 10, 50, 1e6].map((resistance) => swing(45, resistance));
    for (const [i, one] of swings.slice(1).entries()) expect(one).toBeLessThan(swings[i] as number);
    expect(swings[0]).toBeLessThan(0.65);
    expect(swings.at(-1)).toBeLessThan(1e-5);
  });

  test('goes through less of it the thicker it is, and thin bare wood through all', () => {
    const swings = [2, 10, 20, 45, 100, 300].map((thicknessMm) => swing(thicknessMm, 0));
    for (const [i, one] of swings.slice(1).entries()) expect(one).toBeLessThan(swings[i] as number);
    expect(swings[0]).toBeGreaterThan(0.999);
  });
});

describe('refuses', () => {
  const fine: MoistureOverTimeInput = {
    thicknessMm: 45,
    diffusionMm2PerDay: 2.5,
    topResistanceDaysPerMm: 2,
    undersideResistanceDaysPerMm: 0,
    startMoisturePct: 8,
    equilibriumMoisturePct: [6, 11],
    runDays: 2,
  };
  const wrong: readonly [string, Partial<Record<keyof MoistureOverTimeInput, unknown>>][] = [
    ['thicknessMm between 1 and 1000, got 0.9', { thicknessMm: 0.9 }],
    ['diffusionMm2PerDay between 0.01 and 1000, got 0', { diffusionMm2PerDay: 0 }],
    ['topResistanceDaysPerMm between 0 and 1000000, got -1', { topResistanceDaysPerMm: -1 }],
    [
      'undersideResistanceDaysPerMm between 0 and 1000000, got Infinity',
      { undersideResistanceDaysPerMm: 1 / 0 },
    ],
    ['startMoisturePct between 0 and 30, got NaN', { startMoisturePct: Number.NaN }],
    ['equilibriumMoisturePct to be a list of numbers, got 8', { equilibriumMoisturePct: 8 }],
    ['equilibriumMoisturePct to have 1 to 365 numbers, got 0', { equilibriumMoisturePct: [] }],
    ['equilibriumMoisturePct[1] between 0 and 30, got 31', { equilibriumMoisturePct: [6, 31] }],
    ['firstIndex a whole number between 0 and 1, got 2', { firstIndex: 2 }],
    ['runDays a whole number between 1 and 36500, got 1.5', { runDays: 1.5 }],
  ];

  test.each(wrong)('%s', (message, change) => {
    const given = { ...fine, ...change } as MoistureOverTimeInput;
    expect(() => moistureOverTime(given)).toThrow(new RangeError(`moistureOverTime requires ${message}`));
    expect(moistureOverTime(fine).daily).toHaveLength(3);
  });
});
