import { fixingTravel, slotLength, washerOverSlot } from '@scantling/fastening';
import type { Base } from '../plan/base.ts';
import type { Rectangle } from '../plan/place.ts';
import type { PlannedFixing } from '../result.ts';
import type { Swing } from '../season.ts';

/** A base whose fixed line is settled. */
export type HeldBase = Pick<Base, 'members' | 'fixings' | 'shankDiameterMm' | 'slotClearanceMm'> & {
  readonly fixedLineMm: number;
};

/** Lengths that differ by no more are the same. */
const SAME_MM = 1e-9;

/** What a base is asked of a screw before its slot is placed. */
type Screw = Pick<PlannedFixing, 'xMm' | 'yMm' | 'slotMm' | 'screwFromInnerEndMm'>;

/** From the slot's end nearer the fixed line to the screw: midway in the room that it has, or in the middle. */
const toInnerEndMm = ({ slotMm, screwFromInnerEndMm: room }: Screw): number =>
  room ? (room.leastMm + room.mostMm) / 2 : slotMm / 2;

/** The slot as it is cut in the base, the screw midway in the room that it has. */
export function slotRectangle(
  { base }: { readonly base: Pick<HeldBase, 'fixedLineMm' | 'shankDiameterMm'> },
  screw: Screw,
): Rectangle {
  const { xMm, yMm, slotMm } = screw;
  const innerMm = toInnerEndMm(screw);
  const before = yMm >= base.fixedLineMm ? innerMm : slotMm - innerMm;
  return {
    xMm: xMm - base.shankDiameterMm / 2,
    yMm: yMm - before,
    lengthMm: base.shankDiameterMm,
    widthMm: slotMm,
  };
}

/** Metal that a member keeps beyond the nearer end of a slot that lies over its length; the most where there are several. */
function leftInMemberMm(slot: Rectangle, { members }: HeldBase): number | null {
  const left = members
    .filter(({ xMm, lengthMm }) => xMm <= slot.xMm && slot.xMm + slot.lengthMm <= xMm + lengthMm + SAME_MM)
    .map(({ yMm, widthMm }) => Math.min(slot.yMm - yMm, yMm + widthMm - slot.yMm - slot.widthMm))
    .filter((mm) => mm > -slot.widthMm);
  return left.length > 0 ? Math.max(...left) : null;
}

/** What each screw travels, the slot that it needs for it, and where in the slot that there is it has to stand. */
export const plannedFixings = ({ base }: { readonly base: HeldBase }, swing: Swing): PlannedFixing[] =>
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
    const screw = { ...fixing, ...travel, neededSlotMm, screwFromInnerEndMm };
    const { washerDiameterMm: coveringWasherMm } = washerOverSlot({
      ...travel,
      slotLengthMm: fixing.slotMm,
      screwFromInnerEndMm: toInnerEndMm(screw),
      lapMm: 0,
    });
    const slot = slotRectangle({ base }, screw);
    return { ...screw, coveringWasherMm, leftInMemberMm: leftInMemberMm(slot, base) };
  });

/** A screw holds the top where it stands on the fixed line in a round hole that fits it. */
export const holdsTop = (
  { fixedLineMm, shankDiameterMm, slotClearanceMm }: HeldBase,
  { yMm, slotMm }: Pick<PlannedFixing, 'yMm' | 'slotMm'>,
): boolean =>
  Math.abs(yMm - fixedLineMm) <= slotClearanceMm && slotMm <= shankDiameterMm + 2 * slotClearanceMm + SAME_MM;
