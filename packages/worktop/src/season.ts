import { equilibriumMoisture, widthChange } from '@scantling/movement';
import { requireThat } from '@scantling/rules';
import { findMovementCoefficients } from '@scantling/species';
import type { Plan } from './plan.ts';
import type { SeasonalMovement } from './result.ts';

/** Change over the year from building day, in percent of a dimension across the grain, both 0 or more. */
export interface Swing {
  readonly shrinkPct: number;
  readonly swellPct: number;
}

function coefficient({ species, cut }: Plan['top']): number {
  try {
    const found = findMovementCoefficients(species);
    if (found) return cut === 'flatsawn' ? found.tangentialPerPct : found.radialPerPct;
  } catch (error) {
    throw new RangeError(`planWorktop requires top.species to name one species: ${(error as Error).message}`);
  }
  throw new RangeError(
    `planWorktop requires top.species to be in the table of movement coefficients, got "${species}"`,
  );
}

/** Moisture content and width of the top at the year's extremes. */
export function seasonalMovement({ top, seasons }: Pick<Plan, 'top' | 'seasons'>): SeasonalMovement {
  const coefficientPerPct = coefficient(top);
  const driestMoisturePct = equilibriumMoisture(seasons.driest).moisturePct;
  const wettestMoisturePct = equilibriumMoisture(seasons.wettest).moisturePct;
  requireThat(
    'planWorktop',
    driestMoisturePct <= wettestMoisturePct,
    `seasons.driest to dry the wood more than seasons.wettest, got ${driestMoisturePct.toFixed(1)} % and ${wettestMoisturePct.toFixed(1)} %`,
  );
  const changeAt = (toMoisturePct: number) =>
    widthChange({ widthMm: top.widthMm, coefficientPerPct, fromMoisturePct: top.moisturePct, toMoisturePct })
      .changeMm;
  return {
    coefficientPerPct,
    driestMoisturePct,
    wettestMoisturePct,
    driestChangeMm: changeAt(driestMoisturePct),
    wettestChangeMm: changeAt(wettestMoisturePct),
  };
}

/**
 * The same as shares of the width. Building day counts too: wood that is drier or wetter than it will ever be
 * starts from there.
 */
export const swingOf = (movement: SeasonalMovement, widthMm: number): Swing => ({
  shrinkPct: Math.max(0, (-100 * movement.driestChangeMm) / widthMm),
  swellPct: Math.max(0, (100 * movement.wettestChangeMm) / widthMm),
});
