import { expect, test } from 'vitest';
import job from '../../src/jobs/dew-point.ts';
import { figuresOf, outcomeOf } from './figures.ts';

test('20 °C and 70 %: dew point 14.4 °C (worked example below the dew point table that its rule cites)', () => {
  const { dewPointC } = figuresOf(job, { temperatureC: '20', relativeHumidityPct: '70' });
  expect(dewPointC).toBeCloseTo(14.4, 1);
});

test('a surface 3 °C above the dew point will do, a colder one will not (ISO 8502-4, from memory)', () => {
  const air = { temperatureC: '20', relativeHumidityPct: '70', marginK: '3' };
  // The dew point is 14.4 °C to a tenth.
  expect(outcomeOf(job, { ...air, surfaceC: '17.5' }).verdict?.good).toBe(true);
  expect(outcomeOf(job, { ...air, surfaceC: '17.2' }).verdict?.good).toBe(false);
  expect(outcomeOf(job, { ...air, surfaceC: '14.2' }).verdict?.says).toContain('gets wet');
});

test('air of 10 °C and 80 % has 42.05 % at 20 °C', () => {
  // 17.62 × 10 / 253.12 = 0.6961125; 17.62 × 20 / 263.12 = 1.3393129; 80 × exp(0.6961125 − 1.3393129) = 42.05
  const { warmedHumidityPct } = figuresOf(job, {
    temperatureC: '10',
    relativeHumidityPct: '80',
    surfaceC: '15',
    warmByK: '10',
  });
  expect(warmedHumidityPct).toBeCloseTo(42.05, 2);
});

test('wood at 70 °F and 40 % comes to 7.7 % (a kiln manual of the Forest Products Laboratory, p. 41)', () => {
  const { moisturePct } = figuresOf(job, { temperatureC: `${(70 - 32) / 1.8}`, relativeHumidityPct: '40' });
  expect(moisturePct).toBeCloseTo(7.7, 1);
});

test('at the dampest air that it names, the surface is just warm enough', () => {
  for (const surfaceC of ['8', '12.5', '16', '22.9']) {
    const { mostHumidityPct } = figuresOf(job, { surfaceC });
    const { leastSurfaceC } = figuresOf(job, { surfaceC, relativeHumidityPct: `${mostHumidityPct}` });
    expect(leastSurfaceC).toBeCloseTo(Number(surfaceC), 6);
  }
});
