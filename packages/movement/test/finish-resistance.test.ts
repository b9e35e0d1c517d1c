import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  finishResistance,
  moistureExcludingTable,
  moistureOverTime,
  transverseDiffusion,
} from '../src/index.ts';
import { uptakeHeld, uptakeResisted } from './plane-sheet.ts';

const pine = { thicknessMm: 16, diffusionMm2PerDay: 11 };
const after = (timeDays: number, effectivenessPct: number) =>
  finishResistance({ ...pine, timeDays, effectivenessPct }).resistanceDaysPerMm;

const piece = fc.record({
  thicknessMm: numberArb({ min: 4, max: 50 }),
  diffusionMm2PerDay: numberArb({ min: 1, max: 30 }),
  timeDays: numberArb({ min: 1, max: 60 }),
});

test('the series gives back the effectiveness that a resistance came from', () => {
  fc.assert(
    fc.property(piece, numberArb({ min: 1, max: 95 }), (given, effectivenessPct) => {
      const { resistanceDaysPerMm } = finishResistance({ ...given, effectivenessPct });
      const fourier = (given.diffusionMm2PerDay * given.timeDays) / (given.thicknessMm / 2) ** 2;
      fc.pre(fourier > 0.05);
      const biot = given.thicknessMm / 2 / given.diffusionMm2PerDay / resistanceDaysPerMm;
      const exact = 100 * (1 - uptakeResisted(fourier, biot) / uptakeHeld(fourier));
      expectWithin(exact, effectivenessPct, 0.6, 'Crank, Eq. 4.18 and 4.53');
    }),
    { numRuns: 40 },
  );
});

test('a piece that water crosses at once is emptied through its finish alone', () => {
  // What is left to go falls as exp(−2t / (L R)), and bare wood has arrived.
  for (const effectivenessPct of [5, 40, 90]) {
    const { resistanceDaysPerMm } = finishResistance({
      thicknessMm: 2,
      diffusionMm2PerDay: 1000,
      timeDays: 14,
      effectivenessPct,
    });
    const exact = (2 * 14) / (2 * Math.log(100 / effectivenessPct));
    expect(Math.abs(resistanceDaysPerMm / exact - 1)).toBeLessThan(0.02);
  }
});

test('a panel that is followed day by day falls behind by as much', () => {
  const { resistanceDaysPerMm } = finishResistance({ ...pine, timeDays: 14, effectivenessPct: 44 });
  const mean = (resistance: number) =>
    moistureOverTime({
      ...pine,
      topResistanceDaysPerMm: resistance,
      undersideResistanceDaysPerMm: resistance,
      startMoisturePct: 0,
      equilibriumMoisturePct: [1],
      runDays: 14,
    }).daily[14]?.meanPct ?? Number.NaN;
  expectWithin(100 * (1 - mean(resistanceDaysPerMm) / mean(0)), 44, 0.2, 'moistureOverTime');
});

test('more effective is more resistant; without effect is without resistance', () => {
  fc.assert(
    fc.property(
      piece,
      numberArb({ min: 0, max: 99 }),
      numberArb({ min: 0, max: 99 }),
      (given, one, other) => {
        const resistance = (effectivenessPct: number) => finishResistance({ ...given, effectivenessPct });
        const [less, more] = [resistance(Math.min(one, other)), resistance(Math.max(one, other))];
        expect(more.resistanceDaysPerMm).toBeGreaterThanOrEqual(less.resistanceDaysPerMm);
        expect(more.lowDaysPerMm).toBeLessThanOrEqual(more.resistanceDaysPerMm);
        expect(more.highDaysPerMm).toBeGreaterThanOrEqual(more.resistanceDaysPerMm);
        expect(resistance(0).resistanceDaysPerMm).toBe(0);
      },
    ),
    { numRuns: 10 },
  );
});

describe('the test of finishes on pine (Wood Handbook, Table 16-3)', () => {
  test('pine of 0.42 at 27 °C and 13 % has the coefficient that is taken for it', () => {
    // 30 to 90 % relative humidity at 27 °C is about 6 to 20 % moisture content: Table 4-2.
    const wood = { temperatureC: 27, moisturePct: 13, specificGravityRatio: 0.42 };
    expectWithin(transverseDiffusion(wood).diffusionMm2PerDay, 11, 3, 'transverseDiffusion');
  });

  // Where most or nearly nothing came in, the last digit of the table no longer tells the resistance.
  const telling = moistureExcludingTable.filter(({ after14DaysPct: pct }) => pct >= 15 && pct <= 95);
  const pairs = telling.map((row) => ({
    name: `${row.finish}, ${row.coats}`,
    day1: row.after1DayPct <= 97 ? after(1, row.after1DayPct) : null,
    day7: after(7, row.after7DaysPct),
    day14: after(14, row.after14DaysPct),
  }));

  test('one and two weeks tell the same resistance, to a fifth', () => {
    expect(pairs).toHaveLength(28);
    for (const { name, day7, day14 } of pairs) {
      const ratio = day7 / day14;
      if (!(ratio > 1 / 1.2 && ratio < 1.2)) expect.fail(`${name}: ${day7} and ${day14} d/mm`);
    }
  });

  test('the first day tells more, up to twice as much', () => {
    const early = pairs.flatMap(({ day1, ...pair }) => (day1 === null ? [] : [{ ...pair, day1 }]));
    expect(early).toHaveLength(26);
    for (const { name, day1, day14 } of early) {
      const ratio = day1 / day14;
      if (!(ratio > 0.9 && ratio < 2.1)) expect.fail(`${name}: ${day1} and ${day14} d/mm`);
    }
  });

  test('and twice as quick a wood changes little of it', () => {
    for (const { after14DaysPct } of telling) {
      const [slow, quick] = [5.5, 22].map(
        (diffusionMm2PerDay) =>
          finishResistance({ ...pine, diffusionMm2PerDay, timeDays: 14, effectivenessPct: after14DaysPct })
            .resistanceDaysPerMm,
      );
      expect(Math.abs((slow ?? 0) / (quick ?? 0) - 1)).toBeLessThan(0.35);
    }
  });

  test('every further coat keeps more out', () => {
    let compared = 0;
    for (const [i, row] of moistureExcludingTable.slice(1).entries()) {
      const before = moistureExcludingTable[i];
      if (before?.finish !== row.finish) continue;
      compared += 1;
      expect(row.coats).toBe(before.coats + 1);
      expect(row.after1DayPct).toBeGreaterThanOrEqual(before.after1DayPct);
      expect(row.after7DaysPct).toBeGreaterThanOrEqual(before.after7DaysPct);
      expect(row.after14DaysPct).toBeGreaterThanOrEqual(before.after14DaysPct);
    }
    expect(compared).toBe(41);
  });
});
