import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { unit } from 'mathjs';
import { expect, test } from 'vitest';
import { dewPoint, dewPointRule } from '../src/index.ts';
import { printedDewPointsC, printedDewPointsF } from './printed-dew-points.ts';

const at = (temperatureC: number, relativeHumidityPct: number) =>
  dewPoint({ temperatureC, relativeHumidityPct }).dewPointC;

// Outside check: the dew-point table (text seen). Its cells below 0 °C are frost points, over ice.
test('every cell of the table from 0 °C on, to a tenth, but for those that stand apart', () => {
  expect(printedDewPointsC).toHaveLength(290);
  const wet = printedDewPointsC.filter(({ printed }) => printed >= 0);
  expect(wet).toHaveLength(254);
  const apart = wet.filter(
    ({ air, humidityPct, printed }) => !(Math.abs(at(air, humidityPct) - printed) <= 0.205),
  );
  expect(apart).toEqual([
    { air: 30, humidityPct: 65, printed: 23.7 }, // A misprint for 22.7: between 21.4 and 23.9 in its row.
    { air: 14, humidityPct: 90, printed: 12.6 },
    { air: 16, humidityPct: 90, printed: 14.6 },
    { air: 16, humidityPct: 95, printed: 15.5 },
  ]);
});

test('frost points are above the dew points over water', () => {
  const frozen = printedDewPointsC.filter(({ printed }) => printed < -1);
  expect(frozen.length).toBeGreaterThan(20);
  for (const { air, humidityPct, printed } of frozen) {
    expect(printed).toBeGreaterThan(at(air, humidityPct));
    expect(printed).toBeLessThan(at(air, humidityPct) + 1.1);
  }
});

// Outside check: the dew-point chart in whole °F (text seen). In hot dry air it reads up to 3 °F too low.
test('every cell of the chart, which is rough', () => {
  expect(printedDewPointsF).toHaveLength(143);
  const celsius = (fahrenheit: number) => unit(fahrenheit, 'degF').toNumber('degC');
  for (const { air, humidityPct, printed } of printedDewPointsF) {
    const ours = unit(at(celsius(air), humidityPct), 'degC').toNumber('degF');
    expect(ours - printed).toBeLessThan(3.2);
    // Below 32 °F its cells are frost points or rounded worse.
    expect(ours - printed).toBeGreaterThan(printed >= 32 ? -1 : -2.8);
  }
});

test('at 100 % the dew point is the air itself, and elsewhere it is below', () => {
  fc.assert(
    fc.property(
      numberArb({ min: -45, max: 60 }),
      numberArb({ min: 1, max: 100 }),
      (temperatureC, humidity) => {
        expect(at(temperatureC, 100)).toBeCloseTo(temperatureC, 9);
        expect(at(temperatureC, humidity)).toBeLessThanOrEqual(temperatureC + 1e-9);
      },
    ),
  );
});

test('what the caution says of a humidity that is read 5 % too low', () => {
  const tooLow = (humidity: number) => at(20, humidity) - at(20, humidity - 5);
  for (let humidity = 45; humidity <= 100; humidity += 5) {
    expect(Math.round(tooLow(humidity)), `${humidity} %`).toBeGreaterThanOrEqual(1);
    expect(tooLow(humidity), `${humidity} %`).toBeLessThan(2);
  }
  expect(tooLow(30)).toBeGreaterThan(2);
  expect(dewPointRule.cautions?.join(' ')).toContain('1 to 2 °C too low, and more in dry air');
});
