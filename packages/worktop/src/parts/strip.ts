import {
  countersinkDiameter,
  headThroughStrip,
  planStrip,
  type StripGap,
  type StripScrew,
  stripRabbet,
} from '@scantling/fastening';
import type { Rectangle } from '../plan/place.ts';
import type { SettledPlan } from '../plan/plan.ts';
import { coneAngleDeg } from '../plan/screws.ts';
import type { Basis } from '../season.ts';
import { belowFace, outgrowths } from './strip-movement.ts';

/** The recess that is cut for the strip, seen from above, with the room that the strip needs in it. */
export interface PlannedRabbet extends Rectangle {
  readonly depthMm: number;
  /** Across the strip, as the plan has it, and the least that the strip needs through the year, mm. */
  readonly acrossMm: number;
  readonly neededAcrossMm: number;
}

/** A screw of the strip, with its place on the top. */
export interface PlannedStripScrew extends StripScrew {
  readonly xMm: number;
  readonly yMm: number;
}

/** A metal strip in the top through the year. */
export interface PlannedStrip {
  /** The inlay that it is. */
  readonly name: string;
  readonly runs: 'along the grain' | 'across the grain';
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly massKg: number;
  /** Most by which strip and wood outgrow each other over its length, mm. */
  readonly metalOutgrowsMm: number;
  readonly woodOutgrowsMm: number;
  readonly rabbet: PlannedRabbet;
  /** Its face below that of the wood on building day, in the driest and in the wettest time, mm; negative: proud. */
  readonly belowFaceMm: number;
  readonly belowFaceDriestMm: number;
  readonly belowFaceWettestMm: number;
  /** From screw to screw, mm. */
  readonly pitchMm: number;
  readonly screws: readonly PlannedStripScrew[];
  /** The gaps at its left or front end, and at the other. */
  readonly start: StripGap;
  readonly end: StripGap;
  readonly head: {
    readonly coneAngleDeg: number;
    /** Of the countersink at the face of the strip, mm. */
    readonly countersinkDiameterMm: number;
    /** Countersink that the wood under the strip needs too: its depth, 0 for none, and its diameter, mm. */
    readonly inWoodMm: number;
    readonly inWoodDiameterMm: number | null;
  };
}

/** What a strip weighs, kg, holes and all; 0 where there is none. */
export function stripMassKg({ top, strip }: Pick<SettledPlan, 'top' | 'strip'>): number {
  const inlay = top.inlays.find(({ name }) => name === strip?.inlay);
  if (!strip || !inlay) return 0;
  return (inlay.lengthMm * inlay.widthMm * strip.thicknessMm * strip.densityKgPerM3) / 1e9;
}

/** A stretch of the top, in one direction, mm. */
export interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
}

const SAME_MM = 1e-6;

/** Which ends of a stretch lie at the edge of the top, where a recess is open. */
export const openEnds = ({ fromMm, toMm }: Stretch, panelMm: number) => ({
  start: fromMm <= SAME_MM,
  end: toMm >= panelMm - SAME_MM,
});

/** The recess along the strip: a gap longer at each end that has a wall. */
function lengthwise(strip: Stretch, panelMm: number, startGapMm: number, endGapMm: number): Stretch {
  const open = openEnds(strip, panelMm);
  return {
    fromMm: strip.fromMm - (open.start ? 0 : startGapMm),
    toMm: strip.toMm + (open.end ? 0 : endGapMm),
  };
}

/** The recess across the strip: at an edge of the top all its room is at the one wall, else half at each. */
function crosswise(strip: Stretch, panelMm: number, acrossMm: number): Stretch {
  const open = openEnds(strip, panelMm);
  const spareMm = acrossMm - (strip.toMm - strip.fromMm);
  const before = open.start ? 0 : open.end ? spareMm : spareMm / 2;
  return { fromMm: strip.fromMm - before, toMm: strip.fromMm - before + acrossMm };
}

/** The strip in its rabbet: how both move beside each other, what it needs for that, and how it is held. */
export function plannedStrip(plan: SettledPlan, basis: Basis): PlannedStrip | null {
  const { top, strip } = plan;
  const inlay = top.inlays.find(({ name }) => name === strip?.inlay);
  if (!strip || !inlay) return null;
  const { thicknessMm, rabbetWidthMm: acrossMm, rabbetDepthMm: depthMm, headBelowFaceMm } = strip;
  const along = inlay.lengthMm >= inlay.widthMm;
  const inX = { fromMm: inlay.xMm, toMm: inlay.xMm + inlay.lengthMm };
  const inY = { fromMm: inlay.yMm, toMm: inlay.yMm + inlay.widthMm };
  const [long, short] = along ? [inX, inY] : [inY, inX];
  const [longPanelMm, shortPanelMm] = along ? [top.lengthMm, top.widthMm] : [top.widthMm, top.lengthMm];
  const lengthMm = along ? inlay.lengthMm : inlay.widthMm;
  const widthMm = along ? inlay.widthMm : inlay.lengthMm;

  const { sideGapMm, metalOutgrowsMm, woodOutgrowsMm } = outgrowths(plan, strip, basis, inlay);
  const outgrows = { metalOutgrowsMm, woodOutgrowsMm };
  const { shankDiameterMm, headDiameterMm, headHeightMm, endDistanceMm, mostPitchMm } = strip;
  const coneDeg = coneAngleDeg(strip);
  const { pitchMm, screws, start, end } = planStrip({
    strip: { lengthMm, thicknessMm },
    screws: {
      ...{ endDistanceMm, mostPitchMm, shankDiameterMm, headDiameterMm, headHeightMm },
      fixed: strip.fixedScrew,
    },
    headBelowFaceMm,
    ...outgrows,
    toleranceMm: strip.toleranceMm,
    clearanceMm: strip.slotClearanceMm,
    endClearanceMm: strip.endClearanceMm,
  });
  const through = headThroughStrip({
    ...{ headDiameterMm, shankDiameterMm, headBelowFaceMm },
    includedAngleDeg: coneDeg,
    stripThicknessMm: thicknessMm,
  });

  const open = openEnds(short, shortPanelMm);
  const needed = stripRabbet({
    stripThicknessMm: thicknessMm,
    stripWidthMm: widthMm,
    thicknessToleranceMm: 0,
    widthToleranceMm: 0,
    belowFaceMm: 0,
    gapMm: sideGapMm,
    wallCount: open.start || open.end ? 1 : 2,
  });
  const recess = lengthwise(long, longPanelMm, start.gapMm, end.gapMm);
  const across = crosswise(short, shortPanelMm, acrossMm);
  const [x, y] = along ? [recess, across] : [across, recess];
  const middleMm = (short.fromMm + short.toMm) / 2;
  return {
    name: inlay.name,
    runs: along ? 'along the grain' : 'across the grain',
    lengthMm,
    widthMm,
    massKg: stripMassKg(plan),
    ...outgrows,
    rabbet: {
      xMm: x.fromMm,
      yMm: y.fromMm,
      lengthMm: x.toMm - x.fromMm,
      widthMm: y.toMm - y.fromMm,
      depthMm,
      acrossMm,
      neededAcrossMm: needed.widthMm,
    },
    ...belowFace(plan, strip, basis),
    pitchMm,
    screws: screws.map((screw) => {
      const atMm = long.fromMm + screw.atMm;
      return { ...screw, ...(along ? { xMm: atMm, yMm: middleMm } : { xMm: middleMm, yMm: atMm }) };
    }),
    start,
    end,
    head: {
      coneAngleDeg: coneDeg,
      countersinkDiameterMm: countersinkDiameter({
        ...{ headDiameterMm, headBelowFaceMm },
        includedAngleDeg: coneDeg,
      }).countersinkDiameterMm,
      inWoodMm: through.belowStripMm,
      inWoodDiameterMm: through.undersideDiameterMm,
    },
  };
}
