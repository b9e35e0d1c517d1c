import { seasonalMovement as movementOverYear, yearFromExtremes } from '@scantling/movement';
import { findWoodInBrief, namesNear, type WoodInBrief, woodsInBrief } from '@scantling/species';
import type { Plan } from './plan/plan.ts';
import type { SeasonalMovement } from './result.ts';

/** Change over the year from building day, in percent of a dimension across the grain, both 0 or more. */
export interface Swing {
  readonly shrinkPct: number;
  readonly swellPct: number;
}

/** What everything else rests on: the wood, and how it moves through the year. */
export interface Basis {
  readonly wood: WoodInBrief;
  readonly movement: SeasonalMovement;
  readonly swing: Swing;
}

/** What a package refuses, said of the plan and with the path in it. */
function asPlan<T>(said: string, path: string, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof RangeError) || !error.message.startsWith(said)) throw error;
    throw new RangeError(error.message.replace(said, `planWorktop requires ${path}`));
  }
}

function woodOf(name: string): WoodInBrief {
  const { species, candidates } = findWoodInBrief(name);
  if (species) return species;
  // With the botanical name, which tells apart what makers call by one name.
  const listed = (some: readonly WoodInBrief[]) =>
    some
      .map(({ commonName, botanicalName }) =>
        botanicalName ? `${commonName} (${botanicalName.name})` : commonName,
      )
      .join('; ');
  if (candidates.length > 0) {
    throw new RangeError(
      `planWorktop requires top.species to mean one wood, got "${name}": ${listed(candidates)}`,
    );
  }
  const near = namesNear(
    name,
    woodsInBrief.map(({ commonName }) => ({ species: commonName })),
  );
  throw new RangeError(
    `planWorktop requires top.species to be one of the ${woodsInBrief.length} woods in the tables, got "${name}"${near.length ? `; near it: ${near.join('; ')}` : ''}`,
  );
}

/** Moisture content and width of the top at the year's extremes. */
export function basisOf({ top, seasons }: Pick<Plan, 'top' | 'seasons'>): Basis {
  const wood = woodOf(top.species);
  const { tangentialPerPct, radialPerPct } = wood.movement;
  const coefficient = top.cut === 'flatsawn' ? tangentialPerPct : radialPerPct;
  if (!coefficient) {
    throw new RangeError(
      `planWorktop requires top.species to be a wood whose coefficient is known, ${top.cut}, got "${top.species}"`,
    );
  }
  const { widthMm, moisturePct } = top;
  const coefficientPerPct = coefficient.value;
  const year = asPlan('yearFromExtremes requires ', 'seasons.', () => yearFromExtremes(seasons));
  const { driestMoisturePct, wettestMoisturePct } = year;
  const { driestChangeMm, wettestChangeMm } = movementOverYear({
    year,
    widthMm,
    moisturePct,
    coefficientPerPct,
  });
  const movement = {
    species: wood.commonName,
    citation: coefficient.citation,
    coefficientPerPct,
    driestMoisturePct,
    wettestMoisturePct,
    driestChangeMm,
    wettestChangeMm,
  };
  return { wood, movement, swing: swingOf(movement, widthMm) };
}

/**
 * The same as shares of the width. Building day counts too: wood that is drier or wetter than it will ever be
 * starts from there.
 */
const swingOf = (movement: SeasonalMovement, widthMm: number): Swing => ({
  shrinkPct: Math.max(0, (-100 * movement.driestChangeMm) / widthMm),
  swellPct: Math.max(0, (100 * movement.wettestChangeMm) / widthMm),
});
