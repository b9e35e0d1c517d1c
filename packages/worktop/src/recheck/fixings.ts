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

/** Where the slot lies across the grain: its screw in the middle of the room that it has, or of the slot. */
function slotOf({ yMm, slotMm, screwFromInnerEndMm: room }: PlannedFixing, lineMm: number) {
  const innerMm = room ? (room.leastMm + room.mostMm) / 2 : slotMm / 2;
  const towardsFront = yMm >= lineMm ? innerMm : slotMm - innerMm;
  return { frontMm: yMm - towardsFront, backMm: yMm - towardsFront + slotMm };
}

/** What covers the slot at both ends of the season, and what the member keeps beside it. */
function recheckAround(path: string, fixing: PlannedFixing, { plan, swing }: WorktopPlan): Finding[] {
  const { base } = plan;
  const { frontMm, backMm } = slotOf(fixing, base.fixedLineMm);
  const offMm = fixing.yMm - base.fixedLineMm;
  const places = [0, swing.swellPct / 100, -swing.shrinkPct / 100].map(
    (change) => fixing.yMm + offMm * change,
  );
  const farthestMm = Math.max(...places.flatMap((yMm) => [yMm - frontMm, backMm - yMm]));
  const halfMm = base.shankDiameterMm / 2;
  const over = base.members
    .filter((m) => m.xMm <= fixing.xMm - halfMm && fixing.xMm + halfMm <= m.xMm + m.lengthMm + 1e-9)
    .filter((m) => backMm > m.yMm && frontMm < m.yMm + m.widthMm)
    .map((m) => Math.min(frontMm - m.yMm, m.yMm + m.widthMm - backMm));
  return [
    ...agree(`${path}.coveringWasherMm`, fixing.coveringWasherMm, 2 * farthestMm),
    ...(over.length === 0
      ? same(`${path}.leftInMemberMm`, fixing.leftInMemberMm, null)
      : agree(`${path}.leftInMemberMm`, fixing.leftInMemberMm ?? Number.NaN, Math.max(...over))),
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
        ...recheckAround(path, fixing, result),
      ];
    }),
  ];
}
