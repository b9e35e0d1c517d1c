import { clearanceOverSeasons, clearanceToRectangle } from '@scantling/grids';
import { apartMm } from '../geometry.ts';
import { screwId } from '../parts/holes.ts';
import type { Rectangle } from '../plan/place.ts';
import type { Computed, PlannedHole } from '../result.ts';

/** A hole beside something that it must miss. */
export interface Encounter {
  readonly hole: PlannedHole;
  /** The name of the thing. */
  readonly beside: string;
  /** From rim to thing, all year, and the least that is asked for, mm. */
  readonly clearanceMm: number;
  readonly neededMm: number;
}

/** Of one kind of things: where a hole comes nearest, and where least is left beyond what is asked for. */
export interface KindOfThing {
  readonly kind: 'base members' | 'inlays' | 'screws' | 'edges';
  readonly nearest: Encounter;
  readonly tightest: Encounter;
}

/** Something that holes must miss. */
interface Thing {
  readonly name: string;
  readonly neededMm: number;
  /** A bound that costs little: the clearance is no less. */
  readonly atLeastMm: (hole: PlannedHole) => number;
  readonly clearanceMm: (hole: PlannedHole) => number;
}

const spareMm = ({ clearanceMm, neededMm }: Encounter) => clearanceMm - neededMm;

function thingsOf({ plan, swing }: Computed): Readonly<Record<KindOfThing['kind'], readonly Thing[]>> {
  const { top, base, holes } = plan;
  const holeDiameterMm = holes.diameterMm;
  const radiusMm = holeDiameterMm / 2;
  const sideways =
    ({ xMm, lengthMm }: Rectangle) =>
    (hole: PlannedHole) =>
      Math.max(xMm - hole.xMm, hole.xMm - xMm - lengthMm) - radiusMm;
  const of = ({ xMm, yMm }: PlannedHole, { xMm: left, yMm: front, lengthMm, widthMm }: Rectangle) => ({
    ...{ holeXMm: xMm, holeYMm: yMm, holeDiameterMm },
    ...{ xMm: left, yMm: front, lengthMm, widthMm },
  });
  const edge = (name: string, toCentreMm: (hole: PlannedHole) => number): Thing => {
    const clearanceMm = (hole: PlannedHole) => toCentreMm(hole) - radiusMm;
    return { name, neededMm: holes.edgeMarginMm, atLeastMm: clearanceMm, clearanceMm };
  };
  return {
    'base members': base.members.map((member) => ({
      name: member.name,
      neededMm: member.clearanceMm,
      atLeastMm: sideways(member),
      clearanceMm: (hole) =>
        clearanceOverSeasons({ ...of(hole, member), fixedLineYMm: base.fixedLineMm, ...swing }).clearanceMm,
    })),
    inlays: top.inlays.map((inlay) => ({
      name: inlay.name,
      neededMm: inlay.clearanceMm,
      atLeastMm: sideways(inlay),
      clearanceMm: (hole) => clearanceToRectangle(of(hole, inlay)).clearanceMm,
    })),
    screws: base.fixings.map((fixing) => {
      const clearanceMm = (hole: PlannedHole) => apartMm(hole, fixing) - radiusMm - base.shankDiameterMm / 2;
      return {
        name: screwId(fixing.name),
        neededMm: base.screwClearanceMm,
        atLeastMm: clearanceMm,
        clearanceMm,
      };
    }),
    edges: [
      edge('left edge', ({ xMm }) => xMm),
      edge('right edge', ({ xMm }) => top.lengthMm - xMm),
      edge('front edge', ({ yMm }) => yMm),
      edge('back edge', ({ yMm }) => top.widthMm - yMm),
    ],
  };
}

/** How near the holes come to each kind of things that they must miss; no entry where there is no hole or no such thing. */
export function nearestOf(computed: Computed): KindOfThing[] {
  return Object.entries(thingsOf(computed)).flatMap(([kind, things]) => {
    let nearest: Encounter | null = null;
    let tightest: Encounter | null = null;
    for (const { name: beside, neededMm, atLeastMm, clearanceMm } of things) {
      for (const hole of computed.holes) {
        const boundMm = atLeastMm(hole);
        if (nearest && tightest && boundMm >= nearest.clearanceMm && boundMm - neededMm >= spareMm(tightest))
          continue;
        const found: Encounter = { hole, beside, clearanceMm: clearanceMm(hole), neededMm };
        if (!nearest || found.clearanceMm < nearest.clearanceMm) nearest = found;
        if (!tightest || spareMm(found) < spareMm(tightest)) tightest = found;
      }
    }
    return nearest && tightest ? [{ kind: kind as KindOfThing['kind'], nearest, tightest }] : [];
  });
}
