/** Sums of hours are off by their rounding: what is late by less than this, h, is not late. */
export const ROUNDING_HOURS = 1e-9;
