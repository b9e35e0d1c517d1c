/**
 * Lengths as they stand on tapes and drawings: read, written, rounded, added, divided. And exact conversion of area,
 * volume, mass, density, temperature, force, pressure and spreading rate.
 *
 * @module units
 */
export { formatFraction } from './length/format-fraction.ts';
export {
  type DecimalFormat,
  type FractionFormat,
  formatLength,
  type LengthFormat,
} from './length/format-length.ts';
export { LengthSyntaxError } from './length/length-syntax-error.ts';
export { type NearestMark, type NearestMarkInput, nearestMark } from './length/nearest-mark.ts';
export { type LengthUnit, type ParseLengthOptions, parseLength } from './length/parse-length.ts';
export type { Denominator } from './length/ticks.ts';
export { convert, type Quantity, type Unit } from './quantity/convert.ts';
export { type Factor, factors } from './quantity/factors.ts';
export {
  celsiusFromFahrenheit,
  celsiusFromKelvin,
  fahrenheitFromCelsius,
  kelvinFromCelsius,
} from './quantity/temperature.ts';
export * from './quantity/units.ts';
export {
  type EqualSpacing,
  type EqualSpacingInput,
  equalSpacing,
  equalSpacingRule,
} from './rules/equal-spacing.ts';
export { type StackUp, type StackUpInput, stackUp, stackUpRule } from './rules/stack-up.ts';
export {
  type SteppingError,
  type SteppingErrorInput,
  steppingError,
  steppingErrorRule,
} from './rules/stepping-error.ts';
export {
  type SumOfReadings,
  type SumOfReadingsInput,
  sumOfReadings,
  sumOfReadingsRule,
} from './rules/sum-of-readings.ts';
