const LOWEST_C = -273.15;
const LOWEST_F = -459.67;
const HIGHEST = 1e6;

function requireTemperature(caller: string, name: string, given: number, lowest: number): void {
  if (given >= lowest && given <= HIGHEST) return;
  throw new RangeError(`${caller} requires ${name} between ${lowest} and ${HIGHEST}, got ${given}`);
}

/**
 * A temperature in degrees Celsius from degrees Fahrenheit.
 *
 * @param temperatureF - °F, from absolute zero (−459.67) to 1e6.
 * @returns °C.
 * @throws RangeError outside those limits.
 * Source: NIST SP 811, Appendix B.9: t/°C = (t/°F − 32)/1.8.
 * @example
 * ```ts
 * import { celsiusFromFahrenheit } from '@scantling/units';
 * celsiusFromFahrenheit(68) // => 20
 * celsiusFromFahrenheit(-40) // => -40
 * ```
 */
export function celsiusFromFahrenheit(temperatureF: number): number {
  requireTemperature('celsiusFromFahrenheit', 'temperatureF', temperatureF, LOWEST_F);
  return ((temperatureF - 32) * 5) / 9 + 0;
}

/**
 * A temperature in degrees Fahrenheit from degrees Celsius.
 *
 * @param temperatureC - °C, from absolute zero (−273.15) to 1e6.
 * @returns °F.
 * @throws RangeError outside those limits.
 * Source: NIST SP 811, Appendix B.9, solved for °F.
 * @example
 * ```ts
 * import { fahrenheitFromCelsius } from '@scantling/units';
 * fahrenheitFromCelsius(21) // => 69.8
 * ```
 */
export function fahrenheitFromCelsius(temperatureC: number): number {
  requireTemperature('fahrenheitFromCelsius', 'temperatureC', temperatureC, LOWEST_C);
  return (temperatureC * 9) / 5 + 32;
}

/**
 * A thermodynamic temperature in kelvins from degrees Celsius.
 *
 * @param temperatureC - °C, from absolute zero (−273.15) to 1e6.
 * @returns K.
 * @throws RangeError outside those limits.
 * Source: NIST SP 811, Appendix B.9: T/K = t/°C + 273.15.
 * @example
 * ```ts
 * import { kelvinFromCelsius } from '@scantling/units';
 * kelvinFromCelsius(20) // => 293.15
 * ```
 */
export function kelvinFromCelsius(temperatureC: number): number {
  requireTemperature('kelvinFromCelsius', 'temperatureC', temperatureC, LOWEST_C);
  return temperatureC + 273.15;
}

/**
 * A temperature in degrees Celsius from kelvins.
 *
 * @param temperatureK - K, 0 to 1e6.
 * @returns °C.
 * @throws RangeError outside those limits.
 * Source: NIST SP 811, Appendix B.9: t/°C = T/K − 273.15.
 * @example
 * ```ts
 * import { celsiusFromKelvin } from '@scantling/units';
 * celsiusFromKelvin(293.15) // => 20
 * ```
 */
export function celsiusFromKelvin(temperatureK: number): number {
  requireTemperature('celsiusFromKelvin', 'temperatureK', temperatureK, 0);
  return temperatureK - 273.15;
}
