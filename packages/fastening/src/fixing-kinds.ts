import { type Limits, requireChoice, requireFields } from '@scantling/rules';
import { type PivotingPlateTravel, pivotingPlateTravel } from './rules/pivoting-plate-travel.ts';
import { type ScrewBesideTab, screwBesideTab } from './rules/screw-beside-tab.ts';
import { type TongueInGroove, tongueInGroove } from './rules/tongue-in-groove.ts';
import { type OpeningSize, SAME_MM, type ScrewOpening, screwOpening } from './screw-opening.ts';

/** Across the grain, towards the front of the top (falling y) or towards its back (rising y). */
export type Side = 'front' | 'back';

/** A screw through a hole or a slot of the base. */
export interface ScrewFixing {
  readonly kind: 'screw';
  /** Length across the grain of the hole that is there, of a round one its diameter, mm, 0.5 to 1000; left out where there is none. */
  readonly holeMm?: number | undefined;
}

/** A button or bracket whose tongue slides along its groove, in a rail that runs across the grain. */
export interface SlidingTongueFixing {
  readonly kind: 'tongue that slides';
  /** Width of the tongue, mm, 0.5 to 50. */
  readonly tongueWidthMm: number;
  /** Length of the groove or mortise across the grain, its middle at the point given, mm, 0.5 to 1000. */
  readonly grooveLengthMm: number;
}

/** A button or bracket whose tongue goes in and out of its groove, in a rail that runs along the grain. */
export interface TongueFixing {
  readonly kind: 'tongue';
  readonly points: Side;
  /** Depth of the groove or saw kerf, mm, 0.5 to 500. */
  readonly grooveDepthMm: number;
  /** Length of the tongue, mm, 0.5 to 500. */
  readonly tongueLengthMm: number;
  /** Least length of tongue that stays in the groove, mm, 0 to 100. */
  readonly leastEngagedMm: number;
}

/** A screw beside a tab of the base, its washer on the tab. */
export interface TabFixing {
  readonly kind: 'screw beside a tab';
  /** On which side of the screw the tab lies. */
  readonly tabLies: Side;
  /** Diameter of the washer, mm, 0.5 to 200. */
  readonly washerDiameterMm: number;
  /** Least that the washer lies over the tab, mm, 0 to 50. */
  readonly leastBearingMm: number;
}

/** A plate that turns on two screws, one in the base and one in the top. */
export interface PlateFixing {
  readonly kind: 'plate that turns';
  /** Between the centres of its two screws, mm, 1 to 500. */
  readonly reachMm: number;
  /** Angle on building day, −90° to 90°: 0 along the grain, positive away from the fixed line. */
  readonly angleDeg: number;
  /** Most that it turns either way, 0° to 90°. */
  readonly mostAngleDeg: number;
  /** Play of both screws together, mm, 0 to 20. */
  readonly playMm: number;
}

export type FixingKind = ScrewFixing | SlidingTongueFixing | TongueFixing | TabFixing | PlateFixing;

/** What is to be done to the groove of a tongue that slides along it. */
export type GrooveWork = 'leave it as it is' | 'lengthen the groove';

/** How a fixing takes its travel, by its kind. */
export type FixingFit =
  | ({ readonly kind: 'opening' } & ScrewOpening)
  | ({ readonly kind: 'groove'; readonly work: GrooveWork } & OpeningSize)
  | ({ readonly kind: 'tongue' } & TongueInGroove)
  | ({ readonly kind: 'tab' } & ScrewBesideTab)
  | ({ readonly kind: 'plate' } & PivotingPlateTravel);

const kinds = ['screw', 'tongue that slides', 'tongue', 'screw beside a tab', 'plate that turns'] as const;
const hole: Limits = { min: 0.5, max: 1000 };
const depth: Limits = { min: 0.5, max: 500 };

function limitsOf(by: FixingKind): Readonly<Record<string, Limits>> {
  switch (by.kind) {
    case 'screw':
      return by.holeMm === undefined ? {} : { holeMm: hole };
    case 'tongue that slides':
      return { tongueWidthMm: { min: 0.5, max: 50 }, grooveLengthMm: hole };
    case 'tongue':
      return { grooveDepthMm: depth, tongueLengthMm: depth, leastEngagedMm: { min: 0, max: 100 } };
    case 'screw beside a tab':
      return { washerDiameterMm: { min: 0.5, max: 200 }, leastBearingMm: { min: 0, max: 50 } };
    case 'plate that turns':
      return {
        reachMm: { min: 1, max: 500 },
        mostAngleDeg: { min: 0, max: 90 },
        angleDeg: { min: -by.mostAngleDeg, max: by.mostAngleDeg },
        playMm: { min: 0, max: 20 },
      };
  }
}

/** Refuses what is no fixing; figures that a rule asks for are refused here too, so that the path is named. */
export function requireKind(caller: string, path: string, by: FixingKind): void {
  requireChoice(caller, `${path}.kind`, by?.kind, kinds);
  requireFields(caller, path, by, limitsOf(by));
  const sides = ['front', 'back'] as const;
  if (by.kind === 'tongue') requireChoice(caller, `${path}.points`, by.points, sides);
  if (by.kind === 'screw beside a tab') requireChoice(caller, `${path}.tabLies`, by.tabLies, sides);
}

/** A fixing point as the season sees it. */
export interface Swing {
  readonly distanceMm: number;
  /** The side of the fixed line that it lies on; `null` on the line. */
  readonly outwards: Side | null;
  readonly swellMm: number;
  readonly shrinkMm: number;
}

/** What all fixings share. */
export interface FixingTerms {
  readonly swellPct: number;
  readonly shrinkPct: number;
  readonly shankDiameterMm: number;
  readonly clearanceMm: number;
}

/** How a fixing takes its travel, whether as it is it lets the top travel, and whether it holds the top in place. */
export function fitOf(by: FixingKind, swing: Swing, terms: FixingTerms) {
  const { distanceMm, outwards, swellMm, shrinkMm } = swing;
  const { shankDiameterMm, clearanceMm } = terms;
  const towards = (side: Side) => (side === outwards ? swellMm : shrinkMm);
  const away = (side: Side) => (side === outwards ? shrinkMm : swellMm);
  const result = (fit: FixingFit, letsTravel: boolean, holds = false) => ({ fit, letsTravel, holds });
  switch (by.kind) {
    case 'screw': {
      const { still, ...opening } = screwOpening({ ...terms, distanceMm, existingMm: by.holeMm ?? null });
      const snugMm = shankDiameterMm + 2 * clearanceMm;
      const holds = still && opening.lengthMm <= snugMm + SAME_MM;
      return result({ kind: 'opening', ...opening }, opening.work === 'leave it as it is', holds);
    }
    case 'tongue that slides': {
      const { tongueWidthMm: shankDiameterMm, grooveLengthMm: existingMm } = by;
      const opening = screwOpening({ ...terms, shankDiameterMm, distanceMm, existingMm });
      const { still, work: ofHole, coveringWasherMm, ...groove } = opening;
      const work: GrooveWork = ofHole === 'leave it as it is' ? ofHole : 'lengthen the groove';
      return result({ kind: 'groove', work, ...groove }, work === 'leave it as it is');
    }
    case 'tongue': {
      const { points, kind, ...groove } = by;
      const fit = tongueInGroove({
        ...groove,
        clearanceMm,
        deeperMm: towards(points),
        outMm: away(points),
      });
      return result({ kind, ...fit }, fit.engagedMm !== null);
    }
    case 'screw beside a tab': {
      const { tabLies, washerDiameterMm, leastBearingMm } = by;
      const fit = screwBesideTab({
        shankDiameterMm,
        clearanceMm,
        washerDiameterMm,
        leastBearingMm,
        towardsTabMm: towards(tabLies),
        fromTabMm: away(tabLies),
      });
      return result({ kind: 'tab', ...fit }, fit.gapMm !== null);
    }
    case 'plate that turns': {
      const { kind, ...plate } = by;
      const fit = pivotingPlateTravel(plate);
      // On the fixed line nothing turns it; elsewhere the clearance is kept at both ends, as in a slot.
      const spareMm = Math.max(swellMm, shrinkMm) <= SAME_MM ? 0 : clearanceMm;
      const enough =
        fit.roomToSwellMm >= swellMm + spareMm - SAME_MM &&
        fit.roomToShrinkMm >= shrinkMm + spareMm - SAME_MM;
      return result({ kind: 'plate', ...fit }, enough);
    }
  }
}
