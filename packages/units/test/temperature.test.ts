import { expectWithin } from '@scantling/tests-shared';
import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  celsiusFromFahrenheit,
  celsiusFromKelvin,
  convert,
  fahrenheitDegree,
  fahrenheitFromCelsius,
  celsiusDegree as kelvin,
  kelvinFromCelsius,
} from '../src/index.ts';

/** Fixed points that follow from the formulas of NIST SP 811, Appendix B.9, without rounding. */
const points: readonly (readonly [celsius: number, fahrenheit: number, kelvin: number])[] = [
  [-40, -40, 233.15],
  [0, 32, 273.15],
  [20, 68, 293.15],
  [37, 98.6, 310.15],
  [60, 140, 333.15],
  [100, 212, 373.15],
];

test.each(points)('%d °C is %d °F and %d K', (celsius, fahrenheit, kelvins) => {
  expect(celsiusFromFahrenheit(fahrenheit)).toBe(celsius);
  expect(fahrenheitFromCelsius(celsius)).toBe(fahrenheit);
  expectWithin(kelvinFromCelsius(celsius), kelvins, 1e-12, 'NIST SP 811, Appendix B.9');
  expectWithin(celsiusFromKelvin(kelvins), celsius, 1e-12, 'NIST SP 811, Appendix B.9');
});

test('absolute zero', () => {
  expectWithin(celsiusFromFahrenheit(-459.67), -273.15, 1e-12, 'NIST SP 811, Appendix B.9');
  expect(kelvinFromCelsius(-273.15)).toBe(0);
});

const celsius = fc.double({ min: -273.15, max: 1e5, noNaN: true });

describe('laws', () => {
  test('there and back is where it began, and mathjs agrees', () => {
    fc.assert(
      fc.property(celsius, (t) => {
        const rounding = 1e-12 * (300 + Math.abs(t));
        expectWithin(celsiusFromKelvin(kelvinFromCelsius(t)), t, rounding, 'there and back');
        const fahrenheit = fahrenheitFromCelsius(t);
        expectWithin(fahrenheit, unit(t, 'degC').toNumber('degF'), 4 * rounding, 'mathjs degF');
        expectWithin(kelvinFromCelsius(t), unit(t, 'degC').toNumber('K'), rounding, 'mathjs K');
      }),
    );
  });

  test('a difference of temperatures is converted as a difference', () => {
    fc.assert(
      fc.property(celsius, celsius, (a, b) => {
        const differenceF = fahrenheitFromCelsius(a) - fahrenheitFromCelsius(b);
        const rounding = 1e-12 * (300 + Math.abs(a) + Math.abs(b));
        expectWithin(convert(differenceF, fahrenheitDegree, kelvin), a - b, rounding, 'difference');
      }),
    );
  });
});

test('refuses what is colder than absolute zero, and what is no number', () => {
  for (const [of, lowest] of [
    [celsiusFromFahrenheit, -459.67],
    [fahrenheitFromCelsius, -273.15],
    [kelvinFromCelsius, -273.15],
    [celsiusFromKelvin, 0],
  ] as const) {
    for (const bad of [lowest - 0.001, 1.1e6, Number.NaN, Number.POSITIVE_INFINITY, undefined]) {
      expect(() => of(bad as number)).toThrow(new RegExp(`^${of.name} requires temperature[CFK] between `));
    }
    expect(Number.isFinite(of(lowest))).toBe(true);
  }
});
