import type { PlannedFixing, WorktopPlan } from '../result.ts';
import { agree, type Finding, same } from './finding.ts';

/** Travel of a screw as the change of its place when the whole top is drawn out or drawn in about the fixed line. */
function recheckFixing(path: string, fixing: PlannedFixing, result: WorktopPlan): Finding[] {
  const { plan, movement } = result;
  const { base, top } = plan;
  const perMm = (changeMm: number) => changeMm / top.widthMm;
  const awayMm = Math.abs(fixing.yMm - base.fixedLineMm);
  const travelMm = [movement.driestChangeMm, movement.wettestChangeMm].map(
    (change) => awayMm * perMm(change),
  );
  const swellMm = Math.max(0, ...travelMm);
  const shrinkMm = -Math.min(0, ...travelMm);
  const roomMm = base.shankDiameterMm + 2 * base.slotClearanceMm;
  const neededMm = roomMm + swellMm + shrinkMm;
  const room = fixing.screwFromInnerEndMm;
  // The screw at its inner end in the dry season, at its outer end in the wet one, clear of both.
  const leastMm = roomMm / 2 + shrinkMm;
  return [
    ...agree(`${path}.swellMm`, fixing.swellMm, swellMm),
    ...agree(`${path}.shrinkMm`, fixing.shrinkMm, shrinkMm),
    ...agree(`${path}.neededSlotMm`, fixing.neededSlotMm, neededMm),
    ...(room
      ? [
          ...agree(`${path}.screwFromInnerEndMm.leastMm`, room.leastMm, leastMm),
          ...agree(`${path}.screwFromInnerEndMm.mostMm`, room.mostMm, fixing.slotMm - roomMm / 2 - swellMm),
        ]
      : same(`${path}.screwFromInnerEndMm`, fixing.slotMm < neededMm || awayMm === 0, true)),
  ];
}

/** Every screw of the plan is planned, with the slot that it needs. */
export function recheckFixings(result: WorktopPlan): Finding[] {
  const { fixings, plan } = result;
  const asked = plan.base.fixings;
  return [
    ...agree('fixings', fixings.length, asked.length, 0),
    ...asked.flatMap((one, i) => {
      const path = `fixings[${i}]`;
      const fixing = fixings[i];
      if (!fixing) return same(path, 'missing', one.name);
      return [
        ...same(`${path}.name`, fixing.name, one.name),
        ...agree(`${path}.xMm`, fixing.xMm, one.xMm, 0),
        ...agree(`${path}.yMm`, fixing.yMm, one.yMm, 0),
        ...agree(`${path}.slotMm`, fixing.slotMm, one.slotMm, 0),
        ...recheckFixing(path, fixing, result),
      ];
    }),
  ];
}
