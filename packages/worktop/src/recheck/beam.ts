import type { WorktopPlan } from '../result.ts';

/** Places along the top where sag is looked at, from end to end. */
export const PLACES = 60;

/** Pieces between two places where something changes. */
const PIECES = 4;

export interface Beam {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly lengthMm: number;
  /** Short pieces from end to end: their middles, how long they are, and their stiffness in bending and in shear. */
  readonly pieces: readonly {
    readonly xMm: number;
    readonly widthMm: number;
    readonly bendingNmm2: number;
    readonly shearN: number;
  }[];
}

export interface Force {
  readonly atMm: number;
  readonly forceN: number;
}

/** What bears on the top, downwards. */
export interface Loading {
  readonly spreadN: number;
  readonly forces: readonly Force[];
}

/** A load spread over the whole top turns it like a force in its middle. */
export function reactions({ leftMm, rightMm, lengthMm }: Beam, { spreadN, forces }: Loading) {
  const all = [...forces, { atMm: lengthMm / 2, forceN: spreadN }];
  const right = all.reduce((sum, { atMm, forceN }) => sum + forceN * (atMm - leftMm), 0) / (rightMm - leftMm);
  return { left: all.reduce((sum, { forceN }) => sum + forceN, 0) - right, right };
}

/** Bending moment and shear at any place, by what lies to its left. */
function innerForces(
  beam: Beam,
  loading: Loading,
): (xMm: number) => readonly [momentNmm: number, shearN: number] {
  const { left, right } = reactions(beam, loading);
  const upwards = [
    { atMm: beam.leftMm, forceN: left },
    { atMm: beam.rightMm, forceN: right },
    ...loading.forces.map(({ atMm, forceN }) => ({ atMm, forceN: -forceN })),
  ];
  return (xMm) => {
    const spreadN = (loading.spreadN * xMm) / beam.lengthMm;
    let moment = (-spreadN * xMm) / 2;
    let shear = -spreadN;
    for (const { atMm, forceN } of upwards) {
      if (atMm >= xMm) continue;
      moment += forceN * (xMm - atMm);
      shear += forceN;
    }
    return [moment, shear];
  };
}

/** Sag at a place, by the work that a load does on a unit force there (Maxwell and Mohr). */
export function sagAt(beam: Beam, loading: Loading, atMm: number): number {
  const real = innerForces(beam, loading);
  const virtual = innerForces(beam, { spreadN: 0, forces: [{ atMm, forceN: 1 }] });
  return beam.pieces.reduce((sag, { xMm, widthMm, bendingNmm2, shearN }) => {
    const [moment, shear] = real(xMm);
    const [unitMoment, unitShear] = virtual(xMm);
    return sag + ((moment * unitMoment) / bendingNmm2 + (shear * unitShear) / shearN) * widthMm;
  }, 0);
}

/** Pieces between the places where a section changes or something stands. */
export function beamOf(
  { plan, holes }: WorktopPlan,
  modulusMPa: number,
  leftMm: number,
  rightMm: number,
): Beam {
  const { top, cables, load } = plan;
  const bored = [
    ...holes.map(({ xMm }) => ({ xMm, diameterMm: plan.holes.diameterMm })),
    ...(cables ? [{ xMm: cables.xMm, diameterMm: cables.holeDiameterMm }] : []),
  ].filter(({ xMm }) => xMm >= 0 && xMm <= top.lengthMm);
  const ends = bored.flatMap(({ xMm, diameterMm }) => [xMm - diameterMm / 2, xMm + diameterMm / 2]);
  const places = (load?.heavyThings ?? []).map(({ xMm }) => xMm);
  const regular = Array.from({ length: PLACES + 1 }, (_, i) => (i * top.lengthMm) / PLACES);
  const breaks = [...new Set([leftMm, rightMm, ...regular, ...ends, ...places])]
    .filter((x) => x >= 0 && x <= top.lengthMm)
    .sort((a, b) => a - b);
  const pieces = breaks.slice(0, -1).flatMap((from, i) => {
    const widthMm = ((breaks[i + 1] as number) - from) / PIECES;
    const middleMm = from + (PIECES * widthMm) / 2;
    const taken = bored.reduce(
      (sum, { xMm, diameterMm }) => sum + (Math.abs(middleMm - xMm) < diameterMm / 2 ? diameterMm : 0),
      0,
    );
    const acrossMm = top.widthMm - taken;
    const bendingNmm2 = (modulusMPa * acrossMm * top.thicknessMm ** 3) / 12;
    // Shear of a rectangle acts on five sixths of it; of wood it has a sixteenth of the stiffness.
    const shearN = (modulusMPa / 16) * acrossMm * top.thicknessMm * (5 / 6);
    return Array.from({ length: PIECES }, (_, j) => ({
      ...{ xMm: from + (j + 0.5) * widthMm, widthMm, bendingNmm2, shearN },
    }));
  });
  return { leftMm, rightMm, lengthMm: top.lengthMm, pieces };
}
