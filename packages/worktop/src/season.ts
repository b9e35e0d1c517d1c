import { seasonalMovement as movementOverYear, yearFromExtremes } from '@scantling/movement';
import { findMovementCoefficients, movementCoefficientTable, namesNear } from '@scantling/species';
import type { Plan } from './plan.ts';
import type { SeasonalMovement } from './result.ts';

/** Change over the year from building day, in percent of a dimension across the grain, both 0 or more. */
export interface Swing {
  readonly shrinkPct: number;
  readonly swellPct: number;
}

type Coefficients = NonNullable<ReturnType<typeof findMovementCoefficients>>;

/** What a package refuses, said of the plan and with the path in it. */
function asPlan<T>(said: string, path: string, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    throw new RangeError((error as Error).message.replace(said, `planWorktop requires ${path}`));
  }
}

function coefficients(species: string): Coefficients {
  const found = asPlan('findMovementCoefficients requires name', 'top.species', () =>
    findMovementCoefficients(species),
  );
  if (found) return found;
  const table = `the ${movementCoefficientTable.length} woods in the table of movement coefficients`;
  const near = namesNear(species, movementCoefficientTable).join('; ');
  throw new RangeError(
    `planWorktop requires top.species to be one of ${table}, got "${species}"${near && `; near it: ${near}`}`,
  );
}

/** Moisture content and width of the top at the year's extremes. */
export function seasonalMovement({ top, seasons }: Pick<Plan, 'top' | 'seasons'>): SeasonalMovement {
  const { species, citation, tangentialPerPct, radialPerPct } = coefficients(top.species);
  const coefficientPerPct = top.cut === 'flatsawn' ? tangentialPerPct : radialPerPct;
  const { widthMm, moisturePct } = top;
  const year = asPlan('yearFromExtremes requires ', 'seasons.', () => yearFromExtremes(seasons));
  const { driestMoisturePct, wettestMoisturePct } = year;
  const { driestChangeMm, wettestChangeMm } = movementOverYear({
    year,
    widthMm,
    moisturePct,
    coefficientPerPct,
  });
  return {
    species,
    citation,
    coefficientPerPct,
    driestMoisturePct,
    wettestMoisturePct,
    driestChangeMm,
    wettestChangeMm,
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
