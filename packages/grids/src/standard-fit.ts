import { requireChoice, requireInputs } from '@scantling/rules';
import type { HoleClass, ShaftClass } from './rows.ts';
import { type ClearanceOfFit, clearanceOfFit } from './rules/clearance-of-fit.ts';
import { limitsOfSize } from './rules/limits-of-size.ts';

/** Always play, always force, or either. */
export type KindOfFit = 'clearance' | 'transition' | 'interference';

/** The sizes between which a diameter lies. */
export interface DiameterLimits {
  /** Smallest diameter, mm. */
  readonly lowerLimitMm: number;
  /** Largest diameter, mm. */
  readonly upperLimitMm: number;
}

/** Which fit of ISO 286 to look up. */
export interface StandardFitInput {
  /** Nominal size of hole and shaft, mm, 0 to 500. The table has over 3 to 30. */
  readonly nominalMm: number;
  readonly holeClass: HoleClass;
  readonly shaftClass: ShaftClass;
}

/** A fit of ISO 286: both diameters and what is between them. */
export interface StandardFit extends ClearanceOfFit {
  readonly hole: DiameterLimits;
  readonly shaft: DiameterLimits;
  readonly kind: KindOfFit;
}

/**
 * Whether a fit always has play, always needs force, or depends on the pair: a clearance fit may be just nothing at
 * the least, an interference fit just nothing at the most, and a fit that is nothing at both is a clearance fit.
 *
 * @param fit - Least and most clearance, mm, −1000 to 1000.
 * @returns The kind of fit, in the words of ISO 286-1.
 * @throws RangeError where a clearance is not a number within its limits.
 * @example
 * ```ts
 * import { kindOfFit } from '@scantling/grids';
 * kindOfFit({ leastClearanceMm: -0.018, mostClearanceMm: 0.058 }) // => 'transition'
 * ```
 */
export function kindOfFit(fit: ClearanceOfFit): KindOfFit {
  const clearance = { min: -1000, max: 1000 };
  requireInputs('kindOfFit', fit, { leastClearanceMm: clearance, mostClearanceMm: clearance });
  if (fit.leastClearanceMm >= 0) return 'clearance';
  return fit.mostClearanceMm <= 0 ? 'interference' : 'transition';
}

/**
 * A fit of hole and shaft by its ISO 286 classes: the sizes that both may have, and the play between them.
 *
 * @param input - Nominal size, mm, and the two tolerance classes.
 * @returns The fit; `null` where the table has no row for the nominal size.
 * @throws RangeError where the nominal size is outside its limits or a class is none of the table's.
 * @example
 * ```ts
 * import { standardFit } from '@scantling/grids';
 * standardFit({ nominalMm: 25, holeClass: 'H7', shaftClass: 'h6' }) // => { hole: { lowerLimitMm: 25, upperLimitMm: 25.021 }, shaft: { lowerLimitMm: 24.987, upperLimitMm: 25 }, leastClearanceMm: 0, mostClearanceMm: 0.034, kind: 'clearance' }
 * standardFit({ nominalMm: 40, holeClass: 'H7', shaftClass: 'h6' }) // => null
 * ```
 */
export function standardFit(input: StandardFitInput): StandardFit | null {
  const { nominalMm, holeClass, shaftClass } = input ?? {};
  requireInputs('standardFit', { nominalMm }, { nominalMm: { min: 0, max: 500 } });
  requireChoice('standardFit', 'holeClass', holeClass, ['H7', 'H8', 'H11', 'H13']);
  requireChoice('standardFit', 'shaftClass', shaftClass, ['g6', 'h6']);
  const hole = known(limitsOfSize({ nominalMm, toleranceClass: holeClass }));
  const shaft = known(limitsOfSize({ nominalMm, toleranceClass: shaftClass }));
  if (!hole || !shaft) return null;
  const clearance = clearanceOfFit({
    holeLowerLimitMm: hole.lowerLimitMm,
    holeUpperLimitMm: hole.upperLimitMm,
    shaftLowerLimitMm: shaft.lowerLimitMm,
    shaftUpperLimitMm: shaft.upperLimitMm,
  });
  return { hole, shaft, ...clearance, kind: kindOfFit(clearance) };
}

function known({ lowerLimitMm, upperLimitMm }: ReturnType<typeof limitsOfSize>): DiameterLimits | null {
  return lowerLimitMm === null || upperLimitMm === null ? null : { lowerLimitMm, upperLimitMm };
}
