import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type ConditionsInput, checkConditions, dewPoint } from '../src/index.ts';

const at = (temperatureC: number, relativeHumidityPct: number) =>
  dewPoint({ temperatureC, relativeHumidityPct }).dewPointC;

const product = {
  leastTemperatureC: 10,
  mostTemperatureC: 35,
  leastHumidityPct: 0,
  mostHumidityPct: 85,
  mostMoisturePct: 15,
};
const dryWood = { moisturePct: 8, serviceMoisturePct: 8, allowedAbovePct: 1, allowedBelowPct: 2 };

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
      moisturePct: fc.oneof(moisture, numberArb({ min: 0, max: 200 })),
      serviceMoisturePct: moisture,
      allowedAbovePct: numberArb({ min: 0, max: 10 }),
      allowedBelowPct: numberArb({ min: 0, max: 10 }),
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

const mends = {
  warm: /(?:Warm the surface|Raise it|Lower it) to (-?[\d.]+(?:e-?\d+)?) °C/,
  dry: /(?:[Dd]ry the air|Raise it|Lower it) to ([\d.]+(?:e-?\d+)?) %/,
  moisture: /Let the wood (?:dry|take up moisture) to ([\d.]+(?:e-?\d+)?) %/,
};
const figureIn = (form: RegExp, mend: string | null) => {
  const figure = form.exec(mend ?? '')?.[1];
  return figure === undefined ? null : Number(figure);
};

test('the mend that is written down mends, rounding included, and leaves neither window', () => {
  const seen = { surface: 0, air: 0, humidity: 0, wood: 0, none: 0 };
  fc.assert(
    fc.property(input, (given) => {
      const { findings, leastSurfaceC, mostHumidityForSurfacePct } = checkConditions(given);
      const { product: asks, wood, air } = given;
      // Of the dew point a rounding may be left over.
      const found = (changed: ConditionsInput) =>
        checkConditions(changed).findings.flatMap(({ condition }) =>
          condition === 'dew point' && checkConditions(changed).warmSurfaceByK < 1e-9 ? [] : [condition],
        );
      for (const { condition, mend } of findings) {
        const ofSurface = condition === 'dew point' || condition === 'surface temperature';
        const surfaceC = ofSurface ? figureIn(mends.warm, mend) : null;
        if (surfaceC !== null) {
          seen.surface += 1;
          const left = found({ ...given, wood: { ...wood, surfaceC } });
          expect(left).not.toContain('dew point');
          expect(left).not.toContain('surface temperature');
        } else if (ofSurface) {
          // Nothing is warm enough and yet cool enough for the product.
          expect(Math.max(leastSurfaceC, asks.leastTemperatureC)).toBeGreaterThan(asks.mostTemperatureC);
        }
        const ofHumidity = condition === 'dew point' || condition === 'humidity';
        const relativeHumidityPct = ofHumidity ? figureIn(mends.dry, mend) : null;
        if (relativeHumidityPct !== null) {
          seen.humidity += 1;
          const left = found({ ...given, air: { ...air, relativeHumidityPct } });
          expect(left).not.toContain('dew point');
          expect(left).not.toContain('humidity');
        } else if (ofHumidity) {
          const most = Math.min(asks.mostHumidityPct, mostHumidityForSurfacePct);
          expect(Math.max(1, asks.leastHumidityPct)).toBeGreaterThan(most);
        }
        if (condition === 'air temperature') {
          seen.air += 1;
          const temperatureC = figureIn(mends.warm, mend) ?? Number.NaN;
          expect(found({ ...given, air: { ...air, temperatureC } })).not.toContain('air temperature');
        }
        if (condition.startsWith('wood')) {
          const moisturePct = figureIn(mends.moisture, mend);
          if (moisturePct === null) seen.none += 1;
          else {
            seen.wood += 1;
            const left = found({ ...given, wood: { ...wood, moisturePct } });
            expect(left.filter((one) => one.startsWith('wood'))).toEqual([]);
          }
        }
      }
    }),
    { numRuns: 500 },
  );
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(5);
});

const fine: ConditionsInput = {
  product: { ...product, mostTemperatureC: 30 },
  air: { temperatureC: 20, relativeHumidityPct: 40 },
  wood: { ...dryWood, surfaceC: 20 },
  dewPointMarginK: 3,
};
const told = (change: Partial<ConditionsInput>) =>
  checkConditions({ ...fine, ...change }).findings.map(({ says, mend }) => `${says} ${mend}`);

test('what is said shows the fault, however small it is', () => {
  expect(told({ air: { temperatureC: 9.96, relativeHumidityPct: 40 } })).toEqual([
    'The air is 9.96 °C; the product asks for 10 to 30 °C. Raise it to 10 °C.',
  ]);
  const wood = { ...dryWood, surfaceC: 20, moisturePct: 12.04, serviceMoisturePct: 12 };
  expect(told({ wood, product: { ...product, mostMoisturePct: 12 } })).toEqual([
    'The wood has 12.04 % moisture; the product allows 12 %. Let the wood dry to 12 %.',
  ]);
});

test('no mend leads out of the window of the product', () => {
  const damp = { air: { temperatureC: 30, relativeHumidityPct: 95 }, wood: { ...dryWood, surfaceC: 20 } };
  const { leastSurfaceC, findings } = checkConditions({ ...fine, ...damp });
  expect(leastSurfaceC).toBeGreaterThan(30);
  // Steam tables (recalled): 19.37 hPa at 17 °C, the surface less 3 K, of 42.43 hPa at 30 °C: 45.6 %.
  expect(findings[0]?.mend).toBe('Dry the air to 45 %.');
  const cold = {
    product: { ...product, mostTemperatureC: 12, leastHumidityPct: 30 },
    air: { temperatureC: 30, relativeHumidityPct: 60 },
    wood: { ...dryWood, surfaceC: 4 },
  };
  expect(checkConditions({ ...fine, ...cold }).findings[0]).toMatchObject({
    condition: 'dew point',
    mend: null,
  });
});

test('handbooks that were seen on sites of copies are cited as reprints', () => {
  const [dew] = checkConditions({ ...fine, wood: { ...dryWood, surfaceC: 7 } }).findings;
  const seen = dew?.citations.filter(({ confirmed }) => confirmed === 'text') ?? [];
  expect(seen.map(({ tier }) => tier)).toEqual(['reprint', 'reprint']);
});

// The source on finishing furniture asks for slightly below the average in use, and not much above.
test('green wood is too wet, and bone-dry wood too dry', () => {
  const wood = { ...dryWood, surfaceC: 20, serviceMoisturePct: 12 };
  expect(told({ wood: { ...wood, moisturePct: 35 } })).toEqual([
    'The wood has 35 % moisture; the product allows 15 %. Let the wood dry to 13 %.',
    'The wood has 35 % moisture and will have 12 % in use, which allows at most 13 %: it would shrink under the finish. Let the wood dry to 13 %.',
  ]);
  expect(told({ wood: { ...wood, moisturePct: 1 } })).toEqual([
    'The wood has 1 % moisture and will have 12 % in use, which allows at least 10 %: it would swell under the finish. Let the wood take up moisture to 10 %.',
  ]);
});

test('who is told to warm the work is told how not to', () => {
  const { cautions } = checkConditions(fine);
  expect(cautions.join(' ')).toMatch(
    /no solvent vapour.*never with an open flame or a heater without a flue/,
  );
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
        outside(
          wood.moisturePct,
          wood.serviceMoisturePct - wood.allowedBelowPct,
          wood.serviceMoisturePct + wood.allowedAbovePct,
        ) && 'wood for use',
      ].filter(Boolean);
      expect(findings.map(({ condition }) => condition)).toEqual(expected);
      expect(ready).toBe(expected.length === 0);
      for (const { says, mend } of findings) {
        expect(`${says} ${mend}`).not.toMatch(/NaN|undefined|-0(?!\d|\.)/);
        const [, is, least, most] = / is (\S+) .* asks for (\S+) to (\S+) /.exec(says) ?? [];
        if (is) expect(outside(Number(is), Number(least), Number(most)), says).toBe(true);
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
