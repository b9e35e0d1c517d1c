import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { humidityAfterHeating } from '../src/index.ts';

const heated = (fromTemperatureC: number, relativeHumidityPct: number, toTemperatureC: number) =>
  humidityAfterHeating({ fromTemperatureC, relativeHumidityPct, toTemperatureC }).relativeHumidityPct;

/** Saturation vapour pressure of water, kPa: CRC Handbook of Chemistry and Physics, 1992, seen as reprinted. */
const saturationKPa = new Map([
  [0, 0.61129],
  [5, 0.8726],
  [10, 1.2281],
  [15, 1.7056],
  [20, 2.3388],
  [25, 3.169],
  [30, 4.2455],
  [35, 5.6267],
  [40, 7.3814],
  [45, 9.5895],
  [50, 12.344],
]);

test('from each temperature of the table to each warmer one', () => {
  let compared = 0;
  for (const [from, fromKPa] of saturationKPa) {
    for (const [to, toKPa] of saturationKPa) {
      if (to < from) continue;
      const published = (80 * fromKPa) / toKPa;
      // The formula of WMO-No. 8 lies up to 0.27 % below the table, least at 0 °C.
      expectWithin(heated(from, 80, to), published, 0.003 * published, `CRC table, ${from} to ${to} °C`);
      compared += 1;
    }
  }
  expect(compared).toBe(66);
});

test('heating in two steps is heating in one, and air that is not heated stays', () => {
  const temperatureArb = numberArb({ min: -30, max: 50 });
  const humidityArb = numberArb({ min: 0, max: 100 });
  fc.assert(
    fc.property(
      fc.tuple(temperatureArb, temperatureArb, temperatureArb),
      humidityArb,
      (three, humidityPct) => {
        const [cold, mild, warm] = three.toSorted((a, b) => a - b) as [number, number, number];
        const inOne = heated(cold, humidityPct, warm);
        expectWithin(heated(mild, heated(cold, humidityPct, mild), warm), inOne, 1e-9, 'in two steps');
        expectWithin(heated(cold, humidityPct, cold), humidityPct, 1e-9, 'not heated');
        expect(inOne).toBeLessThanOrEqual(humidityPct);
      },
    ),
  );
});
