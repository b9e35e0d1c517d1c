import { dewPoint } from '@scantling/finishing';
import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop, type Shop } from '../src/index.ts';
import type { Figure as FigureField, Figures, Section } from '../src/plan/field.ts';
import { planField } from '../src/plan/plan.ts';
import { builtBench, checkOf, shop } from './shop-sections.ts';

const finishing = (changes: Partial<Shop> = {}, moisturePct = 8): Plan => {
  const plan = builtBench();
  return { ...plan, top: { ...plan.top, moisturePct }, shop: { ...shop, ...changes } };
};

test('a mild day', () => {
  const { shop: part, movement } = planWorktop(finishing());
  // Psychrometric tables give a dew point of 9.3 °C for air of 20 °C and 50 % (from memory): 19 − 9.3 = 9.7 K
  expectWithin(part?.dewPointC, 9.3, 0.05, 'psychrometric tables, 20 °C and 50 %, from memory');
  expect(part?.aboveDewPointK).toBeCloseTo(19 - (part?.dewPointC ?? 0), 9);
  expect(part?.leastSurfaceC).toBeCloseTo((part?.dewPointC ?? 0) + 3, 9);
  // Midway in the year
  const { driestMoisturePct, wettestMoisturePct } = movement;
  expect(part?.serviceMoisturePct).toBe((driestMoisturePct + wettestMoisturePct) / 2);
  expect(part?.findings).toEqual([]);
  expect(checkOf(finishing(), 'shop')).toMatchObject({ status: 'pass', margin: { min: 3, unit: 'K' } });
});

test('a plan without the section is asked nothing of it', () => {
  const { shop: _, ...plan } = builtBench();
  expect(planWorktop(plan).shop).toBeNull();
  expect(planWorktop(plan).checks.map(({ id }) => id)).not.toContain('shop');
});

describe('a day that does not do is said with its place and its mend', () => {
  const air = (temperatureC: number, relativeHumidityPct: number) => ({ temperatureC, relativeHumidityPct });
  test.each<[string, Partial<Shop>, number, 'fail' | 'warn', RegExp]>([
    // Air of 20 °C whose dew point is 11 − 3 = 8 °C: 10.7 of 23.4 hPa (vapour tables, from memory), 45.9 %
    [
      'a cold surface',
      { surfaceC: 11 },
      8,
      'fail',
      /^shop\.surfaceC: The surface is 11 °C with the dew point at 9\.3 °C, only 1\.7 K above it; 3 K are asked for\. Warm the surface to 12\.3 °C, or dry the air to 45 %\./,
    ],
    [
      'cold air',
      { air: air(8, 50) },
      8,
      'fail',
      /^shop\.air\.temperatureC: The air is 8 °C; .* Raise it to 10 °C\./,
    ],
    [
      'a hot surface',
      { surfaceC: 34 },
      8,
      'fail',
      /^shop\.surfaceC: The surface is 34 °C; .* Lower it to 30 °C\./,
    ],
    [
      'damp air',
      { surfaceC: 25, air: air(20, 80) },
      8,
      'fail',
      /^shop\.air\.relativeHumidityPct: The humidity is 80 %; .* Lower it to 75 %\./,
    ],
    [
      'wood too wet for the product',
      { allowedAbovePct: 10 },
      13,
      'fail',
      /^top\.moisturePct: The wood has 13 % moisture; the product allows 12 %\. Let the wood dry to 12 %\./,
    ],
    [
      'wood that would shrink',
      {},
      10.5,
      'warn',
      /^top\.moisturePct: The wood has 10\.5 % .* at most 9\.9 %: it would shrink under the finish\. Let the wood dry to 9\.8 %\./,
    ],
    [
      'wood that would swell',
      {},
      6.5,
      'warn',
      /^top\.moisturePct: The wood has 6\.5 % .* at least 6\.9 %: it would swell under the finish\. Let the wood take up moisture to 6\.9 %\./,
    ],
    [
      'what nothing mends',
      { surfaceC: 11, mostTemperatureC: 12, leastHumidityPct: 80, mostHumidityPct: 99, air: air(12, 99) },
      8,
      'fail',
      /Nothing within what the product asks for mends it as things stand/,
    ],
  ])('%s', (_, changes, moisturePct, status, says) => {
    const found = checkOf(finishing(changes, moisturePct), 'shop');
    expect([found.status, found.says]).toEqual([status, expect.stringMatching(says)]);
  });

  test('air of less than 1 % is a contradiction', () => {
    expect(() => planWorktop(finishing({ air: air(20, 0.5) }))).toThrow(
      /^planWorktop requires shop\.air\.relativeHumidityPct to be at least 1, got 0\.5/,
    );
  });
});

test('dew point and margin by the rule itself; a warmer surface is never nearer to it', () => {
  const temperature = numberArb({ min: -10, max: 60 });
  fc.assert(
    fc.property(
      temperature,
      temperature,
      numberArb({ min: 1, max: 99 }),
      numberArb({ min: 0, max: 20 }),
      (temperatureC, surfaceC, relativeHumidityPct, more) => {
        const air = { temperatureC, relativeHumidityPct };
        const window = {
          leastTemperatureC: -10,
          mostTemperatureC: 60,
          leastHumidityPct: 0,
          mostHumidityPct: 100,
        };
        const dew = (atC: number) => {
          const { shop: part } = planWorktop(finishing({ ...window, air, surfaceC: atC }));
          expect(part?.dewPointC).toBe(dewPoint(air).dewPointC);
          return part?.findings.some(({ condition }) => condition === 'dew point') ?? true;
        };
        expect(dew(surfaceC)).toBe(!(surfaceC - dewPoint(air).dewPointC >= 3));
        if (!dew(surfaceC)) expect(dew(Math.min(60, surfaceC + more))).toBe(false);
      },
    ),
    { numRuns: 50 },
  );
});

/** Each figure of a section, by its path. */
function figuresOf(
  field: Section,
  path: readonly string[],
): { path: readonly string[]; field: FigureField | Figures }[] {
  return Object.entries(field.fields).flatMap(([key, inner]) => {
    if (inner.kind === 'section') return figuresOf(inner, [...path, key]);
    return inner.kind === 'figure' || inner.kind === 'figures'
      ? [{ path: [...path, key], field: inner }]
      : [];
  });
}

/** A copy with one place changed. */
function withValue<T>(whole: T, [key, ...rest]: readonly string[], value: unknown): T {
  if (key === undefined) return value as T;
  const inner = (whole as Record<string, unknown>)[key];
  return { ...whole, [key]: withValue(inner, rest, value) };
}

test('any figures that the sections allow give a plan, or a refusal that names the place', () => {
  const sections = (['top', 'glueUp', 'screws', 'strip', 'shop'] as const).flatMap((name) =>
    figuresOf(planField.fields[name] as Section, [name]),
  );
  expect(sections.length).toBeGreaterThan(50);
  const change = fc.constantFrom(...sections).chain(({ path, field }) => {
    const value =
      field.kind === 'figures'
        ? fc.array(numberArb(field.limits), {
            minLength: field.minItems,
            maxLength: Math.min(field.maxItems, 6),
          })
        : numberArb(field.limits);
    return value.map((given) => ({ path, given }));
  });
  let planned = 0;
  fc.assert(
    fc.property(
      fc.array(change, { minLength: 1, maxLength: 6 }),
      fc.constantFrom('sugar maple', 'honeylocust', 'teak'),
      (changes, species) => {
        const built = builtBench();
        const plan = changes.reduce((before, { path, given }) => withValue(before, path, given), {
          ...built,
          top: { ...built.top, species },
        });
        try {
          const { checks } = planWorktop(plan);
          for (const { id, status, figures, margin } of checks) {
            for (const { value } of figures) expect([id, Number.isFinite(value)]).toEqual([id, true]);
            if (!margin || status !== 'pass') continue;
            expect([id, margin.given >= (margin.min ?? Number.NEGATIVE_INFINITY) - 1e-6]).toEqual([id, true]);
            expect([id, margin.given <= (margin.max ?? Number.POSITIVE_INFINITY) + 1e-6]).toEqual([id, true]);
          }
          planned += 1;
        } catch (error) {
          if (!(error instanceof RangeError)) throw error;
          expect(error.message).toMatch(
            /^planWorktop requires (top|glueUp|screws|strip|shop|holes|seasons)\./,
          );
        }
      },
    ),
    { numRuns: 300 },
  );
  expect(planned).toBeGreaterThan(0);
});
