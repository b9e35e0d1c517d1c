import { expectWithin } from '@scantling/tests-shared';
import fc from 'fast-check';
import { type Complex, polynomialRoot } from 'mathjs';
import { expect, test } from 'vitest';
import { equilibriumMoisture, equilibriumMoistureTable, humidityForMoisture } from '../src/index.ts';

const moistureAt = (temperatureC: number, relativeHumidityPct: number) =>
  equilibriumMoisture({ temperatureC, relativeHumidityPct }).moisturePct;
const humidityFor = (temperatureC: number, moisturePct: number) =>
  humidityForMoisture({ temperatureC, moisturePct }).relativeHumidityPct;

const temperature = fc.double({ min: -30, max: 100, noNaN: true });
const humidity = fc.double({ min: 0, max: 100, noNaN: true });
const moisture = fc.double({ min: 0, max: 30, noNaN: true });

test('every cell of the table, read backwards', () => {
  expect(equilibriumMoistureTable).toHaveLength(241);
  for (const { temperatureF, relativeHumidityPct, moisturePct, confirmed } of equilibriumMoistureTable) {
    const temperatureC = (temperatureF - 32) / 1.8;
    const cell = `Wood Handbook (FPL-GTR-190), Table 4-2, ${temperatureF} °F and ${relativeHumidityPct} % (${confirmed})`;
    // The cell's moisture content is rounded to 0.05, from an equation with constants for °F, up to 0.014 from
    // ours; a step of 1 % humidity either way says how much humidity that is.
    const slope =
      moistureAt(temperatureC, relativeHumidityPct + 1) - moistureAt(temperatureC, relativeHumidityPct - 1);
    const allowed = (1.1 * (0.05 + 0.014)) / (slope / 2);
    expectWithin(humidityFor(temperatureC, moisturePct) ?? Number.NaN, relativeHumidityPct, allowed, cell);
  }
});

test('from humidity to moisture content and back, over the whole range', () => {
  fc.assert(
    fc.property(temperature, humidity, (temperatureC, relativeHumidityPct) => {
      const back = humidityFor(temperatureC, moistureAt(temperatureC, relativeHumidityPct));
      expect(Math.abs((back ?? Number.NaN) - relativeHumidityPct)).toBeLessThan(1e-11);
    }),
    { numRuns: 1000 },
  );
});

test('from moisture content to humidity and back, or no answer where 100 % is not enough', () => {
  let [answered, refused] = [0, 0];
  fc.assert(
    fc.property(temperature, moisture, (temperatureC, moisturePct) => {
      const relativeHumidityPct = humidityFor(temperatureC, moisturePct);
      if (relativeHumidityPct === null) {
        refused += 1;
        expect(moistureAt(temperatureC, 100)).toBeLessThan(moisturePct);
      } else {
        answered += 1;
        expect(Math.abs(moistureAt(temperatureC, relativeHumidityPct) - moisturePct)).toBeLessThan(1e-11);
      }
    }),
    { numRuns: 1000 },
  );
  expect(answered).toBeGreaterThan(100);
  expect(refused).toBeGreaterThan(20);
});

test('the ends: dry wood in dry air, and the wettest that 100 % keeps', () => {
  for (let temperatureC = -30; temperatureC <= 100; temperatureC++) {
    const wettest = moistureAt(temperatureC, 100);
    expect(humidityFor(temperatureC, 0)).toBe(0);
    expect(humidityFor(temperatureC, wettest)).toBeCloseTo(100, 11);
    expect(humidityFor(temperatureC, wettest + 1e-9)).toBeNull();
  }
});

test('a general library finds the same humidity as the root of a cubic', () => {
  // The equation multiplied out is a cubic in y = K h: 0 = m + (m (a − 1) − 1 − a) y + (m (b − a) − 2 b) y² +
  // b (1 − m) y³, with m = M W / 1800, a = K₁, b = K₁ K₂. Its root between 0 and K is the humidity.
  let compared = 0;
  for (let t = -30; t <= 100; t += 5) {
    const k = 0.805 + 0.000736 * t - 0.00000273 * t ** 2;
    const a = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
    const b = a * (1.91 + 0.0407 * t - 0.000293 * t ** 2);
    const w = 349 + 1.29 * t + 0.0135 * t ** 2;
    for (const moisturePct of [2, 4, 6, 8, 10, 12, 14, 17, 20]) {
      const ours = humidityFor(t, moisturePct);
      if (ours === null) continue;
      const m = (moisturePct * w) / 1800;
      const roots = polynomialRoot(m, m * (a - 1) - 1 - a, m * (b - a) - 2 * b, b * (1 - m));
      const real = roots.map((root) => (typeof root === 'number' ? root : (root as Complex).re));
      const nearest = Math.min(...real.map((y) => Math.abs((100 * y) / k - ours)));
      expect(nearest, `${t} °C, ${moisturePct} %`).toBeLessThan(1e-6);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(150);
});
