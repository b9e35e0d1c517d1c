/** What a unit measures. Units of different quantities are never converted into each other. */
export type Quantity =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'density'
  | 'force'
  | 'pressure'
  | 'temperature difference'
  | 'spreading rate';

/**
 * A unit as an exact ratio: one of it is `times / per` of the quantity's base unit (mm, mm², mL, g, kg/m³, N,
 * Pa, K, m²/L). Both are whole numbers below 2⁵³, so nothing is rounded.
 */
export interface Unit<Q extends Quantity = Quantity> {
  readonly kind: Q;
  readonly times: number;
  readonly per: number;
}

/**
 * Converts a number between two units of one quantity. The factor is the exact ratio; only the result is rounded,
 * to within a few units in the sixteenth digit.
 *
 * @param value - How many of the first unit, −1e100 to 1e100.
 * @param from - The unit it is given in.
 * @param to - The unit wanted.
 * @returns How many of the second unit.
 * @throws RangeError where the value is not such a number, or the units measure different things.
 * Source: NIST SP 811, Appendix B; each factor's own source is in `factors`.
 * @example
 * ```ts
 * import { convert, litre, millilitre, pound, kilogram, usFluidOunce, usGallon } from '@scantling/units';
 * convert(1, usGallon, litre) // => 3.785411784
 * convert(8, usFluidOunce, millilitre) // => 236.5882365
 * convert(2.5, pound, kilogram) // => 1.133980925
 * convert(1, litre, kilogram) // throws convert requires numbers of one kind, got 1 volume to mass
 * ```
 */
export function convert<Q extends Quantity>(value: number, from: Unit<Q>, to: Unit<NoInfer<Q>>): number {
  if (from.kind !== to.kind || !(value ** 2 <= 1e200)) {
    throw new RangeError(`convert requires numbers of one kind, got ${value} ${from.kind} to ${to.kind}`);
  }
  return (value * (from.times * to.per)) / (from.per * to.times) + 0;
}
