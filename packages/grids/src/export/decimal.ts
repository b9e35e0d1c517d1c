import { plusZero } from '@scantling/rules';

/** The number to so many decimals, never −0. */
export const rounded = (value: number, decimals: number): number => plusZero(Number(value.toFixed(decimals)));

/** The number to a thousandth as people write it: no exponent, no −0, no trailing zeros. */
export const decimal = (value: number): string => String(rounded(value, 3));
