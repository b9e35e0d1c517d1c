import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { unit } from 'mathjs';
import { expect, test } from 'vitest';
import { type ConditionsInput, checkConditions, dewPoint } from '../src/index.ts';
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

const product = {
  leastTemperatureC: 10,
  mostTemperatureC: 35,
  leastHumidityPct: 0,
  mostHumidityPct: 85,
  mostMoisturePct: 15,
};
const dryWood = { moisturePct: 8, serviceMoisturePct: 8, allowedAbovePct: 1 };

// Worked examples of the section on ambient conditions and of the dew-point chart, text seen.
test('worked examples of handbooks', () => {
  const note = checkConditions({
    product,
    air: { temperatureC: 16, relativeHumidityPct: 71 },
    wood: { ...dryWood, surfaceC: 13 },
    dewPointMarginK: 3,
  });
  expect(note.dewPointC).toBeCloseTo(11, 0);
  expect(note.findings.map(({ condition }) => condition)).toEqual(['dew point']);
  const chart = checkConditions({
    product,
    air: { temperatureC: (70 - 32) / 1.8, relativeHumidityPct: 65 },
    wood: { ...dryWood, surfaceC: 20 },
    dewPointMarginK: 5 / 1.8,
  });
  // The chart says that 62 °F is the minimum; its cell is 57 °F, and 57.7 by the formula.
  expect(Math.abs(chart.leastSurfaceC * 1.8 + 32 - 62)).toBeLessThan(0.7);
  expect(chart.ready).toBe(true);
});

const temperature = numberArb({ min: -20, max: 60 });
const percent = numberArb({ min: 0, max: 100 });
const moisture = numberArb({ min: 0, max: 30 });
const pair = (arb: fc.Arbitrary<number>) => fc.tuple(arb, arb).map((two) => two.sort((a, b) => a - b));
const input: fc.Arbitrary<ConditionsInput> = fc
  .record({
    temperatures: pair(temperature),
    humidities: pair(percent),
    mostMoisturePct: numberArb({ min: 1, max: 30 }),
    air: fc.record({ temperatureC: temperature, relativeHumidityPct: numberArb({ min: 1, max: 100 }) }),
    wood: fc.record({
      surfaceC: temperature,
      moisturePct: moisture,
      serviceMoisturePct: moisture,
      allowedAbovePct: numberArb({ min: 0, max: 10 }),
    }),
    dewPointMarginK: numberArb({ min: 0, max: 20 }),
  })
  .map(({ temperatures, humidities, mostMoisturePct, ...rest }) => ({
    ...rest,
    product: {
      leastTemperatureC: temperatures[0] ?? 0,
      mostTemperatureC: temperatures[1] ?? 0,
      leastHumidityPct: humidities[0] ?? 0,
      mostHumidityPct: humidities[1] ?? 0,
      mostMoisturePct,
    },
  }));

const finds = (check: ConditionsInput, condition: string) =>
  checkConditions(check).findings.some((one) => one.condition === condition);

test('a surface that is warmed, or air that is dried, by as much as is said, is fit', () => {
  fc.assert(
    fc.property(input, (given) => {
      const { warmSurfaceByK, mostHumidityForSurfacePct, aboveDewPointK, dewPointC } = checkConditions(given);
      expect(finds(given, 'dew point')).toBe(warmSurfaceByK > 0);
      expect(aboveDewPointK).toBeCloseTo(given.wood.surfaceC - dewPointC, 9);
      const surfaceC = given.wood.surfaceC + warmSurfaceByK + 1e-9;
      if (surfaceC <= 60) {
        expect(finds({ ...given, wood: { ...given.wood, surfaceC } }, 'dew point')).toBe(false);
      }
      const relativeHumidityPct = mostHumidityForSurfacePct * (1 - 1e-9);
      if (relativeHumidityPct < 1) return;
      const drier = { ...given, air: { ...given.air, relativeHumidityPct } };
      if (mostHumidityForSurfacePct < 100 || warmSurfaceByK > 0)
        expect(finds(drier, 'dew point')).toBe(false);
      const damper = {
        ...given,
        air: { ...given.air, relativeHumidityPct: mostHumidityForSurfacePct * 1.001 },
      };
      if (damper.air.relativeHumidityPct <= 100) expect(finds(damper, 'dew point')).toBe(true);
    }),
  );
});

test('the mend that is written down mends, rounding included', () => {
  let seen = 0;
  fc.assert(
    fc.property(input, (given) => {
      const finding = checkConditions(given).findings.find(({ condition }) => condition === 'dew point');
      if (!finding) return;
      seen += 1;
      const [, byK] = /by ([\d.]+) K to /.exec(finding.mend) ?? [];
      const surfaceC = given.wood.surfaceC + Number(byK);
      const warm = { ...given, wood: { ...given.wood, surfaceC } };
      if (surfaceC <= 60) expect(checkConditions(warm).warmSurfaceByK).toBeLessThanOrEqual(1e-9);
      const [, pct] = /dry the air to (\d+) %/.exec(finding.mend) ?? [];
      expect(pct === undefined).toBe(checkConditions(given).mostHumidityForSurfacePct < 1);
      if (pct !== undefined) {
        const dry = { ...given, air: { ...given.air, relativeHumidityPct: Number(pct) } };
        expect(checkConditions(dry).warmSurfaceByK).toBeLessThanOrEqual(1e-9);
      }
      expect(finding.citations.length).toBeGreaterThan(0);
    }),
  );
  expect(seen).toBeGreaterThan(10);
});

test('each window is looked at by itself, and all is well exactly where nothing is found', () => {
  fc.assert(
    fc.property(input, (given) => {
      const { ready, findings } = checkConditions(given);
      const { air, wood, product: asks } = given;
      const outside = (value: number, least: number, most: number) => !(value >= least && value <= most);
      const expected = [
        wood.surfaceC < at(air.temperatureC, air.relativeHumidityPct) + given.dewPointMarginK && 'dew point',
        outside(air.temperatureC, asks.leastTemperatureC, asks.mostTemperatureC) && 'air temperature',
        outside(wood.surfaceC, asks.leastTemperatureC, asks.mostTemperatureC) && 'surface temperature',
        outside(air.relativeHumidityPct, asks.leastHumidityPct, asks.mostHumidityPct) && 'humidity',
        wood.moisturePct > asks.mostMoisturePct && 'wood for product',
        wood.moisturePct > wood.serviceMoisturePct + wood.allowedAbovePct && 'wood for use',
      ].filter(Boolean);
      expect(findings.map(({ condition }) => condition)).toEqual(expected);
      expect(ready).toBe(expected.length === 0);
      for (const { says, mend } of findings) {
        expect(`${says} ${mend}`).not.toMatch(/NaN|undefined|-0(?!\d|\.)/);
      }
    }),
  );
});

test('what cannot be is refused by name', () => {
  const good: ConditionsInput = {
    product,
    air: { temperatureC: 20, relativeHumidityPct: 50 },
    wood: { ...dryWood, surfaceC: 20 },
    dewPointMarginK: 3,
  };
  expect(checkConditions(good).ready).toBe(true);
  const refused = (change: object) => () => checkConditions({ ...good, ...change });
  expect(refused({ dewPointMarginK: -1 })).toThrow('dewPointMarginK between 0 and 20, got -1');
  expect(refused({ air: { temperatureC: 20, relativeHumidityPct: 0 } })).toThrow('air.relativeHumidityPct');
  expect(refused({ air: undefined })).toThrow('air.temperatureC');
  expect(refused({ wood: { ...good.wood, surfaceC: Number.NaN } })).toThrow('wood.surfaceC between');
  expect(refused({ product: { ...product, mostTemperatureC: 5 } })).toThrow(
    'product.mostTemperatureC of at least product.leastTemperatureC, got 5 and 10',
  );
  expect(() => checkConditions(undefined as unknown as ConditionsInput)).toThrow(RangeError);
});
