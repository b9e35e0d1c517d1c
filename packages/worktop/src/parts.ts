import { fixingTravel, slotLength } from '@scantling/fastening';
import { finishVolume, mixByParts, spreadingRate, thinnedSolids } from '@scantling/finishing';
import { type KeepOut, layoutHoles } from '@scantling/grids';
import type { Obstacle, Plan, Rectangle } from './plan.ts';
import type { BlockedHole, PlannedFinish, PlannedFixing, PlannedHole } from './result.ts';
import type { Swing } from './season.ts';

const keepOut = (obstacle: Obstacle, belongsTo: KeepOut['belongsTo']): KeepOut => ({
  shape: 'rectangle',
  id: obstacle.name,
  xMm: obstacle.xMm,
  yMm: obstacle.yMm,
  lengthMm: obstacle.lengthMm,
  widthMm: obstacle.widthMm,
  clearanceMm: obstacle.clearanceMm,
  belongsTo,
});

/** A screw is a keep-out too: it is fixed in the top, so no hole may run into it. */
const screws = ({ fixings, shankDiameterMm, screwClearanceMm }: Plan['base']): KeepOut[] =>
  fixings.map(({ name, xMm, yMm }) => ({
    shape: 'circle',
    id: `screw ${name}`,
    xMm,
    yMm,
    diameterMm: shankDiameterMm,
    clearanceMm: screwClearanceMm,
    belongsTo: 'top',
  }));

/** People count from 1. */
const fromOne = <T extends { readonly row: number; readonly column: number }>(hole: T): T => ({
  ...hole,
  row: hole.row + 1,
  column: hole.column + 1,
});

/** The grid laid out so that it misses the base in every season, and the inlays and screws always. */
export function plannedHoles(
  { top, base, holes }: Plan,
  swing: Swing,
): { holes: PlannedHole[]; blockedHoles: BlockedHole[] } {
  const { first, diameterMm, pitchXMm, pitchYMm, columns, rows, edgeMarginMm } = holes;
  const grid = layoutHoles({
    panel: { lengthMm: top.lengthMm, widthMm: top.widthMm },
    firstHole: first,
    holeDiameterMm: diameterMm,
    pitchXMm,
    pitchYMm,
    columns,
    rows,
    edgeMarginMm,
    keepOuts: [
      ...base.members.map((member) => keepOut(member, 'base')),
      ...top.inlays.map((inlay) => keepOut(inlay, 'strip')),
      ...screws(base),
    ],
    movement: { fixedLineYMm: base.fixedLineMm, ...swing },
  });
  return { holes: grid.holes.map(fromOne), blockedHoles: grid.dropped.map(fromOne) };
}

/** What each screw travels, the slot that it needs for it, and where in the slot that there is it has to stand. */
export const plannedFixings = ({ base }: Plan, swing: Swing): PlannedFixing[] =>
  base.fixings.map((fixing) => {
    const distanceMm = Math.abs(fixing.yMm - base.fixedLineMm);
    const travel = fixingTravel({ distanceMm, ...swing });
    const { slotLengthMm: neededSlotMm, screwFromInnerEndMm: leastMm } = slotLength({
      ...travel,
      shankDiameterMm: base.shankDiameterMm,
      clearanceMm: base.slotClearanceMm,
    });
    const spareMm = fixing.slotMm - neededSlotMm;
    const placed = distanceMm > 0 && spareMm >= 0;
    const screwFromInnerEndMm = placed ? { leastMm, mostMm: leastMm + spareMm } : null;
    return { ...fixing, ...travel, neededSlotMm, screwFromInnerEndMm };
  });

/** The slot as it is cut in the base, the screw midway in the room that it has. */
export function slotRectangle({ base }: Plan, fixing: PlannedFixing): Rectangle {
  const { xMm, yMm, slotMm, screwFromInnerEndMm: room } = fixing;
  const innerMm = room ? (room.leastMm + room.mostMm) / 2 : slotMm / 2;
  const before = yMm >= base.fixedLineMm ? innerMm : slotMm - innerMm;
  return {
    xMm: xMm - base.shankDiameterMm / 2,
    yMm: yMm - before,
    lengthMm: base.shankDiameterMm,
    widthMm: slotMm,
  };
}

/** Both faces and the four edges, inlays and all, less the mouths of the holes and with their walls. */
function finishedAreaM2({ top, holes }: Plan, count: number): number {
  const { lengthMm: l, widthMm: w, thicknessMm: t } = top;
  const d = holes.diameterMm;
  const mm2 = 2 * (l * w + l * t + w * t) + count * Math.PI * d * (t - d / 2);
  return mm2 / 1e6;
}

/** How much finish all coats take, and how it is mixed. */
export function plannedFinish(plan: Plan, holeCount: number): PlannedFinish {
  const { coats, product, thinner, dryFilmUm, lossPct } = plan.finish;
  const liquids = thinner ? [product, thinner] : [product];
  const areaM2 = finishedAreaM2(plan, holeCount);
  const { thinnedSolidsPct } = thinnedSolids({
    volumeSolidsPct: product.volumeSolidsPct,
    thinnerPct: (100 * (thinner?.parts ?? 0)) / product.parts,
  });
  const { spreadingRateM2PerL } = spreadingRate({ volumeSolidsPct: thinnedSolidsPct, dryFilmUm });
  const { volumeMl } = finishVolume({ areaM2, coatCount: coats, spreadingRateM2PerL, lossPct });
  const { volumesMl } = mixByParts({ parts: liquids.map(({ parts }) => parts), batchMl: volumeMl });
  const mix = liquids.map(({ name, onHandMl }, i) => ({
    name,
    volumeMl: volumesMl[i] as number,
    onHandMl,
  }));
  return { areaM2, mixSolidsPct: thinnedSolidsPct, spreadingRateM2PerL, volumeMl, mix };
}
