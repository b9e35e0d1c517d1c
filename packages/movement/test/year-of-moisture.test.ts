import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type EquilibriumMoistureInput,
  equilibriumMoisture,
  equilibriumMoistureTable,
  yearFromExtremes,
  yearFromMonths,
} from '../src/index.ts';

const airArb: fc.Arbitrary<EquilibriumMoistureInput> = fc.record(
  {
    temperatureC: numberArb({ min: -30, max: 100 }),
    relativeHumidityPct: numberArb({ min: 0, max: 100 }),
  },
  { noNullPrototype: true },
);
const monthsArb = fc.array(airArb, { minLength: 12, maxLength: 12 });

const room = { temperatureC: 20, relativeHumidityPct: 50 };
const twelve = (...first: unknown[]) =>
  [...first, ...Array.from({ length: 12 - first.length }, () => room)] as EquilibriumMoistureInput[];

test('twelve months from the handbook: the driest and the wettest are the lowest and the highest cell', () => {
  // Wood Handbook (FPL-GTR-190), Table 4-2, recalled: a cell lies within 0.064 of the equation.
  const cells = equilibriumMoistureTable.filter(({ temperatureF }) => temperatureF <= 200);
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...cells), { minLength: 12, maxLength: 12 }), (year) => {
      const { monthsPct, driestMoisturePct, wettestMoisturePct } = yearFromMonths({
        months: year.map(({ temperatureF, relativeHumidityPct }) => ({
          temperatureC: (temperatureF - 32) / 1.8,
          relativeHumidityPct,
        })),
      });
      const printed = year.map(({ moisturePct }) => moisturePct);
      expectWithin(driestMoisturePct, Math.min(...printed), 0.064, 'lowest cell');
      expectWithin(wettestMoisturePct, Math.max(...printed), 0.064, 'highest cell');
      expect(monthsPct).toHaveLength(12);
    }),
  );
});

test('a guitar between its workshop and a dry house', () => {
  // Topic 9160 of a forum of ukulele players, seen: 7.7 % at 70 °F and 40 %, 3.5 % at 75 °F and 15 %.
  const { driestMoisturePct, wettestMoisturePct, rangePct } = yearFromExtremes({
    driest: { temperatureC: (75 - 32) / 1.8, relativeHumidityPct: 15 },
    wettest: { temperatureC: (70 - 32) / 1.8, relativeHumidityPct: 40 },
  });
  expectWithin(driestMoisturePct, 3.5, 0.05, '3.5 %');
  expectWithin(wettestMoisturePct, 7.7, 0.05, '7.7 %');
  expectWithin(rangePct, 7.7 - 3.5, 0.1, 'their difference');
});

test('every month lies between the extremes, which are months themselves', () => {
  fc.assert(
    fc.property(monthsArb, (months) => {
      const year = yearFromMonths({ months });
      const monthsPct = year.monthsPct ?? [];
      expect(monthsPct).toEqual(months.map((air) => equilibriumMoisture(air).moisturePct));
      for (const monthPct of monthsPct) {
        expect(monthPct).toBeGreaterThanOrEqual(year.driestMoisturePct);
        expect(monthPct).toBeLessThanOrEqual(year.wettestMoisturePct);
      }
      expect(monthsPct[year.driestMonthIndex ?? -1]).toBe(year.driestMoisturePct);
      expect(monthsPct[year.wettestMonthIndex ?? -1]).toBe(year.wettestMoisturePct);
      expect(monthsPct.slice(0, year.driestMonthIndex ?? 0)).not.toContain(year.driestMoisturePct);
      expect(monthsPct.slice(0, year.wettestMonthIndex ?? 0)).not.toContain(year.wettestMoisturePct);
      expect(Object.is(year.rangePct, -0)).toBe(false);
      expect(year.rangePct).toBeGreaterThanOrEqual(0);
    }),
  );
});

test('the extremes of twelve months alone give the same year, but for its months', () => {
  fc.assert(
    fc.property(monthsArb, (months) => {
      const year = yearFromMonths({ months });
      const driest = months[year.driestMonthIndex ?? -1] ?? room;
      const wettest = months[year.wettestMonthIndex ?? -1] ?? room;
      expect(yearFromExtremes({ driest, wettest })).toEqual({
        ...year,
        monthsPct: null,
        driestMonthIndex: null,
        wettestMonthIndex: null,
      });
    }),
  );
});

test('a year that begins in another month is the same year, its months moved along', () => {
  fc.assert(
    fc.property(monthsArb, fc.nat(11), (months, shift) => {
      const year = yearFromMonths({ months });
      const moved = yearFromMonths({ months: [...months.slice(shift), ...months.slice(0, shift)] });
      const monthsPct = year.monthsPct ?? [];
      expect(moved.monthsPct).toEqual([...monthsPct.slice(shift), ...monthsPct.slice(0, shift)]);
      expect([moved.driestMoisturePct, moved.wettestMoisturePct, moved.rangePct]).toEqual([
        year.driestMoisturePct,
        year.wettestMoisturePct,
        year.rangePct,
      ]);
    }),
  );
});

test('a room that never changes keeps wood where it is', () => {
  expect(yearFromMonths({ months: twelve() })).toMatchObject({
    rangePct: 0,
    driestMonthIndex: 0,
    wettestMonthIndex: 0,
  });
  expect(yearFromExtremes({ driest: room, wettest: room }).rangePct).toBe(0);
});

test('a reading that is missing or impossible is named', () => {
  const refused = (months: unknown, message: string) =>
    expect(() => yearFromMonths({ months: months as EquilibriumMoistureInput[] })).toThrow(
      new RangeError(message),
    );
  refused(undefined, 'yearFromMonths requires months to hold 12 readings, got undefined');
  refused('a long text 1', 'yearFromMonths requires months to hold 12 readings, got string');
  refused({ length: 12 }, 'yearFromMonths requires months to hold 12 readings, got object');
  refused(twelve().slice(1), 'yearFromMonths requires months to hold 12 readings, got 11');
  refused([...twelve(), room], 'yearFromMonths requires months to hold 12 readings, got 13');
  refused(
    twelve(room, room, room, { ...room, relativeHumidityPct: 101 }),
    'yearFromMonths requires months[3].relativeHumidityPct between 0 and 100, got 101',
  );
  refused(
    twelve(room, { relativeHumidityPct: 50 }),
    'yearFromMonths requires months[1].temperatureC between -30 and 100, got undefined',
  );
  refused(
    twelve(undefined),
    'yearFromMonths requires months[0].temperatureC between -30 and 100, got undefined',
  );
  refused(
    twelve({ ...room, temperatureC: Number.NaN }),
    'yearFromMonths requires months[0].temperatureC between -30 and 100, got NaN',
  );
  // A hole in the list is a month without a reading.
  refused(
    Object.assign([], { length: 12 }),
    'yearFromMonths requires months[0].temperatureC between -30 and 100, got undefined',
  );
});

test('extremes that are missing, impossible or the wrong way round are named', () => {
  const refused = (input: unknown, message: string) =>
    expect(() => yearFromExtremes(input as Parameters<typeof yearFromExtremes>[0])).toThrow(
      new RangeError(message),
    );
  const damp = { temperatureC: 20, relativeHumidityPct: 70 };
  refused(
    { driest: room },
    'yearFromExtremes requires wettest.temperatureC between -30 and 100, got undefined',
  );
  refused(
    { months: twelve() },
    'yearFromExtremes requires driest.temperatureC between -30 and 100, got undefined',
  );
  refused(undefined, 'yearFromExtremes requires driest.temperatureC between -30 and 100, got undefined');
  refused(
    { driest: { ...room, relativeHumidityPct: '50' }, wettest: damp },
    'yearFromExtremes requires driest.relativeHumidityPct between 0 and 100, got "50"',
  );
  refused(
    { driest: damp, wettest: room },
    'yearFromExtremes requires driest to keep wood no wetter than wettest does, got 13.1 % and 9.3 %',
  );
});
