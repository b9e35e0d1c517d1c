import type { Limits } from '@scantling/rules';

/** Where something may be, mm from the datum. */
export const place: Limits = { min: -20_000, max: 20_000 };

/** A side of a panel, mm. */
export const side: Limits = { min: 1, max: 20_000 };

/** A size or a distance, mm. */
export const distance: Limits = { min: 0, max: 20_000 };

export const MOST_HOLES = 20_000;

export const MOST_KEEP_OUTS = 1000;
