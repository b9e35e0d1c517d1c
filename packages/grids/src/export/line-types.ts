/**
 * Lines of line group 0.5 (ISO 128-2): wide ones 0.5 mm for what is seen, narrow ones half as wide for the rest.
 * Dashes and gaps are multiples of the width of a narrow line.
 */
export const WIDE_MM = 0.5;
export const NARROW_MM = 0.25;

const multiples = (...widths: number[]) => widths.map((width) => width * NARROW_MM);

/** Dashed: what lies behind. */
export const DASHED_MM = multiples(12, 3);
/** Long dash and dot: centre lines. */
export const LONG_DASH_DOT_MM = multiples(24, 3, 0.5, 3);

/** How far a centre line runs past the rim of its hole. */
export const PAST_RIM_MM = 2;
