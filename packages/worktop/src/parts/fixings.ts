import { fixingTravel, slotLength } from '@scantling/fastening';
import type { Rectangle } from '../plan/place.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { PlannedFixing } from '../result.ts';
import type { Swing } from '../season.ts';

/** What each screw travels, the slot that it needs for it, and where in the slot that there is it has to stand. */
export const plannedFixings = ({ base }: SettledPlan, swing: Swing): PlannedFixing[] =>
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
export function slotRectangle({ base }: SettledPlan, fixing: PlannedFixing): Rectangle {
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
