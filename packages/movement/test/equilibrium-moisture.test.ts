import { expectWithin } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { equilibriumMoisture, equilibriumMoistureTable } from '../src/index.ts';

const moistureAt = (temperatureC: number, relativeHumidityPct: number) =>
  equilibriumMoisture({ temperatureC, relativeHumidityPct }).moisturePct;

/** The table is made for round °F; its °C are rounded. */
const celsius = (temperatureF: number) => (temperatureF - 32) / 1.8;

test('every cell of the table', () => {
  expect(equilibriumMoistureTable).toHaveLength(241);
  let oneRoundingAway = 0;
  for (const { temperatureF, relativeHumidityPct, moisturePct, confirmed } of equilibriumMoistureTable) {
    const ours = moistureAt(celsius(temperatureF), relativeHumidityPct);
    const cell = `Wood Handbook (FPL-GTR-190), Table 4-2, ${temperatureF} °F and ${relativeHumidityPct} % (${confirmed})`;
    // Half of the last digit is 0.05. The table was rounded from the equation with its constants for °F, which
    // lie up to 0.014 from those for °C, so a cell may be rounded the other way.
    expectWithin(ours, moisturePct, 0.05 + 0.014, cell);
    if (Math.abs(ours - moisturePct) > 0.05) oneRoundingAway += 1;
  }
  expect(oneRoundingAway).toBe(7);
});

test('the printed °C are the °F, rounded', () => {
  for (const { temperatureC, temperatureF } of equilibriumMoistureTable) {
    expectWithin(temperatureC, celsius(temperatureF), 0.05 + 1e-9, 'exact: (°F − 32) / 1.8');
  }
});

test('wood is wetter in damper air, at every humidity and temperature allowed', () => {
  let steps = 0;
  for (let temperatureC = -30; temperatureC <= 100; temperatureC += 0.5) {
    expect(moistureAt(temperatureC, 0)).toBe(0);
    for (let tenths = 1; tenths <= 1000; tenths++) {
      steps += 1;
      const [drier, damper] = [
        moistureAt(temperatureC, (tenths - 1) / 10),
        moistureAt(temperatureC, tenths / 10),
      ];
      if (!(damper > drier)) expect.fail(`falls at ${temperatureC} °C, ${tenths / 10} %`);
    }
  }
  expect(steps).toBe(261_000);
});

test('wood stays below fibre saturation, about 30 %, at any humidity', () => {
  // Wood Handbook, ch. 4: fibre saturation averages about 30 %; the equation is made for below it.
  fc.assert(
    fc.property(
      fc.double({ min: -30, max: 100, noNaN: true }),
      fc.double({ min: 0, max: 100, noNaN: true }),
      (temperatureC, relativeHumidityPct) => {
        const moisturePct = moistureAt(temperatureC, relativeHumidityPct);
        expect(moisturePct).toBeGreaterThanOrEqual(0);
        expect(moisturePct).toBeLessThan(30);
      },
    ),
  );
});

test('warmer air of the same humidity dries wood, as down every column of the table', () => {
  const humidities = new Set(equilibriumMoistureTable.map((cell) => cell.relativeHumidityPct));
  let compared = 0;
  for (const relativeHumidityPct of humidities) {
    const warm = equilibriumMoistureTable
      .filter((cell) => cell.relativeHumidityPct === relativeHumidityPct && cell.temperatureF >= 60)
      .sort((a, b) => a.temperatureF - b.temperatureF);
    for (const [i, cell] of warm.slice(1).entries()) {
      const cooler = warm[i] ?? cell;
      compared += 1;
      expect(cell.moisturePct).toBeLessThanOrEqual(cooler.moisturePct);
      expect(moistureAt(celsius(cell.temperatureF), relativeHumidityPct)).toBeLessThan(
        moistureAt(celsius(cooler.temperatureF), relativeHumidityPct),
      );
    }
  }
  expect(compared).toBeGreaterThan(150);
});
