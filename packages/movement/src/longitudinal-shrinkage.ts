import type { Citation } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';

/** Shrinkage along the grain from green to ovendry, %, with its citation. */
export interface LongitudinalShrinkage {
  readonly lowPct: number;
  readonly highPct: number;
  readonly citation: Citation;
}

/**
 * How much wood shrinks along the grain from green to ovendry, % of the green length, for most species. Wood from near
 * the pith and wood that grew under strain (reaction wood) shrink up to 2 %. `coefficientFromShrinkage` turns it into a
 * coefficient.
 */
export const longitudinalShrinkage: LongitudinalShrinkage = {
  lowPct: 0.1,
  highPct: 0.2,
  citation: {
    source: woodHandbook2010,
    at: 'p. 4-5, Longitudinal Shrinkage, as a forum of engineers quotes it in full',
    confirmed: 'text',
    tier: 'reprint',
    erratum: 'An encyclopedia gives an average of about 0.4 %.',
  },
};
