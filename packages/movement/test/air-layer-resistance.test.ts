import { expectWithin } from '@scantling/tests-shared';
import { expect, test } from 'vitest';
import {
  airLayerResistance,
  equilibriumMoisture,
  finishResistance,
  moistureExcludingTable,
} from '../src/index.ts';

test('the vapour pressure that stands in it is the printed one', () => {
  // SBi Guideline 224, Table 23, seen: 4492 Pa at 31 °C, 4755 Pa at 32 °C.
  for (const [temperatureC, printedPa] of [
    [31, 4492],
    [32, 4755],
  ] as const) {
    const moisture = (relativeHumidityPct: number) =>
      equilibriumMoisture({ temperatureC, relativeHumidityPct }).moisturePct;
    const { resistanceDaysPerMm } = airLayerResistance({
      airLayerM: 1,
      dryDensityKgPerM3: 500,
      temperatureC,
      driestHumidityPct: 40,
      wettestHumidityPct: 60,
    });
    const waterPerPa = (resistanceDaysPerMm * 86.4e6) / 5.5e9 / 500;
    const saturationPa = (moisture(60) - moisture(40)) / 20 / waterPerPa;
    expectWithin(saturationPa, printedPa, 0.0025 * printedPa, 'SBi Guideline 224, Table 23');
  }
});

test('two coats of linseed oil colour hold back alike by their vapour and by the weight of wood behind them', () => {
  // 0.4 to 0.9 m for two layers of linseed oil paint (R. Šemjakin and others, abstract), on pine of 0.42 in the air of
  // the finish test: 27 °C, from 30 to 90 %.
  const range = [0.4, 0.9].map(
    (airLayerM) =>
      airLayerResistance({
        airLayerM,
        dryDensityKgPerM3: 420,
        temperatureC: 27,
        driestHumidityPct: 30,
        wettestHumidityPct: 90,
      }).resistanceDaysPerMm,
  );
  const stain = moistureExcludingTable.find(
    ({ finish, coats }) => finish === 'Solid-color oil-based stain (linseed oil)' && coats === 2,
  );
  const { resistanceDaysPerMm } = finishResistance({
    effectivenessPct: stain?.after14DaysPct ?? Number.NaN,
    timeDays: 14,
    thicknessMm: 16,
    diffusionMm2PerDay: 11,
  });
  expect(resistanceDaysPerMm).toBeGreaterThan(range[0] ?? Number.NaN);
  expect(resistanceDaysPerMm).toBeLessThan(range[1] ?? Number.NaN);
});

test('the air at a bare face holds back next to nothing', () => {
  // Still air of about 0.01 m: from memory.
  const { resistanceDaysPerMm } = airLayerResistance({
    airLayerM: 0.01,
    dryDensityKgPerM3: 600,
    temperatureC: 20,
    driestHumidityPct: 35,
    wettestHumidityPct: 65,
  });
  expectWithin(resistanceDaysPerMm, 0.03, 0.01, 'a film of 10 mm (memory)');
});
