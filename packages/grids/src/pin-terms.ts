import { requireFields, requireInputs, requireThat } from '@scantling/rules';
import type { DiameterLimits } from './standard-fit.ts';

/** Pins and holes all of one make, and how the wood that holds the holes moves. */
export interface PinTerms {
  /** Limits of every pin's diameter, mm, 0.1 to 1000. */
  readonly pin: DiameterLimits;
  /** Limits of every hole's diameter as bored, mm, 0.1 to 1000. */
  readonly hole: DiameterLimits;
  /** Farthest that a pin's centre lies from its place, in any direction, mm, 0 to 10. */
  readonly pinPositionErrorMm: number;
  /** Farthest that a hole's centre lies from its place, in any direction, mm, 0 to 10. */
  readonly holePositionErrorMm: number;
  /** Most that the wood swells across the grain (along y) after the holes are bored, %, 0 to 20. */
  readonly swellPct: number;
  /** Most that the wood shrinks across the grain (along y) after the holes are bored, %, 0 to 20. */
  readonly shrinkPct: number;
}

/** Margins on the diameter: by how much every hole could be smaller and the pins still go in, mm. */
export interface Margins {
  readonly worstCaseMm: number;
  readonly rootSumSquareMm: number;
}

/** When the pins are to go in. */
export type PinSeason = 'now' | 'swollen' | 'shrunken';

const diameter = { min: 0.1, max: 1000 };
const error = { min: 0, max: 10 };
const share = { min: 0, max: 20 };

/** Throws where pins and holes make no sense, naming the field. */
export function checkPinTerms(caller: string, terms: PinTerms): void {
  const { pin, hole, pinPositionErrorMm, holePositionErrorMm, swellPct, shrinkPct } =
    terms ?? ({} as PinTerms);
  for (const [name, size] of Object.entries({ pin, hole })) {
    requireFields(caller, name, size, { lowerLimitMm: diameter, upperLimitMm: diameter });
    const { lowerLimitMm, upperLimitMm } = size;
    requireThat(
      caller,
      upperLimitMm >= lowerLimitMm,
      `${name}.upperLimitMm at least ${name}.lowerLimitMm, got ${upperLimitMm} and ${lowerLimitMm}`,
    );
  }
  requireInputs(
    caller,
    { pinPositionErrorMm, holePositionErrorMm, swellPct, shrinkPct },
    { pinPositionErrorMm: error, holePositionErrorMm: error, swellPct: share, shrinkPct: share },
  );
}

/** How long the wood is across the grain, for each 1 that it was when the holes were bored. */
export const acrossGrain = ({ swellPct, shrinkPct }: PinTerms): Record<PinSeason, number> => ({
  now: 1,
  swollen: 1 + swellPct / 100,
  shrunken: 1 - shrinkPct / 100,
});

/**
 * The margins of pins whose places miss those of their holes, once the body is set as well as it can be, by no more
 * than `missMm`. A swollen hole is counted as round at its width along the grain, a shrunken one as round at its width
 * across: its narrower one both times.
 */
export function marginsOf(terms: PinTerms, scale: number, pins: number, missMm: number): Margins {
  const { pin, hole } = terms;
  const narrower = Math.min(1, scale);
  const holeErrorMm = terms.holePositionErrorMm * Math.max(1, scale);
  const holeTolMm = ((hole.upperLimitMm - hole.lowerLimitMm) / 2) * narrower;
  const pinTolMm = (pin.upperLimitMm - pin.lowerLimitMm) / 2;
  const playMm =
    ((hole.upperLimitMm + hole.lowerLimitMm) / 2) * narrower - (pin.upperLimitMm + pin.lowerLimitMm) / 2;
  const alone = {
    worstCaseMm: playMm - holeTolMm - pinTolMm,
    rootSumSquareMm: playMm - Math.hypot(holeTolMm, pinTolMm),
  };
  // One pin brings the body along to wherever its hole is.
  if (pins === 1) return alone;
  // Two pins that pull apart: half of either diameter counts, and the whole of either place, for each of the two.
  const ofTwoMm = Math.hypot(holeTolMm, pinTolMm, 2 * holeErrorMm, 2 * terms.pinPositionErrorMm) / Math.SQRT2;
  return {
    worstCaseMm: alone.worstCaseMm - 2 * (holeErrorMm + terms.pinPositionErrorMm) - 2 * missMm,
    rootSumSquareMm: Math.min(alone.rootSumSquareMm, playMm - ofTwoMm - 2 * missMm),
  };
}
