import { requireChoice, requireInputs } from '@scantling/rules';
import { drillingCare, makersDataFirst } from './cautions.ts';
import { figureOf, isSameSize, mmFromIn, type ScrewFigure } from './screw.ts';
import { inchClearanceHoles, metricClearanceHoles } from './screw-tables.ts';

/** How much room a hole leaves: the fine, medium and coarse series of ISO 273, the fits of ASME B18.2.8. */
export type ClearanceFit = 'close' | 'normal' | 'loose';

export interface ClearanceHoleInput {
  /** Nominal diameter of the screw, mm, 0.5 to 50. */
  readonly screwDiameterMm: number;
  readonly fit: ClearanceFit;
}

export interface ClearanceHole {
  /** Hole for the screw to pass through, mm. */
  readonly holeDiameterMm: ScrewFigure;
  readonly cautions: readonly string[];
}

const columns = { close: 'closeMm', normal: 'normalMm', loose: 'looseMm' } as const;

/**
 * The hole that a screw passes through with room to spare, by the table of its series. Metal and wood alike; where a
 * screw has to travel with the seasons it wants a slot instead, see `slotLength`.
 *
 * @param input - Nominal diameter of the screw and how much room it shall have.
 * @returns The hole with its source; `null` where neither table has the size, as for gauges 7, 9 and from 12 on: there
 * drill the next size above the screw's greatest body.
 * @throws RangeError where the diameter is outside its limits or the fit is none of the three.
 * Source: ISO 273 for metric sizes, ASME B18.2.8 for inch sizes, least holes.
 * @example
 * ```ts
 * import { clearanceHole, findScrew } from '@scantling/fastening';
 * clearanceHole({ screwDiameterMm: 6, fit: 'normal' }).holeDiameterMm.value // => 6.6
 * const { screw } = findScrew('#8');
 * const { holeDiameterMm } = clearanceHole({ screwDiameterMm: screw.diameterMm.value, fit: 'close' });
 * holeDiameterMm.value // => 4.6
 * holeDiameterMm.citation.source.identifier // => 'ASME B18.2.8-1999 (R2017)'
 * clearanceHole({ screwDiameterMm: 6.2, fit: 'normal' }) // => null
 * ```
 */
export function clearanceHole(input: ClearanceHoleInput): ClearanceHole | null {
  const { screwDiameterMm, fit } = input ?? {};
  requireInputs('clearanceHole', { screwDiameterMm }, { screwDiameterMm: { min: 0.5, max: 50 } });
  requireChoice('clearanceHole', 'fit', fit, ['close', 'normal', 'loose']);
  const isThisSize = (diameterMm: number) => isSameSize(diameterMm, screwDiameterMm);
  const metric = metricClearanceHoles.rows.find(({ diameterMm }) => isThisSize(diameterMm));
  const inch = inchClearanceHoles.rows.find(({ diameterIn }) => isThisSize(mmFromIn(diameterIn)));
  const hole =
    (metric && figureOf(metricClearanceHoles, metric, columns[fit])) ??
    (inch && figureOf(inchClearanceHoles, inch, columns[fit]));
  return hole ? { holeDiameterMm: hole, cautions: [makersDataFirst, drillingCare] } : null;
}
