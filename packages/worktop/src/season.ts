import { equilibriumMoisture, widthChange } from '@scantling/movement';
import { requireThat } from '@scantling/rules';
import { findMovementCoefficients, movementCoefficientTable, namesNear } from '@scantling/species';
import type { Plan } from './plan.ts';
import type { SeasonalMovement } from './result.ts';

/** Change over the year from building day, in percent of a dimension across the grain, both 0 or more. */
export interface Swing {
  readonly shrinkPct: number;
  readonly swellPct: number;
}

type Coefficients = NonNullable<ReturnType<typeof findMovementCoefficients>>;

function coefficients(species: string): Coefficients {
  const name = 'planWorktop requires top.species';
  let found: Coefficients | null;
  try {
    found = findMovementCoefficients(species);
  } catch (error) {
    throw new RangeError((error as Error).message.replace('findMovementCoefficients requires name', name));
  }
  if (found) return found;
  const table = `the ${movementCoefficientTable.length} woods in the table of movement coefficients`;
  const near = namesNear(species, movementCoefficientTable).join('; ');
  throw new RangeError(`${name} to be one of ${table}, got "${species}"${near && `; near it: ${near}`}`);
}

/** Moisture content and width of the top at the year's extremes. */
export function seasonalMovement({ top, seasons }: Pick<Plan, 'top' | 'seasons'>): SeasonalMovement {
  const { species, citation, tangentialPerPct, radialPerPct } = coefficients(top.species);
  const coefficientPerPct = top.cut === 'flatsawn' ? tangentialPerPct : radialPerPct;
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
    species,
    citation,
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
