import Fraction from 'fraction.js';

const bits = new DataView(new ArrayBuffer(8));

/** A double as the exact fraction that it is: mantissa times a power of two. */
export function exactly(value: number): Fraction {
  bits.setFloat64(0, Math.abs(value));
  const word = bits.getBigUint64(0);
  const exponent = Number(word >> 52n);
  const mantissa = exponent === 0 ? word : (word & 0xf_ffff_ffff_ffffn) | 0x10_0000_0000_0000n;
  const shift = (exponent === 0 ? 1 : exponent) - 1075;
  const magnitude =
    shift < 0 ? new Fraction(mantissa, 1n << BigInt(-shift)) : new Fraction(mantissa << BigInt(shift));
  return value < 0 ? magnitude.neg() : magnitude;
}

/** The double next to a positive one, above or below. */
function neighbour(value: number, step: 1n | -1n): number {
  bits.setFloat64(0, value);
  bits.setBigUint64(0, bits.getBigUint64(0) + step);
  return bits.getFloat64(0);
}

/** Whether no double lies nearer to an exact value than this one. */
export function isNearest(value: number, exact: Fraction): boolean {
  if (exact.equals(0)) return value === 0;
  if (Math.sign(value) !== Number(exact.s)) return false;
  const offBy = (double: number) => exactly(double).sub(exact.abs()).abs();
  const ours = offBy(Math.abs(value));
  return ([1n, -1n] as const).every((step) => ours.lte(offBy(neighbour(Math.abs(value), step))));
}
